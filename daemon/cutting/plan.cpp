#include "cutting/plan.hpp"

#include "cutting/check.hpp"
#include "cutting/search.hpp"

#include <algorithm>

namespace nutward::cutting {

namespace {

// What of the last plan is still possible.
std::vector<Cutting> still_possible(const Problem& p, const Checked& checked, Supply& supply,
                                    std::vector<std::size_t>& slots) {
  std::vector<char> open(p.slots.size(), 0), piece(p.pieces.size(), 0);
  for (const std::size_t s : checked.slots)
    open[s] = 1;
  for (const std::size_t i : checked.pieces)
    piece[i] = 1;
  std::vector<Cutting> out;
  for (const Cutting& before : p.previous) {
    const bool tin = before.source.from == From::piece;
    if (before.source.index >= (tin ? piece.size() : supply.stock.size())) continue;
    if (tin ? piece[before.source.index] == 0 : supply.stock[before.source.index] == 0) continue;
    Cutting now{before.source, {}};
    for (const std::size_t s : before.slots) {
      if (s >= open.size() || open[s] == 0) continue;
      now.slots.push_back(s);
      open[s] = 0; // at once: the caller's list may name a slot twice
    }
    if (now.slots.empty() || !order_best(p, now)) {
      for (const std::size_t s : now.slots)
        open[s] = 1;
      continue;
    }
    if (tin)
      piece[now.source.index] = 0;
    else
      --supply.stock[now.source.index];
    out.push_back(std::move(now));
  }
  for (const std::size_t s : checked.slots)
    if (open[s] != 0) slots.push_back(s);
  for (const std::size_t i : checked.pieces)
    if (piece[i] != 0) supply.pieces.push_back(i);
  return out;
}

// The last plan, with what is new served besides: from what it leaves, or from the ends that it keeps.
Draft continued(const Problem& p, const Checked& checked, const std::vector<int>& ranks, Chance& chance,
                Meter& meter) {
  Supply supply{{}, checked.stock_left};
  std::vector<std::size_t> slots;
  const std::vector<Cutting> kept = still_possible(p, checked, supply, slots);
  Draft gleaned{kept, {}};
  glean(p, slots, {checked.pieces, checked.stock_left}, gleaned, meter);
  Draft searched = search(p, slots, supply, ranks, chance, meter).draft;
  searched.cuttings.insert(searched.cuttings.begin(), kept.begin(), kept.end());
  return cost_of(p, gleaned, ranks) <= cost_of(p, searched, ranks) ? gleaned : searched;
}

Use use_of(const Problem& p, const Cutting& cutting, const Served& served, bool held) {
  Use out;
  out.source = cutting.source;
  for (const std::size_t s : cutting.slots)
    out.frets.push_back({s, p.slots[s].need.cut});
  out.frets.back().length = served.last;
  out.remainder = served.kept;
  out.scrap = Length{served.price.scrap};
  out.cuts = served.price.cuts;
  out.held = held;
  return out;
}

std::size_t first_slot(const Use& use) {
  std::size_t out = use.frets.front().slot;
  for (const Fret& f : use.frets)
    out = std::min(out, f.slot);
  return out;
}

void add_uses(const Problem& p, const Checked& checked, const Draft& draft, Plan& plan) {
  for (const Cutting& c : checked.held)
    if (const auto served = serve_held(p, c)) plan.uses.push_back(use_of(p, c, *served, true));
  const auto held = static_cast<std::ptrdiff_t>(plan.uses.size());
  for (const Cutting& c : draft.cuttings)
    if (const auto served = serve(p, c)) plan.uses.push_back(use_of(p, c, *served, false));
  std::stable_sort(plan.uses.begin() + held, plan.uses.end(),
                   [](const Use& a, const Use& b) { return first_slot(a) < first_slot(b); });
}

Level proved(const Cost& cost, const Cost& bound) {
  if (cost.unserved != bound.unserved) return Level::none;
  if (cost.sticks != bound.sticks) return Level::service;
  if (cost.taken != bound.taken) return Level::sticks;
  if (cost.scrap != bound.scrap) return Level::taken;
  return cost.cuts != bound.cuts ? Level::scrap : Level::cuts;
}

void add_borderline(const Problem& p, const Checked& checked, Plan& plan) {
  std::vector<char> used(p.pieces.size(), 0);
  std::vector<std::size_t> slots = plan.unserved;
  for (const Use& use : plan.uses) {
    if (use.source.from == From::piece) used[use.source.index] = 1;
    for (const Fret& f : use.frets)
      if (use.source.from == From::stock && !use.held) slots.push_back(f.slot);
  }
  std::vector<std::size_t> free;
  for (const std::size_t i : checked.pieces)
    if (used[i] == 0 && p.pieces[i].flat_ends == 0) free.push_back(i);
  std::sort(free.begin(), free.end(), [&](std::size_t a, std::size_t b) {
    return p.pieces[a].facts.length < p.pieces[b].facts.length;
  });
  std::sort(slots.begin(), slots.end());
  for (const std::size_t s : slots) {
    const Slot& slot = p.slots[s];
    const auto from = std::partition_point(free.begin(), free.end(), [&](std::size_t i) {
      return p.pieces[i].facts.length < slot.need.least - p.settings.borderline;
    });
    const Length to = slot.need.least + p.settings.borderline + 2 * p.settings.dressing_loss;
    for (auto it = from; it != free.end() && p.pieces[*it].facts.length <= to; ++it) {
      const pieces::Wanted wanted{slot.need, slot.crown_height, p.least_useful, slot.lot};
      if (pieces::judge(p.pieces[*it].facts, wanted, p.settings).outcome != pieces::Outcome::borderline)
        continue;
      plan.borderline.push_back({s, *it});
      break;
    }
  }
}

Cost nothing_proved(const Cost& like) {
  Cost out;
  out.unserved.assign(like.unserved.size(), 0);
  return out;
}

bool stays(const Cost& last, const Cost& found, Length worth_moving) {
  if (last <= found) return true;
  return last.unserved == found.unserved && last.sticks == found.sticks &&
         last.taken <= found.taken + worth_moving;
}

} // namespace

Plan plan(const Problem& p, const Budget& budget) {
  Meter meter(budget);
  Chance chance(20'260'101); // any number, as long as it is always the same
  const std::vector<int> ranks = ranks_of(p);
  const Checked checked = check(p);
  Draft last; // before the search, which leaves no steps
  if (!p.previous.empty()) {
    Meter part = meter.part(0.4);
    last = continued(p, checked, ranks, chance, part);
    meter.spend(part.steps() * Meter::per_step);
  }
  Found found = search(p, checked.slots, {checked.pieces, checked.stock_left}, ranks, chance, meter);
  Cost cost = cost_of(p, found.draft, ranks);
  if (!p.previous.empty()) {
    const Cost cost_last = cost_of(p, last, ranks);
    if (stays(cost_last, cost, p.worth_moving)) {
      found.draft = std::move(last);
      cost = cost_last;
    }
  }
  Plan out;
  out.faults = checked.faults;
  for (const std::size_t s : found.draft.unserved)
    out.faults.push_back({Why::wire_short, s, std::nullopt});
  out.unserved = found.draft.unserved;
  for (const auto* list : {&checked.bad, &checked.hopeless})
    out.unserved.insert(out.unserved.end(), list->begin(), list->end());
  std::sort(out.unserved.begin(), out.unserved.end());
  add_uses(p, checked, found.draft, out);
  out.cost = cost;
  // A bound above the plan would be an error of ours: then nothing is called proved.
  const bool sound = found.bound <= cost;
  out.bound = sound ? found.bound : nothing_proved(cost);
  out.proved = sound ? proved(out.cost, out.bound) : Level::none;
  add_given(p, checked, ranks, out.cost);
  add_given(p, checked, ranks, out.bound);
  add_borderline(p, checked, out);
  out.stopped = meter.over() && out.proved != Level::cuts;
  return out;
}

} // namespace nutward::cutting
