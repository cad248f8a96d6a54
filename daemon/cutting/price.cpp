#include "cutting/price.hpp"

#include "cutting/check.hpp"
#include "cutting/exchange.hpp"

#include <algorithm>
#include <tuple>

namespace nutward::cutting {

namespace {

constexpr std::int64_t steps_of_one = 3'000; // for finding one slot a place

Cutting cutting_of(const Use& use) {
  Cutting out{use.source, {}};
  for (const Fret& fret : use.frets)
    out.slots.push_back(fret.slot);
  return out;
}

void drop(std::vector<std::size_t>& slots, std::size_t slot) {
  slots.erase(std::remove(slots.begin(), slots.end(), slot), slots.end());
}

// What of a piece lies in the tin once its first fret is cut.
Piece rest_of(const Piece& piece, Length kept) {
  Piece out = piece;
  out.facts.length = kept;
  out.facts.kind = pieces::Kind::stick_end;
  out.facts.raw_ends = raw_ends_of_last(piece);
  out.flat_ends = std::min(piece.flat_ends, 1);
  return out;
}

// The problem once the piece is in the slot; nullopt where it cannot be. What stays of the plan is its
// `previous`.
std::optional<Problem> once_taken(const Problem& p, const Plan& plan, std::size_t piece, std::size_t slot) {
  const Cutting taking{{From::piece, piece}, {slot}};
  Problem out = p;
  out.held.clear();
  out.previous.clear();
  out.worth_moving = {};
  for (const Use& use : plan.uses) {
    Cutting cutting = cutting_of(use);
    const bool same = use.source == taking.source;
    if (same && use.held) return std::nullopt;
    drop(cutting.slots, slot);
    if (same || cutting.slots.empty()) continue;
    (use.held ? out.held : out.previous).push_back(std::move(cutting));
  }
  out.held.push_back(taking);
  const auto served = serve_held(p, taking);
  if (!served) return std::nullopt;
  if (served->kept > Length{}) out.pieces.push_back(rest_of(p.pieces[piece], served->kept));
  return out;
}

// The plan as it stays, and a place for what has lost its own.
Draft mended(const Problem& p, const Checked& checked, const Plan& plan) {
  const Supply supply{checked.pieces, checked.stock_left};
  Draft out;
  std::vector<char> open(p.slots.size(), 0);
  for (const std::size_t s : checked.slots)
    open[s] = 1;
  for (Cutting cutting : p.previous) {
    if (!order_best(p, cutting)) continue;
    for (const std::size_t s : cutting.slots)
      open[s] = 0;
    out.cuttings.push_back(std::move(cutting));
  }
  // What was served comes first: what the plan had to leave unserved may get what has become free.
  std::vector<char> served(p.slots.size(), 1);
  for (const std::size_t s : plan.unserved)
    served[s] = 0;
  std::vector<std::size_t> order;
  for (const std::size_t s : checked.slots)
    if (open[s] != 0) order.push_back(s);
  std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
    return std::tuple(-served[a], p.slots[a].due, -size_of(p, a).nm) <
           std::tuple(-served[b], p.slots[b].due, -size_of(p, b).nm);
  });
  std::int64_t displaced = 0;
  for (const std::size_t s : order)
    displaced += served[s];
  Meter meter({(displaced + 1) * steps_of_one, {}});
  for (const std::size_t s : order) {
    if (meter.over()) {
      out.unserved.push_back(s);
      continue;
    }
    Meter part({steps_of_one, {}});
    exchange(p, supply, s, out, part);
    meter.spend(part.steps() * Meter::per_step);
  }
  std::sort(out.unserved.begin(), out.unserved.end());
  return out;
}

// Whether that is where the plan has it: no price at all.
bool planned_for(const Plan& plan, std::size_t piece, std::size_t slot) {
  const Source source{From::piece, piece};
  return std::any_of(plan.uses.begin(), plan.uses.end(), [&](const Use& use) {
    return !use.held && use.source == source &&
           std::any_of(use.frets.begin(), use.frets.end(), [&](const Fret& f) { return f.slot == slot; });
  });
}

using WireCost = std::tuple<const std::vector<int>&, const int&, const Length&>;
WireCost wire(const Cost& c) {
  return {c.unserved, c.sticks, c.taken};
}

Taking difference(const Cost& before, const Cost& after) {
  Taking out;
  out.unserved.assign(before.unserved.size(), 0);
  if (wire(after) <= wire(before)) return out;
  for (std::size_t i = 0; i < out.unserved.size(); ++i)
    out.unserved[i] = after.unserved[i] - before.unserved[i];
  out.sticks = after.sticks - before.sticks;
  out.taken = after.taken - before.taken;
  out.at_most = true;
  return out;
}

} // namespace

bool Taking::nothing() const {
  return std::all_of(unserved.begin(), unserved.end(), [](int n) { return n == 0; }) && sticks == 0 &&
         taken == Length{};
}

std::optional<Taking> price_of_taking(const Problem& p, const Plan& before, std::size_t piece,
                                      std::size_t slot, const Budget& budget) {
  if (piece >= p.pieces.size() || slot >= p.slots.size()) return std::nullopt;
  if (planned_for(before, piece, slot))
    return Taking{std::vector<int>(before.cost.unserved.size(), 0), 0, {}, false};
  const auto taken = once_taken(p, before, piece, slot);
  if (!taken) return std::nullopt;
  const Checked checked = check(*taken);
  if (checked.held.empty() || checked.held.back() != taken->held.back()) return std::nullopt;
  const std::vector<int> ranks = ranks_of(p);
  const Draft draft = mended(*taken, checked, before);
  Cost cost = cost_of(*taken, draft, ranks);
  add_given(*taken, checked, ranks, cost);
  Taking out = difference(before.cost, cost);
  if (out.nothing() || budget.max_steps <= 0) return out;
  Problem again = *taken;
  again.previous = draft.cuttings;
  const Plan anew = plan(again, budget);
  if (wire(anew.cost) < wire(cost)) cost = anew.cost;
  out = difference(before.cost, cost);
  if (anew.proved >= Level::taken) out.at_most = false;
  return out;
}

} // namespace nutward::cutting
