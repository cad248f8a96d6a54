// What is not pressed, and why, with its numbers.
#include "press/bench.hpp"

#include <cmath>

using namespace nutward;
using namespace nutward::press;
using namespace nutward::press::tests;

namespace {

const Bar long_bar = bar_of(inches(4.40));

Plan plan_of(const Work& work, const Equipment& e = shop(), const Bar& bar = long_bar) {
  return passes(work, e, bar);
}

const Refusal* of_slot(const Plan& plan, int slot) {
  for (const Refusal& r : plan.slots) {
    if (r.lo == slot) return &r;
  }
  return nullptr;
}
template <class R>
const R* why_not(const Plan& plan, int slot) {
  const Refusal* r = of_slot(plan, slot);
  return r == nullptr ? nullptr : why<R>(r->why);
}

std::string bad_field(const Equipment& e) {
  try {
    check(e, units::ForceUnit::lbf);
  } catch (const BadEquipment& bad) {
    return bad.field;
  }
  return "none";
}

} // namespace

TEST_CASE("nothing is pressed before the cradle, the head, what bridges and the glue have been spoken of") {
  Work work = even_work();
  work.bed = {};
  const Plan plan = plan_of(work);
  CHECK(plan.passes.empty());
  REQUIRE(plan.refused.size() == 4);
  CHECK(why<NotCradled>(plan.refused[0]) != nullptr);
  CHECK(why<HeadNotClear>(plan.refused[1]) != nullptr);
  CHECK(why<NeckBridged>(plan.refused[2]) != nullptr);
  CHECK(why<FreshGlue>(plan.refused[3]) != nullptr);
  work.bed = good_bed();
  work.bed.glue_set = false;
  CHECK(only<FreshGlue>(plan_of(work).refused) != nullptr);
}

TEST_CASE("a press without a known plate, or out of service, gets no load") {
  Equipment e = shop();
  e.press_rating.reset();
  e.gauge_rating = lbf(5000);
  CHECK(only<NoPlate>(plan_of(even_work(), e).refused) != nullptr);
  CHECK(plan_of(even_work(), e).passes.empty());
  e = shop();
  e.in_service = false;
  CHECK(only<OutOfService>(plan_of(even_work(), e).refused) != nullptr);
}

TEST_CASE("a bar longer than the board is refused with both lengths") {
  Work work = work_on(even_board(3), inches(0.10));
  work.bed = good_bed();
  const auto plan = plan_of(work);
  const auto* why = only<LongerThanBoard>(plan.refused);
  REQUIRE(why != nullptr);
  CHECK(why->bar == inches(4.40));
  CHECK(why->board.mm() / 25.4 == Approx(25.4 * (1 - std::exp2(-3 / 12.0))));
}

TEST_CASE("nothing is pressed over the body, a bare end, a hollow or beyond the reach, whichever is said") {
  Work work = even_work();
  const Plan over = plan_of(work);
  REQUIRE(why_not<OverBody>(over, 15) != nullptr);
  CHECK(why_not<OverBody>(over, 15)->from == work.crowns[13].at);
  CHECK(of_slot(over, 14) == nullptr);
  CHECK(over.slots.size() == 8);
  CHECK(over.slots.front().lo == 22);
  work.bed.body_from.reset();
  work.bed.bare_from = work.crowns[14].at;
  const Plan bare = plan_of(work);
  CHECK(bare.passes.front().hi == 15);
  REQUIRE(why_not<Unsupported>(bare, 22) != nullptr);
  CHECK(why_not<Unsupported>(bare, 22)->slot == 22);
  work.bed.bare_from.reset();
  work.bed.voids.push_back({0_mm, inches(2)}); // slot 1 lies over a rod's access
  const Plan hollow = plan_of(work);
  REQUIRE(why_not<OverVoid>(hollow, 1) != nullptr);
  CHECK(why_not<OverVoid>(hollow, 1)->hollow == Stretch{0_mm, inches(2)});
  CHECK(hollow.passes.back().lo == 2);
  Equipment e = shop();
  e.reach = inches(10);
  const Plan near = plan_of(even_work(), e);
  CHECK(near.passes.front().bar_at <= *e.reach);
  REQUIRE(why_not<BeyondReach>(near, 14) != nullptr);
  CHECK(why_not<BeyondReach>(near, 14)->bar_at > *e.reach);
}

