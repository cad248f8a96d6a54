// The length of a line on the board's surface: in closed form across it, by Gauss-Kronrod quadrature askew.
#include "board/board.hpp"
#include "board/shape.hpp"

#include <algorithm>
#include <boost/math/constants/constants.hpp>
#include <boost/math/quadrature/gauss_kronrod.hpp>
#include <cmath>
#include <fmt/core.h>

namespace nutward::board {

namespace {

void check_on_surface(const Shape& shape, PlanPoint p) {
  const double radius = shape.radius(p.x_mm);
  if (std::abs(p.y_mm) <= radius + 0.5e-6) return;
  throw BadBoard(
      "radius",
      fmt::format("A point {:.10g} mm from the centreline lies beyond the radius there, {:.10g} mm.",
                  std::abs(p.y_mm), radius),
      "A radius of at least half the width would do.");
}

} // namespace

double Shape::arc(int n) const {
  const SlotLine at = slot(n);
  if (at.lean != 0) {
    const SlotEnds to = ends(n);
    return arc_along(to.bass, to.treble);
  }
  const double across = width(n, at.centre);
  if (flat) return across;
  const double r = radius(at.centre);
  // A half-round board has w = 2R; rounding may carry the quotient a hair beyond 1.
  return 2.0 * r * std::asin(std::min(1.0, across / (2.0 * r)));
}

double Shape::arc_along(PlanPoint from, PlanPoint to) const {
  const double dx = to.x_mm - from.x_mm, dy = to.y_mm - from.y_mm;
  if (flat) return std::hypot(dx, dy);
  check_on_surface(*this, from);
  check_on_surface(*this, to);

  // The line is run through by t = (1 + sin φ)/2. Where the surface stands upright at an edge (w = 2R) its
  // slope grows without bound as 1/cos φ; the dt = cos φ/2 dφ takes that away and leaves a smooth integrand.
  const auto speed = [&](double phi) {
    const double t = (1.0 + std::sin(phi)) / 2.0;
    const double x = from.x_mm + t * dx, y = from.y_mm + t * dy;
    const double r = radius(x);
    const double z = std::sqrt(std::max(r * r - y * y, 1e-18));
    const double rise = flattening * dx * (r / z - 1.0) - y * dy / z;
    return std::sqrt(dx * dx + dy * dy + rise * rise) * std::cos(phi) / 2.0;
  };
  const double quarter_turn = boost::math::constants::half_pi<double>();
  constexpr unsigned deepest = 12;
  constexpr double tolerance = 1e-11; // relative: under a nanometre on any board
  using boost::math::quadrature::gauss_kronrod;
  return gauss_kronrod<double, 31>::integrate(speed, -quarter_turn, quarter_turn, deepest, tolerance);
}

Length arc_along(const Board& board, PlanPoint from, PlanPoint to) {
  return units::from_mm(Shape(board).arc_along(from, to));
}

} // namespace nutward::board
