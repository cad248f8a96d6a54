// Off centre, one fret again, and where a job stands.
#include "press/bench.hpp"
#include "press/rework.hpp"
#include "press/standing.hpp"

#include <cmath>

using namespace nutward;
using namespace nutward::press;
using namespace nutward::press::tests;

namespace {

const Bar long_bar = bar_of(inches(4.40));

std::vector<Pass> nine_passes() {
  return passes(even_work(), shop(), long_bar).passes;
}

} // namespace

TEST_CASE("the product of the shares along and across is what a fret's end gets") {
  const Work work = even_work();
  const auto s = shares(work, shop(), 9, 14, lbf(2000), {5_mm, 2_mm});
  REQUIRE(s);
  const auto along = shares(work, shop(), 9, 14, lbf(2000), {5_mm, 0_mm});
  for (std::size_t i = 0; i < 6; ++i) {
    CHECK(s->frets[i].share.n == Approx(along->frets[i].share.n));
    CHECK(s->frets[i].at_end == Approx(along->frets[i].times * (1 + 6 * 2 / 50.0)));
    CHECK(s->frets[i].n_per_mm == Approx(s->frets[i].share.n / 50 * 1.24));
  }
  CHECK(s->worst == Approx(s->frets.back().at_end)); // bodyward, so the last takes most
  CHECK(s->frets.back().times > 1);
  CHECK(s->frets.front().times < 1);
  CHECK(s->cut.lbf() == Approx(std::floor(200 / s->worst) * 10));
}

TEST_CASE("a load that leaves the supports tips the bar, along and across") {
  const Work work = even_work();
  const auto tips = [&](Off off) { return !shares(work, shop(), 9, 14, lbf(2000), off); };
  CHECK_FALSE(tips({40_mm, 0_mm}));
  CHECK(tips({60_mm, 0_mm}));
  CHECK_FALSE(tips({0_mm, 24.9_mm}));
  CHECK(tips({0_mm, 25_mm}));
  CHECK(tips({0_mm, -25_mm}));
}

TEST_CASE("a side is favoured by a twelfth of the shortest fret at most, with two thirds of the load") {
  const Favour f = favour(even_work(), shop(), 9, 14, lbf(2000));
  CHECK(f.most.mm() == Approx(50.0 / 12).epsilon(1e-6));
  CHECK(f.load.lbf() == Approx(1330)); // 1333 by a gauge of 10 lb
  const auto there = shares(even_work(), shop(), 9, 14, lbf(2000), {0_mm, f.most});
  CHECK(there->worst == Approx(1.5).epsilon(1e-6));
  CHECK(there->zone == Zone::amber);
  CHECK(there->cut == f.load);
  CHECK(shares(even_work(), shop(), 9, 14, lbf(2000), {0_mm, f.most + 1_mm})->zone == Zone::over);
}

// Common practice, no source.
TEST_CASE("one high fret under the long bar gets 2,500 lb after 2,000, then at most the press's 3,000") {
  const auto first = one_fret(even_work(), shop(), long_bar, 10, {});
  REQUIRE(first.fret);
  CHECK(first.fret->load.lbf() == Approx(1990)); // 8 to 12, as usual for five frets
  CHECK(first.fret->under == std::vector<int>{8, 9, 10, 11, 12});
  CHECK_FALSE(first.fret->again);
  const auto second = one_fret(even_work(), shop(), long_bar, 10, lbf(2000));
  REQUIRE(second.fret);
  CHECK(second.fret->load.lbf() == Approx(2500));
  CHECK(second.fret->least.lbf() == Approx(2300));
  CHECK(second.fret->first.lbf() == Approx(1250));
  CHECK(second.fret->limited == LimitedBy::step);
  CHECK(second.fret->load_at == even_work().crowns[9].at);
  CHECK(second.fret->n_per_mm == Approx(second.fret->load.n / 50));
  const auto third = one_fret(even_work(), shop(), long_bar, 10, lbf(2500));
  CHECK(third.fret->load.lbf() == Approx(3000));
  CHECK(third.fret->limited == LimitedBy::press);
  const auto fourth = one_fret(even_work(), shop(), long_bar, 10, lbf(3000));
  REQUIRE(only<AtLimit>(fourth.refused) != nullptr);
  CHECK(only<AtLimit>(fourth.refused)->most == Limit{lbf(3000), LimitedBy::press});
  Equipment e = shop();
  e.rework_limit = lbf(2200);
  CHECK(one_fret(even_work(), e, long_bar, 10, lbf(2000)).fret->load.lbf() == Approx(2200));
  CHECK(one_fret(even_work(), e, long_bar, 10, lbf(2000)).fret->limited == LimitedBy::rework_limit);
}

