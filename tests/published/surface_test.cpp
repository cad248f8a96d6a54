// Lengths on the board's surface against circle geometry, and against a numeric method that shares nothing
// with ours.
#include "board/board.hpp"
#include "board/need.hpp"
#include "support/catch.hpp"
#include "support/show.hpp"

#include <array>
#include <cmath>
#include <random>

using namespace nutward;
using namespace nutward::units::literals;
using board::PlanPoint;

namespace {

board::Board with(const board::Surface& surface) {
  board::Board b;
  b.scale = 648_mm;
  b.slots = 24;
  b.nut_width = 42_mm;
  b.far_width = 56_mm;
  b.far_at = 24;
  b.surface = surface;
  return b;
}

struct Cone {
  double nut_radius, far_radius, far_x;
  double z(double x, double y) const {
    const double r = nut_radius + (far_radius - nut_radius) * x / far_x;
    return std::sqrt(r * r - y * y) - r;
  }
};

// The line cut into `n` straight chords; each is a little short, by an error in 1/n².
double by_chords(const Cone& cone, PlanPoint a, PlanPoint b, int n) {
  double sum = 0;
  for (int i = 0; i < n; ++i) {
    const double t0 = static_cast<double>(i) / n, t1 = static_cast<double>(i + 1) / n;
    const double x0 = a.x_mm + t0 * (b.x_mm - a.x_mm), x1 = a.x_mm + t1 * (b.x_mm - a.x_mm);
    const double y0 = a.y_mm + t0 * (b.y_mm - a.y_mm), y1 = a.y_mm + t1 * (b.y_mm - a.y_mm);
    sum += std::hypot(x1 - x0, y1 - y0, cone.z(x1, y1) - cone.z(x0, y0));
  }
  return sum;
}

// Richardson's extrapolation over four halvings: the errors in 1/n², 1/n⁴, 1/n⁶ cancel.
double surface_line(const Cone& cone, PlanPoint a, PlanPoint b) {
  std::array<double, 4> row{};
  for (std::size_t i = 0; i < row.size(); ++i)
    row[i] = by_chords(cone, a, b, 200 << i);
  double power = 4;
  for (std::size_t left = row.size(); left-- > 1; power *= 4) {
    for (std::size_t i = 0; i < left; ++i)
      row[i] = row[i + 1] + (row[i + 1] - row[i]) / (power - 1);
  }
  return row[0];
}

} // namespace

TEST_CASE("a fret over a sixth of a circle is pi thirds of its radius long") {
  // The chord of 60° equals the radius (Euclid, Elements IV.15); board 42 mm wide at the nut, radius 42 mm.
  auto b = with(board::Cylinder{42_mm});
  b.far_width = 42_mm;
  CHECK(board::arc_length(b, 7) == 43.982297_mm); // 42·π/3 = 43.98229715
  CHECK(board::arc_along(b, {100, -21}, {100, 21}) == 43.982297_mm);
  CHECK(board::arc_of_chord(42_mm, 42_mm) == 43.982297_mm);
}

TEST_CASE("the arc of a right angle and of half a circle have the lengths of their circle") {
  // Chord of 90° is R·√2, its arc R·π/2; chord of 180° is 2R, its arc R·π. R = 100.
  CHECK(units::abs(board::arc_of_chord(141.421356_mm, 100_mm) - 157.079633_mm) <= units::Length{1000});
  CHECK(board::arc_of_chord(200_mm, 100_mm) == 314.159265_mm);
}

TEST_CASE("closed form and quadrature agree to a micrometre on common radii") {
  // 7.25, 9.5, 10, 12, 16 and 20 in: radii in common use, from memory.
  for (const double inches : {7.25, 9.5, 10.0, 12.0, 16.0, 20.0}) {
    const auto b = with(board::Cylinder{units::from_mm(inches * 25.4)});
    for (const auto& slot : board::slots(b)) {
      const double x = slot.position.mm(), half = slot.width.mm() / 2;
      CHECK(units::abs(board::arc_along(b, {x, -half}, {x, half}) - slot.arc) <= units::Length{1000});
    }
  }
}

TEST_CASE("a skewed line on a cone agrees to a micrometre with a sum of small chords extrapolated") {
  const Cone cone{254, 406.4, 486}; // slot 24 of a scale of 648 lies at 486
  const auto b = with(board::Compound{254_mm, 406.4_mm, 24});
  std::mt19937_64 random(7);
  std::uniform_real_distribution<double> along(0, 486), skew(-40, 40), half(15, 35);
  for (int i = 0; i < 200; ++i) {
    const double x = along(random), lean = skew(random);
    const PlanPoint bass{x - lean / 2, -half(random)}, treble{x + lean / 2, half(random)};
    CHECK(std::abs(board::arc_along(b, bass, treble).mm() - surface_line(cone, bass, treble)) < 0.001);
  }
}

TEST_CASE("a strongly curved cone that flattens fast agrees too") {
  const Cone cone{45, 200, 486};
  const auto b = with(board::Compound{45_mm, 200_mm, 24});
  for (const double lean : {-60.0, -20.0, 0.0, 20.0, 60.0}) {
    const PlanPoint bass{100 - lean / 2, -40}, treble{100 + lean / 2, 40};
    CHECK(std::abs(board::arc_along(b, bass, treble).mm() - surface_line(cone, bass, treble)) < 0.001);
  }
}
