// The shop as the agenda's problem. It is Wednesday, 25 March 2026, 11:00 in Berlin; the shop is open on
// weekdays from 9 to 18, and Mara, Ines and Tomo work there.
#include "agenda/deadline.hpp"
#include "agenda/windows.hpp"
#include "bench.hpp"
#include "shop/agenda_input.hpp"
#include "support/catch.hpp"
#include "units/read.hpp"

#include <fmt/format.h>

using namespace nutward;
using namespace nutward::test;
namespace ch = std::chrono;
using std::chrono::minutes;

namespace {

Instant t(const char* text) {
  return units::read_instant(text);
}

AgendaInput input_of(Shop& shop, Instant now) {
  return shop.seen([&](const View& v) {
    const auto room = shop.rooms.of(v);
    return agenda_input(v, room.calendar, *room.zone, now);
  });
}
AgendaInput input_of(Shop& shop) {
  return input_of(shop, shop.clock.now());
}
std::string digest_of(Shop& shop, Instant now) {
  return agenda_digest(input_of(shop, now));
}

std::size_t job_at(const AgendaInput& in, std::int64_t job) {
  for (std::size_t j = 0; j < in.jobs.size(); ++j)
    if (in.jobs[j].job == job) return j;
  throw std::runtime_error("no such job in the agenda");
}

const agenda::Task& task(const AgendaInput& in, std::int64_t job, std::string_view stage,
                         std::size_t nth = 0) {
  const std::size_t j = job_at(in, job);
  for (std::size_t k = 0; k < in.jobs[j].tasks.size(); ++k)
    if (in.jobs[j].tasks[k].stage == stage && nth-- == 0) return in.problem.jobs[j].tasks[k];
  throw std::runtime_error("no such task in the agenda");
}

std::string stages(const AgendaInput& in, std::int64_t job) {
  std::string out;
  for (const AgendaTask& a : in.jobs[job_at(in, job)].tasks)
    out += (out.empty() ? "" : " ") + a.stage;
  return out;
}

} // namespace

TEST_CASE("units are machines one by one and everybody who works, each with the hours left to them") {
  Shop shop;
  shop.does("change-machine", R"({"machine": "sander", "count": 2})");
  shop.does("machine-down", R"({"machine": "sander", "number": 2, "until_at": "2026-03-26T11:00:00Z"})");
  shop.does("own-hours", R"({"person": "Tomo", "days": "mon-thu", "hours": "8:00-12:00"})");
  const AgendaInput in = input_of(shop);
  CHECK(in.units.size() == 7); // press, two sanders, benches, three people; the guest may only look
  const auto& units = in.problem.units;
  const auto thursday = [&](std::size_t u) {
    const agenda::Window day{t("2026-03-26T00:00:00Z"), t("2026-03-27T00:00:00Z")};
    return agenda::length(agenda::both(units[u].open, std::span(&day, 1)));
  };
  CHECK(thursday(*unit_of(in, 1, 1)) == ch::hours{9});
  CHECK(thursday(*unit_of(in, 2, 1)) == ch::hours{9});
  CHECK(thursday(*unit_of(in, 2, 2)) == ch::hours{6});                   // from 12:00 on
  CHECK(thursday(*unit_of_person(in, shop.tomo.actor)) == ch::hours{3}); // from 9:00, when the shop opens
  CHECK(thursday(*unit_of_person(in, shop.ines.actor)) == ch::hours{9});
  CHECK_FALSE(unit_of_person(in, shop.guest.actor));
  CHECK(units[*unit_of(in, 3, 0)].shared);
  CHECK_FALSE(units[*unit_of(in, 1, 1)].shared);
}

TEST_CASE("a job is what is left of its stages, and who may do it") {
  Shop shop;
  shop.does("set-due", R"({"job": 1, "due_on": "2026-04-10"})");
  shop.does("priority", R"({"job": 1, "priority": 9})");
  shop.does("after", R"({"job": 1, "other": 2})");
  CHECK(stages(input_of(shop), 1) == "pull true slots bend cut dress seat press recheck level crown polish");
  shop.does("finished", R"({"job": 1, "stage": "pull"})");
  shop.does("finished", R"({"job": 1, "stage": "true"})");
  shop.does("give-job", R"({"job": 1, "person": "Ines"})");
  const AgendaInput in = input_of(shop);
  CHECK(stages(in, 1) == "slots bend cut dress seat press recheck level crown polish");
  const auto& job = in.problem.jobs[job_at(in, 1)];
  CHECK(job.due == t("2026-04-10T16:00:00Z"));
  CHECK(job.weight == 9);
  CHECK(job.after == std::vector{job_at(in, 2)});
  CHECK(task(in, 1, "dress").needs ==
        std::vector<std::vector<std::size_t>>{{*unit_of(in, 2, 1)}, {*unit_of_person(in, shop.ines.actor)}});
  CHECK(task(in, 2, "dress").needs.at(1).size() == 3);
  CHECK(task(in, 1, "press").longest_pause == agenda::night);
  CHECK(task(in, 1, "slots").longest_pause == agenda::any_pause);
  CHECK(task(in, 1, "press").work == minutes{11}); // 60 min for 22 frets, of 4
}