// Common practice, no source.
TEST_CASE("the narrow bar climbs from 1,000 lb by way of 1,500 to 2,000, a rung at a time") {
  const auto at = [](std::optional<Force> last) {
    return one_fret(even_work(), with_ladder(), narrow_bar(), 9, last);
  };
  CHECK(at({}).fret->load.lbf() == Approx(1000));
  CHECK(at(lbf(1000)).fret->load.lbf() == Approx(1500));
  CHECK(at(lbf(990)).fret->load.lbf() == Approx(1500)); // the gauge's error: it was the first rung
  CHECK(at(lbf(900)).fret->load.lbf() == Approx(1000));
  CHECK(at(lbf(1200)).fret->load.lbf() == Approx(1500));
  CHECK(at(lbf(1500)).fret->load.lbf() == Approx(2000));
  CHECK(only<LadderDone>(at(lbf(2000)).refused)->highest == Approx(lbf(2000).n / 50));
  CHECK(at(lbf(1000)).fret->under == std::vector<int>{9});
  Equipment weak = with_ladder();
  weak.press_rating = lbf(1200);
  CHECK(one_fret(even_work(), weak, narrow_bar(), 9, lbf(1000)).fret->load.lbf() == Approx(1200));
  CHECK(only<AtLimit>(one_fret(even_work(), weak, narrow_bar(), 9, lbf(1200)).refused) != nullptr);
  Work soft = even_work();
  soft.soft_wood = true;
  CHECK(one_fret(soft, with_ladder(), narrow_bar(), 9, {}).fret->load.lbf() == Approx(700));
}

TEST_CASE("a narrow bar without a ladder of the shop's own is not advised") {
  CHECK(only<NoLadder>(one_fret(even_work(), shop(), narrow_bar(), 9, {}).refused) != nullptr);
  CHECK_FALSE(next_rung({}, shop()));
  CHECK(only<NoLadder>(passes(even_work(), shop(), narrow_bar()).refused) != nullptr);
  CHECK_NOTHROW(check(with_ladder(), units::ForceUnit::lbf));
}

TEST_CASE("a step is one step, from 15 to 25 per cent, and never over the limit, from any load") {
  const Equipment e = shop();
  const Limit most{lbf(3000), LimitedBy::press};
  for (int load = 20; load <= 4000; load += 10) {
    const auto step = next_step(lbf(load), most, e);
    INFO(load << " lb");
    if (load >= 3000) {
      REQUIRE_FALSE(step);
      continue;
    }
    if (!step) {
      REQUIRE(load < 40); // a quarter of it is less than the gauge shows
      continue;
    }
    REQUIRE(step->most.n <= most.load.n);
    REQUIRE(step->most.lbf() > load);
    REQUIRE(step->most.lbf() <= load * 1.25 + 1e-6);
    REQUIRE(step->least <= step->most);
    REQUIRE(step->least.lbf() > load - 1e-6);
  }
}

TEST_CASE("the long bar gives way to crowns at its ends by the least that will do, and the load does not") {
  const Work work = even_work();
  int moved = 0;
  for (int slot = 3; slot <= 11; ++slot) {
    const auto answer = one_fret(work, shop(), long_bar, slot, lbf(1000));
    INFO("slot " << slot);
    REQUIRE(answer.fret);
    const Length at = work.crowns[static_cast<std::size_t>(slot - 1)].at;
    const Length away = units::abs(answer.fret->bar_at - at);
    CHECK(answer.fret->load_at == at);
    CHECK(away <= Length{long_bar.length.nm / 4});
    const auto stands = [&](Length middle) {
      for (const Crown& c : work.crowns) {
        const double left =
            std::abs((c.at - middle).mm()) - work.crown_width.mm() / 2 - long_bar.length.mm() / 2;
        const bool under = left <= -work.crown_width.mm() + 1e-5;
        if (!under && left < 1 - 1e-5) return false;
      }
      return middle.mm() - long_bar.length.mm() / 2 >= 1 - 1e-5;
    };
    CHECK(stands(answer.fret->bar_at));
    for (Length less = 0_mm; less < away; less += 0.05_mm) {
      CHECK_FALSE(stands(at + less));
      CHECK_FALSE(stands(at - less));
    }
    moved += away > 0_mm ? 1 : 0;
  }
  CHECK(moved > 0);
}

TEST_CASE("a fret at the end of the board has none beyond it, and a long bar over it would tip") {
  Work work = even_work();
  work.bed.body_from.reset();
  const auto last = one_fret(work, shop(), long_bar, 22, {});
  REQUIRE(only<Tips>(last.refused) != nullptr);
  CHECK(only<Tips>(last.refused)->slot == 22);
  CHECK(one_fret(work, with_ladder(), narrow_bar(), 22, {}).fret);
  CHECK_FALSE(one_fret(even_work(), shop(), long_bar, 16, {}).fret); // over the body
  CHECK(only<Tips>(one_fret(even_work(), shop(), long_bar, 1, {}).refused) != nullptr);
  CHECK_THROWS_AS(one_fret(even_work(), shop(), long_bar, 30, {}), BadWork);
  CHECK_THROWS_AS(one_fret(even_work(), shop(), long_bar, 9, Force{0}), BadWork);
}

