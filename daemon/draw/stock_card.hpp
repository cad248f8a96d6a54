// Projected stock: how much of each wire is expected to be there, day by day, and where orders come in.
#pragma once

#include "draw/sheet.hpp"

#include <string>
#include <vector>

namespace nutward::draw {

struct StockPoint {
  int day = 0;  // from the first of the card
  Length level; // at its end; may be below 0
};

struct StockMark {
  int day = 0;
  std::string label; // "order by Tue 1 Dec"
};

struct StockWire {
  std::string title;               // "medium: 3 refrets left"
  std::vector<StockPoint> path;    // in rising order of days, one or more
  std::vector<StockPoint> ordered; // the same from the day on which an order is there; may be empty
  Length safety;                   // 0: none
  std::vector<StockMark> marks;
};

struct StockCard {
  Heading heading;
  int days = 84;                  // that are shown
  int ticks_every = 14;           // days between two labels below
  std::vector<std::string> ticks; // one for each, from day 0 on
  std::vector<StockWire> wires;
};

// One chart a wire: a solid line without a new order, a dashed one with it, stock kept for safety as a grey
// band, each mark a line with its number, listed with its label below. Lengths at the left in metres.
std::string picture_of(const StockCard& card);

} // namespace nutward::draw
