// Board: where the slots of a fretboard are, how wide it is there, and how long a fret must be to cross it.
//
// Plan coordinates: x runs along the centreline from the nut (0) toward the bridge (the scale), y across it,
// 0 on the centreline, negative on the bass side. A Board is a plain value; nothing below changes it. Every
// function except check() expects a board that check() accepts, and is pure. Lengths come out rounded to the
// nanometre.
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

// How the ends of a crown are finished: `rounded` before it is seated, or left long and `filed` flush after
// pressing. On a bound board this is the crown's finish over the binding. The numbers never change.
enum class EndStyle { rounded = 0, filed = 1 };

// A place along the board: a slot's number (from 1), or a distance from the nut on the centreline.
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

// Fanned frets. The board's scale is the bass side's. Each side's slots are laid out on its outer string,
// with its own scale, measured parallel to the centreline; a slot is the straight plan line through both, run
// out to the edges. The outer strings run parallel to the (straight) edges, `string_inset` inside them.
struct Fan {
  Length treble_scale;            // 100 mm to the board's scale
  int square_at = 0;              // the slot that is square to the centreline: 0 (the nut) to the last
  Length string_inset{3'000'000}; // from 0; common practice, from memory
  friend bool operator==(const Fan&, const Fan&) = default;
};

// A width measured besides those of the nut and `far_at`, square to the centreline.
struct MeasuredWidth {
  Spot at;
  Length width;
  friend bool operator==(const MeasuredWidth&, const MeasuredWidth&) = default;
};

struct Board {
  Length scale;       // 100 to 2000 mm; of a fanned board the bass side's
  int divisions = 12; // of the octave, 5 to 72
  int slots = 0;      // the highest slot, 1 to 48
  Length nut_width;   // over 0, at most 200 mm
  Length far_width;   // the second measured width, likewise, and at most 0.05 mm under the nut's
  Spot far_at = 12;   // where it was measured: a slot of this board, or a distance up to the scale
  Surface surface = Flat{};
  EndStyle ends = EndStyle::rounded;
  bool zero_fret = false;          // slot 0, at the nut's place, takes a fret
  std::optional<Fan> fan{};        // nullopt: all slots are square
  std::vector<Length> positions{}; // empty: computed; else of the slots from 1 to the last, as measured
  std::vector<MeasuredWidth> more_widths{}; // at most 50
  std::optional<Length> binding{}; // thickness of the binding at one edge, 0.3 to 6 mm; nullopt: not bound

  friend bool operator==(const Board&, const Board&) = default;
};

// What is wrong with a board: what() is a whole sentence, `field` the member's name above (`radius`,
// `nut_radius`, `far_radius` and `radius_at` for the surface, `treble_scale`, `square_at` and `string_inset`
// for the fan, `slot` for a slot asked for), `would_do` what would be accepted.
struct BadBoard : std::runtime_error {
  BadBoard(std::string which, const std::string& what, std::string remedy)
      : std::runtime_error(what), field(std::move(which)), would_do(std::move(remedy)) {}
  std::string field;
  std::string would_do;
};

// Throws BadBoard for the first thing that cannot be so. Besides the ranges above: every measured place lies
// beyond the nut and not beyond the board, and none is measured twice; positions are one for each slot,
// rising strictly, and short of the scale, and no board has both them and a fan; the line of the widths does
// not narrow by more than 0.05 mm, and it and every measured width stay over 0 and at most 200 mm as far as
// the last slot; the radius is nowhere under half the width, and at most 10 m (more is flat); no slot of a
// fan leans more than 45° or meets its neighbour on the board; two bindings leave half of the nut's width.
void check(const Board& board);

// Where slot n crosses the centreline. Square slots: x(n) = S·(1 − 2^(−n/divisions)), equal temperament
// (ratios published with ISO 16's A = 440), or as measured. 0 is the nut. This and all below that take an n
// throw BadBoard{"slot"} where it is not in 0..slots.
Length position(const Board& board, int n);
// Square to the centreline at position(n): as measured there, else on the straight line W0 + g·x that fits
// all measured widths with the least squares (two give theirs exactly).
Length width_at(const Board& board, int n);
// At position(n). nullopt: flat.
std::optional<Length> radius_at(const Board& board, int n);
// Along the surface from edge to edge: what a fret covers. The radius does not change along a square slot, so
// 2R·asin(w/2R); the others by quadrature, to well under 1 µm.
Length arc_length(const Board& board, int n);

// A width that lies more than 0.15 mm off the line: measured wrongly, or the edge is not straight.
struct OffLine {
  Spot at; // slot 0 for the nut
  Length measured;
  Length line;
};
// In the order nut, far width, more_widths. Two widths are never off their own line.
std::vector<OffLine> off_line(const Board& board);

struct PlanPoint {
  double x_mm = 0;
  double y_mm = 0;
};
// Along the surface z(x,y) = √(R(x)² − y²) − R(x) over the straight plan line joining two points, by
// quadrature. Throws BadBoard{"radius"} where a point lies further out than the radius.
Length arc_along(const Board& board, PlanPoint from, PlanPoint to);

// Where slot n meets the edges. A width measured at the slot moves both edges there by the same amount.
struct SlotEnds {
  PlanPoint bass, treble;
};
SlotEnds slot_ends(const Board& board, int n);
// How much longer slot n is in plan than the board is wide across it: √(1 + lean²) of a fanned slot, 1 of a
// square one.
double askew(const Board& board, int n);

struct Slot {
  int n = 0;
  Length position; // on the centreline
  Length width;
  std::optional<Length> radius; // nullopt: flat
  Length arc;
  // From the nut along the outer strings; on a board without a fan both are `position`.
  Length bass_position, treble_position;
};
// Slots 1 to the highest, in order; slot 0 before them on a board with a zero fret.
std::vector<Slot> slots(const Board& board);

} // namespace nutward::board
