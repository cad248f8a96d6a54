#include "press/passes.hpp"

#include <algorithm>
#include <cmath>

namespace nutward::press {

namespace {

Stretch stretch(const Range& r) {
  return {units::from_mm(r.from), units::from_mm(r.to)};
}

Refusal refusal(const Work& work, Group g, const Reason& why) {
  return {work.crowns[g.first].slot, work.crowns[g.last].slot, why};
}

bool a_candidate(const Crown& c) {
  return c.seated && c.to_press;
}

Force usual_load(const Work& work, const Equipment& e, const Bar& bar, Group g) {
  const Force usual = line_load_of(work, e, g);
  if (!bar.narrow || e.narrow_ladder.empty()) return usual;
  return usual * std::min(1.0, e.narrow_ladder.front() / e.line_load);
}

// The plate has been seen to be known.
Limit load_of(const Work& work, const Equipment& e, const Bar& bar, Group g, const Wish& wish) {
  const Limit most = *most_in_a_pass(e, bar);
  const Limit want =
      wish.load ? Limit{*wish.load, LimitedBy::asked} : Limit{line_load_of(work, e, g), LimitedBy::line_load};
  return want.load <= most.load ? want : most;
}

Pass pass_over(const Work& work, const Equipment& e, const Bar& bar, Group g, const Wish& wish) {
  Pass p;
  p.slots = slots_of(work, g);
  p.lo = p.slots.front();
  p.hi = p.slots.back();
  p.bar_at = bar_place(work, g);
  p.bar_between = between(work.crowns, p.bar_at);
  p.load_at = load_place(work, g);
  p.load_between = between(work.crowns, p.load_at);
  const Limit limit = load_of(work, e, bar, g, wish);
  p.load = on_gauge(limit.load, e);
  p.limited = limit.by;
  p.first = on_gauge(p.load * 0.5, e);
  p.average = p.load * (1 / static_cast<double>(p.slots.size()));
  double length = 0;
  for (std::size_t i = g.first; i <= g.last; ++i) {
    if (work.crowns[i].seated) length += work.crowns[i].length.mm();
  }
  p.n_per_mm = p.load.n / length;
  const auto places = places_of(work, g);
  p.room = {stretch(within_times(places, green_times)), stretch(within_times(places, amber_times)),
            stretch(kern(places))};
  return p;
}

// The group that reaches from `last` one seated crown further nutward than `g`; nullopt: the board ends
// there.
std::optional<Group> one_more(const Work& work, Group g) {
  while (g.first > 0) {
    if (work.crowns[--g.first].seated) return g;
  }
  return std::nullopt;
}

struct Choice {
  std::size_t bar = 0;
  std::optional<Group> group;
  std::optional<Refusal> larger; // why not one more; without a group: why none
};

// All that end at `last`. A group may fit though a smaller one does not, whose neighbours the bar would meet.
Choice largest(const Work& work, const Equipment& e, const Bar& bar, std::size_t last) {
  Choice out;
  std::optional<Refusal> nearest; // of those that the bar can span, the largest
  for (std::optional<Group> g = Group{last, last}; g; g = one_more(work, *g)) {
    const auto why = hindrance(work, e, bar, *g);
    if (!why) {
      out.group = *g;
      nearest.reset();
      continue;
    }
    const bool beyond = std::holds_alternative<OverCap>(*why) || std::holds_alternative<TooLong>(*why) ||
                        std::holds_alternative<OtherFret>(*why);
    if (!beyond || !nearest) nearest = refusal(work, *g, *why);
    if (beyond) break;
  }
  out.larger = nearest;
  if (out.group) {
    out.larger.reset();
    if (const auto more = one_more(work, *out.group))
      out.larger = refusal(work, *more, *hindrance(work, e, bar, *more));
  }
  return out;
}

// Of the bars the one whose group is largest.
Choice choose(const Work& work, const Equipment& e, std::span<const Bar> bars,
              const std::vector<std::size_t>& usable, std::size_t last) {
  std::optional<Choice> best;
  for (std::size_t bar : usable) {
    Choice found = largest(work, e, bars[bar], last);
    found.bar = bar;
    const bool better = best && found.group && (!best->group || found.group->first < best->group->first);
    if (!best || better) best = found;
  }
  return *best;
}

// Those that nothing keeps from being used at all. Where there are none, what keeps the first.
std::vector<std::size_t> usable_bars(const Work& work, const Equipment& e, std::span<const Bar> bars,
                                     std::vector<Reason>& refused) {
  if (bars.empty()) throw BadWork("There is no bar to press with.", "Say which bars there are.");
  std::vector<std::size_t> out;
  for (std::size_t i = 0; i < bars.size(); ++i) {
    if (bars[i].narrow && bars.size() > 1) continue;
    const auto why = whole_refusals(work, e, bars[i]);
    if (why.empty())
      out.push_back(i);
    else if (refused.empty())
      refused = why;
  }
  if (!out.empty()) refused.clear();
  if (out.empty() && refused.empty())
    throw BadWork("All the bars are narrow.", "Say a bar for several frets.");
  return out;
}

void note_load(const Work& work, const Equipment& e, const Bar& bar, Force asked, Group g,
               std::vector<Reason>& notes) {
  const Limit rated = *rating(e, bar), most = *most_in_a_pass(e, bar);
  if (asked > rated.load) notes.emplace_back(OverRating{asked, rated});
  if (asked > most.load && most != rated) notes.emplace_back(OverShopLimit{asked, most});
  const Force usual = std::min(usual_load(work, e, bar, g), most.load);
  if (std::min(asked, most.load) > usual) notes.emplace_back(OverLineLoad{asked, usual});
}

void check_asked(Force load, const Equipment& e) {
  if (!(load.n > 0) || !std::isfinite(load.n))
    throw BadWork("A load that is not over nothing presses nothing.", "Say a load over 0.");
  constexpr double last_digits = 1e-9; // as on_gauge()
  if (load.n < e.division.n * (1 - last_digits))
    throw BadWork("That load is less than one division of the gauge, which does not show it.",
                  "Say a load that the gauge shows.");
}

// Of the slots to press, those that are in no pass.
std::vector<Refusal> left_alone(const Work& work, const std::vector<Pass>& passes,
                                const std::vector<std::optional<Refusal>>& why) {
  std::vector<bool> reached(work.crowns.size(), false);
  for (std::size_t i = 0; i < work.crowns.size(); ++i) {
    for (const Pass& p : passes)
      reached[i] = reached[i] || (work.crowns[i].slot >= p.lo && work.crowns[i].slot <= p.hi);
  }
  std::vector<Refusal> out;
  for (std::size_t i = work.crowns.size(); i-- > 0;) {
    const Crown& c = work.crowns[i];
    if (!c.to_press || (c.seated && reached[i])) continue;
    if (!c.seated)
      out.push_back({c.slot, c.slot, NoFret{c.slot}});
    else if (why[i])
      out.push_back({c.slot, c.slot, why[i]->why});
  }
  return out;
}

} // namespace

Plan passes(const Work& work, const Equipment& e, const Bar& bar, const Wish& wish) {
  return passes(work, e, std::span(&bar, 1), wish);
}

Plan passes(const Work& work, const Equipment& e, std::span<const Bar> bars, const Wish& wish) {
  if (wish.load) check_asked(*wish.load, e);
  Plan plan;
  const auto usable = usable_bars(work, e, bars, plan.refused);
  if (usable.empty()) return plan;
  plan.passes.reserve(work.crowns.size());
  std::vector<std::optional<Refusal>> why(work.crowns.size());
  std::optional<Choice> before, lightest;
  for (std::size_t last = work.crowns.size(); last-- > 0;) {
    if (!a_candidate(work.crowns[last])) continue;
    const Choice found = choose(work, e, bars, usable, last);
    if (!found.group) {
      why[last] = found.larger;
      continue;
    }
    const bool is_inside = before && found.group->first >= before->group->first;
    if (is_inside && !wish.every_group) {
      plan.inside.push_back({work.crowns[found.group->first].slot, work.crowns[last].slot, found.larger});
      continue;
    }
    plan.passes.push_back(pass_over(work, e, bars[found.bar], *found.group, wish));
    plan.passes.back().bar = found.bar;
    plan.passes.back().larger = found.larger;
    if (!is_inside) before = found;
    if (!lightest || line_load_of(work, e, *found.group) < line_load_of(work, e, *lightest->group))
      lightest = found;
  }
  plan.slots = left_alone(work, plan.passes, why);
  if (wish.load && lightest)
    note_load(work, e, bars[lightest->bar], *wish.load, *lightest->group, plan.notes);
  return plan;
}

OneGroup one_group(const Work& work, const Equipment& e, const Bar& bar, int lo, int hi, const Wish& wish) {
  if (wish.load) check_asked(*wish.load, e);
  const Group g = group_of(work, lo, hi);
  OneGroup out;
  out.refused = whole_refusals(work, e, bar);
  if (const auto why = hindrance(work, e, bar, g)) out.refused.push_back(*why);
  if (!out.refused.empty()) return out;
  out.pass = pass_over(work, e, bar, g, wish);
  if (const auto more = one_more(work, g)) {
    if (const auto why = hindrance(work, e, bar, *more)) out.pass->larger = refusal(work, *more, *why);
  }
  if (wish.load) note_load(work, e, bar, *wish.load, g, out.notes);
  return out;
}

} // namespace nutward::press
