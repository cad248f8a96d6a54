// The inverse of fit: where one piece would go, among all open slots of its wire and material.
#pragma once

#include "board/need.hpp"
#include "pieces/fit.hpp"
#include "units/instant.hpp"

#include <cstdint>
#include <optional>
#include <span>
#include <vector>

namespace nutward::pieces {

struct OpenSlot {
  std::int64_t job = 0;
  int slot = 0;
  Need need;
  std::optional<Length> crown_height; // wanted; nullopt: any
  std::optional<Instant> due;         // of the job; nullopt: no day was promised
  std::optional<std::int64_t> lot;    // of the job's other frets
};

struct Placing {
  OpenSlot slot;
  Verdict verdict;
};

// Every slot that the piece fits or is borderline for, the one that wastes least first: sure before
// borderline, least trim, nearest target, fewest ends to dress, no tang to nip, same lot, earliest due (no
// day last), smallest job, smallest slot. `wasteful` also gives those where it would lose more than the trim
// limit and leave nothing for any other of `open` with a like crown. A pulled fret is judged like any other:
// who names it has asked for it.
std::vector<Placing> places(const PieceFacts& piece, std::span<const OpenSlot> open,
                            const FitSettings& settings, bool wasteful = false);

} // namespace nutward::pieces
