// Which piece of the tin makes the fret for a slot.
//
// Only pieces of the slot's own wire and material are to be offered here; what a piece is made of is the
// caller's business. Lengths are along the wire. Everything is pure.
#pragma once

#include "board/need.hpp"
#include "units/instant.hpp"
#include "units/length.hpp"

#include <cstddef>
#include <cstdint>
#include <limits>
#include <optional>
#include <vector>

namespace nutward::pieces {

using board::EndStyle;
using board::FitSettings;
using board::Need;
using units::Instant;
using units::Length;

enum class Kind { short_fret = 0, stick_end = 1, pulled_fret = 2 };

// A piece as fitting sees it. An unmeasured one has no length and cannot be judged.
struct PieceFacts {
  std::int64_t id = 0;
  Kind kind = Kind::short_fret;
  Length length;                      // over 0
  int raw_ends = 0;                   // 0 to 2: ends that have not been dressed
  std::optional<Length> crown_height; // nullopt: not known, which no crown is unlike
  std::int64_t lot = 0;
  Instant added;
  bool held_for_this = false;
  std::optional<Length> tang{}; // where it was nipped, evenly at both ends; nullopt: as long as the piece

  friend bool operator==(const PieceFacts&, const PieceFacts&) = default;
};

// What a fret is wanted for.
struct Wanted {
  Need need;
  std::optional<Length> crown_height; // nullopt: any
  // The shortest raw length (board::shortest_raw) that would make some other fret that is wanted. What
  // remains of a long piece is worth keeping from here on; nullopt: nothing else is wanted.
  std::optional<Length> another;
  std::optional<std::int64_t> lot; // the lot of the neighbouring frets, preferred among equals; nullopt: none
};

enum class Outcome {
  fits = 0,       // whatever the caliper's error was
  borderline = 1, // within the caliper's error of a limit: try it
  too_short = 2,
  wasteful = 3,      // it fits, but loses more than the trim limit and leaves nothing that could make another
  crown_differs = 4, // from the crown wanted, by more than the tolerance
  tang_short = 5,    // long enough, but its tang was nipped too far for this slot
};

struct Verdict {
  Outcome outcome = Outcome::too_short;
  Length finish; // what the fret would measure when done: at most the target, or its own length if untouched
  Length trim;   // length − finish, all that must come off
  Length nip;    // of the trim, what is nipped off; the rest is lost in dressing
  Length off_target;      // |finish − target|
  Length short_by;        // how much the longest possible finish is under `least`; 0 where it reaches it
  int ends_to_dress = 0;  // 0 to 2; filed ends are never dressed before seating
  bool untouched = false; // it goes in as it is
  bool perhaps_dress_one =
      false; // untouched, but within the caliper's error of `most`: if it stands out, dress an end
  bool less_overhang = false;   // filed ends: it is short of `cut`
  std::optional<Length> leaves; // what remains once `cut` is nipped off, if that could make another fret
  Length tang_to_nip{};         // of the tang, both ends together, once the crown is finished
  Length tang_short_by{};       // 0 unless tang_short

  friend bool operator==(const Verdict&, const Verdict&) = default;
};

// Judges one piece. `settings` as check() accepts them.
//
// Rounded ends: k = ends to dress = raw ends, or 1 if none is raw and L > most; longest finish F = L −
// k·loss; it fits if F ≥ least; finish = L if k = 0, else min(F, target). Filed ends: k = 0; it fits if L ≥
// least; finish = min(L, cut).
//
// Borderline: F within `borderline`, inclusive, of `least`, on either side. `most` is such a limit only where
// it matters: where dressing one end would bring a piece just over `most` below `least`. With the default
// settings it never does (a piece just over `most` is dressed to the target), and then perhaps_dress_one says
// what to look for. A pulled fret is judged like any other; best() does not offer it unasked.
//
// The tang t is the finish where it was never nipped, and never more. A bound slot takes it back to
// need.tang; up to `borderline` over that the clearance takes. It is too short where the crown over the
// board, min(finish, arc), would reach more than crown_overhang beyond it at an end. In an open slot a nipped
// tang must reach as far as the shortest fret's (rounded: least) or the edges (filed: arc), or the slot shows
// at the edge.
Verdict judge(const PieceFacts& piece, const Wanted& wanted, const FitSettings& settings);

// How offers are ordered, smaller first: sure before borderline, least trim, nearest target, fewest ends to
// dress, no tang to nip, same lot, oldest, smallest id. Complete: no two pieces have equal ranks.
struct Rank {
  Outcome outcome = Outcome::fits;
  Length trim;
  Length off_target;
  int ends_to_dress = 0;
  bool nip_tang = false;
  bool other_lot = false;
  Instant added;
  std::int64_t id = 0;

  friend auto operator<=>(const Rank&, const Rank&) = default;
};
Rank rank(const PieceFacts& piece, const Verdict& verdict, const Wanted& wanted);

enum class Tangs { any, whole, nipped }; // nipped: the tang's length is known

// A walk along the pieces of one wire that have the same raw ends, by length.
struct Walk {
  bool pulled = false;             // pulled frets only; false: the other kinds only
  int raw_ends = 0;                // exactly
  Length shortest;                 // inclusive
  Length longest;                  // inclusive
  bool upward = true;              // from the shortest, or down from the longest
  std::optional<std::int64_t> lot; // of this lot only
  // A source may leave out pieces whose crown is known and lies outside these (inclusive); it need not.
  std::optional<Length> crown_from, crown_to;
  Tangs tangs = Tangs::any;
};

// Where a walk stands: at the last piece that it gave.
struct Mark {
  Length length;
  Instant added;
  std::int64_t id = 0;
};

// The tin, as an index by length. What it gives is free, or held for what the fret is wanted for
// (held_for_this).
struct Source {
  virtual ~Source() = default;
  // The next pieces of a walk, at most `at_most` (over 0): after `after`, exclusive; from the start where
  // there is none. Ordered by length in the walk's direction, and among equal lengths, in both directions,
  // oldest first, then by id. Fewer than `at_most` means that the walk has ended.
  virtual std::vector<PieceFacts> page(const Walk& walk, const std::optional<Mark>& after,
                                       std::size_t at_most) const = 0;
};

// What is offered only when asked for.
struct Ask {
  bool pulled = false;
  bool wasteful = false;
};

struct Candidate {
  PieceFacts piece;
  Verdict verdict;
};

// The first `how_many` pieces in the order of Rank, of all that fit or are borderline (and wasteful, where
// asked): exactly what judging and sorting the whole tin would give, from a handful of pages. Empty where
// nothing fits. Reads further only past pieces whose crown differs and that the source did not leave out, or
// whose tang is too short, and reads nipped pieces of one length together.
std::vector<Candidate> best(const Source& source, const Wanted& wanted, const FitSettings& settings,
                            const Ask& ask, std::size_t how_many);

} // namespace nutward::pieces
