// What cannot be planned is said, and the rest is planned all the same.
#include "agenda/check.hpp"
#include "agenda/windows.hpp"
#include "hours/load_zone.hpp"

#include "support/catch.hpp"

#include <algorithm>

using namespace nutward::agenda;
using nutward::hours::Calendar;
using nutward::hours::load_zone;
using nutward::units::Day;
namespace ch = std::chrono;

namespace {

constexpr std::int32_t h = 3'600;

Task task(int work, std::vector<std::vector<std::size_t>> needs) {
  Task out;
  out.work = seconds{work};
  out.needs = std::move(needs);
  return out;
}

// Two units, open from 0 to 100 and from 200 to 300; one job that can always be done.
Problem two_units() {
  Problem p;
  p.until = Instant{1000};
  p.units.resize(2);
  for (Unit& unit : p.units)
    unit.open = {{Instant{0}, Instant{100}}, {Instant{200}, Instant{300}}};
  Job good;
  good.tasks = {task(10, {{0}})};
  p.jobs = {good};
  return p;
}

// The plan, of which the first job is planned whatever is wrong with others.
Plan planned(const Problem& p) {
  Plan out = plan(p, {});
  CHECK(check(p, out).empty());
  CHECK(out.jobs[0].finish == Instant{10});
  return out;
}

bool has(const Plan& plan, Fault fault) {
  return std::find(plan.faults.begin(), plan.faults.end(), fault) != plan.faults.end();
}

// The one fault of a second job with these tasks.
void faults_with(const std::vector<Task>& tasks, Why why, std::size_t at) {
  Problem p = two_units();
  p.jobs.emplace_back().tasks = tasks;
  const Plan found = planned(p);
  CHECK(found.faults == std::vector<Fault>{{why, 1, at, {}}});
  CHECK(found.jobs[1].tasks.empty());
  CHECK(found.value.unplaced == 1);
}

} // namespace

TEST_CASE("a job that needs a machine that there is not is not placed") {
  faults_with({task(1, {{0}}), task(1, {{}, {1}})}, Why::no_unit, 1);
}

TEST_CASE("a job whose units are never open for long enough is not placed") {
  Task whole = task(101, {{0}});
  whole.longest_pause = seconds{99};
  faults_with({task(1, {{0}}), whole}, Why::no_open_hours, 1);
  faults_with({task(201, {{0}})}, Why::no_open_hours, 0);
}

TEST_CASE("a job that comes too late for the horizon is not placed") {
  Task late = task(50, {{0}});
  late.not_before = Instant{260};
  faults_with({late}, Why::beyond_horizon, 0);
}

TEST_CASE("where all is taken up to the horizon the job due last is not placed") {
  Problem p = two_units();
  for (int i = 0; i < 2; ++i) {
    p.jobs.emplace_back().tasks = {task(100, {{0}})};
    p.jobs.back().due = Instant{300 + i};
  }
  p.jobs[0].due = Instant{10};
  const Plan found = planned(p);
  CHECK(has(found, {Why::beyond_horizon, 2, {}, {}}));
  CHECK(!found.proved);
}

TEST_CASE("jobs that wait for one another in a circle are not placed, nor what waits for them") {
  Problem p = two_units();
  for (int i = 0; i < 3; ++i)
    p.jobs.emplace_back().tasks = {task(1, {{0}})};
  p.jobs[1].after = {2};
  p.jobs[2].after = {1};
  p.jobs[3].after = {2};
  const Plan found = planned(p);
  CHECK(has(found, {Why::circular, 1, {}, {}}));
  CHECK(has(found, {Why::circular, 2, {}, {}}));
  CHECK(found.value.unplaced == 3);
  p.jobs[2].after = {};
  p.jobs[2].tasks[0].needs = {{}};
  const Plan other = planned(p);
  CHECK(has(other, {Why::no_unit, 2, 0, {}}));
  CHECK(has(other, {Why::waits_for_unplaced, 1, {}, {}}));
  CHECK(has(other, {Why::waits_for_unplaced, 3, {}, {}}));
}

