#include "shop/levelling.hpp"

#include "shop/touch.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace nutward::shop {

namespace {

bool in_board(FretState state) {
  return state != FretState::made && state != FretState::came_short;
}

bool holds(const std::vector<int>& slots, int slot) {
  return std::find(slots.begin(), slots.end(), slot) != slots.end();
}

// Of frets that nobody told of, nothing is known; the steps under a bar matter only once a gap without a
// cause was seen.
level::FretFacts facts_of(const Fret& fret, const PressAgainWith& press) {
  level::FretFacts out;
  out.slot = fret.slot;
  out.gap = fret.gap;
  out.cause = fret.cause;
  out.below = fret.below;
  out.sprang_back = fret.state == FretState::sprang;
  if (fret.gap == level::Gap::some && fret.cause == level::Cause::nothing_found) {
    out.long_bar_done = press.done(fret.slot, level::Bar::long_bar);
    out.narrow_bar_done = press.done(fret.slot, level::Bar::narrow);
  }
  return out;
}

bool same_span(const level::Reading& a, const level::Reading& b) {
  return a.felt != level::Felt::not_laid && b.felt != level::Felt::not_laid && a.line == b.line &&
         a.span == b.span;
}

// One laying with a feeler tried on both ends is kept as two readings: no second opinion.
bool one_laying(const Reading& a, const Reading& b) {
  return a.taken == b.taken && a.is.felt == b.is.felt && a.is.held && b.is.held && a.is.held != b.is.held;
}

// Whether the last two of its span were felt alike, and this before them was not.
bool is_overruled(const std::vector<Reading>& all, std::size_t which) {
  std::vector<level::Felt> later;
  const Reading* last = nullptr;
  for (std::size_t i = which + 1; i < all.size(); ++i) {
    if (!same_span(all[i].is, all[which].is)) continue;
    if (last == nullptr || !one_laying(*last, all[i])) later.push_back(all[i].is.felt);
    last = &all[i];
  }
  const std::size_t n = later.size();
  return n >= 2 && later[n - 1] == later[n - 2] && later[n - 1] != all[which].is.felt;
}

// The readings that count become those of the bench's code.
void drop_overruled(Levelling& out) {
  std::vector<Reading> left;
  for (std::size_t i = 0; i < out.kept.size(); ++i)
    (is_overruled(out.kept, i) ? out.overruled : left).push_back(out.kept[i]);
  out.kept = std::move(left);
  for (const Reading& r : out.kept)
    out.readings.push_back(r.is);
}

// A fret that sprang back is high, whether an edge was laid over it or not.
void add_sprang(Levelling& out) {
  std::vector<level::Advice> more;
  for (const int slot : out.sprang) {
    const bool told = std::any_of(out.advice.begin(), out.advice.end(), [&](const level::Advice& a) {
      const auto* gap = std::get_if<level::AskGap>(&a.step);
      const auto* glue = std::get_if<level::GlueAndClamp>(&a.step);
      const auto* stop = std::get_if<level::StopAndLevel>(&a.step);
      return (gap != nullptr && gap->slot == slot) || (glue != nullptr && glue->slot == slot) ||
             (stop != nullptr && stop->slot == slot);
    });
    if (told) continue;
    const auto fact = std::find_if(out.facts.frets.begin(), out.facts.frets.end(),
                                   [&](const level::FretFacts& f) { return f.slot == slot; });
    if (fact->gap == level::Gap::not_asked)
      more.push_back({{}, level::AskGap{slot}, level::Because::cause_before_load});
    else if (fact->gap == level::Gap::none)
      more.push_back({{}, level::StopAndLevel{slot}, level::Because::sprang_back});
    else
      more.push_back({{}, level::GlueAndClamp{slot}, level::Because::sprang_back});
  }
  // Before the next reading: it would only find them again.
  const auto at = std::find_if(out.advice.begin(), out.advice.end(), [](const level::Advice& a) {
    return std::holds_alternative<level::TakeReading>(a.step);
  });
  out.advice.insert(at, more.begin(), more.end());
}

void sort_readings(Levelling& out, const Job& job, const View& view) {
  std::vector<int> all;
  for (const level::Crown& c : out.lines.on(level::Line::middle))
    all.push_back(c.slot);
  const auto touched_since = touched(job, view, all);
  for (Reading& r : view.jobs().readings(job.id)) {
    bool good = level::counts(r.is, touched_since);
    try {
      level::check(r.is, out.lines);
    } catch (const level::BadReading&) {
      good = false; // an end of it stands no more
    }
    (good ? out.kept : out.stale).push_back(std::move(r));
  }
  drop_overruled(out);
}

// Advice passes over lines with more off than was looked for.
level::Diagnosis of_one_line(level::Diagnosis all, std::optional<level::Line> only) {
  for (level::LineFinding& f : all.lines) {
    if (!only || f.line == *only) continue;
    const level::Line line = f.line;
    f = {};
    f.line = line;
    f.finding = level::Finding::many;
  }
  return all;
}

// What is to be done about a fret follows from all lines: a load moves to the side on which alone it is high.
void keep_line(std::vector<level::Advice>& advice, level::Line only,
               const std::vector<level::Advice>& of_all) {
  std::erase_if(advice, [&](const level::Advice& a) {
    return std::find(a.lines.begin(), a.lines.end(), only) == a.lines.end();
  });
  for (level::Advice& a : advice) {
    const auto* press = std::get_if<level::PressAgain>(&a.step);
    if (press == nullptr) continue;
    const auto at = std::find_if(of_all.begin(), of_all.end(), [&](const level::Advice& b) {
      const auto* other = std::get_if<level::PressAgain>(&b.step);
      return other != nullptr && other->slot == press->slot;
    });
    if (at != of_all.end()) a = *at;
  }
}

} // namespace

