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
  CHECK(refused([](FitSettings& s) { s.binding_clearance = -0.1_mm; }) == "binding_clearance");
  CHECK(refused([](FitSettings& s) { s.crown_overhang = 0.4_mm; }) == "crown_overhang");
}

namespace {

// Parallel edges: every slot's arc is 52 mm.
board::Board bound_board(EndStyle crown, units::Length binding) {
  board::Board b;
  b.scale = 640_mm;
  b.slots = 20;
  b.nut_width = b.far_width = 52_mm;
  b.ends = crown;
  b.binding = binding;
  return b;
}

} // namespace

TEST_CASE("on a bound board the crown is as without it, and the tang stays clear of both bindings") {
  // 52 − 2·(1.6 + 0.4)
  const auto rounded = board::need(bound_board(EndStyle::rounded, 1.6_mm), 5, {});
  CHECK(rounded.arc == 52_mm);
  CHECK(rounded.least == 50.9_mm);
  CHECK(rounded.target == 51.5_mm);
  CHECK(rounded.most == 52_mm);
  CHECK(rounded.cut == 52.5_mm);
  CHECK(rounded.tang == 48_mm);
  const auto filed = board::need(bound_board(EndStyle::filed, 1.6_mm), 5, {});
  CHECK(filed.least == 52.5_mm);
  CHECK(filed.cut == 56_mm);
  CHECK_FALSE(filed.most.has_value());
  CHECK(filed.tang == 48_mm);
  FitSettings s;
  s.binding_clearance = 0.25_mm;
  CHECK(board::need(bound_board(EndStyle::filed, 2_mm), 5, s).tang == 47.5_mm);
  auto open = bound_board(EndStyle::rounded, 1.6_mm);
  open.binding.reset();
  CHECK_FALSE(board::need(open, 5, {}).tang.has_value());
}

TEST_CASE("a slot that leans crosses more of the binding than it is thick") {
  // Between parallel edges, 46 mm from string to string: slot 12 runs from 320 to 285.5 mm and leans 34.5/46
  // = 0.75, so that it is √(1 + 0.75²) = 1.25 times as long as the board is wide: 65 mm, and 2.5 mm of each
  // end stay free of the tang.
  auto b = bound_board(EndStyle::rounded, 1.6_mm);
  b.slots = 12;
  b.fan = board::Fan{571_mm, 0, 3_mm};
  CHECK(board::askew(b, 12) == Approx(1.25));
  CHECK(board::askew(b, 0) == 1);
  for (const board::Slot& slot : board::slots(b))
    CHECK(board::need(b, slot, {}) == board::need(b, slot.n, {}));
  CHECK(board::need(b, 12, {}).arc == 65_mm);
  CHECK(board::need(b, 12, {}).tang == 60_mm);
  CHECK_NOTHROW(board::check_binding(b, {})); // 1.25·(1.6 + 0.4) = 2.5
  b.binding = 2.1_mm;                         // 3.125
  try {
    board::check_binding(b, {});
    FAIL("a binding of 2.1 mm was taken");
  } catch (const board::BadBoard& bad) {
    CHECK(bad.would_do == "A binding up to 2 mm would do; or set crown_overhang for crowns that bear it.");
  }
}

TEST_CASE("a binding over which the crown would reach more than 3 mm beyond its tang is refused") {
  CHECK_NOTHROW(board::check_binding(bound_board(EndStyle::rounded, 2.6_mm), {}));
  try {
    board::check_binding(bound_board(EndStyle::rounded, 2.7_mm), {});
    FAIL("a binding of 2.7 mm was taken");
  } catch (const board::BadBoard& bad) {
    CHECK(bad.field == "binding");
    CHECK(std::string(bad.what()) == "Over a binding of 2.7 mm and 0.4 mm of clearance the crown would reach "
                                     "3.1 mm beyond its tang, more than 3 mm.");
    CHECK(bad.would_do == "A binding up to 2.6 mm would do; or set crown_overhang for crowns that bear it.");
  }
  auto open = bound_board(EndStyle::rounded, 2.7_mm);
  open.binding.reset();
  CHECK_NOTHROW(board::check_binding(open, {}));
}
