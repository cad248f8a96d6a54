// Machines, bookings, own hours and what stages take, on a real store. It is Wednesday, 25 March 2026, 11:00
// in Berlin, whose clock is put forward on the 29th; the shop is open on weekdays from 9 to 18.
#include "bench.hpp"
#include "hours/load_zone.hpp"
#include "shop/bookings.hpp"
#include "shop/own_hours.hpp"
#include "shop/press_settings.hpp"
#include "shop/work.hpp"
#include "support/catch.hpp"
#include "support/show.hpp"
#include "units/read.hpp"

#include <fmt/format.h>

#include <random>

using namespace nutward;
using namespace nutward::test;

namespace {

Instant t(const char* text) {
  return units::read_instant(text);
}

std::string says(Shop& shop, const char* row, const std::string& json) {
  return shop.does(row, json).text;
}

} // namespace

TEST_CASE("the press is what its outage says it is, from its beginning to its end") {
  Shop shop;
  const auto ok = [&](const char* at) {
    return shop.seen([&](const View& v) { return equipment(v, setup_at(v, t(at))).in_service; });
  };
  CHECK(ok("2026-03-25T10:00:00Z"));
  shop.does("machine-down", R"({"machine": "press", "begins_at": "2026-03-26T08:00:00Z",
                                "until_at": "2026-03-26T11:00:00Z"})");
  CHECK(ok("2026-03-26T07:59:59Z"));
  CHECK_FALSE(ok("2026-03-26T08:00:00Z"));
  CHECK_FALSE(ok("2026-03-26T10:59:59Z"));
  CHECK(ok("2026-03-26T11:00:00Z"));
  shop.does("machine-down", R"({"machine": "press"})"); // from now on, until somebody says so
  CHECK_FALSE(ok("2026-03-25T10:00:00Z"));
  CHECK_FALSE(ok("2030-01-01T00:00:00Z"));
  CHECK(shop.seen([](const View& v) { return v.machines().outages({0}).size(); }) == 1);
  shop.does("machine-up", R"({"machine": "press"})");
  CHECK(ok("2026-03-25T10:00:00Z"));
  CHECK(shop.refused("machine-up", R"({"machine": "press"})").fault == Fault::state);
}

TEST_CASE("one of two machines out of service leaves the other, both leave none") {
  Shop shop;
  shop.does("change-machine", R"({"machine": "sander", "count": 2})");
  const auto left = [&] {
    return shop.seen([&](const View& v) {
      const Machine m = *machine_called("Sander", v);
      return left_of(m, down(m, shop.clock.now(), v)).value_or(99);
    });
  };
  CHECK(left() == 2);
  shop.does("machine-down", R"({"machine": "sander", "number": 2})");
  CHECK(left() == 1);
  shop.does("machine-down", R"({"machine": "sander", "number": 1})");
  CHECK(left() == 0);
  shop.does("machine-up", R"({"machine": "sander"})");
  CHECK(left() == 2);
  shop.does("machine-down", R"({"machine": "sanders"})");
  CHECK(left() == 0);
  shop.does("machine-up", R"({"machine": "sander", "number": 2})");
  CHECK(left() == 1);
  CHECK(shop.refused("machine-down", R"({"machine": "sander", "number": 3})").would_do ==
        "There are 2 sanders.");
}

TEST_CASE("who asks for a machine that there is not is told what is called nearly so") {
  Shop shop;
  const Problem p = shop.refused("machine-down", R"({"machine": "sandr"})");
  CHECK(p.text == "No machine is called 'sandr'.");
  CHECK(p.would_do == "Is it the sander? There are: press, sander, bench.");
  CHECK(shop.refused("machine-down", R"({"machine": "anvil"})").would_do ==
        "There are: press, sander, bench.");
  CHECK(shop.refused("book", R"({"machine": 99, "hours": "10:00-11:00"})").where == "machine");
}

