// Which sets of deviations are tried, against trying every one of them.
#include "level/cases.hpp"
#include "level/explain.hpp"
#include "support/effort.hpp"

using namespace bench;
using nutward::test::rounds;

namespace {

template <class Take>
void every_set(std::uint32_t columns, std::size_t most, Set& set, std::uint32_t from, const Take& take) {
  take(set);
  if (set.size() == most) return;
  for (std::uint32_t column = from; column < columns; ++column) {
    for (const bool low : {false, true}) {
      set.push_back({column, low});
      every_set(columns, most, set, column + 1, take);
      set.pop_back();
    }
  }
}

Case any_case(std::mt19937& random, int i) {
  Case out = i % 2 == 0 ? honest_case(random, 5, 10, any(random, 2, 10), any(random, 1, 3))
                        : arbitrary_case(random, 5, 10, any(random, 1, 4));
  if (i % 3 == 0) { // as finely as a hand feels, where the bow hardly tells on short spans
    for (Reading& r : out.readings)
      r.epsilon = hand;
  }
  return out;
}

bool is_part(const Set& part, const Set& whole) {
  return std::includes(whole.begin(), whole.end(), part.begin(), part.end());
}

} // namespace

TEST_CASE("the smallest sets found are those of all sets of up to three deviations") {
  std::mt19937 random(12);
  std::array<int, 5> of_size{};
  for (int i = 0; i < rounds(200); ++i) {
    CAPTURE(i);
    const Case c = any_case(random, i);
    const Claims claims = claims_of(c.lines, Line::middle, c.readings);
    Feasible feasible(claims);
    std::vector<Set> expected;
    std::size_t size = 4;
    Set set;
    for (std::size_t most = 0; most <= 3 && expected.empty(); ++most) {
      every_set(static_cast<std::uint32_t>(claims.columns), most, set, 0, [&](const Set& s) {
        if (s.size() == most && feasible.possible(s)) expected.push_back(s);
      });
      if (!expected.empty()) size = most;
    }
    ++of_size[size];
    CHECK(smallest_sets(feasible, 3) == expected);
  }
  for (const int count : of_size)
    CHECK(count >= rounds(5));
}

TEST_CASE("whatever makes an impossible set possible has a part in what is said to help") {
  std::mt19937 random(13);
  int compared = 0;
  for (int i = 0; i < rounds(60); ++i) {
    CAPTURE(i);
    const Case c = any_case(random, i);
    const Claims claims = claims_of(c.lines, Line::middle, c.readings);
    const auto columns = static_cast<std::uint32_t>(claims.columns);
    Feasible feasible(claims);
    std::vector<Set> possible;
    Set set;
    every_set(columns, 3, set, 0, [&](const Set& s) {
      if (feasible.possible(s)) possible.push_back(s);
    });
    every_set(columns, 2, set, 0, [&](const Set& part) {
      const int room = 3 - static_cast<int>(part.size());
      if (feasible.possible(part, room)) return;
      const auto helps = feasible.helps();
      for (const Set& whole : possible) {
        if (!is_part(part, whole)) continue;
        ++compared;
        const bool helped = std::any_of(helps.begin(), helps.end(), [&](const Unknown& u) {
          return std::binary_search(whole.begin(), whole.end(), u);
        });
        if (!helped) FAIL_CHECK("no part of a possible set is said to help");
      }
    });
  }
  CHECK(compared > rounds(1000));
}
