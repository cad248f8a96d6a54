// What a reading may say, what is filled in, and for how long it counts.
#include "level/support.hpp"

using namespace bench;

namespace {

std::string refused(const Reading& r, const Lines& lines) {
  try {
    check(r, lines);
  } catch (const BadReading& bad) {
    return bad.field + ": " + bad.what() + " " + bad.would_do;
  }
  return "taken";
}

Said about(int slot, Felt felt) {
  Said said;
  said.about = slot;
  said.felt = felt;
  return said;
}

} // namespace

TEST_CASE("a reading that cannot be is refused with what would do") {
  const Lines lines = nutward::level::lines(a_board(22));
  CHECK(refused(rocks(6, 8), lines) == "taken");
  CHECK(refused(rocks(8, 6), lines) == "span: The span 8 to 6 runs the wrong way round. 6 to 8");
  CHECK(refused(rocks(20, 23), lines) == "span: No fret stands in slot 23. frets from 1 to 22");
  CHECK(refused(rocks(0, 3), lines) == "span: No fret stands in slot 0. frets from 1 to 22");
  CHECK(
      refused(steady(6, 7), lines) ==
      "span: A straightedge over 6 to 7 rests on two frets and cannot rock. a span of at least three frets");
  Reading r = rocks(6, 9);
  r.pivot = 9;
  CHECK(refused(r, lines) ==
        "pivot: An edge over 6 to 9 cannot rock on fret 9. a fret between the ends of the span");
  r = steady(6, 9);
  r.pivot = 7;
  CHECK(refused(r, lines) ==
        "pivot: An edge that is steady does not pivot on fret 7. no pivot, or a reading that rocks");
  r = rocks(6, 9);
  r.gaps = {8};
  CHECK(refused(r, lines) ==
        "held: An edge that rocks shows a gap on the side that is not held down. which end was "
        "held down: nutward or bodyward");
  r.held = Held::nutward;
  CHECK(refused(r, lines) == "taken");
  r.gaps = {6};
  CHECK(refused(r, lines) ==
        "gaps: The edge rests on fret 6: no feeler goes under it. a fret that the edge is not held down on");
  r.gaps = {9}; // the end that is not held down
  CHECK(refused(r, lines) == "taken");
  r.gaps = {10};
  CHECK(refused(r, lines) == "gaps: Fret 10 does not lie under the edge over 6 to 9. a fret of the span");
  r.gaps = r.snug = {8};
  CHECK(refused(r, lines) == "gaps: The feeler cannot both go under fret 8 and not. one of the two");
  r = rocks(6, 9);
  r.looks_sunk = r.looks_high = {7};
  CHECK(refused(r, lines) == "looks_sunk: Fret 7 cannot look both sunk and high. one of the two");
  r = rocks(6, 9);
  r.epsilon = Length{400'000};
  CHECK(refused(r, lines) == "epsilon: No hand feels 0.400 mm and nothing less. 0.001 to 0.3 mm");
  r = {};
  r.felt = Felt::not_laid;
  CHECK(refused(r, lines) ==
        "felt: Nothing was laid and nothing was seen. rocks, steady, or a fret that looks sunk or high");
}

TEST_CASE("of several readings the bad one is named") {
  const Lines lines = nutward::level::lines(a_board(22));
  CHECK_THROWS_WITH(diagnose(std::vector{rocks(6, 8), rocks(9, 7)}, lines),
                    "Reading 2: The span 9 to 7 runs the wrong way round.");
}

TEST_CASE("9 rocks is 8 to 10 on the middle line, and both are said to be assumed") {
  const Lines lines = nutward::level::lines(a_board(22));
  const Meant meant = nutward::level::meant(about(9, Felt::rocks), lines);
  CHECK(meant.reading.span == Span{8, 10});
  CHECK(meant.reading.line == Line::middle);
  CHECK(meant.reading.epsilon == hand);
  CHECK(meant.line_assumed);
  CHECK(meant.span_assumed);
  Said said = about(9, Felt::rocks);
  said.line = Line::treble;
  said.span = Span{7, 12};
  said.quick = true;
  const Meant whole = nutward::level::meant(said, lines);
  CHECK_FALSE(whole.line_assumed);
  CHECK_FALSE(whole.span_assumed);
  CHECK(whole.reading.epsilon == quick_hand);
  CHECK_THROWS_WITH(nutward::level::meant(about(22, Felt::rocks), lines),
                    "Fret 22 has no neighbour on its bodyward side.");
  CHECK_THROWS_WITH(nutward::level::meant(Said{}, lines), "The reading does not say over which frets.");
  const Lines some = nutward::level::lines(a_board(22), std::vector{3, 6, 9, 10});
  CHECK(nutward::level::meant(about(6, Felt::rocks), some).reading.span == Span{3, 9});
}

TEST_CASE("what looks sunk is low, and tells which of three it is") {
  const Lines lines = nutward::level::lines(a_board(22));
  Reading seen = rocks(6, 8);
  seen.looks_sunk = {8};
  CHECK(text(diagnose(std::vector{seen}, lines).on(Line::middle)) == "8 low");
  Said said;
  said.felt = Felt::not_laid;
  said.looks_high = {7};
  const std::vector both{rocks(6, 8), nutward::level::meant(said, lines).reading};
  CHECK(text(diagnose(both, lines).on(Line::middle)) == "7 high");
}

TEST_CASE(
    "held toward the nut with a gap under 6 and none under 5, it is 5 that stops the edge, or a little 7") {
  const Lines lines = nutward::level::lines(a_board(22));
  Reading r = rocks(4, 8);
  r.held = Held::nutward;
  r.gaps = {6};
  r.snug = {5};
  const auto found = diagnose(std::vector{r}, lines).on(Line::middle);
  CHECK(text(found) == "5 high | 7 high | 4 low | bow high");
  // Under an edge from 4 to a high 7 fret 6 stands off by 0.687 of it and 5 by 0.353 (worked out): over 0.021
  // and up to 0.02 mm.
  REQUIRE(found.explanations[1].parts.size() == 1);
  CHECK(found.explanations[1].parts[0].least == Approx(0.021 / 0.687).epsilon(0.002));
  CHECK(found.explanations[1].parts[0].most == Approx(0.02 / 0.353).epsilon(0.002));
}

TEST_CASE("a reading stops counting once a fret under it was pressed again") {
  const Lines lines = nutward::level::lines(a_board(22));
  Reading old = rocks(6, 8);
  old.revision = 3;
  const std::vector readings{old, rocks(17, 19)};
  CHECK(counts(old, std::vector{Touched{9, 4}, Touched{7, 3}}));
  CHECK_FALSE(counts(old, std::vector{Touched{8, 4}}));
  const auto found = diagnose(readings, lines, {}, std::vector{Touched{7, 4}});
  CHECK(found.stale == std::vector<std::size_t>{0});
  CHECK(found.on(Line::middle).counted == std::vector<std::size_t>{1});
  CHECK(text(found.on(Line::middle)) == "18 high | 17 low | 19 low");
}
