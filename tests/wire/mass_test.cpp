#include "support/catch.hpp"
#include "support/show.hpp"
#include "wire/mass.hpp"

using namespace nutward;
using namespace nutward::units::literals;
using units::Length;
using units::Mass;

TEST_CASE("a crown as high as half its width is half a circle") {
  CHECK(wire::segment_area_mm2(2.4_mm, 1.2_mm) == Approx(2.2619467105846514).epsilon(1e-13)); // π·1.2²/2
  // 2.7 wide, 1.0 high, by R²·acos((R−h)/R) − (R−h)·√(2Rh−h²): another form of the same area.
  CHECK(wire::segment_area_mm2(2.7_mm, 1_mm) == Approx(1.984330742525942).epsilon(1e-13));
  // As high as it is wide: past a half circle. R 1.5, centre 0.9 above the chord: 1.5²·(π − acos(0.6))
  // + 1.2·0.9.
  CHECK(wire::segment_area_mm2(2.4_mm, 2.4_mm) == Approx(6.0621692301).epsilon(1e-9));
}

TEST_CASE("a profile known in full has an area, one known in part has none") {
  CHECK(*wire::area_mm2({2.7_mm, 1_mm, 1.6_mm, 0.5_mm, {}}) == Approx(2.784330742525942).epsilon(1e-13));
  CHECK_FALSE(wire::area_mm2({2.7_mm, 1_mm, 1.6_mm, {}, 0.7_mm}));
}

TEST_CASE("a material is known by its alloy's number or by the bench's word") {
  const auto name = [](std::string_view material) {
    const auto* d = wire::density_of(material);
    return d == nullptr ? std::string_view("none") : d->name;
  };
  CHECK(name("nickel silver") == "C75200");
  CHECK(name("Nickel-Silver, 18 %") == "C75200");
  CHECK(name("nickel silver C77000") == "C77000");
  CHECK(name("stainless") == "304");
  CHECK(name("316 stainless steel") == "316");
  CHECK(name("stainless 1.4401") == "316");
  CHECK(name("brass") == "C26000");
  CHECK(name("phosphor bronze") == "C51000");
  CHECK(name("brassy") == "none");
  CHECK(name("") == "none");
}

TEST_CASE("calibrating on a known length says how well a metre is known then") {
  // 610 mm weigh 14.6 g on a scale of 0.1 g: 23.934 g/m ± √((0.5/610)² + (0.1/14.6)²) = 0.6898 %.
  const auto l = wire::calibrated(610_mm, Mass{14'600}, Mass{100});
  CHECK(l.g_per_m == Approx(23.934426).epsilon(1e-7));
  CHECK(l.error == Approx(0.0068981).epsilon(1e-4));
  // 500 g of it, ± √(0.6898 %² + (0.1/500)²).
  const auto w = wire::weighed(Mass{500'000}, l, Mass{100});
  CHECK(w.length == Length{20'890'410'959});
  CHECK(w.error.mm() == Approx(144.16).epsilon(1e-3));
}

TEST_CASE("a scale too coarse for the piece, or a mass in the wrong unit, calibrates nothing") {
  CHECK_THROWS_AS(wire::calibrated(52_mm, Mass{1'200}, Mass{1'000}), wire::BadProfile);
  CHECK_THROWS_AS(wire::calibrated(610_mm, Mass{14'600'000}, Mass{100}), wire::BadProfile);
  CHECK_THROWS_AS(wire::calibrated(610_mm, Mass{1'000}, Mass{100}), wire::BadProfile);
}

TEST_CASE("a profile gives what a metre weighs to within a twentieth") {
  const auto l = wire::by_profile({2.7_mm, 1_mm, 1.6_mm, 0.5_mm, {}}, 8.73);
  REQUIRE(l);
  CHECK(l->g_per_m == Approx(24.307207).epsilon(1e-7)); // 2.784330742525942 · 8.73
  CHECK(l->error == 0.05);
  CHECK_FALSE(wire::by_profile({2.7_mm, 1_mm, 1.6_mm, 0.5_mm, {}}, {}));
  CHECK_FALSE(wire::by_profile({}, 8.73));
}
