#include "shop/level_data.hpp"

#include "shop/press_words.hpp"

namespace nutward::shop {

namespace {

using Fields = std::vector<std::pair<std::string, Value>>;

constexpr std::array<std::string_view, 3> felt_codes{"steady", "rocks", "not_laid"};
constexpr std::array<std::string_view, 3> why_codes{"splits", "sequence", "straight"};
constexpr std::array<std::string_view, 3> side_codes{"even", "bass", "treble"};

Length length_of(double mm) {
  return {static_cast<std::int64_t>(mm * 1e6)};
}

Value line_of(level::Line line) {
  return std::string(word_of(line));
}

template <class Items, class Make>
Value each(const Items& items, Make make) {
  std::vector<Value> out;
  out.reserve(items.size());
  for (const auto& item : items)
    out.push_back(make(item));
  return list(std::move(out));
}

// A bow has no slot.
Fields fields_of(const level::Off& off) {
  Fields out{{"way", std::string(word_of(off.way))}};
  if (off.slot) out.insert(out.begin(), {"slot", std::int64_t{*off.slot}});
  return out;
}

Value offs(const std::vector<level::Off>& all) {
  return each(all, [](const level::Off& off) { return record(fields_of(off)); });
}

Value span_of(const level::Span& span) {
  return record({{"from", std::int64_t{span.from}}, {"to", std::int64_t{span.to}}});
}

Value data_of(const level::Explanation& e) {
  return record({{"parts", each(e.parts,
                                [](const level::Amount& a) {
                                  Fields f = fields_of(a.off);
                                  f.emplace_back("least", length_of(a.least));
                                  f.emplace_back("most", length_of(a.most));
                                  return record(std::move(f));
                                })},
                 {"rarity", e.rarity},
                 {"barely", e.barely}});
}

Value unseen(const std::vector<level::Unseen>& all) {
  return each(all, [](const level::Unseen& u) {
    Fields f = fields_of(u.off);
    f.emplace_back("most", length_of(u.most));
    return record(std::move(f));
  });
}

Value data_of(const level::LineFinding& f, const Levelling& l) {
  const level::LevelCall& call = l.call(f.line);
  return record(
      {{"line", line_of(f.line)},
       {"finding", std::string(word_of(f.finding))},
       {"explanations", each(f.explanations, [](const level::Explanation& e) { return data_of(e); })},
       {"agreed", offs(f.agreed)},
       {"one_of", each(f.one_of,
                       [&](const std::vector<level::Off>& one) {
                         return record({{"offs", offs(likeliest_first(f, one))}});
                       })},
       {"cannot_all_be", each(f.cannot_all_be, [&](std::size_t i) { return Value{l.kept.at(i).id}; })},
       {"may_be_called", call.may_be_called},
       {"unseen", unseen(call.unseen)},
       {"ends_high", unseen(call.ends_high)},
       {"to_read", each(l.to_read(f.line), span_of)}});
}

Value data_of(const Reading& r, bool counts) {
  return record({{"reading", r.id},
                 {"line", line_of(r.is.line)},
                 {"from", std::int64_t{r.is.span.from}},
                 {"to", std::int64_t{r.is.span.to}},
                 {"felt", std::string(felt_codes.at(static_cast<std::size_t>(r.is.felt)))},
                 {"line_assumed", r.line_assumed},
                 {"span_assumed", r.span_assumed},
                 {"epsilon", r.is.epsilon},
                 {"taken", r.taken},
                 {"counts", counts},
                 {"text", words_of(r.is)}});
}

Value data_of(const level::Next& n) {
  return record({{"line", line_of(n.line)},
                 {"from", std::int64_t{n.span.from}},
                 {"to", std::int64_t{n.span.to}},
                 {"why", std::string(why_codes.at(static_cast<std::size_t>(n.why)))},
                 {"explanations", static_cast<std::int64_t>(n.before)},
                 {"if_rocks", static_cast<std::int64_t>(n.if_rocks)},
                 {"if_steady", static_cast<std::int64_t>(n.if_steady)}});
}

Value data_of(const PressedAgain& p, const level::PressAgain& step, const Setup& set) {
  Fields out{{"narrow", step.bar == level::Bar::narrow},
             {"side", std::string(side_codes.at(static_cast<std::size_t>(step.load)))},
             {"refused", data_of(p.refused, set)},
             {"cannot", p.cannot}};
  if (!p.fret) return record(std::move(out));
  out.emplace_back("bar", p.bar.name);
  out.emplace_back("first", p.first);
  out.emplace_back("least", p.least);
  out.emplace_back("load", p.load);
  out.emplace_back("again", p.fret->again);
  if (p.to_side) out.emplace_back("off", p.to_side->most);
  return record(std::move(out));
}

Value data_of(const level::Advice& advice, const ToldAdvice& t, const Setup& set) {
  Fields out{{"lines", each(advice.lines, line_of)},
             {"step", std::string(t.step)},
             {"because", std::string(t.because)},
             {"text", t.what},
             {"why", t.why}};
  if (t.slot) out.emplace_back("slot", std::int64_t{*t.slot});
  if (const auto* step = std::get_if<level::PressAgain>(&advice.step); step != nullptr && t.press)
    out.emplace_back("press", data_of(*t.press, *step, set));
  return record(std::move(out));
}

Give many(Give g) {
  return g.often = Often::many, g;
}
Give at_times(Give g) {
  return g.often = Often::at_times, g;
}
Give line(std::string_view name, std::string_view what) {
  return gives::one_of(name, what, {"bass", "middle", "treble"});
}
Give off_slot() {
  return {"slot", Kind::slot, "which fret; not there: the bow of the line", Often::at_times};
}
Give off_way() {
  return gives::one_of("way", "of a bow: high is a hump, low is relief", {"high", "low"});
}

std::vector<Give> press_fields() {
  return {{"narrow", Kind::yes, "whether under the narrow bar"},
          gives::one_of("side", "to which the load moves", {"even", "bass", "treble"}),
          gives::reasons("refused", "why it is not pressed now"),
          {"cannot", Kind::words, "why no bar could be asked about; empty: one could"},
          {"bar", Kind::name, "under which", Often::at_times},
          {"first", Kind::load, "come up to this, look", Often::at_times},
          {"least", Kind::load, "the smallest step up", Often::at_times},
          {"load", Kind::load, "and the largest", Often::at_times},
          {"again", Kind::yes, "whether it is a step up from the last load", Often::at_times},
          {"off", Kind::length, "how far off the fret's middle at most", Often::at_times}};
}

std::vector<Give> line_fields() {
  return {line("line", "which"),
          gives::one_of("finding", "what the readings come to",
                        {"unread", "level", "bow", "frets", "many", "contradiction"}),
          gives::records("explanations", "all smallest ones, the likeliest first",
                         {gives::records("parts", "what is off",
                                         {off_slot(),
                                          off_way(),
                                          {"least", Kind::length, "by at least"},
                                          {"most", Kind::length, "and at most; 1 mm: or more"}}),
                          {"rarity", Kind::number, "the less the likelier"},
                          {"barely", Kind::yes, "whether the readings all but rule it out"}}),
          gives::records("agreed", "in every explanation", {off_slot(), off_way()}),
          gives::records("one_of", "besides, of each list every explanation has exactly one",
                         {gives::records("offs", "the likeliest first", {off_slot(), off_way()})}),
          {"cannot_all_be", Kind::count, "readings that contradict one another", Often::many},
          {"may_be_called", Kind::yes, "whether the line may be called level"},
          gives::records("unseen", "what one fret could be off by unnoticed, beyond what is level",
                         {off_slot(), off_way(), {"most", Kind::length, "by at most"}}),
          gives::records("ends_high", "the same of an end that is high, which only a feeler shows",
                         {off_slot(), off_way(), {"most", Kind::length, "by at most"}}),
          gives::records("to_read", "spans still to read, in order",
                         {{"from", Kind::slot, "its nutward end"}, {"to", Kind::slot, "and its bodyward"}})};
}

} // namespace

Value data_of(const LevelAsked& a, const Levelling& l, const std::vector<ToldAdvice>& told,
              std::size_t first) {
  std::vector<Value> lines, readings, advice, may;
  for (const level::LineFinding& f : l.diagnosis.lines) {
    if (a.line && f.line != *a.line) continue;
    lines.push_back(data_of(f, l));
    if (l.call(f.line).may_be_called) may.push_back(line_of(f.line));
  }
  for (const Reading& r : l.kept)
    readings.push_back(data_of(r, true));
  for (const auto* those : {&l.stale, &l.overruled}) {
    for (const Reading& r : *those)
      readings.push_back(data_of(r, false));
  }
  for (std::size_t i = 0; i < told.size(); ++i)
    advice.push_back(data_of(l.advice[i], told[i], a.set));
  Fields out{{"job", ref(Thing::job, a.job.id)},      {"lines", list(std::move(lines))},
             {"may_be_called", list(std::move(may))}, {"readings", list(std::move(readings))},
             {"advice", list(std::move(advice))},     {"first", static_cast<std::int64_t>(first) + 1},
             {"sprang", list_of(l.sprang)},           {"foreseen", l.foreseen}};
  if (l.next) out.emplace_back("next", data_of(*l.next));
  return record(std::move(out));
}

std::vector<Give> level_gives() {
  return {gives::job,
          gives::records("lines", "each that was asked about", line_fields()),
          many(line("may_be_called", "lines that may be called level")),
          gives::records(
              "readings", "in the order taken, those that count first",
              {{"reading", Kind::count, "its number"},
               line("line", "which"),
               {"from", Kind::slot, "its nutward end"},
               {"to", Kind::slot, "and its bodyward"},
               gives::one_of("felt", "what was felt", {felt_codes.begin(), felt_codes.end()}),
               {"line_assumed", Kind::yes, "whether the line was not said"},
               {"span_assumed", Kind::yes, "whether the span was not said"},
               {"epsilon", Kind::length, "what the hand feels"},
               {"taken", Kind::at, "when"},
               {"counts", Kind::yes, "false: a fret there was touched since, or it was read otherwise twice"},
               {"text", Kind::words, "as it was said"}}),
          gives::records("advice", "what to do, first things first",
                         {many(line("lines", "which it is about")),
                          gives::one_of("step", "what", step_codes()),
                          gives::one_of("because", "why", because_codes()),
                          {"text", Kind::words, "what, in words"},
                          {"why", Kind::words, "and why"},
                          at_times(gives::slot),
                          {"press", Kind::words, "of press_again", Often::at_times, press_fields()}}),
          {"first", Kind::count, "which advice the answer leads with, from 1"},
          {"sprang", Kind::slot, "frets that sprang back and were not touched since", Often::many},
          {"foreseen", Kind::yes, "whether no fret is reported seated yet, so that all are taken to stand"},
          {"next",
           Kind::words,
           "the reading to take now",
           Often::at_times,
           {line("line", "which"),
            {"from", Kind::slot, "its nutward end"},
            {"to", Kind::slot, "and its bodyward"},
            gives::one_of("why", "that one", {why_codes.begin(), why_codes.end()}),
            {"explanations", Kind::count, "with splits: so many are left"},
            {"if_rocks", Kind::count, "of them, if it rocks"},
            {"if_steady", Kind::count, "and if it is steady"}}}};
}

} // namespace nutward::shop
