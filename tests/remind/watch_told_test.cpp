// What a Watch tells, and when. Instants are worked out by hand; Berlin is UTC+1 until 2026-03-29 01:00Z and
// UTC+2 after it, New York UTC-4 until 2026-11-01 06:00Z and UTC-5 after it (tz database, 2024a and later).
// A recheck about a day after pressing is common practice, no source.
#include "remind/watched_shop.hpp"

using namespace nutward;
using namespace nutward::test;
using namespace std::chrono_literals;
using Types = std::vector<std::string>;

namespace {

// A shop with one receiver that takes everything.
struct Told {
  explicit Told(Instant start, const std::string& zone = "Europe/Berlin")
      : shop(start, zone), id(shop.receiver("wall", to.url("/good"))) {
    shop.watch_it();
  }
  // What is told from now on up to t, with the clock at t.
  std::vector<Came> at(Instant t) {
    shop.move_to(t);
    shop.delivered({id});
    return came(to);
  }
  Receiver to{secret_text};
  WatchedShop shop;
  std::int64_t id;
};

constexpr Instant monday_10 = utc(2026, 3, 2, 9); // 10:00 in Berlin

} // namespace

TEST_CASE("A recheck is told of 24 h after pressing, not a second before, and once") {
  Told t(monday_10);
  const auto job = t.shop.job();
  t.shop.press(job);
  CHECK(t.at(utc(2026, 3, 3, 8, 59, 59)).empty());
  const auto told = t.at(utc(2026, 3, 3, 9));
  REQUIRE(types(told) == Types{"recheck.due"});
  CHECK(told[0].data["job"] == job);
  CHECK(told[0].data["slots"] == nlohmann::json({1, 2, 3}));
  CHECK(told[0].data["due_at"] == "2026-03-03T09:00:00Z");
  CHECK(told[0].data["late"] == false);
  CHECK(told[0].data["sequence"] == 1);
  CHECK(t.at(utc(2026, 3, 3, 9, 0, 1)).empty());
  CHECK(t.at(utc(2026, 3, 4, 16)).empty());
}

TEST_CASE("A recheck that falls due in the break is told of when the break is over") {
  Told t(utc(2026, 3, 2, 11, 45)); // 12:45 in Berlin; the break is 12:30 to 13:30
  t.shop.press(t.shop.job());
  CHECK(t.at(utc(2026, 3, 3, 12, 29, 59)).empty());
  CHECK(types(t.at(utc(2026, 3, 3, 12, 30))) == Types{"recheck.due"});
}

TEST_CASE(
    "Over a closed weekend the recheck waits for Monday's opening, and over a closure for the day after") {
  Told t(utc(2026, 3, 6, 14)); // a Friday, 15:00 in Berlin
  t.shop.press(t.shop.job());
  CHECK(t.at(utc(2026, 3, 7, 14)).empty());
  CHECK(t.at(utc(2026, 3, 9, 7, 59, 59)).empty());
  SECTION("Monday at nine") {
    CHECK(types(t.at(utc(2026, 3, 9, 8))) == Types{"recheck.due"});
  }
  SECTION("Monday is closed by a report that comes while the alarm is set") {
    t.shop.act("close-day", {{"day", std::string("2026-03-09")}});
    CHECK(t.at(utc(2026, 3, 9, 16, 59, 59)).empty());
    CHECK(t.at(utc(2026, 3, 10, 7, 59, 59)).empty());
    CHECK(types(t.at(utc(2026, 3, 10, 8))) == Types{"recheck.due"});
  }
  SECTION("an extra opening on the Sunday brings it forward") {
    t.shop.clock.set(utc(2026, 3, 7, 15));
    t.shop.act("open-extra", {{"day", std::string("2026-03-08")}, {"hours", std::string("10:00-12:00")}});
    CHECK(t.at(utc(2026, 3, 8, 8, 59, 59)).empty());
    CHECK(types(t.at(utc(2026, 3, 8, 9))) == Types{"recheck.due"});
  }
}

