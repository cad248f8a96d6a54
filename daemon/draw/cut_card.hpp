// A card for the bench: each stick, coil and piece with its cuts, and what becomes of the rest.
#pragma once

#include "draw/sheet.hpp"

namespace nutward::draw {

// kept: goes on being of use. A cut is what the nippers lose between two parts.
enum class PartKind { fret, cut, flat, scrap, kept };

struct Part {
  PartKind kind{};
  Length length;
  std::string label;  // of a fret: "7"; what else it is
  std::string mark;   // on the rule, where it ends, as it is said elsewhere; "": no cut there
  bool other = false; // a fret for another job
};

struct Bar {
  std::string title;             // "stick 1 of lot 2, 600.00 mm"
  std::vector<Part> parts;       // from the end where cutting begins; each over 0
  std::vector<std::string> then; // what is done afterwards
};

struct CutCard {
  Heading heading;
  std::vector<Bar> bars;
};

// Bars are drawn in their own length where that fits, else 1 : 2 over several rows (and smaller where a part
// alone would not go in), which is then said beside them; what is kept may be drawn shortened, with a break.
// Labels that would run into one another climb like stairs, each with a line to its place. Parts are told
// apart by how they are drawn, not by colour: cuts are black, a fret of another job grey and dashed, a flat
// end lined, scrap crossed out, what is kept has a second line.
std::string picture_of(const CutCard& card);

} // namespace nutward::draw
