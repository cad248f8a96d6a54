// What is held or planned stays.
#include "cutting/cases.hpp"

#include <algorithm>

using namespace cases;

namespace {

std::vector<Cutting> as_cuttings(const cutting::Plan& plan) {
  std::vector<Cutting> out;
  for (const cutting::Use& use : plan.uses) {
    out.push_back({use.source, {}});
    for (const cutting::Fret& fret : use.frets)
      out.back().slots.push_back(fret.slot);
  }
  return out;
}

std::size_t in_common(const std::vector<Cutting>& a, const std::vector<Cutting>& b) {
  return static_cast<std::size_t>(std::count_if(
      a.begin(), a.end(), [&](const Cutting& c) { return std::find(b.begin(), b.end(), c) != b.end(); }));
}

// Three boards, some pieces, sticks.
Problem three_jobs() {
  Problem p;
  p.least_useful = 43_mm;
  for (int job = 0; job < 3; ++job)
    for (int n = 0; n < 22; ++n) {
      p.slots.push_back(slot(Length{43'100'000 + n * 570'000 + job * 90'000}, job));
      p.slots.back().job = job;
      p.slots.back().slot = n + 1;
    }
  for (int i = 0; i < 12; ++i)
    p.pieces.push_back(piece(Length{43'000'000 + i * 1'300'000}, i % 3));
  p.pieces.push_back(piece(151.5_mm, 2));
  p.stock = {stick(610_mm, 10, 2), stick(300_mm, 2, 2)};
  return p;
}

} // namespace

TEST_CASE("the same problem gives the same plan") {
  const Problem p = three_jobs();
  CHECK(as_cuttings(cutting::plan(p, {})) == as_cuttings(cutting::plan(p, {})));
}

TEST_CASE("a plan that nothing has changed for stays as it is") {
  Problem p = three_jobs();
  const std::vector<Cutting> before = as_cuttings(cutting::plan(p, {}));
  p.previous = before;
  CHECK(in_common(before, as_cuttings(cutting::plan(p, {}))) == before.size());
}

TEST_CASE("when a slot is served and its piece gone, the rest of the plan stays") {
  Problem p = three_jobs();
  p.previous = as_cuttings(cutting::plan(p, {}));
  const auto single = std::find_if(p.previous.begin(), p.previous.end(), [](const Cutting& c) {
    return c.source.from == From::piece && c.slots.size() == 1;
  });
  REQUIRE(single != p.previous.end());
  // Indices must stay, so that the plans can be compared: the piece is held elsewhere, the slot held by a
  // stick.
  p.pieces[single->source.index].held_elsewhere = true;
  p.stock.push_back(stick(60_mm));
  p.held = {{{From::stock, 2}, {single->slots.front()}}};
  const auto after = cutting::plan(p, {});
  check_plan(p, after);
  CHECK(in_common(p.previous, as_cuttings(after)) == p.previous.size() - 1);
}

TEST_CASE("one slot more moves nothing that was planned from the tin") {
  Problem p = three_jobs();
  const auto before = cutting::plan(p, {});
  p.previous = as_cuttings(before);
  p.slots.push_back(slot(48.3_mm, 3));
  const auto after = cutting::plan(p, {});
  check_plan(p, after);
  CAPTURE(before.cost.sticks, before.cost.taken, after.cost.sticks, after.cost.taken, before.cost.scrap,
          after.cost.scrap);
  CHECK(after.unserved.empty());
  CHECK(in_common(p.previous, as_cuttings(after)) >= p.previous.size() - 1);
}

TEST_CASE("a last plan that is no longer the best gives way") {
  Problem p;
  p.least_useful = 43_mm;
  p.slots = {slot(51_mm)};
  p.stock = {stick(610_mm, 1)};
  p.previous = as_cuttings(cutting::plan(p, {}));
  CHECK(p.previous.front().source.from == From::stock);
  p.pieces = {piece(50.4_mm, 0)};
  const auto after = as_cuttings(cutting::plan(p, {}));
  CHECK(after == std::vector<Cutting>{{{From::piece, 0}, {0}}});
}

TEST_CASE(
    "what is held stays though another piece would do better, and a borderline one that a person chose too") {
  Problem p;
  p.least_useful = 43_mm;
  p.slots = {slot(52_mm), slot(50_mm)}; // least 50.9 and 48.9
  p.pieces = {piece(51.5_mm, 0), piece(50.95_mm, 0), piece(56_mm, 2)};
  p.stock = {stick(610_mm, 1)};
  p.held = {{{From::piece, 1}, {0}}, {{From::piece, 2}, {1}}};
  const auto plan = cutting::plan(p, {});
  CHECK(as_cuttings(plan) == p.held);
  CHECK(plan.uses[0].held);
  CHECK(plan.faults.empty());
  CHECK(plan.cost.scrap == 5.5_mm); // 56 − two dressings − target 49.5
  CHECK(plan.cost.sticks == 0);
}

TEST_CASE("a list of what was planned that names a slot twice serves it once, and a great many sticks cost "
          "nothing") {
  Problem p;
  p.settings = {};
  p.least_useful = 40_mm;
  for (int n = 1; n <= 2; ++n) {
    cutting::Slot slot;
    slot.job = 1;
    slot.slot = n;
    slot.need = board::need(50_mm, board::EndStyle::rounded, p.settings);
    p.slots.push_back(slot);
  }
  p.stock.push_back({cutting::StockKind::stick, 1, 600_mm, 2'000'000'000, 0, {}});
  p.previous = {{{cutting::From::stock, 0}, {0, 0}}};
  p.worth_moving = 60_mm;
  const cutting::Plan plan = cutting::plan(p, {});
  std::vector<std::size_t> served;
  for (const cutting::Use& use : plan.uses) {
    for (const cutting::Fret& fret : use.frets)
      served.push_back(fret.slot);
  }
  std::sort(served.begin(), served.end());
  CHECK(served == std::vector<std::size_t>{0, 1});
}
