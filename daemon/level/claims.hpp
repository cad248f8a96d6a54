// Claims: what the readings of one line say, as linear inequalities in the unknown amounts.
//
// Unknown is by how much each fret of the line stands off its intended height (over 0: high), and how much
// the line is bowed: a parabola, 0 at the first and last fret, its amount the height in the middle between
// them (over 0: a hump or back-bow; under 0: relief). Amounts in mm, each from -most_amount to most_amount. A
// straight tilt tells on nothing. With A(b; a,c) for the height of b above the straight line through a and c,
// run on where b is not between them:
//   steady over i..j         A(k; i,j) ≤ ε for every k between
//   rocks                    A(k; i,j) > ε for some k between
//   pivots on p              A(p; i,j) > ε, and the edge can lie on p: A(p; l,r) ≥ −ε for l < p < r in i..j
//   gap under f, held at h   the edge lies on h and on whatever stops it: −A(f; h,k) > ε for some other k
//   gap under f              −A(f; i,j) > ε
//   snug under f             the same, ≤ ε for every k
//   f looks sunk, high       by the eye, which sees how deep a fret sits: −(its amount) > ε, its amount > ε
// "> ε" is ≥ ε + more_than. The intended heights of lines.hpp (an edge's hump) are taken off first.
#pragma once

#include "level/reading.hpp"

#include <cstddef>
#include <cstdint>
#include <span>
#include <vector>

namespace nutward::level {

inline constexpr double most_amount = 1; // mm

// Rows Σ factor·amount ≥ least, one factor for each fret of the line and one for the bow, in that order.
struct Claims {
  std::size_t columns = 0;     // frets + 1
  std::vector<double> factors; // row by row
  std::vector<double> least;
  std::vector<std::uint32_t> all;               // rows that hold
  std::vector<std::vector<std::uint32_t>> some; // of each of these, at least one row holds

  std::size_t bow() const { return columns - 1; }
  std::span<const double> row(std::uint32_t r) const { return {factors.data() + r * columns, columns}; }
};

// The shape of a bow: its height at each fret of the line for an amount of 1.
std::vector<double> bow_shape(const Lines& lines, Line line);

// Of readings that check() accepts; those on other lines are left out.
class ClaimsOf {
public:
  ClaimsOf(const Lines& lines, Line line);
  void add(const Reading& reading);
  const Claims& claims() const { return claims_; }

private:
  enum class Side { at_least, at_most };
  std::uint32_t above(std::size_t b, std::size_t a, std::size_t c, Side side, double than);
  std::uint32_t alone(std::size_t fret, double factor, double least);
  void laid(const Reading& reading, std::size_t i, std::size_t j);
  void pivots(std::size_t p, std::size_t i, std::size_t j, double eps);
  void feeler(const Reading& reading, std::size_t i, std::size_t j);

  const std::vector<Crown>* at_;
  const Lines* lines_;
  std::vector<double> bow_;
  Claims claims_;
};
Claims claims_of(const Lines& lines, Line line, std::span<const Reading> readings);

} // namespace nutward::level
