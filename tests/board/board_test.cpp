#include "board/board.hpp"
#include "support/catch.hpp"
#include "support/show.hpp"

#include <random>

using namespace nutward;
using namespace nutward::units::literals;
using board::Board;
using units::Length;

namespace {

Board six_string() {
  Board b;
  b.scale = 648_mm;
  b.slots = 22;
  b.nut_width = 43_mm;
  b.far_width = 52_mm;
  b.far_at = 12;
  b.surface = board::Cylinder{305_mm};
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

TEST_CASE("an ordinary board, a flat classical one and a small one are accepted") {
  CHECK(field_refused(six_string()) == "none");
  Board classical{650_mm, 12, 19, 52_mm, 62_mm, 12, board::Flat{}, board::EndStyle::rounded};
  CHECK(field_refused(classical) == "none");
  Board tenor{430_mm,
              12,
              17,
              35_mm,
              45_mm,
              Length{300'000'000},
              board::Compound{250_mm, 400_mm, 17},
              board::EndStyle::filed};
  CHECK(field_refused(tenor) == "none");
}

TEST_CASE("the width and the arc of a slot follow from two measured widths and the radius") {
  const Board b = six_string();
  CHECK(board::position(b, 0) == 0_mm);
  CHECK(board::position(b, 12) == 324_mm);
  CHECK(board::width_at(b, 0) == 43_mm);
  CHECK(board::width_at(b, 12) == 52_mm);
  // Halfway between the nut and slot 12 along x is 162 mm; slot 5 lies at 648·(1 − 2^(−5/12)) = 162.5485 mm.
  CHECK(board::position(b, 5).mm() == Approx(162.548507).epsilon(0).margin(1e-4));
  CHECK(board::width_at(b, 5).mm() == Approx(43 + 9 * 162.548507 / 324).epsilon(0).margin(1e-5));
  CHECK(board::radius_at(b, 5) == 305_mm);
  // 2·305·asin(52/610), worked out by hand with a desk calculator's asin: 52.0631 mm.
  CHECK(board::arc_length(b, 12).mm() == Approx(52.0631).epsilon(0).margin(1e-4));
}

TEST_CASE("a flat board's frets are as long as the board is wide, and it has no radius") {
  Board b = six_string();
  b.surface = board::Flat{};
  CHECK(board::arc_length(b, 12) == 52_mm);
  CHECK_FALSE(board::radius_at(b, 12).has_value());
}

TEST_CASE("a compound radius runs straight between its two measured places") {
  Board b = six_string();
  b.surface = board::Compound{254_mm, 406_mm, 12};
  CHECK(board::radius_at(b, 0) == 254_mm);
  CHECK(board::radius_at(b, 12) == 406_mm);
  // Slot 24 would be three quarters of the scale; on 22 slots the last lies at 648·(1 − 2^(−22/12)) =
  // 466.161148 mm.
  CHECK(board::radius_at(b, 22)->mm() == Approx(254 + 152 * 466.161148 / 324).epsilon(0).margin(1e-4));
}

TEST_CASE("the slots come in order from the first to the highest and agree with the single answers") {
  const Board b = six_string();
  const auto all = board::slots(b);
  REQUIRE(all.size() == 22);
  for (int n = 1; n <= 22; ++n) {
    const auto& slot = all[static_cast<std::size_t>(n - 1)];
    CHECK(slot.n == n);
    CHECK(slot.position == board::position(b, n));
    CHECK(slot.width == board::width_at(b, n));
    CHECK(slot.radius == board::radius_at(b, n));
    CHECK(slot.arc == board::arc_length(b, n));
  }
}

TEST_CASE("a slot beyond the board is refused with those it has") {
  try {
    (void)board::arc_length(six_string(), 23);
    FAIL("slot 23 of 22 was taken");
  } catch (const board::BadBoard& bad) {
    CHECK(bad.field == "slot");
    CHECK(std::string(bad.what()) == "This board has no slot 23.");
    CHECK(bad.would_do == "Slots 1 to 22 would do.");
  }
  CHECK_THROWS_AS(board::position(six_string(), -1), board::BadBoard);
}

TEST_CASE(
    "a scale, a count of slots or an octave out of range is refused, and the limits themselves are not") {
  Board b = six_string();
  for (const Length bad : {99.999_mm, 2000.001_mm, -648_mm, Length{INT64_MAX}, Length{INT64_MIN}}) {
    b.scale = bad;
    CHECK(field_refused(b) == "scale");
  }
  b.scale = 100_mm;
  CHECK(field_refused(b) == "none");
  b.scale = 2000_mm;
  CHECK(field_refused(b) == "none");
  b = six_string();
  b.slots = 0;
  CHECK(field_refused(b) == "slots");
  b.slots = 49;
  CHECK(field_refused(b) == "slots");
  b.slots = 48;
  CHECK(field_refused(b) == "none");
  b.divisions = 0;
  CHECK(field_refused(b) == "divisions");
}

TEST_CASE("a width out of range is refused by name") {
  Board b = six_string();
  for (const Length bad : {0_mm, -43_mm, 200.001_mm, Length{INT64_MAX}, Length{INT64_MIN}}) {
    b = six_string();
    b.nut_width = bad;
    CHECK(field_refused(b) == "nut_width");
    b = six_string();
    b.far_width = bad;
    CHECK(field_refused(b) == "far_width");
  }
}

TEST_CASE(
    "a board that narrows toward the body is refused, beyond what a caliper may make of parallel edges") {
  Board b = six_string();
  b.far_width = 42.95_mm;
  CHECK(field_refused(b) == "none");
  b.far_width = 42.949_mm;
  const auto refused = refusal(b);
  CHECK(refused.field == "far_width");
  CHECK(refused.what ==
        "43 mm at the nut and 42.949 mm further up: a board does not narrow toward the body.");
  CHECK(refused.would_do == "Measure both again; if they were said the wrong way round, exchange them.");
}

TEST_CASE("a second width measured at the nut, before it or beyond the board is refused") {
  Board b = six_string();
  for (const board::Spot& bad :
       {board::Spot{0}, board::Spot{-1}, board::Spot{23}, board::Spot{Length{0}}, board::Spot{-1_mm},
        board::Spot{648.001_mm}, board::Spot{Length{INT64_MAX}}}) {
    b.far_at = bad;
    CHECK(field_refused(b) == "far_at");
  }
  b.far_at = 22;
  CHECK(field_refused(b) == "none");
  b.far_at = 480_mm;
  CHECK(field_refused(b) == "none");
}

TEST_CASE("two widths measured too near each other to tell the board's width are refused") {
  Board b = six_string();
  b.far_width = 52_mm;
  b.far_at = 1_mm;
  CHECK(field_refused(b) == "far_at");
  b.far_width = 42.96_mm;
  b.far_at = Length{1};
  CHECK(field_refused(b) == "far_at");
}

TEST_CASE("a radius under half the width anywhere is refused, and a half-round board is not") {
  Board b = six_string();
  b.far_width = 43_mm;
  b.surface = board::Cylinder{21.5_mm};
  CHECK(field_refused(b) == "none");
  CHECK(board::arc_length(b, 12).mm() == Approx(21.5 * 3.14159265).epsilon(0).margin(1e-6));
  b.surface = board::Cylinder{21.499_mm};
  CHECK(field_refused(b) == "radius");
  b = six_string();
  b.surface = board::Cylinder{25_mm}; // enough at the nut, not at the last slot
  CHECK(field_refused(b) == "radius");
  b.surface = board::Compound{20_mm, 300_mm, 12};
  CHECK(field_refused(b) == "nut_radius");
  b.surface = board::Compound{60_mm, 30_mm, 12};
  CHECK(field_refused(b) == "far_radius");
}

TEST_CASE("a radius out of range or measured off the board is refused") {
  Board b = six_string();
  for (const Length bad : {0_mm, -305_mm, 10'001_mm, Length{INT64_MAX}}) {
    b.surface = board::Cylinder{bad};
    CHECK(field_refused(b) == "radius");
    b.surface = board::Compound{305_mm, bad, 12};
    CHECK(field_refused(b) == "far_radius");
  }
  b.surface = board::Compound{254_mm, 406_mm, 23};
  CHECK(field_refused(b) == "radius_at");
}

TEST_CASE("on 2,000 random boards the closed form and the quadrature agree to a micrometre on every slot") {
  std::mt19937_64 random(20261);
  const auto between = [&](double low, double high) {
    return units::from_mm(std::uniform_real_distribution<double>(low, high)(random));
  };
  int tried = 0;
  while (tried < 2000) {
    Board b;
    b.scale = between(200, 900);
    b.slots = std::uniform_int_distribution<int>(1, 36)(random);
    b.nut_width = between(25, 60);
    b.far_width = b.nut_width + between(0, 15);
    b.far_at = b.slots;
    b.surface = board::Compound{between(20, 500), between(20, 500), b.slots};
    if (field_refused(b) != "none") continue;
    ++tried;
    const auto& compound = std::get<board::Compound>(b.surface);
    if (tried % 3 == 0) b.surface = board::Cylinder{std::max(compound.nut_radius, b.far_width)};
    for (const auto& slot : board::slots(b)) {
      const double x = slot.position.mm(), half = slot.width.mm() / 2;
      const Length measured = board::arc_along(b, {x, -half}, {x, half});
      if (units::abs(measured - slot.arc) > 0.001_mm) {
        FAIL_CHECK("slot " << slot.n << ": " << measured << " is not " << slot.arc);
      }
    }
  }
  CHECK(tried == 2000);
}

TEST_CASE("a line that leaves the surface is refused") {
  Board b = six_string();
  b.surface = board::Cylinder{30_mm};
  CHECK_THROWS_AS(board::arc_along(b, {100, -31}, {100, 31}), board::BadBoard);
}
