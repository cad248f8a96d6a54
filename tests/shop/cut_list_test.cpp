// The cut list through the executor. The shop's slots are each cut to 52.5 mm and a nip loses 0.5 mm (see
// cuts_test.cpp); marks by hand.
#include "bench.hpp"
#include "draw/judged.hpp"
#include "support/catch.hpp"

#include <set>

using namespace nutward;
using namespace nutward::test;

namespace {

Length mm(const Value& record, std::string_view name) {
  return as<Length>(at(record, name));
}

void check_nothing_is_lost(const Answer& a) {
  const Value& sources = at(a.data, "sources");
  for (std::size_t i = 0; i < size(sources); ++i) {
    const Value& one = item(sources, i);
    Length sum = mm(one, "kerf") + mm(one, "scrap") + mm(one, "left");
    for (std::size_t k = 0; k < size(at(one, "frets")); ++k)
      sum += mm(item(at(one, "frets"), k), "length");
    CHECK(sum == mm(one, "length"));
  }
}

// Every length and mark of the table stands in the drawing, to the letter.
void check_drawn(const Answer& a) {
  const std::string svg = a.picture.value().svg();
  CHECK(judged(svg) == "");
  std::set<std::string> marks;
  for (const auto& row : a.table.value().rows) {
    if (row[3].empty() || row[3] == "no cut") continue;
    CHECK_THAT(svg, ContainsSubstring(">" + row[3] + "</text>"));
  }
  for (const Hazard h : a.cautions) // each line is broken where it has no room: its head will do
    CHECK_THAT(svg, ContainsSubstring("Caution: " + std::string(caution(h)).substr(0, 30)));
}

} // namespace

TEST_CASE("a stick's marks are cumulative behind each nip, and its end has a place in the tin") {
  Shop shop;
  shop.does("set", R"({"setting": "ends_place", "to": "the long tray"})");
  const Answer a = shop.asks("cut-list", R"({"job": 1})");
  CHECK(a.kind == "cut-list");
  CHECK(a.text ==
        "4 open frets of job 1 (test board of Vida): 4 from 1 stick. Into the tin afterwards: 388.00 mm (the "
        "long tray).");
  CHECK_THAT(a.reason,
             ContainsSubstring("In slot order: 1-4 from stick 1 of lot 1. Marks are on the rule from the end "
                               "where cutting begins; each cut loses 0.50 mm beyond its mark"));
  CHECK(in_words(a) == "stick 1 of lot 1, 600.00 mm|slot 1|52.50 mm|52.50 mm|dress both ends, to 51.50 mm|\n"
                       "|slot 2|52.50 mm|105.50 mm|dress both ends, to 51.50 mm|\n"
                       "|slot 3|52.50 mm|158.50 mm|dress both ends, to 51.50 mm|\n"
                       "|slot 4|52.50 mm|211.50 mm|dress both ends, to 51.50 mm|\n"
                       "|rest|388.00 mm||into the tin, the long tray|\n");
  CHECK(a.cautions == std::vector{Hazard::nipping, Hazard::sanding});
  check_nothing_is_lost(a);
  check_drawn(a);
}

TEST_CASE("pieces stand with their place, and a rest goes to the bin of its length") {
  Shop shop;
  // 110 − 52.5 − 0.5 = 57 for the last fret; of the stick 600 − 3·53 = 441 are left.
  shop.does("add", R"({"wire": 1, "length_mm": 52.4, "ends": "raw", "place": "drawer 2"})");
  shop.does("add", R"({"wire": 2, "length_mm": 441, "ends": "raw", "place": "elsewhere"})");
  shop.does("add",
            R"({"wire": 1, "length_mm": 444.9, "ends": "raw", "place": "tube <9>", "kind": "stick_end"})");
  // Held for a job that has its fret: left alone by the plan, and in the bin all the same.
  shop.does("new-job", R"({"wire": 1, "scale_mm": 600, "frets": 1, "nut_width_mm": 52, "far_width_mm": 52})");
  shop.does("measured", R"({"job": 3, "slot": 1, "length_mm": 51.5})");
  shop.does("hold", R"({"piece": 3, "job": 3})");
  const Answer a = shop.asks("cut-list", R"({"job": 1})");
  CHECK_THAT(in_words(a), ContainsSubstring("piece 1, 52.40 mm, drawer 2|slot "));
  CHECK_THAT(in_words(a), ContainsSubstring("|no cut|dress both ends, to 51.40 mm|"));
  CHECK_THAT(in_words(a), ContainsSubstring("|rest|441.00 mm||into the tin, tube <9>|"));
  check_nothing_is_lost(a);
  check_drawn(a);
}

