// Improves a schedule by moves along critical paths, each priced exactly.
#pragma once

#include "agenda/critical.hpp"

#include <functional>

namespace nutward::agenda {

// A plan to come back to.
struct Kept {
  std::vector<int> order, modes;
  Value value;
};
Kept kept(const Schedule& schedule);

// Both leave the schedule at the best that they saw, which is never worse than what they were given, and end
// when the meter is over or the value reaches `bound`.

// Tabu search: always the best move that does not turn back what was just turned; starts again from the best,
// shaken, when nothing comes of it. For last_end, and for few jobs.
void tabu(Schedule& schedule, const Value& bound, Chance& chance, Meter& meter);

// Late acceptance: a move is kept if it is no worse than what was kept some hundred moves ago. For many jobs.
void late_acceptance(Schedule& schedule, const Value& bound, Chance& chance, Meter& meter);

// Lets a unit be through with its work earlier, by moves along the path that leads to its last end. Nothing
// becomes later than it may be or worse by more than a 200th of all finish times. Ends when it is through at
// `least`, the meter is over, or nothing holds that end up.
void tighten(Schedule& schedule, int unit, Second least, Chance& chance, Meter& meter);

} // namespace nutward::agenda
