// The problem as the solver sees it: everything that does not move is in timelines and limits, what is left
// are operations (ops), each with its modes (which units do it) and arcs.
#pragma once

#include "agenda/plan.hpp"
#include "agenda/timeline.hpp"

#include <array>

namespace nutward::agenda {

struct Mode {
  std::array<int, 2> unit{-1, -1}; // units that it has to itself; -1: none, or one that is shared
  std::array<int, 2> told{-1, -1}; // the units as the problem numbers them, shared ones too
  std::size_t timeline = 0;
};

struct Arc {
  int op = 0;
  Second lag = 0;
};

struct Most {
  int source = -1; // the op whose end it counts from; -1: no most lag that can be kept by moving something
  Second lag = 0;
  bool day = false;
};

struct Op {
  int job = 0, task = 0;
  Second work = 0, set_up_work = 0;
  std::int64_t set_up = 0;
  Second ready = 0;        // by release, not-before and what is fixed
  Second start_by = never; // beyond these two it overruns
  Second end_by = never;
  std::vector<Mode> modes; // at least one
  std::vector<Arc> in;     // starts at or after their end + lag
  std::vector<int> out;    // the ops whose `in` names this one
  Most most;
  bool bounds = false; // a later op's most lag counts from this one
  bool busy = false;   // only Problem::keep_busy can do it, and that counts
  bool last = false;   // of its job
};

struct JobFacts {
  std::vector<int> ops;      // in order; empty if all is fixed, or it is not planned
  Second fixed_end = -never; // the last end of what is fixed
  Second due = never;
  std::int64_t weight = 1;
  bool planned = false;
  Second alone = never; // its earliest finish if nothing else were to be done: no plan does better
};

struct Model {
  const Problem* problem = nullptr;
  Second from = 0, until = 0;
  Goal goal = Goal::in_time;
  int busy = -1; // Problem::keep_busy where it counts
  std::size_t units = 0;
  std::vector<Op> ops; // those of a job together and in order
  std::vector<JobFacts> jobs;
  std::vector<int> job_order; // planned jobs, each after those that it waits for
  std::vector<Timeline> timelines;
  std::vector<Timeline> unit_time; // of each unit: its windows less what is fixed on it
  std::vector<std::int64_t> set_up_for;
  std::vector<char> was_fixed; // unused units have 0
  std::vector<Fault> faults;
  bool has_most = false, has_set_up = false;

  const Timeline& timeline(const Op& op, int mode) const {
    return timelines[op.modes[static_cast<std::size_t>(mode)].timeline];
  }
  // The latest start by a most lag that began to count at `end`.
  Second limit(const Most& most, Second end) const;
  // The earliest end of the source from which `start` is not too late; never if there is none.
  Second end_for(const Most& most, Second start) const;
};

// Judges the problem, leaves aside what cannot be planned, and says so in faults.
Model model_of(const Problem& problem);

} // namespace nutward::agenda