FretsThatStand frets_that_stand(const Job& job, const View& view) {
  FretsThatStand out;
  const auto frets = view.jobs().frets(job.id);
  out.foreseen = std::none_of(frets.begin(), frets.end(), [](const Fret& f) { return in_board(f.state); });
  const level::Lines board = level::lines(job.board);
  for (const level::Crown& c : board.on(level::Line::middle)) {
    const bool stands = std::any_of(frets.begin(), frets.end(),
                                    [&](const Fret& f) { return f.slot == c.slot && in_board(f.state); });
    const bool old = !holds(job.slots, c.slot) && job.kind == JobKind::some_slots;
    if (old || (holds(job.slots, c.slot) && (out.foreseen || stands))) out.slots.push_back(c.slot);
  }
  return out;
}

level::Lines lines_of(const Job& job, const View& view) {
  const auto stand = frets_that_stand(job, view);
  if (stand.slots.size() >= 3) return level::lines(job.board, stand.slots);
  throw Problem(Fault::state,
                fmt::format("Only {} of {} in the board, and a straightedge lies over three.",
                            plural(std::ssize(stand.slots), "fret stands", "frets stand"), named(job)),
                "job", fmt::format("Say when they are seated: finished seat for job {}.", job.id));
}

Levelling levelling(const Job& job, const View& view, const PressAgainWith& press,
                    std::optional<level::Line> only) {
  Levelling out;
  out.lines = lines_of(job, view);
  out.settings = level_settings(view);
  sort_readings(out, job, view);
  const auto frets = view.jobs().frets(job.id);
  out.foreseen = true;
  for (const Fret& fret : frets) {
    if (fret.state != FretState::came_short) out.facts.frets.push_back(facts_of(fret, press));
    if (in_board(fret.state)) out.foreseen = false;
    if (fret.state == FretState::sprang) out.sprang.push_back(fret.slot);
  }
  out.facts.narrow_ladder_set = press.narrow_set_up();
  out.facts.last_ever = job.last_ever;
  out.facts.neck_straight_seen = job.straight_seen.has_value();
  out.diagnosis = level::diagnose(out.readings, out.lines, out.settings.limits);
  const level::Plan& plan = out.settings.plan;
  const auto advise = [&](const level::Diagnosis& diagnosis) {
    return level::advice(out.readings, out.lines, diagnosis, out.facts, plan, out.settings.hand);
  };
  out.advice = advise(of_one_line(out.diagnosis, only));
  if (only) keep_line(out.advice, *only, advise(out.diagnosis));
  add_sprang(out);
  for (const level::Advice& a : out.advice) {
    if (const auto* take = std::get_if<level::TakeReading>(&a.step)) out.next = take->next;
  }
  for (const level::LineFinding& f : out.diagnosis.lines) {
    const auto at = static_cast<std::size_t>(f.line);
    out.calls.at(at) = level::level_call(out.readings, out.lines, f, plan);
    out.to_read_on.at(at) =
        level::still_to_read(out.readings, out.lines, f, out.calls.at(at), out.settings.hand);
  }
  return out;
}

} // namespace nutward::shop
