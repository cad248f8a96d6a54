// Counts steps against a budget.
#pragma once

#include "cutting/plan.hpp"

#include <algorithm>

namespace nutward::cutting {

class Meter {
public:
  explicit Meter(const Budget& budget) : limit_(budget.max_steps), stop_(budget.stop) {}

  // `operations` are elementary ones: some thousand make a step. False once the budget is used up.
  bool spend(std::int64_t operations) {
    operations_ += operations;
    return !over();
  }
  bool over() const { return operations_ / per_step >= limit_ || stop_.stop_requested(); }
  std::int64_t steps() const { return operations_ / per_step; }
  std::int64_t left() const { return std::max<std::int64_t>(0, limit_ - steps()); }
  // A part of what is left, with the same stop. Give back what it spent by spend(part.steps() * per_step).
  Meter part(double share) const {
    return Meter({static_cast<std::int64_t>(static_cast<double>(left()) * share), stop_});
  }

  static constexpr std::int64_t per_step = 1000;

private:
  std::int64_t limit_ = 0;
  std::stop_token stop_;
  std::int64_t operations_ = 0;
};

} // namespace nutward::cutting
