// What the shop presses with: settings, bars, and what a neck lies on. Numbers are this file's own.
#include "bench.hpp"
#include "shop/press_settings.hpp"
#include "support/catch.hpp"

using namespace nutward;
using namespace nutward::test;

namespace {

press::Equipment gear(Bench& shop) {
  return shop.seen([](const View& v) { return equipment(v, setup(v)); });
}
void set(Bench& shop, const std::string& name, const std::string& to) {
  shop.does("set", R"({"setting": ")" + name + R"(", "to": ")" + to + R"("})");
}
Problem not_set(Bench& shop, const std::string& name, const std::string& to) {
  return shop.refused("set", R"({"setting": ")" + name + R"(", "to": ")" + to + R"("})");
}
Force lbf(double v) {
  return units::read_force(std::to_string(v), units::ForceUnit::lbf);
}

} // namespace

TEST_CASE("a shop that has said nothing has the cautious press, without a plate and without a bar") {
  Shop shop;
  CHECK(gear(shop) == press::Equipment{});
}

TEST_CASE("every setting of the press comes to what is pressed with") {
  Shop shop;
  set(shop, "press_plate", "3000 lb");
  set(shop, "press_gauge", "12 kN");
  set(shop, "press_limit", "1800 lb");
  set(shop, "press_frets", "5");
  set(shop, "press_line_load", "400 lb on 50 mm");
  set(shop, "press_soft_wood", "60 %");
  set(shop, "press_end_clear", "2 mm");
  set(shop, "press_reach", "450 mm");
  set(shop, "rework_step_least", "10");
  set(shop, "rework_step_most", "0.2");
  set(shop, "rework_limit", "2500 lb");
  set(shop, "narrow_ladder", "1000 1500 2000 lb");
  const press::Equipment e = gear(shop);
  CHECK(e.press_rating == lbf(3000));
  CHECK(e.gauge_rating == Force{12000});
  CHECK(e.pass_limit == lbf(1800));
  CHECK(e.most_frets == 5);
  CHECK(e.line_load == Approx(35.5858).epsilon(1e-6)); // 400 × 4.4482216152605 / 50
  CHECK(e.soft_wood == Approx(0.6));
  CHECK(e.end_clear == 2_mm);
  CHECK(e.reach == 450_mm);
  CHECK(e.step_least == Approx(0.10));
  CHECK(e.step_most == Approx(0.20));
  CHECK(e.rework_limit == lbf(2500));
  REQUIRE(e.narrow_ladder.size() == 3);
  CHECK(e.narrow_ladder[0] == Approx(88.96443).epsilon(1e-6)); // 1000 × 4.4482216152605 / 50
  set(shop, "press_reach", "none");
  set(shop, "narrow_ladder", "none");
  CHECK_FALSE(gear(shop).reach.has_value());
  CHECK(gear(shop).narrow_ladder.empty());
}

TEST_CASE("nothing is set above the plate, and the plate not below what is set") {
  Shop shop;
  set(shop, "press_plate", "3000 lb");
  CHECK(not_set(shop, "press_limit", "3500 lb").text ==
        "A most load in a pass of 3500 lb is above the press's plate, 3000 lb.");
  CHECK(not_set(shop, "rework_limit", "3001 lb").text ==
        "A most load on one fret of 3001 lb is above the press's plate, 3000 lb.");
  CHECK(not_set(shop, "narrow_ladder", "2000 2800 3100 lb").text ==
        "The ladder's 3100 lb on a fret 50 mm long is above the press's plate, 3000 lb.");
  set(shop, "press_limit", "2500 lb");
  CHECK(not_set(shop, "press_plate", "2000 lb").text ==
        "A most load in a pass of 2500 lb is above the press's plate, 2000 lb.");
  CHECK(gear(shop).press_rating == lbf(3000));
  CHECK(not_set(shop, "press_plate", "10 lb").text == "A press rated for 10 lb cannot be right.");
}

TEST_CASE("kilograms are asked about where the shop's loads are in pounds") {
  Shop shop;
  CHECK(not_set(shop, "press_plate", "1300 kg").would_do == "Say 1300 lb, or 1300 kgf, which is 2866 lb.");
  set(shop, "press_plate", "1300 kgf");
  CHECK(gear(shop).press_rating->n == Approx(12748.645)); // 1300 × 9.80665
  const Problem p = shop.refused("pressed", R"({"job": 1, "load": "900 kg"})");
  CHECK(p.fault == Fault::ambiguous);
  CHECK(p.text == "'900 kg': the shop's loads are in lb. Is it 900 lb or 900 kgf, which is 1984 lb?");
  REQUIRE(p.choices.size() == 2);
  set(shop, "load_unit", "kgf");
  shop.does("pressed", R"({"job": 1, "load": "900 kg"})", true);
}

TEST_CASE("a bar is what it was last said to be, and gone once it is dropped") {
  Shop shop;
  shop.does("define-bar", R"({"name": "long", "length_mm": 112, "width_mm": 90})");
  const Answer a = shop.does(
      "define-bar",
      R"({"name": "LONG", "length_mm": 100, "width_mm": 90, "sole_radius_mm": 300, "rating_n": 9000})");
  CHECK(a.text ==
        "Bar LONG: 100.00 mm long and 90.00 mm wide, sole of radius 300.00 mm, rated for 9 kN; it was "
        "112.00 mm long and 90.00 mm wide, sole flat, its rating not known.");
  CHECK(a.cautions == std::vector{Hazard::press});
  REQUIRE(gear(shop).bars.size() == 1);
  CHECK(gear(shop).bars[0] == press::Bar{"LONG", 100_mm, 90_mm, 300_mm, Force{9000}, false});
  shop.does("drop-bar", R"({"name": "long"})");
  CHECK(gear(shop).bars.empty());
  CHECK(shop.refused("drop-bar", R"({"name": "long"})").text == "There is no bar 'long'.");
  CHECK(shop.refused("define-bar", R"({"name": "fat", "length_mm": 40, "width_mm": 90, "narrow": true})")
            .would_do == "From 3 mm to 30 mm would do.");
}

TEST_CASE("what a neck lies on is asked once and kept with its job") {
  Shop shop;
  CHECK(shop.does("press-support", R"({"job": 1, "cradled": true, "head_clear": true})").text ==
        "Job 1 (test board of Vida): still to say before it is pressed: nothing bridging, glue set.");
  const Answer a = shop.does("press-support", R"({"job": 1, "nothing_bridges": true, "glue_set": true,
      "body_from_mm": 380, "hollow_from_mm": 10, "hollow_to_mm": 20.5})");
  CHECK(field<bool>(a, "ready"));
  const Job job = shop.seen([](const View& v) { return *v.jobs().find(1); });
  CHECK(job.bed.cradled);
  CHECK(job.bed.glue_set);
  CHECK(job.bed.body_from == 380_mm);
  CHECK(job.bed.voids == std::vector{press::Stretch{10_mm, 20.5_mm}});
  CHECK(shop.does("press-support", R"({"job": 1, "glue_set": false})")
            .text.find("still to say before it is "
                       "pressed: glue set.") != std::string::npos);
  CHECK(shop.refused("press-support", R"({"job": 1})").fault == Fault::value);
  CHECK(shop.refused("press-support", R"({"job": 1, "hollow_from_mm": 30, "hollow_to_mm": 20})").text ==
        "A hollow from 30 mm to 20 mm is the wrong way round.");
}
