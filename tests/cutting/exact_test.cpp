// Small plans against everything that could be done, at every objective.
#include "cutting/cases.hpp"
#include "cutting/check.hpp"
#include "cutting/search.hpp"
#include "support/effort.hpp"

using namespace cases;
using nutward::test::rounds;

namespace {

// As a sentence of numbers, so that a failed check shows all of them.
std::vector<std::int64_t> numbers(const Cost& c) {
  std::vector<std::int64_t> out(c.unserved.begin(), c.unserved.end());
  out.insert(out.end(), {c.sticks, c.taken.nm, c.scrap.nm, c.cuts});
  return out;
}

std::vector<int> ranks(const Problem& p) {
  std::vector<int> out;
  for (const auto& s : p.slots)
    out.push_back(s.due);
  std::sort(out.begin(), out.end());
  out.erase(std::unique(out.begin(), out.end()), out.end());
  return out;
}

} // namespace

TEST_CASE("a small plan is the best of all there are, in every objective, and says that this is proved") {
  std::mt19937 random(4);
  for (int i = 0; i < rounds(600); ++i) {
    const Problem p = random_problem(random, 6, 5);
    const cutting::Plan plan = cutting::plan(p, {});
    CAPTURE(i);
    check_plan(p, plan);
    CHECK(numbers(plan.cost) == numbers(brute_force(p)));
    CHECK(plan.proved == cutting::Level::cuts);
    CHECK_FALSE(plan.stopped);
  }
}

TEST_CASE("the search for many slots, given few, makes true plans and no bound above the best there is") {
  std::mt19937 random(5);
  int reached = 0;
  for (int i = 0; i < rounds(400); ++i) {
    const Problem p = random_problem(random, 8, 6);
    CAPTURE(i);
    const auto best = cutting::plan(p, {});
    const auto checked = cutting::check(p);
    cutting::Chance chance(1);
    cutting::Meter meter({20'000, {}});
    const auto found = cutting::search_largely(p, checked.slots, {checked.pieces, checked.stock_left},
                                               ranks(p), chance, meter);
    const Cost cost = cutting::cost_of(p, found.draft, ranks(p));
    if (!checked.hopeless.empty()) continue; // they count in one of the costs only
    CHECK(numbers(found.bound) <= numbers(best.cost));
    CHECK(numbers(best.cost) <= numbers(cost));
    if (cost == best.cost) ++reached;
  }
  CHECK(reached > rounds(320)); // of some 370 without slots that nothing serves
}

TEST_CASE("plans for a few boards are true plans, whichever way they were found") {
  std::mt19937 random(6);
  const auto between = [&](std::int64_t from, std::int64_t to) {
    return Length{from * 1'000'000 +
                  static_cast<std::int64_t>(random() % static_cast<unsigned>((to - from) * 1'000'000))};
  };
  for (int i = 0; i < 8; ++i) {
    Problem p;
    p.least_useful = 43_mm;
    for (int n = 0; n < 30 + 20 * i; ++n)
      p.slots.push_back(slot(between(43, 57), n / 22));
    for (int n = 0; n < 10 * i; ++n)
      p.pieces.push_back(n % 4 == 0 ? piece(between(60, 300), 2, n % 3) : piece(between(41, 58), n % 3));
    p.stock = {stick(610_mm, i % 3 == 2 ? 3 : 20, i % 3), stick(300_mm, 2, i % 3)};
    const cutting::Plan plan = cutting::plan(p, {100'000, {}});
    CAPTURE(i);
    check_plan(p, plan);
    CHECK((plan.unserved.empty() || i % 3 == 2));
  }
}
