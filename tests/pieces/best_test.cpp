#include "pieces/fit.hpp"
#include "support/catch.hpp"
#include "support/show.hpp"
#include "support/vector_source.hpp"

#include <algorithm>
#include <random>

using namespace nutward;
using namespace nutward::units::literals;
using board::EndStyle;
using pieces::Kind;
using pieces::Outcome;
using support::VectorSource;
using units::Length;

namespace {

using Tin = std::vector<VectorSource::InTin>;

struct Dice {
  std::mt19937_64 random;
  int upto(int n) { return std::uniform_int_distribution<int>(0, n)(random); }
  bool one_in(int n) { return upto(n - 1) == 0; }
  // Whole steps: equal lengths and lengths right on a limit must come often, or ties are never tried.
  Length steps(Length low, Length step, int most) { return low + step * upto(most); }
};

board::FitSettings random_settings(Dice& dice) {
  board::FitSettings s;
  if (dice.one_in(2)) return s;
  s.setback = dice.steps(0_mm, 0.05_mm, 8);
  s.gap = dice.steps(0_mm, 0.05_mm, 8);
  s.dressing_loss = dice.steps(0_mm, 0.1_mm, 20); // up to where a piece over `most` cannot be dressed to fit
  s.borderline = dice.steps(0_mm, 0.05_mm, 4);
  s.trim_limit = dice.steps(2 * s.dressing_loss + s.borderline, 0.5_mm, 12);
  s.nip_loss = dice.steps(0_mm, 0.25_mm, 3);
  return s;
}

pieces::Wanted random_wanted(Dice& dice, const board::FitSettings& s) {
  const auto style = dice.one_in(2) ? EndStyle::filed : EndStyle::rounded;
  pieces::Wanted wanted{board::need(dice.steps(45_mm, 0.1_mm, 20), style, s), {}, {}, {}};
  if (dice.one_in(3))
    wanted.need.tang = wanted.need.arc - dice.steps(0.6_mm, 0.4_mm, 12); // a binding up to 2.3
  if (dice.one_in(2)) wanted.crown_height = dice.steps(1.17_mm, 0.01_mm, 6);
  if (dice.one_in(2)) wanted.another = dice.steps(5_mm, 1_mm, 20);
  if (dice.one_in(2)) wanted.lot = dice.upto(2);
  return wanted;
}

Tin random_tin(Dice& dice, const pieces::Wanted& wanted, const board::FitSettings& s) {
  Tin tin;
  const int count = dice.upto(60);
  // Half of the tins crowd around one limit, where an order goes wrong first; the others reach up to several
  // frets.
  const Length step = dice.one_in(2) ? 0.1_mm : 0.05_mm;
  const bool crowded = dice.one_in(2);
  const Length limits[] = {wanted.need.least, wanted.need.most.value_or(wanted.need.cut),
                           wanted.need.least + s.dressing_loss, wanted.need.target + s.trim_limit};
  const Length from = (crowded ? limits[dice.upto(3)] : wanted.need.least) - 6 * step;
  const int span = crowded ? 12 : 400;
  for (int i = 0; i < count; ++i) {
    VectorSource::InTin piece;
    auto& f = piece.facts;
    f.id = 1000 - i;
    f.kind = static_cast<Kind>(dice.upto(2));
    f.length = from + step * dice.upto(span);
    if (dice.one_in(3)) f.tang = f.length - dice.steps(0_mm, 0.5_mm, 18);
    if (dice.one_in(20)) f.length += Length{1} - Length{2} * dice.upto(1);
    f.raw_ends = dice.upto(2);
    if (!dice.one_in(3)) f.crown_height = dice.steps(1.15_mm, 0.01_mm, 10);
    f.lot = dice.upto(2);
    f.added = {dice.upto(3)};
    f.held_for_this = dice.one_in(8);
    piece.held_elsewhere = !f.held_for_this && dice.one_in(5);
    tin.push_back(piece);
  }
  return tin;
}

// The order of DESIGN's "best", spelled out once more.
bool better(const pieces::Candidate& a, const pieces::Candidate& b, const pieces::Wanted& wanted) {
  const auto& [pa, va] = a;
  const auto& [pb, vb] = b;
  if (va.outcome != vb.outcome) return static_cast<int>(va.outcome) < static_cast<int>(vb.outcome);
  if (va.trim != vb.trim) return va.trim < vb.trim;
  const Length off_a = units::abs(va.finish - wanted.need.target),
               off_b = units::abs(vb.finish - wanted.need.target);
  if (off_a != off_b) return off_a < off_b;
  if (va.ends_to_dress != vb.ends_to_dress) return va.ends_to_dress < vb.ends_to_dress;
  const bool nip_a = va.tang_to_nip > 0_mm, nip_b = vb.tang_to_nip > 0_mm;
  if (nip_a != nip_b) return nip_b;
  if (wanted.lot && (pa.lot == *wanted.lot) != (pb.lot == *wanted.lot)) return pa.lot == *wanted.lot;
  if (pa.added != pb.added) return pa.added < pb.added;
  return pa.id < pb.id;
}

std::vector<pieces::Candidate> by_brute_force(const Tin& tin, const pieces::Wanted& wanted,
                                              const board::FitSettings& s, const pieces::Ask& ask) {
  std::vector<pieces::Candidate> all;
  for (const auto& piece : tin) {
    if (piece.held_elsewhere || (piece.facts.kind == Kind::pulled_fret && !ask.pulled)) continue;
    const auto verdict = pieces::judge(piece.facts, wanted, s);
    if (verdict.outcome == Outcome::too_short || verdict.outcome == Outcome::crown_differs) continue;
    if (verdict.outcome == Outcome::tang_short) continue;
    if (verdict.outcome == Outcome::wasteful && !ask.wasteful) continue;
    all.push_back({piece.facts, verdict});
  }
  std::sort(all.begin(), all.end(), [&](const auto& a, const auto& b) { return better(a, b, wanted); });
  return all;
}

std::vector<std::int64_t> ids(const std::vector<pieces::Candidate>& candidates) {
  std::vector<std::int64_t> out;
  for (const auto& c : candidates)
    out.push_back(c.piece.id);
  return out;
}

VectorSource::InTin in_tin(std::int64_t id, Length length, int raw_ends, Kind kind = Kind::short_fret) {
  VectorSource::InTin piece;
  piece.facts.id = id;
  piece.facts.length = length;
  piece.facts.raw_ends = raw_ends;
  piece.facts.kind = kind;
  return piece;
}

pieces::Wanted rounded_52() {
  return {board::need(52_mm, EndStyle::rounded, {}), {}, {}, {}};
}

} // namespace

