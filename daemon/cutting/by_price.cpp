#include "cutting/by_price.hpp"

#include "cutting/recut.hpp"
#include "cutting/relax.hpp"

#include <algorithm>

namespace nutward::cutting {

namespace {

constexpr double enough = 0.02; // sticks
constexpr int units = 3000;
constexpr std::size_t knots = 20;
constexpr double for_prices = 0.3; // of the steps
constexpr double for_ends = 0.75;  // of what is left then; the rest packs sticks
constexpr int times = 2;           // that ends are cut from the start

// In nm of the longest length of new wire; by size where prices cannot be had.
std::vector<double> prices_of(const Problem& p, const std::vector<std::size_t>& slots, const Sorted& pieces,
                              const std::vector<int>& stock, Meter& meter) {
  Relaxation::Aim aim;
  aim.rounding = Rounding::up;
  aim.units = units;
  aim.knots = knots;
  Relaxation relaxed(p, slots, pieces, stock, aim);
  relaxed.solve({}, enough, meter);
  Length longest{};
  for (std::size_t i = 0; i < stock.size(); ++i)
    if (stock[i] > 0) longest = std::max(longest, room(p, p.stock[i]));
  std::vector<double> out = relaxed.prices();
  for (double& price : out)
    price *= static_cast<double>(longest.nm);
  return out;
}

std::int64_t sizes(const Problem& p, const std::vector<std::size_t>& slots) {
  std::int64_t sum = 0;
  for (const std::size_t s : slots)
    sum += size_of(p, s).nm;
  return sum;
}

// The best of some, for each ends where its chance has led it.
Recut recut_some_times(const Problem& p, const std::vector<std::size_t>& slots, const Sorted& sorted,
                       const std::vector<double>& prices, Chance& chance, Meter& meter) {
  Recut best;
  for (int n = times; n > 0; --n) {
    Meter part = meter.part(1.0 / n);
    Recut found = recut_ends(p, slots, sorted, prices, chance, part);
    meter.spend(part.steps() * Meter::per_step);
    if (n == times || sizes(p, found.rest) < sizes(p, best.rest)) best = std::move(found);
    if (meter.over() || best.rest.empty()) break;
  }
  return best;
}

} // namespace

Draft draft_by_price(const Problem& p, const std::vector<std::size_t>& slots, const Supply& supply,
                     Chance& chance, Meter& meter) {
  const Sorted sorted = sort_pieces(p, slots, supply.pieces);
  Meter part = meter.part(for_prices);
  const std::vector<double> prices = prices_of(p, slots, sorted, supply.stock, part);
  meter.spend(part.steps() * Meter::per_step);
  part = meter.part(for_ends);
  Recut recut = recut_some_times(p, slots, sorted, prices, chance, part);
  meter.spend(part.steps() * Meter::per_step);
  Draft out{std::move(recut.ends), {}};
  std::vector<char> served(p.slots.size(), 0);
  for (Cutting& c : serve_chosen(p, recut.chosen, sorted.singles)) {
    served[c.slots.front()] = 1;
    out.cuttings.push_back(std::move(c));
  }
  for (const std::size_t s : recut.chosen)
    if (served[s] == 0) recut.rest.push_back(s);
  std::sort(recut.rest.begin(), recut.rest.end());
  Packed packed = pack_slots(p, recut.rest, supply.stock, false, chance, meter);
  std::move(packed.cuttings.begin(), packed.cuttings.end(), std::back_inserter(out.cuttings));
  out.unserved = std::move(packed.unserved);
  return out;
}

} // namespace nutward::cutting
