// The agenda: when every task of every job is done, by whom and on what.
//
// Jobs are rows of tasks, done in their order. A task works for some open time of the units (machines,
// persons) that it needs, and holds them from its start to its end, over closed time in between too. Between
// tasks there may be lags, in elapsed time. What is fixed (started, over, or booked by hand) is never moved:
// its units are closed to all others meanwhile.
//
// Everything is pure: the same problem and the same number of steps give the same plan, on every machine. A
// stretch of time includes its first instant and not its last; a task may start at the instant at which
// another ends.
#pragma once

#include "agenda/bad_agenda.hpp"
#include "units/instant.hpp"

#include <chrono>
#include <compare>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <stop_token>
#include <vector>

namespace nutward::agenda {

using std::chrono::seconds;
using units::Instant;

struct Window {
  Instant from, to; // from < to
  friend auto operator<=>(const Window&, const Window&) = default;
};

// One machine of a kind, or one person: three sanders are three units.
struct Unit {
  std::vector<Window> open; // when it may be used, in rising order, none overlapping (touching is allowed):
                            // opening hours less closures, less what is out of service (see windows.hpp)
  bool shared = false;      // any number of tasks at a time: only its hours count (a bench with room for all)
  std::int64_t set_up_for = 0; // what it is set up for now (Task::set_up); 0: for nothing in particular
};

inline constexpr seconds any_pause{std::int64_t{1} << 40};

// What does not move. end >= start. A task that runs is fixed with the end that is expected.
struct Fixed {
  Instant start, end;
  std::vector<std::size_t> units; // in Problem::units; none held twice within its time, else it is named
};

// Where a task was in the last plan: the next one begins with that.
struct Was {
  Instant start;
  std::vector<std::size_t> units;
};

struct Task {
  seconds work{0}; // open time of all its units at once, 0 to 10 years; elapsed time if it needs none;
                   // no work takes no time, holds nothing and needs no set-up
  std::vector<std::vector<std::size_t>> needs; // one unit of each list, at most two lists, the machine first
  seconds longest_pause =
      any_pause;           // longest closed stretch that it may pause over. 0: none, it lies within
                           // one opening. Something in mid-press may pause for lunch, not overnight.
                           // A fixed task on its unit interrupts only what may pause at any_pause.
  std::int64_t set_up = 0; // set-up that its first unit needs, by number; 0: none
  seconds set_up_work{0}; // added to work, unless the task planned before it on that unit has the same set_up
                          // (what is fixed does not count; a shared unit stays as it is set up)

  std::optional<std::size_t> lags_from; // the task of this job, before it, that the lags count from; else the
                                        // task right before
  seconds least_lag{0};                 // from that task's end to this one's start
  std::optional<seconds> most_lag;      // likewise; never less than least_lag
  bool to_day_limit = false; // most_lag is only then over when Problem::day_limits says so for its instant

