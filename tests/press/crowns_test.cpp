// The frets of a board as a bar meets them.
#include "press/bench.hpp"

#include <cmath>

using namespace nutward;
using namespace nutward::press;
using namespace nutward::press::tests;

TEST_CASE("a place is told by the slots on either side, from the nut to the last") {
  const auto all = crowns(even_board(3));
  CHECK(between(all, 0_mm) == Between{0, 1});
  CHECK(between(all, all[0].at) == Between{1, 2});
  CHECK(between(all, all[1].at - Length{1}) == Between{1, 2});
  CHECK(between(all, all[1].at + Length{1}) == Between{2, 3});
  CHECK(between(all, all[2].at + 10_mm) == Between{3, 3});
}

TEST_CASE("a fret is as long as the board's surface, and reaches as far across as its ends stand out") {
  board::Board b = even_board();
  b.surface = board::Cylinder{200_mm};
  b.zero_fret = true;
  const auto all = crowns(b, 2_mm);
  REQUIRE(all.size() == 23);
  CHECK(all.front().slot == 0);
  CHECK(all.front().at == 0_mm);
  for (const Crown& c : all) {
    CHECK(c.length.mm() == Approx(2 * 200 * std::asin(50.0 / 400)));
    CHECK(c.across == 50_mm);
    CHECK(c.half_width == 27_mm);
    CHECK(c.radius == 200_mm);
    CHECK(c.nutmost == c.at);
    CHECK(c.bodymost == c.at);
  }
}

TEST_CASE("load goes by the length along the surface, so a narrow board gets less by itself") {
  board::Board narrow = even_board();
  narrow.nut_width = narrow.far_width = 35_mm;
  Work work = work_on(narrow, inches(0.10));
  work.bed = even_work().bed;
  const Plan plan = passes(work, shop(), bar_of(inches(4.40)));
  REQUIRE(groups(plan) == groups(passes(even_work(), shop(), bar_of(inches(4.40)))));
  CHECK(plan.passes[0].load.lbf() == Approx(1670)); // 6·35·35.5 = 7455 N = 1676 lb
  CHECK(plan.passes[0].limited == LimitedBy::line_load);
}

// A measured board (diatonic, historic): the gaps are not those of equal temperament.
TEST_CASE("on measured positions the passes follow what was measured") {
  board::Board b = even_board(8);
  b.positions = {60_mm, 110_mm, 135_mm, 180_mm, 220_mm, 255_mm, 272_mm, 300_mm};
  b.far_at = 8; // a slot of this board
  Work work = work_on(b, 2.5_mm);
  work.bed = good_bed();
  // By hand, a bar of 100 mm: 5-8 spans 82.5 and its ends at 210 and 310 clear 4, at 180, by 28.75. 4-7 spans
  // 94.5, its ends at 176 and 276 clear 8 and 3. 3-6 spans 122.5: too long; 4-6 lies inside. 3-5 spans 87.5,
  // its ends at 127.5 and 227.5. 2-4 spans 72.5, its ends at 95 and 195. 1-3 spans 77.5, its ends at 47.5 and
  // 147.5.
  const Plan plan = passes(work, shop(), bar_of(100_mm));
  CHECK(groups(plan) == "5-8, 4-7, 3-5, 2-4, 1-3");
}
