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

TEST_CASE("with the load off its place a card has the shares of that, and where it should stand") {
  const Work work = even_work();
  const Bar bar = bar_of(inches(4.40));
  const Pass pass = passes(work, shop(), bar).passes[3]; // 6 to 10
  const Off off{12_mm, {}};
  const auto s = shares(work, shop(), pass.lo, pass.hi, pass.load, off);
  REQUIRE(s);
  const Card c = card(even_board(), work, bar, pass, off, *s);
  double sum = 0, moment = 0;
  for (const CardFret& f : c.frets) {
    sum += f.share.n;
    moment += f.share.n * f.bass.x_mm;
  }
  CHECK(sum == Approx(pass.load.n));
  CHECK(moment / sum == Approx(pass.load_at.mm() + 12)); // the frets bear where the load stands
  CHECK(c.load_at.x_mm == Approx(pass.load_at.mm() + 12));
  CHECK(c.meant_at->x_mm == Approx(pass.load_at.mm()));
  CHECK(c.frets[6].zone >= c.frets[2].zone); // 10 has more than 6
}

TEST_CASE("one fret again takes all of the load on its card, whatever else is under the bar") {
  const Work work = even_work();
  const Bar bar = bar_of(inches(4.40));
  const auto answer = one_fret(work, shop(), bar, 11, lbf(2000));
  REQUIRE(answer.fret);
  const Card c = card(even_board(), work, bar, *answer.fret);
  CHECK_FALSE(c.room);
  CHECK(c.frets.size() == answer.fret->under.size() + 4);
  for (const CardFret& f : c.frets) {
    CHECK(f.share == (f.slot == 11 ? answer.fret->load : Force{}));
    CHECK(f.under == (std::count(answer.fret->under.begin(), answer.fret->under.end(), f.slot) == 1));
  }
  CHECK(c.load_at.x_mm == Approx(answer.fret->load_at.mm()));
}
