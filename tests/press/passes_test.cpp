// The passes of a board: common practice, and every group by brute force.
#include "press/bench.hpp"

#include <algorithm>
#include <cmath>
#include <random>

using namespace nutward;
using namespace nutward::press;
using namespace nutward::press::tests;

// Common practice, no source.
TEST_CASE(
    "a 25.4 in scale with crowns of 0.10 in and a bar of 4.40 in is pressed in nine groups from slot 14") {
  for (double length : {4.36, 4.40, 4.45, 4.50}) {
    INFO("bar " << length << " in");
    const Plan plan = passes(even_work(), shop(), bar_of(inches(length)));
    CHECK(groups(plan) == "9-14, 8-13, 7-12, 6-10, 5-9, 4-8, 3-6, 2-5, 1-4");
    REQUIRE(plan.passes.size() == 9);
    CHECK(why<OverCap>(plan.passes[0].larger) != nullptr); // 8-14 would be seven
    CHECK(why<TooLong>(plan.passes[3].larger) != nullptr); // 5-10
    CHECK(why<TooLong>(plan.passes[5].larger) != nullptr); // 3-8
    // 7-11 lies inside 7-12, and 6-11 does not fit; 4-7 inside 4-8, and 3-7 does not fit.
    REQUIRE(plan.inside.size() == 3);
    CHECK(plan.inside[0].lo == 7);
    CHECK(plan.inside[0].hi == 11);
    CHECK(plan.inside[0].larger->lo == 6);
    REQUIRE(why<TooLong>(plan.inside[0].larger) != nullptr);
    CHECK(why<TooLong>(plan.inside[0].larger)->crowns ==
          inches(25.4 * (std::exp2(-6 / 12.0) - std::exp2(-11 / 12.0)) + 0.1));
    CHECK(why<TooLong>(plan.inside[0].larger)->bar == inches(length));
    CHECK(plan.inside[1].lo == 4);
    CHECK(plan.inside[1].hi == 7);
    CHECK(plan.inside[1].larger->lo == 3);
    CHECK(plan.inside[2].hi == 3); // 1-3; for 1-2 the bar would stand on the nut
    CHECK(plan.refused.empty());
    CHECK(plan.notes.empty());
  }
}

TEST_CASE("the shortest and the longest bar for those groups are 4.353 and 4.505 in") {
  CHECK(groups(passes(even_work(), shop(), bar_of(inches(4.352)))) !=
        "9-14, 8-13, 7-12, 6-10, 5-9, 4-8, 3-6, 2-5, 1-4");
  CHECK(groups(passes(even_work(), shop(), bar_of(inches(4.507)))) !=
        "9-14, 8-13, 7-12, 6-10, 5-9, 4-8, 3-6, 2-5, 1-4");
}

// Common practice, no source: frets about 50 mm long on a 3,000 lb press.
TEST_CASE("six and five frets get about 2,000 lb, 333 and 400 lb each, and four get 1,500 to 1,600") {
  const Plan plan = passes(even_work(), shop(), bar_of(inches(4.40)));
  for (const Pass& p : plan.passes) {
    INFO(p.lo << " to " << p.hi);
    const auto n = p.slots.size();
    if (n == 6) {
      CHECK(p.load.lbf() == Approx(2000));
      CHECK(p.limited == LimitedBy::pass_limit);
      CHECK(p.average.lbf() == Approx(333).epsilon(0).margin(1));
    } else if (n == 5) {
      CHECK(p.load.lbf() == Approx(1990)); // 5 · 50 mm · 35.5 N/mm = 8875 N = 1995 lb, by a gauge of 10 lb
      CHECK(p.average.lbf() == Approx(400).epsilon(0).margin(3));
      CHECK(p.limited == LimitedBy::line_load);
    } else {
      CHECK(n == 4);
      CHECK(p.load.lbf() >= 1500);
      CHECK(p.load.lbf() <= 1600);
    }
    CHECK(p.first.lbf() == Approx(p.load.lbf() / 2).epsilon(0).margin(5.01));
    CHECK(p.n_per_mm == Approx(p.load.n / (50.0 * static_cast<double>(n))));
  }
}

