// Small random agendas in whole hours, and the best plan of one found by looking at all, without any of the
// solver's code.
#pragma once

#include "agenda/plan.hpp"

#include <functional>
#include <random>

namespace cases {

namespace agenda = nutward::agenda;

// An hour is a second here: then every plan there is is one in whole hours.
inline constexpr int hour = 1;

// 0..n-1
int below(std::mt19937& random, int n);
inline bool one_in(std::mt19937& random, int n) {
  return below(random, n) == 0;
}

struct Wanted {
  int jobs = 3, tasks = 3; // at most; at least one and two
  int horizon_h = 60;
  int doubles = 2; // tasks with two machines, or a machine and a person, at most
  bool calendars = true, lags = true, most_lags = true, fixed = true, set_ups = false, keep_busy = false;
};
agenda::Problem some_shop(std::mt19937& random, const Wanted& wanted);

// For every order of tasks and every choice of units the earliest plan, by raising starts by an hour until
// nothing is violated any more. nullopt if no plan keeps everything before the horizon.
std::optional<agenda::Value> best_of_all(const agenda::Problem& problem);

// The same with another value for a plan, by when each job is finished; nullopt if that plan is out of
// question.
using Judge = std::function<std::optional<agenda::Value>(const std::vector<std::int64_t>& finish_s)>;
std::optional<agenda::Value> best_of_all(const agenda::Problem& problem, const Judge& judge);

} // namespace cases
