// The numbers behind a Board, in millimetres and double: for the sources of this folder only.
#pragma once

#include "board/board.hpp"

namespace nutward::board {

// W(x) = at_nut + slope·x.
struct WidthLine {
  double at_nut = 0;
  double slope = 0;
  double at(double x) const { return at_nut + slope * x; }
};

// The plan line of one slot: x = centre + lean·y.
struct SlotLine {
  double centre = 0;
  double lean = 0; // 0: square
};

struct Shape {
  const Board& board; // outlives this
  WidthLine line;
  bool flat = true;
  double nut_radius = 0;
  double flattening = 0; // of the radius, mm per mm along x

  explicit Shape(const Board& of);

  // What of the scale lies between the nut and slot n: from 0 toward 1.
  double share(int n) const;
  SlotLine slot(int n) const;
  double position(int n) const { return slot(n).centre; }
  double spot(const Spot& at) const; // in mm from the nut
  // Measured at slot n, else the line at `x`, where slot n lies.
  double width(int n, double x) const;
  double radius(double x) const { return nut_radius + flattening * x; }
  SlotEnds ends(int n) const;
  double arc(int n) const;
  double arc_along(PlanPoint from, PlanPoint to) const;

private:
  SlotLine fanned(int n) const;
  void fit_widths();
  double square_offset = 0; // of a fan: how far the square slot is shifted for the nut to lie at x = 0
};

} // namespace nutward::board
