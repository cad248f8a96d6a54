#include "draw/judged.hpp"
#include "draw/week_card.hpp"
#include "support/catch.hpp"

using namespace nutward::draw;

namespace {

WeekCard card_of(std::size_t rows, std::size_t days) {
  WeekCard out;
  out.heading = {"The agenda", "Who does what when.", {"Numbers are jobs."}, {"Hands clear."}};
  for (std::size_t r = 0; r < rows; ++r)
    out.rows.push_back("row <" + std::to_string(r + 1) + ">");
  for (std::size_t d = 0; d < days; ++d) {
    WeekDay day{"day " + std::to_string(d + 1), {{540, 750}, {810, 1080}}, {}};
    for (std::size_t r = 0; r < rows; ++r) {
      day.items.push_back({r, 540, 700, std::to_string(r), true});
      day.items.push_back({r, 810, 815, "12", false}); // too narrow for its label
      day.items.push_back({r, 815, 820, "13", false}); // and here the label above has no room
    }
    out.days.push_back(day);
  }
  return out;
}

std::size_t count(const std::string& in, std::string_view what) {
  std::size_t out = 0;
  for (std::size_t at = in.find(what); at != std::string::npos; at = in.find(what, at + 1))
    ++out;
  return out;
}

} // namespace

TEST_CASE("a week stands day by day, with each machine's and person's boxes, and its caution") {
  const std::string svg = picture_of(card_of(5, 5));
  CHECK(judged(svg) == "");
  CHECK(svg.find("Hands clear.") != std::string::npos);
  CHECK(svg.find("row &lt;5&gt;") != std::string::npos);
  CHECK(svg.find("day 5") != std::string::npos);
  CHECK(count(svg, ">12</text>") >= 25);
  CHECK(count(svg, ">13</text>") <= count(svg, ">12</text>")); // hours of the axis besides
}

TEST_CASE("more machines and people than a sheet has room for go on below, and none is lost") {
  const std::string svg = picture_of(card_of(60, 1));
  CHECK(judged(svg) == "");
  for (int r = 1; r <= 60; ++r)
    CHECK(svg.find("row &lt;" + std::to_string(r) + "&gt;") != std::string::npos);
}

TEST_CASE("a day on which nothing opens is all closed, and a week without days is an empty sheet") {
  WeekCard card = card_of(2, 1);
  card.days.front().open.clear();
  CHECK(judged(picture_of(card)) == "");
  card.days.clear();
  CHECK(judged(picture_of(card)) == "");
  card.rows.clear();
  CHECK(judged(picture_of(card)) == "");
}
