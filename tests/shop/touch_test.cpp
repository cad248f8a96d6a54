// Touches: what was done to frets and how long what was read and seen of them counts.
#include "bench.hpp"
#include "shop/touch.hpp"
#include "support/catch.hpp"

using namespace nutward;
using namespace nutward::test;

namespace {

struct Seated : Shop {
  Seated() {
    does("finished", R"({"job": 1, "stage": "cut"})");
    does("finished", R"({"job": 1, "stage": "seat"})");
  }
  Job job() {
    return *seen([](const View& v) { return v.jobs().find(1); });
  }
  std::vector<Fret> frets() {
    return seen([](const View& v) { return v.jobs().frets(1); });
  }
  int count() {
    return seen([&](const View& v) { return touches(*v.jobs().find(1), v); });
  }
  // Frets 1 to 3, read and looked at as they stand now.
  void look() {
    made.store.write([&](Tx& tx) {
      Reading r;
      r.job = 1;
      r.is.span = {1, 3};
      r.is.revision = touches(*tx.jobs().find(1), tx);
      tx.put(r);
      for (Fret f : tx.jobs().frets(1)) {
        f.gap = level::Gap::some;
        f.cause = level::Cause::slot_dirty;
        f.below = 0.1_mm;
        tx.put(f);
      }
      tx.backroom().take_changes();
    });
  }
  bool counts() {
    return seen([](const View& v) {
      return level::counts(v.jobs().readings(1).back().is, touched(*v.jobs().find(1), v, {}));
    });
  }
};

} // namespace

TEST_CASE("what presses, seats, levels or pulls a fret ends what was read and seen of it, and of no other") {
  Seated shop;
  shop.look();
  REQUIRE(shop.counts());
  const auto known = [&](int slot) {
    const Fret f = shop.frets().at(static_cast<std::size_t>(slot) - 1);
    return f.gap == level::Gap::some && f.cause == level::Cause::slot_dirty && f.below.has_value();
  };
  const int before = shop.count();
  SECTION("pressed beside them") {
    shop.does("pressed", R"({"job": 1, "slots": [4]})");
    CHECK(shop.counts());
    CHECK(known(3));
    CHECK_FALSE(known(4));
  }
  SECTION("pressed") {
    shop.does("pressed", R"({"job": 1, "slots": [3, 4]})");
    CHECK_FALSE(shop.counts());
    CHECK(known(2));
    CHECK_FALSE(known(3));
    CHECK(shop.count() == before + 1);
  }
  SECTION("levelled") {
    shop.does("finished", R"({"job": 1, "stage": "level"})");
    CHECK_FALSE(shop.counts());
    CHECK_FALSE(known(1));
  }
  SECTION("crowned") {
    shop.does("finished", R"({"job": 1, "stage": "crown"})");
    CHECK_FALSE(shop.counts());
  }
  SECTION("pulled") {
    shop.does("pulled", R"({"job": 1, "slots": [2]})");
    CHECK_FALSE(shop.counts());
    CHECK_FALSE(known(2));
    CHECK(known(1));
  }
  SECTION("what changes no fret leaves both alone") {
    shop.does("finished", R"({"job": 1, "stage": "polish"})");
    shop.does("measured", R"({"job": 1, "slot": 2, "length_mm": 51.4})");
    CHECK(shop.counts());
    CHECK(known(2));
    CHECK(shop.count() == before);
  }
}

TEST_CASE(
    "a touch that is taken back leaves readings from before it counting, and a later one counts up all the "
    "same") {
  Seated shop;
  shop.look();
  const int before = shop.count();
  shop.does("pressed", R"({"job": 1, "slots": [1, 2]})");
  REQUIRE_FALSE(shop.counts());
  shop.does("undo");
  CHECK(shop.counts());
  CHECK(shop.count() == before);
  // A reading from between: the press is taken back, the next touch must still come after it.
  shop.does("pressed", R"({"job": 1, "slots": [1, 2]})");
  shop.look();
  const int between = shop.count();
  CHECK(between == before + 1);
  shop.made.store.write([&](Tx& tx) {
    for (Fret f : tx.jobs().frets(1)) {
      f.touched = before;
      tx.put(f);
    }
    tx.backroom().take_changes();
    CHECK(touches(*tx.jobs().find(1), tx) == between);
  });
  shop.does("pressed", R"({"job": 1, "slots": [3]})");
  CHECK(shop.count() == between + 1);
  CHECK_FALSE(shop.counts());
}

TEST_CASE("two people's reports of one job touch frets of their own, and each can be taken back") {
  Seated shop;
  shop.who = shop.ines;
  shop.does("pressed", R"({"job": 1, "slots": [1]})");
  shop.clock.s += 3 * 3600; // another pressing, with a recheck of its own
  shop.who = shop.tomo;
  shop.does("pressed", R"({"job": 1, "slots": [4]})");
  shop.who = shop.ines;
  shop.does("undo");
  CHECK(shop.frets()[0].state == FretState::seated);
  CHECK(shop.frets()[3].state == FretState::pressed);
}

TEST_CASE("straightening the neck touches every fret, on record or not") {
  Seated shop;
  Job job = shop.job();
  job.straightened = 9;
  const std::vector<int> all{1, 2, 3, 4, 5};
  shop.made.store.read([&](const View& v) {
    const auto at = touched(job, v, all);
    REQUIRE(at.size() == 5);
    for (std::size_t i = 0; i < 5; ++i) {
      CHECK(at[i].slot == all[i]);
      CHECK(at[i].revision == 9);
    }
    CHECK(touches(job, v) == 9);
  });
}
