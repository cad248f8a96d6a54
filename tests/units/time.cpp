// Instants as RFC 3339 writes them, days as ISO 8601 does. The instants of §5.8 of RFC 3339 are from memory.
#include "support/catch.hpp"

#include "units/print.hpp"
#include "units/read.hpp"

#include <limits>

using namespace nutward::units;

TEST_CASE("An instant is read with any offset") {
  CHECK(read_instant("1970-01-01T00:00:00Z").s == 0);
  CHECK(read_instant("1969-12-31T23:59:59Z").s == -1);
  CHECK(read_instant("2026-12-12T08:30:00Z").s == 1'797'064'200);
  CHECK(read_instant("2026-12-12t08:30:00z").s == 1'797'064'200);
  CHECK(read_instant("2026-12-12T09:30:00+01:00").s == 1'797'064'200);
  CHECK(read_instant("2026-12-12T14:00:00+05:30").s == 1'797'064'200);
  CHECK(read_instant("2026-12-12T14:15:00+05:45").s == 1'797'064'200);
  CHECK(read_instant("2026-12-12T03:30:00-05:00").s == 1'797'064'200);
  CHECK(read_instant("2026-12-12T08:30:00-00:00").s == 1'797'064'200);
  // RFC 3339 §5.8: these two are the same instant
  CHECK(read_instant("1996-12-19T16:39:57-08:00").s == 851'042'397);
  CHECK(read_instant("1996-12-20T00:39:57Z").s == 851'042'397);
  CHECK(read_instant("2024-02-29T00:00:00Z").s == 1'709'164'800);
  CHECK(read_instant("0000-01-01T00:00:00Z").s == -62'167'219'200);
  CHECK(read_instant("9999-12-31T23:59:59Z").s == 253'402'300'799);
}

TEST_CASE("A time that is not in the form, or that never was, is refused") {
  for (const char* text : {"",
                           "2026-12-12",
                           "2026-12-12T08:30:00",
                           "2026-12-12 08:30:00Z",
                           "2026-12-12T08:30Z",
                           "2026-12-12T8:30:00Z",
                           "2026-12-12T08:30:00.5Z",
                           "2026-12-12T08:30:00.Z",
                           "2026-12-12T24:00:00Z",
                           "2026-12-12T08:60:00Z",
                           "2026-12-12T08:30:60Z",
                           "2026-12-31T23:59:60Z",
                           "2026-02-30T08:30:00Z",
                           "2025-02-29T08:30:00Z",
                           "2026-13-01T08:30:00Z",
                           "2026-00-10T08:30:00Z",
                           "2026-01-00T08:30:00Z",
                           "2026-12-12T08:30:00+1:00",
                           "2026-12-12T08:30:00+0100",
                           "2026-12-12T08:30:00+24:00",
                           "2026-12-12T08:30:00+01:60",
                           "2026-12-12T08:30:00+01",
                           "2026-12-12T08:30:00ZZ",
                           "2026-12-12T08:30:00Z ",
                           " 2026-12-12T08:30:00Z",
                           "26-12-12T08:30:00Z",
                           "+2026-12-12T08:30:00Z",
                           "20261212T083000Z",
                           "0000-01-01T00:00:00+01:00",
                           "9999-12-31T23:59:59-01:00",
                           "2026-12-12T-8:30:00Z",
                           "tomorrow",
                           "1797064200"}) {
    INFO(text);
    CHECK_THROWS_AS(read_instant(text), BadQuantity);
  }
  CHECK_THROWS_WITH(read_instant("2026-02-30T08:30:00Z"), "There is no day 2026-02-30.");
  CHECK_THROWS_WITH(read_instant("2026-12-31T23:59:60Z"), "Leap seconds are not counted here.");
  CHECK_THROWS_WITH(read_instant("2026-12-12T08:30:00.5Z"), "Fractions of a second are not kept.");
  CHECK_THROWS_AS(read_instant(std::string_view("2026-12-12T08:30:00Z\0", 21)), BadQuantity);
  CHECK_THROWS_AS(read_instant(std::string_view("2026-12-12T08:30:00\0", 20)), BadQuantity);
}

TEST_CASE("A day is read, and one that does not exist is refused") {
  CHECK(read_day("1970-01-01").days == 0);
  CHECK(read_day("2026-12-12").days == 20'799);
  CHECK(read_day("2026-12-12").weekday() == 5); // a Saturday
  CHECK(read_day("2024-02-29").days == 19'782);
  CHECK(read_day("2000-02-29").days == 11'016);
  for (const char* text :
       {"2026-02-30", "2026-02-29", "1900-02-29", "2026-04-31", "2026-13-01", "2026-00-01", "2026-01-00",
        "2026-1-1", "2026-12-12 ", "2026-12-12T", "12.12.2026", "12/12/2026", "", "-001-01-01"}) {
    INFO(text);
    CHECK_THROWS_AS(read_day(text), BadQuantity);
  }
}

TEST_CASE("Instants and days print as they are read") {
  CHECK(print_utc({1'797'064'200}) == "2026-12-12T08:30:00Z");
  CHECK(print_utc({-1}) == "1969-12-31T23:59:59Z");
  CHECK(print_utc({-62'167'219'200}) == "0000-01-01T00:00:00Z");
  CHECK(print_utc({253'402'300'799}) == "9999-12-31T23:59:59Z");
  CHECK(print_utc({253'402'300'800}) == "@253402300800");
  CHECK(print_utc({std::numeric_limits<std::int64_t>::min()}) == "@-9223372036854775808");
  CHECK(print(Day{20'799}) == "2026-12-12");
  CHECK(print(Day{-719'528}) == "0000-01-01");
  CHECK(print(Day{2'932'896}) == "9999-12-31");
  CHECK(print(Day{2'932'897}) == "@2932897d");
  for (std::int64_t s = -62'167'219'200; s <= 253'402'300'799; s += 86'400LL * 365 * 7 + 12'345)
    REQUIRE(read_instant(print_utc({s})).s == s);
}
