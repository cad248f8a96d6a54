// What it costs the plan when a piece goes into another slot than planned: asked where somebody is about to
// take it.
//
// The piece goes into the slot now, alone, as serve_held() says: untouched or finished, or cut to need.cut; a
// borderline or a wasteful one at the person's own risk. What remains and is of use lies in the tin again, as
// a piece. Then everything else is planned anew: what the piece was planned for, and what the slot was to be
// made from. The price is the difference between the two plans, in the order of the objectives, as far as
// new wire goes: scrap and cuts are not compared.
#pragma once

#include "cutting/plan.hpp"

#include <optional>

namespace nutward::cutting {

// `unserved`, then `sticks`, then `taken`: a later one counts only where all before it are 0, and may
// otherwise be less than 0, which is then what it costs less in it. All 0: it costs nothing.
struct Taking {
  std::vector<int> unserved; // more slots that get no fret, for each due rank that occurs, earliest first
  int sticks = 0;            // more to open
  Length taken;              // more new wire that does not go back
  // It may cost less, since the plan that it leads to is not proved best. What costs nothing is exact.
  bool at_most = false;

  bool nothing() const;
  friend bool operator==(const Taking&, const Taking&) = default;
};

// Never less than nothing: where the plan is not proved, taking the piece may even lead to a better one.
// Where the plan is proved up to Level::taken, the price is against the best there is.
//
// `plan`: of this problem. Where it has the piece for that slot, alone or with others, the price is nothing.
// nullopt where the piece does not go into the slot, or is not to be had (unsound,
// held elsewhere, or held by the plan for something), or an index is beyond its list, or the slot is unsound.
// A slot that something is held for gives that up.
//
// First what is displaced finds places by exchange, one slot after another (some milliseconds for a hundred
// jobs, in steps of its own). Only where that costs something and the budget has steps, everything is planned
// anew within the budget; 0 steps: only the first.
std::optional<Taking> price_of_taking(const Problem& problem, const Plan& plan, std::size_t piece,
                                      std::size_t slot, const Budget& budget);

} // namespace nutward::cutting
