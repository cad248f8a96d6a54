// What a pass card shows.
#include "press/bench.hpp"
#include "press/card.hpp"

using namespace nutward;
using namespace nutward::press;
using namespace nutward::press::tests;

TEST_CASE("a card shows the frets under the bar with their shares, and two on either side without") {
  const Work work = even_work();
  const Bar bar = bar_of(inches(4.40));
  const Pass pass = passes(work, shop(), bar).passes[3]; // 6 to 10
  const Card c = card(even_board(), work, bar, pass);
  REQUIRE(c.frets.size() == 9);
  CHECK(c.frets.front().slot == 4);
  CHECK(c.frets.back().slot == 12);
  double sum = 0;
  for (const CardFret& f : c.frets) {
    CHECK(f.under == (f.slot >= 6 && f.slot <= 10));
    const double x = work.crowns[static_cast<std::size_t>(f.slot - 1)].at.mm();
    CHECK(f.bass.x_mm == Approx(x));
    CHECK(f.bass.y_mm == Approx(-25));
    CHECK(f.treble.y_mm == Approx(25));
    // Nothing beside the bar lies under it.
    const bool within = x > c.bar.from.mm() && x < c.bar.to.mm();
    CHECK(within == f.under);
    sum += f.share.n;
  }
  CHECK(sum == Approx(pass.load.n));
  CHECK(c.bar.to - c.bar.from == inches(4.40));
  CHECK(c.load_at.x_mm == Approx(pass.load_at.mm()));
  CHECK(c.load_at.y_mm == 0);
}

TEST_CASE("a card at the nut has nothing beyond it, and empty slots are not shown") {
  Work work = even_work();
  const Bar bar = bar_of(inches(4.40));
  work.crowns[4].seated = false; // 5
  const Plan plan = passes(work, shop(), bar);
  const Card c = card(even_board(), work, bar, plan.passes.back()); // 1 to 4
  REQUIRE(c.frets.size() == 6);
  CHECK(c.frets.front().slot == 1);
  CHECK(c.frets[4].slot == 6);
  CHECK_FALSE(c.frets[4].under);
}
