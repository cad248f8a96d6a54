// Deadlines within a plan, walked backward from the due dates in open time: by when each task must begin.
#pragma once

#include "agenda/plan.hpp"

namespace nutward::agenda {

struct Latest {
  // The latest start from which its job is in time, what is booked for it keeps its time, and its recheck is
  // not overdue, if nothing else keeps its units; nullopt if none from Problem::from on is early enough, or
  // the job has no due date.
  std::optional<Instant> alone;
  // The latest start that makes no job later than its due date, or than it is in the plan anyway, if every
  // unit goes on in the plan's order; never before the planned start.
  Instant in_plan;
  seconds slack{0}; // from the planned start to that, elapsed
  friend bool operator==(const Latest&, const Latest&) = default;
};

// For each job and task; nullopt for what is fixed, all of a job that is not placed. The plan must be one of
// that problem: BadAgenda if not. "Press by" is `alone` of the press task; a plan with slack 0 from the first
// task to the press is one that the press holds up.
std::vector<std::vector<std::optional<Latest>>> latest_starts(const Problem& problem, const Plan& plan);

} // namespace nutward::agenda