TEST_CASE("the end of a bar on a crown asks for a bar of another length, and one of that length fits") {
  Work work = even_work();
  work.crowns[5].to_press = false; // 6 stays as it is: 7 to 9 alone would have the bar's end on it
  const Plan plan = plan_of(work);
  const auto one = one_group(work, shop(), long_bar, 7, 9);
  const auto* end = only<EndOnCrown>(one.refused);
  REQUIRE(end != nullptr);
  CHECK(end->slot == 6);
  CHECK(end->clear < 1_mm);
  CHECK(end->shortest.mm() / 25.4 == Approx(25.4 * (std::exp2(-7 / 12.0) - std::exp2(-9 / 12.0)) + 0.1));
  CHECK(end->longest >= end->shortest);
  CHECK(one_group(work, shop(), bar_of(end->longest), 7, 9).pass);
  CHECK(one_group(work, shop(), bar_of(end->shortest), 7, 9).pass);
  CHECK_FALSE(one_group(work, shop(), bar_of(end->longest + Length{1}), 7, 9).pass);
  CHECK_FALSE(one_group(work, shop(), bar_of(end->shortest - Length{1}), 7, 9).pass);
  CHECK(only<OtherFret>(one_group(work, shop(), long_bar, 5, 8).refused)->slot == 6);
  CHECK(plan.passes.size() < 9);
}

TEST_CASE("near a nut that is in place the bar may not reach over it; without the nut it may") {
  Work work =
      even_work(); // where there are further frets they are always nearer to the bar's end than the nut
  for (Crown& c : work.crowns)
    c.seated = c.slot <= 2;
  const auto one = one_group(work, shop(), long_bar, 1, 2);
  const auto* nut = only<OnNut>(one.refused);
  REQUIRE(nut != nullptr);
  CHECK(nut->clear < 0_mm);
  const auto fits = one_group(work, shop(), bar_of(nut->longest), 1, 2);
  REQUIRE(fits.pass);
  CHECK(units::abs(nut->longest + 2_mm - 2 * fits.pass->bar_at) <= Length{1});
  work.nut_in_place = false;
  CHECK(one_group(work, shop(), long_bar, 1, 2).pass);
}

TEST_CASE("one fret alone under a long bar would tip it, and is left to the narrow one") {
  Work work = even_work();
  for (Crown& c : work.crowns)
    c.seated = c.slot == 9;
  const Plan plan = plan_of(work);
  CHECK(plan.passes.empty());
  CHECK(why_not<Tips>(plan, 9)->slot == 9);
  CHECK(why_not<NoFret>(plan, 10)->slot == 10);
  CHECK(groups(plan_of(work, with_ladder(), narrow_bar())) == "9-9");
}

TEST_CASE("a flat sole on a board of 300 mm bears on 7 mm of a fret and is refused") {
  board::Board b = even_board();
  b.surface = board::Cylinder{300_mm};
  Work work = work_on(b, inches(0.10));
  work.bed = good_bed();
  const Plan plan = plan_of(work);
  CHECK(plan.passes.empty());
  const auto* sole = why_not<WrongSole>(plan, 14);
  REQUIRE(sole != nullptr);
  CHECK(sole->bears_on.mm() == Approx(2 * std::sqrt(2 * 0.02 * 300))); // worked out: c²/8R = 0.02
  CHECK_FALSE(sole->sole);
  CHECK(*sole->board == 300_mm);
  Bar bar = long_bar;
  for (const auto& [radius, fits] :
       {std::pair{300_mm, true}, {275_mm, true}, {274_mm, false}, {301_mm, false}}) {
    bar.sole_radius = radius;
    CHECK(plan_of(work, shop(), bar).passes.empty() != fits);
  }
  bar.sole_radius = 200_mm;
  const Plan tight = plan_of(work, shop(), bar);
  CHECK(why_not<WrongSole>(tight, 9)->gap.mm() == Approx(2500.0 / 8 * (1 / 200.0 - 1 / 300.0)));
  Work flat = even_work();
  CHECK(why_not<WrongSole>(plan_of(flat, shop(), bar), 9)->gap.mm() == Approx(2500.0 / 8 / 200));
}

