// What it costs the plan to take a piece for another slot.
#include "cutting/cases.hpp"
#include "cutting/price.hpp"
#include "support/effort.hpp"

#include <algorithm>
#include <set>

using namespace cases;
using nutward::test::rounds;

namespace {

// Unserved by due, sticks, taken.
using Wire = std::pair<std::map<int, int>, std::array<std::int64_t, 2>>;
Wire wire(const Problem& p, const Cost& cost) {
  std::set<int> dues;
  for (const auto& s : p.slots)
    dues.insert(s.due);
  Wire out{{}, {cost.sticks, cost.taken.nm}};
  std::size_t i = 0;
  for (const int due : dues)
    out.first[due] = cost.unserved[i++];
  return out;
}
Wire as_wire(const Problem& p, const cutting::Taking& t) {
  Cost cost;
  cost.unserved = t.unserved;
  cost.sticks = t.sticks;
  cost.taken = t.taken;
  return wire(p, cost);
}

// Without the slot and the piece, and with what remains of it; nullopt where it does not go in.
std::optional<Problem> without(const Problem& p, std::size_t piece, std::size_t slot) {
  if (!figures(p, {From::piece, piece}, {slot})) return std::nullopt;
  Problem out = p;
  const cutting::Piece& it = p.pieces[piece];
  out.slots.erase(out.slots.begin() + static_cast<std::ptrdiff_t>(slot));
  out.pieces.erase(out.pieces.begin() + static_cast<std::ptrdiff_t>(piece));
  const Length rest =
      it.facts.length - it.flat_ends * p.flat_end - p.slots[slot].need.cut - p.settings.nip_loss;
  if (rest < p.least_useful || it.facts.tang) return out;
  cutting::Piece end = it;
  end.flat_ends = it.flat_ends > 0 ? 1 : 0;
  end.facts.length = rest + end.flat_ends * p.flat_end;
  end.facts.raw_ends = it.facts.raw_ends == 2 || it.flat_ends > 0 ? 2 : 1; // one from the cut
  out.pieces.push_back(end);
  return out;
}

Wire price_by_trying_all(const Problem& p, const Problem& after) {
  const Wire before = wire(p, brute_force(p)), then = wire(after, brute_force(after));
  Wire out = before;
  for (auto& [due, n] : out.first)
    n = (then.first.count(due) > 0 ? then.first.at(due) : 0) - n;
  out.second = {then.second[0] - before.second[0], then.second[1] - before.second[1]};
  return out;
}

} // namespace

TEST_CASE("what it costs to take a piece for any slot is what planning everything anew would cost") {
  std::mt19937 random(12);
  int priced = 0, costly = 0, refused = 0, alike = 0;
  for (int i = 0; i < rounds(250); ++i) {
    const Problem p = random_problem(random, 5, 5);
    const cutting::Plan plan = cutting::plan(p, {});
    for (std::size_t piece = 0; piece < p.pieces.size(); ++piece)
      for (std::size_t slot = 0; slot < p.slots.size(); ++slot) {
        CAPTURE(i, piece, slot);
        const auto price = cutting::price_of_taking(p, plan, piece, slot, {});
        const auto after = without(p, piece, slot);
        if (!after) {
          ++refused;
          continue; // a person may take it all the same, if it is borderline or wasteful
        }
        REQUIRE(price);
        const bool planned = std::any_of(plan.uses.begin(), plan.uses.end(), [&](const cutting::Use& use) {
          return use.source == cutting::Source{From::piece, piece} &&
                 std::any_of(use.frets.begin(), use.frets.end(),
                             [&](const cutting::Fret& f) { return f.slot == slot; });
        });
        if (planned) {
          CHECK(price->nothing());
          continue;
        }
        CHECK_FALSE(price->at_most);
        CHECK(as_wire(p, *price) == price_by_trying_all(p, *after));
        // Without steps it is at least that, and says that it may be less.
        const auto quick = cutting::price_of_taking(p, plan, piece, slot, {0, {}});
        REQUIRE(quick);
        CHECK(as_wire(p, *quick).first.size() == as_wire(p, *price).first.size());
        CHECK(std::tie(quick->unserved, quick->sticks, quick->taken) >=
              std::tie(price->unserved, price->sticks, price->taken));
        CHECK(quick->at_most == !quick->nothing());
        ++priced;
        if (quick->nothing() == price->nothing() && quick->taken == price->taken) ++alike;
        if (!price->nothing()) ++costly;
      }
  }
  CHECK(priced > rounds(400));
  CHECK(costly > rounds(80));
  CHECK(alike * 10 > priced * 9); // exchange alone is mostly enough
  CHECK(refused > rounds(400));
}

