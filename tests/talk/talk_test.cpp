// The whole way: a sentence, a real shop in SQLite, an answer.
#include "support/catch.hpp"
#include "talk/spoken_shop.hpp"

#include <atomic>
#include <future>
#include <thread>

using namespace nutward;

namespace {

struct Shop : test::SpokenShop {
  shop::Caller lead;

  Shop() {
    store->write([&](shop::Tx& tx) {
      lead = {tx.put(shop::Actor{0, "lead", 2, "", {}}), shop::Role::lead, "lead", "test"};
    });
    for (const char* text : {"define wire medium", "received 20 sticks of medium 610 mm each",
                             "new job instrument \"octave mandolin\", owner \"Ines\", scale 500 mm, frets "
                             "20, nut width 35 mm, far width 45 mm, wire medium",
                             "add 37.2, 37.8 and 41.5 mm of medium"}) {
      INFO(text);
      REQUIRE(say(text).answer.kind == "done");
    }
  }

  talk::Reply say(const std::string& text, const std::string& key = "",
                  const std::string& conversation = "c") {
    return say_as(lead, text, key, conversation);
  }
  std::int64_t newest() {
    std::int64_t out = 0;
    store->read([&](const shop::View& view) { out = view.journal().newest(); });
    return out;
  }
};

} // namespace

TEST_CASE("a sentence that comes again under its key gets the first answer and does nothing") {
  Shop shop;
  REQUIRE(shop.say("add 52.4 mm of medium", "k1").answer.kind == "done");
  const std::int64_t line = shop.newest();
  const talk::Reply again = shop.say("add 52.4 mm of medium", "k1");
  CHECK(again.again.find("\"done\"") != std::string::npos);
  CHECK(shop.newest() == line);
  CHECK(shop.say("add 52.4 mm of medium", "k2").again.empty());
  CHECK(shop.newest() > line);
}

TEST_CASE("it is the same order even where the words would by now mean another") {
  Shop shop;
  REQUIRE(shop.say("what fits slot 3 of job 1").answer.kind == "fit");
  REQUIRE(shop.say("use it", "k1").answer.kind == "done");
  REQUIRE(shop.say("what fits slot 4 of job 1").answer.kind == "fit");
  const std::int64_t line = shop.newest();
  CHECK_FALSE(shop.say("use it", "k1").again.empty());
  CHECK(shop.newest() == line);
}

TEST_CASE("what was refused under a key is not done with the role it was first asked with") {
  Shop shop;
  shop::Caller looks = shop.lead; // the same person, by a token that opens less
  looks.role = shop::Role::look;
  REQUIRE(shop.say("new person Tomo").answer.kind == "done");
  REQUIRE(shop.say("Tomo is back", "k1").answer.kind == "refused"); // he has not retired
  REQUIRE(shop.say("retire Tomo").answer.kind == "done");
  const std::int64_t line = shop.newest();
  CHECK(shop.say_as(looks, "Tomo is back", "k2")
            .answer.text.starts_with("'return-person' is for the role lead"));
  CHECK(shop.say_as(looks, "Tomo is back", "k1")
            .answer.text.starts_with("'return-person' is for the role lead"));
  CHECK(shop.newest() == line);
  CHECK(shop.say("Tomo is back", "k1").answer.kind == "done");
}

TEST_CASE("a yes is said with the role of who says it") {
  Shop shop;
  shop::Caller looks = shop.lead;
  looks.role = shop::Role::look;
  REQUIRE(shop.say("new person Tomo").answer.kind == "done");
  REQUIRE(shop.say("give job 1 to Tomo").answer.kind == "done");
  REQUIRE(shop.say("retire Tomo").answer.kind == "unclear"); // he still has job 1
  const std::int64_t line = shop.newest();
  CHECK(shop.say_as(looks, "yes").answer.kind == "refused");
  CHECK(shop.newest() == line);
}

TEST_CASE("a key that comes again with other words is refused") {
  Shop shop;
  REQUIRE(shop.say("add 52.4 mm of medium", "k1").answer.kind == "done");
  CHECK(shop.say("add 53.4 mm of medium", "k1").answer.kind == "refused");
}

