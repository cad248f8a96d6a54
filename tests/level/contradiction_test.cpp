// Readings that cannot all be true, against every subset of them; and branching against every choice.
#include "level/cases.hpp"
#include "level/contradiction.hpp"
#include "level/feasible.hpp"
#include "support/effort.hpp"

#include <bit>

using namespace bench;
using nutward::test::rounds;

namespace {

std::vector<Reading> subset(const std::vector<Reading>& all, unsigned set) {
  std::vector<Reading> out;
  for (std::size_t i = 0; i < all.size(); ++i)
    if ((set >> i & 1U) != 0) out.push_back(all[i]);
  return out;
}

// The claims with one row chosen of each that leaves a choice.
template <class Take>
bool any_choice(Claims claims, std::size_t from, const Take& take) {
  if (from == claims.some.size()) {
    claims.some.clear();
    return take(claims);
  }
  for (const std::uint32_t row : claims.some[from]) {
    claims.all.push_back(row);
    if (any_choice(claims, from + 1, take)) return true;
    claims.all.pop_back();
  }
  return false;
}

} // namespace

TEST_CASE("6 to 8 both rocking and steady is the contradiction among seven readings") {
  const Lines lines = nutward::level::lines(a_board(22));
  const std::vector readings{rocks(1, 22), rocks(6, 8),  steady(10, 14),         rocks(17, 19),
                             steady(6, 8), rocks(8, 10), rocks(6, 8, Line::bass)};
  const auto found = diagnose(readings, lines);
  CHECK(found.on(Line::middle).finding == Finding::contradiction);
  CHECK(found.on(Line::middle).cannot_all_be == std::vector<std::size_t>{1, 4});
  CHECK(found.on(Line::middle).explanations.empty());
  CHECK(found.on(Line::bass).finding == Finding::frets);
}

TEST_CASE("more frets off than are looked for are many, and no contradiction") {
  const Lines lines = nutward::level::lines(a_board(22));
  const std::vector readings{rocks(1, 3), rocks(5, 7), rocks(9, 11), rocks(13, 15)};
  CHECK(diagnose(readings, lines).on(Line::middle).finding == Finding::many);
  Limits four;
  four.most_off = 4;
  const auto found = diagnose(readings, lines, four).on(Line::middle);
  CHECK(found.finding == Finding::frets);
  CHECK(found.explanations.size() == 81 + 27); // near the nut a bow of 0.92 mm would do for 1 to 3
  CHECK(text(offs(found.explanations.front())) == "2 high, 6 high, 10 high, 14 high");
  CHECK(found.one_of.size() == 4);
}

TEST_CASE("the contradiction named is as small as any, by every subset") {
  std::mt19937 random(5);
  std::set<int> sizes;
  for (int i = 0; i < rounds(120); ++i) {
    CAPTURE(i);
    const Case c = arbitrary_case(random, 4, 6, any(random, 5, 8));
    unsigned smallest = 0;
    for (unsigned set = 1; set < 1U << c.readings.size(); ++set) {
      if (smallest != 0 && std::popcount(set) >= std::popcount(smallest)) continue;
      if (!can_all_be(c.lines, Line::middle, subset(c.readings, set))) smallest = set;
    }
    const auto named = smallest_contradiction(c.lines, Line::middle, c.readings);
    REQUIRE(static_cast<int>(named.size()) == std::popcount(smallest));
    sizes.insert(std::popcount(smallest));
    unsigned set = 0;
    for (const std::size_t r : named)
      set |= 1U << r;
    if (set != 0) CHECK_FALSE(can_all_be(c.lines, Line::middle, subset(c.readings, set)));
  }
  CHECK(sizes.count(2) == 1);
  CHECK((sizes.count(3) == 1 || nutward::test::effort > 1));
}

TEST_CASE(
    "many readings that contradict one another in many ways end in a set of which every one is needed") {
  const Lines lines = nutward::level::lines(a_board(22));
  for (const int last : {2, 20}) { // 39 and 210 readings, no span twice: the search for a smallest has no end
    std::vector<Reading> readings;
    for (int from = 1; from <= last; ++from) {
      for (int to = from + 2; to <= 22; ++to)
        readings.push_back((from + to) % 5 == 0 ? rocks(from, to) : steady(from, to));
    }
    CAPTURE(readings.size());
    const auto named = diagnose(readings, lines).on(Line::middle).cannot_all_be;
    REQUIRE(named.size() > 2);
    std::vector<Reading> all;
    for (const std::size_t i : named)
      all.push_back(readings.at(i));
    CHECK(std::is_sorted(named.begin(), named.end()));
    CHECK_FALSE(can_all_be(lines, Line::middle, all));
    for (std::size_t i = 0; i < all.size(); ++i) {
      std::vector<Reading> without = all;
      without.erase(without.begin() + static_cast<std::ptrdiff_t>(i));
      CHECK(can_all_be(lines, Line::middle, without));
    }
  }
}

TEST_CASE("readings of one truth, however many are off, can all be true") {
  std::mt19937 random(6);
  for (int i = 0; i < rounds(100); ++i) {
    CAPTURE(i);
    const Case c = honest_case(random, 5, 22, any(random, 1, 20), any(random, 0, 12));
    CHECK(can_all_be(c.lines, Line::middle, c.readings));
    CHECK(smallest_contradiction(c.lines, Line::middle, c.readings).empty());
  }
}

TEST_CASE("readings are possible if some choice of what they leave open is") {
  std::mt19937 random(7);
  int possible = 0, not_possible = 0;
  for (int i = 0; i < rounds(300); ++i) {
    CAPTURE(i);
    const Case c = arbitrary_case(random, 4, 8, any(random, 1, 5));
    const Claims claims = claims_of(c.lines, Line::middle, c.readings);
    std::vector<Unknown> unknowns;
    for (std::uint32_t column = 0; column < claims.columns; ++column)
      if (any(random, 0, 2) == 0 || i % 3 == 0) unknowns.push_back({column, any(random, 0, 1) == 0});
    const bool one_works =
        any_choice(claims, 0, [&](const Claims& chosen) { return Feasible(chosen).possible(unknowns); });
    CHECK(Feasible(claims).possible(unknowns) == one_works);
    ++(one_works ? possible : not_possible);
  }
  CHECK(possible > rounds(50));
  CHECK(not_possible > rounds(50));
}
