// A command is done only where every word of its sentence is accounted for.
#include "shop/demo.hpp"
#include "spoken_shop.hpp"
#include "support/catch.hpp"

using namespace nutward;
using namespace nutward::test;

namespace {

// One demo shop for all; what a sentence did is taken back at once.
struct DemoSpoken : SpokenShop {
  Caller who;
  DemoSpoken() {
    shop::load_demo(*store, [&](const std::string& sentence, const Caller& caller) {
      return say_as(caller, sentence, "", "").answer;
    });
    store->read([&](const View& view) {
      for (const Actor& a : view.house().actors())
        if (a.name == "Mara") who = {a.id, Role::lead, a.name, "test"};
    });
  }
  std::int64_t newest() {
    std::int64_t out = 0;
    store->read([&](const View& view) { out = view.journal().newest(); });
    return out;
  }
  // Its kind and text, in a conversation of its own.
  std::string said(const std::string& text) {
    const std::int64_t before = newest();
    const std::string own = "c" + std::to_string(++conversations_);
    const Answer answer = say_as(who, text, "", own).answer;
    const bool changed = newest() != before;
    if (changed) say_as(who, "undo", "", own);
    return (changed ? "changed: " : answer.kind + ": ") + answer.text;
  }

private:
  int conversations_ = 0;
};

DemoSpoken& demo() {
  static DemoSpoken shop;
  return shop;
}

} // namespace

TEST_CASE("of a sentence in parts nothing is done where one part is known by single words alone") {
  for (const char* text : {
           "done truing job 1, starting on its slots",
           "pressed job 5 slots 9-14 at 2000 lb and hold piece 4",
           "scrap piece 3 and the kettle is on",
           "scrap piece 3 and the marmalade is on",
           "scrap piece 3, its dial reads to 2 g",
           "received 4 sticks of medium 610 mm each, lot 2",
           "weighed the coil of medium at 410 g, its dial reads to 2 g",
       }) {
    INFO(text << " -> " << demo().said(text));
    CHECK(demo().said(text).starts_with("unclear: "));
  }
}

TEST_CASE("a list of the same thing is done whole") {
  CHECK(demo().said("pressed 9-14, 8-13 and 7-12 of job 5 at 2000 lb").starts_with("changed: "));
  CHECK(demo().said("add 52.4, 51.0 and 50.2 mm of medium").starts_with("changed: Put 3 short frets"));
  CHECK(demo().said("received 4 sticks of medium, 4 of narrow").starts_with("changed: "));
  CHECK(demo().said("done pulling job 2 and starting to press job 3").starts_with("changed: "));
}

TEST_CASE("a bare number is no job") {
  for (const char* text : {"10 and 11 from stick 4", "cut 10 and 11 from stick 4"})
    CHECK(demo().said(text).starts_with("unclear: "));
}

TEST_CASE("what is done with is finished, never begun") {
  CHECK(demo().said("done truing job 1").find("true the board is done") != std::string::npos);
  CHECK(demo().said("done levelling job 4").find("level the crowns is done") != std::string::npos);
}

TEST_CASE("a time without its half of the day is one at which the shop is open") {
  CHECK(demo().said("started pulling job 2 yesterday at three").find("15:00") != std::string::npos);
  CHECK(demo().said("started pulling job 2 yesterday at five").find("17:00") != std::string::npos);
  CHECK(demo().said("started pulling job 2 yesterday at 3 am").find("03:00") != std::string::npos);
  CHECK(demo().said("started pulling job 2 yesterday at 03:00").find("03:00") != std::string::npos);
  CHECK(demo().said("started pulling job 2 yesterday at ten").find("10:00") != std::string::npos);
}

TEST_CASE("a time at the head of a sentence is when it happened") {
  const std::string both = demo().said("8:30 had another look at job 5, still level");
  CHECK(both.starts_with("refused: "));
  CHECK(both.find("has no recheck waiting") != std::string::npos);
  CHECK(demo().said("8:30 look again at job 5").starts_with("unclear: "));
}

TEST_CASE("a text that may hold more than itself is asked about") {
  for (const char* text : {"received 4 sticks of medium from Hoban & Sons 12",
                           "received 20 sticks of tall from Lindhof for 64 eurs",
                           "define machne bender, one of them, ten minutes to set up"}) {
    INFO(text << " -> " << demo().said(text));
    CHECK(demo().said(text).starts_with("unclear: "));
  }
  CHECK(demo().said("received 4 sticks of medium from Hoban for 12 eur").starts_with("changed: "));
  CHECK(demo().said("define machine bender").starts_with("changed: "));
  // Numbers behind "pieces" are those pieces, mistyped or not, and none of them is a reason.
  for (const char* text : {"piecess 12, 10 and 7 are scrap", "pieces 12, 10 and 7 are scrap"})
    CHECK(demo().said(text).find("Scrapped 3 pieces") != std::string::npos);
}

namespace {
// The feel that the sentences' reading was kept with.
units::Length feel_of(std::initializer_list<const char*> sentences, const std::string& talk) {
  Answer last;
  for (const char* text : sentences)
    last = demo().say_as(demo().who, text, "", talk).answer;
  CHECK(last.kind == "done");
  units::Length out;
  demo().store->read([&](const View& view) { out = view.jobs().readings(5).back().is.epsilon; });
  demo().say_as(demo().who, "undo", "", talk);
  return out;
}
} // namespace

TEST_CASE("a quick look is kept as one") {
  const units::Length usual = feel_of({"1 to 22 of job 5 steady"}, "a");
  CHECK(feel_of({"level job 5", "quick: 1 to 22 steady"}, "b") > usual);
  CHECK(feel_of({"quick: 1 to 22 of job 5 steady"}, "d") > usual);
  CHECK(feel_of({"quick: 1 to 22 steady", "job 5"}, "e") > usual);
}
