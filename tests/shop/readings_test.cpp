// Readings and what else the bench reports of frets, as the shop keeps them. Job 2 has 24 frets, all taken to
// stand until one is reported seated. What readings mean is tested in tests/level, what is said of it in
// level_test.cpp.
#include "bench.hpp"
#include "shop/touch.hpp"
#include "support/catch.hpp"

using namespace nutward;
using namespace nutward::test;

namespace {

struct Read : Shop {
  std::vector<Reading> readings(std::int64_t job = 2) {
    return seen([&](const View& v) { return v.jobs().readings(job); });
  }
  Fret fret(int slot, std::int64_t job = 2) {
    for (const Fret& f : seen([&](const View& v) { return v.jobs().frets(job); }))
      if (f.slot == slot) return f;
    throw std::runtime_error("no such fret");
  }
  Job job(std::int64_t id = 2) {
    return *seen([&](const View& v) { return v.jobs().find(id); });
  }
  // Of narrow, which the shop has none of: received, cut and seated.
  void seat() {
    does("receive", R"({"wire": 2, "count": 3, "each_mm": 600})");
    does("finished", R"({"job": 2, "stage": "cut"})");
    does("finished", R"({"job": 2, "stage": "seat"})");
  }
};

} // namespace

TEST_CASE("a reading is kept as it was said, and what was not said is filled in and marked") {
  Read shop;
  const Answer a =
      shop.does("reading", R"({"job": 2, "from": 6, "to": 8, "felt": "rocks", "line": "treble", "pivot": 7,
                               "held": "nutward", "gaps": [8], "sunk": [12]})");
  CHECK(field<std::string>(a, "line") == "treble");
  CHECK(field<bool>(a, "rocks"));
  CHECK_FALSE(field<bool>(a, "line_assumed"));
  shop.does("reading", R"({"job": 2, "about": 9, "felt": "steady", "quick": true})");
  shop.does("reading", R"({"job": 2, "sunk": [13]})");
  const auto all = shop.readings();
  REQUIRE(all.size() == 3);
  CHECK(all[0].id == field<std::int64_t>(a, "reading"));
  CHECK(all[0].is.line == level::Line::treble);
  CHECK(all[0].is.span == level::Span{6, 8});
  CHECK(all[0].is.felt == level::Felt::rocks);
  CHECK(all[0].is.pivot == 7);
  CHECK(all[0].is.held == level::Held::nutward);
  CHECK(all[0].is.gaps == std::vector{8});
  CHECK(all[0].is.looks_sunk == std::vector{12});
  CHECK(all[0].is.epsilon == level::hand);
  CHECK_FALSE((all[0].line_assumed || all[0].span_assumed));
  CHECK(all[0].taken == shop.clock.now());
  CHECK(all[1].is.line == level::Line::middle);
  CHECK(all[1].is.span == level::Span{8, 10});
  CHECK(all[1].is.felt == level::Felt::steady);
  CHECK(all[1].is.epsilon == level::quick_hand);
  CHECK((all[1].line_assumed && all[1].span_assumed));
  CHECK(all[2].is.felt == level::Felt::not_laid);
  CHECK(all[2].is.looks_sunk == std::vector{13});
}

TEST_CASE("what a hand of this shop feels is its setting, and stays with the readings taken by then") {
  Read shop;
  shop.does("reading", R"({"job": 2, "about": 9, "felt": "rocks"})");
  shop.does("set", R"({"setting": "level_hand", "to": "0.015 mm"})");
  shop.does("reading", R"({"job": 2, "about": 12, "felt": "rocks"})");
  CHECK(shop.readings()[0].is.epsilon == level::hand);
  CHECK(shop.readings()[1].is.epsilon == 0.015_mm);
}

TEST_CASE(
    "what is told more goes into the reading that was said, and with the other end held it is one more") {
  Read shop;
  const auto id = field<std::int64_t>(
      shop.does("reading", R"({"job": 2, "from": 6, "to": 9, "felt": "rocks"})"), "reading");
  const auto more = [&](const std::string& what) {
    return field<std::int64_t>(
        shop.does("reading", R"({"job": 2, "reading": )" + std::to_string(id) + ", " + what + "}"),
        "reading");
  };
  CHECK(more(R"("held": "nutward", "gaps": [8])") == id);
  CHECK(more(R"("held": "nutward", "snug": [7], "pivot": 7)") == id);
  CHECK(more(R"("line": "bass")") == id);
  REQUIRE(shop.readings().size() == 1);
  const Reading one = shop.readings()[0];
  CHECK(one.is.held == level::Held::nutward);
  CHECK(one.is.gaps == std::vector{8});
  CHECK(one.is.snug == std::vector{7});
  CHECK(one.is.pivot == 7);
  CHECK(one.is.line == level::Line::bass);
  CHECK_FALSE(one.line_assumed);

  CHECK(more(R"("held": "bodyward", "gaps": [6])") != id);
  REQUIRE(shop.readings().size() == 2);
  CHECK(shop.readings()[0].is.gaps == std::vector{8});
  CHECK(shop.readings()[1].is.held == level::Held::bodyward);
  CHECK(shop.readings()[1].is.gaps == std::vector{6});
  CHECK(shop.readings()[1].is.snug.empty());
  CHECK(shop.readings()[1].is.span == level::Span{6, 9});
  // A feeler that was tried again: the later word counts.
  CHECK(more(R"("held": "nutward", "snug": [8])") == id);
  CHECK(shop.readings()[0].is.gaps.empty());
  CHECK(shop.readings()[0].is.snug == std::vector{7, 8});
}

