#include "pieces/place.hpp"
#include "support/catch.hpp"
#include "support/show.hpp"

using namespace nutward;
using namespace nutward::units::literals;
using board::EndStyle;
using pieces::OpenSlot;
using units::Length;

namespace {

pieces::PieceFacts piece(Length length, int raw_ends) {
  pieces::PieceFacts p;
  p.length = length;
  p.raw_ends = raw_ends;
  return p;
}

OpenSlot slot(std::int64_t job, int n, Length arc, EndStyle style = EndStyle::rounded) {
  return {job, n, board::need(arc, style, {}), std::nullopt, std::nullopt, std::nullopt};
}

std::vector<std::pair<std::int64_t, int>> where(const std::vector<pieces::Placing>& placings) {
  std::vector<std::pair<std::int64_t, int>> out;
  for (const auto& p : placings)
    out.emplace_back(p.slot.job, p.slot.slot);
  return out;
}

using Places = std::vector<std::pair<std::int64_t, int>>;

} // namespace

TEST_CASE("a dressed short fret goes where it drops in untouched, nearest the target first") {
  // 51.3 dressed. Arc 51.8: target 51.3. Arc 52: target 51.5, off 0.2. Arc 51: over most, loses 0.8. Arc 53:
  // too short.
  const std::vector<OpenSlot> open{slot(12, 9, 52_mm), slot(12, 5, 51_mm), slot(12, 14, 53_mm),
                                   slot(7, 3, 51.8_mm)};
  const auto found = pieces::places(piece(51.3_mm, 0), open, {});
  CHECK(where(found) == Places{{7, 3}, {12, 9}, {12, 5}});
  CHECK(found[0].verdict.untouched);
  CHECK(found[2].verdict.trim == 0.8_mm);
}

TEST_CASE("among equal slots the earliest promised day comes first, then the job and the slot") {
  std::vector<OpenSlot> open{slot(4, 2, 52_mm), slot(3, 8, 52_mm), slot(3, 7, 52_mm), slot(5, 1, 52_mm),
                             slot(6, 1, 52_mm)};
  open[3].due = units::Instant{2000};
  open[4].due = units::Instant{1000};
  CHECK(where(pieces::places(piece(51.5_mm, 0), open, {})) == Places{{6, 1}, {5, 1}, {3, 7}, {3, 8}, {4, 2}});
  open[0].lot = 1; // the piece is of lot 0: the job's other frets are not
  open[3].lot = 0;
  CHECK(where(pieces::places(piece(51.5_mm, 0), open, {})) == Places{{6, 1}, {5, 1}, {3, 7}, {3, 8}, {4, 2}});
  open[4].lot = 1;
  CHECK(where(pieces::places(piece(51.5_mm, 0), open, {})) == Places{{5, 1}, {3, 7}, {3, 8}, {6, 1}, {4, 2}});
}

TEST_CASE("a long stick end fits where its rest makes a fret for another slot, and no slot counts as its own "
          "other") {
  const std::vector<OpenSlot> one{slot(1, 1, 45_mm)};
  CHECK(pieces::places(piece(100_mm, 2), one, {}).empty());
  CHECK(pieces::places(piece(100_mm, 2), one, {}, true).size() == 1);
  const std::vector<OpenSlot> two{slot(1, 1, 45_mm), slot(1, 2, 47_mm)};
  // 100 − 47.5 − 0.5 leaves 52 for slot 1; 100 − 45.5 − 0.5 leaves 54 for slot 2. Slot 2 loses less in
  // becoming one fret.
  const auto found = pieces::places(piece(100_mm, 2), two, {});
  CHECK(where(found) == Places{{1, 2}, {1, 1}});
  CHECK(found[0].verdict.leaves == 52_mm);
  CHECK(found[1].verdict.leaves == 54_mm);
  // 92 − 47.5 − 0.5 = 44 is less than the 44.9 that slot 1 needs raw; 92 − 45.5 − 0.5 = 46 less than the 46.9
  // of slot 2.
  CHECK(pieces::places(piece(92_mm, 2), two, {}).empty());
}

TEST_CASE("a slot that wants another crown is left out, and is no reason to keep the rest") {
  std::vector<OpenSlot> open{slot(1, 1, 45_mm), slot(2, 1, 45_mm)};
  open[0].crown_height = 1.2_mm;
  open[1].crown_height = 1.4_mm;
  auto p = piece(45_mm, 2);
  p.crown_height = 1.21_mm;
  CHECK(where(pieces::places(p, open, {})) == Places{{1, 1}});
  p.length = 100_mm;
  CHECK(pieces::places(p, open, {}).empty());
}

TEST_CASE("a borderline slot comes after every sure one, and filed slots take a piece with less overhang") {
  const std::vector<OpenSlot> open{slot(1, 1, 52.4_mm), slot(2, 1, 45_mm),
                                   slot(3, 1, 50_mm, EndStyle::filed)};
  // 51.3 dressed: borderline for 52.4 (least 51.3), trims 6.8 for 45, and 2.7 short of the filed cut of 54.
  const auto found = pieces::places(piece(51.3_mm, 0), open, {});
  CHECK(where(found) == Places{{3, 1}, {2, 1}, {1, 1}});
  CHECK(found[0].verdict.less_overhang);
  CHECK(found[2].verdict.outcome == pieces::Outcome::borderline);
}

TEST_CASE("a nipped piece goes to a bound slot, a whole one to an open slot first of two alike") {
  std::vector<OpenSlot> open{slot(1, 1, 52_mm), slot(2, 1, 52_mm)};
  open[0].need.tang = 48_mm;
  CHECK(where(pieces::places(piece(51.5_mm, 0), open, {})) == Places{{2, 1}, {1, 1}});
  auto nipped = piece(51.5_mm, 0);
  nipped.tang = 48_mm;
  CHECK(where(pieces::places(nipped, open, {})) == Places{{1, 1}});
}
