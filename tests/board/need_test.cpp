#include "board/need.hpp"
#include "support/catch.hpp"
#include "support/show.hpp"

using namespace nutward;
using namespace nutward::units::literals;
using board::EndStyle;
using board::FitSettings;

TEST_CASE("rounded ends stand back, may fall a little short, and are cut longer for the dressing") {
  const auto need = board::need(52_mm, EndStyle::rounded, {});
  CHECK(need.arc == 52_mm);
  CHECK(need.target == 51.5_mm);
  CHECK(need.least == 50.9_mm);
  CHECK(need.most == 52_mm);
  CHECK(need.cut == 52.5_mm);
  CHECK(board::shortest_raw(need, {}) == 51.9_mm);
}

TEST_CASE("filed ends are cut to stand out and have no most") {
  const auto need = board::need(52_mm, EndStyle::filed, {});
  CHECK(need.least == 52.5_mm);
  CHECK(need.target == 56_mm);
  CHECK(need.cut == 56_mm);
  CHECK_FALSE(need.most.has_value());
  CHECK(board::shortest_raw(need, {}) == 52.5_mm);
}

TEST_CASE("a need follows the shop's settings") {
  FitSettings s;
  s.setback = 0.1_mm;
  s.gap = 0.2_mm;
  s.dressing_loss = 0.7_mm;
  s.filed_extra = 1_mm;
  s.overhang = 3_mm;
  const auto rounded = board::need(40_mm, EndStyle::rounded, s);
  CHECK(rounded.target == 39.8_mm);
  CHECK(rounded.least == 39.4_mm);
  CHECK(rounded.cut == 41.2_mm);
  const auto filed = board::need(40_mm, EndStyle::filed, s);
  CHECK(filed.least == 41_mm);
  CHECK(filed.cut == 46_mm);
}

TEST_CASE("a bent piece measured across its ends is longer along the wire") {
  // A chord equal to the radius spans 60°, so the arc is R·π/3 (Euclid, Elements IV.15: the hexagon).
  CHECK(board::arc_of_chord(100_mm, 100_mm) == 104.719755_mm);
  CHECK(board::arc_of_chord(200_mm, 100_mm).mm() == Approx(314.159265).epsilon(0).margin(1e-6));
  CHECK_THROWS_AS(board::arc_of_chord(200.001_mm, 100_mm), board::BadBoard);
  CHECK_THROWS_AS(board::arc_of_chord(0_mm, 100_mm), board::BadBoard);
  CHECK_THROWS_AS(board::arc_of_chord(50_mm, -100_mm), board::BadBoard);
}

TEST_CASE("settings that contradict themselves are refused by name, the defaults are not") {
  CHECK_NOTHROW(board::check(FitSettings{}));
  const auto refused = [](auto change) {
    FitSettings s;
    change(s);
    try {
      board::check(s);
    } catch (const board::BadSettings& bad) {
      return bad.field;
    }
    return std::string("none");
  };
  CHECK(refused([](FitSettings& s) { s.gap = -0.1_mm; }) == "gap");
  CHECK(refused([](FitSettings& s) { s.setback = 51_mm; }) == "setback");
  CHECK(refused([](FitSettings& s) { s.overhang = 0.2_mm; }) == "overhang");
  CHECK(refused([](FitSettings& s) { s.trim_limit = 1_mm; }) == "trim_limit");
  CHECK(refused([](FitSettings& s) { s.trim_limit = 1.1_mm; }) == "none");
}