TEST_CASE("on a compound board each group by itself decides whether the sole suits") {
  board::Board b = even_board();
  b.surface = board::Compound{250_mm, 300_mm, 12}; // 50 mm in 322.6
  Work work = work_on(b, inches(0.10));
  work.bed = good_bed();
  Bar bar = long_bar;
  bar.sole_radius = *work.crowns[4].radius; // suits from slot 5 on, up to 25 mm wider
  const Plan plan = plan_of(work, shop(), bar);
  REQUIRE_FALSE(plan.passes.empty());
  CHECK(plan.passes.back().lo == 5);
  for (const Pass& p : plan.passes) {
    for (int slot : p.slots) {
      const Length r = *work.crowns[static_cast<std::size_t>(slot - 1)].radius;
      CHECK(r + 1_mm >= *bar.sole_radius);
      CHECK(r - *bar.sole_radius <= 25.001_mm);
    }
  }
  REQUIRE(why_not<WrongSole>(plan, 22) != nullptr);
  CHECK(why_not<WrongSole>(plan, 22)->bears_on == 0_mm);
  CHECK(why_not<WrongSole>(plan, 22)->gap > 0_mm);
  CHECK(why_not<WrongSole>(plan, 2)->bears_on > 0_mm);
}

TEST_CASE("on a fanned board the outermost ends count: a group of the straight one may not fit") {
  board::Board b = even_board();
  Work straight = work_on(b, inches(0.10));
  b.fan = board::Fan{inches(24.4), 7, 3_mm};
  Work fan = work_on(b, inches(0.10));
  straight.bed = fan.bed = good_bed();
  // Worked out: no end of a slot at 12 lies more than 12.7·(1 in of 25.4) + the square slot's from the other.
  const Crown& twelve = fan.crowns[11];
  const auto ends = board::slot_ends(b, 12);
  CHECK((twelve.bodymost - twelve.nutmost).mm() == Approx(std::abs(ends.bass.x_mm - ends.treble.x_mm)));
  CHECK(twelve.bodymost > twelve.at);
  CHECK(fan.crowns[6].bodymost - fan.crowns[6].nutmost <= Length{1}); // the square one
  CHECK(one_group(straight, shop(), long_bar, 7, 12).pass);
  CHECK(only<TooLong>(one_group(fan, shop(), bar_of(inches(4.36)), 7, 12).refused) != nullptr);
  const auto one = one_group(fan, shop(), long_bar, 9, 14);
  REQUIRE(one.pass);
  CHECK(one.pass->bar_at.mm() == Approx((fan.crowns[8].nutmost + fan.crowns[13].bodymost).mm() / 2));
}

TEST_CASE(
    "a bar must be wider than every fret under it, with what stands out beyond the edges until it is filed") {
  Bar bar = long_bar;
  bar.width = 53_mm;
  CHECK_FALSE(plan_of(even_work(), shop(), bar).passes.empty());
  Work filed = work_on(even_board(), inches(0.10), 2_mm);
  filed.bed = good_bed();
  const Plan plan = plan_of(filed, shop(), bar);
  CHECK(plan.passes.empty());
  CHECK(why_not<TooNarrow>(plan, 1)->fret == 54_mm);
  bar.width = 50_mm;
  CHECK(plan_of(even_work(), shop(), bar).passes.empty());
}

TEST_CASE("a group the wrong way round or off the board is told as that") {
  CHECK_THROWS_WITH(one_group(even_work(), shop(), long_bar, 9, 7), "Frets 9 to 7 are the wrong way round.");
  CHECK_THROWS_WITH(one_group(even_work(), shop(), long_bar, 7, 23), "There is no fret in slot 23.");
  CHECK(only<OverCap>(one_group(even_work(), shop(), bar_of(inches(6)), 6, 14).refused)->frets == 9);
}

