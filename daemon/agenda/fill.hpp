// One machine first: the work of the unit that decides, in a new order that leaves as little of its open time
// idle as can be, and all else as early as that allows.
#pragma once

#include "agenda/busiest.hpp"
#include "agenda/search.hpp"

namespace nutward::agenda {

// Serves the unit's ops much as the schedule does, but from one opening to the next (where they may not pause
// in between) picks those that fill it best, and of those that fill it alike the ones that come first. Before
// an op is taken its job is placed up to it; an op whose job cannot have come so far yet waits. nullopt where
// that way most lags cannot be kept, or there is no place before the horizon.
//
// Heads and what is left of an opening make it a one-machine problem, as in the shifting bottleneck procedure
// (Adams, Balas and Zawack 1988, from memory); which ops fill an opening is a subset sum.
std::optional<Kept> filled(const Schedule& schedule, int unit, Meter& meter);

// Takes that where it is worth more.
void fill_if_better(Schedule& schedule, int unit, Meter& meter);

// That and late_acceptance() in turn, for many jobs. `decides` as deciding() says.
void fill_and_search(Schedule& schedule, const std::optional<Burden>& decides, const Value& bound,
                     Chance& chance, Meter& meter);

} // namespace nutward::agenda
