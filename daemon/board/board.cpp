#include "board/board.hpp"

#include "board/shape.hpp"

#include <cmath>
#include <fmt/core.h>

namespace nutward::board {

namespace {

constexpr double off_line_mm = 0.15;

int known_slot(const Board& board, int n) {
  if (n < 0 || n > board.slots) {
    throw BadBoard("slot", fmt::format("This board has no slot {}.", n),
                   fmt::format("Slots 1 to {} would do.", board.slots));
  }
  return n;
}

} // namespace

Length position(const Board& board, int n) {
  return units::from_mm(Shape(board).position(known_slot(board, n)));
}

Length width_at(const Board& board, int n) {
  const Shape shape(board);
  return units::from_mm(shape.width(known_slot(board, n), shape.position(n)));
}

std::optional<Length> radius_at(const Board& board, int n) {
  const Shape shape(board);
  known_slot(board, n);
  if (shape.flat) return std::nullopt;
  return units::from_mm(shape.radius(shape.position(n)));
}

Length arc_length(const Board& board, int n) {
  return units::from_mm(Shape(board).arc(known_slot(board, n)));
}

SlotEnds slot_ends(const Board& board, int n) {
  return Shape(board).ends(known_slot(board, n));
}

double askew(const Board& board, int n) {
  const Shape shape(board);
  return std::hypot(1.0, shape.slot(known_slot(board, n)).lean);
}

std::vector<OffLine> off_line(const Board& board) {
  std::vector<OffLine> off;
  if (board.more_widths.empty()) return off;
  const Shape shape(board);
  const auto look = [&](const Spot& at, Length measured) {
    const double line = shape.line.at(shape.spot(at));
    if (std::abs(measured.mm() - line) > off_line_mm) off.push_back({at, measured, units::from_mm(line)});
  };
  look(0, board.nut_width);
  look(board.far_at, board.far_width);
  for (const MeasuredWidth& w : board.more_widths)
    look(w.at, w.width);
  return off;
}

std::vector<Slot> slots(const Board& board) {
  const Shape shape(board);
  std::vector<Slot> all;
  all.reserve(static_cast<std::size_t>(board.slots) + 1);
  for (int n = board.zero_fret ? 0 : 1; n <= board.slots; ++n) {
    const double x = shape.position(n);
    Slot slot;
    slot.n = n;
    slot.position = slot.bass_position = slot.treble_position = units::from_mm(x);
    slot.width = units::from_mm(shape.width(n, x));
    slot.arc = units::from_mm(shape.arc(n));
    if (!shape.flat) slot.radius = units::from_mm(shape.radius(x));
    if (board.fan) {
      slot.bass_position = units::from_mm(board.scale.mm() * shape.share(n));
      slot.treble_position = units::from_mm(board.fan->treble_scale.mm() * shape.share(n));
    }
    all.push_back(slot);
  }
  return all;
}

} // namespace nutward::board