TEST_CASE("A recheck is overdue once, at the end of the next open day") {
  Told t(monday_10);
  t.shop.press(t.shop.job());
  CHECK(types(t.at(utc(2026, 3, 3, 9))) == Types{"recheck.due"});
  CHECK(t.at(utc(2026, 3, 4, 16, 59, 59)).empty()); // Wednesday 18:00 closes the day after it was due
  const auto told = t.at(utc(2026, 3, 4, 17));
  REQUIRE(types(told) == Types{"recheck.overdue"});
  CHECK(told[0].data["sequence"] == 2);
  CHECK(t.at(utc(2026, 3, 20, 9)).empty());
}

TEST_CASE("Told things stay told over any number of sweeps and over a restart of watch and store") {
  Told t(monday_10);
  t.shop.press(t.shop.job());
  CHECK(t.at(utc(2026, 3, 3, 9)).size() == 1);
  for (int i = 0; i < 20; ++i)
    t.shop.swept();
  t.shop.restart();
  CHECK(t.at(utc(2026, 3, 3, 9, 5)).empty());
  CHECK(types(t.at(utc(2026, 3, 4, 17))) == Types{"recheck.overdue"});
  t.shop.restart();
  CHECK(t.at(utc(2026, 3, 4, 17, 5)).empty());
}

TEST_CASE("A fret pressed again has a reminder of its own, and the others keep theirs") {
  Told t(monday_10);
  const auto job = t.shop.job();
  t.shop.press(job);
  t.shop.move_to(utc(2026, 3, 2, 14)); // 15:00, beyond the two hours of one pressing
  t.shop.press(job, "2");
  const auto first = t.at(utc(2026, 3, 3, 9));
  REQUIRE(types(first) == Types{"recheck.due"});
  CHECK(first[0].data["slots"] == nlohmann::json({1, 3}));
  CHECK(t.at(utc(2026, 3, 3, 13, 59, 59)).empty());
  const auto second = t.at(utc(2026, 3, 3, 14));
  REQUIRE(types(second) == Types{"recheck.due"});
  CHECK(second[0].data["slots"] == nlohmann::json({2}));
}

TEST_CASE("Nothing is told of a recheck that was done, undone with its pressing, or lost with its job") {
  Told t(monday_10);
  const auto job = t.shop.job();
  t.shop.press(job);
  SECTION("done before it was due") {
    t.shop.move_to(utc(2026, 3, 3, 8));
    t.shop.act("rechecked", {{"job", job}});
  }
  SECTION("the job is cancelled") {
    t.shop.act("cancel-job", {{"job", job}});
  }
  SECTION("the pressing is taken back") {
    t.shop.act("undo", {});
  }
  CHECK(t.at(utc(2026, 3, 3, 9)).empty());
  CHECK(t.at(utc(2026, 3, 9, 9)).empty());
}

TEST_CASE("A recheck done after it was due is never overdue, and taking that back tells nothing twice") {
  Told t(monday_10);
  const auto job = t.shop.job();
  t.shop.press(job);
  CHECK(t.at(utc(2026, 3, 3, 9)).size() == 1);
  t.shop.act("rechecked", {{"job", job}});
  CHECK(t.at(utc(2026, 3, 4, 17)).empty());
  t.shop.act("undo", {});
  CHECK(types(t.at(utc(2026, 3, 4, 17, 1))) == Types{"recheck.overdue"});
}