TEST_CASE("numbers out of range are named, task by task") {
  Task bad = task(1, {{0}});
  bad.work = seconds{-1};
  faults_with({task(1, {{0}}), bad}, Why::bad_job, 1);
  bad = task(1, {{2}});
  faults_with({bad}, Why::bad_job, 0);
  bad = task(1, {{0}});
  bad.lags_from = 1;
  faults_with({task(1, {{0}}), bad}, Why::bad_job, 1);
  bad = task(1, {{0}});
  bad.least_lag = seconds{2};
  bad.most_lag = seconds{1};
  faults_with({task(1, {{0}}), bad}, Why::bad_job, 1);
  bad = task(1, {{0}});
  bad.fixed = Fixed{Instant{5}, Instant{4}, {0}};
  faults_with({bad}, Why::bad_job, 0);
}

TEST_CASE("a unit whose windows overlap counts as closed") {
  Problem p = two_units();
  p.units[1].open[1].from = Instant{99};
  p.jobs.emplace_back().tasks = {task(1, {{1}})};
  const Plan found = planned(p);
  CHECK(has(found, {Why::bad_unit, {}, {}, 1}));
  CHECK(has(found, {Why::no_open_hours, 1, 0, {}}));
}

TEST_CASE("a due date that nothing can keep is told apart from one that this plan does not keep") {
  Problem p = two_units();
  p.jobs[0].due = Instant{10};
  for (int i = 0; i < 2; ++i) {
    p.jobs.emplace_back().tasks = {task(10, {{0}})};
    p.jobs.back().due = Instant{i == 0 ? 5 : 20};
  }
  const Plan found = plan(p, {});
  CHECK(check(p, found).empty());
  CHECK(has(found, {Why::due_passed, 1, {}, {}}));
  CHECK(has(found, {Why::late, 1, {}, {}}));
  CHECK(!has(found, {Why::due_passed, 2, {}, {}}));
  CHECK(found.proved);
}

TEST_CASE("what is booked twice is named and stands") {
  Problem p = two_units();
  for (int i = 0; i < 2; ++i) {
    p.jobs.emplace_back().tasks = {task(30, {{1}})};
    p.jobs.back().tasks[0].fixed = Fixed{Instant{20 + 10 * i}, Instant{50 + 10 * i}, {1}};
  }
  const Plan found = planned(p);
  CHECK(found.faults == std::vector<Fault>{{Why::double_booked, 2, 0, 1}});
  CHECK(found.jobs[1].finish == Instant{50});
  CHECK(found.jobs[2].finish == Instant{60});
}

TEST_CASE("what a booking makes impossible is planned as well as can be and said to overrun") {
  Problem p = two_units();
  p.jobs.emplace_back().tasks = {task(30, {{1}}), task(10, {{1}})};
  p.jobs[1].tasks[1].fixed = Fixed{Instant{20}, Instant{30}, {1}};
  const Plan found = planned(p); // 0 to 20 and 30 to 40
  CHECK(found.jobs[1].tasks[0].end == Instant{40});
  CHECK(has(found, {Why::overruns, 1, 0, {}}));
  CHECK(found.value.overrun_s == 20);
}