TEST_CASE("a piece that is the only one for the longest slot costs a fret of new wire anywhere else") {
  Problem p;
  p.least_useful = 43_mm;
  p.slots = {slot(55_mm), slot(51_mm)};
  p.pieces = {piece(54.6_mm, 0), piece(50.6_mm, 0)};
  p.stock = {stick(610_mm, 5)};
  const auto plan = cutting::plan(p, {});
  REQUIRE(plan.cost.sticks == 0);
  CHECK(cutting::price_of_taking(p, plan, 0, 0, {})->nothing());
  const auto price = cutting::price_of_taking(p, plan, 0, 1, {});
  REQUIRE(price);
  CHECK(price->sticks == 1);
  CHECK(price->taken == 56_mm); // 55 less two setbacks and two dressings and a nip: 55 − 0.5 + 1 + 0.5
  CHECK_FALSE(price->at_most);
  CHECK_FALSE(cutting::price_of_taking(p, plan, 1, 0, {})); // too short for it
}

TEST_CASE("a piece that is held, or elsewhere, or does not exist, has no price") {
  Problem p;
  p.least_useful = 43_mm;
  p.slots = {slot(51_mm), slot(51_mm)};
  p.pieces = {piece(50.6_mm, 0), piece(50.7_mm, 0)};
  p.pieces[1].held_elsewhere = true;
  p.held = {{{From::piece, 0}, {0}}};
  p.stock = {stick(610_mm, 5)};
  const auto plan = cutting::plan(p, {});
  CHECK_FALSE(cutting::price_of_taking(p, plan, 0, 1, {}));
  CHECK_FALSE(cutting::price_of_taking(p, plan, 1, 1, {}));
  CHECK_FALSE(cutting::price_of_taking(p, plan, 2, 1, {}));
  CHECK_FALSE(cutting::price_of_taking(p, plan, 1, 2, {}));
}

TEST_CASE("a slot that a piece is held for gives it up when it takes another") {
  Problem p;
  p.least_useful = 43_mm;
  p.slots = {slot(51_mm), slot(51_mm)};
  p.pieces = {piece(50.6_mm, 0), piece(50.7_mm, 0)};
  p.held = {{{From::piece, 0}, {0}}};
  p.stock = {stick(610_mm, 5)};
  const auto plan = cutting::plan(p, {});
  REQUIRE(plan.cost.sticks == 0);
  CHECK(cutting::price_of_taking(p, plan, 1, 0, {})->nothing()); // the held one does for the other
}

TEST_CASE(
    "in a shop of many boards a piece that others can stand in for costs nothing, and another a little") {
  Problem p;
  p.least_useful = 43_mm;
  for (int n = 0; n < 60; ++n)
    p.slots.push_back(slot(Length{44'000'000 + n * 200'000}, n / 20));
  for (int n = 0; n < 40; ++n)
    p.pieces.push_back(piece(Length{43'700'000 + n * 300'000}, 0));
  p.stock = {stick(610_mm, 9, 2)};
  const auto plan = cutting::plan(p, {200'000, {}});
  int free = 0, some = 0;
  for (std::size_t piece = 0; piece < p.pieces.size(); piece += 3)
    for (std::size_t slot = 0; slot < p.slots.size(); slot += 4) {
      const auto price = cutting::price_of_taking(p, plan, piece, slot, {0, {}});
      if (!price) continue;
      ++(price->nothing() ? free : some);
      CAPTURE(piece, slot, price->taken, price->sticks);
      // At worst the slot that the piece was for is cut from new wire, and that of the slot put to no use.
      CHECK(std::all_of(price->unserved.begin(), price->unserved.end(), [](int n) { return n == 0; }));
      CHECK(price->sticks <= 1);
      CHECK(price->taken <= (price->sticks > 0 ? 610_mm : 60_mm));
    }
  CHECK(free > 5);
  CHECK(some > 5);
}
