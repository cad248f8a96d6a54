// What is measured beats what is computed: slot positions, widths; and the zero fret.
#include "board/board.hpp"
#include "support/catch.hpp"
#include "support/show.hpp"

using namespace nutward;
using namespace nutward::units::literals;
using board::Board;
using board::MeasuredWidth;
using board::Spot;
using units::Length;

namespace {

Board flat_board() {
  Board b;
  b.scale = 600_mm;
  b.slots = 24;
  b.nut_width = 43_mm;
  b.far_width = 52.2_mm;
  b.far_at = 12; // at 300 mm
  return b;
}

// Places 0, 100, 200, 300 and widths 43, 46, 48.8, 52.2. By the normal equations: Σx = 600, Σx² = 140 000,
// Σw = 190, Σxw = 30 020; slope = (4·30 020 − 600·190)/(4·140 000 − 600²) = 6080/200 000 = 0.0304; at the nut
// (190 − 0.0304·600)/4 = 42.94. On the line: 42.94, 45.98, 49.02, 52.06.
Board four_widths() {
  Board b = flat_board();
  b.more_widths = {{100_mm, 46_mm}, {200_mm, 48.8_mm}};
  return b;
}

// Seven notes to the octave as on a mountain zither, rounded to a tenth as read off a rule.
Board diatonic() {
  Board b = flat_board();
  b.slots = 8;
  b.far_at = 8;
  b.positions = {66.7_mm, 120_mm, 150_mm, 200_mm, 240_mm, 262.5_mm, 300_mm, 333.3_mm};
  return b;
}

struct Refusal {
  std::string field = "none", what, would_do;
};

Refusal refusal(const Board& b) {
  try {
    board::check(b);
  } catch (const board::BadBoard& bad) {
    return {bad.field, bad.what(), bad.would_do};
  }
  return {};
}

std::string field_refused(const Board& b) {
  return refusal(b).field;
}

} // namespace

TEST_CASE("more than two widths give the line of least squares") {
  const Board b = four_widths();
  CHECK(field_refused(b) == "none");
  // Slot 24 lies at 450 mm: 42.94 + 13.68.
  CHECK(board::width_at(b, 24).mm() == Approx(56.62).epsilon(0).margin(1e-6));
  // Slot 1 at 600·(1 − 2^(−1/12)) = 33.675411 mm.
  CHECK(board::width_at(b, 1).mm() == Approx(42.94 + 0.0304 * 33.675411).epsilon(0).margin(1e-6));
}

TEST_CASE("a width measured at a slot overrides the line there, one at a distance does not") {
  Board b = four_widths();
  CHECK(board::width_at(b, 12) == 52.2_mm);
  CHECK(board::width_at(b, 0) == 43_mm);
  CHECK(board::arc_length(b, 12) == 52.2_mm);
  b.far_at = 300_mm; // the same place, but not the slot
  CHECK(board::width_at(b, 12).mm() == Approx(52.06).epsilon(0).margin(1e-6));
  b.more_widths.push_back({Spot{24}, 56_mm});
  CHECK(board::width_at(b, 24) == 56_mm);
}

TEST_CASE("a width more than 0.15 mm off the line is told, with what the line has there") {
  const auto off = board::off_line(four_widths());
  REQUIRE(off.size() == 1);
  CHECK(off[0].at == Spot{200_mm});
  CHECK(off[0].measured == 48.8_mm);
  CHECK(off[0].line.mm() == Approx(49.02).epsilon(0).margin(1e-6));
  CHECK(board::off_line(flat_board()).empty());
}

TEST_CASE("the warning begins right above 0.15 mm") {
  Board b = flat_board();
  b.far_at = 200_mm;
  b.far_width = 49_mm;
  // The middle of three lies off by two thirds of what it stands out, the ends by one third.
  b.more_widths = {{100_mm, 46.2249_mm}};
  CHECK(board::off_line(b).empty());
  b.more_widths = {{100_mm, 46.2251_mm}};
  REQUIRE(board::off_line(b).size() == 1);
  CHECK(board::off_line(b)[0].at == Spot{100_mm});
  b.more_widths = {{100_mm, 46.6_mm}}; // 0.4 and 0.2: all three
  CHECK(board::off_line(b).size() == 3);
  CHECK(board::off_line(b)[0].at == Spot{0});
}

TEST_CASE("measured positions replace the computed ones, for widths at slots too") {
  Board b = diatonic();
  CHECK(field_refused(b) == "none");
  CHECK(board::position(b, 0) == 0_mm);
  CHECK(board::position(b, 1) == 66.7_mm);
  CHECK(board::position(b, 8) == 333.3_mm);
  CHECK(board::slots(b)[6].position == 300_mm);
  CHECK(board::slots(b)[6].treble_position == 300_mm);
  // The far width was measured at slot 8, 333.3 mm: 43 + 9.2·150/333.3.
  CHECK(board::width_at(b, 3).mm() == Approx(43 + 9.2 * 150 / 333.3).epsilon(0).margin(1e-6));
}

