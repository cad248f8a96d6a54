// The question `level`: what readings come to, and what is to be done next. Common practice, no source: what
// 12-14 and 6-8 may mean, that a last low fret may stay, about 400 grit on a flat block.
#include "levelled.hpp"

using namespace nutward;
using namespace nutward::test;

TEST_CASE("before anything is read the neck is looked at, then the long edge goes over the middle") {
  Levelled shop;
  shop.changed([](Job& j) { j.straight_seen.reset(); });
  const Answer a = shop.level();
  CHECK(a.text ==
        "Job 3 (test board of Bruna): nothing is read yet. Look along the neck: is it straight? Say: the "
        "neck is straight, the neck is humped, or the neck has relief.");
  CHECK(a.reason == "Readings tell of frets only over a straight neck.");
  const Answer next = shop.level(R"(, "only": "next")");
  CHECK(next.text ==
        "Next on job 3 (test board of Bruna): lay a straightedge over 1-22 on the middle, and say: 1-22 "
        "rocks, or: 1-22 steady.");
  CHECK(as<std::string>(at(at(next.data, "next"), "why")) == "sequence");
  shop.changed([](Job& j) { j.straight_seen = Instant{1}; });
  CHECK(field<std::int64_t>(shop.level(), "first") == 1);
  CHECK(has(shop.level().text, "lay a straightedge") == false);
  CHECK(has(shop.level().text, "Lay a straightedge over 1-22"));
}

TEST_CASE("12 to 14 rocking alone: 13 is high, or 12 or 14 low, and what tells them apart") {
  Levelled shop;
  shop.rocks(12, 14);
  const Answer a = shop.level();
  CHECK(a.text.starts_with("Job 3 (test board of Bruna): on the middle 13 is high, or 12 or 14 low. Lay a "));
  CHECK(a.text.size() < 240); // two lines
  CHECK(parts(item(at(a.data, "lines"), 1)) == std::vector<std::string>{"13 high", "12 low", "14 low"});
  CHECK(as<std::string>(at(at(a.data, "next"), "why")) == "splits");
  CHECK(as<std::int64_t>(at(at(a.data, "next"), "explanations")) == 3);
  CHECK(has(a.reason, "Of 3 explanations it leaves "));
  REQUIRE(a.table.has_value());
  CHECK(a.table->rows.at(0) ==
        std::vector<std::string>{"middle", "may be", "13 high by 0.02 mm or more", "the likeliest"});
  const Answer fret = shop.level(R"(, "slot": 12)");
  CHECK(has(fret.text, "fret 12: on the middle it may be low, by 1 of 3 explanations."));
  CHECK(has(fret.reason, "It follows from: 12-14 rocks on the middle."));
}

TEST_CASE("6 to 8 rocks and 4 to 6 is steady: 6 is out") {
  Levelled shop;
  shop.rocks(6, 8, Along::bass);
  CHECK(has(shop.level().text, "on the bass 7 is high, or 6 or 8 low."));
  shop.steady(4, 6, Along::bass);
  const Answer a = shop.level();
  CHECK(has(a.text, "on the bass 7 is high, or 8 low."));
  CHECK(has(shop.level(R"(, "slot": 6)").text, "fret 6: on the bass no explanation has it off."));
}

TEST_CASE("several that are off are told together, and what is all but ruled out behind them") {
  Levelled shop;
  for (int n = 1; n <= 20; ++n)
    shop.read(n, n + 2, n % 6 == 0);
  CHECK(has(shop.level().text,
            "on the middle 7, 13 and 19 are high; 8 low, 14 low and 20 low are all but ruled out."));
  CHECK(in_words(shop.level()).find("all but ruled out") != std::string::npos);
}

TEST_CASE("readings that cannot all be true are named, and the same taken twice more puts it right") {
  Levelled shop;
  shop.steady(2, 4);
  shop.rocks(6, 8, Along::treble);
  shop.steady(6, 8, Along::treble);
  const Answer a = shop.level();
  CHECK(has(a.text,
            "'6-8 rocks on the treble' and '6-8 steady on the treble' cannot both be true. Take 6-8 on "
            "the treble again"));
  const Value& treble = item(at(a.data, "lines"), 2);
  CHECK(as<std::string>(at(treble, "finding")) == "contradiction");
  REQUIRE(size(at(treble, "cannot_all_be")) == 2);
  CHECK(as<std::int64_t>(item(at(treble, "cannot_all_be"), 0)) == 2);
  CHECK(as<std::int64_t>(item(at(treble, "cannot_all_be"), 1)) == 3);
  shop.steady(6, 8, Along::treble);
  const Answer b = shop.level();
  CHECK(as<std::string>(at(item(at(b.data, "lines"), 2), "finding")) == "level");
  CHECK(has(b.reason,
            "1 reading counts no more, since the same was read twice otherwise after: 6-8 rocks on the "
            "treble."));
}