TEST_CASE("The latest press time is told one open day before, once for each due day") {
  // Due Friday 2026-03-13 at 18:00 in Berlin. Backward from there: recheck 15, level 25, crown 45 and polish
  // 40 minutes of 22 frets take less than a day, and the wait of 24 h or more lies before them: pressed by
  // Thursday at the latest, so the reminder comes on Wednesday.
  Told t(monday_10);
  const auto job = t.shop.job("2026-03-13");
  CHECK(t.at(utc(2026, 3, 11, 7, 59, 59)).empty());
  const auto told = t.at(utc(2026, 3, 11, 17));
  REQUIRE(types(told) == Types{"press.due"});
  CHECK(told[0].data["job"] == job);
  CHECK(told[0].data["latest_at"].get<std::string>().starts_with("2026-03-12T"));
  CHECK(told[0].data["due_at"] == "2026-03-13T17:00:00Z");
  CHECK(t.at(utc(2026, 3, 12, 9)).empty());
  t.shop.act("set-due", {{"job", job}, {"due", std::string("2026-03-20")}});
  CHECK(t.at(utc(2026, 3, 18, 7, 59, 59)).empty());
  CHECK(types(t.at(utc(2026, 3, 18, 17))) == Types{"press.due"});
  t.shop.act("set-due", {{"job", job}, {"due", std::string("2026-03-20")}});
  CHECK(t.at(utc(2026, 3, 19, 9)).empty());
}

TEST_CASE(
    "Of a job that is in the press already, or that came in after its reminder, nothing is said too late") {
  Told t(utc(2026, 3, 12, 9));
  const auto pressed = t.shop.job("2026-03-20");
  t.shop.press(pressed);
  const auto sudden = t.shop.job("2026-03-13"); // the reminder would have been on Wednesday
  const auto told = t.at(utc(2026, 3, 12, 9, 0, 1));
  REQUIRE(types(told) == Types{"press.due"});
  CHECK(told[0].data["job"] == sudden);
  CHECK(told[0].data["late"] == false);
  CHECK(types(t.at(utc(2026, 3, 19, 17))) == Types{"recheck.due", "recheck.overdue"}); // no press.due
}

