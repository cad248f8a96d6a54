#include "rows_of_the_test.hpp"
#include "support/catch.hpp"

#include <stdexcept>

using namespace nutward::talk;
using namespace nutward::talk::test;

namespace {
void compiles(std::string_view pattern) {
  Lexicon lexicon;
  compile(rows().fit, false, pattern, lexicon);
}
} // namespace

TEST_CASE("a wrong pattern stops the program when it starts") {
  CHECK_NOTHROW(compiles("a [b|c] (d|e f) {slot} [{job}] {slot=3}"));
  CHECK_THROWS_AS(compiles("a {piece}"), std::invalid_argument);
  CHECK_THROWS_AS(compiles("a [b"), std::invalid_argument);
  CHECK_THROWS_AS(compiles("a (b|)"), std::invalid_argument);
  CHECK_THROWS_AS(compiles("a b)"), std::invalid_argument);
  CHECK_THROWS_AS(compiles("a {slot"), std::invalid_argument);
  CHECK_THROWS_AS(compiles("a {slot=three}"), std::invalid_argument);
  CHECK_THROWS_AS(compiles(""), std::invalid_argument);
  CHECK_NOTHROW(compiles("a <slot {slot}|{job}> b"));
  CHECK_THROWS_AS(compiles("a <slot {slot}"), std::invalid_argument);
  CHECK_THROWS_AS(compiles("a slot {slot}>"), std::invalid_argument);
  CHECK_THROWS_AS(compiles("a <[b]|c>"), std::invalid_argument); // it would turn on the spot
  CHECK_THROWS_AS(compiles("a <{slot=3}>"), std::invalid_argument);
}

TEST_CASE("a parameter may be said where a pattern has it, and only there") {
  CHECK(heard("what fits slot 3 of job 12") == "fit slot 3, job 12");
  CHECK(heard("which offcut suits slot 3 of job 12?") == "fit slot 3, job 12");
  CHECK(heard("is there an offcut for slot nine of the mandolin") == "fit slot 9, job 12");
  CHECK(heard("Please, what's due today?") == "due");
  CHECK(heard("how much narrow is left?") == "stock wire 3");
  CHECK(heard("how much medium jumbo do we have") == "stock wire 2");
  CHECK(heard("how much medium do we have") == "stock wire 1");
}

TEST_CASE("a length is a piece's length although the word in follows it") {
  CHECK(heard("use the 52.4 in slot 3 of job 12") == "use piece 52.4 mm, slot 3, job 12");
  CHECK(heard("use 2 1/16 in in slot 3 of job 12") == "use piece 52.3875 mm, slot 3, job 12");
  CHECK(heard("use the 2\" piece in slot 3 of job 12") == "use piece 50.8 mm, slot 3, job 12");
}

TEST_CASE("a piece is meant by length, by wire and length, or by its number") {
  CHECK(heard("scrap the 52.4 of medium") == "scrap piece 52.4 mm of wire 1");
  CHECK(heard("scrap the medium jumbo 52.4 mm offcut") == "scrap piece 52.4 mm of wire 2");
  CHECK(heard("scrap 52.4 mm narrow") == "scrap piece 52.4 mm of wire 3");
  CHECK(heard("scrap piece 41") == "scrap piece 41");
  CHECK(heard("bin the 31") == "scrap piece 31 mm");
}

TEST_CASE("slots come alone, in ranges and in lists") {
  CHECK(heard("pressed 9-14 of job 12") == "pressed slots 9 and 10 and 11 and 12 and 13 and 14, job 12");
  CHECK(heard("pressed slots 9 to 11 of job 12") == "pressed slots 9 and 10 and 11, job 12");
  CHECK(heard("pressed frets nine through eleven of job 12") == "pressed slots 9 and 10 and 11, job 12");
  CHECK(heard("pressed 11 down to 9 of job 12") == "pressed slots 11 and 10 and 9, job 12");
  CHECK(heard("pressed 9, 10 and 12 of the uke, job 9") != "pressed slots 9 and 10 and 12, job 9");
  CHECK(heard("pressed 9, 10 and 12 of the ukulele at 400 lb") ==
        "pressed slots 9 and 10 and 12, job 9, load 400 lb");
  CHECK(heard("use the 52.4 in 12/3") == "use piece 52.4 mm, job 12, slot 3");
}

TEST_CASE("several lengths share the unit of the last") {
  CHECK(heard("add 52.4, 51.0 and 50.2 mm of medium") == "add length 52.4 mm and 51 mm and 50.2 mm, wire 1");
  CHECK(heard("add 2 and 1 inch of medium") == "add length 50.8 mm and 25.4 mm, wire 1");
  CHECK(heard("add six pieces of narrow") == "add count 6, wire 3");
}

TEST_CASE("days are read in the shop's zone") {
  // The first four and two weeks: GNU date 9.1, `TZ=UTC-1 date -d PHRASE` run on Wednesday, 25 November 2026
  // (it takes no weekday beside a full date). The others follow from the calendar: a date without its year is
  // the next one (GNU date takes this year for "3 january").
  CHECK(heard("promise job 12 for friday") == "promise job 12, due 2026-11-27");
  CHECK(heard("promise job 12 for next friday") == "promise job 12, due 2026-11-27");
  CHECK(heard("promise job 12 for next wednesday") == "promise job 12, due 2026-12-02");
  CHECK(heard("promise job 12 for tomorrow") == "promise job 12, due 2026-11-26");
  CHECK(heard("promise job 12 for 2026-12-12") == "promise job 12, due 2026-12-12");
  CHECK(heard("promise job 12 for the 12th of december") == "promise job 12, due 2026-12-12");
  CHECK(heard("promise job 12 for december 12, 2027") == "promise job 12, due 2027-12-12");
  CHECK(heard("promise job 12 for 3 january") == "promise job 12, due 2027-01-03");
  CHECK(heard("promise job 12 for the 12th") == "promise job 12, due 2026-12-12");
  CHECK(heard("job 12 is due in two weeks") == "promise job 12, due 2026-12-09");
  CHECK(heard("promise job 12 for 30 february").starts_with("refused: There is no such day"));
}

TEST_CASE("what happened lies in the past") {
  CHECK(heard("pressed job 12 yesterday at 15:00") == "pressed job 12, at 2026-11-24T14:00:00Z");
  CHECK(heard("pressed job 12 2 hours ago") == "pressed job 12, at 2026-11-25T07:00:00Z");
  CHECK(heard("pressed job 12 on friday at 3 pm") == "pressed job 12, at 2026-11-20T14:00:00Z");
  CHECK(heard("pressed job 12 at 9:30") == "pressed job 12, at 2026-11-25T08:30:00Z");
  CHECK(heard("pressed job 12 just now") == "pressed job 12, at 2026-11-25T09:00:00Z");
  CHECK(heard("pressed job 12 2026-11-24T08:30:00Z") == "pressed job 12, at 2026-11-24T08:30:00Z");
}
