// What `level` leans on, and what it never does: the shop's settings, and loads above the least rating.
#include "levelled.hpp"
#include "shop/level_settings.hpp"

#include <random>

using namespace nutward;
using namespace nutward::test;

TEST_CASE("what is usual is the shop's, and its defaults are the bench's") {
  Levelled shop;
  const auto settings = [&] { return shop.seen([](const View& v) { return level_settings(v); }); };
  const LevelSettings was = settings();
  CHECK(was.hand == level::hand);
  CHECK(was.quick_hand == level::quick_hand);
  const level::Rarity usual;
  const level::Rarity& kept = was.limits.rarity;
  CHECK(kept.high == usual.high);
  CHECK(kept.low == usual.low);
  CHECK(kept.end_low == usual.end_low);
  CHECK(kept.bow == usual.bow);
  CHECK(kept.much_bow == usual.much_bow);
  CHECK(kept.barely == usual.barely);
  CHECK(kept.usual_bow == usual.usual_bow);
  CHECK(was.plan.called_level == level::Plan{}.called_level);
  CHECK(was.plan.rocker == level::Plan{}.rocker);

  shop.rocks(12, 14);
  shop.does("set", R"({"setting": "rarity_low", "to": "0.5"})");
  CHECK(has(shop.level().text, "on the middle 12 or 14 is low, or 13 high."));
  CHECK(shop.refused("set", R"({"setting": "rarity_low", "to": "0"})").would_do ==
        "Give a number from 0.1 (usual) to 20 (hardly ever).");
  CHECK(
      shop.refused("set", R"({"setting": "level_called", "to": "0.03 mm"})").text ==
      "With a hand that feels 0.02 mm nothing could be called level to 0.03 mm: a low fret shows with about "
      "half its amount.");
  shop.does("set", R"({"setting": "level_hand", "to": "0.01 mm"})");
  shop.does("set", R"({"setting": "level_called", "to": "0.03 mm"})");
  shop.does("set", R"({"setting": "level_rocker", "to": "4"})");
  CHECK(settings().hand == Length{10'000});
  CHECK(settings().plan.called_level == Length{30'000});
  CHECK(settings().plan.rocker == 4);
  CHECK(shop.refused("set", R"({"setting": "level_rocker", "to": "4.5"})").would_do ==
        "Give a whole number from 3 to 12.");
  CHECK(shop.refused("set", R"({"setting": "level_hand", "to": "1 mm"})").would_do ==
        "Give a length from 0.005 to 0.3 mm.");
}

TEST_CASE("no answer has a load above the least rating, whatever was read, pressed and seen") {
  std::mt19937 random(20'26'11);
  const auto up_to = [&](int most) { return static_cast<int>(random() % static_cast<unsigned>(most + 1)); };
  int loads = 0;
  for (int round = 0; round < 12; ++round) {
    Levelled shop;
    const double rating = 1000 + 10 * up_to(180); // lb, of the gauge
    shop.does("set", fmt::format(R"({{"setting": "press_gauge", "to": "{} lb"}})", rating));
    shop.does("define-bar", R"({"name": "thin", "length_mm": 8, "width_mm": 90, "narrow": true})");
    if (up_to(1) == 0) shop.does("set", R"({"setting": "narrow_ladder", "to": "1000 1500 2000 lb"})");
    for (int n = 0; n < 3; ++n) {
      const int slot = 5 + up_to(4);
      shop.does("pressed",
                fmt::format(R"({{"job": 3, "slots": [{}], "load": "{} lb", "bar": "{}"}})", slot,
                            500 + 10 * up_to(static_cast<int>(rating - 500) / 10),
                            up_to(1) == 0 ? "long" : "thin"),
                true);
    }
    const Along line = level::all_lines.at(static_cast<std::size_t>(up_to(2)));
    shop.seven_high(line);
    for (int n = 0; n < 4; ++n) {
      const int from = 9 + up_to(8);
      shop.read(from, from + 2 + up_to(3), up_to(2) == 0, line);
    }
    for (int slot = 1; slot <= 22; ++slot)
      shop.fret(slot, [](Fret& f) { known(f, level::Gap::some, level::Cause::nothing_found); });
    for (const char* more : {"", R"(, "slot": 7)", R"(, "all": true)"}) {
      const Answer a = shop.level(more);
      const Value& all = at(a.data, "advice");
      for (std::size_t i = 0; i < size(all); ++i) {
        if (as<std::string>(at(item(all, i), "step")) != "press_again") continue;
        const Value& press = at(item(all, i), "press");
        if (size(at(press, "refused")) > 0) continue;
        ++loads;
        CHECK(lbf(at(press, "load")) <= rating + 1e-6);
        CHECK(lbf(at(press, "first")) <= lbf(at(press, "load")) / 2 + 1e-6);
        CHECK(std::find(a.cautions.begin(), a.cautions.end(), Hazard::press) != a.cautions.end());
      }
    }
  }
  CHECK(loads > 6); // or nothing was tested
}