TEST_CASE("Below a level set by hand a wire is low once, is well once it has recovered, and then low again") {
  using shop::Place;
  Told t(monday_10);
  t.shop.only(Length{3'000'000'000}); // 3 m
  t.shop.act("reorder-level", {{"wire", t.shop.wire}, {"level", std::string("2 m")}});
  CHECK(t.at(utc(2026, 3, 2, 9, 1)).empty());
  t.shop.move_wire(Place::stock, Place::scrap, Length{1'000'000'000}); // at the level: not below it
  CHECK(t.at(utc(2026, 3, 2, 9, 2)).empty());
  t.shop.move_wire(Place::stock, Place::scrap, Length{1'000'000});
  const auto low = t.at(utc(2026, 3, 2, 9, 3));
  REQUIRE(types(low) == Types{"wire.low"});
  CHECK(low[0].data["name"] == "medium");
  CHECK(low[0].data["late"] == false);
  t.shop.move_wire(Place::stock, Place::scrap, Length{500'000'000});
  CHECK(t.at(utc(2026, 3, 2, 9, 4)).empty());
  t.shop.restart();
  CHECK(t.at(utc(2026, 3, 2, 9, 5)).empty());
  t.shop.act("receive", {{"wire", t.shop.wire}, {"count", std::int64_t{2}}});
  CHECK(types(t.at(utc(2026, 3, 2, 9, 6))) == Types{"wire.well"});
  CHECK(t.at(utc(2026, 3, 2, 9, 6, 30)).empty());
  t.shop.move_wire(Place::stock, Place::scrap, Length{2'000'000'000});
  CHECK(types(t.at(utc(2026, 3, 2, 9, 7))) == Types{"wire.low"});
}

TEST_CASE("A reorder level that is taken back after the wire was told as low tells it once all the same") {
  using shop::Place;
  Told t(monday_10);
  t.shop.only(Length{3'000'000'000});
  t.shop.act("reorder-level", {{"wire", t.shop.wire}, {"level", std::string("2 m")}});
  t.shop.act("reorder-level", {{"wire", t.shop.wire}, {"level", std::string("2.5 m")}});
  t.shop.move_wire(Place::stock, Place::scrap, Length{2'000'000'000});
  CHECK(types(t.at(utc(2026, 3, 2, 9, 1))) == Types{"wire.low"});
  t.shop.act("undo", {});
  CHECK(t.at(utc(2026, 3, 2, 9, 2)).empty());
}

// The job's three frets are wanted on the day on which it must be pressed to be ready on Friday, 10 April: on
// Thursday the 9th (see above). An order takes 14 days as the settings say, and no new work is expected: by
// Thursday, 26 March, and Berlin's clock goes forward on the 29th.
TEST_CASE(
    "Who must order is told at the first open minute of the day by which to, and again while nobody does") {
  Told t(monday_10);
  t.shop.only(Length{100'000'000}); // 100 mm, less than three frets
  t.shop.act("set", {{"setting", std::string("supply_guess")}, {"to", std::string("0")}});
  const auto job = t.shop.job("2026-04-10");
  CHECK(t.at(utc(2026, 3, 26, 7, 59, 59)).empty());
  const auto low = t.at(utc(2026, 3, 26, 8));
  REQUIRE(types(low) == Types{"wire.low"});
  CHECK(low[0].data["order_by_on"] == "2026-03-26");
  CHECK(low[0].data["again"] == false);
  CHECK(low[0].data["late"] == false);
  CHECK(t.at(utc(2026, 3, 26, 9)).empty());
  SECTION("three days later is a Sunday: on Monday, and three days after that on Thursday") {
    CHECK(t.at(utc(2026, 3, 30, 6, 59, 59)).empty());
    const auto again = t.at(utc(2026, 3, 30, 7));
    REQUIRE(types(again) == Types{"wire.low"});
    CHECK(again[0].data["again"] == true);
    CHECK(t.at(utc(2026, 4, 2, 6, 59, 59)).empty());
    CHECK(types(t.at(utc(2026, 4, 2, 7))) == Types{"wire.low"});
  }
  SECTION("what comes in ends it") {
    t.shop.act("receive", {{"wire", t.shop.wire}, {"count", std::int64_t{50}}});
    const auto well = t.at(utc(2026, 3, 26, 9, 1));
    REQUIRE(types(well) == Types{"wire.well"});
    CHECK(well[0].data["name"] == "medium");
    CHECK(t.at(utc(2026, 3, 30, 7)).empty());
  }
  SECTION("so does an order that is recorded, until it is called off") {
    t.shop.act("define-supplier", {{"name", std::string("Lindwurm Supply")}});
    t.shop.act("ordered", {{"wire", t.shop.wire},
                           {"count", std::int64_t{50}},
                           {"supplier", std::string("Lindwurm Supply")},
                           {"promised", std::string("2026-04-02")}});
    CHECK(types(t.at(utc(2026, 3, 26, 9, 1))) == Types{"wire.well"});
    CHECK(t.at(utc(2026, 3, 30, 7)).empty());
    t.shop.act("cancel-order", {{"order", std::int64_t{1}}});
    CHECK(types(t.at(utc(2026, 3, 30, 9))) == Types{"wire.low"});
  }
  SECTION("so does a job that is called off") {
    t.shop.act("cancel-job", {{"job", job}});
    CHECK(types(t.at(utc(2026, 3, 26, 9, 1))) == Types{"wire.well"});
  }
}

TEST_CASE("Nobody is told to order by a guess at new work alone") {
  Told t(monday_10);
  t.shop.only(Length{100'000'000});
  CHECK(t.at(utc(2026, 3, 2, 10)).empty());
  CHECK(t.at(utc(2026, 4, 2, 10)).empty());
}

TEST_CASE("Each receiver gets what it wants, counted for itself; one added later gets nothing old") {
  Told t(monday_10);
  Receiver other{secret_text};
  const auto picky = t.shop.receiver("press", other.url("/good"), {"recheck.overdue", "press.due"});
  t.shop.press(t.shop.job());
  CHECK(types(t.at(utc(2026, 3, 3, 9))) == Types{"recheck.due"});
  Receiver newcomer{secret_text};
  const auto late = t.shop.receiver("late", newcomer.url("/good"));
  t.shop.job("2026-03-13");
  t.shop.move_to(utc(2026, 3, 4, 17));
  t.shop.delivered({t.id, picky, late});
  CHECK(types(came(t.to)) == Types{"recheck.overdue"});
  const auto at_press = came(other);
  REQUIRE(types(at_press) == Types{"recheck.overdue"});
  CHECK(at_press[0].data["sequence"] == 1);
  CHECK(types(came(newcomer)) == Types{"recheck.overdue"});

  t.shop.move_to(utc(2026, 3, 11, 17));
  t.shop.delivered({t.id, picky, late});
  const auto third = came(t.to);
  REQUIRE(types(third) == Types{"press.due"});
  CHECK(third[0].data["sequence"] == 3);
  CHECK(came(other).at(0).data["sequence"] == 2);
  CHECK(came(newcomer).at(0).data["sequence"] == 2);
}

TEST_CASE("Without receivers things are marked as told and nothing is kept for those who come later") {
  WatchedShop shop(monday_10);
  shop.watch_it();
  shop.press(shop.job());
  shop.move_to(utc(2026, 3, 4, 17));
  CHECK(shop.seen<bool>([](const shop::View& v) {
    const auto r = v.jobs().waiting().at(0);
    return r.told && r.overdue_told;
  }));
  CHECK(shop.waiting(utc(2030, 1, 1)).empty());
  Receiver to{secret_text};
  const auto id = shop.receiver("wall", to.url("/good"));
  shop.move_to(utc(2026, 3, 5, 9));
  CHECK(shop.undelivered(id) == 0);
  CHECK(came(to).empty());
}

TEST_CASE("Across a change of clock a recheck falls due 24 hours of real time after pressing") {
  SECTION("Berlin, 2026-03-29: the clock goes forward, the shop opens that Sunday") {
    Told t(utc(2026, 3, 28, 9, 30)); // Saturday 10:30, UTC+1
    for (const char* day : {"2026-03-28", "2026-03-29"})
      t.shop.act("open-extra", {{"day", std::string(day)}, {"hours", std::string("9:00-18:00")}});
    t.shop.press(t.shop.job());
    CHECK(t.at(utc(2026, 3, 29, 9, 29, 59)).empty()); // 11:29:59, UTC+2
    CHECK(types(t.at(utc(2026, 3, 29, 9, 30))) == Types{"recheck.due"});
    CHECK(t.at(utc(2026, 3, 30, 15, 59, 59)).empty());
    CHECK(types(t.at(utc(2026, 3, 30, 16))) == Types{"recheck.overdue"}); // Monday 18:00, UTC+2
  }
  SECTION("Berlin, closed on the Sunday: Monday's nine o'clock is an hour earlier in UTC") {
    Told t(utc(2026, 3, 27, 15)); // Friday 16:00, UTC+1
    t.shop.press(t.shop.job());
    CHECK(t.at(utc(2026, 3, 30, 6, 59, 59)).empty());
    CHECK(types(t.at(utc(2026, 3, 30, 7))) == Types{"recheck.due"});
  }
  SECTION("New York, 2026-11-01: the clock goes back, the shop opens that Sunday") {
    Told t(utc(2026, 10, 31, 14), "America/New_York"); // Saturday 10:00, UTC-4
    t.shop.act("open-extra", {{"day", std::string("2026-11-01")}, {"hours", std::string("9:30-12:00")}});
    t.shop.press(t.shop.job());
    CHECK(t.at(utc(2026, 11, 1, 14, 29, 59)).empty()); // due at 9:00, UTC-5, half an hour before opening
    CHECK(types(t.at(utc(2026, 11, 1, 14, 30))) == Types{"recheck.due"});
    CHECK(t.at(utc(2026, 11, 2, 22, 59, 59)).empty());
    CHECK(types(t.at(utc(2026, 11, 2, 23))) == Types{"recheck.overdue"}); // Monday 18:00, UTC-5
  }
}