TEST_CASE("an outage ends after it begins and not before now") {
  Shop shop;
  CHECK(shop.refused("machine-down", R"({"machine": "press", "until_at": "2026-03-25T09:00:00Z"})").where ==
        "until_at");
  CHECK(shop.refused("machine-down", R"({"machine": "press", "begins_at": "2026-03-27T09:00:00Z",
                                         "until_at": "2026-03-26T09:00:00Z"})")
            .where == "until_at");
}

TEST_CASE("no more is booked at a time than there is in service, and touching is allowed") {
  Shop shop;
  CHECK(says(shop, "book", R"({"machine": "press", "day_on": "2026-03-26", "hours": "10:00-11:00"})") ==
        "Mara has the press on Thu 26 Mar 2026, 10:00 to 11:00 (booking 1).");
  CHECK(
      shop.refused("book", R"({"machine": "press", "day_on": "2026-03-26", "hours": "10:59-11:30"})").text ==
      "Mara has the press on Thu 26 Mar 2026, 10:00 to 11:00 (booking 1).");
  shop.does("book", R"({"machine": "press", "day_on": "2026-03-26", "hours": "11:00-11:30"})");
  shop.does("book", R"({"machine": "press", "day_on": "2026-03-26", "hours": "9:00-10:00"})");
  shop.does("change-machine", R"({"machine": "press", "count": 2})");
  shop.does("book", R"({"machine": "press", "day_on": "2026-03-26", "hours": "9:30-11:15"})");
  CHECK(shop.refused("book", R"({"machine": "press", "day_on": "2026-03-26", "hours": "10:30-10:45"})")
            .would_do == "That is all 2 of them: book another time.");
  shop.does("machine-down", R"({"machine": "press", "number": 1, "begins_at": "2026-03-26T13:00:00Z"})");
  shop.does("book",
            R"({"machine": "press", "day_on": "2026-03-26", "hours": "14:00-15:00"})"); // 13 to 14 UTC
  CHECK(
      shop.refused("book", R"({"machine": "press", "day_on": "2026-03-26", "hours": "14:30-15:00"})").fault ==
      Fault::state);
  shop.does("machine-down", R"({"machine": "press", "number": 2, "begins_at": "2026-03-27T08:00:00Z"})");
  CHECK(
      shop.refused("book", R"({"machine": "press", "day_on": "2026-03-27", "hours": "10:00-11:00"})").where ==
      "machine");
}

TEST_CASE("random bookings are taken just as long as a count of every quarter hour allows") {
  Shop shop;
  shop.does("change-machine", R"({"machine": "sander", "count": 3})");
  std::mt19937_64 engine{20261125};
  std::vector<std::pair<int, int>> taken; // quarters from 9:00
  int refused = 0;
  for (int round = 0; round < 60; ++round) {
    const int from = static_cast<int>(engine() % 34), to = from + 1 + static_cast<int>(engine() % 6);
    if (to > 36) continue;
    int most = 0;
    for (int q = from; q < to; ++q)
      most = std::max(most, static_cast<int>(std::count_if(taken.begin(), taken.end(), [&](auto& b) {
                        return b.first <= q && q < b.second;
                      })));
    const auto clock = [](int quarter) {
      return fmt::format("{:02}:{:02}", 9 + quarter / 4, quarter % 4 * 15);
    };
    const std::string json = fmt::format(
        R"({{"machine": "sander", "day_on": "2026-03-26", "hours": "{}-{}"}})", clock(from), clock(to));
    INFO(json);
    const bool done = shop.outcome("book", json, false).answer.has_value();
    CHECK(done == (most < 3));
    if (done)
      taken.emplace_back(from, to);
    else
      ++refused;
  }
  CHECK(refused > 5);
}

