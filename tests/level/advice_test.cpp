// What is to be done next. Common practice, no source.
#include "level/advice.hpp"
#include "level/support.hpp"

using namespace bench;

namespace {

// Everything but the frets that a test is about is read as level.
std::vector<Reading> all_steady_but(const std::vector<Reading>& those, const Lines& lines) {
  std::vector<Reading> out = those;
  for (const Line line : all_lines) {
    for (const Span& span : sequence(lines)) {
      const bool told = std::any_of(those.begin(), those.end(), [&](const Reading& r) {
        return r.line == line && r.span.from < span.to && span.from < r.span.to;
      });
      if (!told) out.push_back(steady(span.from, span.to, line));
    }
  }
  return out;
}

// 7 high on the line beyond doubt: 5 to 7 and 7 to 9 are steady, as they would not be over a low 6 or 8.
std::vector<Reading> seven_high(Line line) {
  return {rocks(6, 8, line),  steady(4, 6, line), steady(8, 10, line), steady(5, 7, line),
          steady(7, 9, line), rocks(5, 8, line),  rocks(6, 9, line)};
}

Facts facts(FretFacts fret = {}) {
  Facts out;
  out.frets = {fret};
  out.neck_straight_seen = true;
  return out;
}

struct Bench {
  Lines lines;
  std::vector<Reading> readings;
  Diagnosis diagnosis;

  Bench(int slots, const std::vector<Reading>& those)
      : lines(nutward::level::lines(a_board(slots))), readings(those), diagnosis(diagnose(readings, lines)) {}
  std::vector<Advice> ask(const Facts& known) const { return advice(readings, lines, diagnosis, known); }
};

template <class T>
const T* find(const std::vector<Advice>& all, Because because) {
  for (const Advice& a : all) {
    if (a.because == because && std::holds_alternative<T>(a.step)) return &std::get<T>(a.step);
  }
  return nullptr;
}

// The same by value; it must be there.
template <class T>
T the(const std::vector<Advice>& all, Because because) {
  const T* found = find<T>(all, because);
  REQUIRE(found != nullptr);
  return *found;
}

FretFacts fret(int slot, Gap gap, Cause cause = Cause::not_asked) {
  FretFacts out;
  out.slot = slot;
  out.gap = gap;
  out.cause = cause;
  return out;
}

} // namespace

TEST_CASE("before any reading the neck is looked at, and then the whole middle line is read") {
  const Bench bench(22, {});
  const auto all = bench.ask({});
  REQUIRE(all.size() == 2);
  CHECK(find<AskNeck>(all, Because::neck_first) != nullptr);
  const auto* take = find<TakeReading>(all, Because::not_read_yet);
  REQUIRE(take != nullptr);
  CHECK(take->next.line == Line::middle);
  CHECK(take->next.span == Span{1, 22});
}

TEST_CASE("three that rock are read on before anything is pressed") {
  const Bench bench(22, {rocks(6, 8)});
  const auto all = bench.ask(facts());
  REQUIRE(all.size() == 1);
  CHECK(find<TakeReading>(all, Because::splits) != nullptr);
}

TEST_CASE("a high fret goes through its causes before it is pressed, one step at a time, and never beyond") {
  const Bench bench(22, all_steady_but(seven_high(Line::treble), nutward::level::lines(a_board(22))));
  REQUIRE(text(bench.diagnosis.on(Line::treble).agreed) == "7 high");
  CHECK(the<AskGap>(bench.ask(facts()), Because::cause_before_load).slot == 7);
  CHECK(find<StopAndLevel>(bench.ask(facts(fret(7, Gap::none))), Because::seated)->slot == 7);
  CHECK(find<AskCause>(bench.ask(facts(fret(7, Gap::some))), Because::cause_before_load)->slot == 7);
  CHECK(
      find<PutRight>(bench.ask(facts(fret(7, Gap::some, Cause::slot_dirty))), Because::cause_known)->cause ==
      Cause::slot_dirty);
  CHECK(find<GlueAndClamp>(bench.ask(facts(fret(7, Gap::some, Cause::slot_loose))), Because::slot_is_loose)
            ->slot == 7);

  Facts known = facts(fret(7, Gap::some, Cause::nothing_found));
  const auto pressed = bench.ask(known);
  CHECK(the<PressAgain>(pressed, Because::high_on_one_side).slot == 7);
  CHECK(the<PressAgain>(pressed, Because::high_on_one_side).load == Side::treble);
  CHECK(the<PressAgain>(pressed, Because::high_on_one_side).bar == Bar::long_bar);
  known.frets[0].long_bar_done = true;
  CHECK(find<StopAndLevel>(bench.ask(known), Because::no_further_step) != nullptr);
  known.narrow_ladder_set = true;
  CHECK(the<PressAgain>(bench.ask(known), Because::long_bar_at_limit).bar == Bar::narrow);
  known.frets[0].narrow_bar_done = true;
  CHECK(find<StopAndLevel>(bench.ask(known), Because::no_further_step) != nullptr);

  known.frets[0].sprang_back = true;
  CHECK(find<GlueAndClamp>(bench.ask(known), Because::sprang_back) != nullptr);
  known.frets[0].gap = Gap::none;
  CHECK(find<StopAndLevel>(bench.ask(known), Because::sprang_back) != nullptr);
  CHECK(find<PressAgain>(bench.ask(known), Because::long_bar_at_limit) == nullptr);
}

