#include "agenda/cases.hpp"
#include "agenda/check.hpp"
#include "agenda/promise.hpp"

#include "support/catch.hpp"

#include <algorithm>

using namespace nutward::agenda;

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

TEST_CASE("what would have to give for a day is the least of all plans that keep it") {
  std::mt19937 random(22);
  int compared = 0, gave = 0;
  for (int n = 0; n < 20; ++n) {
    const auto asked = some_question(random);
    if (!asked) continue;
    const Problem whole = with_extra(*asked);
    if (lag_is_impossible(whole)) continue;
    const Promise free = promise(asked->problem, asked->present, asked->extra, {2'000'000});
    if (!free.possible) continue;
    const Instant by = free.earliest; // as early as if nothing else were to be done
    const Price price = promise_by(asked->problem, asked->present, asked->extra, by, {150'000});
    if (!price.proved) continue; // it took too long
    const auto best = cases::best_of_all(whole, [&](const std::vector<std::int64_t>& finish) {
      Value v;
      v.overrun_s = std::max<std::int64_t>(0, finish.back() - by.s);
      for (std::size_t j = 0; j + 1 < finish.size(); ++j)
        if (whole.jobs[j].due)
          v.late_s += whole.jobs[j].weight * std::max<std::int64_t>(0, finish[j] - held(*asked, j));
      return std::optional(v);
    });
    CAPTURE(n);
    REQUIRE(best);
    ++compared;
    CHECK(price.possible == (best->overrun_s == 0));
    std::int64_t later = 0;
    for (const Later& l : price.later)
      later += whole.jobs[l.job].weight * l.by.count();
    CHECK(later == best->late_s);
    gave += price.later.empty() ? 0 : 1;
  }
  CHECK(compared > 8);
  CHECK(gave > 2);
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
