// List scheduling: one job after the other, each task as early as what is already placed lets it, also into
// gaps.
#pragma once

#include "agenda/schedule.hpp"

namespace nutward::agenda {

// Busy times of units, and single jobs placed around them.
class Board {
public:
  explicit Board(const Model& model);

  // Places a job's ops, each on the units on which it ends first, most lags kept; false and nothing done if
  // it has no place before the horizon. Jobs that it waits for must have been placed. `by`, where given,
  // holds a mode for each op of the model, -1 for whichever ends first.
  bool add(int job, const std::vector<int>* by = nullptr);
  // Some ops in a row of a job, those before them placed already, `least[i]` the earliest start of ops[i];
  // raised where a most lag asks for it. False and nothing done as above, or where a most lag counts from
  // before them.
  bool add_ops(std::span<const int> ops, std::vector<Second>& least, const std::vector<int>* by = nullptr);
  // An op alone, not before `ready` and what it follows; what is over by its end is not looked at.
  bool add_op(int op, Second ready, std::optional<int> mode);
  void remove_op(int op);
  void put(int op, int mode, Stretch where); // as it is; in nobody's way

  Stretch at(int op) const {
    return {start_[static_cast<std::size_t>(op)], end_[static_cast<std::size_t>(op)]};
  }
  const std::vector<int>& modes() const { return mode_; }
  // Those placed by start, in an order that keeps to every arc.
  std::vector<int> order() const;
  std::int64_t placed() const { return placed_; } // tries so far

private:
  struct Busy {
    Second start, end;
    int op;
  };
  Stretch find(const Mode& mode, Second ready, Second work) const;

  const Model& m_;
  std::vector<std::vector<Busy>> busy_; // of each unit, by start
  std::vector<Second> start_, end_;
  std::vector<int> mode_;
  std::vector<char> there_;
  std::vector<int> rank_; // of each job in model.job_order
  mutable std::int64_t placed_ = 0;
};

// Jobs by due date (those without one last), then weight, then as they stand; each after those it waits for.
std::vector<int> by_due_date(const Model& model);

// All jobs of `order`, one after the other; those for which there is no place are added to `unplaced`.
Board list_schedule(const Model& model, const std::vector<int>& order, std::vector<int>& unplaced);

} // namespace nutward::agenda
