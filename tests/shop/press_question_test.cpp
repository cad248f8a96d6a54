// The question `press` and what is kept of its answers. The board is the worked example of common practice,
// no source: scale 25.4 in, crowns 0.10 in wide, a bar 4.40 in long, frets 50 mm long, pressed up to slot 14.
#include "draw/judged.hpp"
#include "example_board.hpp"
#include "support/catch.hpp"

#include <fmt/format.h>

using namespace nutward;
using namespace nutward::test;

namespace {

// Wire 3 and job 3 are of the example; its plate says 3,000 lb.
struct Pressed : ExampleBoard {
  // Made, seated, and asked about.
  void ready() {
    seat_all();
    support();
  }
  std::string groups() {
    const Answer a = asks("press", R"({"job": 3, "all": true})");
    std::string out;
    for (const auto& row : a.table->rows)
      out += (out.empty() ? "" : ", ") + row.at(1);
    return out;
  }
  std::vector<std::string> reasons(const std::string& json) {
    std::vector<std::string> out;
    const Answer a = asks("press", json);
    const Value& refused = at(a.data, "refused");
    for (std::size_t i = 0; i < size(refused); ++i)
      out.push_back(as<std::string>(at(item(refused, i), "code")));
    return out;
  }
};

double lbf(const Value& force) {
  return as<Force>(force).n / units::newtons_per_lbf;
}

} // namespace

TEST_CASE("nothing is pressed before the plate is known and all four are said, each asked about by itself") {
  Pressed shop;
  shop.does("set", R"({"setting": "press_plate", "to": "none"})");
  CHECK(shop.reasons(R"({"job": 3})") ==
        std::vector<std::string>{"no_plate", "not_cradled", "head_not_clear", "neck_bridged", "fresh_glue"});
  shop.does("set", R"({"setting": "press_plate", "to": "3000 lb"})");
  shop.does("press-support", R"({"job": 3, "cradled": true, "glue_set": true})");
  CHECK(shop.reasons(R"({"job": 3})") == std::vector<std::string>{"head_not_clear", "neck_bridged"});
  const Answer a = shop.asks("press", R"({"job": 3})");
  CHECK(a.text == "Do not press job 3 (test board of Bruna) yet. Is the head clear of everything? Does "
                  "nothing bridge under the neck, so that it lies on the cradle?");
  CHECK(a.reason == "Look first, then say what holds: job 3 is head clear, nothing bridging.");
  CHECK(a.cautions == std::vector{Hazard::press});
  CHECK(shop.reasons(R"({"job": 3, "slots": [9]})") ==
        std::vector<std::string>{"head_not_clear", "neck_bridged"});
}

TEST_CASE("the passes of the worked example, one at a time and all together") {
  Pressed shop;
  shop.ready();
  CHECK(shop.groups() == "9-14, 8-13, 7-12, 6-10, 5-9, 4-8, 3-6, 2-5, 1-4");
  const Answer a = shop.asks("press", R"({"job": 3})");
  CHECK(a.text.starts_with(
      "Pass 1 of 9 on job 3 (test board of Bruna): Frets 9-14 under bar long, its middle"));
  CHECK(a.text.find("come up to 1000 lb, look, then 2000 lb, 333 lb on each fret.") != std::string::npos);
  CHECK(a.reason.find("Not more because of the shop's most in a pass.") != std::string::npos);
  CHECK(a.cautions == std::vector{Hazard::press});
  REQUIRE(size(at(a.data, "passes")) == 1);
  const Value& pass = item(at(a.data, "passes"), 0);
  CHECK(lbf(at(pass, "load")) == Approx(2000));
  CHECK(lbf(at(pass, "average")) == Approx(2000.0 / 6));
  CHECK(as<std::int64_t>(at(a.data, "next")) == 1);
}

