// How busy each machine and person is, and which of them decides.
#pragma once

#include "agenda/plan.hpp"

#include <span>

namespace nutward::agenda {

struct Load {
  seconds open{0};    // the unit's own open time
  seconds fixed{0};   // of that, held by what is fixed (counted twice where double-booked)
  seconds planned{0}; // of that, worked by planned tasks; a unit that waits for its partner's hours works not
  friend bool operator==(const Load&, const Load&) = default;
};

// For each unit, for each stretch between two neighbours of `bounds` (local Mondays, say), in rising order.
std::vector<std::vector<Load>> load(const Problem& problem, const Plan& plan,
                                    std::span<const Instant> bounds);

// A unit with all planned tasks that it alone can do. Its earliest end: each not before its job could have
// come so far, and counted in the unit's open time.
struct Busiest {
  std::size_t unit = 0;
  Instant earliest_end; // no plan is through with the unit's tasks before
  Instant planned_end;  // the last end of these tasks in the plan
  seconds work{0};      // of these tasks
};

// The unit (not shared) that decides how soon all can be done: the one that would be at these tasks the
// longest if it began now and waited for nothing. Of several the one with the later earliest end, then the
// first. Who has little to do and waits long for it, for a booking or for wire, decides nothing, however late
// that is done. What one of several like machines or persons may do counts for none of them. nullopt where no
// unit is needed for certain.
std::optional<Busiest> bottleneck(const Problem& problem, const Plan& plan);

} // namespace nutward::agenda
