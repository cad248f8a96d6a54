#include "board/board.hpp"

#include "board/shape.hpp"

#include <algorithm>
#include <cmath>
#include <fmt/core.h>

namespace nutward::board {

namespace {

double position_mm(double scale, double steps_per_octave, int n) {
  return scale * (1.0 - std::exp2(-n / steps_per_octave));
}

int known_slot(const Board& board, int n) {
  if (n < 0 || n > board.slots) {
    throw BadBoard("slot", fmt::format("This board has no slot {}.", n),
                   fmt::format("Slots 1 to {} would do.", board.slots));
  }
  return n;
}

double arc_mm(const Shape& shape, double x) {
  const double width = shape.width(x);
  if (shape.flat) return width;
  const double radius = shape.radius(x);
  // A half-round board has w = 2R; rounding may carry the quotient a hair beyond 1.
  return 2.0 * radius * std::asin(std::min(1.0, width / (2.0 * radius)));
}

} // namespace

double spot_mm(const Board& board, const Spot& spot) {
  if (const int* slot = std::get_if<int>(&spot)) {
    return position_mm(board.scale.mm(), board.divisions, *slot);
  }
  return std::get<Length>(spot).mm();
}

Shape::Shape(const Board& board)
    : scale(board.scale.mm()), steps_per_octave(board.divisions), nut_width(board.nut_width.mm()),
      widening((board.far_width - board.nut_width).mm() / spot_mm(board, board.far_at)) {
  if (const auto* cylinder = std::get_if<Cylinder>(&board.surface)) {
    flat = false;
    nut_radius = cylinder->radius.mm();
  } else if (const auto* compound = std::get_if<Compound>(&board.surface)) {
    flat = false;
    nut_radius = compound->nut_radius.mm();
    flattening = (compound->far_radius - compound->nut_radius).mm() / spot_mm(board, compound->far_at);
  }
}

double Shape::position(int n) const {
  return position_mm(scale, steps_per_octave, n);
}

Length position(const Board& board, int n) {
  return units::from_mm(position_mm(board.scale.mm(), board.divisions, known_slot(board, n)));
}

Length width_at(const Board& board, int n) {
  const Shape shape(board);
  return units::from_mm(shape.width(shape.position(known_slot(board, n))));
}

std::optional<Length> radius_at(const Board& board, int n) {
  const Shape shape(board);
  known_slot(board, n);
  if (shape.flat) return std::nullopt;
  return units::from_mm(shape.radius(shape.position(n)));
}

Length arc_length(const Board& board, int n) {
  const Shape shape(board);
  return units::from_mm(arc_mm(shape, shape.position(known_slot(board, n))));
}

std::vector<Slot> slots(const Board& board) {
  const Shape shape(board);
  std::vector<Slot> all;
  all.reserve(static_cast<std::size_t>(board.slots));
  for (int n = 1; n <= board.slots; ++n) {
    const double x = shape.position(n);
    Slot slot{n, units::from_mm(x), units::from_mm(shape.width(x)), std::nullopt,
              units::from_mm(arc_mm(shape, x))};
    if (!shape.flat) slot.radius = units::from_mm(shape.radius(x));
    all.push_back(slot);
  }
  return all;
}

} // namespace nutward::board