TEST_CASE("a time in closed hours is asked about, one that is over is refused") {
  Shop shop;
  const Problem p =
      shop.refused("book", R"({"machine": "press", "day_on": "2026-03-26", "hours": "17:00-19:00"})");
  CHECK(p.fault == Fault::confirm);
  CHECK(p.text == "The shop is closed then: Thu 26 Mar 2026, 18:00 to 19:00.");
  shop.does("book", R"({"machine": "press", "day_on": "2026-03-26", "hours": "17:00-19:00"})", true);
  CHECK(shop.refused("book", R"({"machine": "press", "day_on": "2026-03-25", "hours": "9:00-10:00"})").text ==
        "Wed 25 Mar 2026, 09:00 to 10:00 is over.");
  CHECK(
      shop.refused("book", R"({"machine": "press", "day_on": "2028-03-25", "hours": "9:00-10:00"})").where ==
      "day_on");
  CHECK(shop.refused("book", R"({"machine": "press", "day_on": "2026-03-26", "hours": "closed"})").where ==
        "hours");
  CHECK(shop.refused("book", R"({"machine": "press", "hours": "12:00-13:00, 14:00-15:00"})").where ==
        "hours");
}

TEST_CASE("an hour alone is of the afternoon where the shop is closed in the morning then") {
  hours::Calendar calendar;
  for (auto& day : calendar.weekly)
    day = {{9 * 3600, 18 * 3600}};
  const auto zone = hours::load_zone("Europe/Berlin");
  const Day thursday{units::read_day("2026-03-26")};
  const auto from = [&](const char* text) {
    return zone->local(stretch_of(thursday, text, calendar, *zone).from).s / 3600;
  };
  CHECK(from("2-3") == 14);
  CHECK(from("10-11") == 10);
  CHECK(from("02:00-03:00") == 2); // said in full
  CHECK(from("7-8") == 7);         // 19 to 20 is closed as well: as it was said, and asked about
  CHECK(from("5-6") == 17);
  // The hour from 2 to 3 is left out on the day that the clock is put forward.
  CHECK_THROWS_AS(stretch_of(units::read_day("2026-03-29"), "02:00-03:00", calendar, *zone), Problem);
}

TEST_CASE("work is timed over its stretches, in open time") {
  Shop shop;
  const auto at = [&](const char* json) { return std::string(json); };
  shop.does("start", at(R"({"job": 1, "stage": "seat", "at": "2026-03-24T16:30:00Z"})")); // Tuesday, 17:30
  shop.does("stop", at(R"({"job": 1, "stage": "seat", "at": "2026-03-25T08:15:00Z"})"));  // Wednesday, 9:15
  shop.does("start", at(R"({"job": 1, "stage": "seat", "at": "2026-03-25T09:00:00Z"})"));
  CHECK(shop.refused("start", R"({"job": 1, "stage": "seat"})")
            .text.starts_with(
                "Mara has been at seating job 1 (test board of Vida) since Wed 25 Mar 2026, 10:00."));
  CHECK(
      shop.does("finished", R"({"job": 1, "stage": "seat", "at": "2026-03-25T09:20:00Z"})").text ==
      "Job 1 (test board of Vida): seat the frets is done, Wed 25 Mar 2026, 10:20, after 1 h 5 min of work.");
  const auto stages = shop.seen([](const View& v) { return v.jobs().stages(1); });
  REQUIRE(stages.size() == 2);
  CHECK(stages[1].open_s == 3900); // 30 + 15 + 20 minutes
  CHECK(stages[1].frets == 4);
  CHECK_FALSE(stages[0].finished);
  CHECK(shop.seen([](const View& v) { return v.jobs().took("seat", 9).size(); }) == 1);
}

TEST_CASE("work in closed hours is timed as it went, unless it went on all night") {
  Shop shop;
  const auto worked = [&](const char* from, const char* to) {
    return shop.seen([&](const View& v) {
      const auto in = shop.rooms.of(v);
      return worked_between(t(from), t(to), in.calendar, *in.zone);
    });
  };
  using std::chrono::minutes;
  CHECK(worked("2026-03-25T09:00:00Z", "2026-03-25T09:30:00Z") == minutes{30});
  CHECK(worked("2026-03-25T18:00:00Z", "2026-03-25T18:45:00Z") == minutes{45}); // 19:00, after hours
  CHECK(worked("2026-03-25T16:45:00Z", "2026-03-25T17:30:00Z") == minutes{45}); // over the closing
  CHECK(worked("2026-03-25T16:45:00Z", "2026-03-26T08:15:00Z") == minutes{30}); // and on in the morning
  CHECK(worked("2026-03-25T18:00:00Z", "2026-03-26T19:00:00Z") == std::nullopt);
}

