#include "board/shape.hpp"

#include <cmath>
#include <vector>

namespace nutward::board {

namespace {

struct At {
  double x = 0;
  double width = 0;
};

// The normal equations about the middle of the places, which keeps them well conditioned.
WidthLine least_squares(const std::vector<At>& measured) {
  const auto count = static_cast<double>(measured.size());
  double mean_x = 0, mean_width = 0;
  for (const At& m : measured) {
    mean_x += m.x / count;
    mean_width += m.width / count;
  }
  double spread = 0, together = 0;
  for (const At& m : measured) {
    spread += (m.x - mean_x) * (m.x - mean_x);
    together += (m.x - mean_x) * (m.width - mean_width);
  }
  const double slope = together / spread;
  return {mean_width - slope * mean_x, slope};
}

bool measured_at_slots(const Board& b) {
  bool any = std::holds_alternative<int>(b.far_at);
  for (const MeasuredWidth& w : b.more_widths)
    any = any || std::holds_alternative<int>(w.at);
  return any;
}

} // namespace

Shape::Shape(const Board& of) : board(of) {
  line.at_nut = of.nut_width.mm();
  // Where a slot of a fan crosses the centreline depends, a little, on how the outer strings spread, and so
  // on the widths measured at slots. Each round brings the two a hundred times nearer.
  constexpr int rounds = 8;
  for (int i = 0; i < (of.fan && measured_at_slots(of) ? rounds : 1); ++i)
    fit_widths();
  if (const auto* cylinder = std::get_if<Cylinder>(&of.surface)) {
    flat = false;
    nut_radius = cylinder->radius.mm();
  } else if (const auto* compound = std::get_if<Compound>(&of.surface)) {
    flat = false;
    nut_radius = compound->nut_radius.mm();
    flattening = (compound->far_radius - compound->nut_radius).mm() / spot(compound->far_at);
  }
}

void Shape::fit_widths() {
  const double far_x = spot(board.far_at), nut = board.nut_width.mm(), far = board.far_width.mm();
  if (board.more_widths.empty()) {
    line = {nut, (far - nut) / far_x};
  } else {
    std::vector<At> measured{{0, nut}, {far_x, far}};
    for (const MeasuredWidth& w : board.more_widths)
      measured.push_back({spot(w.at), w.width.mm()});
    line = least_squares(measured);
  }
  if (!board.fan) return;
  // The square slot lies at the mean of both sides' distances and `offset`; the nut's line then crosses the
  // centreline at 0: slope/2·offset² + a·offset = slope/2·d², written so that nothing cancels.
  const double half_difference =
      (board.scale - board.fan->treble_scale).mm() * share(board.fan->square_at) / 2;
  const double a = line.at_nut / 2 - board.fan->string_inset.mm(), bend = line.slope * half_difference;
  square_offset = bend * half_difference / (a + std::sqrt(a * a + bend * bend));
}

double Shape::share(int n) const {
  if (n == 0) return 0;
  if (!board.positions.empty())
    return board.positions[static_cast<std::size_t>(n - 1)].mm() / board.scale.mm();
  return 1.0 - std::exp2(-static_cast<double>(n) / board.divisions);
}

SlotLine Shape::slot(int n) const {
  if (board.fan) return fanned(n);
  if (n > 0 && !board.positions.empty()) return {board.positions[static_cast<std::size_t>(n - 1)].mm(), 0};
  return {board.scale.mm() * share(n), 0};
}

SlotLine Shape::fanned(int n) const {
  const Fan& fan = *board.fan;
  const double bass_scale = board.scale.mm(), treble_scale = fan.treble_scale.mm();
  const double square = share(fan.square_at), beyond = share(n) - square;
  const double square_x = (bass_scale + treble_scale) / 2 * square + square_offset;
  const double bass_x = square_x + bass_scale * beyond, treble_x = square_x + treble_scale * beyond;
  const double bass_y = line.at(bass_x) / 2 - fan.string_inset.mm(); // how far out, on either side
  const double treble_y = line.at(treble_x) / 2 - fan.string_inset.mm();
  const double lean = (treble_x - bass_x) / (bass_y + treble_y);
  return {bass_x + lean * bass_y, lean};
}

double Shape::spot(const Spot& at) const {
  if (const int* n = std::get_if<int>(&at)) return position(*n);
  return std::get<Length>(at).mm();
}

double Shape::width(int n, double x) const {
  if (n == 0) return board.nut_width.mm();
  if (board.far_at == Spot{n}) return board.far_width.mm();
  for (const MeasuredWidth& w : board.more_widths) {
    if (w.at == Spot{n}) return w.width.mm();
  }
  return line.at(x);
}

// Both edges are half the width away at the centreline's crossing and open by half the slope from there: the
// slot's line meets them where |y| = (w + slope·lean·y)/2.
SlotEnds Shape::ends(int n) const {
  const SlotLine at = slot(n);
  const double half = width(n, at.centre) / 2, opening = line.slope * at.lean / 2;
  const double bass_y = -half / (1 + opening), treble_y = half / (1 - opening);
  return {{at.centre + at.lean * bass_y, bass_y}, {at.centre + at.lean * treble_y, treble_y}};
}

} // namespace nutward::board
