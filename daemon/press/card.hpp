// A pass card's content: what a picture of one pass, or of one fret pressed again, shows, in plan coordinates
// (board.hpp). The words, among them the caution, come from who asks.
#pragma once

#include "press/off_centre.hpp"
#include "press/rework.hpp"

#include <vector>

namespace nutward::press {

struct CardFret {
  int slot = 0;
  board::PlanPoint bass, treble; // where its slot meets the edges
  bool under = false;            // the bar
  Force share;                   // of the load where it stands; 0 beside the bar
  Zone zone = Zone::green;       // with the load where it stands
};

struct Card {
  std::vector<CardFret> frets; // under the bar, and on either side the nearest two that are seated; by slot
  Length crown_width;
  Stretch bar; // from its nutward to its bodyward end
  Length bar_width;
  board::PlanPoint load_at;                   // where the load stands
  std::optional<board::PlanPoint> meant_at{}; // where it should, if it is off its place
  std::optional<Room> room{};                 // nullopt: nowhere else, as for one fret alone
  Force first, load;                          // first half, then all
  LimitedBy limited = LimitedBy::line_load;
};

// `pass` is of this work with this bar, and the work of this board.
Card card(const board::Board& board, const Work& work, const Bar& bar, const Pass& pass);
// The same with the load off its place, and what shares() says of that.
Card card(const board::Board& board, const Work& work, const Bar& bar, const Pass& pass, const Off& off,
          const Shares& shares);
// One fret pressed again, in its place or off it to a side. Until it is down it takes all of the load,
// whatever else is under the bar.
Card card(const board::Board& board, const Work& work, const Bar& bar, const OneFret& fret);
Card card(const board::Board& board, const Work& work, const Bar& bar, const OneFret& fret, const Off& off,
          const Shares& shares);

} // namespace nutward::press
