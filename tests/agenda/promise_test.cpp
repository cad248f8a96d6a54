#include "agenda/cases.hpp"
#include "agenda/check.hpp"
#include "agenda/of_plan.hpp"
#include "agenda/promise.hpp"

#include "support/catch.hpp"
#include "support/effort.hpp"

#include <algorithm>

using namespace nutward::agenda;
using nutward::test::rounds;

namespace {

// A plan of all jobs but the last, which is the one to promise a day for.
struct Asked {
  Problem problem;
  Plan present;
  Job extra;
};

std::optional<Asked> some_question(std::mt19937& random) {
  Asked out;
  Problem all = cases::some_shop(random, {.jobs = 4, .tasks = 2, .horizon_h = 120, .fixed = false});
  out.extra = all.jobs.back();
  out.extra.after.clear();
  all.jobs.pop_back();
  if (all.jobs.empty()) return std::nullopt;
  out.problem = all;
  out.present = plan(all, {});
  if (out.present.value.unplaced > 0) return std::nullopt;
  return out;
}

Problem with_extra(const Asked& asked) {
  Problem out = asked.problem;
  out.jobs.push_back(asked.extra);
  return out;
}

std::int64_t held(const Asked& asked, std::size_t j) {
  return std::max(asked.problem.jobs[j].due->s, asked.present.jobs[j].finish.s);
}

bool lag_is_impossible(const Problem& p) {
  const Plan found = plan(p, {});
  return std::any_of(found.faults.begin(), found.faults.end(),
                     [](const Fault& f) { return f.why == Why::most_lag_impossible; });
}

} // namespace

TEST_CASE("the promised end is the earliest of all plans in which nobody's day suffers") {
  std::mt19937 random(21);
  int compared = 0;
  for (int n = 0; n < 40; ++n) {
    const auto asked = some_question(random);
    if (!asked) continue;
    const Problem whole = with_extra(*asked);
    if (lag_is_impossible(whole)) continue;
    const Promise p = promise(asked->problem, asked->present, asked->extra, {2'000'000});
    const auto best = cases::best_of_all(whole, [&](const std::vector<std::int64_t>& finish) {
      Value v;
      v.late_s = finish.back();
      for (std::size_t j = 0; j + 1 < finish.size(); ++j)
        if (whole.jobs[j].due && finish[j] > held(*asked, j)) return std::optional<Value>{};
      return std::optional(v);
    });
    CAPTURE(n);
    REQUIRE(p.possible == best.has_value());
    if (!best) continue;
    ++compared;
    CHECK(p.proved);
    CHECK(p.job.finish.s == best->late_s);
    CHECK(p.job.finish == p.plan.jobs.back().finish);
    CHECK(p.job.finish >= p.earliest);
    for (std::size_t j = 0; j < asked->problem.jobs.size(); ++j)
      if (asked->problem.jobs[j].due) CHECK(p.plan.jobs[j].finish.s <= held(*asked, j));
  }
  CHECK(compared > 15);
}

