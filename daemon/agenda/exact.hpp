// Branch and bound: proves the best plan of a small shop, and bounds for a large one.
#pragma once

#include "agenda/search.hpp"
#include "agenda/windows_of.hpp"

namespace nutward::agenda {

// Looks for plans better than `best` until none is left (true: best is proved) or the meter is over. Each
// that is found takes its place. Branches on who does an op, then on which of two comes first.
bool branch_and_bound(const Model& model, Kept& best, Meter& meter);

// No plan costs less, as far as propagation alone can tell within the meter; never above `value`, the value
// of some plan.
Value lower_bound(const Model& model, const Value& value, Meter& meter);

} // namespace nutward::agenda
