// The contract of shop::Store: sentences that were not understood, kept beside the shop's history.
#include "shop_in_a_folder.hpp"
#include "support/catch.hpp"

using namespace nutward;
using namespace nutward::test;

namespace {

struct Heard {
  Made made;
  std::int64_t mara = 0, tomo = 0;

  Heard() {
    made.store.write([&](Tx& tx) {
      mara = tx.put(Actor{0, "Mara", 2, "", {}});
      tomo = tx.put(Actor{0, "Tomo", 1, "", {}});
    });
  }
  std::int64_t say(const std::string& text, std::int64_t who, std::int64_t s, const std::string& alike,
                   std::size_t most = 1000) {
    return made.store.write([&](Tx& tx) {
      tx.backroom().keep(Missed{text, who, Instant{s}, Instant{s}, 1}, alike, most);
    });
  }
  std::vector<Missed> since(std::int64_t s, std::size_t most = 100) {
    return seen(made.store, [&](const View& v) { return v.misses().since(Instant{s}, most); });
  }
};

} // namespace

TEST_CASE("sentences that are alike count up, and are told as the newest was said, the newest first") {
  Heard heard;
  heard.say("varnish slot 3", heard.mara, 100, "varnish slot #");
  heard.say("gild it", heard.mara, 200, "gild");
  heard.say("Varnish slot 4!", heard.tomo, 300, "varnish slot #");
  const auto all = heard.since(0);
  REQUIRE(all.size() == 2);
  CHECK(all[0].text == "Varnish slot 4!");
  CHECK(all[0].actor == heard.tomo);
  CHECK(all[0].first == Instant{100});
  CHECK(all[0].last == Instant{300});
  CHECK(all[0].times == 2);
  CHECK(all[1].text == "gild it");
  CHECK(heard.since(201).size() == 1);
  CHECK(heard.since(301).empty());
  CHECK(heard.since(0, 1).size() == 1);
}

TEST_CASE("only so many are kept, those that were said last") {
  Heard heard;
  for (int i = 0; i < 8; ++i)
    heard.say("s" + std::to_string(i), heard.mara, 100 + i, "s" + std::to_string(i), 5);
  const auto all = heard.since(0);
  REQUIRE(all.size() == 5);
  CHECK(all.front().text == "s7");
  CHECK(all.back().text == "s3");
  CHECK(seen(heard.made.store, [](const View& v) { return v.misses().count(); }) == 5);
}

TEST_CASE("a sentence is no revision, is told to nobody, is no change, and so is forgetting them") {
  Heard heard;
  int told = 0;
  heard.made.store.on_change([&](std::int64_t) { ++told; });
  CHECK(heard.say("gild it", heard.mara, 100, "gild") == 1);
  CHECK(heard.since(0).size() == 1); // read at once, by a reader that was at that revision
  heard.made.store.write([](Tx& tx) {
    CHECK(tx.backroom().take_changes().empty());
    CHECK(tx.backroom().forget_misses() == 1);
    CHECK(tx.backroom().forget_misses() == 0);
  });
  CHECK(heard.since(0).empty());
  CHECK(told == 0);
  CHECK(heard.made.sqlite->verify().empty());
}

TEST_CASE("a sentence of more than 200 bytes, or of nobody, is refused by the store and changes nothing") {
  Heard heard;
  CHECK_THROWS(heard.say(std::string(201, 'a'), heard.mara, 100, "a"));
  CHECK_THROWS(heard.say("gild it", 99, 100, "gild"));
  CHECK(heard.since(0).empty());
}