TEST_CASE("soft wood gets seven tenths, and a weaker gauge or bar less") {
  Work soft = even_work();
  soft.soft_wood = true;
  const Plan plan = passes(soft, shop(), bar_of(inches(4.40)));
  CHECK(plan.passes[0].load.lbf() == Approx(1670)); // 6·50·35.5·0.7 = 7455 N = 1676 lb
  CHECK(plan.passes[0].limited == LimitedBy::line_load);
  Equipment e = shop();
  e.gauge_rating = lbf(1500);
  CHECK(passes(even_work(), e, bar_of(inches(4.40))).passes[0].load.lbf() == Approx(1500));
  CHECK(passes(even_work(), e, bar_of(inches(4.40))).passes[0].limited == LimitedBy::gauge);
  Bar bar = bar_of(inches(4.40));
  bar.rating = lbf(1204);
  CHECK(passes(even_work(), e, bar).passes[0].load.lbf() == Approx(1200));
  CHECK(passes(even_work(), e, bar).passes[0].limited == LimitedBy::bar);
  e.press_rating = lbf(1000);
  CHECK(passes(even_work(), e, bar).passes[8].load.lbf() == Approx(1000));
  CHECK(passes(even_work(), e, bar).passes[8].limited == LimitedBy::press);
}

TEST_CASE("whatever load is asked for, nothing above the ratings is answered, and it is said") {
  const auto bar = bar_of(inches(4.40));
  const Plan over = passes(even_work(), shop(), bar, {false, lbf(3500)});
  for (const Pass& p : over.passes)
    CHECK(p.load.lbf() == Approx(2000));
  REQUIRE(over.notes.size() == 3);
  REQUIRE(why<OverRating>(over.notes[0]) != nullptr);
  CHECK(why<OverRating>(over.notes[0])->most == Limit{lbf(3000), LimitedBy::press});
  REQUIRE(why<OverShopLimit>(over.notes[1]) != nullptr);
  CHECK(why<OverShopLimit>(over.notes[1])->most == Limit{usual_pass_limit, LimitedBy::pass_limit});
  REQUIRE(why<OverLineLoad>(over.notes[2]) != nullptr);
  CHECK(why<OverLineLoad>(over.notes[2])->usual.lbf() == Approx(4 * 50 * 35.5 / 4.4482216152605));
  Equipment e = shop();
  e.pass_limit = lbf(3000);
  const Plan high = passes(even_work(), e, bar, {false, lbf(3500)});
  CHECK(high.passes[0].load.lbf() == Approx(3000));
  CHECK(high.notes.size() == 2);
  const Plan low = passes(even_work(), shop(), bar, {false, lbf(1200)});
  CHECK(low.notes.empty());
  CHECK(low.passes[0].load.lbf() == Approx(1200));
  CHECK(low.passes[0].limited == LimitedBy::asked);
  CHECK_THROWS_AS(passes(even_work(), shop(), bar, {false, Force{0}}), BadWork);
  CHECK_THROWS_AS(passes(even_work(), shop(), bar, {false, Force{-5}}), BadWork);
  // A division of the gauge, which is 10 lb, and less than that.
  CHECK(passes(even_work(), shop(), bar, {false, lbf(10)}).passes[0].load.lbf() == Approx(10));
  CHECK_THROWS_AS(passes(even_work(), shop(), bar, {false, lbf(9.9)}), BadWork);
}

TEST_CASE(
    "the bar stands over the middle of the group, the load over the mean of its slots, told by neighbours") {
  const Plan plan = passes(even_work(), shop(), bar_of(inches(4.40)));
  const Pass& p = plan.passes[0]; // 9 to 14
  const auto x = [](int n) { return 25.4 * (1 - std::exp2(-n / 12.0)); };
  CHECK(p.bar_at.mm() / 25.4 == Approx((x(9) + x(14)) / 2));
  CHECK(p.bar_between == Between{11, 12});
  CHECK(p.load_at.mm() / 25.4 == Approx((x(9) + x(10) + x(11) + x(12) + x(13) + x(14)) / 6));
  CHECK(p.load_between == Between{11, 12});
  CHECK(p.slots == std::vector<int>{9, 10, 11, 12, 13, 14});
  CHECK(plan.passes[4].slots == std::vector<int>{5, 6, 7, 8, 9});
  CHECK(plan.passes[4].bar_between == Between{6, 7}); // x(7) = 8.448 in is beyond the middle, 8.334 in
}

TEST_CASE("at the edges of its room the load gives a fret just 1.25 and 1.5 times its part, or none") {
  const Work work = even_work();
  const Plan plan = passes(work, shop(), bar_of(inches(4.40)));
  for (const Pass& p : plan.passes) {
    const auto at = [&](Length place) {
      return *shares(work, shop(), p.lo, p.hi, p.load, {place - p.load_at, {}});
    };
    CHECK(at(p.load_at).worst == Approx(1));
    CHECK(at(p.load_at).frets.front().share.n == Approx(p.average.n));
    CHECK(at(p.room.green.from).worst == Approx(1.25).epsilon(1e-5));
    CHECK(at(p.room.green.to).worst == Approx(1.25).epsilon(1e-5));
    CHECK(at(p.room.amber.from).worst == Approx(1.5).epsilon(1e-5));
    CHECK(at(p.room.kern.to).frets.front().times == Approx(0).margin(1e-5));
    CHECK(at(p.room.kern.from).frets.back().times == Approx(0).margin(1e-5));
    CHECK(at(p.room.kern.to + 1_mm).frets.front().zone == Zone::lifted);
    CHECK(at(p.room.kern.to - 1_mm).frets.front().zone != Zone::lifted);
    double sum = 0;
    for (const FretLoad& f : at(p.room.kern.to + 5_mm).frets)
      sum += f.share.n;
    CHECK(sum == Approx(p.load.n));
  }
}

