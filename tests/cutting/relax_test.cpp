// The relaxation of tin and wire, its parts, and the drafts that it guides.
#include "cutting/by_price.hpp"
#include "cutting/cases.hpp"
#include "cutting/check.hpp"
#include "cutting/cover.hpp"
#include "cutting/singles.hpp"
#include "support/effort.hpp"

#include <algorithm>

using namespace cases;
using nutward::test::rounds;

namespace {

// Whether all of a set can have a piece each, by trying all.
bool servable(const std::vector<std::vector<std::size_t>>& fits, std::size_t at, std::vector<char>& used) {
  if (at == fits.size()) return true;
  for (const std::size_t i : fits[at]) {
    if (used[i] != 0) continue;
    used[i] = 1;
    const bool found = servable(fits, at + 1, used);
    used[i] = 0;
    if (found) return true;
  }
  return false;
}
bool servable(const Problem& p, const std::vector<std::size_t>& slots) {
  std::vector<std::vector<std::size_t>> fits;
  for (const std::size_t s : slots) {
    fits.emplace_back();
    for (std::size_t i = 0; i < p.pieces.size(); ++i)
      if (cutting::serve_piece(p, p.pieces[i], {&s, 1})) fits.back().push_back(i);
  }
  std::vector<char> used(p.pieces.size(), 0);
  return servable(fits, 0, used);
}

Length between(std::mt19937& random, std::int64_t from, std::int64_t to) {
  return Length{from * 1'000'000 +
                static_cast<std::int64_t>(random() % static_cast<unsigned>((to - from) * 1'000'000))};
}

// Boards, short frets, long pieces and sticks.
Problem shop(std::mt19937& random, int slots, int pieces, int sticks) {
  Problem p;
  p.least_useful = 43_mm;
  for (int n = 0; n < slots; ++n)
    p.slots.push_back(slot(between(random, 43, 57), n / 22));
  for (int n = 0; n < pieces; ++n)
    p.pieces.push_back(n % 4 == 0 ? piece(between(random, 60, 300), 2, n % 3)
                                  : piece(between(random, 41, 58), n % 3));
  p.stock = {stick(610_mm, sticks, 2), stick(300_mm, 2, 2)};
  return p;
}

cutting::Draft by_price(const Problem& p, std::int64_t steps) {
  const auto checked = cutting::check(p);
  cutting::Chance chance(3);
  cutting::Meter meter({steps, {}});
  return cutting::draft_by_price(p, checked.slots, {checked.pieces, checked.stock_left}, chance, meter);
}

} // namespace

TEST_CASE("which slots single pieces serve together is told exactly, or on the side that was asked for") {
  std::mt19937 random(21);
  int exact = 0, all = 0;
  for (int i = 0; i < rounds(300); ++i) {
    Problem p;
    p.least_useful = 43_mm;
    const bool alike = i % 2 == 0; // raw ends that differ are what cannot be told exactly
    for (int n = 0; n < 5; ++n) {
      p.slots.push_back(slot(between(random, 43, 60)));
      p.pieces.push_back(piece(between(random, 43, 62), alike ? 2 : static_cast<int>(random() % 3)));
    }
    std::vector<std::size_t> order = cutting::by_size(p, std::vector<std::size_t>{0, 1, 2, 3, 4});
    std::reverse(order.begin(), order.end());
    const std::vector<std::size_t> singles{0, 1, 2, 3, 4};
    cutting::Cover most(p, order, singles, cutting::Rounding::down);
    cutting::Cover sure(p, order, singles, cutting::Rounding::up);
    for (std::uint32_t set = 1; set < 32; ++set) {
      std::vector<std::size_t> slots;
      bool at_most = true, surely = true;
      most.clear();
      sure.clear();
      for (std::size_t k = 0; k < 5; ++k) {
        if ((set >> k & 1U) == 0) continue;
        slots.push_back(order[k]);
        at_most = most.take(k) && at_most;
        surely = sure.take(k) && surely;
      }
      const bool can = servable(p, slots);
      CAPTURE(i, set);
      CHECK((at_most || !can));
      CHECK((can || !surely));
      ++all;
      if (at_most == can && surely == can) ++exact;
    }
  }
  CHECK(exact * 10 > all * 8);
}

TEST_CASE("no plan opens fewer sticks or takes less wire than the relaxation proves") {
  std::mt19937 random(22);
  int reached = 0, some = 0;
  for (int i = 0; i < rounds(300); ++i) {
    const Problem p = random_problem(random, 7, 6);
    const auto checked = cutting::check(p);
    const Cost best = cutting::plan(p, {}).cost;
    if (checked.slots.empty() ||
        std::any_of(best.unserved.begin(), best.unserved.end(), [](int n) { return n > 0; }))
      continue;
    const auto sorted = cutting::sort_pieces(p, checked.slots, checked.pieces);
    CAPTURE(i);
    cutting::Relaxation::Aim aim;
    cutting::Meter meter({100'000, {}});
    cutting::Relaxation sticks(p, checked.slots, sorted, checked.stock_left, aim);
    sticks.solve({}, 0.001, meter);
    CHECK(sticks.bound() <= best.sticks);
    aim.taken = true;
    aim.sticks = best.sticks;
    cutting::Relaxation taken(p, checked.slots, sorted, checked.stock_left, aim);
    taken.solve({}, 0.01, meter);
    CHECK(taken.bound() <= best.taken.nm);
    ++some;
    if (sticks.bound() == best.sticks) ++reached;
  }
  CHECK(some > rounds(100));
  CHECK(reached * 10 > some * 8);
}

TEST_CASE("what is drafted by price is a true plan, alike each time, and near its bound") {
  std::mt19937 random(23);
  for (int i = 0; i < 4; ++i) {
    const Problem p = shop(random, 88 + 40 * i, 40 + 40 * i, i == 3 ? 2 : 30);
    CAPTURE(i);
    const cutting::Draft draft = by_price(p, 60'000);
    CHECK(draft.cuttings == by_price(p, 60'000).cuttings);
    std::vector<int> served(p.slots.size(), 0), pieces(p.pieces.size(), 0), stock(p.stock.size(), 0);
    for (const Cutting& c : draft.cuttings) {
      CHECK(figures_in_order(p, c.source, c.slots));
      ++(c.source.from == From::piece ? pieces : stock)[c.source.index];
      for (const std::size_t s : c.slots)
        ++served[s];
    }
    for (const std::size_t s : draft.unserved)
      ++served[s];
    CHECK(std::all_of(served.begin(), served.end(), [](int n) { return n == 1; }));
    CHECK(std::all_of(pieces.begin(), pieces.end(), [](int n) { return n <= 1; }));
    CHECK(stock[0] <= p.stock[0].count);
    const cutting::Plan plan = cutting::plan(p, {300'000, {}});
    check_plan(p, plan);
    if (i < 3) CHECK(plan.cost.sticks <= plan.bound.sticks + 1);
  }
}
