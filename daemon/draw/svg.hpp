// SVG, written down: rectangles, lines and text on a sheet measured in millimetres, so that it prints true to
// scale. No scripts, styles, links or references: nothing in it can fetch or run anything.
#pragma once

#include "units/length.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace nutward::draw {

using units::Length;

struct Point {
  Length x, y; // from the sheet's upper left corner, to the right and down
};

struct Box {
  Length x, y, width, height;
};

enum class Fill { none, white, grey, black };
enum class Edge { none, solid, dashed };

struct Type {
  Length size;
  bool bold = false;
};

// What a reader may be shown of any text: control, bidirectional and zero-width characters and what is no
// UTF-8 escaped as \x1b, then `& < > " '` as XML wants them, also within an attribute. What XML cannot hold
// at all (U+FFFE, U+FFFF) comes as \ufffe.
std::string escaped(std::string_view text);

// The room that Svg::text() takes: 0.6 of its size for each character, 1.2 for one of a wide script (from
// U+1100 on). Every text is drawn to just this width, whatever the font.
Length width_of(std::string_view text, Length size);

// Over lines no wider than `width`, broken at spaces where that will do, at most `most` of them; what does
// not go in ends in "…".
std::vector<std::string> wrapped(std::string_view text, Length size, Length width, std::size_t most);

// One drawing. Everything is black, white and one grey. Numbers go out to the micrometre.
class Svg {
public:
  // `title` and `description` are what a screen reader says of it.
  Svg(Length width, Length height, std::string_view title, std::string_view description);

  void rect(const Box& box, Fill fill, Edge edge);
  void line(Point from, Point to, Length width);
  // To the right of `at`, which is on the baseline; centred on it with `text_centred`. Empty text: nothing.
  void text(Point at, std::string_view text, Type type);
  void text_centred(Point at, std::string_view text, Type type);
  // What belongs together, with a name for whoever reads the file.
  void begin(std::string_view name);
  void end();

  // The whole document. Groups that are still open are closed.
  std::string done() &&;

private:
  std::string out_;
  int open_ = 0;
};

} // namespace nutward::draw
