// A new plan keeps to the last one.
#include "agenda/cases.hpp"
#include "agenda/check.hpp"
#include "agenda/of_plan.hpp"

#include "support/catch.hpp"

using namespace nutward::agenda;

namespace {

Problem shop(std::uint32_t seed) {
  std::mt19937 random(seed);
  return cases::some_shop(random, {.jobs = 9, .tasks = 4, .horizon_h = 900, .doubles = 8, .fixed = false});
}

// Pairs of tasks on one unit that stand the other way round now.
int turned(const Plan& before, const Plan& after) {
  int out = 0;
  for (std::size_t a = 0; a < before.jobs.size(); ++a)
    for (std::size_t b = 0; b < a; ++b)
      for (const Placed& x : before.jobs[a].tasks)
        for (const Placed& y : before.jobs[b].tasks) {
          if (x.units != y.units || x.units.empty()) continue;
          const auto ia = static_cast<std::size_t>(&x - before.jobs[a].tasks.data());
          const auto ib = static_cast<std::size_t>(&y - before.jobs[b].tasks.data());
          const Placed &p = after.jobs[a].tasks[ia], &q = after.jobs[b].tasks[ib];
          if (p.units == x.units && q.units == y.units && (x.start < y.start) != (p.start < q.start)) ++out;
        }
  return out;
}

} // namespace

TEST_CASE("the same problem again, with its plan remembered, has the same plan") {
  for (std::uint32_t seed = 1; seed <= 6; ++seed) {
    Problem p = shop(seed);
    p.worth_moving = seconds{10};
    const Plan first = plan(p, {20'000});
    if (first.value.unplaced > 0) continue;
    remember(p, first);
    const Plan again = plan(p, {20'000});
    CAPTURE(seed);
    CHECK(check(p, again).empty());
    CHECK(again.value <= first.value);
    if (again.value.late_s == first.value.late_s && again.kept) CHECK(turned(first, again) == 0);
  }
}

TEST_CASE("a new job without haste is fitted in, and nothing else moves") {
  int kept = 0;
  for (std::uint32_t seed = 1; seed <= 12; ++seed) {
    Problem p = shop(seed);
    p.worth_moving = seconds{100'000};
    const Plan first = plan(p, {20'000});
    if (first.value.unplaced > 0) continue;
    remember(p, first);
    p.jobs.push_back(p.jobs.front());
    p.jobs.back().due.reset();
    p.jobs.back().weight = 1;
    for (Task& task : p.jobs.back().tasks)
      task.was.reset();
    Plan again = plan(p, {20'000});
    CAPTURE(seed);
    CHECK(check(p, again).empty());
    if (again.value.unplaced > 0 || !again.kept) continue;
    ++kept;
    again.jobs.pop_back();
    CHECK(turned(first, again) == 0);
  }
  CHECK(kept > 1);
}

TEST_CASE("the same steps give the same plan") {
  const Problem p = shop(3);
  const Plan a = plan(p, {30'000}), b = plan(p, {30'000});
  CHECK(a.value == b.value);
  CHECK(a.steps == b.steps);
  for (std::size_t j = 0; j < a.jobs.size(); ++j)
    CHECK(a.jobs[j].tasks == b.jobs[j].tasks);
}