TEST_CASE("what a pass could have more is told with its numbers, and what is in no pass too") {
  Pressed shop;
  shop.ready();
  const Answer a = shop.asks("press", R"({"job": 3})");
  const Value& odd = at(a.data, "refused_slots");
  REQUIRE(size(odd) == 8); // 15 to 22 are over the body
  CHECK(as<std::string>(at(item(odd, 0), "code")) == "over_body");
  CHECK(as<std::string>(at(item(odd, 0), "text"))
            .ends_with("which begins 358.00 mm from the nut: never press over "
                       "a closed body."));
  const Answer g = shop.asks("press", R"({"job": 3, "slots": "6-11"})");
  CHECK(g.text.starts_with("Frets 6-11 are not one pass. Its crowns are "));
  CHECK(g.text.ends_with("from end to end and the bar is 111.76 mm long."));
  CHECK(shop.asks("press", R"({"job": 3, "slots": "8-14"})").text ==
        "Frets 8-14 are not one pass. That would be 7 frets under the bar; the shop's most is 6.");
}

TEST_CASE("nothing is advised above the least rating, whatever is asked") {
  Pressed shop;
  shop.ready();
  const Answer a = shop.asks("press", R"({"job": 3, "load": "9000 lb"})");
  CHECK(lbf(at(item(at(a.data, "passes"), 0), "load")) <= 2000.0001);
  CHECK(as<std::string>(at(item(at(a.data, "notes"), 0), "text")).starts_with("9000 lb is above "));
  shop.does("set", R"({"setting": "press_gauge", "to": "1500 lb"})");
  for (const char* json :
       {R"({"job": 3})", R"({"job": 3, "load": "2000 lb"})", R"({"job": 3, "slots": "9-14"})",
        R"({"job": 3, "slots": "9-14", "load": "3000 lb"})"}) {
    INFO(json);
    const Answer b = shop.asks("press", json);
    CHECK(lbf(at(item(at(b.data, "passes"), 0), "load")) == Approx(1500));
    CHECK(b.reason.find("the gauge's scale") != std::string::npos);
  }
  for (const char* json : {R"({"job": 3, "slots": [9]})", R"({"job": 3, "slots": [9], "load": "9000 lb"})"}) {
    const Answer b = shop.asks("press", json);
    CHECK(lbf(at(at(b.data, "one"), "load")) <= 1500.0001);
  }
}

TEST_CASE("kilograms are asked about in the question too") {
  Pressed shop;
  shop.ready();
  const Problem p = shop.unanswered("press", R"({"job": 3, "load": "2000 kg"})");
  CHECK(p.fault == Fault::ambiguous);
  CHECK(p.text == "'2000 kg': the shop's loads are in lb. Is it 2000 lb or 2000 kgf, which is 4409 lb?");
  REQUIRE(p.choices.size() == 2);
  CHECK(p.choices[0].call.row == "press");
}

TEST_CASE("a load off its place says which fret takes too much, and what may be pressed with there") {
  Pressed shop;
  shop.ready();
  const Answer a = shop.asks("press", R"({"job": 3, "off_mm": 6, "toward": "treble"})");
  const Value& shares = at(a.data, "shares");
  REQUIRE(size(shares) == 6);
  // A strip 50 mm long, 6 mm off: 1 + 6·6/50 at its heavier end.
  CHECK(as<double>(at(item(shares, 0), "at_end")) == Approx(1.72));
  CHECK(as<std::string>(at(item(shares, 0), "zone")) == "too much");
  CHECK(lbf(at(a.data, "cut")) == Approx(1160)); // 2000/1.72 in whole divisions of 10 lb
  const Answer b = shop.asks("press", R"({"job": 3, "off_mm": 26, "toward": "bass"})");
  CHECK(as<bool>(at(b.data, "tips")));
  CHECK(b.text.ends_with("the bar tips: do not press."));
  CHECK(shop.unanswered("press", R"({"job": 3, "off_mm": 6})").where == "toward");
}

