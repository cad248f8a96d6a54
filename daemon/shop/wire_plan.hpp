// The cut plan of a wire as every answer shows it: the one that was worked out in the background
// (shop/planner) where the shop is still as it was then, and otherwise what can be made of it at once.
#pragma once

#include "shop/to_cut.hpp"

#include <optional>
#include <vector>

namespace nutward::shop {

// Steps of one answer, which is given on the network's thread: that and what is done without counting steps
// (bounded by most_slots and most_pieces) came to 20 to 40 ms for 100 jobs where it was measured.
inline constexpr std::int64_t steps_of_an_answer = 12'000;

struct WirePlan {
  ToCut what; // from the caller's own snapshot: whatever the plan names is there
  cutting::Plan plan;
  // When the stored plan was made that this is, or was made from; nullopt: there was none.
  std::optional<Instant> planned_at{};
  bool brought_up_to_date = false; // it was stored for a shop that has changed since, and was gone on from
  bool settled = true;             // false: nothing says that the background has no better one
};

// Of all open jobs of the wire, from the tin and what is on hand. Takes the time of one quick plan at most.
// The stored plan is shown whole; what is planned at once looks at no more than an answer's bounds.
WirePlan plan_of(const Wire& wire, const View& view, const Setup& setup);
// The same of what whole_wire() gathered, in that many steps.
WirePlan plan_of(ToCut whole, const View& view, const Setup& setup, std::int64_t steps);
// What a stored plan of a wire is of.
ToCut whole_wire(const Wire& wire, const View& view, const Setup& setup);

// What the stored plan of its wire wants a piece for, in the order of cutting. Nothing is planned: empty
// where no plan is stored, where it does not use the piece, and where the piece or the slot is no longer what
// it was (gone, measured anew, held for something else, served).
struct PlannedFret {
  std::int64_t job = 0;
  int slot = 0;
  Length length; // of wire that comes off the piece for it
  Instant planned_at;
};
std::vector<PlannedFret> planned_for(const Piece& piece, const View& view, const Setup& setup);

} // namespace nutward::shop
