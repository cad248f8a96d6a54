// Lines: where a straightedge lies on a board, and what the board's own shape does to it there.
//
// A straightedge is laid along one of three straight lines of the plan: the middle (the centreline), bass and
// treble, each `inset` inside its edge. Places are in mm: x along the centreline from the nut, y across it
// (negative on the bass side), z up, 0 on the centreline of the board's surface.
#pragma once

#include "board/board.hpp"

#include <array>
#include <cstddef>
#include <optional>
#include <span>
#include <stdexcept>
#include <string>
#include <utility>
#include <vector>

namespace nutward::level {

using units::Length;

// The numbers never change.
enum class Line { bass = 0, middle = 1, treble = 2 };
inline constexpr std::array all_lines{Line::bass, Line::middle, Line::treble};

// One fret on one line.
struct Crown {
  int slot = 0;
  double x = 0, y = 0;
  // How high the crown stands there if it is intended, against the centreline: on a curved board the edges
  // lie lower. An even crown height drops out.
  double z = 0;
};

// The frets that stand in the board, nutward first, the same slots on each line.
struct Lines {
  std::array<std::vector<Crown>, 3> crowns;

  const std::vector<Crown>& on(Line line) const { return crowns[static_cast<std::size_t>(line)]; }
  std::size_t size() const { return crowns[0].size(); }
  // Which of them stands in slot n; nullopt: none.
  std::optional<std::size_t> find(int slot) const;
};

// What is wrong: what() is a whole sentence, `field` says where, `would_do` what would be accepted.
struct BadReading : std::runtime_error {
  BadReading(std::string which, const std::string& what, std::string remedy)
      : std::runtime_error(what), field(std::move(which)), would_do(std::move(remedy)) {}
  std::string field;
  std::string would_do;
};

inline constexpr Length edge_inset{3'000'000}; // common practice, from memory

// Lines over a board that board::check() accepts. `slots`: those that a fret stands in, strictly rising;
// throws BadReading{"slots"} where they are not, or fewer than three, and board::BadBoard where one is off
// the board.
//
// The edge lines run straight from the first of the frets to the last. z is that of the board's surface,
//   z(x,y) = √(R(x)² − y²) − R(x)  (0 on a flat board),
// so that an edge line, which runs outward over a cylinder, is humped by about (Δy/Δx)²/R per mm: `hump()`.
Lines lines(const board::Board& board, std::span<const int> slots);
// The same of a board in which every slot has a fret.
Lines lines(const board::Board& board);

// How far the intended crown b stands above the straight line through the crowns a and c (a < b < c, places
// in lines.on(line)), in mm: the board's own hump, which a reading is not to blame on a fret.
double hump(const Lines& lines, Line line, std::size_t a, std::size_t b, std::size_t c);

} // namespace nutward::level
