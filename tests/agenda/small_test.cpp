// Small shops, against all plans that there are.
#include "agenda/cases.hpp"
#include "agenda/check.hpp"

#include "support/catch.hpp"

#include <algorithm>

using namespace nutward::agenda;
using cases::some_shop;

namespace {

bool has(const Plan& plan, Why why) {
  return std::any_of(plan.faults.begin(), plan.faults.end(), [&](const Fault& f) { return f.why == why; });
}

// Proved by the solver and equal to the best of all orders, level for level. Gives how many were compared.
int compare(std::uint32_t seed, int shops, const cases::Wanted& wanted) {
  std::mt19937 random(seed);
  int compared = 0;
  for (int n = 0; n < shops; ++n) {
    const Problem p = some_shop(random, wanted);
    const Plan found = plan(p, {2'000'000});
    CAPTURE(seed, n);
    for (const std::string& wrong : check(p, found)) {
      CAPTURE(wrong);
      CHECK(wrong.empty());
    }
    if (found.value.unplaced > 0 || has(found, Why::most_lag_impossible)) continue;
    const auto best = cases::best_of_all(p);
    REQUIRE(best);
    CHECK(found.proved);
    CHECK(found.value.overrun_s == best->overrun_s);
    CHECK(found.value.late_s == best->late_s);
    CHECK(found.value.worst_s == best->worst_s);
    CHECK(found.value.busy == best->busy);
    CHECK(found.value.finish_s == best->finish_s);
    ++compared;
  }
  return compared;
}

} // namespace

TEST_CASE("small shops without hours and lags are planned as well as can be") {
  CHECK(compare(1, 60, {.calendars = false, .lags = false, .most_lags = false, .fixed = false}) > 50);
}

TEST_CASE("small shops with hours, breaks and tasks that may not pause are planned as well as can be") {
  CHECK(compare(2, 60, {.lags = false, .most_lags = false, .fixed = false}) > 40);
}

TEST_CASE("small shops with least and most lags are planned as well as can be") {
  CHECK(compare(3, 80, {.fixed = false}) > 40);
  CHECK(compare(4, 40, {.calendars = false, .fixed = false}) > 30);
}

TEST_CASE("small shops with fixed tasks are planned as well as can be") {
  CHECK(compare(5, 80, {}) > 40);
}

TEST_CASE("shops of four jobs are planned as well as can be") {
  CHECK(compare(6, 40, {.jobs = 4, .tasks = 2, .horizon_h = 80}) > 20);
}

TEST_CASE("set-ups that tasks in a row share are planned as well as can be") {
  CHECK(compare(7, 40, {.lags = false, .most_lags = false, .set_ups = true}) > 20);
}

TEST_CASE("a machine that is to be kept busy idles as little as can be") {
  CHECK(compare(8, 40, {.most_lags = false, .fixed = false, .keep_busy = true}) > 20);
}

// Wire that is still to arrive: the cut waits for it, what comes before it does not, and others use the time.
TEST_CASE("one stage may have to wait for its wire, and all else goes on") {
  Problem p;
  p.until = Instant{1000};
  p.units.push_back({{{Instant{0}, Instant{1000}}}});
  Job waits, other;
  for (int n = 0; n < 3; ++n) {
    Task task;
    task.work = seconds{10};
    task.needs = {{0}};
    waits.tasks.push_back(task);
  }
  waits.tasks[1].not_before = Instant{100}; // the cut
  waits.due = Instant{130};
  other.tasks.push_back(waits.tasks[0]);
  other.tasks[0].work = seconds{70};
  other.due = Instant{115};
  p.jobs = {waits, other};
  const Plan found = plan(p, {});
  CHECK(check(p, found).empty());
  CHECK(found.proved);
  CHECK(found.value.late_s == 0);
  CHECK(found.jobs[0].tasks[0].end <= Instant{100});
  CHECK(found.jobs[0].tasks[1].start == Instant{100});
  CHECK(found.jobs[0].finish == Instant{120});
  CHECK(found.jobs[1].finish <= Instant{100});
  // A last plan that had it earlier, when the wire was thought to be there, is no way around that.
  p.jobs[0].tasks[1].was = Was{Instant{10}, {0}};
  CHECK(plan(p, {}).jobs[0].tasks[1].start == Instant{100});
  CHECK(plan(p, {0}).jobs[0].tasks[1].start >= Instant{100});
  // And wire that comes after the horizon is none.
  p.jobs[0].tasks[1].not_before = Instant{995};
  CHECK(has(plan(p, {}), Why::beyond_horizon));
}