TEST_CASE(
    "the recheck comes 16 h after the pressing and by the next open day's end, also once it is pressed") {
  Shop shop;
  const AgendaInput before = input_of(shop);
  const agenda::Task& look = task(before, 1, "recheck");
  REQUIRE(look.lags_from);
  CHECK(before.jobs[job_at(before, 1)].tasks[*look.lags_from].stage == "press");
  CHECK(look.least_lag == ch::hours{16});
  CHECK(look.most_lag == ch::hours{24});
  CHECK(look.to_day_limit);

  shop.does("finished", R"({"job": 1, "stage": "cut"})");
  shop.does("pressed", R"({"job": 1, "at": "2026-03-25T09:00:00Z"})");
  shop.does("look-again", R"({"job": 1, "again_at": "2026-03-26T12:00:00Z"})");
  const AgendaInput after = input_of(shop);
  const agenda::Task& moved = task(after, 1, "recheck");
  const agenda::Task& over = after.problem.jobs[job_at(after, 1)].tasks[*moved.lags_from];
  CHECK(over.fixed->end == t("2026-03-25T09:00:00Z"));
  CHECK(over.fixed->units.empty());
  CHECK(moved.least_lag == ch::hours{16});
  CHECK(moved.most_lag == ch::hours{27});
  CHECK(after.jobs[job_at(after, 1)].tasks.at(7).recheck == 1);
}

TEST_CASE("glue cures before what comes next, and new crowns beside worn ones have no recheck") {
  Shop shop;
  const char* const board =
      R"("scale_mm": 600, "frets": 6, "nut_width_mm": 52, "far_width_mm": 52, "wire": 1)";
  shop.does("new-job", fmt::format(R"({{{}, "glue": "hide glue", "ends": "filed"}})", board)); // 3
  shop.does("new-job", fmt::format(R"({{{}, "kind": "some_slots", "slots": "1-3"}})", board)); // 4
  const AgendaInput in = input_of(shop);
  CHECK(stages(in, 3) == "pull true slots bend cut seat press file recheck level crown polish corners");
  CHECK(task(in, 3, "file").least_lag == ch::hours{12});
  CHECK(in.jobs[job_at(in, 3)].tasks[*task(in, 3, "file").lags_from].stage == "press");
  CHECK(task(in, 3, "recheck").least_lag == ch::hours{16});
  CHECK(task(in, 3, "seat").longest_pause == agenda::night);
  CHECK(stages(in, 4) == "pull true slots bend cut dress seat level crown polish");
}

TEST_CASE(
    "what somebody is at is fixed from its beginning to where it should end, and is not over before now") {
  Shop shop;
  shop.who = shop.ines;
  shop.does("start", R"({"job": 1, "stage": "pull", "at": "2026-03-25T09:58:00Z"})");
  const AgendaInput in = input_of(shop);
  const auto& fixed = task(in, 1, "pull").fixed.value();
  CHECK(fixed.start == t("2026-03-25T09:58:00Z"));
  CHECK(fixed.end == t("2026-03-25T10:07:00Z")); // 9 min for 4 frets
  CHECK(fixed.units == std::vector{*unit_of(in, 3, 0), *unit_of_person(in, shop.ines.actor)});
  const AgendaInput late = input_of(shop, t("2026-03-25T13:02:00Z"));
  CHECK(task(late, 1, "pull").fixed->end == t("2026-03-25T13:15:00Z"));

  shop.does("stop", "{}");
  CHECK_FALSE(task(input_of(shop), 1, "pull").fixed);
  CHECK(task(input_of(shop), 1, "pull").work == minutes{7}); // 2 of 9 are done
}

TEST_CASE(
    "a booking for a job is when its next stage there is done, and any other holds machine and person") {
  Shop shop;
  shop.does("book", R"({"machine": "sander", "day_on": "2026-03-26", "hours": "10:00-11:00", "job": 1})");
  shop.does("book",
            R"({"machine": "press", "day_on": "2026-03-27", "hours": "10:00-11:00", "person": "Tomo"})");
  const AgendaInput in = input_of(shop);
  const auto& fixed = task(in, 1, "true").fixed.value();
  CHECK(fixed.start == t("2026-03-26T09:00:00Z"));
  CHECK(fixed.end == t("2026-03-26T10:00:00Z"));
  CHECK(fixed.units == std::vector{*unit_of(in, 2, 1), *unit_of_person(in, shop.mara.actor)});
  CHECK_FALSE(task(in, 1, "dress").fixed);
  const auto& other = in.problem.jobs[job_at(in, 0)];
  REQUIRE(other.tasks.size() == 1);
  CHECK(other.tasks[0].fixed->units == std::vector{*unit_of(in, 1, 1), *unit_of_person(in, shop.tomo.actor)});
  CHECK(in.jobs[job_at(in, 0)].tasks[0].booking == 2);
}