TEST_CASE("three reports of a stage are learnt from, and what was set stands above them") {
  Shop shop;
  const auto duration = [&] {
    return shop.seen([](const View& v) { return duration_of(agenda::StageKind::crown, v); });
  };
  CHECK(duration().minutes == 45);
  CHECK(duration().from == Duration::From::table);
  const char* const begun[]{"2026-03-23T08:00:00Z", "2026-03-23T10:00:00Z", "2026-03-24T08:00:00Z"};
  const char* const ended[]{"2026-03-23T08:10:00Z", "2026-03-23T10:12:00Z", "2026-03-24T09:40:00Z"};
  for (int i = 0; i < 3; ++i) {
    CHECK(duration().from == Duration::From::table);
    shop.does("finished", fmt::format(R"({{"job": 1, "stage": "crown", "started_at": "{}", "at": "{}"}})",
                                      begun[i], ended[i]));
  }
  CHECK(duration().minutes == 66); // the median, 12 min, was for 4 frets
  CHECK(duration().from == Duration::From::learnt);
  CHECK(duration().reports == 3);
  const Answer a = shop.asks("stages", R"({"job": 2})"); // of 24 frets
  CHECK(in_words(a).find("crown|crown the frets|bench|1 h 12 min|median of 3 reports||") !=
        std::string::npos);
  shop.does("stage-minutes", R"({"stage": "crown", "minutes": 50})");
  CHECK(duration().minutes == 50);
  CHECK(duration().from == Duration::From::set);
  shop.does("stage-minutes", R"({"stage": "crown"})");
  CHECK(duration().minutes == 66);
  shop.does("undo");
  shop.does("undo");
  shop.does("undo"); // the last report
  CHECK(duration().minutes == 45);
}

TEST_CASE("a job that was begun is not pressed, and its deadline stands until it is") {
  Shop shop;
  shop.does("set-due", R"({"job": 1, "due_on": "2026-04-10"})");
  const auto by = [&] {
    return shop.seen([&](const View& v) {
      const auto in = shop.rooms.of(v);
      return press_by(*v.jobs().find(1), v, setup(v), in.calendar, *in.zone).has_value();
    });
  };
  shop.does("finished", R"({"job": 1, "stage": "cut"})");
  CHECK(by());
  shop.does("start", R"({"job": 1, "stage": "press"})");
  CHECK(by());
  shop.does("pressed", R"({"job": 1})");
  CHECK_FALSE(by());
  // Begun and finished in one breath: nobody learns from that how long it takes.
  CHECK_FALSE(shop.seen([](const View& v) { return v.jobs().stages(1).back().open_s.has_value(); }));
}

TEST_CASE("pressing that was begun is over with the pass that presses the last fret") {
  Shop shop;
  shop.does("finished", R"({"job": 1, "stage": "cut", "at": "2026-03-25T08:00:00Z"})");
  shop.does("start", R"({"job": 1, "stage": "press", "at": "2026-03-25T09:00:00Z"})");
  shop.does("pressed", R"({"job": 1, "slots": "1-2", "at": "2026-03-25T09:20:00Z"})");
  CHECK(shop.seen([](const View& v) { return in_hand(*v.jobs().find(1), "press", v).has_value(); }));
  shop.does("pressed", R"({"job": 1, "slots": "3-4", "at": "2026-03-25T09:50:00Z"})");
  CHECK(shop.seen([](const View& v) { return v.jobs().stages(1).back().open_s; }) == 3000);
}