  std::optional<Instant> not_before; // of its start
  std::optional<Fixed> fixed;
  std::optional<Was> was;
};

struct Job {
  std::vector<Task> tasks;          // at least one; in this order, one after the other
  Instant release{INT64_MIN / 4};   // nothing of it starts earlier
  std::optional<Instant> due;       // of its last end
  std::int64_t weight = 1;          // 1 to 1000: what a second too late costs
  std::vector<std::size_t> after{}; // jobs that must be over before it starts
};

// "The recheck not later than the end of the next open day": for an instant t the limit is that of the last
// row whose `from` is not after t, but never before t. In rising order of both; before the first row t itself
// is the limit.
struct DayLimit {
  Instant from, limit;
};

enum class Goal {
  in_time = 0,  // least weighted lateness, then the worst job's, then keep_busy, then finish times
  last_end = 1, // the last end of all; due dates and weights do not count
};

struct Problem {
  Instant from;  // now: nothing that is not fixed starts earlier
  Instant until; // hard: nothing that is not fixed ends later. At most 30 years after `from`
  std::vector<Unit> units;
  std::vector<Job> jobs;
  std::vector<DayLimit> day_limits;
  Goal goal = Goal::in_time;
  // Goal in_time: a unit that decides (not shared). How early its work gets done then counts before finish
  // times, so that it idles as little and as late as can be.
  std::optional<std::size_t> keep_busy{};
  // The last plan (Task::was), with what is new fitted in, is kept unless another one places more, overruns
  // less, or is less late by so much (weighted), or is no later and has all finish times together a twentieth
  // earlier. Where the goal is the last end: unless that is earlier by so much.
  seconds worth_moving{3600};
};

// What a plan costs; compared from the first to the last. What goal does not ask for is 0.
struct Value {
  std::int64_t unplaced = 0; // jobs that have no place
  // Sum of what fixed tasks make others exceed: most lags, and ends before bookings.
  std::int64_t overrun_s = 0;
  std::int64_t late_s = 0;   // sum over jobs of weight * max(0, finish - due)
  std::int64_t worst_s = 0;  // the greatest of these products
  std::int64_t last_s = 0;   // last_end: the last end of all - from
  std::int64_t busy = 0;     // sum over tasks that only keep_busy can do of work * (end - from), in s * s
  std::int64_t finish_s = 0; // sum over jobs of weight * max(0, finish - from)
  friend auto operator<=>(const Value&, const Value&) = default;
};

struct Placed {
  Instant start, end;
  std::vector<std::size_t> units; // one for each list of needs, in that order; of a fixed task as it was said
  bool fixed = false;
  friend bool operator==(const Placed&, const Placed&) = default;
};

enum class Why {
  bad_unit = 0,      // `unit`: windows that are empty, overlap or are out of order; it is taken as closed
  bad_job = 1,       // numbers out of range, no task, or a task, job or unit that there is not; not placed
  no_unit = 2,       // a need's list is empty: there is no such machine, or nobody; not placed
  no_open_hours = 3, // its units are never open together for long enough before `until`; not placed
  circular = 4,      // it waits for a job that waits for it; not placed
  waits_for_unplaced = 5,  // a job in `after` is not placed; not placed
  beyond_horizon = 6,      // everything up to `until` is taken; not placed
  most_lag_impossible = 7, // whenever its job is begun, hours and closures exceed the most lag: planned all
                           // the same, as early as the least lag lets it, and the most lag left aside
  overruns = 8,            // later than the most lag, or than a booking, allows, because of what is fixed
  due_passed = 9,          // even if it alone were done it would be late: nothing can help it
  late = 10,               // it will be late by this plan
  double_booked = 11, // `unit` is held by two fixed tasks at a time, this being the later one; both stand
};

// As precise as the fault: job, task and unit where it has them.
struct Fault {
  Why why = Why::bad_unit;
  std::optional<std::size_t> job{}, task{}, unit{};
  friend bool operator==(const Fault&, const Fault&) = default;
};

struct PlannedJob {
  std::vector<Placed> tasks; // one for each task; empty if the job is not placed (what is fixed still holds)
  Instant finish{};          // the last end
  seconds late{0};           // elapsed, 0 if it is in time or has no due date
};

struct Plan {
  std::vector<PlannedJob> jobs; // parallel to Problem::jobs
  std::vector<Fault> faults;    // by job; the rest of the plan stands in spite of them
  // Of many jobs, where it is not proved, finish times may be up to a 200th above the least that was seen,
  // for a unit that decides (load.hpp) to be through with its work earlier.
  Value value;
  Value bound;            // no plan costs less
  bool proved = false;    // value is the least there is
  bool kept = false;      // the last plan's order was kept although another might be a little better
  bool stopped = false;   // the steps ran out, or a stop was asked for, before it was proved
  std::int64_t steps = 0; // used
};

// A step is about a microsecond's work, the same number for the same problem. The caller owns the clock and
// stops through the token; what is best so far is then given back within some ten milliseconds for a
// hundred jobs. There is always a plan.
struct Budget {
  std::int64_t max_steps = 100'000;
  std::stop_token stop{};
};

// Throws nothing but BadAgenda for a problem as a whole out of range: until not after from or over 30 years
// later, over 5000 jobs, 300 units, a keep_busy that is none of them or shared, 64 tasks in a job or 40 units
// in one need's list.
Plan plan(const Problem& problem, const Budget& budget);

} // namespace nutward::agenda
