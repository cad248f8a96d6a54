// The look a day after pressing: whose frets it is about, and what was done to them meanwhile.
#include "levelled.hpp"

using namespace nutward;
using namespace nutward::test;

namespace {

struct Pressed : Levelled {
  Pressed() {
    does("pressed", R"({"job": 3, "slots": "9-14", "load": "2000 lb"})");
    clock.s += 24 * 3600;
  }
  FretState state(int slot) {
    for (const Fret& f : seen([](const View& v) { return v.jobs().frets(3); })) {
      if (f.slot == slot) return f.state;
    }
    throw std::runtime_error("no fret on record");
  }
  std::vector<int> waiting() {
    std::vector<int> out;
    for (const Recheck& r : seen([](const View& v) { return v.jobs().rechecks(3); })) {
      if (r.state == RecheckState::waiting) out.insert(out.end(), r.slots.begin(), r.slots.end());
    }
    return out;
  }
  std::size_t looked() {
    return seen([](const View& v) { return v.jobs().looked(3).size(); });
  }
};

} // namespace

TEST_CASE("a fret that left its slot, or was seated anew, waits for no recheck any more") {
  Pressed shop;
  SECTION("pulled") {
    shop.does("pulled", R"({"job": 3, "slots": [11]})");
    CHECK(shop.waiting() == std::vector{9, 10, 12, 13, 14});
    shop.does("rechecked", R"({"job": 3})");
    CHECK(shop.state(11) == FretState::came_short);
  }
  SECTION("reseated") {
    shop.does("reseated", R"({"job": 3, "slots": [11]})");
    CHECK(shop.waiting() == std::vector{9, 10, 12, 13, 14});
    shop.does("rechecked", R"({"job": 3})");
    CHECK(shop.state(11) == FretState::seated);
  }
  CHECK(shop.looked() == 5);
}

TEST_CASE("a fret that sprang back and was levelled is no longer told to be seen to") {
  Pressed shop;
  shop.does("rechecked", R"({"job": 3, "sprang": [11]})");
  REQUIRE(has(shop.level().text, "11 sprang back."));
  SECTION("by itself") {
    shop.does("levelled", R"({"job": 3, "slots": [11]})");
  }
  SECTION("with the whole board") {
    shop.does("finished", R"({"job": 3, "stage": "level"})");
  }
  CHECK_FALSE(has(shop.level().text, "11 sprang back"));
  CHECK_FALSE(has(shop.asks("job", R"({"job": 3})").text, "prang back"));
}

TEST_CASE("a reading that a recheck keeps is by the shop's hand, and its span was said where it was") {
  Pressed shop;
  shop.does("set", R"({"setting": "level_called", "to": "0.15 mm"})");
  shop.does("set", R"({"setting": "level_hand", "to": "0.05 mm"})");
  shop.does("rechecked", R"({"job": 3, "from": 9, "to": 11, "line": "bass"})");
  const auto all = shop.seen([](const View& v) { return v.jobs().readings(3); });
  REQUIRE(all.size() == 1);
  CHECK(all[0].is.epsilon == 0.05_mm);
  CHECK_FALSE(all[0].span_assumed);
  CHECK_FALSE(all[0].line_assumed);
}

TEST_CASE("loads of a fret whose neighbours were pulled since were not on it alone") {
  Pressed shop;
  shop.does("pressed", R"({"job": 3, "slots": "4-6", "load": "1500 lb"})");
  shop.does("pulled", R"({"job": 3, "slots": [4, 5]})");
  CHECK(has(shop.asks("history", R"({"job": 3, "slot": 6})").reason, "1500 lb with 4-6"));
}

TEST_CASE("what was looked at twice is told as the frets that it was") {
  Pressed shop;
  shop.does("rechecked", R"({"job": 3})");
  shop.does("pressed", R"({"job": 3, "slots": [11], "load": "2500 lb"})");
  shop.clock.s += 24 * 3600;
  shop.does("rechecked", R"({"job": 3})");
  CHECK(has(shop.asks("spring-back", R"({"job": 3})").text, "sprang back, of 6 looked at."));
}
