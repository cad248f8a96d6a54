#include "cutting/search.hpp"

#include "cutting/bounds.hpp"
#include "cutting/by_price.hpp"
#include "cutting/exact.hpp"
#include "cutting/exchange.hpp"
#include "cutting/relax.hpp"
#include "cutting/tin_bound.hpp"

#include <algorithm>
#include <span>

namespace nutward::cutting {

namespace {

constexpr int quick_rounds = 3, most_rounds = 20;
constexpr int fine_units = 16'000;
constexpr std::size_t most_improved = 600; // slots; beyond that a neighbourhood is too small a part to matter

std::int64_t sizes(const Problem& p, std::span<const std::size_t> slots) {
  std::int64_t sum = 0;
  for (const std::size_t s : slots)
    sum += size_of(p, s).nm;
  return sum;
}

// What new wire can hold at all.
std::int64_t room_of_all(const Problem& p, const Supply& supply) {
  std::int64_t sum = 0;
  for (std::size_t i = 0; i < supply.stock.size(); ++i)
    sum += supply.stock[i] * room(p, p.stock[i]).nm;
  return sum;
}

// The slots that must stay unserved by the sum of their sizes alone: every rank but the first that is short
// counts as served, which no plan is better than. What a long piece can serve beside them counts in
// `sorted`.
void bound_service(const Problem& p, const std::vector<std::size_t>& slots, const Supply& supply,
                   const std::vector<int>& ranks, const Sorted& sorted, Cost& bound) {
  std::vector<std::size_t> order = slots;
  std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
    return p.slots[a].due != p.slots[b].due ? p.slots[a].due < p.slots[b].due : size_of(p, a) < size_of(p, b);
  });
  const std::int64_t wire = room_of_all(p, supply);
  const auto end_of = [&](std::size_t rank) {
    return std::partition_point(order.begin(), order.end(),
                                [&](std::size_t s) { return p.slots[s].due <= ranks[rank]; });
  };
  const auto short_of = [&](std::size_t rank) {
    const std::span<const std::size_t> upto(order.begin(), end_of(rank));
    return least_new_wire(p, upto, sorted, supply.stock, 0).sizes - wire;
  };
  if (ranks.empty() || short_of(ranks.size() - 1) <= 0) return;
  std::size_t low = 0,
              high = ranks.size() - 1; // the first that is short, in between
  while (low < high) {
    const std::size_t middle = (low + high) / 2;
    if (short_of(middle) > 0)
      high = middle;
    else
      low = middle + 1;
  }
  std::int64_t over = short_of(low);
  for (auto it = end_of(low); it != order.begin() && over > 0; ++bound.unserved[low]) {
    --it;
    if (p.slots[*it].due != ranks[low]) return;
    over -= size_of(p, *it).nm;
  }
}

bool serves_all(const Cost& cost) {
  return std::all_of(cost.unserved.begin(), cost.unserved.end(), [](int n) { return n == 0; });
}

// From new wire alone what is taken, scrapped and cut hang together.
void bound_rest(const Problem& p, const std::vector<std::size_t>& slots, const Supply& supply, Cost& bound) {
  bool both_flat = true, no_end = true;
  for (std::size_t i = 0; i < supply.stock.size(); ++i) {
    if (supply.stock[i] == 0) continue;
    both_flat = both_flat && p.stock[i].flat_ends == 2;
    no_end = no_end && p.stock[i].flat_ends > 0;
  }
  bound.scrap = Length{std::max<std::int64_t>(0, bound.taken.nm - sizes(p, slots))};
  const auto frets = static_cast<std::int64_t>(slots.size());
  bound.cuts = frets + (both_flat ? bound.sticks : 0);
  if (!no_end) bound.cuts = 0; // a fret that ends where its stick ends saves a cut
}