TEST_CASE("positions that do not rise, begin at the nut, reach the bridge or are too few are refused") {
  const auto refused = [](auto change) {
    Board b = diatonic();
    change(b);
    return field_refused(b);
  };
  CHECK(refused([](Board& b) { b.positions[3] = 150_mm; }) == "positions");
  CHECK(refused([](Board& b) { b.positions[3] = 149_mm; }) == "positions");
  CHECK(refused([](Board& b) { b.positions[3] = Length{150'000'001}; }) == "none");
  CHECK(refused([](Board& b) { b.positions[0] = 0_mm; }) == "positions");
  CHECK(refused([](Board& b) { b.positions[0] = -1_mm; }) == "positions");
  CHECK(refused([](Board& b) { b.positions[7] = 600_mm; }) == "positions");
  CHECK(refused([](Board& b) { b.positions[7] = 599.999_mm; }) == "none");
  CHECK(refused([](Board& b) { b.positions.pop_back(); }) == "positions");
  CHECK(refused([](Board& b) { b.positions.push_back(400_mm); }) == "positions");
  CHECK(refused([](Board& b) { b.fan = board::Fan{590_mm, 4, 3_mm}; }) == "positions");
  Board b = diatonic();
  b.positions[3] = 149_mm;
  CHECK(refusal(b).what == "Slot 4 would lie 149 mm from the nut, and slot 3 at 150 mm.");
  CHECK(refusal(b).would_do == "Distances from the nut would do, each greater than the one before.");
}

TEST_CASE("a width measured twice, off the board or out of range is refused") {
  const auto refused = [](MeasuredWidth more) {
    Board b = four_widths();
    b.more_widths.push_back(more);
    return field_refused(b);
  };
  CHECK(refused({Spot{12}, 52_mm}) == "more_widths"); // the far width is measured there
  CHECK(refused({Spot{100_mm}, 46_mm}) == "more_widths");
  CHECK(refused({Spot{0}, 43_mm}) == "more_widths");
  CHECK(refused({Spot{25}, 57_mm}) == "more_widths");
  CHECK(refused({Spot{601_mm}, 57_mm}) == "more_widths");
  CHECK(refused({Spot{5}, 0_mm}) == "more_widths");
  CHECK(refused({Spot{5}, 200.1_mm}) == "more_widths");
  CHECK(refused({Spot{5}, Length{INT64_MAX}}) == "more_widths");
  CHECK(refused({Spot{5}, 47.5_mm}) == "none");
  CHECK(refused({Spot{590_mm}, 1_mm}) == "more_widths"); // the line would narrow
  Board many = four_widths();
  for (int i = 0; i < 49; ++i)
    many.more_widths.push_back({Spot{Length{(301 + i) * 1'000'000LL}}, 52.2_mm});
  CHECK(field_refused(many) == "more_widths");
}

TEST_CASE("a measured width wider than twice the radius is refused, though the line is not") {
  Board b = flat_board();
  b.surface = board::Cylinder{30_mm}; // the line is 57 mm wide at the last slot
  CHECK(field_refused(b) == "none");
  b.more_widths = {{Spot{20}, 61_mm}};
  CHECK(field_refused(b) == "radius");
}

TEST_CASE("a board with a zero fret has a slot at the nut's place, as long as the nut's arc") {
  Board b = flat_board();
  b.surface = board::Cylinder{305_mm};
  CHECK(board::slots(b).size() == 24);
  b.zero_fret = true;
  CHECK(field_refused(b) == "none");
  const auto all = board::slots(b);
  REQUIRE(all.size() == 25);
  CHECK(all[0].n == 0);
  CHECK(all[0].position == 0_mm);
  CHECK(all[0].width == 43_mm);
  // 2·305·asin(43/610) by its series, s + s³/24R² + 3s⁵/640R⁴: 43 + 0.035612 + 0.000080.
  CHECK(all[0].arc.mm() == Approx(43.035692).epsilon(0).margin(1e-6));
  CHECK(all[1].n == 1);
}

TEST_CASE("an octave may have other divisions than twelve") {
  Board b = flat_board();
  b.divisions = 24;
  CHECK(board::position(b, 24) == 300_mm);
  // 600·(1 − 2^(−7/19)), 2^(7/19) = 1.290939 as published for 19 equal steps: 135.22 mm.
  b.divisions = 19;
  CHECK(board::position(b, 7).mm() == Approx(600 * (1 - 1 / 1.290939)).epsilon(0).margin(1e-3));
  b.divisions = 4;
  CHECK(field_refused(b) == "divisions");
  b.divisions = 73;
  CHECK(field_refused(b) == "divisions");
  b.divisions = 72;
  CHECK(field_refused(b) == "none");
}

TEST_CASE("a binding is from 0.3 to 6 mm thick, and two leave half of the nut") {
  Board b = flat_board();
  for (const Length bad : {0_mm, -1_mm, 0.299_mm, 6.001_mm, Length{INT64_MAX}}) {
    b.binding = bad;
    CHECK(field_refused(b) == "binding");
  }
  for (const Length good : {0.3_mm, 6_mm}) {
    b.binding = good;
    CHECK(field_refused(b) == "none");
  }
  b.nut_width = 23_mm;
  CHECK(field_refused(b) == "binding");
}
