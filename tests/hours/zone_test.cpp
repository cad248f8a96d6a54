#include "hours/load_zone.hpp"
#include "hours/posix_rule.hpp"

#include "support/catch.hpp"

using namespace nutward::hours;
using nutward::units::Day;
using nutward::units::Instant;
namespace ch = std::chrono;

namespace {

Day on(int y, unsigned m, unsigned d) {
  return Day::from(ch::year{y} / ch::month{m} / ch::day{d});
}

Instant utc(int y, unsigned m, unsigned d, int h, int min = 0) {
  return {on(y, m, d).days * std::int64_t{86'400} + h * 3'600 + min * 60};
}

std::vector<Instant> changes_of_2026(const Zone& zone) {
  std::vector<Instant> out;
  for (const auto& t : zone.transitions())
    if (t.from >= utc(2026, 1, 1, 0) && t.from < utc(2027, 1, 1, 0)) out.push_back(t.from);
  return out;
}

} // namespace

// CHECKS.md "Wire formats and time": tz database, in UTC.
TEST_CASE("the clocks of 2026 change when the tz database says") {
  const auto pair = [](const char* name) { return changes_of_2026(*load_zone(name)); };
  CHECK(pair("America/New_York") == std::vector{utc(2026, 3, 8, 7), utc(2026, 11, 1, 6)});
  CHECK(pair("Europe/London") == std::vector{utc(2026, 3, 29, 1), utc(2026, 10, 25, 1)});
  CHECK(pair("Europe/Berlin") == std::vector{utc(2026, 3, 29, 1), utc(2026, 10, 25, 1)});
  CHECK(pair("Australia/Lord_Howe") == std::vector{utc(2026, 4, 4, 15), utc(2026, 10, 3, 15, 30)});
  CHECK(pair("Pacific/Auckland") == std::vector{utc(2026, 4, 4, 14), utc(2026, 9, 26, 14)});
  for (const char* name : {"America/Sao_Paulo", "Asia/Kolkata", "Asia/Kathmandu"})
    CHECK(pair(name).empty());
}

TEST_CASE("offsets on both sides of a change are the zone's, half an hour apart on Lord Howe") {
  const auto lord_howe = load_zone("Australia/Lord_Howe");
  CHECK(lord_howe->offset_at({utc(2026, 4, 4, 15).s - 1}) == ch::minutes{660});
  CHECK(lord_howe->offset_at(utc(2026, 4, 4, 15)) == ch::minutes{630});
  const auto new_york = load_zone("America/New_York");
  CHECK(new_york->offset_at({utc(2026, 3, 8, 7).s - 1}) == ch::hours{-5});
  CHECK(new_york->offset_at(utc(2026, 3, 8, 7)) == ch::hours{-4});
  CHECK(load_zone("Asia/Kathmandu")->offset_at(utc(2026, 7, 1, 0)) == ch::minutes{345});
}

TEST_CASE("a local time in the gap is the first instant after it, one shown twice is the earlier") {
  const auto zone = load_zone("America/New_York");
  CHECK(zone->instant(on(2026, 3, 8), 2 * 3600 + 1800) == utc(2026, 3, 8, 7));
  CHECK(zone->instant(on(2026, 3, 8), 2 * 3600) == utc(2026, 3, 8, 7));
  CHECK(zone->instant(on(2026, 3, 8), 3 * 3600) == utc(2026, 3, 8, 7));
  CHECK(zone->instant(on(2026, 11, 1), 3600 + 1800) == utc(2026, 11, 1, 5, 30));
  CHECK(zone->instant(on(2026, 11, 1), 2 * 3600) == utc(2026, 11, 1, 7));
  CHECK(zone->local(utc(2026, 11, 1, 5, 30)) == zone->local(utc(2026, 11, 1, 6, 30)));
  CHECK(zone->instant(on(2026, 3, 7), 86'400) == zone->instant(on(2026, 3, 8), 0));
}

// tz database: Samoa had no 30 December 2011; Newfoundland put its clock back at 00:01 until 2011.
TEST_CASE("a day that never was, and a clock put back over midnight, are tolerated") {
  const auto apia = load_zone("Pacific/Apia");
  CHECK(apia->instant(on(2011, 12, 30), 0) == utc(2011, 12, 30, 10));
  CHECK(apia->instant(on(2011, 12, 30), 86'400) == utc(2011, 12, 30, 10));
  CHECK(apia->local(utc(2011, 12, 30, 10)) == LocalTime{on(2011, 12, 31), 0});
  const auto st_johns = load_zone("America/St_Johns");
  const auto back = utc(2006, 10, 29, 2, 31); // 00:01 becomes 23:01 of the day before
  CHECK(st_johns->local({back.s - 60}) == LocalTime{on(2006, 10, 29), 0});
  CHECK(st_johns->local(back) == LocalTime{on(2006, 10, 28), 23 * 3600 + 60});
  CHECK(st_johns->instant(on(2006, 10, 29), 0) == utc(2006, 10, 29, 2, 30));
}

TEST_CASE("an instant prints with the zone's offset and as people say it") {
  const auto new_york = load_zone("America/New_York");
  CHECK(new_york->rfc3339(utc(2026, 11, 26, 14)) == "2026-11-26T09:00:00-05:00");
  CHECK(new_york->human(utc(2026, 11, 26, 14)) == "Thu 26 Nov 2026, 09:00");
  CHECK(load_zone("Asia/Kathmandu")->rfc3339(utc(2026, 1, 1, 0)) == "2026-01-01T05:45:00+05:45");
  CHECK(load_zone("UTC")->rfc3339(utc(2026, 1, 1, 0)) == "2026-01-01T00:00:00+00:00");
  CHECK(load_zone("Africa/Monrovia")->rfc3339(utc(1971, 1, 1, 0)) == "1971-01-01T00:00:00Z"); // -00:44:30
  CHECK(human_time(86'400) == "24:00");
}

TEST_CASE("a time that the clock shows twice is said with its abbreviation, any other without") {
  const auto zone = load_zone("America/New_York");
  CHECK(zone->human(utc(2026, 11, 1, 5, 30)) == "Sun 1 Nov 2026, 01:30 EDT");
  CHECK(zone->human(utc(2026, 11, 1, 6, 30)) == "Sun 1 Nov 2026, 01:30 EST");
  CHECK(zone->human(utc(2026, 11, 1, 5)) == "Sun 1 Nov 2026, 01:00 EDT");
  CHECK(zone->human(utc(2026, 11, 1, 4, 59)) == "Sun 1 Nov 2026, 00:59");
  CHECK(zone->human(utc(2026, 11, 1, 7)) == "Sun 1 Nov 2026, 02:00");
  CHECK(zone->human(utc(2026, 3, 8, 7)) == "Sun 8 Mar 2026, 03:00");
}

TEST_CASE("a forged name of a zone is refused before it can become a path") {
  const std::string overlong(65, 'A');
  for (const std::string name :
       {"", "../../etc/passwd", "/etc/passwd", "Europe//Berlin", "Europe/", "Europe/./Berlin",
        "Europe Berlin", "Europe/Berlin\n", "Europe/B\xc3\xa9rlin"}) {
    INFO(name);
    CHECK_THROWS_AS(load_zone(name), BadHours);
  }
  CHECK_THROWS_WITH(load_zone(overlong), "The name of the time zone is over 64 characters long.");
  CHECK_THROWS_AS(load_zone(std::string_view("UTC\0x", 5)), BadHours);
  CHECK_THROWS_WITH(load_zone("localtime"),
                    "'localtime' says what this machine is set to, not where the shop is.");
}

TEST_CASE("an unknown zone is named in the error, with what would do") {
  try {
    load_zone("Europe/Atlantis");
    FAIL("it was taken");
  } catch (const BadHours& e) {
    CHECK(std::string(e.what()) == "This machine's time zone database does not know 'Europe/Atlantis'.");
    CHECK(e.would_do.find("Europe/Berlin") != std::string::npos);
  }
}

TEST_CASE("a zone refuses transitions out of order, none, and offsets beyond 26 hours") {
  CHECK_THROWS_AS(Zone("x", {}), BadHours);
  CHECK_THROWS_AS(Zone("x", {{{10}, 0, "A"}, {{10}, 60, "B"}}), BadHours);
  CHECK_THROWS_AS(Zone("x", {{{0}, 93'601, "A"}}), BadHours);
  const Zone utc_zone("x", {{{0}, 0, "UTC"}});
  CHECK_THROWS_AS(utc_zone.instant(Day{0}, 86'401), BadHours);
  CHECK_THROWS_AS(utc_zone.local({INT64_MAX}), BadHours);
  CHECK_THROWS_AS(utc_zone.local({INT64_MIN}), BadHours);
  CHECK(utc_zone.local({-1}) == LocalTime{Day{-1}, 86'399});
}

// The rule of POSIX.1 XBD 8.3; expected instants worked out by hand from the calendar.
TEST_CASE("a POSIX rule gives the changes of each year, negative times and days of the year included") {
  const auto us = changes_by_rule("EST5EDT,M3.2.0,M11.1.0", 2026, 2026);
  REQUIRE(us.size() == 2);
  CHECK(us[0].from == utc(2026, 3, 8, 7));
  CHECK(us[0].offset_s == -14'400);
  CHECK(us[1].from == utc(2026, 11, 1, 6));
  CHECK(us[1].abbreviation == "EST");
  const auto greenland = changes_by_rule("<-02>2<-01>,M3.5.0/-1,M10.5.0/0", 2026, 2026);
  CHECK(greenland.at(0).from == utc(2026, 3, 29, 1));
  CHECK(greenland.at(0).abbreviation == "-01");
  const auto by_day =
      changes_by_rule("AAA0BBB,J60/0,59/1:30", 2028, 2028); // a leap year: 1 March, 29 February
  CHECK(by_day.at(0).from == utc(2028, 2, 29, 0, 30));
  CHECK(by_day.at(1).from == utc(2028, 3, 1, 0));
  CHECK(changes_by_rule("IST-5:30", 2026, 2030).empty());
  for (const char* bad :
       {"", "EST", "EST5EDT", "EST5EDT,M13.1.0,M11.1.0", "EST5EDT,M3.2.0", "EST5EDT,M3.2.0,M11.1.0x", "<EST5",
        "EST5EDT,M3.2.0/168,M11.1.0", "EST99999999999EDT,M3.2.0,M11.1.0"}) {
    INFO(bad);
    CHECK_THROWS_AS(changes_by_rule(bad, 2026, 2026), BadHours);
  }
}