TEST_CASE("to favour a side the load moves only so far, and is cut to match") {
  Pressed shop;
  shop.ready();
  const Answer a = shop.asks("press", R"({"job": 3, "favour": "bass"})");
  const Value& f = at(a.data, "favour");
  CHECK(as<Length>(at(f, "most")).mm() == Approx(4.1667).epsilon(1e-3)); // 50/12: 1 + 6y/50 = 1.5
  CHECK(lbf(at(f, "load")) == Approx(1330));                             // 2000/1.5 in whole divisions
}

TEST_CASE("reports of passes say what is next, and all of them make the job pressed") {
  Pressed shop;
  shop.ready();
  const Answer first = shop.does("pressed", R"({"job": 3, "next": true, "load": "2000 lb", "bar": "long"})");
  CHECK(first.text.starts_with("Job 3 (test board of Bruna): frets 9-14 pressed at 2000 lb under bar long,"));
  CHECK(first.reason.ends_with("Pressing: 1 of 9 passes done, next are frets 8-13."));
  const Answer low = shop.does("pressed", R"({"job": 3, "next": true, "load": "1800 lb"})");
  CHECK(low.text.starts_with("Job 3 (test board of Bruna): frets 8-13 pressed at 1800 lb,"));
  shop.does("pressed", R"({"job": 3, "next": true, "load": "900 lb"})"); // its first step only
  CHECK(shop.asks("press", R"({"job": 3})").text.find("Frets 7-12") != std::string::npos);
  CHECK(shop.asks("press", R"({"job": 3, "all": true})").table->rows.at(2).back() == "halfway");
  CHECK(shop.asks("press", R"({"job": 3, "all": true})").table->rows.at(1).back() == "low");
  CHECK(shop.asks("job", R"({"job": 3})").text.find("Pressing: 2 of 9 passes done, next are frets 7-12.") !=
        std::string::npos);
  const Answer lot = shop.does("pressed", R"({"job": 3, "load": "2000 lb"})");
  CHECK(field<bool>(lot, "all_pressed"));
  CHECK(as<bool>(at(shop.asks("press", R"({"job": 3})").data, "all_done")));
  CHECK(shop.refused("pressed", R"({"job": 3, "next": true})").text ==
        "All passes of job 3 (test board of Bruna) are done.");
  CHECK(shop.rows_of("pressing") == 4);
}

TEST_CASE("a report beyond the rating is kept only with a yes, and then stands on the job") {
  Pressed shop;
  shop.ready();
  const Problem p = shop.refused("pressed", R"({"job": 3, "slots": "9-14", "load": "3200 lb"})");
  CHECK(p.fault == Fault::confirm);
  CHECK(p.text ==
        "3200 lb is above the press's plate, 3000 lb. If that is what really happened, a yes keeps it and "
        "flags it on job 3 (test board of Bruna); look at press and board before going on.");
  CHECK(shop.rows_of("pressing") == 0);
  const Answer a = shop.does("pressed", R"({"job": 3, "slots": "9-14", "load": "3200 lb"})", true);
  CHECK(field<bool>(a, "beyond"));
  CHECK(shop.asks("job", R"({"job": 3})")
            .text.find("Beyond the rating: frets 9-14 at 3200 lb, rated 3000 lb.") != std::string::npos);
  CHECK(shop.asks("press", R"({"job": 3})").text.find("Beyond the rating: frets 9-14 at 3200 lb") !=
        std::string::npos);
  shop.does("undo");
  CHECK(field<std::string>(shop.asks("job", R"({"job": 3})"), "pressed_beyond").empty());
  shop.does("set", R"({"setting": "press_gauge", "to": "2500 lb"})");
  CHECK(shop.refused("pressed", R"({"job": 3, "slots": "9-14", "load": "2600 lb"})")
            .text.starts_with("2600 lb is above the gauge's scale, 2500 lb."));
}

