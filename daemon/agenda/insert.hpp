// Room for one job in a plan.
#pragma once

#include "agenda/list.hpp"
#include "agenda/search.hpp"

namespace nutward::agenda {

// Takes each op of the job in turn to the place and mode where it ends first, over all places on the units of
// each mode that are before where it stands, with nothing in the schedule overrunning by more than it does.
// Ends are never later than they were. What it moves others by is worked out to the end for each place.
void insert_early(Schedule& schedule, int job, Meter& meter);

// In which order jobs are placed.
struct Turn {
  std::optional<Second> from; // the job in question first, beginning no earlier; nullopt: when it is due
  std::uint32_t mix = 0; // 0: others by their limits and due dates, then by when the schedule has them done;
                         // 1: then as they stand; more: limits moved by up to two days, each number otherwise
};

// All jobs placed anew, one after the other, those that others wait for before these. nullopt if somebody has
// no place then.
std::optional<Kept> around(const Schedule& schedule, int job, const Turn& turn, Meter& meter);

} // namespace nutward::agenda
