// A set of readings is contradictory exactly if it meets every correction: every set whose removal leaves
// readings that can all be true. So: guess a smallest set that meets the corrections known; if it is
// contradictory, it is a smallest one; if not, add readings to it as long as they can all be true, and what
// is left out is one more correction. That search has no bound but the number of sets, and many readings
// that contradict one another in many ways (39 of one line took 17 s) reach it: so it is for few readings and
// few guesses. Else it is a set of which every reading is needed, in a few dozen tests.
#include "level/contradiction.hpp"

#include "level/feasible.hpp"

#include <algorithm>
#include <numeric>

namespace nutward::level {

namespace {

using Set = std::vector<std::size_t>; // rising

// By number and not by time, so that the same readings always give the same answer.
constexpr std::size_t most_guessed = 24, most_guesses = 60, most_in_pairs = 120;
constexpr int most_branches = 100'000;

bool meets(const Set& set, const Set& correction) {
  return std::any_of(correction.begin(), correction.end(),
                     [&](std::size_t i) { return std::binary_search(set.begin(), set.end(), i); });
}

// Adds at most `more` to `set` so that it meets all corrections. The first that none meets is branched on.
// False also where `branches` are used up.
bool meet_all(const std::vector<Set>& corrections, Set& set, std::size_t more, int& branches) {
  if (--branches <= 0) return false;
  const auto open =
      std::find_if(corrections.begin(), corrections.end(), [&](const Set& c) { return !meets(set, c); });
  if (open == corrections.end()) return true;
  if (more == 0) return false;
  for (const std::size_t i : *open) {
    Set with = set;
    with.insert(std::lower_bound(with.begin(), with.end(), i), i);
    if (!meet_all(corrections, with, more - 1, branches)) continue;
    set = std::move(with);
    return true;
  }
  return false;
}

// Corrections never shrink the size that is needed, so that it is kept from one guess to the next. To
// be thrown away where `branches` are used up.
Set smallest_meeting(const std::vector<Set>& corrections, std::size_t& size, int& branches) {
  for (; branches > 0; ++size) {
    Set set;
    if (meet_all(corrections, set, size, branches)) return set;
  }
  return {};
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

// Of the readings, which cannot all be true, a set that cannot and of which every one is needed: the first
// that makes those before it impossible is one of them; then the same among those before, with it.
Set all_needed(const Judge& judge) {
  Set needed;
  for (std::size_t end = judge.readings.size();;) {
    const auto possible = [&](std::size_t first) { // with the first so many
      Set set(first);
      std::iota(set.begin(), set.end(), std::size_t{0});
      set.insert(set.end(), needed.begin(), needed.end());
      return judge.possible(set);
    };
    if (!possible(0)) return needed;
    std::size_t good = 0; // possible with so many; with `end` it is not
    while (end - good > 1) {
      const std::size_t middle = good + (end - good) / 2;
      (possible(middle) ? good : end) = middle;
    }
    needed.insert(needed.begin(), --end); // what is found later stands before
  }
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
  if (readings.size() > most_in_pairs) return all_needed(judge);
  if (Set few = one_or_two(judge); !few.empty()) return few;
  if (readings.size() > most_guessed) return all_needed(judge);
  std::vector<Set> corrections;
  std::size_t size = 3;
  int branches = most_branches;
  while (corrections.size() < most_guesses) {
    Set guess = smallest_meeting(corrections, size, branches);
    if (branches <= 0) break;
    if (!judge.possible(guess)) return guess;
    corrections.push_back(correction(judge, std::move(guess)));
  }
  return all_needed(judge);
}

} // namespace nutward::level