TEST_CASE("the digest is the same all day while nothing happens, and another once anything does") {
  Shop shop;
  const Instant now = shop.clock.now();
  const std::string before = digest_of(shop, now);
  CHECK(before.size() == 64);
  CHECK(digest_of(shop, now + ch::hours{6}) == before);
  CHECK(digest_of(shop, now + ch::hours{24}) != before); // another day: planned further ahead
  const std::pair<const char*, const char*> changes[] = {
      {"priority", R"({"job": 1, "priority": 5})"},
      {"after", R"({"job": 1, "other": 2})"},
      {"set-due", R"({"job": 2, "due_on": "2026-05-05"})"},
      {"machine-down", R"({"machine": "press", "until_at": "2026-03-26T11:00:00Z"})"},
      {"change-machine", R"({"machine": "sander", "setup_minutes": 5})"},
      {"stage-machine", R"({"stage": "polish", "machine": "sander"})"},
      {"stage-minutes", R"({"stage": "polish", "minutes": 20})"},
      {"book", R"({"machine": "press", "day_on": "2026-03-27", "hours": "10:00-11:00"})"},
      {"start", R"({"job": 1, "stage": "pull"})"},
      {"finished", R"({"job": 1, "stage": "pull"})"},
      {"day-off", R"({"person": "Tomo", "day_on": "2026-03-31"})"},
      {"close-day", R"({"day_on": "2026-04-01"})"},
      {"give-job", R"({"job": 1, "person": "Ines"})"},
      {"set", R"({"setting": "recheck_from_h", "to": "18"})"},
  };
  std::string last = before;
  for (const auto& [row, json] : changes) {
    INFO(row);
    shop.does(row, json);
    const std::string next = digest_of(shop, now);
    CHECK(next != last);
    last = next;
  }
  shop.does("add", R"({"wire": 1, "length_mm": 52.4, "ends": "raw"})");
  CHECK(digest_of(shop, now) == last); // a piece in the tin is nothing to the agenda
}

TEST_CASE("the engine plans what the shop gives it, within hours, and finds nothing amiss") {
  Shop shop;
  shop.does("set-due", R"({"job": 1, "due_on": "2026-04-10"})");
  shop.does("book", R"({"machine": "press", "day_on": "2026-03-27", "hours": "10:00-11:00", "job": 1})");
  const AgendaInput in = input_of(shop);
  const agenda::Plan plan = agenda::plan(in.problem, {});
  for (const agenda::Fault& f : plan.faults)
    UNSCOPED_INFO(static_cast<int>(f.why));
  CHECK(plan.faults.empty());
  REQUIRE(plan.jobs.size() == in.jobs.size());
  for (const agenda::PlannedJob& j : plan.jobs)
    CHECK_FALSE(j.tasks.empty());
  CHECK(plan.value.unplaced == 0);
}

TEST_CASE("a shop that said no hours has nothing open, and the engine says so of every job") {
  Shop shop;
  for (const char* day : {"mon", "tue", "wed", "thu", "fri"})
    shop.does("open-hours", fmt::format(R"({{"days": "{}", "hours": "closed"}})", day));
  const agenda::Plan plan = agenda::plan(input_of(shop).problem, {});
  CHECK(plan.value.unplaced == 2);
  REQUIRE(plan.faults.size() >= 2);
  CHECK(plan.faults[0].why == agenda::Why::no_open_hours);
}

TEST_CASE("who leads the shop and does no more than that is given no work, until they work or nobody else is "
          "there") {
  Shop shop;
  std::int64_t owner = 0;
  shop.made.sqlite->write([&](Tx& tx) {
    owner = tx.put(Actor{0, "root", static_cast<int>(Role::lead), "", {0}});
    tx.backroom().take_changes();
  });
  CHECK_FALSE(unit_of_person(input_of(shop), owner).has_value());
  SECTION("a bench says that they work") {
    shop.does("change-person", R"({"person": "root", "bench": "window"})");
    CHECK(unit_of_person(input_of(shop), owner).has_value());
  }
  SECTION("so does work that they have reported") {
    shop.made.sqlite->write([&](Tx& tx) {
      tx.put(Stage{0, 1, "pull", 1, shop.clock.now(), {}, shop.clock.now(), owner});
      tx.backroom().take_changes();
    });
    CHECK(unit_of_person(input_of(shop), owner).has_value());
  }
  SECTION("whoever is the only one does all") {
    shop.made.sqlite->write([&](Tx& tx) {
      for (Actor a : tx.house().actors()) {
        if (a.id == owner) continue;
        a.retired = true;
        tx.put(a);
      }
      tx.backroom().take_changes();
    });
    CHECK(unit_of_person(input_of(shop), owner).has_value());
  }
}