TEST_CASE("a fret that is high on both edges, or whose other edge was not read, is pressed evenly") {
  std::vector<Reading> both = seven_high(Line::treble);
  for (const Reading& r : seven_high(Line::bass))
    both.push_back(r);
  const Facts known = facts(fret(7, Gap::some, Cause::nothing_found));
  const auto on_both = Bench(22, both).ask(known);
  CHECK(the<PressAgain>(on_both, Because::gap_and_no_cause).load == Side::even);
  const auto on_one = Bench(22, seven_high(Line::treble)).ask(known);
  CHECK(the<PressAgain>(on_one, Because::gap_and_no_cause).load == Side::even);
}

TEST_CASE("the last fret that the board will ever have may stay low by 0.15 mm, any other is treated") {
  std::vector<Reading> low{rocks(20, 22), steady(19, 21), steady(18, 20), rocks(19, 22)};
  Reading seen;
  seen.felt = Felt::not_laid;
  seen.looks_sunk = {22};
  low.push_back(seen);
  const Bench bench(22, low);
  REQUIRE(text(bench.diagnosis.on(Line::middle).agreed) == "22 low");
  CHECK(the<TreatLow>(bench.ask(facts()), Because::not_the_last).slot == 22);
  Facts known = facts();
  known.last_ever = 24; // two more are to come
  CHECK(the<TreatLow>(bench.ask(known), Because::not_the_last).slot == 22);
  known.last_ever = 22;
  CHECK(the<AskHowLow>(bench.ask(known), Because::last_may_stay).slot == 22);
  FretFacts measured;
  measured.slot = 22;
  measured.below = Length{150'000};
  known.frets = {measured};
  CHECK(the<LeaveLow>(bench.ask(known), Because::last_and_untouched).slot == 22);
  known.frets[0].below = Length{151'000};
  CHECK(the<TreatLow>(bench.ask(known), Because::too_low_to_leave).slot == 22);

  // On the treble side the neighbour may be the one that is low.
  known.frets[0].below = Length{100'000};
  low.push_back(rocks(19, 21, Line::treble));
  CHECK(the<TreatLow>(Bench(22, low).ask(known), Because::too_low_to_leave).slot == 22);
}

TEST_CASE("a low fret between others is treated, and nothing is pressed down to it") {
  Reading seen = rocks(6, 8);
  seen.looks_sunk = {8};
  const auto all = Bench(22, {seen}).ask(facts());
  CHECK(the<TreatLow>(all, Because::not_the_last).slot == 8);
  for (const Advice& a : all)
    CHECK_FALSE(std::holds_alternative<PressAgain>(a.step));
}

TEST_CASE("a bow is asked about first, and once it is beyond doubt no fret of the line is treated") {
  const auto asked = Bench(22, {rocks(1, 22)}).ask({});
  CHECK(find<AskNeck>(asked, Because::one_bow_explains) != nullptr);
  CHECK(find<StraightenNeck>(asked, Because::bow_agreed) == nullptr);
  const Bench bowed(22, {rocks(1, 22), rocks(1, 12), rocks(11, 22), rocks(1, 8), rocks(14, 22)});
  REQUIRE(text(bowed.diagnosis.on(Line::middle)) == "bow high");
  const auto all = bowed.ask(facts());
  CHECK(the<StraightenNeck>(all, Because::bow_agreed).way == Way::high);
}

TEST_CASE("contradicting readings are named, and other lines go on") {
  const auto all = Bench(22, {rocks(6, 8), steady(6, 8), steady(1, 22, Line::bass)}).ask(facts());
  CHECK(the<ReadAgain>(all, Because::cannot_all_be).readings == std::vector<std::size_t>{0, 1});
  CHECK(the<TakeReading>(all, Because::not_read_yet).next.line == Line::bass);
}

TEST_CASE("a board that was read through may be called level, unless it was read too coarsely") {
  const Lines lines = nutward::level::lines(a_board(22));
  std::vector<Reading> all = all_steady_but({}, lines);
  const Bench bench(22, all);
  const auto said = bench.ask(facts());
  REQUIRE(said.size() == 1);
  CHECK(std::holds_alternative<MayCallLevel>(said[0].step));
  CHECK(said[0].lines.size() == 3);
  const LevelCall call = level_call(all, lines, bench.diagnosis.on(Line::bass));
  CHECK(call.may_be_called);
  CHECK(call.ends_high.size() == 2); // no straightedge rocks on them
  for (Reading& r : all)
    r.epsilon = quick_hand;
  const Bench quick(22, all);
  const auto coarse = advice(all, lines, quick.diagnosis, facts(), {}, quick_hand);
  REQUIRE(coarse.size() == 1);
  CHECK(std::holds_alternative<ReadFiner>(coarse[0].step));
}
