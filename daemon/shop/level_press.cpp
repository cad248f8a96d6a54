#include "shop/level_press.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace nutward::shop {

namespace {

// Of the press or of what the neck lies on: to be said or put right, whatever the fret.
bool of_the_whole(const press::Reason& reason) {
  return std::holds_alternative<press::OutOfService>(reason) ||
         std::holds_alternative<press::NoPlate>(reason) ||
         std::holds_alternative<press::NotCradled>(reason) ||
         std::holds_alternative<press::HeadNotClear>(reason) ||
         std::holds_alternative<press::NeckBridged>(reason) ||
         std::holds_alternative<press::FreshGlue>(reason);
}

} // namespace

PressAgainWith::PressAgainWith(const Job& job, const View& view, const Setup& set)
    : job_(job), view_(view), equipment_(equipment(view, set)) {
  has_narrow_ = std::any_of(equipment_.bars.begin(), equipment_.bars.end(),
                            [](const press::Bar& bar) { return bar.narrow; });
  if (job.kind == JobKind::some_slots) {
    cannot_ = "New crowns beside worn ones are not pressed under a bar: they are blended.";
    return;
  }
  if (equipment_.bars.empty()) {
    cannot_ = "No bar is defined: say what there is, such as: define bar long, length 112 mm, width 90 mm.";
    return;
  }
  try {
    work_ = work_of(job, view, set, std::nullopt).work;
  } catch (const Problem& problem) {
    cannot_ = problem.text + (problem.would_do.empty() ? "" : " " + problem.would_do);
  }
}

PressedAgain PressAgainWith::of(int slot, level::Bar kind, level::Side side) const {
  PressedAgain out;
  out.cannot = cannot_;
  if (!work_) return out;
  const bool narrow = kind == level::Bar::narrow;
  const auto last = last_load(job_, slot, narrow, view_);
  bool any = false;
  for (const press::Bar& bar : equipment_.bars) {
    if (bar.narrow != narrow) continue;
    press::OneFretAnswer got;
    try {
      got = press::one_fret(*work_, equipment_, bar, slot, last);
    } catch (const press::BadWork& bad) {
      out.cannot = fmt::format("{} {}", bad.what(), bad.would_do);
      return out;
    }
    if (!any) out.bar = bar, out.refused = got.refused;
    any = true;
    if (!got.fret) continue;
    out.bar = bar;
    out.fret = got.fret;
    out.refused.clear();
    out.load = got.fret->load;
    out.least = got.fret->least;
    out.first = got.fret->first;
    if (side == level::Side::even) return out;
    out.to_side = press::favour(*work_, equipment_, slot, slot, got.fret->load);
    out.load = out.least = out.to_side->load;
    out.first = press::on_gauge(out.load * 0.5, equipment_);
    return out;
  }
  if (!any) out.cannot = fmt::format("The shop has no {} bar.", narrow ? "narrow" : "long");
  return out;
}

bool PressAgainWith::done(int slot, level::Bar kind) const {
  if (job_.kind == JobKind::some_slots) return true;
  if (!work_) return false;
  const PressedAgain again = of(slot, kind);
  return !again.fret && std::none_of(again.refused.begin(), again.refused.end(), of_the_whole);
}

} // namespace nutward::shop
