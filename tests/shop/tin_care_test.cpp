// What lies in the tin to no use. Slots of job 1 take 50.9 to 52 mm, a piece with raw ends from 51.9 mm on.
#include "bench.hpp"
#include "support/catch.hpp"

using namespace nutward;
using namespace nutward::test;

namespace {

std::size_t many(const Answer& a, const char* what) {
  return size(at(a.data, what));
}

} // namespace

TEST_CASE("a piece is too short where its ends leave less than the narrowest slot on record takes") {
  Shop shop;
  // 50.8 mm is borderline when dressed; one raw end costs 0.5 mm, two cost 1 mm.
  shop.does("add", R"({"wire": 1, "length_mm": [50.7, 50.81], "ends": "dressed"})");
  shop.does("add", R"({"wire": 1, "length_mm": [51.2, 51.31], "ends": "one_raw"})");
  shop.does("add", R"({"wire": 1, "length_mm": [51.7, 51.81], "ends": "raw"})");
  const Answer a = shop.asks("tin-care", R"({"wire": 1})");
  REQUIRE(many(a, "too_short") == 3);
  for (std::size_t i = 0; i < 3; ++i)
    CHECK(as<Ref>(at(item(at(a.data, "too_short"), i), "piece")).id == 1 + 2 * static_cast<std::int64_t>(i));
  CHECK(a.text == "In the tin: 3 pieces too short for any board.");
  REQUIRE(a.choices.size() == 1);
  CHECK(a.choices[0].label == "scrap the 3 that are too short (50.70 mm to 51.70 mm)");
  Order o;
  o.calls = {a.choices[0].call};
  o.who = shop.mara;
  REQUIRE(shop.executor->run(o).answer);
  CHECK(many(shop.asks("tin-care", R"({"wire": 1})"), "too_short") == 0);
  shop.does("undo");
  CHECK(many(shop.asks("tin-care", R"({"wire": 1})"), "too_short") == 3);
}

TEST_CASE(
    "a done job's narrow board still counts as on record, and a wire without jobs has the shop's setting") {
  Shop shop;
  shop.does("define-wire", R"({"name": "tall"})");
  shop.does("add", R"({"wire": 3, "length_mm": [29, 31], "ends": "dressed"})");
  const Answer a = shop.asks("tin-care", R"({"wire": 3})");
  CHECK(many(a, "too_short") == 1);
  CHECK(a.table->rows.at(0).at(1) == "shorter than the shop keeps");
  shop.does("new-job", R"({"wire": 3, "scale_mm": 300, "frets": 2, "nut_width_mm": 20, "far_width_mm": 20})");
  shop.does("cancel-job", R"({"job": 3})", true);
  CHECK(many(shop.asks("tin-care", R"({"wire": 3})"), "too_short") == 0);
}

TEST_CASE("pieces untouched for the days of the setting are named, with where they would go now") {
  Shop shop;
  shop.does("add", R"({"wire": 1, "length_mm": [51.5, 58, 90], "ends": "dressed"})");
  shop.does("hold", R"({"piece": 3, "job": 1})");
  shop.clock.s += 180 * 86400;
  CHECK(many(shop.asks("tin-care"), "idle") == 0); // to the second
  shop.clock.s += 1;
  const Answer a = shop.asks("tin-care");
  REQUIRE(many(a, "idle") == 2);
  CHECK(as<Ref>(at(item(at(a.data, "idle"), 0), "job")).id == 1);
  shop.does("set", R"({"setting": "tin_idle_days", "to": "200"})");
  CHECK(many(shop.asks("tin-care"), "idle") == 0);
  CHECK(many(shop.asks("tin-care", R"({"days": 30})"), "idle") == 2);
  shop.does("hold", R"({"piece": 1, "job": 1})");
  shop.does("let-go", R"({"piece": 1})");
  CHECK(many(shop.asks("tin-care", R"({"days": 30})"), "idle") == 1);
  CHECK(shop.refused("set", R"({"setting": "tin_idle_days", "to": "0"})").fault == Fault::value);
}

TEST_CASE("more of a length than enough are said, but not those that the queue takes; handfuls are counted") {
  Shop shop;
  shop.does("set", R"({"setting": "tin_enough", "to": "3"})");
  shop.does("add",
            R"({"wire": 1, "length_mm": 51.5, "count": 6, "ends": "dressed"})"); // 4 open slots take them
  shop.does("add", R"({"wire": 1, "length_mm": [70, 70.1, 70.5, 70.5, 70.6], "ends": "dressed"})");
  shop.does("add", R"({"wire": 1, "count": 7})");
  const Answer a = shop.asks("tin-care");
  REQUIRE(many(a, "alike") == 2);
  const Value& first = item(at(a.data, "alike"), 0);
  CHECK(as<std::int64_t>(at(first, "queue")) == 4);
  CHECK(as<std::int64_t>(at(first, "surplus")) == 2);
  const Value& second = item(at(a.data, "alike"), 1);
  CHECK(as<std::int64_t>(at(second, "count")) == 4); // 70.6 is beyond a hand's tolerance of 70
  CHECK(as<std::int64_t>(at(second, "surplus")) == 1);
  CHECK(as<std::int64_t>(at(item(at(a.data, "unmeasured"), 0), "count")) == 7);
  CHECK(a.text == "In the tin: 3 pieces more of a length than anybody needs, 7 not measured.");
}

TEST_CASE("an empty tin and an empty shop are in order") {
  Bench bare;
  CHECK(bare.asks("tin-care").text == "No wire has been defined yet.");
  Shop shop;
  CHECK(shop.asks("tin-care").text ==
        "The tin is in order: nothing is too short, untouched for 180 days or not measured.");
}

TEST_CASE("several pieces go all or none") {
  Shop shop;
  shop.does("add", R"({"wire": 1, "length_mm": [52.4, 52.4, 49], "ends": "raw"})");
  const std::string before = shop.dump();
  shop.refused("use-several", R"({"pieces": [1, 3], "job": 1, "slots": "1,2"})"); // the second is too short
  shop.refused("use-several", R"({"pieces": [1, 1], "job": 1, "slots": "1,2"})");
  shop.refused("use-several", R"({"length_mm": 52.4, "count": 3, "job": 1, "slots": "1,2,3"})");
  shop.refused("use-several", R"({"length_mm": 52.4, "job": 1, "slots": "1,9"})");
  shop.refused("scrap-several", R"({"pieces": [1, 99]})");
  CHECK(shop.dump() == before);
  const auto lines = shop.rows_of("journal");
  shop.does("use-several", R"({"length_mm": 52.4, "job": 1, "slots": "1,2"})");
  CHECK(shop.rows_of("journal") == lines + 1);
  CHECK(shop.seen([](const View& v) { return v.jobs().frets(1).size(); }) == 2);
  shop.does("undo");
  CHECK(shop.dump() == before);
}
