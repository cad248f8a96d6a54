// What cannot be a board. Lengths are bounded before any arithmetic, so that no value can overflow.
#include "board/board.hpp"
#include "board/shape.hpp"

#include <fmt/core.h>

namespace nutward::board {

namespace {

using namespace units::literals;

constexpr Length shortest_scale = 100_mm, longest_scale = 2000_mm;
constexpr Length widest = 200_mm;
constexpr Length largest_radius = 10'000_mm;
constexpr Length narrowing_allowed = 0.05_mm; // what a caliper may make of a board with parallel edges
constexpr int most_slots = 48, fewest_divisions = 5, most_divisions = 72;

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
  const Shape shape(board);
  const double last = shape.width(shape.position(board.slots));
  if (last <= 0 || last > widest.mm()) {
    throw BadBoard(
        "far_at",
        fmt::format("These two widths would make the board {} wide at slot {}.", shown(last), board.slots),
        "Measure the second width further from the nut, best at the last slot.");
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
  // Radius and half width are both straight lines along x: what holds at the nut and at the last slot holds
  // between.
  const Shape shape(board);
  for (const int n : {0, board.slots}) {
    const double x = shape.position(n), half = shape.width(x) / 2;
    // Half a nanometre forgives the rounding of a half-round board.
    if (shape.radius(x) >= half - 0.5e-6) continue;
    throw BadBoard(n == 0 && field[0] == 'f' ? "nut_radius" : field,
                   fmt::format("A radius of {} {} is under half the width there, {}.", shown(shape.radius(x)),
                               n == 0 ? std::string("at the nut") : fmt::format("at slot {}", n),
                               shown(half)),
                   "A radius of at least half the width would do; common boards have 180 mm and more.");
  }
}

} // namespace

void check(const Board& board) {
  check_layout(board);
  check_widths(board);
  check_surface(board);
}

} // namespace nutward::board