namespace {

// DESIGN 4.6 once more, in double and with every crown looked at each time.
bool may_press(const Work& w, const Equipment& e, const Bar& bar, std::size_t first, std::size_t last) {
  if (!w.crowns[first].seated || !w.crowns[last].seated) return false;
  double low = 1e9, high = -1e9, tightest = 1e9, widest = 0;
  int n = 0;
  bool flat = false;
  for (std::size_t i = first; i <= last; ++i) {
    const Crown& c = w.crowns[i];
    if (!c.seated) continue;
    if (!c.to_press || bar.width.mm() <= 2 * c.half_width.mm()) return false;
    ++n;
    low = std::min(low, c.nutmost.mm());
    high = std::max(high, c.bodymost.mm());
    if (c.radius) {
      tightest = std::min(tightest, c.radius->mm());
      widest = std::max(widest, c.radius->mm());
    } else {
      flat = true;
    }
  }
  const double w2 = w.crown_width.mm() / 2;
  if (n > e.most_frets || (n == 1 && !bar.narrow) || high - low + 2 * w2 > bar.length.mm()) return false;
  if (flat != !bar.sole_radius) return false;
  if (!flat && (bar.sole_radius->mm() > tightest + 0.002 || bar.sole_radius->mm() < widest - 25.002))
    return false;
  const double middle = (low + high) / 2, clear = e.end_clear.mm() - 1e-6;
  const double left = middle - bar.length.mm() / 2 - clear, right = middle + bar.length.mm() / 2 + clear;
  if (w.nut_in_place && left < 0) return false;
  for (std::size_t i = 0; i < w.crowns.size(); ++i) {
    const Crown& c = w.crowns[i];
    if (!c.seated || (i >= first && i <= last)) continue;
    if (c.bodymost.mm() + w2 > left && c.nutmost.mm() - w2 < right) return false;
  }
  if (w.bed.body_from && high > w.bed.body_from->mm()) return false;
  if (w.bed.bare_from && high > w.bed.bare_from->mm()) return false;
  for (const Stretch& v : w.bed.voids) {
    if (v.from.mm() <= high && v.to.mm() >= low) return false;
  }
  return !e.reach || middle <= e.reach->mm();
}

std::string by_brute_force(const Work& w, const Equipment& e, const Bar& bar, bool every) {
  std::string out;
  std::size_t before = 1000;
  for (std::size_t last = w.crowns.size(); last-- > 0;) {
    for (std::size_t first = 0; first <= last; ++first) {
      if (!may_press(w, e, bar, first, last)) continue;
      if (every || first < before)
        out += (out.empty() ? "" : ", ") + std::to_string(w.crowns[first].slot) + "-" +
               std::to_string(w.crowns[last].slot);
      before = std::min(before, first);
      break;
    }
  }
  return out;
}

} // namespace

