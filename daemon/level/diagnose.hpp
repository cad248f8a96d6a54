// Diagnose: which frets are high or low, by every smallest explanation of the readings.
#pragma once

#include "level/claims.hpp"

#include <compare>
#include <cstddef>
#include <span>
#include <vector>

namespace nutward::level {

// The numbers never change. Of a bow: high is a hump (back-bow), low is relief.
enum class Way { high = 0, low = 1 };
// A deviation.
struct Off {
  std::optional<int> slot; // nullopt: the bow of the line
  Way way = Way::high;
  friend auto operator<=>(const Off&, const Off&) = default;
};

// How unusual a deviation is; of an explanation they add up, and the least comes first. Common practice, from
// memory, without a published source: a fret that was not driven home or sprang back is the usual thing.
struct Rarity {
  double high = 1;
  double end_low = 1.5; // the first or last fret: the press reaches there with one side of the bar
  double low = 2;
  double bow = 1;
  double barely = 3; // added where an amount has less room than `sliver`
  Length sliver{10'000};
  double much_bow =
      3; // added to a bow that would have to be over usual_bow; few necks are that far from straight
  Length usual_bow{500'000};
};
struct Limits {
  int most_off = 3;
  Rarity rarity{};
};

struct Amount {
  Off off;
  double least = 0, most = 0; // mm, over 0: between which sizes the readings can be, whatever the others are
};
struct Explanation {
  std::vector<Amount> parts; // the bow first, then by slot
  std::vector<double>
      example; // amounts in mm with their signs, one for each part, with which all readings hold
  double rarity = 0;
  bool barely = false; // "all but ruled out": it holds for amounts within a sliver only
};

// The numbers never change.
enum class Finding {
  unread = 0,       // no reading counts
  level = 1,        // nothing need be off; whether enough was read is next.hpp's matter
  bow = 2,          // a bow alone explains it (and perhaps one fret as well: see the explanations)
  frets = 3,        // so many frets off, perhaps over a bow
  many = 4,         // more than most_off deviations
  contradiction = 5 // they cannot all be true, whatever is off
};

struct LineFinding {
  Line line = Line::middle;
  Finding finding = Finding::unread;
  std::vector<std::size_t> counted; // which readings were used, into those given
  // All smallest ones: those with a bow first, unless it is a much_bow or barely one, then by rarity. None
  // for unread, level, many, contradiction.
  std::vector<Explanation> explanations;
  std::vector<Off> agreed; // in every explanation, in order
  // Besides `agreed`: of each of these lists every explanation has exactly one. Empty where they do not fall
  // apart like that, or nothing is left open.
  std::vector<std::vector<Off>> one_of;
  // For a contradiction: the fewest readings that cannot all be true, into those given; where that would take
  // too long, readings of which every one is needed for it (contradiction.hpp).
  std::vector<std::size_t> cannot_all_be;
};

struct Diagnosis {
  std::vector<LineFinding> lines; // of bass, middle and treble
  std::vector<std::size_t> stale; // readings that no longer count

  const LineFinding& on(Line line) const { return lines[static_cast<std::size_t>(line)]; }
};

// Each line by itself. Explanations are sets of deviations with their signs, at most limits.most_off, of
// which a bow is one; an explanation stands if some amounts up to most_amount make every reading that counts
// true (claims.hpp). Exact but for a nanometre, by linear programs; every smallest explanation is found.
// Throws BadReading as check(), its text beginning with the number of the reading where there is more than
// one; BadReading{"most_off"} where it is not 1 to 4.
Diagnosis diagnose(std::span<const Reading> readings, const Lines& lines, const Limits& limits = {},
                   std::span<const Touched> touched = {});

} // namespace nutward::level