TEST_CASE(
    "a feeler tried on both ends of one laying is one opinion, not two that overrule what was read before") {
  Levelled shop;
  shop.does("reading", R"({"job": 3, "from": 6, "to": 8, "felt": "steady"})");
  shop.clock.s += 60;
  const Answer once = shop.does(
      "reading", R"({"job": 3, "from": 6, "to": 8, "felt": "rocks", "held": "nutward", "gaps": [8]})");
  const auto id = std::to_string(as<std::int64_t>(at(once.data, "reading")));
  shop.does("reading", R"({"job": 3, "reading": )" + id + R"(, "held": "bodyward", "gaps": [6]})");
  CHECK(shop.told("read_again") != "");
  shop.clock.s += 60;
  shop.does("reading", R"({"job": 3, "from": 6, "to": 8, "felt": "rocks"})");
  CHECK(shop.told("take_reading") != "");
}

TEST_CASE("what was read before a fret there was pressed counts no more, and the answer says so") {
  Levelled shop;
  shop.rocks(12, 14);
  shop.steady(4, 6);
  shop.does("pressed", R"({"job": 3, "slots": "9-14", "load": "2000 lb"})");
  const Answer a = shop.level();
  CHECK(has(a.text, "on the middle nothing need be off so far"));
  CHECK(has(a.reason, "1 reading counts no more, since a fret there was touched after: 12-14 rocks on the "
                      "middle."));
  const Value& readings = at(a.data, "readings");
  REQUIRE(size(readings) == 2);
  CHECK(as<bool>(at(item(readings, 0), "counts")));
  CHECK_FALSE(as<bool>(at(item(readings, 1), "counts")));
  CHECK(has(in_words(shop.level(R"(, "all": true)")), "middle|counts no more|12-14 rocks on the middle|"));
}

TEST_CASE("a high fret is asked about first: the gap, then the cause, then one step more") {
  Levelled shop;
  shop.seven_high(Along::middle);
  CHECK(has(shop.level().text, "on the middle 7 is high"));
  CHECK(shop.told("ask_gap") ==
        "See whether there is a gap under the crown of 7; say: gap under 7, or: no gap under 7. | Without a "
        "gap "
        "pressing only crushes the board, and with one something may keep the fret up.");
  shop.fret(7, [](Fret& f) { known(f, level::Gap::none); });
  CHECK(shop.told("stop_and_level") ==
        "Do not press 7: level it with about 400 grit on a flat block, then crown and polish each fret that "
        "was touched, and say: levelled 7. | There is no gap under its crown: it is the board or the crown, "
        "and pressing would only "
        "crush.");
  CHECK(shop.level().cautions == std::vector{Hazard::metal_dust});
  shop.fret(7, [](Fret& f) { known(f, level::Gap::some); });
  CHECK(has(shop.told("ask_cause"), "slot 7 is shallow"));
  shop.fret(7, [](Fret& f) { known(f, level::Gap::some, level::Cause::tang_bottoms); });
  CHECK(
      shop.told("put_right") ==
      "Do not press 7 again: pull it, deepen the slot or take the tang down, seat it anew; then say: "
      "reseated "
      "7. | It stands high because its tang stands on the bottom of the slot, and load does not cure that.");
  shop.fret(7, [](Fret& f) { known(f, level::Gap::some, level::Cause::slot_loose); });
  CHECK(has(shop.told("glue_and_clamp"), "let it cure"));
  CHECK(shop.level().cautions == std::vector{Hazard::glue});

  shop.fret(7, [](Fret& f) { known(f, level::Gap::some, level::Cause::nothing_found); });
  const Answer a = shop.level(R"(, "slot": 7)");
  CHECK(has(a.text, "Press 7 again under bar long: come up to "));
  CHECK(a.cautions == std::vector{Hazard::press});
  CHECK(has(a.reason, "There is a gap under its crown and nothing keeps it up: it was not pressed home."));
}

