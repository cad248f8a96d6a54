// The card of what `press` was asked: a pass with the load off its place, and one fret by itself.
#include "draw/judged.hpp"
#include "example_board.hpp"
#include "support/catch.hpp"

using namespace nutward;
using namespace nutward::test;

namespace {

// Frets 50 mm long on a 25.4 in scale; a 3,000 lb press; pressed up to slot 14.
struct Pressed : ExampleBoard {
  Pressed() {
    seat_all();
    support();
  }
};

void holds(const std::string& svg, std::initializer_list<const char*> parts) {
  CHECK(judged(svg) == "");
  for (const char* part : parts) {
    INFO(part);
    CHECK(svg.find(part) != std::string::npos);
  }
}

} // namespace

TEST_CASE("a load off its place has a card that shows both places and what each fret takes then") {
  Pressed shop;
  const Answer a = shop.asks("press", R"({"job": 3, "off_mm": 6, "toward": "treble"})");
  REQUIRE(a.picture);
  holds(a.picture->svg(), {"where the load should stand", "6.00 mm off toward the treble", "333 lb too much",
                           "1160 lb at most", "Keep hands clear of the ram"});
  const Answer b = shop.asks("press", R"({"job": 3, "slots": "9-14", "off_mm": 40, "toward": "bodyward"})");
  REQUIRE(b.picture);
  holds(b.picture->svg(), {"40.00 mm off toward the body", "lifts off"});
  // What tips has no card to press by.
  CHECK_FALSE(shop.asks("press", R"({"job": 3, "off_mm": 26, "toward": "bass"})").picture);
}

TEST_CASE("one fret pressed again has a card, with all of the load on it") {
  Pressed shop;
  shop.does("pressed", R"({"job": 3, "slots": "9-14", "load": "2000 lb"})");
  const Answer a = shop.asks("press", R"({"job": 3, "slots": [11]})");
  REQUIRE(a.picture);
  CHECK(a.picture->title == "Fret 11 of job 3 (test board of Bruna) by itself");
  const std::string svg = a.picture->svg();
  holds(svg, {"2500 lb", "fret 11", "Keep hands clear of the ram"});
  CHECK(svg.find("the load may stand here") == std::string::npos);
  // Moved to a side: its heavier end, and how far and with what at most.
  const Answer b = shop.asks("press", R"({"job": 3, "slots": [11], "off_mm": 3, "toward": "bass"})");
  REQUIRE(b.picture);
  holds(b.picture->svg(), {"3.00 mm off toward the bass", "2500 lb amber"});
  CHECK(as<double>(at(item(at(b.data, "shares"), 0), "at_end")) == Approx(1.36)); // 1 + 6·3/50
  const Answer c = shop.asks("press", R"({"job": 3, "slots": [11], "favour": "treble"})");
  CHECK(as<Length>(at(at(c.data, "favour"), "most")).mm() == Approx(4.1667).epsilon(1e-3)); // 50/12
  CHECK(shop.unanswered("press", R"({"job": 3, "slots": [11], "off_mm": 3, "toward": "nutward"})").where ==
        "toward");
}