TEST_CASE("nothing more is told of a reading once a fret of it was worked on, nor of another job's") {
  Read shop;
  shop.seat();
  shop.does("reading", R"({"job": 2, "from": 6, "to": 9, "felt": "rocks"})");
  shop.does("finished", R"({"job": 1, "stage": "cut"})");
  shop.does("finished", R"({"job": 1, "stage": "seat"})");
  const std::string more = R"(, "reading": 1, "held": "nutward", "gaps": [8]})";
  CHECK(shop.refused("reading", R"({"job": 1)" + more).text ==
        "Job 1 (test board of Vida) has no reading 1.");
  shop.does("levelled", R"({"job": 2, "slots": [10]})");
  shop.does("reading", R"({"job": 2)" + more);
  shop.does("levelled", R"({"job": 2, "slots": [7]})");
  const Problem p = shop.refused("reading", R"({"job": 2)" + more);
  CHECK(p.fault == Fault::state);
  CHECK(p.text ==
        "A fret of that reading, '6-9 rocks, gap under 8 held nutward on the middle', has been worked on "
        "since.");
  CHECK(shop.readings().size() == 1);
}

TEST_CASE("bad readings are refused with what is wrong, where, and what would do, and nothing is kept") {
  struct Bad {
    const char *json, *text, *where, *would_do;
  };
  static constexpr Bad all[]{
      {R"({"job": 2, "from": 8, "to": 6, "felt": "rocks"})", "The span 8 to 6 runs the wrong way round.",
       "from", "Say 6 to 8."},
      {R"({"job": 2, "from": 20, "to": 26, "felt": "rocks"})", "No fret stands in slot 26.", "from",
       "Say frets from 1 to 24."},
      {R"({"job": 2, "from": 6, "to": 7, "felt": "steady"})",
       "A straightedge over 6 to 7 rests on two frets and cannot rock.", "from",
       "Say a span of at least three frets."},
      {R"({"job": 2, "about": 1, "felt": "rocks"})", "Fret 1 has no neighbour on its nutward side.", "about",
       "Say a span, such as 1 to 3."},
      {R"({"job": 2, "about": 24, "felt": "rocks"})", "Fret 24 has no neighbour on its bodyward side.",
       "about", "Say a span, such as 22 to 24."},
      {R"({"job": 2, "about": 30, "felt": "rocks"})", "No fret stands in slot 30.", "about",
       "Say frets from 1 to 24."},
      {R"({"job": 2, "from": 6, "to": 8, "felt": "rocks", "pivot": 9})",
       "An edge over 6 to 8 cannot rock on fret 9.", "pivot", "Say a fret between the ends of the span."},
      {R"({"job": 2, "from": 6, "to": 8, "felt": "rocks", "pivot": 6})",
       "An edge over 6 to 8 cannot rock on fret 6.", "pivot", "Say a fret between the ends of the span."},
      {R"({"job": 2, "from": 6, "to": 8, "felt": "steady", "pivot": 7})",
       "An edge that is steady does not pivot on fret 7.", "pivot", "Say no pivot, or a reading that rocks."},
      {R"({"job": 2, "from": 6, "to": 8, "felt": "rocks", "gaps": [8]})",
       "An edge that rocks shows a gap on the side that is not held down.", "held",
       "Say which end was held down: nutward or bodyward."},
      {R"({"job": 2, "from": 6, "to": 8, "felt": "rocks", "held": "nutward", "gaps": [9]})",
       "Fret 9 does not lie under the edge over 6 to 8.", "gaps", "Say a fret of the span."},
      {R"({"job": 2, "from": 6, "to": 8, "felt": "rocks", "held": "nutward", "snug": [6]})",
       "The edge rests on fret 6: no feeler goes under it.", "snug",
       "Say a fret that the edge is not held down on."},
      {R"({"job": 2, "sunk": [7], "high": [7]})", "Fret 7 cannot look both sunk and high.", "sunk",
       "Say one of the two."},
      {R"({"job": 2, "from": 6, "felt": "rocks"})", "A span is from one fret to another.", "to",
       "Say both, as in: 6 to 8 rocks."},
      {R"({"job": 2, "from": 6, "to": 8})", "Does the edge rock there, or is it steady?", "felt",
       "Say it with it, as in: 6 to 8 rocks."},
      {R"({"job": 2, "felt": "rocks"})", "The reading does not say over which frets.", "from",
       "Say a span such as 6 to 8, or a fret."},
      {R"({"job": 2, "line": "bass"})", "Nothing was read.", "felt",
       "Say for example: 6 to 8 rocks on the treble side; 5 to 7 steady; 7 looks sunk."},
  };
  Read shop;
  for (const Bad& bad : all) {
    INFO(bad.json);
    const Problem p = shop.refused("reading", bad.json);
    CHECK(p.fault == Fault::value);
    CHECK(p.text == bad.text);
    CHECK(p.where == bad.where);
    CHECK(p.would_do == bad.would_do);
  }
  CHECK(shop.readings().empty());
}

