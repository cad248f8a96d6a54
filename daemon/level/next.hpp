// Next: which reading is worth taking next, and when a line may be called level.
#pragma once

#include "level/diagnose.hpp"

#include <optional>
#include <span>
#include <vector>

namespace nutward::level {

// Common practice, from memory, without a published source.
struct Plan {
  // A line may be called level when no single fret that is further off would have gone unnoticed.
  Length called_level{50'000};
  // What a reading costs: to take up a longer edge than a fret rocker, which spans up to five frets.
  double long_edge = 0.5;
  int rocker = 5;
  std::size_t weighed = 48; // explanations of a line that a reading is chosen by: the likeliest ones
};

// The spans over a line in the order in which it is read: the whole line, then halves of it and so on,
// overlapping by two frets so that each fret lies inside some span, and last every three neighbours. Longer
// spans can hide what a neighbour does; three frets cannot be hidden from one another. Slots, both included.
std::vector<Span> sequence(const Lines& lines);

enum class Why {
  splits = 0,   // it tells the explanations left best apart
  sequence = 1, // nothing is suspected: the next of the sequence
  straight = 2  // a bow is the first explanation: lay the long edge over the whole line
};
struct Next {
  Line line = Line::middle;
  Span span;
  Why why = Why::sequence;
  // With `splits`: how many explanations could be left after each outcome; one that allows both counts for
  // both.
  std::size_t before = 0, if_rocks = 0, if_steady = 0;
};

// The reading to take now, of an ε as given; nullopt: none is worth it (every line may be called level, or
// what is left open no straightedge can tell). Lines whose readings contradict one another, or that have more
// off than was looked for, are passed over.
//
// A line with explanations comes first, the one with the most left open; of its spans not read yet (or read
// before a fret of it was touched) the one whose worse outcome leaves the fewest explanations; of equal ones
// the one that leaves fewer over both, then the cheaper, the shorter, the more nutward. Where no span could
// exclude one the line is left as it is. Then the sequence, middle line first; a span is passed over where no
// single fret that is further off than plan.called_level could rock it.
std::optional<Next> next_reading(std::span<const Reading> readings, const Lines& lines,
                                 const Diagnosis& diagnosis, const Plan& plan = {}, Length epsilon = hand);

// What one fret alone may still be off by, readings being what they are.
struct Unseen {
  Off off;
  double most = 0; // mm
};
struct LevelCall {
  bool may_be_called = false; // the line reads level, and `unseen` is empty
  std::vector<Unseen> unseen; // further than plan.called_level, in order; with nothing read, all
  // The same of the first and last fret standing high, which no straightedge rocks on: a feeler beside them
  // tells. They do not keep a line from being called level.
  std::vector<Unseen> ends_high;
};
// `readings`: as given to diagnose().
LevelCall level_call(std::span<const Reading> readings, const Lines& lines, const LineFinding& finding,
                     const Plan& plan = {});

// The spans of the sequence over which a line without explanations is still to be read, in order: those not
// taken as finely as `epsilon` over which something unseen could rock it.
std::vector<Span> still_to_read(std::span<const Reading> readings, const Lines& lines,
                                const LineFinding& finding, const LevelCall& call, Length epsilon = hand);

} // namespace nutward::level
