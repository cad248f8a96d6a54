// What is kept of a cut plan, and what of it is found again in another problem. Figures by hand from
// DESIGN 4.2 as in cuts_test: a slot of an arc of 52 mm is cut to 52.5 mm, and a nip loses 0.5 mm.
#include "cutting/cases.hpp"
#include "cutting/serve.hpp"
#include "shop/going_on.hpp"
#include "support/effort.hpp"

#include <set>

using namespace cases;
using nutward::shop::digest_of;
using nutward::shop::kept;
using nutward::shop::KeptCuts;
using nutward::shop::previous_of;
using nutward::test::rounds;

namespace {

// With the names that a shop gives: slots of job 1 from 1 on, pieces and lots from 1 on.
Problem named(Problem p) {
  for (std::size_t i = 0; i < p.slots.size(); ++i) {
    p.slots[i].job = 1 + static_cast<std::int64_t>(i) / 22;
    p.slots[i].slot = 1 + static_cast<int>(i) % 22;
  }
  for (std::size_t i = 0; i < p.pieces.size(); ++i)
    p.pieces[i].facts.id = static_cast<std::int64_t>(i) + 1;
  for (std::size_t i = 0; i < p.stock.size(); ++i)
    p.stock[i].id = static_cast<std::int64_t>(i) + 1;
  return p;
}

Problem of_slots(int n) {
  Problem p;
  p.least_useful = 51.9_mm;
  for (int i = 0; i < n; ++i)
    p.slots.push_back(slot(52_mm));
  return named(p);
}

KeptCuts planned(const Problem& p) {
  return kept(p, cutting::plan(p, {200'000, {}}));
}

// The plan of four slots, two from each of two sticks of 106 mm (52.5 + 0.5 + 52.5, and a last nip).
Problem two_sticks() {
  Problem p = of_slots(4);
  p.stock = {stick(106_mm, 2)};
  return named(p);
}

void drop_slot(Problem& p, std::size_t at) {
  p.slots.erase(p.slots.begin() + static_cast<std::ptrdiff_t>(at));
}

} // namespace

TEST_CASE("in the same problem everything of the plan is found again, as it was") {
  const Problem p = two_sticks();
  const KeptCuts cuts = planned(p);
  REQUIRE(cuts.uses.size() == 2);
  const auto before = previous_of(cuts, p);
  REQUIRE(before.size() == 2);
  for (std::size_t i = 0; i < 2; ++i) {
    CHECK(before[i].source == cutting::Source{From::stock, 0});
    REQUIRE(before[i].slots.size() == 2);
    CHECK(before[i].slots[0] == cuts.uses[i].frets[0].index);
  }
}

TEST_CASE("of two sticks the one that is begun is the one that is gone, and its end takes over its frets") {
  Problem p = two_sticks();
  const KeptCuts cuts = planned(p);
  const std::size_t made = cuts.uses[0].frets[0].index; // of the first stick, which a list would keep
  drop_slot(p, made);
  p.stock[0].count = 1;
  p.pieces = {piece(53_mm, 2)}; // what is left of it
  p.pieces[0].facts.id = 9;
  const auto now = previous_of(cuts, p);
  REQUIRE(now.size() == 2);
  const auto& whole = now[0].source.from == From::stock ? now[0] : now[1];
  const auto& end = now[0].source.from == From::stock ? now[1] : now[0];
  std::vector<int> names;
  for (const std::size_t s : whole.slots)
    names.push_back(p.slots[s].slot);
  std::vector<int> expected;
  for (const auto& f : cuts.uses[1].frets)
    expected.push_back(f.slot);
  CHECK(names == expected);
  REQUIRE(end.slots.size() == 1);
  CHECK(p.slots[end.slots[0]].slot == cuts.uses[0].frets[1].slot);
}

TEST_CASE(
    "a coil is the same coil however much is left on it, and a stick of another length is none of the old") {
  Problem p = of_slots(3);
  p.stock = {stick(5000_mm)};
  p.stock[0].kind = cutting::StockKind::coil;
  p.stock[0].id = 4;
  const KeptCuts cuts = planned(p);
  p.stock[0].length = 4000_mm;
  REQUIRE(previous_of(cuts, p).size() == 1);
  p.stock.insert(p.stock.begin(), p.stock[0]);
  p.stock[0].id = 3;
  CHECK(previous_of(cuts, p).at(0).source.index == 1);
  p.stock[1].kind = p.stock[0].kind = cutting::StockKind::stick;
  CHECK(previous_of(cuts, p).empty());
  Problem q = two_sticks();
  const KeptCuts sticks = planned(q);
  q.stock[0].length = 107_mm;
  CHECK(previous_of(sticks, q).empty());
  q.stock[0].length = 106_mm;
  q.stock[0].id = 77; // another delivery of the same length does as well
  CHECK(previous_of(sticks, q).size() == 2);
}

TEST_CASE("a piece that is gone or held for something else is left out, and what is held is left alone") {
  Problem p = of_slots(2);
  p.pieces = {piece(52.4_mm, 2), piece(52.3_mm, 2)};
  p = named(p);
  const KeptCuts cuts = planned(p);
  REQUIRE(previous_of(cuts, p).size() == 2);
  Problem gone = p;
  gone.pieces.erase(gone.pieces.begin());
  REQUIRE(previous_of(cuts, gone).size() == 1);
  CHECK(gone.pieces[previous_of(cuts, gone)[0].source.index].facts.id == 2);
  Problem elsewhere = p;
  elsewhere.pieces[1].held_elsewhere = true;
  REQUIRE(previous_of(cuts, elsewhere).size() == 1);
  CHECK(previous_of(cuts, elsewhere)[0].source.index == 0);
}

TEST_CASE(
    "one more piece takes one fret from the new wire, a longer one as many as go in, one too short none") {
  const KeptCuts cuts = planned(two_sticks());
  const auto with = [&](Length length) {
    Problem p = two_sticks();
    p.pieces = {piece(length, 2)};
    p.pieces[0].facts.id = 9;
    return previous_of(cuts, p);
  };
  const auto served = [](const std::vector<Cutting>& all, From from) {
    std::size_t out = 0;
    for (const Cutting& c : all)
      out += c.source.from == from ? c.slots.size() : 0;
    return out;
  };
  CHECK(served(with(52.2_mm), From::piece) == 1);
  CHECK(served(with(52.2_mm), From::stock) == 3);
  CHECK(served(with(160_mm), From::piece) == 3);
  CHECK(served(with(160_mm), From::stock) == 1);
  CHECK(with(212_mm).size() == 1); // all four, and no stick at all
  CHECK(served(with(45_mm), From::piece) == 0);
  CHECK(served(with(75_mm), From::piece) == 0); // wasteful: 22.5 mm would be nipped off
}

TEST_CASE("kept as text and read again a plan is the same, and fits a problem of its digest alone") {
  std::mt19937 random(41);
  for (int i = 0; i < 200; ++i) {
    const Problem p = named(random_problem(random, 14, 10));
    const cutting::Plan plan = cutting::plan(p, {20'000, {}});
    const std::string text = to_text(kept(p, plan));
    const auto read = shop::cuts_from_text(text);
    REQUIRE(read.has_value());
    CHECK(to_text(*read) == text);
    const auto again = plan_of(*read, p);
    REQUIRE(again.has_value());
    CHECK(again->cost == plan.cost);
    CHECK(again->bound == plan.bound);
    CHECK(again->proved == plan.proved);
    CHECK(again->stopped == plan.stopped);
    CHECK(again->unserved == plan.unserved);
    CHECK(again->faults == plan.faults);
    CHECK(again->borderline.size() == plan.borderline.size());
    check_plan(p, *again);
    REQUIRE(again->uses.size() == plan.uses.size());
    for (std::size_t u = 0; u < plan.uses.size(); ++u) {
      CHECK(again->uses[u].frets == plan.uses[u].frets);
      CHECK(again->uses[u].source == plan.uses[u].source);
    }
  }
}

TEST_CASE(
    "whatever has changed, what is gone on from could be cut: nothing twice, nothing that is not there") {
  std::mt19937 random(42);
  for (int i = 0; i < rounds(400); ++i) {
    Problem p = named(random_problem(random, 14, 10));
    const KeptCuts cuts = planned(p);
    if (random() % 2 == 0 && p.slots.size() > 1) drop_slot(p, random() % p.slots.size());
    if (random() % 2 == 0 && !p.pieces.empty()) p.pieces.erase(p.pieces.begin());
    if (random() % 3 == 0 && !p.pieces.empty()) p.pieces.front().held_elsewhere = true;
    if (random() % 2 == 0 && !p.stock.empty()) p.stock.front().count = static_cast<int>(random() % 2);
    const Problem other = named(random_problem(random, 3, 4));
    for (cutting::Piece more : other.pieces) {
      more.facts.id += 100;
      p.pieces.push_back(more);
    }
    std::set<std::size_t> slots, pieces;
    std::map<std::size_t, int> sticks;
    for (Cutting c : previous_of(cuts, p)) {
      INFO("case " << i);
      CHECK_FALSE(c.slots.empty());
      for (const std::size_t s : c.slots)
        CHECK((s < p.slots.size() && slots.insert(s).second));
      if (c.source.from == From::piece)
        CHECK((!p.pieces.at(c.source.index).held_elsewhere && pieces.insert(c.source.index).second));
      else
        CHECK(++sticks[c.source.index] <= p.stock.at(c.source.index).count);
    }
  }
}

TEST_CASE("the digest is of all that a plan follows from, and of nothing else") {
  std::mt19937 random(43);
  Problem p = named(random_problem(random, 8, 6));
  p.pieces.push_back(piece(52_mm, 1));
  p.held = {{{From::piece, 0}, {0}}};
  const std::string digest = digest_of(p);
  CHECK(digest.size() == 64);
  const auto other = [&](auto&& change) {
    Problem q = p;
    change(q);
    return digest_of(q) != digest;
  };
  CHECK_FALSE(other([](Problem& q) { q.previous = {{{From::piece, 0}, {0}}}; }));
  CHECK(other([](Problem& q) { q.wire = 2; }));
  CHECK(other([](Problem& q) { q.slots[0].due += 1; }));
  CHECK(other([](Problem& q) { q.slots[0].lot = 3; }));
  CHECK(other([](Problem& q) { q.slots[0].need.most = {}; }));
  CHECK(other([](Problem& q) { q.slots[0].need.tang = 40_mm; }));
  CHECK(other([](Problem& q) { q.slots[0].crown_height = 1.5_mm; }));
  CHECK(other([](Problem& q) { std::swap(q.pieces[0], q.pieces.back()); }));
  CHECK(other([](Problem& q) { q.pieces[0].facts.added = {5}; }));
  CHECK(other([](Problem& q) { q.pieces[0].held_elsewhere = true; }));
  CHECK(other([](Problem& q) { q.stock[0].count += 1; }));
  CHECK(other([](Problem& q) { q.stock[0].flat_ends = 3; }));
  CHECK(other([](Problem& q) { q.settings.nip_loss += Length{1}; }));
  CHECK(other([](Problem& q) { q.settings.crown_overhang += Length{1}; }));
  CHECK(other([](Problem& q) { q.flat_end += Length{1}; }));
  CHECK(other([](Problem& q) { q.least_useful += Length{1}; }));
  CHECK(other([](Problem& q) { q.held.clear(); }));
  CHECK(other([](Problem& q) { q.worth_moving += Length{1}; }));
}