TEST_CASE("the next pass follows the last one reported, and at first it is the bodyward one") {
  const auto plan = nine_passes();
  CHECK(next_pass(plan, {})->hi == 14);
  std::vector<Pressed> told{{{9, 10, 11, 12, 13, 14}, lbf(2000)}};
  CHECK(next_pass(plan, told)->hi == 13);
  told.push_back({{8, 9, 10, 11, 12, 13}, {}});
  const Standing s = standing(plan, told, lbf(2000));
  CHECK(s.last == 1);
  CHECK(s.next == 2);
  CHECK(s.passes[0] == Done::done);
  CHECK(s.never == std::vector<int>{1, 2, 3, 4, 5, 6, 7});
  CHECK(s.beyond.empty());
  CHECK_FALSE(s.all_pressed);
}

TEST_CASE("a pass that came halfway is the next, one that only got to 1,800 is done but low") {
  const auto plan = nine_passes();
  std::vector<Pressed> told{{{9, 10, 11, 12, 13, 14}, lbf(1000)}};
  CHECK(standing(plan, told, {}).passes[0] == Done::halfway);
  CHECK(next_pass(plan, told)->hi == 14);
  told.push_back({{9, 10, 11, 12, 13, 14}, lbf(1800)});
  CHECK(standing(plan, told, {}).passes[0] == Done::low);
  CHECK(next_pass(plan, told)->hi == 13);
  told.push_back({{9, 10, 11, 12, 13, 14}, lbf(2000)});
  CHECK(standing(plan, told, {}).passes[0] == Done::done);
}

TEST_CASE("a pass that was skipped is told, and comes last") {
  const auto plan = nine_passes();
  std::vector<Pressed> told{{{8, 9, 10, 11, 12, 13}, {}}};
  const Standing s = standing(plan, told, {});
  CHECK(s.skipped == std::vector<std::size_t>{0});
  CHECK(s.next == 2);
  for (std::size_t i = 2; i < plan.size(); ++i)
    told.push_back({plan[i].slots, {}});
  CHECK(standing(plan, told, {}).next == 0);
  CHECK(standing(plan, told, {}).never == std::vector<int>{14});
  CHECK_FALSE(standing(plan, told, {}).all_done);
}

TEST_CASE("the lot in one report is all of it, and a load beyond the limit is marked") {
  const auto plan = nine_passes();
  const std::vector<Pressed> lot{{{1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14}, lbf(2100)}};
  const Standing s = standing(plan, lot, lbf(2000));
  CHECK(s.all_done);
  CHECK(s.beyond == std::vector<std::size_t>{0});
  CHECK(s.last == 8);
  CHECK(next_pass(plan, lot) == nullptr);
  CHECK_FALSE(standing({}, lot, {}).all_pressed);
}

TEST_CASE("groups of one's own count fret by fret") {
  const auto plan = nine_passes();
  const std::vector<Pressed> own{{{11, 12, 13, 14}, {}}, {{7, 8, 9, 10}, {}}};
  const Standing s = standing(plan, own, {});
  CHECK(s.passes[0] == Done::in_parts);
  CHECK(s.passes[2] == Done::in_parts);
  CHECK_FALSE(s.last);
  CHECK(s.next == 3); // 6-10
}

TEST_CASE(
    "a bar that would have to go further than a quarter of its length off the fret is not used for it") {
  // Crowns 2.5 mm wide every 3 mm, from 25 to 75 mm on either side of the one: nowhere among them can an end
  // of a bar 100 mm long stand. Moved by 27 mm it could.
  Work work = even_work();
  const Crown like = work.crowns[0];
  work.crowns.clear();
  const auto add = [&](double at) {
    Crown c = like;
    c.slot = static_cast<int>(work.crowns.size()) + 1;
    c.at = c.nutmost = c.bodymost = units::from_mm(200 + at);
    work.crowns.push_back(c);
  };
  for (double at = -76; at <= -24; at += 3)
    add(at);
  add(0);
  const int slot = work.crowns.back().slot;
  for (double at = 25; at <= 76; at += 3)
    add(at);
  work.bed.body_from.reset();
  check(work);
  const auto answer = one_fret(work, shop(), bar_of(100_mm), slot, {});
  REQUIRE(only<EndOnCrown>(answer.refused) != nullptr);
  CHECK(only<EndOnCrown>(answer.refused)->slot < slot);
}