TEST_CASE("a fret again goes one step up from what it last had") {
  Pressed shop;
  shop.ready();
  shop.does("pressed", R"({"job": 3, "slots": "9-14", "load": "2000 lb"})");
  const Answer a = shop.asks("press", R"({"job": 3, "slots": [11]})");
  const Value& one = at(a.data, "one");
  CHECK(as<bool>(at(one, "again")));
  CHECK(lbf(at(one, "least")) == Approx(2300)); // 15 to 25 % more
  CHECK(lbf(at(one, "load")) == Approx(2500));
  CHECK(a.reason.find("So far it had 2000 lb with 9-14.") != std::string::npos);
  CHECK(a.cautions == std::vector{Hazard::press});
  shop.does("pressed", R"({"job": 3, "slots": [11], "load": "3000 lb"})");
  CHECK(shop.reasons(R"({"job": 3, "slots": [11]})") == std::vector<std::string>{"at_limit"});
}

TEST_CASE("a narrow bar is advised only with its ladder, a rung at a time") {
  Pressed shop;
  shop.ready();
  shop.does("define-bar", R"({"name": "thin", "length_mm": 8, "width_mm": 90, "narrow": true})");
  CHECK(shop.reasons(R"({"job": 3, "slots": [9], "bar": "thin"})") == std::vector<std::string>{"no_ladder"});
  shop.does("set", R"({"setting": "narrow_ladder", "to": "1000 1500 2000 lb"})");
  for (double rung : {1000.0, 1500.0, 2000.0}) {
    const Answer a = shop.asks("press", R"({"job": 3, "slots": [9], "bar": "thin"})");
    CHECK(lbf(at(at(a.data, "one"), "load")) == Approx(rung));
    shop.does("pressed", fmt::format(R"({{"job": 3, "slots": [9], "bar": "thin", "load": "{} lb"}})", rung));
  }
  CHECK(shop.reasons(R"({"job": 3, "slots": [9], "bar": "thin"})") ==
        std::vector<std::string>{"ladder_done"});
}

TEST_CASE("what a pulled fret was pressed with counts no more for its slot") {
  Pressed shop;
  shop.ready();
  shop.does("pressed", R"({"job": 3, "slots": "9-14", "load": "2000 lb"})");
  shop.does("pulled", R"({"job": 3, "slots": [11]})");
  const auto kept = shop.seen([](const View& v) { return v.jobs().pressings(3); });
  REQUIRE(kept.size() == 1);
  CHECK(kept[0].slots == std::vector{9, 10, 11, 12, 13, 14}); // what happened stays
  CHECK(kept[0].gone == std::vector{11});
  shop.does("undo");
  CHECK(shop.seen([](const View& v) { return v.jobs().pressings(3); })[0].gone.empty());
}

TEST_CASE("without a bar, a crown or the slots asked for there is a plain refusal") {
  Pressed shop;
  shop.ready();
  CHECK(shop.unanswered("press", R"({"job": 1})").text ==
        "How wide the crown of medium is is not known, and a bar must clear it.");
  CHECK(shop.unanswered("press", R"({"job": 3, "slots": [23]})").would_do == "It has slots 1-22.");
  CHECK(shop.unanswered("press", R"({"job": 3, "slots": "9,11"})").text ==
        "Frets 9, 11 are no group: a bar lies over all between.");
  CHECK(shop.unanswered("press", R"({"job": 3, "bar": "plank"})").would_do == "There are: long.");
  shop.does("drop-bar", R"({"name": "long"})");
  CHECK(shop.unanswered("press", R"({"job": 3})").where == "bar");
  shop.does("define-bar", R"({"name": "girder", "length_mm": 400, "width_mm": 40})");
  CHECK(shop.reasons(R"({"job": 3, "slots": "9-14"})") == std::vector<std::string>{"too_narrow"});
  shop.does("drop-bar", R"({"name": "girder"})");
  shop.does("define-bar", R"({"name": "long", "length_mm": 112, "width_mm": 90})");
  shop.does("machine-down", R"({"machine": "press"})");
  CHECK(shop.reasons(R"({"job": 3})") == std::vector<std::string>{"out_of_service"});
  shop.does("machine-up", R"({"machine": "press"})");
  CHECK(shop.reasons(R"({"job": 3})").empty());
}