TEST_CASE("where a fret is out, no edge ends on its slot, and a span around a fret skips it") {
  Read shop;
  shop.seat();
  shop.does("pulled", R"({"job": 2, "slots": [8]})");
  CHECK(shop.refused("reading", R"({"job": 2, "from": 6, "to": 8, "felt": "rocks"})").text ==
        "No fret stands in slot 8.");
  CHECK(shop.refused("crown-gap", R"({"job": 2, "slots": [8], "gap": "some"})").fault == Fault::state);
  shop.does("reading", R"({"job": 2, "about": 9, "felt": "rocks"})");
  CHECK(shop.readings()[0].is.span == level::Span{7, 10});
}

TEST_CASE("several readings in one call are one thing to take back") {
  Read shop;
  const auto outcome =
      shop.executor->run(shop.order({{"reading", R"({"job": 2, "about": 6, "felt": "steady"})"},
                                     {"reading", R"({"job": 2, "about": 7, "felt": "rocks"})"},
                                     {"reading", R"({"job": 2, "about": 8, "felt": "steady"})"}}));
  REQUIRE(outcome.answer);
  CHECK(shop.readings().size() == 3);
  shop.does("undo");
  CHECK(shop.readings().empty());
}

TEST_CASE("a straightened neck ends every reading from before; a bowed one was not seen straight") {
  Read shop;
  shop.does("neck", R"({"job": 2, "is": "straight"})");
  CHECK(shop.job().straight_seen == shop.clock.now());
  shop.does("neck", R"({"job": 2, "is": "relief"})");
  CHECK_FALSE(shop.job().straight_seen);
  shop.does("reading", R"({"job": 2, "about": 6, "felt": "rocks"})");
  const auto counts = [&] {
    return shop.seen([&](const View& v) {
      const Job job = *v.jobs().find(2);
      return level::counts(v.jobs().readings(2).back().is, touched(job, v, job.slots));
    });
  };
  CHECK(counts());
  shop.does("neck", R"({"job": 2, "is": "straightened"})");
  CHECK(shop.job().straight_seen == shop.clock.now());
  CHECK_FALSE(counts());
  shop.does("reading", R"({"job": 2, "about": 6, "felt": "steady"})");
  CHECK(counts());
}

TEST_CASE("gap, cause and how low stand with the fret until it is worked on again") {
  Read shop;
  CHECK(shop.refused("crown-gap", R"({"job": 2, "slots": [9], "gap": "some"})").text ==
        "No fret of slot 9 of job 2 (long board of Anton) is on record.");
  shop.seat();
  shop.does("crown-gap", R"({"job": 2, "slots": [9, 10], "gap": "some"})");
  shop.does("crown-gap", R"({"job": 2, "slots": [11], "gap": "none"})");
  shop.does("cause", R"({"job": 2, "slots": [9], "cause": "wire_misbent"})");
  shop.does("stands-low", R"({"job": 2, "slot": 24, "below_mm": 0.12})");
  CHECK(shop.fret(9).gap == level::Gap::some);
  CHECK(shop.fret(10).gap == level::Gap::some);
  CHECK(shop.fret(11).gap == level::Gap::none);
  CHECK(shop.fret(12).gap == level::Gap::not_asked);
  CHECK(shop.fret(9).cause == level::Cause::wire_misbent);
  CHECK(shop.fret(24).below == 0.12_mm);
  shop.does("pressed", R"({"job": 2, "slots": [9, 24]})");
  CHECK(shop.fret(9).gap == level::Gap::not_asked);
  CHECK(shop.fret(9).cause == level::Cause::not_asked);
  CHECK_FALSE(shop.fret(24).below);
  CHECK(shop.fret(10).gap == level::Gap::some);
}

