// The agenda on a real SQLite file with the planner: what is stored, what stays where it was, how it ages,
// and what answers make of it. It is Wednesday, 25 March 2026, 11:00 in Berlin, whose clock is put forward on
// the 29th; the shop is open on weekdays from 9 to 18, and Mara, Ines and Tomo work there.
#include "agenda/check.hpp"
#include "bench.hpp"
#include "draw/judged.hpp"
#include "shop/agenda_plan.hpp"
#include "shop/kept_agenda.hpp"
#include "shop/planner.hpp"
#include "support/catch.hpp"

#include <algorithm>

using namespace nutward;
using namespace nutward::test;

namespace {

struct Planning : Shop {
  Planning() { begin(); }
  ~Planning() {
    executor.reset();
    made.sqlite->on_change({});
  }
  void begin() {
    planner = std::make_unique<Planner>(*made.sqlite, clock, std::vector{agenda_plans(clock, rooms)});
    made.sqlite->on_change([this](std::int64_t) { planner->changed(); });
    planner->wait_until_done();
  }
  void settle() {
    planner->changed();
    planner->wait_until_done();
  }
  std::optional<StoredPlan> stored() {
    return seen([&](const View& v) { return v.plans().find(agenda_planning, 1); });
  }
  AgendaPlan now() {
    return seen([&](const View& v) {
      const auto room = rooms.of(v);
      return agenda_of(v, room.calendar, *room.zone, clock.now());
    });
  }
  std::optional<Instant> ages() {
    return seen([&](const View& v) {
      const auto room = rooms.of(v);
      return agenda_ages(v, room.calendar, *room.zone, clock.now());
    });
  }
  std::unique_ptr<Planner> planner;
};

// When a stage of a job is planned.
const agenda::Placed& placed(const AgendaPlan& a, std::int64_t job, std::string_view stage) {
  for (std::size_t j = 0; j < a.what.jobs.size(); ++j)
    for (std::size_t t = 0; a.what.jobs[j].job == job && t < a.what.jobs[j].tasks.size(); ++t)
      if (a.what.jobs[j].tasks[t].stage == stage) return a.plan.jobs.at(j).tasks.at(t);
  throw std::runtime_error("no such stage in the plan");
}

const Value& of_job(const Answer& a, std::int64_t job) {
  const Value& jobs = at(a.data, "jobs");
  for (std::size_t n = 0; n < size(jobs); ++n)
    if (as<Ref>(at(item(jobs, n), "job")).id == job) return item(jobs, n);
  throw std::runtime_error("no such job in the answer");
}

} // namespace

TEST_CASE("the agenda is stored, keeps to its problem, and the answer is that one with its time") {
  Planning shop;
  const auto plan = shop.stored();
  REQUIRE(plan.has_value());
  CHECK(plan->settled);
  const AgendaPlan now = shop.now();
  CHECK(now.planned_at == instant("2026-03-25T10:00:00Z"));
  CHECK_FALSE(now.brought_up_to_date);
  CHECK(now.settled);
  CHECK(agenda::check(now.what.problem, now.plan).empty());
  CHECK(placed(now, 1, "pull").start == instant("2026-03-25T10:00:00Z"));
  const Answer a = shop.asks("agenda");
  CHECK(field<bool>(a, "settled"));
  CHECK(as<Instant>(at(a.data, "planned_at")) == instant("2026-03-25T10:00:00Z"));
  CHECK(a.text.starts_with("The next 7 days: "));
}

TEST_CASE("a plan survives its text, and a text that is none is no plan") {
  Planning shop;
  const std::string body = shop.stored().value().body;
  const auto kept = agenda_from_text(body);
  REQUIRE(kept.has_value());
  CHECK(to_text(*kept) == body);
  const AgendaInput input = shop.now().what;
  const auto plan = plan_of(*kept, input);
  REQUIRE(plan.has_value());
  CHECK(plan->jobs.size() == input.jobs.size());
  CHECK_FALSE(agenda_from_text(""));
  CHECK_FALSE(agenda_from_text("2" + body.substr(1)));
  CHECK_FALSE(agenda_from_text(body + " 1"));
  for (std::size_t cut = 1; cut < body.size(); cut += 7)
    CHECK_FALSE(agenda_from_text(std::string_view(body).substr(0, cut)));
}