TEST_CASE("new crowns beside worn ones are not pressed under a bar") {
  Pressed shop;
  shop.does("new-job",
            R"({"wire": "tenth", "kind": "some_slots", "slots": "3-5", "scale_mm": 645.16, "frets": 22,
                           "nut_width_mm": 50, "far_width_mm": 50})");
  CHECK(shop.unanswered("press", R"({"job": 4})").fault == Fault::state);
}

TEST_CASE("a pass has a card for the bench: its frets and two on each side, the load, and the caution") {
  Pressed shop;
  shop.ready();
  const Answer a = shop.asks("press", R"({"job": 3})");
  REQUIRE(a.picture.has_value());
  const std::string svg = a.picture->svg();
  CHECK(judged(svg) == "");
  for (const char* part : {"fret 7", "fret 8", "fret 9", "fret 14", "fret 15", "fret 16", "333 lb",
                           "1000 lb, look, then 2000 lb", "Keep hands clear of the ram"}) {
    INFO(part);
    CHECK(svg.find(part) != std::string::npos);
  }
  CHECK(svg.find("fret 17") == std::string::npos);
  shop.does("press-support", R"({"job": 3, "cradled": false})");
  CHECK_FALSE(shop.asks("press", R"({"job": 3})").picture.has_value());
}

TEST_CASE("of several bars the one that bears takes a group or a fret, and if none does each says why") {
  Pressed shop;
  shop.ready();
  shop.does("define-bar", R"({"name": "long", "length_mm": 111.76, "width_mm": 40})"); // narrower than a fret
  shop.does("define-bar", R"({"name": "other", "length_mm": 111.76, "width_mm": 90})");
  CHECK(shop.asks("press", R"({"job": 3, "slots": "9-14"})").text.starts_with("Frets 9-14 under bar other,"));
  CHECK(as<std::string>(at(at(shop.asks("press", R"({"job": 3, "slots": [9]})").data, "one"), "bar")) ==
        "other");
  shop.does("define-bar", R"({"name": "other", "length_mm": 60, "width_mm": 90})");
  const std::string text = shop.asks("press", R"({"job": 3, "slots": "9-14"})").text;
  CHECK(text.starts_with("Frets 9-14 are not one pass. With bar long: The bar is 40.00 mm wide and fret "));
  CHECK(text.find("With bar other: Its crowns are ") != std::string::npos);
}

