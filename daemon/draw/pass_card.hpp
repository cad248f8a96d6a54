// A card for one pass under the press: the frets, the bar over them, and where the load stands.
#pragma once

#include "draw/sheet.hpp"

#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace nutward::draw {

struct PassFret {
  std::string label;  // its slot
  Point bass, treble; // its ends in plan: x from the nut, y down across the board, the bass edge above
  bool under = false; // the bar
  std::string share;  // of the load; "" beside the bar
  std::string note{}; // what is to be minded of it: "too much"; "" nothing
};

struct PassCard {
  Heading heading;
  std::vector<PassFret> frets; // at least one, nutward first
  Length crown_width;
  Box bar; // in plan, as the frets
  std::string bar_label;
  Point load; // where it stands
  std::string load_label;
  std::optional<Point> meant{};                         // where it should stand, if that is elsewhere
  std::optional<std::pair<Length, Length>> may_stand{}; // along the neck, in between; nullopt: nowhere else
};

// One sheet, in its own length where that fits and else 1 : 2 (or smaller), which is then said. Frets under
// the bar are black and as wide as their crowns, those beside it thin; the load is a cross in a box, and a
// dashed box where it should stand; what is to be minded of a fret stands in bold beside its share.
std::string picture_of(const PassCard& card);

} // namespace nutward::draw