TEST_CASE("what is reported leaves the rest where it was, and over a restart nothing is planned again") {
  Planning shop;
  const auto press = placed(shop.now(), 2, "press");
  shop.clock.to("2026-03-25T10:10:00Z");
  shop.does("add", R"({"wire": 1, "length_mm": 52.4, "ends": "raw"})"); // nothing to the agenda
  shop.settle();
  CHECK(shop.stored().value().made == instant("2026-03-25T10:00:00Z"));
  shop.does("set-due", R"({"job": 1, "due_on": "2026-04-30"})"); // far away
  shop.settle();
  CHECK(shop.stored().value().made == instant("2026-03-25T10:10:00Z"));
  // What was to begin at 11:00 has not: all goes on from 11:10, but in the same order.
  const auto later = placed(shop.now(), 2, "press").start - press.start;
  CHECK(later >= std::chrono::minutes{0});
  CHECK(later <= std::chrono::minutes{30});
  const std::string body = shop.stored().value().body;
  shop.executor.reset();
  shop.made.sqlite->on_change({});
  shop.planner.reset();
  shop.made.sqlite.reset();
  shop.made.sqlite = store::open_sqlite({shop.made.home()});
  shop.executor = std::make_unique<Executor>(*shop.made.sqlite, shop.clock, shop.rooms);
  shop.begin();
  CHECK(shop.planner->worked().stored == 0);
  CHECK(shop.stored().value().body == body);
  CHECK_FALSE(shop.now().brought_up_to_date);
}

TEST_CASE(
    "a beginning that passes unreported is let pass for half an hour, then planned again, in open hours") {
  Planning shop;
  const auto ages = shop.ages();
  REQUIRE(ages.has_value());
  CHECK(*ages == instant("2026-03-25T10:30:01Z"));
  shop.clock.to("2026-03-25T10:29:00Z");
  CHECK_FALSE(shop.now().brought_up_to_date);
  shop.clock.to("2026-03-25T10:30:01Z");
  CHECK(shop.now().brought_up_to_date);
  CHECK(placed(shop.now(), 1, "pull").start >= shop.clock.now());
  shop.settle();
  CHECK(shop.stored().value().made == instant("2026-03-25T10:30:01Z"));
  CHECK(shop.stored().value().settled);
  CHECK_FALSE(shop.now().brought_up_to_date);
  const auto so_far = shop.planner->worked().stored;
  shop.settle(); // nothing is new: it sleeps
  CHECK(shop.planner->worked().stored == so_far);
  // In the evening nobody is there: it wakes with the shop.
  shop.clock.to("2026-03-25T16:50:00Z");
  shop.settle();
  shop.clock.to("2026-03-25T17:30:00Z");
  CHECK(shop.ages() == instant("2026-03-26T08:00:00Z"));
}

TEST_CASE("who comes next, and why, and what cannot be kept is said") {
  Planning shop;
  shop.does("set-due", R"({"job": 2, "due_on": "2026-03-25"})");
  shop.settle();
  const Answer a = shop.asks("agenda");
  CHECK(a.text.find(" Late by this plan: job 2 by ") != std::string::npos);
  CHECK(as<std::string>(at(of_job(a, 2), "state")) == "late");
  CHECK(as<std::int64_t>(at(of_job(a, 2), "late_minutes")) > 0);
  CHECK(as<std::string>(at(of_job(a, 1), "state")) == "undated");
  const Answer next = shop.asks("agenda", R"({"next": true})");
  CHECK(next.text.starts_with("Next, now: "));
  CHECK_FALSE(next.reason.empty());
  const Answer due = shop.asks("due");
  CHECK(due.reason.find(" Late by the agenda: job 2 by ") != std::string::npos);
  CHECK(shop.asks("job", R"({"job": 2})").reason.find("By the agenda it is ready ") != std::string::npos);
}

TEST_CASE("what is booked by hand stands, and the plan goes around it") {
  Planning shop;
  shop.does("book", R"({"machine": "press", "day_on": "2026-03-27", "hours": "9:00-18:00"})", true);
  shop.settle();
  const AgendaPlan now = shop.now();
  CHECK(agenda::check(now.what.problem, now.plan).empty());
  const auto& press = placed(now, 1, "press");
  CHECK((press.end <= instant("2026-03-27T08:00:00Z") || press.start >= instant("2026-03-27T17:00:00Z")));
  const Answer a = shop.asks("agenda", R"({"machine": "press", "day_on": "2026-03-27"})");
  CHECK(in_words(a).find("booked") != std::string::npos);
}