TEST_CASE("a text that is no sentence is refused, not thrown") {
  Shop shop;
  CHECK(shop.say(std::string(4001, 'a')).answer.kind == "refused");
  CHECK(shop.say("use \xff").answer.kind == "refused");
  CHECK(shop.say("").answer.kind == "unclear");
}

TEST_CASE("what nobody understood is kept for the lead, counted up where it is alike, and nothing else is") {
  Shop shop;
  const auto kept = [&] {
    shop.say("define wire w" +
             std::to_string(shop.newest())); // whatever was to be kept is, before an order is done
    std::vector<shop::Missed> out;
    shop.store->read([&](const shop::View& v) { out = v.misses().since({0}, 2000); });
    return out;
  };
  REQUIRE(shop.say("varnish the headstock of job 1", "", "a").answer.kind == "unclear");
  REQUIRE(shop.say("please, Varnish headstock of job 77", "", "b").answer.kind == "unclear");
  shop.say("what fits slot 3 of job 1"), shop.say("add 40 mm of medium"), shop.say("slot 99 of job 1?");
  shop.say("use"), shop.say("yes"), shop.say("why"), shop.say("scrap the 52.4 kg"), shop.say("undo");
  shop.say("don't scrap piece 1"), shop.say(""), shop.say("how much steel is left");
  auto all = kept();
  REQUIRE(all.size() == 1);
  CHECK(all.front().text == "please, Varnish headstock of job 77");
  CHECK(all.front().actor == shop.lead.actor);
  CHECK(all.front().times == 2);

  SECTION("at most 200 bytes of it, whole characters") {
    std::string longest = "wobbulate ";
    while (longest.size() < 600)
      longest += "zoltán";
    shop.say(longest);
    all = kept();
    REQUIRE(all.size() == 2);
    const auto at = std::find_if(all.begin(), all.end(), [](const auto& m) { return m.times == 1; });
    CHECK(at->text.size() <= 200);
    CHECK(at->text.size() > 197);
    CHECK(longest.starts_with(at->text));
    CHECK((static_cast<unsigned char>(longest[at->text.size()]) & 0xC0U) != 0x80U);
  }
  SECTION("unless the setting says no") {
    REQUIRE(shop.say("set keep_not_understood to no").answer.kind == "done");
    shop.say("gild the bandsaw");
    CHECK(kept().size() == 1);
    CHECK(shop.say("what was not understood").answer.reason.starts_with("None is kept now"));
    REQUIRE(shop.say("set keep not understood to yes").answer.kind == "done");
    shop.say("gild the bandsaw");
    CHECK(kept().size() == 2);
  }
  SECTION("for whoever leads, and for nobody else") {
    shop::Caller bench = shop.lead;
    bench.role = shop::Role::bench;
    CHECK(shop.say_as(bench, "what was not understood")
              .answer.text.starts_with("'not-understood' is for the role lead"));
    CHECK(shop.say_as(bench, "forget what was not understood").answer.kind == "refused");
    const shop::Answer told = shop.say("what was not understood").answer;
    CHECK(told.kind == "not-understood");
    CHECK(told.text.starts_with("1 sentence was not understood, 2 times in all. The newest, "));
    REQUIRE(shop.say("forget what was not understood").answer.kind == "unclear");
    CHECK(shop.say("yes").answer.text == "Forgot 1 sentence that nobody had understood.");
    CHECK(kept().empty());
  }
}

TEST_CASE("a question answers at once, on the thread that asks") {
  Shop shop;
  std::thread::id where;
  shop.talk.say("what is due", "c", shop.lead, "", [&](talk::Reply) { where = std::this_thread::get_id(); });
  CHECK(where == std::this_thread::get_id());
}

TEST_CASE("several people speak at once, each in a conversation of their own") {
  Shop shop;
  std::atomic<int> done = 0, refused = 0;
  std::vector<std::thread> people;
  for (int p = 0; p < 4; ++p) {
    people.emplace_back([&, p] {
      for (int i = 0; i < 10; ++i) {
        const std::string conversation = "c" + std::to_string(p % 2); // two share one
        (shop.say("add 40 mm of medium", "", conversation).answer.kind == "done" ? done : refused)++;
        (shop.say("what fits slot 3 of job 1", "", conversation).answer.kind == "fit" ? done : refused)++;
      }
    });
  }
  for (auto& person : people)
    person.join();
  CHECK(done == 80);
  CHECK(refused == 0);
}
