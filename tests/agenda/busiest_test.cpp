// Which machine decides, and how its work is laid out.
#include "agenda/begin.hpp"
#include "agenda/busiest.hpp"
#include "agenda/cases.hpp"
#include "agenda/check.hpp"
#include "agenda/fill.hpp"
#include "agenda/load.hpp"
#include "support/effort.hpp"

#include "support/catch.hpp"

#include <numeric>

using namespace nutward::agenda;

namespace {

Task some_work(int s, std::vector<std::vector<std::size_t>> needs) {
  Task t;
  t.work = seconds{s};
  t.needs = std::move(needs);
  return t;
}

Job one_task(Task t) {
  Job job;
  job.tasks.push_back(std::move(t));
  return job;
}

constexpr std::int64_t enough = INT64_MAX / 2000;

std::optional<Schedule> listed(Model& m) {
  Meter meter({enough});
  const Board board = begin_by_due_date(m, meter);
  std::optional<Schedule> out(m);
  if (!out->assign(board.order(), board.modes())) return std::nullopt;
  return out;
}

} // namespace

TEST_CASE("who only waits decides nothing") {
  Problem p;
  p.until = Instant{10'000};
  p.units.resize(3);
  for (Unit& unit : p.units)
    unit.open = {{Instant{0}, p.until}};
  for (int n = 0; n < 4; ++n)
    p.jobs.push_back(one_task(some_work(100, {{0}})));
  // One has a booking in the far future, and something to do after it; the other waits for wire.
  Job booked = one_task(some_work(10, {{1}}));
  booked.tasks.front().fixed = Fixed{Instant{8000}, Instant{8010}, {1}};
  booked.tasks.push_back(some_work(20, {{1}}));
  p.jobs.push_back(booked);
  Job waits = one_task(some_work(20, {{2}}));
  waits.tasks.front().not_before = Instant{9000};
  p.jobs.push_back(waits);
  const Plan found = plan(p, {});
  CHECK(found.jobs[4].finish == Instant{8030});
  CHECK(found.jobs[5].finish == Instant{9020});
  const auto busiest = bottleneck(p, found);
  REQUIRE(busiest);
  CHECK(busiest->unit == 0);
  CHECK(busiest->work == seconds{400});
  CHECK(busiest->earliest_end == Instant{400});
  CHECK(busiest->planned_end == Instant{400});
  // Who works but two hours a day takes longer over less.
  p.units[2].open.clear();
  for (int day = 0; day < 100; ++day)
    p.units[2].open.push_back({Instant{100 * day}, Instant{100 * day + 3}});
  CHECK(bottleneck(p, plan(p, {}))->unit == 2);
}

TEST_CASE("the machine that decides fills its openings") {
  Problem p;
  p.units.resize(1);
  for (int day = 0; day < 20; ++day)
    p.units[0].open.push_back({Instant{100 * day}, Instant{100 * day + 48}});
  p.until = Instant{2000};
  // By due date 30, 30, 30 ... each leave 18 idle; 30 and 18 fill an opening.
  std::vector<int> works(6, 30);
  works.insert(works.end(), 6, 18);
  for (const int work : works) {
    p.jobs.push_back(one_task(some_work(work, {{0}})));
    p.jobs.back().tasks.front().longest_pause = seconds{0};
  }
  Model m = model_of(p);
  // First the long ones, then the short ones.
  Schedule s(m);
  std::vector<int> order(12);
  std::iota(order.begin(), order.end(), 0);
  REQUIRE(s.assign(order, std::vector<int>(12, 0)));
  CHECK(s.end(11) == 818);
  Meter meter({enough});
  const auto full = filled(s, 0, meter);
  REQUIRE(full);
  REQUIRE(s.assign(full->order, full->modes));
  CHECK(s.end(s.last_on(0)) == 548); // 6 * 48, and nothing idle
}

TEST_CASE("what is laid out around the machine that decides is a plan") {
  std::mt19937 random(51);
  int laid_out = 0, better = 0, shops = 0;
  for (int n = 0; n < nutward::test::rounds(150); ++n) {
    const Problem p = cases::some_shop(
        random,
        {.jobs = 12, .tasks = 5, .horizon_h = 900, .doubles = 8, .set_ups = cases::one_in(random, 3)});
    Model m = model_of(p);
    auto s = listed(m); // who has no place is planned no more
    const auto decides = deciding(m);
    if (!decides || !s) continue;
    ++shops;
    Meter meter({enough});
    const auto other = filled(*s, decides->unit, meter);
    if (!other) continue;
    ++laid_out;
    CAPTURE(n);
    better += other->value < s->value() ? 1 : 0;
    REQUIRE(s->assign(other->order, other->modes));
    CHECK(s->value() == other->value);
    CHECK(other->order.size() == m.ops.size() - [&] {
      std::size_t out = 0;
      for (const Op& o : m.ops)
        out += m.jobs[static_cast<std::size_t>(o.job)].planned ? 0 : 1;
      return out;
    }());
    CHECK(s->end(s->last_on(decides->unit)) >= decides->earliest_end);
    for (const int op : other->order) {
      const Op& o = m.ops[static_cast<std::size_t>(op)];
      for (const Arc& a : o.in)
        CHECK(s->start(op) >= s->end(a.op) + a.lag);
      if (o.most.source >= 0) CHECK(s->start(op) <= m.limit(o.most, s->end(o.most.source)));
    }
  }
  CHECK(shops > nutward::test::rounds(100));
  CHECK(6 * laid_out > shops); // the others come to the machine again within a most lag
  CHECK(better > 0);
}

TEST_CASE("a large plan is through with its machine as early as can be where nobody's day suffers") {
  std::mt19937 random(52);
  Problem p;
  p.units.resize(5); // a press, four people
  const std::int64_t h = 3600;
  for (auto& unit : p.units)
    for (int day = 0; day < 60; ++day)
      unit.open.push_back({Instant{day * 24 * h}, Instant{day * 24 * h + 8 * h}});
  p.until = Instant{60 * 24 * h};
  for (int n = 0; n < 60; ++n) {
    const std::vector<std::size_t> builder{static_cast<std::size_t>(1 + cases::below(random, 4))};
    Job job = one_task(some_work(1800, {builder}));
    job.tasks.push_back(some_work(300 * (7 + cases::below(random, 7)), {{0}, builder}));
    job.tasks.back().longest_pause = seconds{0};
    job.tasks.push_back(some_work(900, {builder}));
    job.tasks.back().least_lag = seconds{16 * h};
    p.jobs.push_back(job);
  }
  const Plan list = plan(p, {0}), found = plan(p, {200'000});
  CHECK(check(p, found).empty());
  CHECK(found.value.finish_s < list.value.finish_s);
  const auto busiest = bottleneck(p, found);
  REQUIRE(busiest);
  CHECK(busiest->unit == 0);
  const auto over = [&](const Plan& plan) {
    return bottleneck(p, plan)->planned_end - busiest->earliest_end;
  };
  CHECK(over(found) * 4 <= over(list));
  CHECK(over(list) > seconds{3 * h});
}