TEST_CASE("work that cannot be is refused before anything is worked out") {
  Work work = even_work();
  CHECK_NOTHROW(check(work));
  std::swap(work.crowns[3], work.crowns[4]);
  CHECK_THROWS_AS(check(work), BadWork);
  work = even_work();
  work.crown_width = 6.1_mm;
  CHECK_THROWS_AS(check(work), BadWork);
  work = even_work();
  work.bed.voids.push_back({20_mm, 10_mm});
  CHECK_THROWS_AS(check(work), BadWork);
  CHECK_THROWS_AS(check(Work{}), BadWork);
}

TEST_CASE("settings above the press's plate are refused, and say the plate") {
  CHECK(bad_field(shop()) == "none");
  CHECK(bad_field(Equipment{}) == "none");
  Equipment e = shop();
  e.pass_limit = lbf(3500);
  try {
    check(e, units::ForceUnit::lbf);
    FAIL("a pass above the plate was taken");
  } catch (const BadEquipment& bad) {
    CHECK(std::string(bad.what()) == "A most load in a pass of 3500 lb is above the press's plate, 3000 lb.");
    CHECK(bad.would_do == "At most 3000 lb would do.");
  }
  e = shop();
  e.rework_limit = lbf(3001);
  CHECK(bad_field(e) == "rework_limit");
  e.press_rating.reset();
  CHECK(bad_field(e) == "none"); // nobody knows the plate yet, and nothing is advised
}

TEST_CASE("settings out of their ranges are refused by their names") {
  const auto refused = [](auto change) {
    Equipment e = shop();
    change(e);
    return bad_field(e);
  };
  CHECK(refused([](Equipment& e) { e.press_rating = Force{-1}; }) == "press_rating");
  CHECK(refused([](Equipment& e) { e.press_rating = Force{NAN}; }) == "press_rating");
  CHECK(refused([](Equipment& e) { e.gauge_rating = Force{1e9}; }) == "gauge_rating");
  CHECK(refused([](Equipment& e) { e.division = Force{0}; }) == "division");
  CHECK(refused([](Equipment& e) { e.division = lbf(301); }) == "division");
  CHECK(refused([](Equipment& e) { e.most_frets = 0; }) == "most_frets");
  CHECK(refused([](Equipment& e) { e.line_load = 101; }) == "line_load");
  CHECK(refused([](Equipment& e) { e.line_load = NAN; }) == "line_load");
  CHECK(refused([](Equipment& e) { e.soft_wood = 1.1; }) == "soft_wood");
  CHECK(refused([](Equipment& e) { e.end_clear = 0_mm; }) == "end_clear");
  CHECK(refused([](Equipment& e) { e.reach = 10_mm; }) == "reach");
  CHECK(refused([](Equipment& e) { e.step_most = 0.3; }) == "step_most");
  CHECK(refused([](Equipment& e) { e.step_least = 0.26; }) == "step_least");
  CHECK(refused([](Equipment& e) { e.narrow_ladder = {80, 80}; }) == "narrow_ladder");
  CHECK(refused([](Equipment& e) { e.narrow_ladder = {80, 121}; }) == "narrow_ladder");
  CHECK(refused([](Equipment& e) { e.narrow_ladder = {401}; }) == "narrow_ladder");
  CHECK(refused([](Equipment& e) { e.narrow_ladder = {80, 120, 160}; }) == "none");
  CHECK(refused([](Equipment& e) { e.bars = {{"a", 2_mm, 90_mm, {}, {}, false}}; }) == "bar");
  CHECK(refused([](Equipment& e) { e.bars = {{"a", 40_mm, 90_mm, {}, {}, true}}; }) == "bar");
  CHECK(refused([](Equipment& e) { e.bars = {{"a", 40_mm, 90_mm, 40_mm, {}, false}}; }) == "bar");
  CHECK(refused([](Equipment& e) { e.bars = {{"a", 40_mm, 90_mm, {}, lbf(9000), false}}; }) == "none");
}
