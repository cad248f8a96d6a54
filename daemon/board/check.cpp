// What cannot be a board. Lengths are bounded before any arithmetic, so that no value can overflow.
#include "board/board.hpp"
#include "board/shape.hpp"

#include <cmath>
#include <fmt/core.h>

namespace nutward::board {

namespace {

using namespace units::literals;

constexpr Length shortest_scale = 100_mm, longest_scale = 2000_mm;
constexpr Length widest = 200_mm;
constexpr Length largest_radius = 10'000_mm;
constexpr Length narrowing_allowed = 0.05_mm; // what a caliper may make of a board with parallel edges
constexpr Length thinnest_binding = 0.3_mm, thickest_binding = 6_mm;
constexpr Length least_string_spread = 1_mm; // half of what must be left between the outer strings at the nut
constexpr double steepest_lean = 1.0;        // of a fanned slot: 45°, twice what is built
constexpr int most_slots = 48, fewest_divisions = 5, most_divisions = 72;
constexpr std::size_t most_widths = 50;

// Ten digits are every nanometre of a length under 10 m.
std::string shown(double mm) {
  return fmt::format("{:.10g} mm", mm);
}
std::string shown(Length v) {
  return shown(v.mm());
}

void check_layout(const Board& board) {
  if (board.scale < shortest_scale || board.scale > longest_scale) {
    throw BadBoard("scale", fmt::format("A scale of {} cannot be right.", shown(board.scale)),
                   "A scale from 100 to 2000 mm would do.");
  }
  if (board.divisions < fewest_divisions || board.divisions > most_divisions) {
    throw BadBoard("divisions", fmt::format("An octave of {} steps cannot be laid out.", board.divisions),
                   fmt::format("From {} to {} would do; 12 is usual.", fewest_divisions, most_divisions));
  }
  if (board.slots < 1 || board.slots > most_slots) {
    throw BadBoard("slots", fmt::format("A board of {} slots cannot be right.", board.slots),
                   fmt::format("From 1 to {} would do.", most_slots));
  }
}

void check_positions(const Board& board) {
  if (board.positions.empty()) return;
  if (board.fan) {
    throw BadBoard("positions",
                   "Measured positions are of square slots; those of a fanned board are computed.",
                   "Leave out the positions, or the treble scale.");
  }
  if (board.positions.size() != static_cast<std::size_t>(board.slots)) {
    throw BadBoard("positions",
                   fmt::format("{} positions were measured on a board of {} slots.", board.positions.size(),
                               board.slots),
                   "One for each slot would do, from the first to the last.");
  }
  Length before;
  int n = 0;
  for (const Length position : board.positions) {
    ++n;
    if (position >= board.scale) {
      throw BadBoard(
          "positions",
          fmt::format("Slot {} would lie {} from the nut, at the bridge or beyond it.", n, shown(position)),
          fmt::format("Distances over 0 and under the scale, {}, would do.", shown(board.scale)));
    }
    if (position <= before) {
      throw BadBoard("positions",
                     n == 1 ? fmt::format("Slot 1 would lie {} from the nut.", shown(position))
                            : fmt::format("Slot {} would lie {} from the nut, and slot {} at {}.", n,
                                          shown(position), n - 1, shown(before)),
                     "Distances from the nut would do, each greater than the one before.");
    }
    before = position;
  }
}

void check_fan(const Board& board) {
  if (!board.fan) return;
  const Fan& fan = *board.fan;
  if (fan.treble_scale > board.scale) {
    throw BadBoard("treble_scale",
                   fmt::format("A treble scale of {} is longer than the bass side's, {}.",
                               shown(fan.treble_scale), shown(board.scale)),
                   "If they were said the wrong way round, exchange them.");
  }
  if (fan.treble_scale < shortest_scale) {
    throw BadBoard("treble_scale",
                   fmt::format("A treble scale of {} cannot be right.", shown(fan.treble_scale)),
                   fmt::format("From 100 mm to the bass side's, {}, would do.", shown(board.scale)));
  }
  if (fan.square_at < 0 || fan.square_at > board.slots) {
    throw BadBoard("square_at", fmt::format("This board has no slot {} that could be square.", fan.square_at),
                   fmt::format("Slots 0, the nut, to {} would do.", board.slots));
  }
}

void check_width(const char* field, const char* where, Length width) {
  if (width > Length{} && width <= widest) return;
  throw BadBoard(field, fmt::format("A width of {} {} cannot be right.", shown(width), where),
                 "A width over 0 and up to 200 mm would do.");
}

void check_spot(const Board& board, const char* field, const char* what, const Spot& spot) {
  if (const int* slot = std::get_if<int>(&spot)) {
    if (*slot >= 1 && *slot <= board.slots) return;
    throw BadBoard(field, fmt::format("{} was measured at slot {}, which this board has not.", what, *slot),
                   fmt::format("Slots 1 to {} would do, or a distance from the nut.", board.slots));
  }
  const Length distance = std::get<Length>(spot);
  if (distance > Length{} && distance <= board.scale) return;
  throw BadBoard(
      field,
      fmt::format("{} was measured {} from the nut, which is not on this board.", what, shown(distance)),
      fmt::format("A distance over 0 and up to the scale, {}, would do.", shown(board.scale)));
}

void check_more_widths(const Board& board) {
  if (board.more_widths.size() > most_widths) {
    throw BadBoard("more_widths", fmt::format("{} more widths are too many.", board.more_widths.size()),
                   fmt::format("Up to {} would do.", most_widths));
  }
  std::vector<Spot> known{board.far_at};
  for (const MeasuredWidth& w : board.more_widths) {
    check_width("more_widths", "among those measured besides", w.width);
    check_spot(board, "more_widths", "A width", w.at);
    for (const Spot& other : known) {
      if (other != w.at) continue;
      const int* slot = std::get_if<int>(&w.at);
      throw BadBoard("more_widths",
                     fmt::format("Two widths were measured {}.",
                                 slot ? fmt::format("at slot {}", *slot)
                                      : fmt::format("{} from the nut", shown(std::get<Length>(w.at)))),
                     "Give the one that is right.");
    }
    known.push_back(w.at);
  }
}

// On a nut so wide, measured or by the line.
void check_inset(const Board& board, double nut) {
  if (!board.fan) return;
  const double inset = board.fan->string_inset.mm(), most = nut / 2 - least_string_spread.mm();
  if (inset >= 0 && inset <= most) return;
  throw BadBoard("string_inset",
                 fmt::format("The outer strings cannot lie {} inside the edges of a nut {} wide.",
                             shown(inset), shown(nut)),
                 most >= 0 ? fmt::format("From 0 to {} would do.", shown(most))
                           : "A nut at least 2 mm wide would do.");
}

// Comparisons with the shape are written so that what is not a number fails them.
void check_line(const Board& board) {
  const Shape shape(board);
  const double nut = shape.line.at_nut, last = shape.line.at(shape.position(board.slots));
  const bool two = board.more_widths.empty();
  const char* field = two ? "far_at" : "more_widths";
  if (!(nut > 0 && last > 0 && nut <= widest.mm() && last <= widest.mm())) {
    throw BadBoard(field,
                   fmt::format("These {}widths would make the board {} wide at slot {}.", two ? "two " : "",
                               shown(last), board.slots),
                   two ? "Measure the second width further from the nut, best at the last slot."
                       : "Measure again those that stand out.");
  }
  if (!two && last < nut - narrowing_allowed.mm()) {
    throw BadBoard(field,
                   fmt::format("These widths fit {} at the nut and {} at slot {}: a board does not narrow "
                               "toward the body.",
                               shown(nut), shown(last), board.slots),
                   "Measure again those that stand out.");
  }
}

void check_widths(const Board& board) {
  check_width("nut_width", "at the nut", board.nut_width);
  check_width("far_width", "for the second measurement", board.far_width);
  check_spot(board, "far_at", "The second width", board.far_at);
  if (board.far_width < board.nut_width - narrowing_allowed) {
    throw BadBoard("far_width",
                   fmt::format("{} at the nut and {} further up: a board does not narrow toward the body.",
                               shown(board.nut_width), shown(board.far_width)),
                   "Measure both again; if they were said the wrong way round, exchange them.");
  }
  check_more_widths(board);
  check_inset(board, board.nut_width.mm());
  check_line(board);
  check_inset(board, Shape(board).line.at_nut);
}

void check_binding(const Board& board) {
  if (!board.binding) return;
  const Length binding = *board.binding;
  if (binding >= thinnest_binding && binding <= thickest_binding && 4 * binding <= board.nut_width) return;
  throw BadBoard("binding",
                 fmt::format("A binding {} thick cannot be right on a nut {} wide.", shown(binding),
                             shown(board.nut_width)),
                 "The thickness at one edge would do, from 0.3 to 6 mm.");
}

// Each slot lies beyond the one before it at both edges, and none leans too far.
void check_slots(const Board& board) {
  if (!board.fan) return;
  const Shape shape(board);
  std::optional<SlotEnds> before;
  for (int n = 0; n <= board.slots; ++n) {
    const char* remedy = "A treble scale nearer the bass side's would do, or another square slot.";
    if (!(std::abs(shape.slot(n).lean) <= steepest_lean)) {
      throw BadBoard("treble_scale", fmt::format("Slot {} would lean more than 45°.", n), remedy);
    }
    const SlotEnds at = shape.ends(n);
    if (before && !(at.bass.x_mm > before->bass.x_mm && at.treble.x_mm > before->treble.x_mm)) {
      throw BadBoard("treble_scale", fmt::format("Slots {} and {} would meet on the board.", n - 1, n),
                     remedy);
    }
    before = at;
  }
}

void check_radius(const char* field, Length radius) {
  if (radius > Length{} && radius <= largest_radius) return;
  throw BadBoard(
      field, fmt::format("A radius of {} cannot be right.", shown(radius)),
      "A radius up to 10 m would do; a board rounder than that by nothing one can measure is flat.");
}

void check_surface(const Board& board) {
  const char* field = "radius";
  if (const auto* cylinder = std::get_if<Cylinder>(&board.surface)) {
    check_radius("radius", cylinder->radius);
  } else if (const auto* compound = std::get_if<Compound>(&board.surface)) {
    field = "far_radius";
    check_radius("nut_radius", compound->nut_radius);
    check_radius("far_radius", compound->far_radius);
    check_spot(board, "radius_at", "The second radius", compound->far_at);
  } else {
    return;
  }
  const Shape shape(board);
  for (int n = 0; n <= board.slots; ++n) {
    const SlotEnds at = shape.ends(n);
    for (const PlanPoint& end : {at.bass, at.treble}) {
      // Half a nanometre forgives the rounding of a half-round board.
      if (shape.radius(end.x_mm) >= std::abs(end.y_mm) - 0.5e-6) continue;
      throw BadBoard(n == 0 && field[0] == 'f' ? "nut_radius" : field,
                     fmt::format("A radius of {} {} is under half the width there, {}.",
                                 shown(shape.radius(end.x_mm)),
                                 n == 0 ? std::string("at the nut") : fmt::format("at slot {}", n),
                                 shown(std::abs(end.y_mm))),
                     "A radius of at least half the width would do; common boards have 180 mm and more.");
    }
  }
}

} // namespace

void check(const Board& board) {
  check_layout(board);
  check_positions(board);
  check_fan(board);
  check_widths(board);
  check_binding(board);
  check_slots(board);
  check_surface(board);
}

} // namespace nutward::board
