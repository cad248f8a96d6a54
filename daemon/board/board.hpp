// Board: where the slots of a fretboard are, how wide it is there, and how long a fret must be to cross it.
//
// Plan coordinates: x runs along the centreline from the nut (0) toward the bridge (the scale), y across it,
// 0 on the centreline. A Board is a plain value; nothing below changes it. Every function except check()
// expects a board that check() accepts, and is pure. Lengths come out rounded to the nanometre.
#pragma once

#include "units/length.hpp"

#include <optional>
#include <stdexcept>
#include <string>
#include <utility>
#include <variant>
#include <vector>

namespace nutward::board {

using units::Length;

// How the ends of a fret are finished: `rounded` before it is seated, or left long and `filed` flush after
// pressing. (Bound boards will be a third; the numbers are kept in the store and never change.)
enum class EndStyle { rounded = 0, filed = 1 };

// A place along the board: a slot's number (from 1), or a distance from the nut.
using Spot = std::variant<int, Length>;

struct Flat {
  friend bool operator==(const Flat&, const Flat&) = default;
};
struct Cylinder {
  Length radius;
  friend bool operator==(const Cylinder&, const Cylinder&) = default;
};
// The radius runs straight from the one at the nut through the one at `far_at`: R(x) = R0 + (R1 − R0)·x/x1.
struct Compound {
  Length nut_radius;
  Length far_radius;
  Spot far_at;
  friend bool operator==(const Compound&, const Compound&) = default;
};
using Surface = std::variant<Flat, Cylinder, Compound>;

struct Board {
  Length scale;       // 100 to 2000 mm
  int divisions = 12; // of the octave, 5 to 72
  int slots = 0;      // the highest slot, 1 to 48
  Length nut_width;   // over 0, at most 200 mm
  Length far_width;   // the second measured width, likewise, and at most 0.05 mm under the nut's
  Spot far_at = 12;   // where it was measured: a slot of this board, or a distance up to the scale
  Surface surface = Flat{};
  EndStyle ends = EndStyle::rounded;

  friend bool operator==(const Board&, const Board&) = default;
};

// What is wrong with a board: what() is a whole sentence, `field` the member's name above (`radius`,
// `nut_radius`, `far_radius` and `radius_at` for the surface, `slot` for a slot asked for), `would_do` what
// would be accepted.
struct BadBoard : std::runtime_error {
  BadBoard(std::string which, const std::string& what, std::string remedy)
      : std::runtime_error(what), field(std::move(which)), would_do(std::move(remedy)) {}
  std::string field;
  std::string would_do;
};

// Throws BadBoard for the first thing that cannot be so. Besides the ranges above: both measured places lie
// beyond the nut and not beyond the board; the width that the two measurements give stays over 0 and at most
// 200 mm as far as the last slot; the radius is nowhere under half the width, and at most 10 m (more is
// flat).
void check(const Board& board);

// x(n) = S·(1 − 2^(−n/divisions)), equal temperament (ratios published with ISO 16's A = 440). 0 is the nut.
// This and the next three throw BadBoard{"slot"} where n is not in 0..slots.
Length position(const Board& board, int n);
// W(x) = W0 + (W1 − W0)·x/x1: the edges are straight.
Length width_at(const Board& board, int n);
// nullopt: flat.
std::optional<Length> radius_at(const Board& board, int n);
// Along the surface from edge to edge. The radius does not change along a square slot, so 2R·asin(w/2R).
Length arc_length(const Board& board, int n);

struct PlanPoint {
  double x_mm = 0;
  double y_mm = 0;
};
// Along the surface z(x,y) = √(R(x)² − y²) − R(x) over the straight plan line joining two points, by
// quadrature: the general case, which a skewed slot needs. Throws BadBoard{"radius"} where a point lies
// further out than the radius.
Length arc_along(const Board& board, PlanPoint from, PlanPoint to);

struct Slot {
  int n = 0;
  Length position;
  Length width;
  std::optional<Length> radius; // nullopt: flat
  Length arc;
};
// Slots 1 to the highest, in order.
std::vector<Slot> slots(const Board& board);

} // namespace nutward::board