TEST_CASE("every cause is kept as the one that was said") {
  Read shop;
  shop.seat();
  static constexpr std::pair<const char*, level::Cause> all[]{
      {"nothing_found", level::Cause::nothing_found}, {"slot_shallow", level::Cause::slot_shallow},
      {"slot_dirty", level::Cause::slot_dirty},       {"tang_bottoms", level::Cause::tang_bottoms},
      {"wire_misbent", level::Cause::wire_misbent},   {"slot_loose", level::Cause::slot_loose}};
  for (const auto& [word, is] : all) {
    shop.does("cause", std::string(R"({"job": 2, "slots": [9], "cause": ")") + word + "\"}");
    CHECK(shop.fret(9).cause == is);
  }
}

TEST_CASE("the last fret that there will ever be is the board's last") {
  Read shop;
  const Problem p = shop.refused("last-fret", R"({"job": 2, "slot": 23})");
  CHECK(p.text == "The board of job 2 (long board of Anton) has slots up to 24: 23 is not its last.");
  CHECK(p.where == "slot");
  CHECK_FALSE(shop.job().last_ever);
  shop.does("last-fret", R"({"job": 2, "slot": 24})");
  CHECK(shop.job().last_ever == 24);
}

TEST_CASE(
    "what is glued waits for its glue, what is reseated was never pressed, and what is levelled stays so") {
  Read shop;
  shop.seat();
  shop.does("press-support", R"({"job": 2, "cradled": true, "head_clear": true, "nothing_bridges": true,
                                 "glue_set": true})");
  shop.does("pressed", R"({"job": 2, "slots": [9, 10, 11], "load_n": 4000})");
  shop.clock.s += 24 * 3600;
  shop.does("rechecked", R"({"job": 2, "sprang": [9]})");
  CHECK(shop.fret(9).state == FretState::sprang);
  const Answer glued = shop.does("glued", R"({"job": 2, "slots": [9]})");
  CHECK(glued.cautions.front() == Hazard::glue);
  CHECK(shop.fret(9).state == FretState::pressed);
  CHECK_FALSE(shop.job().bed.glue_set);
  CHECK(shop.seen([](const View& v) { return v.jobs().pressings(2).back().gone; }).empty());
  const Answer reseated = shop.does("reseated", R"({"job": 2, "slots": [10]})");
  CHECK(std::count(reseated.cautions.begin(), reseated.cautions.end(), Hazard::iron) == 1);
  CHECK(shop.fret(10).state == FretState::seated);
  CHECK(shop.seen([](const View& v) { return v.jobs().pressings(2).back().gone; }) == std::vector{10});
  shop.does("levelled", R"({"job": 2, "slots": [11]})");
  CHECK(shop.fret(11).state == FretState::level);
}

TEST_CASE("of a job that is done nothing more is reported") {
  Read shop;
  shop.seat();
  shop.does("finished", R"({"job": 2, "stage": "done"})", true);
  static constexpr std::pair<const char*, const char*> all[]{
      {"reading", R"({"job": 2, "about": 9, "felt": "rocks"})"},
      {"crown-gap", R"({"job": 2, "slots": [9], "gap": "some"})"},
      {"cause", R"({"job": 2, "slots": [9], "cause": "slot_loose"})"},
      {"stands-low", R"({"job": 2, "slot": 9, "below_mm": 0.1})"},
      {"last-fret", R"({"job": 2, "slot": 24})"},
      {"neck", R"({"job": 2, "is": "straight"})"},
      {"reseated", R"({"job": 2, "slots": [9]})"},
      {"glued", R"({"job": 2, "slots": [9]})"},
      {"levelled", R"({"job": 2, "slots": [9]})"}};
  for (const auto& [row, json] : all) {
    INFO(row);
    const Problem p = shop.refused(row, json);
    CHECK(p.fault == Fault::state);
    CHECK(p.text == "Job 2 (long board of Anton) is done.");
  }
}

TEST_CASE("over fewer than three frets no edge is laid") {
  Read shop;
  shop.does("finished", R"({"job": 1, "stage": "cut"})");
  shop.does("finished", R"({"job": 1, "stage": "seat"})");
  shop.does("pulled", R"({"job": 1, "slots": [1, 2]})");
  const Problem p = shop.refused("reading", R"({"job": 1, "about": 3, "felt": "rocks"})");
  CHECK(p.fault == Fault::state);
  CHECK(p.text.starts_with("Only 2 frets stand of job 1"));
  // What was seen of one fret is kept all the same.
  shop.does("crown-gap", R"({"job": 1, "slots": [3], "gap": "some"})");
  CHECK(shop.fret(3, 1).gap == level::Gap::some);
}