TEST_CASE("a source that two jobs share is whole in the list of either, with the other's cuts named") {
  Shop shop;
  shop.does(
      "new-job",
      R"({"wire": 1, "scale_mm": 600, "frets": 3, "nut_width_mm": 52, "far_width_mm": 52, "instrument": "second"})");
  const Answer one = shop.asks("cut-list", R"({"job": 1})");
  const Answer two = shop.asks("cut-list", R"({"job": 3})");
  CHECK(size(at(one.data, "sources")) == 1);
  CHECK(size(at(item(at(one.data, "sources"), 0), "frets")) == 7);
  CHECK(size(at(item(at(two.data, "sources"), 0), "frets")) == 7);
  CHECK_THAT(one.text, ContainsSubstring("4 open frets of job 1"));
  CHECK_THAT(two.text, ContainsSubstring("3 open frets of job 3"));
  CHECK_THAT(two.reason,
             ContainsSubstring("Shared: stick 1 of lot 1 with job 1; their cuts are in the list."));
  CHECK_THAT(in_words(two), ContainsSubstring("slot 1 of job 1|52.50 mm|52.50 mm|"));
  CHECK_THAT(in_words(two), ContainsSubstring("|slot 1|52.50 mm|264.50 mm|"));
  check_nothing_is_lost(two);
  check_drawn(two);
  const Answer all = shop.asks("cut-list", R"({"wire": "medium"})");
  CHECK_THAT(in_words(all), ContainsSubstring("|slot 3 of job 3|52.50 mm|370.50 mm|"));
  check_drawn(all);
}

TEST_CASE("on a board that is not flat a stick's flat end comes off first, and every mark counts from it") {
  Shop shop;
  shop.does(
      "new-job",
      R"({"wire": 1, "scale_mm": 600, "frets": 2, "nut_width_mm": 52, "far_width_mm": 52, "radius_mm": 300})");
  const Answer a = shop.asks("cut-list", R"({"job": 3})");
  CHECK_THAT(in_words(a), ContainsSubstring("600.00 mm|flat end|12.00 mm|12.00 mm|scrap|"));
  CHECK_THAT(in_words(a), ContainsSubstring("|slot 1 of job 1|52.50 mm|64.50 mm|"));
  CHECK_THAT(a.reason, ContainsSubstring("12.00 mm that the bender leaves flat are cut off first"));
  check_nothing_is_lost(a);
  check_drawn(a);
}

TEST_CASE("in inches the marks are in inches, in the list as in the drawing") {
  Shop shop;
  shop.does("set", R"({"setting": "unit", "to": "in"})");
  const Answer a = shop.asks("cut-list", R"({"job": 1})");
  CHECK_THAT(in_words(a), ContainsSubstring(" in|"));
  check_drawn(a);
}

TEST_CASE("what is not there is named, and a list without a subject is asked about") {
  Shop shop;
  CHECK(shop.unanswered("cut-list", R"({})").where == "job");
  CHECK(shop.unanswered("cut-list", R"({"job": 1, "wire": "narrow"})").where == "wire");
  const Answer none = shop.asks("cut-list", R"({"job": 2})");
  CHECK_THAT(none.text, ContainsSubstring("Without a fret: slots 1-24 (there is no new wire)"));
  CHECK_FALSE(none.picture);
  CHECK(size(at(none.data, "goes_without")) == 24);
}
