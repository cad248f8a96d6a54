#include "cutting/bounds.hpp"
#include "cutting/columns.hpp"
#include "cutting/dive.hpp"
#include "cutting/draft.hpp"
#include "cutting/keep.hpp"

#include <algorithm>
#include <map>
#include <optional>

namespace nutward::cutting {

namespace {

constexpr int quick_attempts = 24;
constexpr double for_packing = 0.8; // of the steps; the rest is for what comes then

// Slots of one size that the same wire suits, longest first; of each, the earliest due first.
struct LotKey {
  std::int64_t size = 0;
  std::optional<Length> crown;
  friend bool operator<(const LotKey& a, const LotKey& b) {
    return a.size != b.size ? a.size > b.size : a.crown < b.crown;
  }
};
using Lots = std::map<LotKey, std::vector<std::size_t>>;

Lots lots_of(const Problem& p, std::span<const std::size_t> slots) {
  Lots out;
  const bool crowns =
      std::any_of(p.stock.begin(), p.stock.end(), [](const Stock& s) { return s.crown_height.has_value(); });
  for (const std::size_t s : slots)
    out[{size_of(p, s).nm, crowns ? p.slots[s].crown_height : std::nullopt}].push_back(s);
  for (auto& [key, members] : out)
    std::stable_sort(members.begin(), members.end(),
                     [&](std::size_t a, std::size_t b) { return p.slots[a].due < p.slots[b].due; });
  return out;
}

void add_wires(const Problem& p, const Lots& lots, const std::vector<int>& stock, Task& task) {
  for (std::size_t i = 0; i < stock.size(); ++i) {
    if (stock[i] == 0) continue;
    Wire wire{i, room(p, p.stock[i]).nm, stock[i], {}};
    bool all = true;
    for (const auto& [key, members] : lots) {
      wire.suits.push_back(crowns_alike(key.crown, p.stock[i].crown_height, p.settings) ? 1 : 0);
      all = all && wire.suits.back() != 0;
    }
    if (all) wire.suits.clear();
    task.wires.push_back(std::move(wire));
  }
  std::stable_sort(task.wires.begin(), task.wires.end(),
                   [](const Wire& a, const Wire& b) { return a.room > b.room; });
}

Task task_of_lots(const Problem& p, const Lots& lots, const std::vector<int>& stock) {
  Task task{p, {}, {}};
  for (const auto& [key, members] : lots)
    task.lots.push_back({key.size, static_cast<int>(members.size())});
  add_wires(p, lots, stock, task);
  return task;
}

std::int64_t sum_of(const Task& task) {
  std::int64_t sum = 0;
  for (const Lot& lot : task.lots)
    sum += lot.size * lot.count;
  return sum;
}

bool only_sticks(const Task& task) {
  return std::all_of(task.wires.begin(), task.wires.end(),
                     [&](const Wire& w) { return task.problem.stock[w.stock].kind == StockKind::stick; });
}

std::int64_t least_taken(const Task& task, std::int64_t sticks) {
  const std::int64_t sizes = sum_of(task);
  return std::max(taken_by_sum(task, sizes, sticks), all_taken(task, sizes, sticks));
}

PackBound quick_bound(const Task& task) {
  PackBound out{sticks_by_sum(task, sum_of(task)), 0};
  if (!task.wires.empty() && only_sticks(task) && task.lots.front().size <= task.wires.front().room)
    out.sticks = std::max(out.sticks, bound_by_functions(task.lots, task.wires.front().room));
  out.taken = least_taken(task, out.sticks);
  return out;
}

// Column generation: a better bound, and a packing that reaches it.
void close_gap(const Task& task, Packing& best, PackBound& bound, Chance& chance, Meter& meter) {
  const std::unique_ptr<Columns> columns = Columns::make(task);
  if (!columns) return;
  std::vector<int> lots, wires;
  for (const Lot& lot : task.lots)
    lots.push_back(lot.count);
  for (const Wire& wire : task.wires)
    wires.push_back(wire.count);
  const Relaxed root = columns->solve(lots, wires, meter);
  bound.sticks = std::max(bound.sticks, root.bound);
  bound.taken = least_taken(task, bound.sticks);
  while (root.objective >= 0 && !meter.over() && (best.unpacked > 0 || best.price.sticks > bound.sticks)) {
    const std::int64_t goal = bound.sticks;
    std::optional<Packing> found = dive(task, *columns, root, goal, chance, meter);
    if (!found) return;
    if (better(*found, best)) best = std::move(*found);
  }
}

std::vector<Cutting> cuttings_of(const Task& task, const Packing& packing, Lots&& lots,
                                 std::vector<std::size_t>& unserved) {
  std::vector<std::vector<std::size_t>*> members;
  for (auto& [key, list] : lots) {
    std::reverse(list.begin(), list.end()); // to be taken from the back
    members.push_back(&list);
  }
  std::vector<Cutting> out;
  for (const Bin& bin : packing.bins) {
    Cutting cutting{{From::stock, task.wires[bin.wire].stock}, {}};
    for (const int lot : bin.lots) {
      std::vector<std::size_t>& from = *members[static_cast<std::size_t>(lot)];
      cutting.slots.push_back(from.back());
      from.pop_back();
    }
    out.push_back(std::move(cutting));
  }
  for (const std::vector<std::size_t>* list : members)
    unserved.insert(unserved.end(), list->begin(), list->end());
  std::sort(unserved.begin(), unserved.end());
  return out;
}

} // namespace

Task task_of(const Problem& p, std::span<const std::size_t> slots, const std::vector<int>& stock) {
  return task_of_lots(p, lots_of(p, slots), stock);
}

Packed pack_slots(const Problem& p, std::span<const std::size_t> slots, const std::vector<int>& stock,
                  bool thorough, Chance& chance, Meter& meter) {
  Packed out;
  if (slots.empty()) return out;
  Lots lots = lots_of(p, slots);
  const Task task = task_of_lots(p, lots, stock);
  out.bound = quick_bound(task);
  Meter part = meter.part(for_packing);
  Packing best = pack(task, out.bound, quick_attempts, chance, part);
  meter.spend(part.steps() * Meter::per_step);
  if (thorough && (best.unpacked > 0 || best.price.sticks > out.bound.sticks))
    close_gap(task, best, out.bound, chance, meter);
  if (best.price.taken > out.bound.taken) best = keep_more(task, std::move(best), chance, meter);
  out.cuttings = cuttings_of(task, best, std::move(lots), out.unserved);
  return out;
}

} // namespace nutward::cutting
