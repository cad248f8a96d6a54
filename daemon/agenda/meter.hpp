// Counts steps against a budget.
#pragma once

#include "agenda/plan.hpp"

#include <algorithm>

namespace nutward::agenda {

class Meter {
public:
  explicit Meter(const Budget& budget) : limit_(budget.max_steps), stop_(budget.stop) {}

  // `nanoseconds` of work, about, by count: a thousand make a step. False once the budget is used up.
  bool spend(std::int64_t nanoseconds) {
    spent_ += nanoseconds;
    return !over();
  }
  bool over() const { return spent_ / per_step >= limit_ || stop_.stop_requested(); }
  std::int64_t steps() const { return spent_ / per_step; }
  std::int64_t left() const { return std::max<std::int64_t>(0, limit_ - steps()); }
  // So many steps of what is left at most, with the same stop. Give back what it spent by
  // spend(part.spent()).
  Meter part(std::int64_t steps) const { return Meter({std::min(steps, left()), stop_}); }
  std::int64_t spent() const { return spent_; }

  static constexpr std::int64_t per_step = 1000;

private:
  std::int64_t limit_ = 0;
  std::stop_token stop_;
  std::int64_t spent_ = 0;
};

// A sequence of numbers that is the same on every machine (xorshift64*, Marsaglia 2003 and Vigna 2016, from
// memory).
class Chance {
public:
  explicit Chance(std::uint64_t seed) : state_(seed * 2 + 1) {}
  std::uint32_t below(std::uint32_t n) { // 0..n-1; n > 0
    state_ ^= state_ >> 12;
    state_ ^= state_ << 25;
    state_ ^= state_ >> 27;
    const std::uint64_t high = (state_ * 0x2545F4914F6CDD1DULL) >> 32;
    return static_cast<std::uint32_t>((high * n) >> 32);
  }

private:
  std::uint64_t state_;
};

} // namespace nutward::agenda
