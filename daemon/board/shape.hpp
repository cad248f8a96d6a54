// The numbers behind a Board, in millimetres and double: for the sources of this folder only.
#pragma once

#include "board/board.hpp"

namespace nutward::board {

struct Shape {
  double scale = 0;
  double steps_per_octave = 12;
  double nut_width = 0;
  double widening = 0; // of the width, mm per mm along x
  bool flat = true;
  double nut_radius = 0;
  double flattening = 0; // of the radius, mm per mm along x

  explicit Shape(const Board& board);
  double position(int n) const;
  double width(double x) const { return nut_width + widening * x; }
  double radius(double x) const { return nut_radius + flattening * x; }
};

// Where a spot lies, in mm from the nut; a slot by its position.
double spot_mm(const Board& board, const Spot& spot);

} // namespace nutward::board
