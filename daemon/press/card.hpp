// A pass card's content: what a picture of one pass shows, in plan coordinates (board.hpp). The words, among
// them the caution, come from who asks.
#pragma once

#include "press/passes.hpp"

#include <vector>

namespace nutward::press {

struct CardFret {
  int slot = 0;
  board::PlanPoint bass, treble; // where its slot meets the edges
  bool under = false;            // the bar
  Force share;                   // with the load in its place; 0 beside the bar
};

struct Card {
  std::vector<CardFret> frets; // under the bar, and on either side the nearest two that are seated; by slot
  Length crown_width;
  Stretch bar; // from its nutward to its bodyward end
  Length bar_width;
  board::PlanPoint load_at; // on the centreline
  Room room;
  Force first, load; // first half, then all
  Force average;     // on each fret
  LimitedBy limited = LimitedBy::line_load;
};

// `pass` is of this work with this bar, and the work of this board.
Card card(const board::Board& board, const Work& work, const Bar& bar, const Pass& pass);

} // namespace nutward::press