TEST_CASE("the earliest day for one more, a day that can be kept, and what would have to give") {
  Planning shop;
  const Answer first = shop.asks("promise", R"({"frets": 22})");
  CHECK(field<bool>(first, "possible"));
  const auto ready = as<Instant>(at(first.data, "ready_at"));
  CHECK(ready >= as<Instant>(at(first.data, "alone_at")));
  CHECK(shop.asks("promise", R"({"frets": 22, "by_on": "2026-04-30"})").text.starts_with("Yes: "));
  // The recheck is 16 hours after the press: not today, whatever gives.
  const Answer no = shop.asks("promise", R"({"frets": 22, "by_on": "2026-03-25"})");
  CHECK_FALSE(field<bool>(no, "possible"));
  CHECK(no.text.find("cannot be ready by today, whatever else waits.") != std::string::npos);
  const Answer job = shop.asks("promise", R"({"job": 2})");
  CHECK(job.choices.size() == 1);
  CHECK(shop.unanswered("promise", R"({"by_on": "2026-03-24"})").fault == Fault::value);
  CHECK(shop.revision() == shop.seen([](const View& v) { return v.revision(); }));
}

TEST_CASE("what has to give for a day is told by job, and nobody is late where it need not be") {
  Planning shop;
  // One person does all: three refrets, each promised for the day on which it can just be ready.
  for (const char* who : {"Ines", "Tomo"})
    shop.does("retire-person", std::string(R"({"person": ")") + who + R"("})", true);
  shop.does("set-due", R"({"job": 2, "due_on": "2026-03-30"})");
  shop.settle();
  const AgendaPlan now = shop.now();
  const Answer before = shop.asks("agenda");
  const auto ready = as<Instant>(at(of_job(before, 2), "ready_at"));
  const Answer p = shop.asks("promise", R"({"frets": 22})");
  REQUIRE(field<bool>(p, "possible"));
  // As soon as that, somebody else must give; the answer names who, and by how much.
  const Answer gives = shop.asks("promise", R"({"frets": 22, "by_on": "2026-03-30"})");
  if (!field<bool>(gives, "possible")) {
    const Value& later = at(gives.data, "would_give");
    if (size(later) > 0) {
      CHECK(as<Ref>(at(item(later, 0), "job")).id == 2);
      CHECK(as<Instant>(at(item(later, 0), "finish")) > ready);
    }
    CHECK(as<Instant>(at(p.data, "ready_at")) > instant("2026-03-30T16:00:00Z"));
  }
}

TEST_CASE("what is wrong is said with what would do: no machine, no hours, nobody") {
  Planning shop;
  const auto trouble = [&] {
    shop.settle();
    const Answer a = shop.asks("agenda");
    const Value& all = at(a.data, "troubles");
    std::string out = size(all) == 0 ? "none" : "";
    for (std::size_t n = 0; n < size(all); ++n)
      out += (n == 0 ? "" : " ") + as<std::string>(at(item(all, n), "what"));
    return out;
  };
  CHECK(trouble() == "none");
  shop.does("machine-down", R"({"machine": "press"})");
  CHECK(trouble() == "no_open_hours no_open_hours"); // of both jobs
  shop.does("undo");
  shop.does("set-due", R"({"job": 2, "due_on": "2026-03-25"})");
  CHECK(trouble().find("due_passed") != std::string::npos);
  shop.does("undo");
  shop.does("open-hours", R"({"days": "mon-sun", "hours": "closed"})");
  CHECK(trouble() == "no_open_hours");
  CHECK(shop.asks("agenda").reason.find("No opening hours are known") != std::string::npos);
  CHECK(shop.asks("promise").text.find("cannot be planned at all") != std::string::npos);
  CHECK_FALSE(shop.ages().has_value());
}

TEST_CASE("the week is drawn by machine and person, and what is drawn is sound SVG") {
  Planning shop;
  const Answer a = shop.asks("agenda");
  REQUIRE(a.picture.has_value());
  const std::string svg = a.picture->svg();
  CHECK(judged(svg) == "");
  CHECK(svg.find("The press") != std::string::npos);
  CHECK(svg.find("Ines") != std::string::npos);
  CHECK(svg.find("Wed 25 Mar 2026") != std::string::npos);
}
