// Readings: one laying of a straightedge (a fret rocker is a short one) over frets of one line, and what was
// felt and seen. What it means is in claims.hpp.
#pragma once

#include "level/lines.hpp"

#include <span>
#include <vector>

namespace nutward::level {

// Slots, both included, nutward first.
struct Span {
  int from = 0, to = 0;
  friend bool operator==(const Span&, const Span&) = default;
};

// not_laid: only looked at. The numbers never change.
enum class Felt { steady = 0, rocks = 1, not_laid = 2 };
// Which end of the edge a hand holds down while a feeler is tried. The numbers never change.
enum class Held { nutward = 0, bodyward = 1 };

inline constexpr Length hand{20'000};       // what a hand can feel: ε
inline constexpr Length quick_hand{30'000}; // of a quick look
inline constexpr Length most_epsilon{300'000};
inline constexpr Length more_than{1'000}; // "more than ε" is ε + this, or more

struct Reading {
  Line line = Line::middle;
  Span span{}; // at least three frets; for not_laid it does not count
  Felt felt = Felt::steady;
  std::optional<int> pivot{}; // the slot it rocks on
  // A feeler: under `gaps` it shows one, under `snug` it was tried and shows none; with the edge held as said
  // (nullopt: it lies on both ends).
  std::optional<Held> held{};
  std::vector<int> gaps{}, snug{};
  std::vector<int> looks_sunk{}, looks_high{}; // by eye; need not lie in the span
  Length epsilon = hand;
  int revision = 0; // the board's when it was taken; see counts()
};

// Throws BadReading, with the member's name as the field, for: a span the wrong way round, with an end in
// which no fret stands, or with fewer than three frets; a pivot that is not strictly within a span that
// rocks; a fret of gaps or snug outside the span, under the hand or at an end that the edge lies on, or named
// in both; a feeler without `held` where the edge rocks; a fret said to look both sunk and high; not_laid
// with anything that needs an edge, or nothing seen; an ε that is not 1 µm to most_epsilon.
void check(const Reading& reading, const Lines& lines);

// As it was said: what was left out is filled in.
struct Said {
  std::optional<Line> line{}; // not said: the middle
  // Not said: from the fret before `about` to the one after it, of those that stand in the board. Where
  // `about` is not said either, the pivot, else the first that was seen, else the first of the feeler's.
  std::optional<Span> span{};
  std::optional<int> about{};
  Felt felt = Felt::steady;
  std::optional<int> pivot{};
  std::optional<Held> held{};
  std::vector<int> gaps{}, snug{}, looks_sunk{}, looks_high{};
  bool quick = false; // ε is quick_hand instead of hand
  int revision = 0;
};
struct Meant {
  Reading reading;
  bool line_assumed = false, span_assumed = false; // the answer says so
};
// Throws as check(); and BadReading{"span"} where no fret was named at all, or the one that was named has no
// neighbour on one side.
Meant meant(const Said& said, const Lines& lines);

// A fret that was pressed again (pulled, filed): readings taken before no longer tell of it.
struct Touched {
  int slot = 0;
  int revision = 0; // the board's from then on
};
// Whether the reading still counts: since it was taken nothing it covers or looked at was touched.
bool counts(const Reading& reading, std::span<const Touched> touched);

} // namespace nutward::level
