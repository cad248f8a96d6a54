// What single pieces serve best as slots come and go, and sticks that leave rests to be kept.
#include "cutting/basis.hpp"
#include "cutting/cases.hpp"
#include "cutting/draft.hpp"
#include "cutting/keep.hpp"
#include "cutting/singles.hpp"
#include "support/effort.hpp"

#include <algorithm>
#include <numeric>

using namespace cases;
using nutward::test::rounds;

namespace {

Length between(std::mt19937& random, std::int64_t from, std::int64_t to) {
  return Length{from * 1'000'000 +
                static_cast<std::int64_t>(random() % static_cast<unsigned>((to - from) * 1'000'000))};
}

std::vector<std::size_t> numbers(std::size_t n) {
  std::vector<std::size_t> out(n);
  std::iota(out.begin(), out.end(), std::size_t{0});
  return out;
}

// The sizes that are left if the longest are served, one after another, as far as that goes.
std::int64_t left_greedily(const Problem& p, const std::vector<std::size_t>& order,
                           const cutting::Basis& basis) {
  cutting::Cover cover(p, order, numbers(p.pieces.size()), cutting::Rounding::up);
  std::int64_t out = 0;
  for (std::size_t i = order.size(); i-- > 0;)
    if (basis.is_there(i) && !cover.take(i)) out += cutting::size_of(p, order[i]).nm;
  return out;
}

} // namespace

TEST_CASE("what single pieces serve stays the best as slots go and come, and each slot's saving is true") {
  std::mt19937 random(31);
  int saved = 0;
  for (int i = 0; i < rounds(40); ++i) {
    Problem p;
    for (int n = 0; n < 30; ++n)
      p.slots.push_back(slot(between(random, 43, 62)));
    for (int n = 0; n < 18; ++n)
      p.pieces.push_back(piece(between(random, 43, 60), static_cast<int>(random() % 3)));
    std::vector<std::size_t> order = cutting::by_size(p, numbers(p.slots.size()));
    std::reverse(order.begin(), order.end());
    cutting::Basis basis(p, order, numbers(p.pieces.size()));
    CAPTURE(i);
    CHECK(basis.left() == left_greedily(p, order, basis));
    for (int turn = 0; turn < 60; ++turn) {
      const std::size_t at = random() % order.size();
      const std::int64_t before = basis.left(), saving = basis.savings()[at];
      if (basis.is_there(at)) {
        basis.remove(at);
        CHECK(basis.left() == before - saving);
        if (saving > 0) ++saved;
      } else {
        CHECK(saving == 0);
        basis.restore(at);
      }
      CHECK(basis.left() == left_greedily(p, order, basis));
    }
  }
  CHECK(saved > rounds(100));
}

TEST_CASE("rests are left in as many sticks as the room allows, where that takes less wire") {
  std::mt19937 random(32);
  int better = 0;
  for (int i = 0; i < 12; ++i) {
    Problem p;
    p.least_useful = 42_mm;
    for (int n = 0; n < 100; ++n)
      p.slots.push_back(slot(between(random, 48, 60)));
    p.stock = {stick(610_mm, 14, 2), stick(300_mm, 2, 2)};
    const std::vector<std::size_t> slots = numbers(p.slots.size());
    const cutting::Task task = cutting::task_of(p, slots, {14, 2});
    cutting::Chance chance(3);
    cutting::Meter meter({200'000, {}});
    const cutting::Packing first = cutting::pack(task, {0, 0}, 8, chance, meter);
    REQUIRE(first.unpacked == 0);
    const cutting::Packing kept = cutting::keep_more(task, first, chance, meter);
    CAPTURE(i);
    CHECK(kept.price <= first.price);
    if (kept.price < first.price) ++better;
    CHECK(kept.price == cutting::price_of(task, kept));
    std::vector<int> lots(task.lots.size(), 0), wires(task.wires.size(), 0);
    for (const cutting::Bin& bin : kept.bins) {
      CHECK(cutting::sizes_of(task, bin) <= task.wires[bin.wire].room);
      ++wires[bin.wire];
      for (const int lot : bin.lots)
        ++lots[static_cast<std::size_t>(lot)];
    }
    for (std::size_t k = 0; k < lots.size(); ++k)
      CHECK(lots[k] == task.lots[k].count);
    for (std::size_t k = 0; k < wires.size(); ++k)
      CHECK(wires[k] <= task.wires[k].count);
  }
  CHECK(better >= 6);
}
