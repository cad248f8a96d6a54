#include "cutting/bounds.hpp"

#include <algorithm>

namespace nutward::cutting {

namespace {

constexpr int most_k = 24;

// L2's function: what is longer than room − threshold fills a stick, what is shorter than threshold is left
// out.
std::int64_t without_short(std::int64_t size, std::int64_t room, std::int64_t threshold) {
  if (size > room - threshold) return room;
  return size >= threshold ? size : 0;
}

// u^(k), times k: (k+1)·size/room rounded down to a whole number of rooms, or the size if it is one.
std::int64_t stepped(std::int64_t size, std::int64_t room, int k) {
  const std::int64_t more = (k + 1) * size;
  return more % room == 0 ? size * k : more / room * room;
}

std::int64_t rounded_up(std::int64_t sum, std::int64_t room) {
  return (sum + room - 1) / room;
}

// With one threshold: by L2, and by u^(k) on top of it.
std::int64_t best_of(const std::vector<Lot>& lots, std::int64_t room, std::int64_t threshold) {
  std::int64_t sum = 0, best = 0;
  for (const Lot& lot : lots)
    sum += without_short(lot.size, room, threshold) * lot.count;
  best = rounded_up(sum, room);
  for (int k = 1; k <= most_k; ++k) {
    sum = 0;
    for (const Lot& lot : lots)
      sum += stepped(without_short(lot.size, room, threshold), room, k) * lot.count;
    best = std::max(best, rounded_up(sum, room * k));
  }
  return best;
}

std::int64_t near_end(const Problem& p, const Stock& stock) {
  return stock.flat_ends == 2 ? p.flat_end.nm : 0;
}
std::int64_t far_end(const Problem& p, const Stock& stock) {
  return stock.flat_ends >= 1 ? p.flat_end.nm : 0;
}

struct Opened {
  std::int64_t sticks = 0, others = 0; // at most so many coils and blanks
  std::int64_t room = 0;               // of the sticks
  std::int64_t near = 0, far = 0;      // flat ends of each
};

// A length that keeps its rest takes its near flat end and the sizes; one that does not takes its far flat
// end as well, and may save the last nip. How many can keep a rest follows from the room that stays empty.
std::int64_t least_taken(const Problem& p, std::int64_t sizes, const Opened& o) {
  const std::int64_t nip = p.settings.nip_loss.nm;
  std::int64_t out = sizes + o.sticks * o.near - o.others * nip;
  const std::int64_t end = o.far - nip;
  const std::int64_t keep = p.least_useful.nm + nip;
  const std::int64_t spare = std::max<std::int64_t>(0, o.room - sizes);
  const std::int64_t kept = o.others > 0 || keep <= 0 ? o.sticks : std::min(o.sticks, spare / keep);
  out += end < 0 ? o.sticks * end : (o.sticks - kept) * end;
  return std::max<std::int64_t>(0, out);
}

// The least that so many whole sticks add up to if it is at least `sum`, of one or two lengths; of more only
// `sum`.
std::int64_t whole_sticks(const Task& task, std::int64_t sum, std::int64_t sticks) {
  std::vector<std::pair<std::int64_t, std::int64_t>> lengths; // and how many
  for (const Wire& wire : task.wires)
    lengths.emplace_back(task.problem.stock[wire.stock].length.nm, wire.count);
  if (lengths.empty() || lengths.size() > 2) return sum;
  if (lengths.size() == 1) lengths.emplace_back(0, 0);
  std::int64_t out = INT64_MAX;
  for (std::int64_t n = std::max<std::int64_t>(0, sticks - lengths[1].second);
       n <= std::min(sticks, lengths[0].second); ++n) {
    const std::int64_t all = n * lengths[0].first + (sticks - n) * lengths[1].first;
    if (all >= sum) out = std::min(out, all);
  }
  return out;
}

// The longest first.
std::vector<Wire> sticks_of(const Task& task) {
  std::vector<Wire> out;
  for (const Wire& wire : task.wires)
    if (task.problem.stock[wire.stock].kind == StockKind::stick) out.push_back(wire);
  std::stable_sort(out.begin(), out.end(), [](const Wire& a, const Wire& b) { return a.room > b.room; });
  return out;
}

} // namespace

std::int64_t bound_by_functions(const std::vector<Lot>& lots, std::int64_t room) {
  std::int64_t best = best_of(lots, room, 0);
  std::int64_t tried = 0;
  for (const Lot& lot : lots) {
    if (lot.size * 2 > room || ++tried > 100) continue;
    best = std::max(best, best_of(lots, room, lot.size));
  }
  return best;
}

std::int64_t sticks_by_sum(const Task& task, std::int64_t sizes) {
  std::int64_t need = sizes, out = 0;
  for (const Wire& wire : task.wires)
    if (task.problem.stock[wire.stock].kind != StockKind::stick) need -= wire.room * wire.count;
  for (const Wire& wire : sticks_of(task)) {
    const std::int64_t n = need <= 0 ? 0 : std::min<std::int64_t>(wire.count, rounded_up(need, wire.room));
    out += n;
    need -= n * wire.room;
  }
  return out;
}

std::int64_t taken_by_sum(const Task& task, std::int64_t sizes, std::int64_t sticks) {
  const Problem& p = task.problem;
  Opened opened{sticks, 0, 0, INT64_MAX, INT64_MAX};
  for (const Wire& wire : task.wires)
    if (p.stock[wire.stock].kind != StockKind::stick) opened.others += wire.count;
  std::int64_t left = sticks;
  for (const Wire& wire : sticks_of(task)) {
    opened.near = std::min(opened.near, near_end(p, p.stock[wire.stock]));
    opened.far = std::min(opened.far, far_end(p, p.stock[wire.stock]));
    const std::int64_t n = std::min<std::int64_t>(wire.count, left);
    opened.room += n * wire.room;
    left -= n;
  }
  if (sticks == 0) opened.near = opened.far = 0;
  const std::int64_t least = least_taken(p, sizes, opened);
  if (opened.others > 0 || sticks == 0 || opened.near > 0 || opened.far > 0) return least;
  // Every stick may save its last nip only if none keeps a rest: then all are taken whole.
  return std::max(least, std::min(least + p.settings.nip_loss.nm, whole_sticks(task, least, sticks)));
}

std::int64_t all_taken(const Task& task, std::int64_t sizes, std::int64_t sticks) {
  if (task.wires.size() != 1) return 0;
  const Problem& p = task.problem;
  const Stock& stock = p.stock[task.wires.front().stock];
  const std::int64_t spare = sticks * task.wires.front().room - sizes;
  const bool none_kept = stock.kind == StockKind::stick && spare < (p.least_useful + p.settings.nip_loss).nm;
  return none_kept ? sticks * stock.length.nm : 0;
}

} // namespace nutward::cutting
