// Does a wire suit a job, asked of a shop. Figures by hand from DESIGN 4.3; the limits are common practice.
#include "bench.hpp"
#include "support/catch.hpp"

using namespace nutward;
using namespace nutward::test;

namespace {

// Wire 3: barbs 0.75, tang 1.6 deep and 0.5 thick. Job 3: radius 300, 50 mm wide everywhere, 5 frets.
struct Radiused : Shop {
  Radiused() {
    does("define-wire",
         R"({"name": "barbed", "crown_width_mm": 2.4, "crown_height_mm": 1.2, "tang_depth_mm": 1.6,
                            "tang_thickness_mm": 0.5, "barb_width_mm": 0.75})");
    does("new-job", R"({"wire": 3, "scale_mm": 600, "frets": 5, "nut_width_mm": 50, "far_width_mm": 50,
                        "far_slot": 5, "radius_mm": 300})");
  }
};

} // namespace

TEST_CASE("a wire suits by the slots that a job keeps, and is bent 10 to 20 % tighter") {
  Radiused shop;
  shop.does("slot-size", R"({"job": 3, "slot_width_mm": 0.55, "slot_depth_mm": 3})");
  const Answer a = shop.asks("suits", R"({"job": 3})");
  CHECK(a.text ==
        "Barbed suits job 3: the barbs are 0.20 mm wider than the slots. Bend it to a radius of 240.00 mm to "
        "270.00 mm.");
  CHECK(field<bool>(a, "sure"));
  // Sagitta 300 − √(300² − 25²) = 1.043481...: 3 − 1.04 − 1.6 = 0.36 below the tang.
  REQUIRE(a.table->rows.size() == 5);
  CHECK(a.table->rows[4] ==
        std::vector<std::string>{"5", "50.00 mm", "1.96 mm", "0.36 mm", "240.00 mm to 270.00 mm"});
}

TEST_CASE("what speaks against a wire is said with its numbers") {
  Radiused shop;
  const Answer a = shop.asks("suits", R"({"job": 3, "slot_width_mm": 0.38, "slot_depth_mm": 2.9})");
  CHECK(a.text.find(
            "Barbed does not suit job 3: the barbs are 0.37 mm wider than the slot, too tight: widen the "
            "slots, "
            "or take a narrower barb; the tang is 0.12 mm thicker than the slot is wide; slots 1-5 are too "
            "shallow, with as little as 0.26 mm below the tang where 0.30 mm is wanted: deepen them.") == 0);
  CHECK_FALSE(field<bool>(a, "good"));
  CHECK(shop.asks("suits", R"({"job": 3, "slot_width_mm": 0.55, "slot_depth_mm": 2.9, "bottom": "curved"})")
            .text.find("Barbed suits") == 0);
}

TEST_CASE("on a bound board the tang ends before the binding, where the slot is deeper than at the edge") {
  Radiused shop;
  shop.does("new-job", R"({"wire": 3, "scale_mm": 600, "frets": 5, "nut_width_mm": 50, "far_width_mm": 50,
                           "far_slot": 5, "radius_mm": 300, "binding_mm": 1.6})");
  const Answer a = shop.asks("suits", R"({"job": 4, "slot_width_mm": 0.55, "slot_depth_mm": 3})");
  CHECK(a.table->columns[2] == "depth at the tang's ends");
  // The tang is 50 − 2·(1.6 + 0.4) wide: 3 − (300 − √(300² − 23²)) = 2.117..., less 1.6.
  CHECK(a.table->rows[4] ==
        std::vector<std::string>{"5", "50.00 mm", "2.12 mm", "0.52 mm", "240.00 mm to 270.00 mm"});
}

TEST_CASE("wire for a slot that leans is bent less, for the board is flatter along it") {
  Radiused shop;
  shop.does("new-job", R"({"wire": 3, "scale_mm": 640, "treble_scale_mm": 571, "square_slot": 0, "frets": 12,
                           "nut_width_mm": 52, "far_width_mm": 52, "radius_mm": 300})");
  const Answer a = shop.asks("suits", R"({"job": 4, "slot_width_mm": 0.55, "slot_depth_mm": 3})");
  // Slot 12 leans 0.75: along it the board's radius is 300·(1 + 0.75²) = 468.75 at the middle (Euler's
  // formula for a normal section of a cylinder, any text on the geometry of surfaces).
  CHECK(a.table->rows[11][4] == "375.00 mm to 421.88 mm");
  CHECK(a.text.find("No one bend suits every slot: from 241.70 mm to 271.91 mm at slot 1 to 375.00 mm to "
                    "421.88 mm at slot 12.") != std::string::npos);
}

TEST_CASE("without measurements nothing is called right, and what is missing is named") {
  Shop shop;
  const Answer a = shop.asks("suits", R"({"job": 1, "wire": "medium"})");
  CHECK(a.text ==
        "Nothing known speaks against medium for job 1 (test board of Vida). The board is flat: leave it "
        "straight. "
        "Not known: the slots' width, their depth, the wire's barb width, its tang's thickness, its tang's "
        "depth.");
  CHECK_FALSE(field<bool>(a, "sure"));
}

TEST_CASE("slots of a size that no saw makes are refused") {
  Radiused shop;
  CHECK(shop.refused("slot-size", R"({"job": 3})").where == "slot_width_mm");
  CHECK(shop.refused("slot-size", R"({"job": 3, "slot_width_mm": 6})").where == "slot_width_mm");
  CHECK(shop.refused("slot-size", R"({"job": 3, "slot_width_mm": 0.15})").where == "slot_width_mm");
  CHECK(shop.refused("slot-size", R"({"job": 3, "slot_depth_mm": 0.2})").where == "slot_depth_mm");
  CHECK(shop.unanswered("suits", R"({"job": 3, "slot_width_mm": -0.5})").where == "slot_width_mm");
  CHECK(shop.unanswered("suits", R"({"job": 9})").where == "job");
}
