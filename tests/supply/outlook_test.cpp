#include "supply/outlook.hpp"
#include "support/catch.hpp"
#include "support/show.hpp"

#include <random>

using namespace nutward::supply;
using namespace nutward::units::literals;

namespace {

constexpr Day today{20'000};

// 10 m on hand, 100 mm a day, a week's lead, all of it sure.
Wanted sure() {
  Wanted w;
  w.on_hand = 10'000_mm;
  w.new_work = {100, 0, 20};
  w.new_work_from = today;
  w.lead = {7, 0, 5};
  return w;
}

// Day by day, by adding up afresh each time.
double level(const Wanted& w, Day day) {
  double mm = w.on_hand.mm();
  for (const Dated& d : w.needs)
    if (std::max(d.day, today) <= day) mm -= d.length.mm();
  for (const Dated& d : w.arrives)
    if (std::max(d.day, today) <= day) mm += d.length.mm();
  for (Day d = w.new_work_from; d <= day; d = d + 1)
    mm -= w.new_work.mean;
  return mm;
}

} // namespace

TEST_CASE("even demand without doubt runs out when it is used up, and is ordered a lead before") {
  const auto o = outlook(sure(), today);
  CHECK(o.free == 10'000_mm);
  CHECK(o.safety == 0_mm);
  CHECK(o.reorder_point == 700_mm);
  CHECK(o.runs_out == today + 100); // its 101st day
  CHECK(o.low == o.runs_out);
  CHECK(o.high == o.runs_out);
  CHECK(o.order_by == today + 93);
  CHECK_FALSE(o.too_late);
  CHECK(o.delayed.empty());
}

TEST_CASE("what the queue needs and what is on order move the day") {
  Wanted w = sure();
  w.needs = {{today + 3, 2000_mm}, {today - 5, 1000_mm}};
  auto o = outlook(w, today);
  CHECK(o.free == 7000_mm);
  CHECK(o.path.front().level == 8900_mm); // the need of five days ago counts as today's
  CHECK(o.runs_out == today + 70);
  w.arrives = {{today + 60, 3000_mm}};
  CHECK(outlook(w, today).runs_out == today + 100);
  w.arrives = {{today + 71, 3000_mm}}; // a day late
  CHECK(outlook(w, today).runs_out == today + 70);
}

TEST_CASE("new work begins when a job taken in today is cut") {
  Wanted w = sure();
  w.new_work_from = today + 10;
  CHECK(outlook(w, today).runs_out == today + 110);
}

TEST_CASE("in doubt it may run out sooner or later, and is ordered sooner") {
  Wanted w = sure();
  w.new_work.deviation = 100;
  const auto o = outlook(w, today);
  // 2.0537489106 · 100 · √7 = 543.37 mm.
  CHECK(o.safety.mm() == Approx(543.37).epsilon(1e-4));
  CHECK(o.reorder_point.mm() == Approx(1243.37).epsilon(1e-4));
  CHECK(*o.low < *o.runs_out);
  CHECK(*o.high > *o.runs_out);
  CHECK(o.order_by == today + 94 - 7); // the 95th day ends at 500 mm
}

TEST_CASE("when an order comes too late it says so, and which jobs wait") {
  Wanted w = sure();
  w.on_hand = 1500_mm;
  w.new_work = {};
  w.needs = {{today + 5, 1000_mm}, {today + 2, 1000_mm}, {today + 3, 400_mm}, {today + 7, 900_mm}};
  const auto o = outlook(w, today);
  CHECK(o.free == -1800_mm);
  CHECK(o.runs_out == today + 5);
  CHECK(o.order_by == today);
  CHECK(o.too_late);
  // The second takes 1000 of 1500, the third 400; the first finds 100, and the last waits for the order
  // anyhow.
  CHECK(o.delayed == std::vector<std::size_t>{0});
  CHECK(o.order == 1800_mm);
}

TEST_CASE("nothing wanted is nothing to order") {
  Wanted w = sure();
  w.new_work = {};
  w.needs = {{today + 5, 10'000_mm}};
  const auto o = outlook(w, today);
  CHECK_FALSE(o.runs_out);
  CHECK_FALSE(o.order_by);
  CHECK(o.order == 0_mm);
}

TEST_CASE("an order covers queue, lead, safety and what is bought besides, in packs") {
  Wanted w = sure();
  w.on_hand = 500_mm;
  w.needs = {{today + 20, 2000_mm}};
  w.further = 3000_mm;
  w.terms = {610_mm, 0_mm};
  // 2000 + 7·100 + 3000 − 500 = 5200, nine packs.
  CHECK(outlook(w, today).order == 5490_mm);
  w.arrives = {{today + 2, 5000_mm}};
  // 3500 from the 21st day on last to the 35th: ordered on the 29th, when 700 are left for the seven days
  // until it comes. 3000 then, five packs.
  CHECK(outlook(w, today).order_by == today + 28);
  CHECK(outlook(w, today).order == 3050_mm);
  w.review = 10; // ten days more
  CHECK(outlook(w, today).order == 4270_mm);
}

TEST_CASE("a level set by hand is a floor: below it an order is due, whatever is expected") {
  Wanted w = sure();
  w.reorder_at = 10'000_mm;
  CHECK_FALSE(outlook(w, today).by_hand); // not less than that
  CHECK(outlook(w, today).order_by == today + 93);
  w.reorder_at = 10'500_mm;
  const auto o = outlook(w, today);
  CHECK(o.by_hand);
  CHECK(o.order_by == today);
  CHECK_FALSE(o.too_late);
  CHECK(o.order == 500_mm); // up to the level
  w.arrives = {{today + 40, 600_mm}};
  CHECK_FALSE(outlook(w, today).by_hand);
}

TEST_CASE(
    "days between reviews are covered by the safety stock, and do not bring the day forward by themselves") {
  Wanted w = sure();
  w.review = 9;
  CHECK(outlook(w, today).order_by == today + 93);
  CHECK(outlook(w, today).reorder_point == 1600_mm);
  w.new_work.deviation = 100;
  CHECK(outlook(w, today).safety.mm() == Approx(2.0537489106 * 100 * 4).epsilon(1e-6)); // √16
}

TEST_CASE("stock below nothing, by a late entry, runs out today") {
  Wanted w = sure();
  w.on_hand = -40_mm;
  CHECK(outlook(w, today).runs_out == today);
  CHECK(outlook(w, today).too_late);
}

TEST_CASE("lengths below nothing are refused") {
  for (const int which : {0, 1, 2, 3, 4, 5, 6}) {
    Wanted w = sure();
    if (which == 0) w.needs = {{today, -1_mm}};
    if (which == 1) w.arrives = {{today, -1_mm}};
    if (which == 2) w.further = -1_mm;
    if (which == 3) w.terms.pack = -1_mm;
    if (which == 4) w.terms.minimum = -1_mm;
    if (which == 5) w.reorder_at = -1_mm;
    if (which == 6) w.review = -1;
    CHECK_THROWS_AS(outlook(w, today), BadSupply);
  }
}

TEST_CASE("paths and days of random shops are those of adding up day by day") {
  std::mt19937 random(8);
  const auto upto = [&](int n) { return static_cast<int>(random() % static_cast<unsigned>(n)); };
  int ran_out = 0, ordered = 0;
  for (int i = 0; i < 200; ++i) {
    CAPTURE(i);
    Wanted w;
    w.on_hand = {upto(12'000) * std::int64_t{1'000'000}};
    w.new_work = {upto(60) + 0.5, static_cast<double>(upto(90)), 30};
    w.new_work_from = today + upto(20);
    w.lead = {upto(40) + upto(2) * 0.5, upto(5) * 1.0, 4};
    for (int n = upto(8); n > 0; --n)
      w.needs.push_back({today + (upto(60) - 5), {upto(1200) * std::int64_t{1'000'000}}});
    for (int n = upto(4); n > 0; --n)
      w.arrives.push_back({today + upto(60), {upto(4000) * std::int64_t{1'000'000}}});
    const auto o = outlook(w, today);
    std::optional<Day> out, below;
    REQUIRE(o.path.size() == horizon_days + 1);
    for (const Point& p : o.path) {
      const double mm = level(w, p.day);
      CHECK(p.level.mm() == Approx(mm).margin(1e-4));
      if (!out && mm < -1e-5) out = p.day;
      if (!below && mm < o.safety.mm() - 1e-5) below = p.day;
    }
    CHECK(o.runs_out == out);
    CHECK(o.order_by.has_value() == below.has_value());
    if (out) CHECK((*o.low <= *out && (!o.high || *o.high >= *out)));
    ran_out += out ? 1 : 0;
    if (!below) continue;
    ++ordered;
    // Ordered then it is there before stock falls below; a day later it is not.
    const Day there = *o.order_by + static_cast<int>(std::ceil(w.lead.mean));
    CHECK((o.too_late ? there > *below : there == *below));
    CHECK(o.order_by >= today);
  }
  CHECK(ran_out > 100);
  CHECK(ordered > 100);
}