TEST_CASE("a load beyond the rating is told to whoever wants to hear of it, once it was confirmed") {
  Pressed shop;
  shop.ready();
  shop.does("add-receiver",
            R"({"name": "wall", "url": "https://example.org/", "wants": ["press.beyond", "wire.low"]})");
  shop.does("add-receiver", R"({"name": "door", "url": "https://example.org/", "wants": ["recheck.due"]})");
  const auto told = [&] {
    return shop.seen([&](const View& v) { return v.outbox().due(shop.clock.now(), 9); });
  };
  shop.refused("pressed", R"({"job": 3, "slots": "9-14", "load": "3200 lb"})");
  shop.does("pressed", R"({"job": 3, "slots": "9-14", "load": "3000 lb"})");
  CHECK(told().empty());
  shop.does("pressed", R"({"job": 3, "slots": "9-14", "load": "3200 lb", "bar": "long"})", true);
  REQUIRE(told().size() == 1); // the door did not want it
  CHECK(told()[0].type == "press.beyond");
  CHECK(told()[0].text ==
        "Frets 9-14 of job 3 (test board of Bruna) were pressed at 3200 lb, above the press's "
        "plate, 3000 lb: look at press and board.");
  const std::string data = told()[0].data;
  for (const char* part :
       {R"("job":3)", R"("slots":[9,10,11,12,13,14])", R"("load_n":14234.3)", R"("rated_n":13344.6)",
        R"("limited_by":"press")", R"("bar":"long")", R"("pressed_at":"2026-03-25T10:00:00Z")"}) {
    INFO(data << " should hold " << part);
    CHECK(data.find(part) != std::string::npos);
  }
}

TEST_CASE("a load that one bar may have and another not is asked about, by the bars those frets go under") {
  Pressed shop;
  shop.ready();
  shop.does("define-bar", R"({"name": "old", "length_mm": 111.76, "width_mm": 90, "rating": "2500 lb"})");
  shop.does("define-bar", R"({"name": "short", "length_mm": 40, "width_mm": 90, "rating": "500 lb"})");
  shop.does("define-bar",
            R"({"name": "thin", "length_mm": 8, "width_mm": 90, "narrow": true, "rating": "1000 lb"})");
  const Problem p = shop.refused("pressed", R"({"job": 3, "slots": "9-14", "load": "2600 lb"})", true);
  CHECK(p.fault == Fault::ambiguous);
  REQUIRE(p.choices.size() == 2); // six frets were neither under the short one nor under the narrow one
  CHECK(p.choices[1].label == "under bar old");
  // Within all of them, and beyond all of them, nothing need be known.
  CHECK_FALSE(
      field<bool>(shop.does("pressed", R"({"job": 3, "slots": "9-14", "load": "1900 lb"})"), "beyond"));
  CHECK(shop.refused("pressed", R"({"job": 3, "slots": "9-14", "load": "3100 lb"})").fault == Fault::confirm);
  CHECK(shop.refused("pressed", R"({"job": 3, "slots": [9], "load": "1200 lb"})").choices.size() == 4);
  CHECK(shop.refused("pressed", R"({"job": 3, "slots": [9], "load": "1200 lb", "bar": "thin"})")
            .text.starts_with("1200 lb is above the bar's rating, 1000 lb."));
}

TEST_CASE("a load above the shop's own limit and within the rating is kept, and said to be") {
  Pressed shop;
  shop.ready();
  shop.does("set", R"({"setting": "press_limit", "to": "1800 lb"})");
  shop.does("set", R"({"setting": "rework_limit", "to": "2200 lb"})");
  const Answer a = shop.does("pressed", R"({"job": 3, "slots": "9-14", "load": "1900 lb"})");
  CHECK(a.reason.find(
            "1900 lb is above the shop's most in a pass, 1800 lb, though within the rating: it is kept "
            "as it was said.") != std::string::npos);
  CHECK_FALSE(field<bool>(a, "beyond"));
  CHECK(shop.does("pressed", R"({"job": 3, "slots": "9-14", "load": "1800 lb"})").reason.find("is above") ==
        std::string::npos);
  CHECK(shop.does("pressed", R"({"job": 3, "slots": [9], "load": "2300 lb"})")
            .reason.find("2300 lb is above the shop's most on one fret, 2200 lb") != std::string::npos);
}

TEST_CASE("a crown said with the question holds for that answer, and keeping it is offered") {
  Pressed shop;
  shop.ready();
  shop.does("press-support", R"({"job": 1, "cradled": true, "head_clear": true, "nothing_bridges": true,
                                 "glue_set": true})");
  const Problem p = shop.unanswered("press", R"({"job": 1})");
  CHECK(p.would_do == "Measure one and say: the crown of medium is 2.4 mm wide.");
  const Answer a = shop.asks("press", R"({"job": 1, "crown_width_mm": 2.5})");
  REQUIRE(a.choices.size() == 1);
  CHECK(
      a.reason.find("for medium none is on record. To keep it, say: the crown of medium is 2.50 mm wide.") !=
      std::string::npos);
  CHECK(shop.unanswered("press", R"({"job": 1})").fault == Fault::state); // the question kept nothing
  shop.does("wire-size", R"({"wire": 1, "crown_width_mm": 2.5})");
  CHECK(shop.asks("press", R"({"job": 1})").kind == "press");
  CHECK(shop.asks("press", R"({"job": 1, "crown_width_mm": 2.5})").choices.empty());
  CHECK(shop.refused("wire-size", R"({"wire": 1, "crown_width_mm": 25})").where == "crown_width_mm");
  CHECK(shop.refused("wire-size", R"({"wire": 1})").text == "What does medium measure?");
}
