#include "agenda/recheck.hpp"
#include "hours/load_zone.hpp"

#include "support/catch.hpp"

using namespace nutward::agenda;
using nutward::hours::Calendar;
using nutward::hours::load_zone;
using nutward::hours::Zone;
using nutward::units::Day;
using nutward::units::Instant;
namespace ch = std::chrono;

namespace {

constexpr std::int32_t h = 3'600;

// Monday to Friday 09:00 to 18:00.
Calendar workshop() {
  Calendar c;
  for (std::size_t i = 0; i < 5; ++i)
    c.weekly.at(i) = {{9 * h, 18 * h}};
  return c;
}

const Zone& berlin() {
  static const auto zone = load_zone("Europe/Berlin");
  return *zone;
}

Instant at(int y, unsigned m, unsigned d, std::int32_t hour, std::int32_t minute = 0) {
  return berlin().instant(Day::from(ch::year{y} / ch::month{m} / ch::day{d}), hour * h + minute * 60);
}

RecheckClock clock_of(Instant pressed) {
  return recheck_clock(pressed, {}, workshop(), berlin());
}

} // namespace

// "About a day after pressing": common practice, no source. 26 November 2026 is a Thursday.
TEST_CASE("a fret pressed on Wednesday afternoon is rechecked on Thursday and overdue on Friday evening") {
  const auto c = clock_of(at(2026, 11, 25, 15));
  CHECK(c.from == at(2026, 11, 26, 7));
  CHECK(c.due == at(2026, 11, 26, 15));
  CHECK(c.remind == at(2026, 11, 26, 15));
  CHECK(c.overdue == at(2026, 11, 27, 18));
}

TEST_CASE("a recheck due when the shop is closed is reminded when it opens and overdue that evening") {
  const auto over_weekend = clock_of(at(2026, 11, 27, 15));
  CHECK(over_weekend.due == at(2026, 11, 28, 15));
  CHECK(over_weekend.remind == at(2026, 11, 30, 9));
  CHECK(over_weekend.overdue == at(2026, 11, 30, 18));
  const auto after_closing = clock_of(at(2026, 11, 24, 20));
  CHECK(after_closing.remind == at(2026, 11, 26, 9));
  CHECK(after_closing.overdue == at(2026, 11, 26, 18));
  const auto at_closing = clock_of(at(2026, 11, 24, 18));
  CHECK(at_closing.remind == at(2026, 11, 26, 9));
}

// CHECKS.md: Berlin 2026-03-29 01:00 UTC forward, 2026-10-25 01:00 UTC back. Hours elapsed, not read off the
// wall.
TEST_CASE("a recheck is due 24 elapsed hours after pressing, whatever the clock on the wall did") {
  const auto spring = clock_of(at(2026, 3, 28, 14));
  CHECK(spring.due == at(2026, 3, 28, 14) + ch::hours{24});
  CHECK(spring.due == at(2026, 3, 29, 15));
  CHECK(spring.from == at(2026, 3, 29, 7));
  CHECK(spring.remind == at(2026, 3, 30, 9));
  const auto autumn = clock_of(at(2026, 10, 24, 14));
  CHECK(autumn.due == at(2026, 10, 25, 13));
  CHECK(autumn.from == at(2026, 10, 25, 5));
  CHECK(autumn.remind == at(2026, 10, 26, 9));
  // Pressed on Friday evening: still Saturday by the old clock, reminded on Monday by the new one.
  CHECK(clock_of(at(2026, 3, 27, 17)).remind - at(2026, 3, 27, 17) == ch::hours{63});
  CHECK(clock_of(at(2026, 10, 23, 17)).remind - at(2026, 10, 23, 17) == ch::hours{65});
}

TEST_CASE("half an hour of Lord Howe shifts the wall clock of a recheck by half an hour") {
  const auto zone =
      load_zone("Australia/Lord_Howe"); // CHECKS.md: back by half an hour on 5 April 2026, local
  const auto pressed = zone->instant(Day::from(ch::year{2026} / 4 / 4), 14 * h);
  const auto due = recheck_clock(pressed, {}, workshop(), *zone).due;
  CHECK(zone->local(due).s == 13 * h + 1'800);
}

TEST_CASE("a closure moves the reminder and the moment it is overdue") {
  auto calendar = workshop();
  calendar.closures = {Day::from(ch::year{2026} / 11 / 26), Day::from(ch::year{2026} / 11 / 27)};
  const auto c = recheck_clock(at(2026, 11, 25, 10), {}, calendar, berlin());
  CHECK(c.due == at(2026, 11, 26, 10));
  CHECK(c.remind == at(2026, 11, 30, 9));
  CHECK(c.overdue == at(2026, 11, 30, 18));
}

TEST_CASE("a shop that has said no hours is reminded at 24 h and late a day after") {
  const auto c = recheck_clock(at(2026, 11, 25, 10), {}, Calendar{}, berlin());
  CHECK(c.remind == at(2026, 11, 26, 10));
  CHECK(c.overdue == at(2026, 11, 27, 10));
}

// tz database: on 29 October 2006 Newfoundland put 00:01 back to 23:01, when a minute of the 29th had gone
// by.
TEST_CASE("a recheck is never overdue before it is reminded, even where midnight comes twice") {
  const auto zone = load_zone("America/St_Johns");
  const auto sunday = Day::from(ch::year{2006} / 10 / 29);
  Calendar c;
  c.extra[sunday] = {{0, 30}};
  c.extra[sunday + 1] = {{9 * h, 10 * h}};
  const auto due = zone->instant(sunday, 0) + ch::minutes{10}; // shown as Saturday 23:10
  const auto clock = recheck_clock(due - ch::hours{24}, {}, c, *zone);
  CHECK(clock.remind == zone->instant(sunday + 1, 9 * h));
  CHECK(clock.overdue == clock.remind);
}

TEST_CASE("the hours are a setting, and those out of order or range are refused") {
  const auto c = recheck_clock(at(2026, 11, 25, 10), {12, 36}, workshop(), berlin());
  CHECK(c.from == at(2026, 11, 25, 22));
  CHECK(c.due == at(2026, 11, 26, 22));
  for (const RecheckHours bad : {RecheckHours{0, 24}, {16, 15}, {169, 200}, {16, 337}, {-1, -1}})
    CHECK_THROWS_AS(recheck_clock(at(2026, 11, 25, 10), bad, workshop(), berlin()), BadAgenda);
}