Cost bound_of(const Problem& p, const std::vector<std::size_t>& slots, const Supply& supply,
              const std::vector<int>& ranks, const Sorted& sorted, const PackBound* packed) {
  Cost out;
  out.unserved.assign(ranks.size(), 0);
  bound_service(p, slots, supply, ranks, sorted, out);
  if (!serves_all(out)) return out;
  const WireBound least =
      least_new_wire(p, slots, sorted, supply.stock, packed != nullptr ? packed->sticks : 0);
  const std::int64_t by_sum = taken_by_sum(task_of(p, slots, supply.stock), least.sizes, least.sticks);
  out.sticks = static_cast<int>(least.sticks);
  out.taken = Length{std::max(least.taken, by_sum)};
  if (packed != nullptr && packed->sticks == out.sticks)
    out.taken = std::max(out.taken, Length{packed->taken});
  if (packed != nullptr) bound_rest(p, slots, supply, out);
  return out;
}

// By the best prices of frets: more sticks, or more wire of as many, where that is more.
void raise_bound(const Problem& p, const std::vector<std::size_t>& slots, const Supply& supply,
                 const Sorted& sorted, Cost& bound, Meter& meter) {
  if (!serves_all(bound)) return;
  Relaxation::Aim aim;
  Relaxation sticks(p, slots, sorted, supply.stock, aim);
  sticks.solve({}, 0.01, meter);
  if (sticks.bound() > bound.sticks) bound.taken = {};
  bound.sticks = std::max(bound.sticks, static_cast<int>(sticks.bound()));
  aim.taken = true;
  aim.sticks = bound.sticks;
  Relaxation taken(p, slots, sorted, supply.stock, aim);
  taken.solve({}, 1, meter);
  aim.units = fine_units; // from these prices on, with less lost by rounding
  Relaxation fine(p, slots, sorted, supply.stock, aim);
  fine.solve(taken.prices(), 1, meter);
  bound.taken = std::max({bound.taken, Length{taken.bound()}, Length{fine.bound()}});
}

bool good_enough(const Cost& cost, const Cost& bound) {
  return serves_all(cost) && cost.sticks <= bound.sticks && cost.taken <= bound.taken &&
         cost.scrap <= bound.scrap;
}

// From new wire alone: one thorough packing.
Found search_wire(const Problem& p, const std::vector<std::size_t>& slots, const Supply& supply,
                  const std::vector<int>& ranks, Chance& chance, Meter& meter) {
  Found out;
  Packed packed = pack_slots(p, slots, supply.stock, true, chance, meter);
  out.draft = {std::move(packed.cuttings), std::move(packed.unserved)};
  out.bound = bound_of(p, slots, supply, ranks, {}, &packed.bound);
  return out;
}

void search_tin(const Problem& p, const std::vector<std::size_t>& slots, const Supply& supply,
                const std::vector<int>& ranks, Chance& chance, Meter& meter, Found& out) {
  const Sorted sorted = sort_pieces(p, slots, supply.pieces);
  out.bound = bound_of(p, slots, supply, ranks, sorted, nullptr);
  Cost least;
  const auto try_one = [&](double share, const auto& make) {
    Meter part = meter.part(share);
    Draft draft = make(part);
    meter.spend(part.steps() * Meter::per_step);
    const Cost cost = cost_of(p, draft, ranks);
    if (!out.draft.cuttings.empty() && least <= cost) return;
    out.draft = std::move(draft);
    least = cost;
  };
  const auto round = [&](int n) {
    try_one(0.1, [&](Meter& part) { return construct(p, slots, supply, n, chance, part); });
  };
  round(0);
  if (good_enough(least, out.bound)) return;
  Meter for_bound = meter.part(0.3);
  raise_bound(p, slots, supply, sorted, out.bound, for_bound);
  meter.spend(for_bound.steps() * Meter::per_step);
  if (good_enough(least, out.bound)) return;
  for (int n = 1; n < quick_rounds && slots.size() <= most_improved && !meter.over(); ++n)
    round(n);
  const bool wire_least =
      serves_all(least) && least.sticks <= out.bound.sticks && least.taken <= out.bound.taken;
  if (!meter.over() && !wire_least) {
    const double share = slots.size() > most_improved && out.draft.unserved.empty() ? 0.9 : 0.4;
    try_one(share, [&](Meter& part) { return draft_by_price(p, slots, supply, chance, part); });
  }
  for (int n = quick_rounds; n < most_rounds && !meter.over() && !good_enough(least, out.bound); ++n) {
    // Where wire is short the steps are for who gets it; and of many slots a round is too little.
    if (!out.draft.unserved.empty() || slots.size() > most_improved) break;
    round(n);
  }
}