TEST_CASE("pressed again it has one step more, then the narrow bar's ladder where it is set, then no more") {
  Levelled shop;
  const auto high = [&] {
    shop.seven_high(Along::middle);
    shop.fret(7, [](Fret& f) { known(f, level::Gap::some, level::Cause::nothing_found); });
  };
  shop.does("pressed", R"({"job": 3, "slots": "4-8", "load": "2000 lb"})");
  high();
  Value press = at(shop.advice("press_again"), "press");
  CHECK(lbf(at(press, "load")) == Approx(2500)); // 25 % more
  CHECK(lbf(at(press, "least")) == Approx(2300));
  CHECK(lbf(at(press, "first")) == Approx(1250));
  CHECK(as<bool>(at(press, "again")));
  CHECK(has(shop.told("press_again"),
            "Press 7 again under bar long: come up to 1250 lb, look, then 2300 lb to 2500 lb, one step up; "
            "then say "
            "what it had, such as: pressed 7 of job 3 at 2500 lb under bar long; and read again."));
  shop.does("pressed", R"({"job": 3, "slots": [7], "load": "2500 lb", "bar": "long"})");
  high();
  CHECK(lbf(at(at(shop.advice("press_again"), "press"), "load")) == Approx(3000)); // not 3,125: the plate
  shop.does("pressed", R"({"job": 3, "slots": [7], "load": "3000 lb", "bar": "long"})");
  high();
  CHECK(
      shop.told("stop_and_level") ==
      "Press 7 no more, no bar of the shop has a further step for it: level it with about 400 grit on a flat "
      "block, then crown and polish each fret that was touched, and say: levelled 7. | It had 3000 lb last, "
      "and the press's "
      "plate, "
      "3000 lb, allows no further step: find the cause.");
  shop.does("define-bar", R"({"name": "thin", "length_mm": 8, "width_mm": 90, "narrow": true})");
  CHECK(has(shop.told("stop_and_level"), "A narrow bar is advised only once the shop has set its ladder up"));
  shop.does("set", R"({"setting": "narrow_ladder", "to": "1000 1500 2000 lb"})");
  press = at(shop.advice("press_again"), "press");
  CHECK(as<bool>(at(press, "narrow")));
  CHECK(lbf(at(press, "load")) == Approx(1000));
  CHECK(has(shop.told("press_again"), "bar thin, which is narrow and has a lower ladder of its own"));
}

TEST_CASE("pressing again is refused with its reason while the neck does not lie as it must") {
  Levelled shop;
  shop.does("press-support", R"({"job": 3, "glue_set": false})");
  shop.seven_high(Along::middle);
  shop.fret(7, [](Fret& f) { known(f, level::Gap::some, level::Cause::nothing_found); });
  CHECK(has(shop.told("press_again"),
            "Press 7 again by one step, but not before this is settled: Is all glue set?"));
  CHECK(as<std::string>(at(item(at(at(shop.advice("press_again"), "press"), "refused"), 0), "code")) ==
        "fresh_glue");
  shop.does("machine-down", R"({"machine": "press"})");
  CHECK(has(shop.told("press_again"), "The press is out of service"));
  shop.does("drop-bar", R"({"name": "long"})");
  CHECK(has(shop.told("press_again"), "No bar is defined"));
}

TEST_CASE("a fret that is high on one side has the load moved there, with less of it") {
  Levelled shop;
  shop.seven_high(Along::treble);
  for (int n = 1; n <= 20; ++n)
    shop.steady(n, n + 2, Along::bass);
  shop.does("pressed", R"({"job": 3, "slots": "18-22", "load": "2000 lb"})"); // stales nothing about 7
  shop.fret(7, [](Fret& f) { known(f, level::Gap::some, level::Cause::nothing_found); });
  const Value press = at(shop.advice("press_again"), "press");
  CHECK(as<std::string>(at(press, "side")) == "treble");
  CHECK(as<Length>(at(press, "off")).mm() == Approx(4.1667).epsilon(1e-3)); // 50/12
  CHECK(has(shop.told("press_again"), "the load up to 4.17 mm toward the treble of its middle"));
  // Asked about one line only, it is the same.
  CHECK(as<std::string>(at(at(shop.advice("press_again", R"(, "line": "treble")"), "press"), "side")) ==
        "treble");
}

