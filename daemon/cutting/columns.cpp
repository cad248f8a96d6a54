#include "cutting/columns.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace nutward::cutting {

namespace {

// One stick, in the whole numbers that prices are rounded to. Sums of them stay far below 2^63.
constexpr std::int64_t one = 1'000'000'000;
constexpr double shortage = 8; // sticks: a stick of its own would do for any fret

std::vector<std::int64_t> whole(const std::vector<double>& prices, std::size_t lots) {
  std::vector<std::int64_t> out;
  for (std::size_t i = 0; i < lots; ++i)
    out.push_back(std::max<std::int64_t>(0, std::llround(prices[i] * static_cast<double>(one))));
  return out;
}

} // namespace

std::unique_ptr<Columns> Columns::make(const Task& task) {
  if (task.lots.empty() || task.wires.empty()) return nullptr;
  std::int64_t unit = task.lots.front().size;
  for (const Lot& lot : task.lots)
    unit = std::gcd(unit, lot.size);
  if (unit <= 0) return nullptr; // sizes are over 0
  for (const Wire& wire : task.wires) {
    const bool all = std::all_of(wire.suits.begin(), wire.suits.end(), [](char c) { return c != 0; });
    if (!all || task.problem.stock[wire.stock].kind != StockKind::stick) return nullptr;
    if (wire.room / unit > most_units) return nullptr;
  }
  return std::unique_ptr<Columns>(new Columns(task, unit));
}

Columns::Columns(const Task& task, std::int64_t unit) {
  for (const Lot& lot : task.lots)
    sizes_.push_back(lot.size / unit);
  for (const Wire& wire : task.wires)
    rooms_.push_back(wire.room / unit);
}

bool Columns::suits(const Known& known, const std::vector<int>& lots_left,
                    const std::vector<int>& wires_left) const {
  if (wires_left[known.pattern.wire] == 0) return false;
  for (const auto& [row, by] : known.column.entries)
    if (static_cast<std::size_t>(row) < lots_left.size() && by > lots_left[static_cast<std::size_t>(row)])
      return false;
  return true;
}

// The best new pattern of each length, if it would improve.
bool Columns::add_best(const std::vector<double>& prices, Knapsack& knapsack, Master& master,
                       std::vector<const Known*>& used) {
  bool added = false;
  for (std::size_t w = 0; w < rooms_.size(); ++w) {
    const double limit_price = prices[sizes_.size() + w];
    const double gain =
        static_cast<double>(knapsack.value(rooms_[w])) / static_cast<double>(one) + limit_price - 1;
    if (gain < 1e-6) continue;
    Known known{{w, knapsack.set(rooms_[w]), 0}, {1, {}}};
    for (std::size_t i = 0; i < sizes_.size(); ++i)
      if (known.pattern.counts[i] > 0)
        known.column.entries.emplace_back(static_cast<int>(i), known.pattern.counts[i]);
    known.column.entries.emplace_back(static_cast<int>(sizes_.size() + w), 1);
    known_.push_back(std::move(known));
    master.add(known_.back().column);
    used.push_back(&known_.back());
    added = true;
  }
  return added;
}

// For any prices y ≥ 0 of the frets, n sticks can be worth no more than what each can hold at best: that is a
// bound whatever the prices are (Farley, Oper. Res. 38 (1990) 922, for one length; with several, each is
// counted as often as it pays: Lagrange).
std::int64_t Columns::prove(const std::vector<std::int64_t>& values, const Knapsack& knapsack,
                            const std::vector<int>& lots_left, const std::vector<int>& wires_left) const {
  std::int64_t worth = 0, most = 0;
  for (std::size_t i = 0; i < values.size(); ++i)
    worth += values[i] * lots_left[i];
  std::int64_t lagrange = worth;
  for (std::size_t w = 0; w < rooms_.size(); ++w) {
    if (wires_left[w] == 0) continue;
    const std::int64_t best = knapsack.value(rooms_[w]);
    most = std::max(most, best);
    if (best > one) lagrange -= (best - one) * wires_left[w];
  }
  const std::int64_t farley = most > 0 ? (worth + most - 1) / most : 0;
  return std::max(farley, lagrange > 0 ? (lagrange + one - 1) / one : 0);
}

Relaxed Columns::solve(const std::vector<int>& lots_left, const std::vector<int>& wires_left, Meter& meter) {
  Master master({lots_left.begin(), lots_left.end()}, {wires_left.begin(), wires_left.end()}, shortage);
  std::vector<const Known*> used;
  for (const Known& known : known_) {
    if (!suits(known, lots_left, wires_left)) continue;
    master.add(known.column);
    used.push_back(&known);
  }
  Knapsack knapsack(sizes_, lots_left, *std::max_element(rooms_.begin(), rooms_.end()));
  Relaxed out;
  out.objective = -1;
  while (master.improve(meter)) {
    const std::vector<std::int64_t> values = whole(master.prices(), sizes_.size());
    knapsack.solve(values, meter);
    out.bound = std::max(out.bound, prove(values, knapsack, lots_left, wires_left));
    if (meter.over()) break;
    if (!add_best(master.prices(), knapsack, master, used)) {
      out.objective = master.objective();
      break;
    }
  }
  const std::vector<double> uses = master.uses();
  for (std::size_t k = 0; k < used.size(); ++k) {
    if (uses[k] < 1e-4) continue;
    out.patterns.push_back(used[k]->pattern);
    out.patterns.back().uses = uses[k];
  }
  std::stable_sort(out.patterns.begin(), out.patterns.end(),
                   [](const Pattern& a, const Pattern& b) { return a.uses > b.uses; });
  return out;
}

} // namespace nutward::cutting
