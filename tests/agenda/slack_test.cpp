#include "agenda/cases.hpp"
#include "agenda/deadline.hpp"
#include "agenda/load.hpp"
#include "agenda/of_plan.hpp"
#include "agenda/slack.hpp"
#include "agenda/windows.hpp"
#include "hours/load_zone.hpp"

#include "support/catch.hpp"

using namespace nutward::agenda;
using nutward::units::Day;
namespace ch = std::chrono;

namespace {

constexpr std::int32_t h = 3'600;

// Whether any job is later than its due date and than the plan had it, in the plan's order, with one task
// held back to a start.
bool makes_late(Problem p, const Plan& plan, std::size_t j, std::size_t t, Instant start) {
  p.jobs[j].tasks[t].not_before = start;
  Model m = model_of(p);
  const auto s = schedule_of(m, plan);
  if (!s) return true; // beyond the horizon
  for (const int job : m.job_order) {
    const auto i = static_cast<std::size_t>(job);
    if (p.jobs[i].due && s->finish(job) > std::max(p.jobs[i].due->s, plan.jobs[i].finish.s)) return true;
  }
  return s->value().overrun_s > plan.value.overrun_s;
}

nutward::hours::Calendar workshop() {
  nutward::hours::Calendar c;
  for (std::size_t i = 0; i < 5; ++i)
    c.weekly.at(i) = {{9 * h, 13 * h}, {14 * h, 18 * h}};
  return c;
}

} // namespace

TEST_CASE("a task may begin at its latest start in the plan, and not a moment later") {
  std::mt19937 random(31);
  int tried = 0;
  for (int n = 0; n < 40; ++n) {
    const Problem p = cases::some_shop(
        random, {.jobs = 5, .tasks = 3, .horizon_h = 200, .most_lags = false, .fixed = false});
    const Plan found = plan(p, {});
    if (found.value.unplaced > 0) continue;
    const auto latest = latest_starts(p, found);
    for (std::size_t j = 0; j < p.jobs.size(); ++j)
      for (std::size_t t = 0; t < p.jobs[j].tasks.size(); ++t) {
        CAPTURE(n, j, t);
        REQUIRE(latest[j][t]);
        const Latest& l = *latest[j][t];
        CHECK(l.slack == l.in_plan - found.jobs[j].tasks[t].start);
        CHECK(!makes_late(p, found, j, t, l.in_plan));
        if (l.in_plan < p.until - seconds{20}) CHECK(makes_late(p, found, j, t, l.in_plan + seconds{1}));
        if (l.alone && found.jobs[j].late == seconds{0}) CHECK(*l.alone >= found.jobs[j].tasks[t].start);
        ++tried;
      }
  }
  CHECK(tried > 300);
}

// The stages of a refret for one person and one press, against the other computation (deadline.hpp).
TEST_CASE("the latest start of the press is what the latest press says") {
  const auto zone = nutward::hours::load_zone("Europe/Berlin");
  const auto calendar = workshop();
  const Day due_day = Day::from(ch::year{2026} / 11 / 27);
  for (int later = 0; later < 10; ++later) {
    const Instant due = zone->instant(due_day + later, 17 * h);
    Problem p;
    p.from = zone->instant(due_day - 30, 0);
    p.until = zone->instant(due_day + 30, 0);
    p.units.resize(2);
    p.units[0].open = p.units[1].open = windows(calendar, *zone, p.from, p.until);
    Job job;
    job.due = due;
    std::size_t press = 0;
    const auto stages = stages_of({});
    for (const Stage& stage : stages) {
      Task task;
      task.work = stage.work;
      if (stage.kind != StageKind::wait && stage.work > seconds{0}) task.needs = {{1}};
      if (stage.kind == StageKind::press) {
        press = job.tasks.size();
        task.needs = {{0}, {1}};
        task.longest_pause = night;
      } else if (stage.lag > seconds{0}) {
        task.lags_from = press;
        task.least_lag = stage.lag;
      }
      job.tasks.push_back(task);
    }
    p.jobs.push_back(job);
    const auto latest = latest_starts(p, plan(p, {}));
    CAPTURE(later);
    CHECK(latest[0][press]->alone == latest_press(due, stages, calendar, *zone));
  }
}

TEST_CASE("load is told by stretch: open, held, worked") {
  Problem p;
  p.until = Instant{1000};
  p.units.resize(2);
  p.units[0].open = {{Instant{0}, Instant{40}}, {Instant{60}, Instant{100}}};
  p.units[1].open = {{Instant{0}, Instant{100}}};
  Job booked, job;
  booked.tasks.resize(1);
  booked.tasks[0].fixed = Fixed{Instant{10}, Instant{20}, {0}};
  job.tasks.resize(1);
  job.tasks[0].needs = {{0}, {1}};
  job.tasks[0].work = seconds{50}; // 0 to 10, 20 to 40, 60 to 80
  p.jobs = {booked, job};
  const Plan found = plan(p, {});
  REQUIRE(found.jobs[1].finish == Instant{80});
  const std::vector<Instant> bounds{Instant{0}, Instant{30}, Instant{70}, Instant{200}};
  const auto loads = load(p, found, bounds);
  const auto s = [](int n) { return seconds{n}; };
  CHECK(loads[0] == std::vector<Load>{{s(30), s(10), s(20)}, {s(20), s(0), s(20)}, {s(30), s(0), s(10)}});
  CHECK(loads[1] == std::vector<Load>{{s(30), s(0), s(20)}, {s(40), s(0), s(20)}, {s(30), s(0), s(10)}});
  CHECK(load(p, found, {}) == std::vector<std::vector<Load>>(2));
  const auto busiest = bottleneck(p, found);
  REQUIRE(busiest);
  CHECK(busiest->unit == 0);
  CHECK(busiest->earliest_end == Instant{80});
  CHECK(busiest->planned_end == Instant{80});
  CHECK(busiest->work == seconds{50});
}

TEST_CASE("no plan is through with a machine before its bound says so") {
  std::mt19937 random(32);
  for (int n = 0; n < 30; ++n) {
    const Problem p = cases::some_shop(random, {.jobs = 6, .tasks = 4, .horizon_h = 300});
    const Plan found = plan(p, {5'000});
    const auto busiest = bottleneck(p, found);
    CAPTURE(n);
    if (busiest) CHECK(busiest->planned_end >= busiest->earliest_end);
  }
}

TEST_CASE("a plan of another agenda has no latest starts here") {
  std::mt19937 random(33);
  const Problem p = cases::some_shop(random, {});
  CHECK_THROWS_AS(latest_starts(p, Plan{}), BadAgenda);
}