// Pressed on Wednesday 23 December 2026; the shop is closed until 4 January. The recheck is due a day after,
// and overdue when the first open day after that ends; somebody who may not do it before the 11th is too
// late.
TEST_CASE("closures over the recheck move its limit, and what exceeds it all the same is planned and said") {
  const auto zone = load_zone("Europe/Berlin");
  const auto day = [](int y, unsigned m, unsigned d) {
    return Day::from(ch::year{y} / ch::month{m} / ch::day{d});
  };
  Calendar calendar;
  for (std::size_t i = 0; i < 5; ++i)
    calendar.weekly.at(i) = {{9 * h, 17 * h}};
  for (Day d = day(2026, 12, 24); d < day(2027, 1, 4); d = d + 1)
    calendar.closures.insert(d);
  Problem p;
  p.from = zone->instant(day(2026, 12, 23), 9 * h);
  p.until = zone->instant(day(2027, 3, 1), 0);
  p.units.resize(2);
  p.units[0].open = windows(calendar, *zone, p.from, p.until);
  p.units[1].open = windows(calendar, *zone, zone->instant(day(2027, 1, 11), 0), p.until);
  p.day_limits = day_limits(calendar, *zone, p.from, p.until);
  Job job;
  job.tasks = {task(h, {{0}}), task(900, {{0}})};
  job.tasks[0].longest_pause = seconds{0};
  job.tasks[1].least_lag = ch::hours{16};
  job.tasks[1].most_lag = ch::hours{24};
  job.tasks[1].to_day_limit = true;
  p.jobs = {job};
  const Plan good = plan(p, {});
  CHECK(check(p, good).empty());
  CHECK(good.faults.empty());
  CHECK(good.jobs[0].tasks[0].start == p.from);
  CHECK(good.jobs[0].tasks[1].start == zone->instant(day(2027, 1, 4), 9 * h));
  p.jobs[0].tasks[1].needs = {{1}};
  const Plan waits = plan(p, {}); // pressing waits for the 7th: pressed then, it is due on Friday the 8th
  CHECK(check(p, waits).empty());
  CHECK(waits.faults.empty());
  CHECK(waits.jobs[0].tasks[0].start == zone->instant(day(2027, 1, 7), 9 * h));
  p.jobs[0].tasks[1].to_day_limit = false;
  p.units[1].open = windows(calendar, *zone, p.from, zone->instant(day(2026, 12, 24), 0)); // and never again
  p.units[1].open.push_back(
      {zone->instant(day(2027, 2, 28), 9 * h), zone->instant(day(2027, 2, 28), 10 * h)});
  const Plan late = plan(p, {}); // the 28th is a Sunday
  CHECK(check(p, late).empty());
  CHECK(late.faults == std::vector<Fault>{{Why::most_lag_impossible, 0, 1, {}}});
  CHECK(late.jobs[0].tasks[1].start == zone->instant(day(2027, 2, 28), 9 * h));
}

// tz database: 2026-03-29 01:00 and 2026-10-25 01:00 UTC.
TEST_CASE("a night of 23 or 25 hours is the time that it is") {
  const auto zone = load_zone("Europe/Berlin");
  for (const auto& [month, day, hours] : {std::tuple(3U, 28U, 23), std::tuple(10U, 24U, 25)}) {
    const Day saturday = Day::from(ch::year{2026} / ch::month{month} / ch::day{day});
    Calendar calendar;
    calendar.weekly[5] = calendar.weekly[6] = {{0, 24 * h}};
    Problem p;
    p.from = zone->instant(saturday, 12 * h);
    p.until = zone->instant(saturday + 3, 0);
    p.units.resize(1);
    p.units[0].open = windows(calendar, *zone, p.from, p.until);
    Job job;
    job.tasks = {task(12 * h, {{0}}), task(12 * h, {{0}})};
    p.jobs = {job};
    const Plan found = plan(p, {});
    CHECK(check(p, found).empty());
    CHECK(found.jobs[0].finish - p.from == ch::hours{24});
    CHECK(found.jobs[0].finish == zone->instant(saturday + 1, (36 - hours) * h));
  }
}

TEST_CASE("a problem out of range as a whole is refused") {
  Problem p = two_units();
  p.until = p.from;
  CHECK_THROWS_AS(plan(p, {}), BadAgenda);
  p = two_units();
  p.keep_busy = 2;
  CHECK_THROWS_AS(plan(p, {}), BadAgenda);
  p = two_units();
  p.jobs.resize(5001);
  CHECK_THROWS_AS(plan(p, {}), BadAgenda);
}

TEST_CASE("nothing to plan is a plan") {
  Problem p;
  p.until = Instant{1};
  const Plan found = plan(p, {});
  CHECK(found.proved);
  CHECK(found.jobs.empty());
  CHECK(check(p, found).empty());
}

TEST_CASE("a stop asked for before it begins still gives a plan") {
  const Problem p = two_units();
  std::stop_source stop;
  stop.request_stop();
  const Plan found = plan(p, {1'000'000, stop.get_token()});
  CHECK(check(p, found).empty());
  CHECK(found.value.unplaced == 0);
}
