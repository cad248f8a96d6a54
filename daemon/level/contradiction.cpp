// A set of readings is contradictory exactly if it meets every correction: every set whose removal leaves
// readings that can all be true. So: guess a smallest set that meets the corrections known; if it is
// contradictory, it is a smallest one; if not, add readings to it as long as they can all be true, and what
// is left out is one more correction.
#include "level/contradiction.hpp"

#include "level/feasible.hpp"

#include <algorithm>

namespace nutward::level {

namespace {

using Set = std::vector<std::size_t>; // rising

bool meets(const Set& set, const Set& correction) {
  return std::any_of(correction.begin(), correction.end(),
                     [&](std::size_t i) { return std::binary_search(set.begin(), set.end(), i); });
}

// Adds at most `more` to `set` so that it meets all corrections. The first that none meets is branched on.
bool meet_all(const std::vector<Set>& corrections, Set& set, std::size_t more) {
  const auto open =
      std::find_if(corrections.begin(), corrections.end(), [&](const Set& c) { return !meets(set, c); });
  if (open == corrections.end()) return true;
  if (more == 0) return false;
  for (const std::size_t i : *open) {
    Set with = set;
    with.insert(std::lower_bound(with.begin(), with.end(), i), i);
    if (!meet_all(corrections, with, more - 1)) continue;
    set = std::move(with);
    return true;
  }
  return false;
}

// Corrections never shrink the size that is needed, so that it is kept from one guess to the next.
Set smallest_meeting(const std::vector<Set>& corrections, std::size_t& size) {
  for (;; ++size) {
    Set set;
    if (meet_all(corrections, set, size)) return set;
  }
}

struct Judge {
  const Lines& lines;
  Line line;
  std::span<const Reading> readings;

  bool possible(const Set& set) const {
    std::vector<Reading> some;
    some.reserve(set.size());
    for (const std::size_t i : set)
      some.push_back(readings[i]);
    return can_all_be(lines, line, some);
  }
};

// Nearly every contradiction is one of two readings, and two are judged far more quickly than many.
Set one_or_two(const Judge& judge) {
  for (std::size_t i = 0; i < judge.readings.size(); ++i) {
    if (!judge.possible({i})) return {i};
  }
  for (std::size_t j = 1; j < judge.readings.size(); ++j) {
    for (std::size_t i = 0; i < j; ++i) {
      if (!judge.possible({i, j})) return {i, j};
    }
  }
  return {};
}

// What must be left out besides, for `set`, whose readings can all be true, to stay so.
Set correction(const Judge& judge, Set set) {
  Set left_out;
  for (std::size_t i = 0; i < judge.readings.size(); ++i) {
    const auto at = std::lower_bound(set.begin(), set.end(), i);
    if (at != set.end() && *at == i) continue;
    Set with = set;
    with.insert(with.begin() + (at - set.begin()), i);
    if (judge.possible(with))
      set = std::move(with);
    else
      left_out.push_back(i);
  }
  return left_out;
}

} // namespace

bool can_all_be(const Lines& lines, Line line, std::span<const Reading> readings) {
  const Claims claims = claims_of(lines, line, readings);
  std::vector<Unknown> all; // that any claim depends on
  for (std::uint32_t c = 0; c < claims.columns; ++c) {
    bool counts = false;
    for (std::size_t at = c; at < claims.factors.size() && !counts; at += claims.columns)
      counts = claims.factors[at] != 0;
    if (!counts) continue;
    all.push_back({c, false});
    all.push_back({c, true});
  }
  return Feasible(claims).possible(all);
}

std::vector<std::size_t> smallest_contradiction(const Lines& lines, Line line,
                                                std::span<const Reading> readings) {
  const Judge judge{lines, line, readings};
  if (can_all_be(lines, line, readings)) return {};
  if (Set few = one_or_two(judge); !few.empty()) return few;
  std::vector<Set> corrections;
  std::size_t size = 3;
  for (;;) {
    Set guess = smallest_meeting(corrections, size);
    if (!judge.possible(guess)) return guess;
    corrections.push_back(correction(judge, std::move(guess)));
  }
}

} // namespace nutward::level
