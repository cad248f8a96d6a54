#include "draw/judged.hpp"
#include "draw/pass_card.hpp"
#include "support/catch.hpp"
#include "support/show.hpp"

using namespace nutward::draw;
using namespace nutward::units::literals;

namespace {

// Frets 50 mm long, 20 mm apart from 300 mm on; a bar over the middle three.
PassCard card_of(int frets) {
  PassCard out;
  out.heading = {
      "Pass over frets 9-11", "How to press.", {"Come up to 1000 lb, look, then 2000 lb."}, {"Hands clear."}};
  for (int n = 0; n < frets; ++n) {
    const Length x = 300_mm + n * 20_mm;
    const bool under = n > 0 && n < frets - 1;
    out.frets.push_back({std::to_string(8 + n), {x, -25_mm}, {x, 25_mm}, under, under ? "666 lb" : ""});
  }
  out.crown_width = 2.4_mm;
  out.bar = {315_mm, -45_mm, (frets - 1) * 20_mm - 30_mm, 90_mm};
  out.bar_label = "bar <long>";
  out.load = {340_mm, 0_mm};
  out.load_label = "2000 lb";
  out.may_stand = {335_mm, 345_mm};
  return out;
}

} // namespace

TEST_CASE("a pass is drawn in its own length where that fits, with its caution") {
  const std::string svg = picture_of(card_of(5));
  CHECK(judged(svg) == "");
  CHECK(svg.find("Hands clear.") != std::string::npos);
  CHECK(svg.find("bar &lt;long&gt;") != std::string::npos);
  CHECK(svg.find("Drawn 1 :") == std::string::npos);
}

TEST_CASE("a pass that is too long for a sheet is drawn smaller, and says so") {
  const std::string svg = picture_of(card_of(14)); // 260 mm
  CHECK(judged(svg) == "");
  CHECK(svg.find("Drawn 1 : 2.") != std::string::npos);
}

TEST_CASE("a load off its place is drawn beside where it should stand, and what a fret suffers in words") {
  PassCard card = card_of(5);
  card.load = {340_mm, 8_mm};
  card.meant = Point{340_mm, 0_mm};
  for (PassFret& f : card.frets) {
    if (f.under) f.note = "too much";
  }
  const std::string svg = picture_of(card);
  CHECK(judged(svg) == "");
  CHECK(svg.find("666 lb too much") != std::string::npos);
  CHECK(svg.find("where the load should stand") != std::string::npos);
}

TEST_CASE("one fret by itself has no other place for its load") {
  PassCard card = card_of(5);
  card.may_stand.reset();
  for (PassFret& f : card.frets)
    f.share = f.label == "10" ? "2500 lb" : "";
  const std::string svg = picture_of(card);
  CHECK(judged(svg) == "");
  CHECK(svg.find("may stand here") == std::string::npos);
}
