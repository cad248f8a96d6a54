#include "level/advice.hpp"

#include <algorithm>

namespace nutward::level {

namespace {

struct Known {
  std::span<const Reading> readings;
  const Lines& lines;
  const Diagnosis& diagnosis;
  const Facts& facts;
  const Plan& plan;
};

// A fret that is off beyond doubt, and on which lines.
struct Settled {
  int slot = 0;
  Way way = Way::high;
  std::vector<Line> lines;
};

bool has(const std::vector<Line>& lines, Line line) {
  return std::find(lines.begin(), lines.end(), line) != lines.end();
}

FretFacts facts_of(const Facts& facts, int slot) {
  for (const FretFacts& fret : facts.frets) {
    if (fret.slot == slot) return fret;
  }
  FretFacts out;
  out.slot = slot;
  return out;
}

const Off* agreed_bow(const LineFinding& finding) {
  // The bow comes before every slot.
  return !finding.agreed.empty() && !finding.agreed.front().slot ? &finding.agreed.front() : nullptr;
}

void settle(std::vector<Settled>& all, const Off& off, Line line) {
  if (!off.slot) return;
  auto at = std::find_if(all.begin(), all.end(),
                         [&](const Settled& s) { return s.slot == *off.slot && s.way == off.way; });
  if (at == all.end()) at = all.insert(at, {*off.slot, off.way, {}});
  if (!has(at->lines, line)) at->lines.push_back(line);
}

std::vector<Settled> settled(const Diagnosis& diagnosis) {
  std::vector<Settled> out;
  for (const LineFinding& finding : diagnosis.lines) {
    if (agreed_bow(finding) != nullptr) continue;
    for (const Off& off : finding.agreed)
      settle(out, off, finding.line);
  }
  std::sort(out.begin(), out.end(), [](const Settled& a, const Settled& b) {
    return a.slot != b.slot ? a.slot < b.slot : a.way < b.way;
  });
  return out;
}

// Whether some explanation of some line has it so.
bool may_be(const Diagnosis& diagnosis, int slot, Way way) {
  for (const LineFinding& finding : diagnosis.lines) {
    for (const Explanation& e : finding.explanations) {
      for (const Amount& a : e.parts) {
        if (a.off == Off{slot, way}) return true;
      }
    }
  }
  return false;
}

// The readings of a line leave no room for the fret to be high there.
bool clear(const Known& known, int slot, Line line) {
  const LineFinding& finding = known.diagnosis.on(line);
  const Off high{slot, Way::high};
  if (finding.finding == Finding::level) {
    const LevelCall call = level_call(known.readings, known.lines, finding, known.plan);
    return std::none_of(call.unseen.begin(), call.unseen.end(),
                        [&](const Unseen& u) { return u.off == high; });
  }
  if (finding.explanations.empty()) return false;
  return std::none_of(finding.explanations.begin(), finding.explanations.end(), [&](const Explanation& e) {
    return std::any_of(e.parts.begin(), e.parts.end(), [&](const Amount& a) { return a.off == high; });
  });
}

// On one edge and not on the other: the load moves to that side.
Side side_of(const Known& known, const Settled& fret) {
  const bool bass = has(fret.lines, Line::bass), treble = has(fret.lines, Line::treble);
  if (bass && !treble && clear(known, fret.slot, Line::treble)) return Side::bass;
  if (treble && !bass && clear(known, fret.slot, Line::bass)) return Side::treble;
  return Side::even;
}

Advice press_again(const Known& known, const Settled& fret, const FretFacts& of) {
  const Side side = side_of(known, fret);
  if (!of.long_bar_done)
    return {fret.lines, PressAgain{fret.slot, Bar::long_bar, side},
            side == Side::even ? Because::gap_and_no_cause : Because::high_on_one_side};
  if (known.facts.narrow_ladder_set && !of.narrow_bar_done)
    return {fret.lines, PressAgain{fret.slot, Bar::narrow, side}, Because::long_bar_at_limit};
  return {fret.lines, StopAndLevel{fret.slot}, Because::no_further_step};
}

Advice for_high(const Known& known, const Settled& fret) {
  const FretFacts of = facts_of(known.facts, fret.slot);
  const int slot = fret.slot;
  if (of.gap == Gap::not_asked) return {fret.lines, AskGap{slot}, Because::cause_before_load};
  if (of.gap == Gap::none)
    return {fret.lines, StopAndLevel{slot}, of.sprang_back ? Because::sprang_back : Because::seated};
  if (of.sprang_back) return {fret.lines, GlueAndClamp{slot}, Because::sprang_back};
  switch (of.cause) {
  case Cause::not_asked:
    return {fret.lines, AskCause{slot}, Because::cause_before_load};
  case Cause::nothing_found:
    return press_again(known, fret, of);
  case Cause::slot_loose:
    return {fret.lines, GlueAndClamp{slot}, Because::slot_is_loose};
  default:
    return {fret.lines, PutRight{slot, of.cause}, Because::cause_known};
  }
}

Advice for_low(const Known& known, const Settled& fret) {
  const auto& at = known.lines.on(Line::middle);
  const int slot = fret.slot;
  if (slot != at.back().slot || known.facts.last_ever != slot)
    return {fret.lines, TreatLow{slot}, Because::not_the_last};
  // Below its neighbour for certain only where that one may not be low too.
  const int neighbour = at[at.size() - 2].slot;
  if (may_be(known.diagnosis, slot, Way::high) || may_be(known.diagnosis, neighbour, Way::low))
    return {fret.lines, TreatLow{slot}, Because::too_low_to_leave};
  const FretFacts of = facts_of(known.facts, slot);
  if (!of.below) return {fret.lines, AskHowLow{slot}, Because::last_may_stay};
  if (of.below->nm > 0 && *of.below <= most_left_low)
    return {fret.lines, LeaveLow{slot}, Because::last_and_untouched};
  return {fret.lines, TreatLow{slot}, Because::too_low_to_leave};
}

// Lines of one finding, with what is to be done about all of them.
template <class Take>
void of_lines(const Diagnosis& diagnosis, Finding finding, const Take& take) {
  for (const LineFinding& f : diagnosis.lines) {
    if (f.finding == finding) take(f);
  }
}

// Lines that bow the same way share one piece of advice.
void add_bows(const Diagnosis& diagnosis, std::vector<Advice>& out) {
  for (const Way way : {Way::high, Way::low}) {
    std::vector<Line> bowed;
    for (const LineFinding& f : diagnosis.lines) {
      const Off* bow = agreed_bow(f);
      if (bow != nullptr && bow->way == way) bowed.push_back(f.line);
    }
    if (!bowed.empty()) out.push_back({bowed, StraightenNeck{way}, Because::bow_agreed});
  }
}

void ask_neck(const Diagnosis& diagnosis, const Facts& facts, std::vector<Advice>& out) {
  if (facts.neck_straight_seen) return;
  std::vector<Line> may_bow;
  of_lines(diagnosis, Finding::bow, [&](const LineFinding& f) {
    if (agreed_bow(f) == nullptr) may_bow.push_back(f.line);
  });
  if (!may_bow.empty())
    out.push_back({may_bow, AskNeck{}, Because::one_bow_explains});
  else
    out.push_back({{all_lines.begin(), all_lines.end()}, AskNeck{}, Because::neck_first});
}

// What no reading tells apart. The gap under a crown does, where the likeliest explanation has a high fret.
void add_open(const Diagnosis& diagnosis, const Facts& facts, std::vector<Advice>& out) {
  for (const LineFinding& f : diagnosis.lines) {
    if (f.explanations.size() < 2) continue;
    std::vector<std::vector<Off>> left;
    for (const Explanation& e : f.explanations) {
      left.emplace_back();
      for (const Amount& a : e.parts)
        left.back().push_back(a.off);
    }
    for (const Off& off : left.front()) {
      const bool open = std::find(f.agreed.begin(), f.agreed.end(), off) == f.agreed.end();
      if (!open || !off.slot || off.way != Way::high) continue;
      if (facts_of(facts, *off.slot).gap == Gap::not_asked)
        out.push_back({{f.line}, AskGap{*off.slot}, Because::no_edge_tells});
    }
    out.push_back({{f.line}, TryByHand{std::move(left)}, Because::no_edge_tells});
  }
}

void add_level(const Known& known, bool all_taken, std::vector<Advice>& out) {
  std::vector<Line> level, coarse;
  of_lines(known.diagnosis, Finding::level, [&](const LineFinding& f) {
    const bool may = level_call(known.readings, known.lines, f, known.plan).may_be_called;
    (may ? level : coarse).push_back(f.line);
  });
  if (!level.empty()) out.push_back({level, MayCallLevel{}, Because::all_read});
  if (all_taken && !coarse.empty()) out.push_back({coarse, ReadFiner{}, Because::too_coarse});
}

} // namespace

std::vector<Advice> advice(std::span<const Reading> readings, const Lines& lines, const Diagnosis& diagnosis,
                           const Facts& facts, const Plan& plan, Length epsilon) {
  const Known known{readings, lines, diagnosis, facts, plan};
  std::vector<Advice> out;
  ask_neck(diagnosis, facts, out);
  of_lines(diagnosis, Finding::contradiction, [&](const LineFinding& f) {
    out.push_back({{f.line}, ReadAgain{f.cannot_all_be}, Because::cannot_all_be});
  });
  of_lines(diagnosis, Finding::many, [&](const LineFinding& f) {
    out.push_back({{f.line}, LookAtWhole{}, Because::too_many});
  });
  add_bows(diagnosis, out);
  const auto next = next_reading(readings, lines, diagnosis, plan, epsilon);
  if (next)
    out.push_back({{next->line},
                   TakeReading{*next},
                   next->why == Why::sequence ? Because::not_read_yet : Because::splits});
  for (const Settled& fret : settled(diagnosis))
    out.push_back(fret.way == Way::high ? for_high(known, fret) : for_low(known, fret));
  if (!next) add_open(diagnosis, facts, out);
  add_level(known, !next, out);
  return out;
}

} // namespace nutward::level
