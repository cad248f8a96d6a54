#include "agenda/fill.hpp"

#include <algorithm>
#include <numeric>

namespace nutward::agenda {

namespace {

std::size_t at(int i) {
  return static_cast<std::size_t>(i);
}

// A job's work on the unit, and when it can be there at the earliest.
struct Item {
  int job = -1;
  Second work = 0, head = 0;
  bool taken = false;
};

constexpr std::size_t reach = 30;         // jobs that are looked at for a day
constexpr std::size_t most_states = 6000; // amounts of work that are told apart

// The subset of `work` with the greatest sum up to `room`; of those the one of the first items.
std::vector<std::size_t> best_fill(const std::vector<Second>& work, Second room) {
  Second unit = 0;
  for (const Second w : work)
    unit = std::gcd(unit, w);
  unit = std::max<Second>({unit, 1, room / static_cast<Second>(most_states)});
  const auto states = static_cast<std::size_t>(room / unit) + 1;
  constexpr std::int64_t none = INT64_MAX / 2;
  std::vector<std::int64_t> cost(states, none);
  std::vector<std::vector<char>> takes(work.size(), std::vector<char>(states, 0));
  cost[0] = 0;
  for (std::size_t i = 0; i < work.size(); ++i) {
    const auto w = static_cast<std::size_t>((work[i] + unit - 1) / unit);
    const auto late = static_cast<std::int64_t>(i * i);
    for (std::size_t s = states; s-- > w;)
      if (cost[s - w] + late < cost[s]) {
        cost[s] = cost[s - w] + late;
        takes[i][s] = 1;
      }
  }
  std::size_t s = states - 1;
  while (cost[s] >= none)
    --s;
  std::vector<std::size_t> out;
  for (std::size_t i = work.size(); i-- > 0;)
    if (takes[i][s] != 0) {
      out.push_back(i);
      s -= static_cast<std::size_t>((work[i] + unit - 1) / unit);
    }
  std::reverse(out.begin(), out.end());
  return out;
}

std::vector<Item> items_of(const Model& m, const std::vector<int>& by_due, const Timeline*& time) {
  std::vector<Item> out;
  for (const int j : by_due) {
    Item item{j, 0, m.from, false};
    Second end = m.from;
    for (const int op : m.jobs[at(j)].ops) {
      const Op& o = m.ops[at(op)];
      const Second start = std::max(o.ready, end + (o.in.empty() ? 0 : o.in.front().lag));
      const Mode& mode = o.modes.front();
      end = m.timelines[mode.timeline].place(start, o.work).end;
      if (item.work > 0 || (mode.unit[0] != m.busy && mode.unit[1] != m.busy)) continue;
      item.work = o.work;
      item.head = end - o.work;
      if (time == nullptr) time = &m.timelines[mode.timeline];
    }
    out.push_back(item);
  }
  return out;
}

} // namespace

std::vector<int> filling_days(const Model& m, const std::vector<int>& by_due) {
  const Timeline* time = nullptr;
  std::vector<Item> items = items_of(m, by_due, time);
  std::vector<int> out;
  if (time == nullptr || time->elapsed()) return by_due;
  Second now = never;
  for (const Item& item : items)
    if (item.work > 0) now = std::min(now, item.head);
  for (std::size_t first = 0; first < items.size();) {
    const Timeline::Room room = time->room(now);
    if (room.end >= never) break;
    std::vector<std::size_t> seen;
    std::vector<Second> work;
    for (std::size_t i = first; i < items.size() && seen.size() < reach; ++i) {
      Item& item = items[i];
      if (!item.taken && item.work == 0) {
        item.taken = true;
        out.push_back(item.job);
      }
      if (item.taken || item.head + item.work > room.end) continue;
      seen.push_back(i);
      work.push_back(item.work);
    }
    std::vector<std::size_t> chosen;
    for (const std::size_t k : best_fill(work, room.open))
      chosen.push_back(seen[k]);
    std::stable_sort(chosen.begin(), chosen.end(), [&](std::size_t a, std::size_t b) {
      return std::max(items[a].head, room.start) < std::max(items[b].head, room.start);
    });
    for (const std::size_t i : chosen) {
      items[i].taken = true;
      out.push_back(items[i].job);
    }
    while (first < items.size() && items[first].taken)
      ++first;
    now = room.end;
  }
  for (const Item& item : items)
    if (!item.taken) out.push_back(item.job);
  return out;
}

} // namespace nutward::agenda
