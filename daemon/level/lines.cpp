#include "level/lines.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>

#include <fmt/format.h>

namespace nutward::level {

namespace {

struct Radius {
  bool flat = true;
  double at_nut = 0, per_mm = 0;
  double at(double x) const { return at_nut + per_mm * x; }
};

Radius radius_of(const board::Board& board) {
  const auto nut = board::radius_at(board, 0), last = board::radius_at(board, board.slots);
  if (!nut || !last) return {};
  const double to = board::position(board, board.slots).mm();
  return {false, nut->mm(), (last->mm() - nut->mm()) / to};
}

// A straight line of the plan: y = at_first + slope·(x − first_x).
struct Track {
  double first_x = 0, at_first = 0, slope = 0;
};

// Where a slot's own line through both edges is `share` of the way from the bass edge.
board::PlanPoint along(const board::SlotEnds& ends, double share) {
  return {ends.bass.x_mm + share * (ends.treble.x_mm - ends.bass.x_mm),
          ends.bass.y_mm + share * (ends.treble.y_mm - ends.bass.y_mm)};
}

board::PlanPoint inside(const board::SlotEnds& ends, Line line) {
  const double wide = ends.treble.y_mm - ends.bass.y_mm;
  const double share = edge_inset.mm() / wide;
  if (line == Line::middle) return along(ends, -ends.bass.y_mm / wide);
  return along(ends, line == Line::bass ? share : 1 - share);
}

board::PlanPoint meet(const board::SlotEnds& ends, const Track& track) {
  const double dx = ends.treble.x_mm - ends.bass.x_mm, dy = ends.treble.y_mm - ends.bass.y_mm;
  const double off =
      track.at_first + track.slope * (ends.bass.x_mm - track.first_x) - ends.bass.y_mm; // at the bass edge
  return along(ends, off / (dy - track.slope * dx));
}

std::vector<Crown> crowns_of(const board::Board& board, std::span<const int> slots, Line line) {
  const Radius radius = radius_of(board);
  const board::PlanPoint first = inside(board::slot_ends(board, slots.front()), line);
  const board::PlanPoint last = inside(board::slot_ends(board, slots.back()), line);
  const Track track{first.x_mm, first.y_mm, (last.y_mm - first.y_mm) / (last.x_mm - first.x_mm)};
  std::vector<Crown> out;
  out.reserve(slots.size());
  for (const int n : slots) {
    const board::PlanPoint at = meet(board::slot_ends(board, n), track);
    const double r = radius.at(at.x_mm);
    const double z = radius.flat ? 0 : -at.y_mm * at.y_mm / (r + std::sqrt(r * r - at.y_mm * at.y_mm));
    out.push_back({n, at.x_mm, at.y_mm, z});
  }
  return out;
}

} // namespace

std::optional<std::size_t> Lines::find(int slot) const {
  const auto& all = crowns[0];
  const auto at = std::lower_bound(all.begin(), all.end(), slot,
                                   [](const Crown& crown, int wanted) { return crown.slot < wanted; });
  if (at == all.end() || at->slot != slot) return std::nullopt;
  return static_cast<std::size_t>(at - all.begin());
}

Lines lines(const board::Board& board, std::span<const int> slots) {
  if (slots.size() < 3)
    throw BadReading("slots", fmt::format("Only {} frets stand in the board.", slots.size()),
                     "three frets or more, since two always carry a straightedge");
  for (std::size_t i = 1; i < slots.size(); ++i) {
    if (slots[i] <= slots[i - 1])
      throw BadReading("slots", fmt::format("Slot {} is named after slot {}.", slots[i], slots[i - 1]),
                       "each slot once, from the nut on");
  }
  Lines out;
  for (const Line line : all_lines)
    out.crowns[static_cast<std::size_t>(line)] = crowns_of(board, slots, line);
  return out;
}

Lines lines(const board::Board& board) {
  std::vector<int> slots(static_cast<std::size_t>(board.slots));
  std::iota(slots.begin(), slots.end(), 1);
  if (board.zero_fret) slots.insert(slots.begin(), 0);
  return lines(board, slots);
}

double hump(const Lines& lines, Line line, std::size_t a, std::size_t b, std::size_t c) {
  const auto& at = lines.on(line);
  const double share = (at[b].x - at[a].x) / (at[c].x - at[a].x);
  return at[b].z - (1 - share) * at[a].z - share * at[c].z;
}

} // namespace nutward::level