// However little is looked at, a day that is told can be kept, and is none that is too early to be true.
TEST_CASE("a promise that was searched for in a hurry is one all the same") {
  std::mt19937 random(23);
  int compared = 0;
  for (int n = 0; n < rounds(16); ++n) {
    const auto asked = some_question(random);
    if (!asked || lag_is_impossible(with_extra(*asked))) continue;
    const Promise best = promise(asked->problem, asked->present, asked->extra, {300'000});
    if (!best.proved) continue;
    for (const std::int64_t steps : {0, 10, 100, 1000}) {
      const Promise p = promise(asked->problem, asked->present, asked->extra, {steps});
      CAPTURE(n, steps);
      if (!p.possible) continue;
      ++compared;
      CHECK(p.job.finish >= best.job.finish);
      if (p.proved) CHECK(p.job.finish == best.job.finish);
      for (std::size_t j = 0; j < asked->problem.jobs.size(); ++j)
        if (asked->problem.jobs[j].due) CHECK(p.plan.jobs[j].finish.s <= held(*asked, j));
    }
  }
  CHECK(compared >= rounds(20));
}

TEST_CASE("what would have to give for a day is the least of all plans that keep it") {
  std::mt19937 random(22);
  int compared = 0, gave = 0, impossible = 0;
  for (int n = 0; n < rounds(26); ++n) {
    auto asked = some_question(random);
    if (!asked) continue;
    for (std::size_t j = 0; j < asked->problem.jobs.size(); ++j) // nobody has time to spare
      asked->problem.jobs[j].due = asked->present.jobs[j].finish - seconds{cases::below(random, 4)};
    const Problem whole = with_extra(*asked);
    if (lag_is_impossible(whole)) continue;
    const Promise free = promise(asked->problem, asked->present, asked->extra, {200'000});
    if (!free.possible) continue;
    // As early as if nothing else were to be done, or a little later; sometimes too early for anything.
    const Instant by = free.earliest + seconds{cases::one_in(random, 6) ? -1 : cases::below(random, 3)};
    const Price price = promise_by(asked->problem, asked->present, asked->extra, by, {60'000});
    if (!price.proved) continue; // it took too long
    const auto best = cases::best_of_all(whole, [&](const std::vector<std::int64_t>& finish) {
      Value v;
      v.overrun_s = std::max<std::int64_t>(0, finish.back() - by.s);
      for (std::size_t j = 0; j + 1 < finish.size(); ++j)
        v.late_s += whole.jobs[j].weight * std::max<std::int64_t>(0, finish[j] - held(*asked, j));
      return std::optional(v);
    });
    CAPTURE(n);
    REQUIRE(best);
    ++compared;
    CHECK(price.possible == (best->overrun_s == 0));
    CHECK(price.job.finish.s - by.s <= best->overrun_s);
    std::int64_t later = 0;
    for (const Later& l : price.later) {
      CHECK(l.by == l.finish - Instant{held(*asked, l.job)});
      CHECK(l.by > seconds{0});
      later += whole.jobs[l.job].weight * l.by.count();
    }
    CHECK(later == best->late_s);
    gave += price.later.empty() ? 0 : 1;
    impossible += price.possible ? 0 : 1;
  }
  CHECK(compared > rounds(12));
  CHECK(2 * gave >= compared);
  CHECK(impossible >= rounds(2));
}

// 45 jobs of four tasks. They stand close, and each could wait for a week: whoever comes can be first.
TEST_CASE("a large shop in which everybody can wait has the earliest day for one more") {
  std::mt19937 random(24);
  const std::int64_t h = 3600;
  for (const int wait_h : {24 * 7, 8}) {
    Problem p;
    p.units.resize(5); // a press, four people
    for (auto& unit : p.units)
      for (int day = 0; day < 60; ++day)
        unit.open.push_back({Instant{day * 24 * h}, Instant{day * 24 * h + 8 * h}});
    p.until = Instant{60 * 24 * h};
    for (int n = 0; n < 45; ++n) {
      const std::vector<std::size_t> builder{static_cast<std::size_t>(1 + cases::below(random, 4))};
      Job job;
      job.tasks.resize(4);
      for (Task& task : job.tasks) {
        task.work = seconds{300 * (4 + cases::below(random, 8))};
        task.needs = {builder};
      }
      job.tasks[2].needs = {{0}, builder};
      job.tasks[2].longest_pause = seconds{0};
      job.tasks[3].least_lag = seconds{16 * h};
      p.jobs.push_back(job);
    }
    const Job extra = p.jobs.back();
    p.jobs.pop_back();
    const Plan present = plan(p, {20'000});
    for (std::size_t j = 0; j < p.jobs.size(); ++j)
      p.jobs[j].due = present.jobs[j].finish + seconds{wait_h * h};
    const Promise found = promise(p, present, extra, {60'000});
    REQUIRE(found.possible);
    CAPTURE(wait_h, found.earliest.s, found.job.finish.s);
    if (wait_h > 24) {
      CHECK(found.proved);
      CHECK(found.job.finish == found.earliest);
    }
    // What was found is a plan of all jobs, and nobody is late in it.
    Problem whole = p;
    whole.jobs.push_back(extra);
    whole.jobs.back().due = found.job.finish;
    remember(whole, found.plan);
    const Plan again = plan(whole, {0});
    CHECK(check(whole, again).empty());
    CHECK(again.value.late_s == 0);
  }
}

TEST_CASE("a job for which there is no machine is promised no day") {
  Problem p;
  p.until = Instant{1000};
  p.units.push_back({{{Instant{0}, Instant{100}}}});
  Job job;
  job.tasks.push_back({});
  job.tasks[0].work = seconds{10};
  job.tasks[0].needs = {{0}};
  p.jobs.push_back(job);
  const Plan present = plan(p, {});
  job.tasks[0].needs = {{}};
  CHECK(!promise(p, present, job, {}).possible);
  job.tasks[0].needs = {{0}};
  job.tasks[0].work = seconds{91}; // 100 less what the first one takes, and a second
  CHECK(!promise(p, present, job, {}).possible);
  job.tasks[0].work = seconds{90};
  const Promise good = promise(p, present, job, {});
  CHECK(good.possible);
  CHECK(good.earliest == Instant{90});
  CHECK(good.job.finish == Instant{90}); // the other one has no day to keep
  CHECK_THROWS_AS(promise(p, Plan{}, job, {}), BadAgenda);
}