TEST_CASE("a low last fret may stay where no fret will ever come after it, and is measured first") {
  Levelled shop;
  shop.steady(18, 20);
  shop.steady(19, 21);
  shop.rocks(20, 22);
  CHECK(has(shop.level().text, "on the middle 21 is high, or 22 low."));
  shop.looks_sunk(22);
  CHECK(has(shop.level().text, "on the middle 22 is low."));
  const std::string low = shop.told("treat_low");
  CHECK(
      low.starts_with("If the board will never have a fret beyond 22, leave it low, and say: 22 is the last "
                      "fret there will ever be. Else pull and reseat it, or shim it. | "));
  CHECK(
      low.ends_with(" | A last fret may stand a little low, since no string is pressed beyond it; any other "
                    "may not."));
  shop.changed([](Job& j) { j.last_ever = 22; });
  CHECK(has(shop.told("ask_how_low"), "say: 22 is 0.1 mm low. | "));
  shop.fret(22, [](Fret& f) { f.below = Length{100'000}; });
  CHECK(has(shop.told("leave_low"), "Leave 22 as it is. | "));
  shop.fret(22, [](Fret& f) { f.below = Length{200'000}; });
  CHECK(has(shop.told("treat_low"), "stands lower than 0.15 mm"));
}

TEST_CASE("when every span was read and is steady the job may be called level, but for ends that are high") {
  Levelled shop;
  for (const Along line : level::all_lines) {
    shop.steady(1, 22, line);
    for (int n = 1; n <= 20; ++n)
      shop.steady(n, n + 2, line);
  }
  const Answer a = shop.level(R"(, "only": "call")");
  CHECK(a.text == "Job 3 (test board of Bruna) may be called level along all three lines.");
  CHECK(has(a.reason, "leaves no single fret that could be off by more than 0.05 mm unnoticed"));
  CHECK(has(a.reason, "Whether 1 or 22 stands high no straightedge shows: try a feeler beside them."));
  CHECK(size(at(a.data, "may_be_called")) == 3);
  CHECK(has(shop.level().text, "all three lines may be called level."));
  shop.rocks(12, 14, Along::bass);
  CHECK(has(shop.level(R"(, "only": "call")").text, "may not be called level yet: the middle and the treble "
                                                    "may be called level; '12-14 steady on the bass' and "));
}

TEST_CASE("a fret that sprang back is seen to before it is read again") {
  Levelled shop;
  shop.does("pressed", R"({"job": 3, "slots": "9-14", "load": "2000 lb"})");
  shop.clock.s += 24 * 3600;
  shop.does("rechecked", R"({"job": 3, "sprang": [11]})");
  const Answer a = shop.level();
  CHECK(has(a.text, "11 sprang back. See whether there is a gap under the crown of 11"));
  shop.fret(11, [](Fret& f) { known(f, level::Gap::some); });
  CHECK(has(shop.told("glue_and_clamp"), "It came up again after pressing and has a gap under its crown"));
  shop.fret(11, [](Fret& f) { known(f, level::Gap::none); });
  CHECK(has(shop.told("stop_and_level"), "It came up again after pressing and lies on the board"));
}

TEST_CASE("new crowns beside worn ones are read with them, and never pressed") {
  Levelled shop;
  shop.does("new-job",
            R"({"wire": "tenth", "kind": "some_slots", "slots": "3-5", "scale_mm": 645.16, "frets": 22,
                           "nut_width_mm": 50, "far_width_mm": 50})");
  const Answer a = shop.asks("level", R"({"job": 4, "only": "next"})");
  CHECK(has(a.text, "over 1-22"));
}

TEST_CASE("where fewer than three frets stand there is nothing to lay an edge on") {
  Levelled shop;
  shop.made.sqlite->write([&](Tx& tx) {
    for (Fret f : tx.jobs().frets(3)) {
      if (f.slot > 2) f.state = FretState::made;
      tx.put(f);
    }
  });
  const Problem p = shop.unanswered("level", R"({"job": 3})");
  CHECK(p.fault == Fault::state);
  CHECK(p.text ==
        "Only 2 frets stand of job 3 (test board of Bruna) in the board, and a straightedge lies over "
        "three.");
  CHECK(shop.unanswered("level", R"({"job": 1, "slot": 9})").where == "slot");
}

TEST_CASE(
    "of one fret nothing is called level that no edge shows, and readings at odds are not passed over") {
  Levelled shop;
  for (int n = 1; n <= 20; ++n)
    shop.steady(n, n + 2);
  CHECK(has(shop.level(R"(, "slot": 9)").text, "on the middle it is level"));
  CHECK_FALSE(has(shop.level(R"(, "slot": 1)").text, "on the middle it is level"));
  CHECK(has(shop.level(R"(, "slot": 1)").text, "whether it stands high no straightedge shows"));
  shop.rocks(6, 8, Along::treble);
  shop.steady(6, 8, Along::treble);
  CHECK(has(shop.level(R"(, "slot": 7, "line": "treble")").text,
            "on the treble the readings contradict one another"));
}
