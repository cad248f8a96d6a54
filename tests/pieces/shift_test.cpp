#include "pieces/shift.hpp"
#include "support/catch.hpp"
#include "support/effort.hpp"

#include <algorithm>
#include <map>
#include <random>
#include <set>

using namespace nutward;
using namespace nutward::units::literals;
using namespace nutward::pieces;
using nutward::test::rounds;

namespace {

const board::FitSettings usual;

ShiftSlot slot(int n, Length arc, board::EndStyle style = board::EndStyle::rounded) {
  ShiftSlot out;
  out.slot = n;
  out.wanted.need = board::need(arc, style, usual);
  return out;
}

LaidFret fret(int n, Length length, int raw_ends = 0) {
  LaidFret out;
  out.slot = n;
  out.facts.length = length;
  out.facts.raw_ends = raw_ends;
  return out;
}

PieceFacts piece(std::int64_t id, Length length, int raw_ends = 0) {
  PieceFacts out;
  out.id = id;
  out.length = length;
  out.raw_ends = raw_ends;
  return out;
}

// What one slot may get, from the words of the design: the test's own reading of it.
struct Way {
  ShiftCost cost;
  int uses = -1; // fret 0 …, then pieces; -1: made anew
};

std::vector<Way> ways(const ShiftSlot& s, const std::vector<LaidFret>& frets,
                      const std::vector<PieceFacts>& tin) {
  std::vector<Way> out{{{1, 0, 0, s.wanted.need.cut + usual.nip_loss, {}}, -1}};
  for (std::size_t i = 0; i < frets.size() + tin.size(); ++i) {
    const bool of_tin = i >= frets.size();
    const Verdict v = judge(of_tin ? tin[i - frets.size()] : frets[i].facts, s.wanted, usual);
    const bool reaches = v.outcome != Outcome::too_short && v.outcome != Outcome::tang_short;
    const bool sure = v.outcome == Outcome::fits && v.trim <= usual.trim_limit;
    const int anyhow = of_tin ? 0 : frets[i].facts.raw_ends;
    Way way{{0, std::max(0, v.ends_to_dress - anyhow), 0, {}, v.trim}, static_cast<int>(i)};
    if (of_tin) {
      way.cost.moved = 1;
      if (sure) out.push_back(way);
    } else if (frets[i].slot == s.slot) {
      if (frets[i].seated) way.cost = {};
      if (reaches && (frets[i].seated || v.outcome != Outcome::crown_differs)) out.push_back(way);
    } else if (sure && !frets[i].seated) {
      way.cost.moved = 1;
      out.push_back(way);
    }
  }
  return out;
}

ShiftCost sum(ShiftCost a, const ShiftCost& b) {
  return {a.made + b.made, a.ends_to_dress + b.ends_to_dress, a.moved + b.moved, a.wire + b.wire,
          a.trim + b.trim};
}

// The cheapest of all ways of filling the slots from the k-th on, with what is not in `used`: every way is
// tried, except that what is left of the slots depends only on what was used.
ShiftCost cheapest(const std::vector<std::vector<Way>>& all, std::size_t k, unsigned used,
                   std::map<std::pair<std::size_t, unsigned>, ShiftCost>& known) {
  if (k == all.size()) return {};
  const auto at = known.find({k, used});
  if (at != known.end()) return at->second;
  std::optional<ShiftCost> best;
  for (const Way& way : all[k]) {
    if (way.uses >= 0 && (used >> way.uses & 1U) != 0) continue;
    const unsigned now = way.uses < 0 ? used : used | 1U << way.uses;
    const ShiftCost cost = sum(way.cost, cheapest(all, k + 1, now, known));
    if (!best || cost < *best) best = cost;
  }
  return known[{k, used}] = *best;
}

struct Case {
  std::vector<ShiftSlot> slots;
  std::vector<LaidFret> frets;
  std::vector<PieceFacts> tin;
};

// A tapering board whose frets were cut with all the errors that a bench makes.
Case random_case(std::mt19937& random, int most_slots, int most_pieces) {
  const auto from_to = [&](int a, int b) { return std::uniform_int_distribution(a, b)(random); };
  Case out;
  const int n = from_to(1, most_slots);
  const bool bound = from_to(0, 3) == 0, filed = from_to(0, 3) == 0;
  const auto some_length = [&](Length about) { return about + Length{from_to(-25, 15) * 100'000}; };
  for (int i = 1; i <= n; ++i) {
    const Length arc = 44_mm + Length{i * from_to(4, 8) * 100'000};
    ShiftSlot s = slot(i, arc, filed ? board::EndStyle::filed : board::EndStyle::rounded);
    if (bound) s.wanted.need.tang = arc - 4_mm;
    out.slots.push_back(s);
    if (from_to(0, 9) == 0) continue; // nothing lies there
    LaidFret f = fret(i, some_length(filed ? s.wanted.need.cut : arc), from_to(0, 5) == 0 ? 2 : 0);
    f.seated = from_to(0, 5) == 0;
    if (bound && from_to(0, 1) == 0) f.facts.tang = f.facts.length - 4_mm - Length{from_to(-5, 30) * 100'000};
    out.frets.push_back(f);
  }
  for (int i = from_to(0, most_pieces); i > 0; --i)
    out.tin.push_back(piece(i, some_length(46_mm) + Length{from_to(0, 60) * 100'000}, from_to(0, 2)));
  return out;
}

// Carries the moves out on a bench and gives what lies where; fails if a fret is laid into a slot that is
// taken, or lifted from an empty one.
std::map<int, std::string> carried_out(const Shift& s, const std::vector<LaidFret>& frets) {
  std::map<int, std::string> lies;
  std::set<std::string> aside;
  const auto name = [](const char* what, std::size_t index) { return what + std::to_string(index); };
  for (std::size_t i = 0; i < frets.size(); ++i)
    lies[frets[i].slot] = name("fret ", i);
  const auto lift = [&](int n, std::size_t index) {
    REQUIRE(lies[n] == name("fret ", index));
    lies.erase(n);
  };
  const auto lay = [&](int n, std::string what) { REQUIRE(lies.emplace(n, std::move(what)).second); };
  for (const HandMove& m : hand_moves(s, frets)) {
    switch (m.hand) {
    case Hand::to_tin:
    case Hand::pull:
      REQUIRE(frets[m.index].seated == (m.hand == Hand::pull));
      lift(m.slot, m.index);
      break;
    case Hand::aside:
      lift(m.slot, m.index);
      aside.insert(name("fret ", m.index));
      break;
    case Hand::move:
      lift(m.slot, m.index);
      lay(m.to, name("fret ", m.index));
      break;
    case Hand::back:
      REQUIRE(aside.erase(name("fret ", m.index)) == 1);
      lay(m.to, name("fret ", m.index));
      break;
    case Hand::centre:
    case Hand::finish:
      REQUIRE(lies[m.slot] == name("fret ", m.index));
      break;
    case Hand::take:
      lay(m.to, name("piece ", m.index));
      break;
    case Hand::make:
      lay(m.to, "new");
      break;
    }
  }
  REQUIRE(aside.empty());
  return lies;
}

std::map<int, std::string> as_planned(const Shift& s) {
  std::map<int, std::string> out;
  for (const Filling& f : s.fillings) {
    out[f.slot] = f.from == From::anew  ? "new"
                  : f.from == From::tin ? "piece " + std::to_string(f.index)
                                        : "fret " + std::to_string(f.index);
  }
  return out;
}

} // namespace

// Common practice, no source.
TEST_CASE(
    "of two neighbouring short frets the shorter goes in the tin, the other moves one slot nutward, and "
    "only one is made anew") {
  const std::vector<ShiftSlot> slots{slot(1, 50_mm), slot(2, 51_mm), slot(3, 52_mm)};
  const std::vector<LaidFret> frets{fret(1, 49.5_mm), fret(2, 49.4_mm), fret(3, 50.5_mm)};
  const Shift found = shift(slots, frets, {}, usual);
  CHECK(found.cost.made == 1);
  CHECK(found.cost.moved == 1);
  CHECK(found.to_tin == std::vector<std::size_t>{1});
  const auto moves = hand_moves(found, frets);
  REQUIRE(moves.size() == 3);
  CHECK(moves[0].hand == Hand::to_tin);
  CHECK(moves[0].slot == 2);
  CHECK(moves[1].hand == Hand::move);
  CHECK(moves[1].slot == 3);
  CHECK(moves[1].to == 2);
  CHECK(moves[2].hand == Hand::make);
  CHECK(moves[2].to == 3);
  CHECK(found.proved);
}

TEST_CASE("a run of short frets moves nutward together, which taking each slot by itself would not find") {
  // Each is 1 mm short of its own slot and right for the one before; only the first and the last are lost.
  std::vector<ShiftSlot> slots;
  std::vector<LaidFret> frets;
  for (int n = 1; n <= 12; ++n) {
    slots.push_back(slot(n, 44_mm + n * 1_mm));
    frets.push_back(fret(n, 43.5_mm + n * 1_mm - 1_mm));
  }
  const Shift found = shift(slots, frets, {}, usual);
  CHECK(found.cost.made == 1);
  CHECK(found.cost.moved == 11);
  CHECK(found.to_tin == std::vector<std::size_t>{0});
  CHECK(carried_out(found, frets) == as_planned(found));
}

TEST_CASE("a piece of the tin saves a fret that no shift can, and is not taken where the frets suffice") {
  const std::vector<ShiftSlot> slots{slot(1, 50_mm), slot(2, 51_mm)};
  const std::vector<PieceFacts> tin{piece(7, 50.4_mm), piece(8, 49.5_mm)};
  const std::vector<LaidFret> short_second{fret(1, 49.5_mm), fret(2, 48_mm)};
  const Shift saved = shift(slots, short_second, tin, usual);
  CHECK(saved.cost.made == 0);
  CHECK(saved.fillings[1].from == From::tin);
  CHECK(saved.fillings[1].index == 0);
  const std::vector<LaidFret> good{fret(1, 49.5_mm), fret(2, 50.5_mm)};
  CHECK(hand_moves(shift(slots, good, tin, usual), good).empty());
}

TEST_CASE("frets that were only cut are not changed for dressed pieces of the tin") {
  const std::vector<ShiftSlot> slots{slot(1, 50_mm)};
  const std::vector<LaidFret> frets{fret(1, 50.5_mm, 2)};
  CHECK(shift(slots, frets, std::vector{piece(7, 49.5_mm)}, usual).fillings[0].from == From::own);
}

TEST_CASE("a seated fret is left where it reaches and remade where it does not, and goes nowhere else") {
  const std::vector<ShiftSlot> slots{slot(1, 50_mm), slot(2, 51_mm)};
  std::vector<LaidFret> frets{fret(2, 49.5_mm)};
  CHECK(shift(slots, frets, {}, usual).cost.made == 1); // moved to 1
  frets[0].seated = true;
  const Shift found = shift(slots, frets, {}, usual);
  CHECK(found.cost.made == 2);
  CHECK(found.cost.moved == 0);
  CHECK(hand_moves(found, frets)[0].hand == Hand::pull);
  frets[0].facts.length = 52.5_mm; // stands out, but it is in
  CHECK(shift(slots, frets, {}, usual).cost.made == 1);
  CHECK(shift(slots, frets, {}, usual).cost.ends_to_dress == 0);
}

TEST_CASE("a fret short at one side only is centred if it reaches, and moved if it does not") {
  const std::vector<ShiftSlot> slots{slot(1, 50_mm), slot(2, 51_mm)};
  std::vector<LaidFret> frets{fret(2, 50.2_mm)};
  frets[0].one_sided = true;
  const Shift reaches = shift(slots, frets, {}, usual);
  CHECK(reaches.fillings[1].from == From::own);
  CHECK(reaches.fillings[1].centre);
  frets[0].facts.length = 49.4_mm;
  const Shift moved = shift(slots, frets, {}, usual);
  CHECK(moved.fillings[0].from == From::other_slot);
  CHECK_FALSE(moved.fillings[0].centre);
}

TEST_CASE("two frets that lie in each other's slot change places, one laid aside meanwhile") {
  const std::vector<ShiftSlot> slots{slot(1, 50_mm), slot(2, 56_mm)};
  const std::vector<LaidFret> frets{fret(1, 55.5_mm), fret(2, 49.5_mm)};
  const Shift found = shift(slots, frets, {}, usual);
  CHECK(found.cost.made == 0);
  CHECK(found.cost.moved == 2);
  const auto moves = hand_moves(found, frets);
  REQUIRE(moves.size() == 3);
  CHECK(moves[0].hand == Hand::aside);
  CHECK(moves[1].hand == Hand::move);
  CHECK(moves[2].hand == Hand::back);
  CHECK(carried_out(found, frets) == as_planned(found));
}

TEST_CASE("on a bound board a moved fret is nipped again, and one nipped too far is not moved") {
  std::vector<ShiftSlot> slots{slot(1, 50_mm), slot(2, 51_mm)};
  slots[0].wanted.need.tang = 46_mm;
  slots[1].wanted.need.tang = 47_mm;
  std::vector<LaidFret> frets{fret(2, 49.6_mm)};
  frets[0].facts.tang = 47_mm;
  const Shift found = shift(slots, frets, {}, usual);
  REQUIRE(found.fillings[0].from == From::other_slot);
  CHECK(found.fillings[0].verdict.tang_to_nip == 1_mm);
  frets[0].facts.tang = 43_mm; // the crown would reach 3.3 mm beyond it
  CHECK(shift(slots, frets, {}, usual).cost.made == 2);
}

TEST_CASE("a fret that would lose more than the trim limit is not moved, one at the limit is") {
  const std::vector<ShiftSlot> slots{slot(1, 50_mm), slot(2, 70_mm)};
  CHECK(shift(slots, std::vector{fret(2, 57.5_mm)}, {}, usual).cost.moved == 1); // 57.5 − 49.5 is 8 mm
  CHECK(shift(slots, std::vector{fret(2, 57.51_mm)}, {}, usual).cost.moved == 0);
}

TEST_CASE("4,000 random shifts of up to 7 frets and 3 pieces cost what trying every way costs") {
  std::mt19937 random(7);
  std::map<From, int> seen;
  for (int round = 0; round < rounds(4000); ++round) {
    const Case c = random_case(random, 7, 3);
    std::vector<std::vector<Way>> all;
    for (const ShiftSlot& s : c.slots)
      all.push_back(ways(s, c.frets, c.tin));
    std::map<std::pair<std::size_t, unsigned>, ShiftCost> known;
    const Shift found = shift(c.slots, c.frets, c.tin, usual);
    REQUIRE(found.cost == cheapest(all, 0, 0, known));
    REQUIRE(found.proved);
    REQUIRE(carried_out(found, c.frets) == as_planned(found));
    for (const Filling& f : found.fillings)
      ++seen[f.from];
  }
  for (const From from : {From::own, From::other_slot, From::tin, From::anew})
    CHECK(seen[from] > rounds(500));
}

TEST_CASE("with many pieces the ones left out of the assignment make no difference") {
  // The proof covers only what was in the table, so a small case is tried with each piece that was left out.
  std::mt19937 random(11);
  for (int round = 0; round < rounds(60); ++round) {
    Case c = random_case(random, 4, 60);
    std::vector<std::vector<Way>> all;
    for (const ShiftSlot& s : c.slots) {
      all.push_back(ways(s, c.frets, c.tin));
      std::stable_sort(all.back().begin(), all.back().end(),
                       [](const Way& a, const Way& b) { return a.cost < b.cost; });
    }
    // Every way, without the memory that needs a bit for each piece.
    std::optional<ShiftCost> best;
    std::vector<int> used;
    const auto fill = [&](auto&& self, std::size_t k, const ShiftCost& so_far) -> void {
      if (best && *best <= so_far) return;
      if (k == all.size()) {
        best = so_far;
        return;
      }
      for (const Way& way : all[k]) {
        if (way.uses >= 0 && std::find(used.begin(), used.end(), way.uses) != used.end()) continue;
        used.push_back(way.uses);
        self(self, k + 1, sum(so_far, way.cost));
        used.pop_back();
      }
    };
    fill(fill, 0, {});
    REQUIRE(shift(c.slots, c.frets, c.tin, usual).cost == *best);
  }
}

TEST_CASE("what cannot be a bench is refused") {
  const std::vector<ShiftSlot> slots{slot(1, 50_mm)};
  CHECK_THROWS_AS(shift(slots, std::vector{fret(2, 50_mm)}, {}, usual), BadShift);
  CHECK_THROWS_AS(shift(slots, std::vector{fret(1, 50_mm), fret(1, 49_mm)}, {}, usual), BadShift);
  CHECK_THROWS_AS(shift(std::vector{slots[0], slots[0]}, {}, {}, usual), BadShift);
  CHECK(shift({}, {}, {}, usual).fillings.empty());
}

TEST_CASE("one fret by itself: drop in, centre, finish, try it, move, remake") {
  const std::vector<ShiftSlot> slots{slot(8, 50.5_mm), slot(9, 52_mm), slot(10, 53_mm)};
  const auto said = [&](LaidFret f) {
    const OneVerdict v = verdict_on(f, slots, usual);
    return std::pair{v.say, v.slot};
  };
  CHECK(said(fret(9, 51.5_mm)) == std::pair{Say::drop_in, 9}); // 50.9 to 52
  CHECK(said(fret(9, 50.95_mm)) == std::pair{Say::try_it, 9});
  CHECK(said(fret(9, 52.5_mm)) == std::pair{Say::finish, 9});
  CHECK(said(fret(9, 50.1_mm)) == std::pair{Say::move, 8});
  CHECK(said(fret(9, 48_mm)) == std::pair{Say::remake, 9});
  LaidFret one_side = fret(9, 51.2_mm);
  one_side.one_sided = true;
  CHECK(said(one_side) == std::pair{Say::centre, 9});
  LaidFret seated = fret(9, 50.1_mm);
  seated.seated = true;
  CHECK(said(seated) == std::pair{Say::remake, 9});
}