TEST_CASE("on 3,000 random boards, beds and bars the passes are those of trying every group") {
  std::mt19937_64 random(46);
  const auto between = [&](double low, double high) {
    return units::from_mm(std::uniform_real_distribution<double>(low, high)(random));
  };
  const auto one_in = [&](int n) { return std::uniform_int_distribution<int>(1, n)(random) == 1; };
  int boards = 0, some = 0, fans = 0, compounds = 0, many = 0;
  while (boards < 3000) {
    board::Board b = even_board(std::uniform_int_distribution<int>(4, 27)(random));
    b.scale = between(330, 900);
    b.nut_width = between(35, 50);
    b.far_width = b.nut_width + between(0, 12);
    b.zero_fret = one_in(5);
    Bar bar{"any", between(20, 130), one_in(8) ? between(30, 60) : 90_mm, {}, {}, one_in(6)};
    if (one_in(2)) {
      b.surface = board::Cylinder{between(150, 500)};
      bar.sole_radius = std::get<board::Cylinder>(b.surface).radius - between(-2, 26);
    }
    if (one_in(3)) {
      const Length nut = between(180, 300);
      b.surface = board::Compound{nut, nut + between(0, 80), 12};
      bar.sole_radius = nut + between(-10, 40);
    }
    if (one_in(3))
      b.fan = board::Fan{b.scale - between(0, 60), std::uniform_int_distribution<int>(0, 4)(random), 3_mm};
    try {
      board::check(b);
    } catch (const board::BadBoard&) {
      continue;
    }
    ++boards;
    Work work = work_on(b, between(1.5, 3), one_in(3) ? 2_mm : 0_mm);
    work.bed = good_bed();
    work.nut_in_place = !one_in(3);
    Equipment e = with_ladder();
    e.most_frets = std::uniform_int_distribution<int>(2, 8)(random);
    if (one_in(3)) work.bed.body_from = between(200, 400);
    if (one_in(5)) work.bed.bare_from = between(200, 400);
    if (one_in(5)) work.bed.voids.push_back({100_mm, between(100, 140)});
    if (one_in(5)) e.reach = between(150, 400);
    const bool partial = one_in(3);
    for (Crown& c : work.crowns) {
      c.seated = !partial || !one_in(6);
      c.to_press = !partial || !one_in(8);
    }
    if (bar.length > work.board_end) continue;
    const bool every = one_in(4);
    const Plan plan = passes(work, e, bar, {every, {}});
    INFO("board " << boards);
    REQUIRE(groups(plan) == by_brute_force(work, e, bar, every));
    some += plan.passes.empty() ? 0 : 1;
    many += plan.passes.size() > 4 ? 1 : 0;
    fans += b.fan && !plan.passes.empty() ? 1 : 0;
    compounds += std::holds_alternative<board::Compound>(b.surface) && !plan.passes.empty() ? 1 : 0;
    // Each slot to press is in a pass, or told why not.
    for (const Crown& c : work.crowns) {
      if (!c.to_press) continue;
      const bool in = c.seated && std::any_of(plan.passes.begin(), plan.passes.end(), [&](const Pass& p) {
                        return p.lo <= c.slot && c.slot <= p.hi;
                      });
      const bool told =
          std::any_of(plan.slots.begin(), plan.slots.end(), [&](const Refusal& r) { return r.lo == c.slot; });
      REQUIRE(in != told);
    }
    for (const Pass& p : plan.passes) {
      REQUIRE(p.load.n > 0);
      REQUIRE(p.load <= most_in_a_pass(e, bar)->load);
      REQUIRE(p.room.kern.from <= p.room.amber.from);
      REQUIRE(p.room.amber.from <= p.room.green.from);
      REQUIRE(p.room.green.from <= p.load_at);
      REQUIRE(p.load_at <= p.room.green.to);
      REQUIRE(p.room.green.to <= p.room.amber.to);
      REQUIRE(p.room.amber.to <= p.room.kern.to);
    }
  }
  CHECK(some > 1000);
  CHECK(many > 300);
  CHECK(fans > 200);
  CHECK(compounds > 100);
}

TEST_CASE("a shorter bar serves up the board where the long one would stand on frets outside") {
  Work work = even_work();
  work.bed.body_from.reset(); // all 22 lie over the neck
  const Bar longer = bar_of(inches(4.40)), shorter = bar_of(inches(2.60));
  const Plan alone = passes(work, shop(), longer);
  CHECK(alone.slots.size() == 7); // 16 to 22: seven and more would be under it
  for (const Refusal& r : alone.slots) {
    const bool too_many =
        why<OverCap>(r.why) != nullptr || why<EndOnCrown>(r.why) != nullptr || why<Tips>(r.why) != nullptr;
    CHECK(too_many);
  }
  const std::vector<Bar> bars{longer, shorter, narrow_bar()};
  const Plan both = passes(work, shop(), bars);
  CHECK(both.slots.empty());
  CHECK(both.passes.front().hi == 22);
  CHECK(both.passes.front().bar == 1);
  CHECK(both.passes.back().bar == 0);
  CHECK(both.passes.back().lo == 1);
  for (const Pass& p : both.passes) {
    INFO(p.lo << " to " << p.hi);
    CHECK(p.bar < 2);
    const auto one = one_group(work, shop(), bars[p.bar], p.lo, p.hi);
    REQUIRE(one.pass);
    CHECK(one.pass->load == p.load);
    // The other bar takes no larger group that ends there.
    for (int lo = 1; lo < p.lo; ++lo)
      CHECK_FALSE(one_group(work, shop(), bars[1 - p.bar], lo, p.hi).pass);
  }
  CHECK_THROWS_AS(passes(work, shop(), std::vector<Bar>{}), BadWork);
  const std::vector<Bar> narrow(2, narrow_bar());
  CHECK_THROWS_AS(passes(work, with_ladder(), narrow), BadWork);
}