TEST_CASE("in 10,000 random tins the best pieces are those of judging and sorting the whole tin") {
  Dice dice{std::mt19937_64(41)};
  std::size_t offered = 0, ties = 0, borderline = 0, tangs_decide = 0;
  for (int i = 0; i < 10'000; ++i) {
    const auto s = random_settings(dice);
    const auto wanted = random_wanted(dice, s);
    const Tin tin = random_tin(dice, wanted, s);
    const pieces::Ask ask{dice.one_in(2), dice.one_in(3)};
    auto expected = by_brute_force(tin, wanted, s, ask);
    offered += expected.size();
    for (std::size_t k = 1; k < expected.size(); ++k) {
      borderline += expected[k].verdict.outcome == Outcome::borderline;
      ties += expected[k].verdict.trim == expected[k - 1].verdict.trim &&
              expected[k].verdict.finish == expected[k - 1].verdict.finish;
      tangs_decide += expected[k].verdict.trim == expected[k - 1].verdict.trim &&
                      expected[k].verdict.finish == expected[k - 1].verdict.finish &&
                      expected[k].verdict.tang_to_nip > 0_mm && expected[k - 1].verdict.tang_to_nip == 0_mm;
    }
    const auto how_many = static_cast<std::size_t>(dice.upto(static_cast<int>(expected.size()) + 2));
    if (expected.size() > how_many) expected.resize(how_many);
    const auto found = pieces::best(VectorSource(tin, dice.one_in(2)), wanted, s, ask, how_many);
    if (ids(found) != ids(expected)) {
      FAIL("tin " << i << ": asked for " << how_many << ", got " << found.size() << " of "
                  << expected.size());
    }
    for (std::size_t k = 0; k < found.size(); ++k) {
      if (!(found[k].verdict == expected[k].verdict) || !(found[k].piece == expected[k].piece))
        FAIL("tin " << i);
    }
  }
  // The tins are worth nothing if little fits, if nothing ties, or if no limit is met.
  CHECK(offered > 50'000);
  CHECK(ties > 15'000);
  CHECK(borderline > 5'000);
  CHECK(tangs_decide > 500);
}

TEST_CASE("the least trim comes first, then the nearest to the target, then the least work") {
  const Tin tin{in_tin(1, 54_mm, 2),   in_tin(2, 52_mm, 1),   in_tin(3, 51.4_mm, 0), in_tin(4, 51.5_mm, 0),
                in_tin(5, 51.8_mm, 1), in_tin(6, 52.6_mm, 1), in_tin(7, 52.6_mm, 2), in_tin(8, 50_mm, 0)};
  // 4: trim 0, on target. 3: trim 0. 2: 0.5, on target. 5: 0.5, finishes at 51.3. 6 and 7: 1.1, one end
  // before two. 1: 2.5.
  CHECK(ids(pieces::best(VectorSource(tin), rounded_52(), {}, {}, 10)) ==
        std::vector<std::int64_t>{4, 3, 2, 5, 6, 7, 1});
  CHECK(ids(pieces::best(VectorSource(tin), rounded_52(), {}, {}, 2)) == std::vector<std::int64_t>{4, 3});
  CHECK(pieces::best(VectorSource(tin), rounded_52(), {}, {}, 0).empty());
  CHECK(pieces::best(VectorSource({}), rounded_52(), {}, {}, 5).empty());
}

TEST_CASE("a borderline piece comes after every sure one, however much that one loses") {
  const Tin tin{in_tin(1, 50.95_mm, 0), in_tin(2, 59_mm, 2)};
  CHECK(ids(pieces::best(VectorSource(tin), rounded_52(), {}, {}, 5)) == std::vector<std::int64_t>{2, 1});
}

TEST_CASE("among equal pieces those of the same lot come first, then the oldest") {
  Tin tin{in_tin(1, 51.5_mm, 0), in_tin(2, 51.5_mm, 0), in_tin(3, 51.5_mm, 0), in_tin(4, 51.5_mm, 0)};
  for (auto& piece : tin)
    piece.facts.lot = piece.facts.id == 3 ? 9 : 8;
  tin[1].facts.added = {-5};
  auto wanted = rounded_52();
  CHECK(ids(pieces::best(VectorSource(tin), wanted, {}, {}, 5)) == std::vector<std::int64_t>{2, 1, 3, 4});
  wanted.lot = 9;
  CHECK(ids(pieces::best(VectorSource(tin), wanted, {}, {}, 5)) == std::vector<std::int64_t>{3, 2, 1, 4});
}

TEST_CASE("pulled frets and wasteful pieces are offered only when asked for") {
  const Tin tin{in_tin(1, 51.5_mm, 0, Kind::pulled_fret), in_tin(2, 70_mm, 2, Kind::stick_end),
                in_tin(3, 55_mm, 2)};
  CHECK(ids(pieces::best(VectorSource(tin), rounded_52(), {}, {}, 5)) == std::vector<std::int64_t>{3});
  CHECK(ids(pieces::best(VectorSource(tin), rounded_52(), {}, {true, false}, 5)) ==
        std::vector<std::int64_t>{1, 3});
  CHECK(ids(pieces::best(VectorSource(tin), rounded_52(), {}, {false, true}, 5)) ==
        std::vector<std::int64_t>{3, 2});
}

TEST_CASE("finding the best of a million pieces reads no more than of a thousand") {
  const auto work = [](int count, std::optional<std::int64_t> lot) {
    Dice dice{std::mt19937_64(5)};
    Tin tin;
    tin.reserve(static_cast<std::size_t>(count));
    for (int i = 0; i < count; ++i) {
      tin.push_back(in_tin(i + 1, dice.steps(45_mm, 0.1_mm, 150), dice.upto(2)));
      tin.back().facts.lot = dice.upto(3);
      tin.back().facts.added = {dice.upto(1'000'000)};
    }
    const VectorSource source(tin);
    auto wanted = rounded_52();
    wanted.lot = lot;
    CHECK(pieces::best(source, wanted, {}, {}, 5).size() == 5);
    return source;
  };
  for (const std::optional<std::int64_t> lot :
       {std::optional<std::int64_t>{}, std::optional<std::int64_t>{2}}) {
    const auto small = work(1'000, lot), large = work(1'000'000, lot);
    CAPTURE(small.pages, small.read, large.pages, large.read);
    CHECK(large.pages <= small.pages);
    CHECK(large.pages <= 4);
    CHECK(large.read <= 24);
  }
}

TEST_CASE("pieces that are too good are stepped over, not read through") {
  Tin tin;
  for (int i = 0; i < 20'000; ++i) {
    tin.push_back(in_tin(i + 1, 60_mm + 0.001_mm * i, 2, Kind::stick_end)); // 60 to 80 mm
  }
  tin.push_back(in_tin(20'001, 98_mm, 2, Kind::stick_end)); // leaves 45 for another
  auto wanted = rounded_52();
  wanted.another = 45_mm;
  const VectorSource source(tin);
  CHECK(ids(pieces::best(source, wanted, {}, {}, 5)) == std::vector<std::int64_t>{20'001});
  CHECK(source.read == 1);
}

TEST_CASE("a tin in which nothing fits costs a dozen probes") {
  const VectorSource source({in_tin(1, 40_mm, 2)});
  CHECK(pieces::best(source, rounded_52(), {}, {}, 5).empty());
  CHECK(source.pages <= 12);
  CHECK(source.read == 0);
}

TEST_CASE(
    "where an untouched piece gives way to a dressed one within the caliper's error, the order still holds") {
  board::FitSettings s;
  s.dressing_loss = 1.15_mm; // from 52.05 on a dressed end reaches the least, 50.9; the most is 52
  const pieces::Wanted wanted{board::need(52_mm, EndStyle::rounded, s), {}, {}, {}};
  // 1 and 2 lose 1.15 and finish at 50.91 and 50.94, the nearer first; 3 may drop in untouched and loses
  // nothing.
  const Tin tin{in_tin(1, 52.06_mm, 0), in_tin(2, 52.09_mm, 0), in_tin(3, 52.04_mm, 0)};
  CHECK(ids(pieces::best(VectorSource(tin), wanted, s, {}, 5)) == std::vector<std::int64_t>{3, 2, 1});
}

TEST_CASE("for a bound slot, of equal pieces the one whose tang is right comes first, however young, and one "
          "nipped too far does not come") {
  auto wanted = rounded_52();
  wanted.need.tang = 48_mm;
  Tin tin{in_tin(1, 51.5_mm, 0), in_tin(2, 51.5_mm, 0), in_tin(3, 51.5_mm, 0), in_tin(4, 51.5_mm, 0)};
  tin[1].facts.tang = 49_mm;   // to nip, as 1
  tin[2].facts.tang = 45.4_mm; // 51.5 − 45.4 is more than twice 3
  tin[3].facts.tang = 48_mm;
  tin[3].facts.added = {7};
  CHECK(ids(pieces::best(VectorSource(tin), wanted, {}, {}, 5)) == std::vector<std::int64_t>{4, 1, 2});
}

TEST_CASE("nipped pieces of one length are ranked together, however many stand before the right one") {
  auto wanted = rounded_52();
  wanted.need.tang = 48_mm;
  Tin tin;
  for (int i = 1; i <= 700; ++i) {
    tin.push_back(in_tin(i, 51.5_mm, 0));
    tin.back().facts.tang = i == 690 ? 48_mm : 49_mm;
  }
  tin.push_back(in_tin(701, 51.4_mm, 0));
  tin.back().facts.tang = 48_mm;
  CHECK(ids(pieces::best(VectorSource(tin), wanted, {}, {}, 3)) == std::vector<std::int64_t>{690, 1, 2});
  CHECK(ids(pieces::best(VectorSource(tin), wanted, {}, {}, 701)).back() == 701);
}

TEST_CASE("finding the best for a bound slot reads no more of a million whole pieces than of a thousand") {
  auto wanted = rounded_52();
  wanted.need.tang = 48_mm;
  const auto work = [&](int count) {
    Dice dice{std::mt19937_64(6)};
    Tin tin;
    for (int i = 0; i < count; ++i)
      tin.push_back(in_tin(i + 1, dice.steps(45_mm, 0.1_mm, 150), dice.upto(2)));
    const VectorSource source(tin);
    CHECK(pieces::best(source, wanted, {}, {}, 5).size() == 5);
    return source.read;
  };
  CHECK(work(1'000) <= 40);
  CHECK(work(100'000) <= 40);
}