// Pieces that can serve anything at all, ascending.
std::vector<std::size_t> of_use(const Problem& p, const std::vector<std::size_t>& slots,
                                const Supply& supply) {
  const Sorted sorted = sort_pieces(p, slots, supply.pieces);
  std::vector<std::size_t> out = sorted.singles;
  out.insert(out.end(), sorted.ends.begin(), sorted.ends.end());
  std::sort(out.begin(), out.end());
  return out;
}

// The unserved, where others can make way; where not, a later one goes without in the place of an earlier.
void serve_by_exchange(const Problem& p, const Supply& supply, Draft& draft, Meter& meter) {
  constexpr std::int64_t steps_of_one = 2'000;
  std::vector<std::size_t> order = std::move(draft.unserved);
  draft.unserved.clear();
  std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
    return std::pair(p.slots[a].due, size_of(p, a)) < std::pair(p.slots[b].due, size_of(p, b));
  });
  for (std::size_t k = 0; k < order.size(); ++k) {
    if (meter.over()) {
      draft.unserved.insert(draft.unserved.end(), order.begin() + static_cast<std::ptrdiff_t>(k),
                            order.end());
      break;
    }
    Meter part({steps_of_one, {}});
    exchange(p, supply, order[k], draft, part);
    meter.spend((part.steps() + 1) * Meter::per_step + static_cast<std::int64_t>(p.slots.size()) * 500);
  }
  std::sort(draft.unserved.begin(), draft.unserved.end());
}

Found found_exactly(const Problem& p, const std::vector<std::size_t>& slots, const std::vector<int>& ranks,
                    std::vector<Cutting> cuttings) {
  Found out;
  std::vector<char> served(p.slots.size(), 0);
  for (const Cutting& c : cuttings)
    for (const std::size_t s : c.slots)
      served[s] = 1;
  for (const std::size_t s : slots)
    if (served[s] == 0) out.draft.unserved.push_back(s);
  out.draft.cuttings = std::move(cuttings);
  out.bound = cost_of(p, out.draft, ranks);
  return out;
}

} // namespace

Found search(const Problem& p, const std::vector<std::size_t>& slots, const Supply& supply,
             const std::vector<int>& ranks, Chance& chance, Meter& meter) {
  const std::vector<Group> groups = alike(p, of_use(p, slots, supply), supply.stock);
  if (auto exact = plan_exactly(p, slots, groups, meter.left() / 2, meter))
    return found_exactly(p, slots, ranks, std::move(*exact));
  return search_largely(p, slots, supply, ranks, chance, meter);
}

Found search_largely(const Problem& p, const std::vector<std::size_t>& slots, const Supply& supply,
                     const std::vector<int>& ranks, Chance& chance, Meter& meter) {
  Found out;
  const bool tin = !of_use(p, slots, supply).empty();
  if (tin)
    search_tin(p, slots, supply, ranks, chance, meter, out);
  else
    out = search_wire(p, slots, supply, ranks, chance, meter);
  if (!out.draft.unserved.empty()) {
    Meter part = meter.part(0.5);
    serve_by_exchange(p, supply, out.draft, part);
    meter.spend(part.steps() * Meter::per_step);
  }
  if (!out.draft.unserved.empty()) {
    Draft earliest = serve_earliest(p, slots, supply, chance, meter);
    use_the_rest(p, supply, ranks, chance, out.draft);
    use_the_rest(p, supply, ranks, chance, earliest);
    if (cost_of(p, earliest, ranks) < cost_of(p, out.draft, ranks)) out.draft = std::move(earliest);
  }
  if (slots.size() <= most_improved && tin && !good_enough(cost_of(p, out.draft, ranks), out.bound)) {
    Meter part = meter.part(0.6);
    improve(p, supply, ranks, out.draft, chance, part);
    meter.spend(part.steps() * Meter::per_step);
  }
  return out;
}

} // namespace nutward::cutting
