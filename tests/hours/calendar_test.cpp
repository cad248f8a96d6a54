#include "hours/calendar.hpp"
#include "hours/load_zone.hpp"

#include "support/catch.hpp"

using namespace nutward::hours;
using nutward::units::Day;
using nutward::units::Instant;
namespace ch = std::chrono;

namespace {

constexpr std::int32_t h = 3'600;

Day on(int y, unsigned m, unsigned d) {
  return Day::from(ch::year{y} / ch::month{m} / ch::day{d});
}

// Monday to Friday 09:00 to 12:30 and 13:30 to 18:00.
Calendar workshop() {
  Calendar c;
  for (std::size_t i = 0; i < 5; ++i)
    c.weekly.at(i) = {{9 * h, 12 * h + 1'800}, {13 * h + 1'800, 18 * h}};
  return c;
}

Calendar always() {
  Calendar c;
  for (auto& list : c.weekly)
    list = {{0, 24 * h}};
  return c;
}

const Zone& berlin() {
  static const auto zone = load_zone("Europe/Berlin");
  return *zone;
}

Instant at(int y, unsigned m, unsigned d, std::int32_t s) {
  return berlin().instant(on(y, m, d), s);
}

} // namespace

// Thursday 26 November 2026.
TEST_CASE("the shop is open from its opening on and no longer at its closing") {
  const auto c = workshop();
  CHECK_FALSE(is_open(c, berlin(), at(2026, 11, 26, 9 * h) - ch::seconds{1}));
  CHECK(is_open(c, berlin(), at(2026, 11, 26, 9 * h)));
  CHECK_FALSE(is_open(c, berlin(), at(2026, 11, 26, 12 * h + 1'800)));
  CHECK_FALSE(is_open(c, berlin(), at(2026, 11, 28, 10 * h)));
}

TEST_CASE("the next open instant is now if open, else after the break, the night or the weekend") {
  const auto c = workshop();
  CHECK(next_open(c, berlin(), at(2026, 11, 26, 10 * h)) == at(2026, 11, 26, 10 * h));
  CHECK(next_open(c, berlin(), at(2026, 11, 26, 13 * h)) == at(2026, 11, 26, 13 * h + 1'800));
  CHECK(next_open(c, berlin(), at(2026, 11, 26, 18 * h)) == at(2026, 11, 27, 9 * h));
  CHECK(next_open(c, berlin(), at(2026, 11, 27, 18 * h)) == at(2026, 11, 30, 9 * h));
}

TEST_CASE("a closure takes the weekly hours away and an extra opening adds to any day") {
  auto c = workshop();
  c.closures = {on(2026, 11, 27), on(2026, 11, 30)};
  c.extra[on(2026, 11, 30)] = {{19 * h, 21 * h}};
  c.extra[on(2026, 11, 26)] = {{17 * h, 20 * h}};
  CHECK(next_open(c, berlin(), at(2026, 11, 26, 20 * h)) == at(2026, 11, 30, 19 * h));
  CHECK(end_of_open_day(c, berlin(), at(2026, 11, 26, 1 * h)) == at(2026, 11, 26, 20 * h));
  CHECK(end_of_open_day(c, berlin(), at(2026, 11, 27, 12 * h)) == std::nullopt);
  CHECK(end_of_next_open_day(c, berlin(), at(2026, 11, 26, 10 * h)) == at(2026, 11, 30, 21 * h));
  CHECK(open_between(c, berlin(), at(2026, 11, 26, 0), at(2026, 12, 1, 0)) == ch::hours{8 + 2 + 2});
}

TEST_CASE("open time is added over breaks and nights and ends on a closing where it just fits") {
  const auto c = workshop();
  CHECK(add_open(c, berlin(), at(2026, 11, 26, 12 * h), ch::hours{1}) == at(2026, 11, 26, 14 * h));
  CHECK(add_open(c, berlin(), at(2026, 11, 27, 17 * h), ch::hours{2}) == at(2026, 11, 30, 10 * h));
  CHECK(add_open(c, berlin(), at(2026, 11, 27, 17 * h), ch::hours{1}) == at(2026, 11, 27, 18 * h));
  CHECK(add_open(c, berlin(), at(2026, 11, 28, 11 * h), ch::hours{0}) == at(2026, 11, 28, 11 * h));
  CHECK(subtract_open(c, berlin(), at(2026, 11, 30, 10 * h), ch::hours{2}) == at(2026, 11, 27, 17 * h));
  CHECK(subtract_open(c, berlin(), at(2026, 11, 30, 10 * h), ch::hours{1}) == at(2026, 11, 30, 9 * h));
  CHECK_THROWS_AS(add_open(c, berlin(), at(2026, 11, 26, 0), ch::seconds{-1}), BadHours);
}

TEST_CASE("going back open days keeps the local time, moved into that day's hours") {
  auto c = workshop();
  CHECK(subtract_open_days(c, berlin(), at(2026, 11, 30, 10 * h), 1) == at(2026, 11, 27, 10 * h));
  CHECK(subtract_open_days(c, berlin(), at(2026, 11, 30, 13 * h), 2) == at(2026, 11, 26, 13 * h + 1'800));
  CHECK(subtract_open_days(c, berlin(), at(2026, 11, 28, 20 * h), 1) == at(2026, 11, 27, 18 * h));
  CHECK(subtract_open_days(c, berlin(), at(2026, 11, 28, 20 * h), 0) == at(2026, 11, 28, 20 * h));
  c.closures = {on(2026, 11, 27)};
  CHECK(subtract_open_days(c, berlin(), at(2026, 11, 30, 6 * h), 1) == at(2026, 11, 26, 9 * h));
  // Over the change of clock of 29 March 2026: 10:00 stays 10:00, though 71 hours lie between.
  CHECK(subtract_open_days(c, berlin(), at(2026, 3, 30, 10 * h), 1) ==
        at(2026, 3, 30, 10 * h) - ch::hours{71});
}

// CHECKS.md: Berlin changes on 29 March and 25 October 2026, Lord Howe by half an hour on 4 April (5 April
// local).
TEST_CASE("a day round the clock has 23 hours when the clock goes forward and 25 when it goes back") {
  const auto day_of = [](const Zone& zone, Day day) {
    const auto list = spans(always(), zone, day);
    REQUIRE(list.size() == 1);
    return list[0].second - list[0].first;
  };
  CHECK(day_of(berlin(), on(2026, 3, 29)) == ch::hours{23});
  CHECK(day_of(berlin(), on(2026, 10, 25)) == ch::hours{25});
  CHECK(day_of(berlin(), on(2026, 10, 26)) == ch::hours{24});
  CHECK(day_of(*load_zone("Australia/Lord_Howe"), on(2026, 4, 5)) == ch::minutes{24 * 60 + 30});
}

TEST_CASE("a span wholly in the gap does not happen and one that ends in it ends at the change") {
  Calendar c;
  c.extra[on(2026, 3, 29)] = {{2 * h, 3 * h}};
  CHECK(spans(c, berlin(), on(2026, 3, 29)).empty());
  c.extra[on(2026, 3, 29)] = {{h, 2 * h + 1'800}};
  CHECK(open_between(c, berlin(), at(2026, 3, 28, 0), at(2026, 3, 30, 0)) == ch::hours{1});
  // Opening in the repeated hour means its first passing; closing after it, three hours later by the wall's
  // two.
  c.extra[on(2026, 10, 25)] = {{2 * h, 4 * h}};
  CHECK(open_between(c, berlin(), at(2026, 10, 25, 0), at(2026, 10, 26, 0)) == ch::hours{3});
}

TEST_CASE("hours past midnight join, and a day that never was has none") {
  Calendar c;
  c.weekly[4] = {{20 * h, 24 * h}};
  c.weekly[5] = {{0, 2 * h}};
  const auto list = openings_between(c, berlin(), at(2026, 11, 23, 0), at(2026, 11, 30, 0));
  CHECK(list == std::vector<Opening>{{at(2026, 11, 27, 20 * h), at(2026, 11, 28, 2 * h)}});
  CHECK(is_open(c, berlin(), at(2026, 11, 28, 0)));
  CHECK(spans(always(), *load_zone("Pacific/Apia"), on(2011, 12, 30)).empty());
}

// tz database: on 29 October 2006 Newfoundland put 00:01 back to 23:01 of the 28th.
TEST_CASE("hours that have begun go on while the clock shows the day before again") {
  const auto zone = load_zone("America/St_Johns");
  const auto sunday = on(2006, 10, 29);
  Calendar c;
  c.extra[sunday] = {{0, 2 * h}};
  const auto opened = zone->instant(sunday, 0);
  const auto t = opened + ch::minutes{10};
  REQUIRE(zone->local(t) == LocalTime{sunday - 1, 23 * h + 600});
  CHECK(is_open(c, *zone, t));
  CHECK(next_open(c, *zone, t) == t);
  CHECK(subtract_open(c, *zone, t, ch::minutes{10}) == opened);
  CHECK(open_between(c, *zone, opened, t) == ch::minutes{10});
  CHECK(open_between(c, *zone, t, t + ch::hours{12}) == ch::minutes{170});
}

TEST_CASE("a shop that never opens has no next open time and no arithmetic runs forever") {
  const Calendar never;
  const auto t = at(2026, 11, 26, 9 * h);
  CHECK(next_open(never, berlin(), t) == std::nullopt);
  CHECK(add_open(never, berlin(), t, ch::seconds{1}) == std::nullopt);
  CHECK(subtract_open(never, berlin(), t, ch::seconds{1}) == std::nullopt);
  CHECK(end_of_next_open_day(never, berlin(), t) == std::nullopt);
  CHECK(subtract_open_days(never, berlin(), t, 1) == std::nullopt);
  CHECK(open_between(never, berlin(), t, t + ch::hours{240}) == ch::seconds{0});
}

TEST_CASE("an opening 400 days ahead is seen and one a second later is not") {
  Calendar c;
  const auto t = at(2026, 11, 26, 9 * h);
  c.extra[on(2026, 11, 26) + 400] = {{9 * h, 10 * h}};
  CHECK(next_open(c, berlin(), t) == t + ch::hours{9'600});
  CHECK(next_open(c, berlin(), t - ch::seconds{1}) == std::nullopt);
}

TEST_CASE("a calendar with spans that overlap, close too early or leave the day is refused with its day") {
  auto c = workshop();
  CHECK_NOTHROW(check(c));
  c.weekly[0] = {{9 * h, 12 * h}, {12 * h, 15 * h}};
  CHECK_NOTHROW(check(c));
  c.weekly[0] = {{11 * h, 15 * h}, {9 * h, 12 * h}};
  CHECK_THROWS_WITH(check(c), "Monday: 09:00 to 12:00 and 11:00 to 15:00 overlap.");
  c.weekly[0] = {{18 * h, 9 * h}};
  CHECK_THROWS_WITH(check(c), "Monday: 18:00 to 09:00 closes before or when it opens.");
  c.weekly[0] = {};
  c.extra[on(2026, 11, 26)] = {{20 * h, 25 * h}};
  CHECK_THROWS_WITH(check(c), "Thu 26 Nov 2026: 72000 to 90000 seconds leaves the day.");
  c.extra[on(2026, 11, 26)] = {{20 * h, 24 * h}};
  CHECK_NOTHROW(check(c));
}

TEST_CASE("normalising sorts and joins spans and forgets days without any") {
  Calendar c;
  c.weekly[2] = {{13 * h, 15 * h}, {9 * h, 12 * h}, {12 * h, 13 * h}, {20 * h, 21 * h}};
  c.extra[Day{1}] = {};
  const auto n = normalised(c);
  CHECK(n.weekly[2] == std::vector<Span>{{9 * h, 15 * h}, {20 * h, 21 * h}});
  CHECK(n.extra.empty());
  CHECK(normalised(n) == n);
}

TEST_CASE("an instant that no working clock gives is an error, not an overflow") {
  const auto c = workshop();
  for (const Instant t : {Instant{INT64_MAX}, Instant{INT64_MIN}}) {
    CHECK_THROWS_AS(next_open(c, berlin(), t), BadHours);
    CHECK_THROWS_AS(add_open(c, berlin(), t, ch::seconds{1}), BadHours);
    CHECK_THROWS_AS(subtract_open(c, berlin(), t, ch::seconds{1}), BadHours);
    CHECK_THROWS_AS(is_open(c, berlin(), t), BadHours);
    CHECK_THROWS_AS(subtract_open_days(c, berlin(), t, 1), BadHours);
  }
}
