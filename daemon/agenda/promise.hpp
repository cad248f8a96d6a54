// A day for one more job.
#pragma once

#include "agenda/plan.hpp"

namespace nutward::agenda {

struct Promise {
  bool possible = false; // it has a place before the horizon
  PlannedJob job;        // where its tasks would be
  Instant earliest;      // it cannot be finished before, even if nothing else were to be done
  bool proved = false;   // no plan that keeps the others has it finished earlier
  Plan plan; // all jobs, the new one as the last; its value and bound are in the terms of this search
             // and its faults left out: plan() tells those once the job is taken in
};

// The earliest finish of `extra` such that no job is later than its due date, or than `present` has it
// anyway: the least there is if `proved`, the best that was found otherwise. Up to 120 tasks all plans may be
// looked at. Above, the job is proved to be as early as can be only where nothing but its own stages holds it
// up (or, up to 400, where propagation tells); a day that is found is always one that can be kept. Jobs
// without a due date may be moved. Its own due date and weight do not count. `present` must be a plan of
// `problem` (BadAgenda if not); what it has not placed stays out. It holds nothing: a promise is a question.
Promise promise(const Problem& problem, const Plan& present, const Job& extra, const Budget& budget);

struct Later {
  std::size_t job = 0;
  Instant finish; // then
  seconds by{0};  // later than its due date, or than it is now if that is later
  friend bool operator==(const Later&, const Later&) = default;
};

struct Price {
  bool possible = false; // the job would be done by `by`, whatever the others give
  PlannedJob job;
  std::vector<Later> later; // what would have to give, by job; as little as was found, weighted
  bool proved = false;      // it cannot be less
};

// Can `extra` be finished by then, and what would have to give? As promise(). If it cannot, the plan that
// comes nearest.
Price promise_by(const Problem& problem, const Plan& present, const Job& extra, Instant by,
                 const Budget& budget);

} // namespace nutward::agenda
