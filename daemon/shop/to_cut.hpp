// What there is to cut, and what from, as the cut plan wants it.
#pragma once

#include "cutting/plan.hpp"
#include "shop/bench.hpp"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace nutward::shop {

struct ToCut {
  Wire wire;
  std::vector<Job> jobs; // whose open slots are to be cut, by due
  // Slots by due and slot; pieces with the held ones first. Piece ids are the tin's, stock ids are lots; 0:
  // of no delivery.
  cutting::Problem problem;
  std::size_t waiting = 0;     // open slots of the jobs that are due last, over the bound: not in the plan
  bool more_pieces = false;    // the tin holds over the bound: only some of each length are in the plan
  std::int64_t unmeasured = 0; // pieces of the wire that nobody has measured: left out
  std::vector<Piece> unmeasured_held; // and what is held of them for a slot, which is left out as served
  Length loose;                       // on hand, but less than a whole stick: in which lengths nobody knows
  bool as_coil = false;               // nobody said how the wire on hand is: taken to be one coil
  // Of one job alone: new wire that other jobs have set aside, which is left out, and which jobs these are.
  Length set_aside;
  std::vector<std::int64_t> set_aside_for{};
};

// How much of a wire is looked at: what is planned in an answer, and in the background.
inline constexpr std::size_t most_slots = 4'400; // 200 jobs
inline constexpr std::size_t most_pieces = 4'000;
struct CutBounds {
  std::size_t slots = most_slots, pieces = most_pieces;
};
inline constexpr CutBounds in_the_background{24'000, 60'000};

struct CutFrom {
  bool tin_only = false;
  std::vector<Length> sticks{}; // said instead of what is on hand; may be empty
  CutBounds most{};
};

// Of the open jobs of a wire, or of `job` alone. A piece held for open slots stays in them; slots whose new
// wire is set aside come before all others where wire runs short. A piece held for a job as a whole serves
// no other job: of the whole wire it is what the job would make of such pieces alone, as if held for those
// slots. Any other held piece is named and left alone. Pulled frets that nobody holds are not offered. Of
// the new wire one job alone gets what is left where others have theirs set aside: whole sticks, and the
// rests of those that are opened for these, as blanks. A stick gets two flat ends (setting `flat_end`) where
// a board of these jobs is not flat, for then it goes through the bender.
//
// The ledger knows how much wire there is, not in which sticks: the newest deliveries are taken to be there
// whole, and of the oldest the whole sticks that are left of the sum. What was counted beyond all deliveries
// is in sticks of the wire's usual length, or else of the newest delivery's.
ToCut to_cut(const Wire& wire, const std::optional<Job>& job, const CutFrom& from, const View& view,
             const Setup& setup);

// One cut list entry: where on the source a fret ends, measured from the end where cutting begins.
struct CutMark {
  std::size_t slot = 0; // in Problem::slots
  Length length;
  std::optional<Length> at; // nullopt: it is what remains, no cut
};
struct Sawn {
  std::vector<CutMark> marks; // of new wire by slot; of a piece in the plan's order
  Length whole;               // the source's length
  Length begin;               // what is flat and cut off first
  Length kerf;
  Length scrap; // in no fret, and not kept
  Length left;  // kept; 0 if nothing is
};
// frets + kerf + scrap + left = whole.
Sawn sawn(const cutting::Problem& problem, const cutting::Use& use);

} // namespace nutward::shop