TEST_CASE("who has hours of their own works on no other day; a day is off or other") {
  Shop shop;
  shop.does("own-hours", R"({"person": "Tomo", "days": "mon-thu", "hours": "9:00-13:00"})");
  shop.does("day-off", R"({"person": "Tomo", "day_on": "2026-03-26"})");
  shop.does("day-on", R"({"person": "Tomo", "day_on": "2026-03-27", "hours": "15:00-17:00"})");
  shop.does("day-off", R"({"person": "Ines", "day_on": "2026-03-26", "last_on": "2026-03-27"})");
  const auto open = [&](std::int64_t who, const char* from, const char* to) {
    return shop.seen([&](const View& v) {
      const auto own = own_calendars(v, Day{units::read_day("2026-03-25")});
      return hours::open_between(own.at(who), *shop.rooms.of(v).zone, t(from), t(to)).count() / 3600;
    });
  };
  const std::int64_t tomo = shop.tomo.actor, ines = shop.ines.actor;
  CHECK(open(tomo, "2026-03-25T00:00:00Z", "2026-03-26T00:00:00Z") == 4);
  CHECK(open(tomo, "2026-03-26T00:00:00Z", "2026-03-27T00:00:00Z") == 0);
  CHECK(open(tomo, "2026-03-27T00:00:00Z", "2026-03-28T00:00:00Z") == 2);
  CHECK(open(tomo, "2026-03-30T00:00:00Z", "2026-04-06T00:00:00Z") == 16);
  CHECK(open(ines, "2026-03-25T00:00:00Z", "2026-03-31T00:00:00Z") ==
        18); // Wednesday and Monday, as the shop
  CHECK(shop.asks("hours", R"({"person": "Tomo", "day_on": "2026-03-26"})").text ==
        "Tomo does not work on Thu 26 Mar 2026: off.");
  CHECK(shop.refused("day-off", R"({"person": "Tomo", "day_on": "2026-03-20"})").where == "day_on");
  CHECK(shop.refused("day-off", R"({"person": "Tomo", "day_on": "2026-04-20", "last_on": "2026-04-10"})")
            .where == "last_on");
}

TEST_CASE("jobs that would wait for one another are refused, however long the way round") {
  Shop shop;
  shop.does("new-job", R"({"wire": 1, "scale_mm": 600, "frets": 3, "nut_width_mm": 52, "far_width_mm": 52})");
  shop.does("after", R"({"job": 2, "other": 1})");
  shop.does("after", R"({"job": 3, "other": 2})");
  CHECK(shop.refused("after", R"({"job": 1, "other": 3})").text.find("neither would ever begin") !=
        std::string::npos);
  CHECK(shop.refused("after", R"({"job": 1, "other": 1})").fault == Fault::state);
  shop.does("after", R"({"job": 3, "other": 1})");
  CHECK(shop.seen([](const View& v) { return v.jobs().find(3)->after; }) == std::vector<std::int64_t>{1, 2});
}

TEST_CASE("a recheck is moved within the hours of the day that was said, and told again") {
  Shop shop;
  shop.does("finished", R"({"job": 1, "stage": "cut"})");
  shop.does("pressed", R"({"job": 1})");
  CHECK(says(shop, "look-again", R"({"job": 1, "again_at": "2026-03-26T23:00:00Z"})") ==
        "Job 1 (test board of Vida): frets 1-4 are looked at again Fri 27 Mar 2026, 09:00; that was due Thu "
        "26 Mar "
        "2026, 11:00.");
  const Problem p = shop.refused("look-again", R"({"job": 1, "again_at": "2026-03-28T10:00:00Z"})");
  CHECK(p.text == "The shop is closed on Sat 28 Mar 2026 from then on.");
  CHECK(p.would_do == "It opens again Mon 30 Mar 2026, 09:00.");
  CHECK(shop.refused("look-again", R"({"job": 1, "again_at": "2026-03-25T16:00:00Z"})")
            .text.find("may still spring back then") != std::string::npos);
  shop.does("close-day", R"({"day_on": "2026-03-27"})");
  CHECK(shop.seen([](const View& v) { return v.jobs().rechecks(1).front().due; }) ==
        t("2026-03-27T08:00:00Z"));
}
