#include "agenda/begin.hpp"

#include <algorithm>

namespace nutward::agenda {

namespace {

std::size_t at(int i) {
  return static_cast<std::size_t>(i);
}

const Task& task_of(const Model& m, int op) {
  const Op& o = m.ops[at(op)];
  return m.problem->jobs[at(o.job)].tasks[at(o.task)];
}

// The units that it had, if it may still have them; else the mode that begins first.
int mode_again(const Model& m, int op, const Was& was) {
  const Op& o = m.ops[at(op)];
  int out = 0;
  Second first = never;
  for (int k = 0; k < static_cast<int>(o.modes.size()); ++k) {
    const Mode& mode = o.modes[at(k)];
    bool same = true;
    for (std::size_t i = 0; i < 2; ++i) {
      const int had = i < was.units.size() ? static_cast<int>(was.units[i]) : -1;
      same = same && mode.told[i] == had;
    }
    const Stretch s = m.timelines[mode.timeline].place(std::max(o.ready, was.start.s), o.work);
    if (same && s.end < never) return k;
    if (s.end < first) {
      first = s.end;
      out = k;
    }
  }
  return out;
}

} // namespace

Board begin_by_due_date(Model& m, Meter& meter) {
  const std::vector<int> by_due = by_due_date(m);
  std::vector<int> unplaced;
  Board board = list_schedule(m, by_due, unplaced);
  meter.spend(50 * board.placed());
  for (const int j : unplaced) {
    m.jobs[at(j)].planned = false;
    m.faults.push_back({Why::beyond_horizon, at(j), {}, {}});
  }
  std::erase_if(m.job_order, [&](int j) { return !m.jobs[at(j)].planned; });
  return board;
}

std::optional<Schedule> continue_last(const Model& m, Meter& meter) {
  std::vector<Second> key(m.ops.size(), -never);
  std::vector<int> order, modes(m.ops.size(), 0), fresh, rank(m.jobs.size(), 0);
  int next_rank = 0;
  for (const int j : m.job_order) {
    rank[at(j)] = next_rank++;
    const auto& ops = m.jobs[at(j)].ops;
    if (ops.empty()) continue;
    const auto& after = m.problem->jobs[at(j)].after;
    const bool after_new = std::any_of(after.begin(), after.end(), [&](std::size_t o) {
      return std::find(fresh.begin(), fresh.end(), static_cast<int>(o)) != fresh.end();
    });
    if (after_new ||
        std::none_of(ops.begin(), ops.end(), [&](int op) { return task_of(m, op).was.has_value(); })) {
      fresh.push_back(j);
      continue;
    }
    for (const int op : ops) {
      const auto& was = task_of(m, op).was;
      key[at(op)] = was ? was->start.s : m.from;
      for (const Arc& a : m.ops[at(op)].in)
        key[at(op)] = std::max(key[at(op)], key[at(a.op)]);
      modes[at(op)] = mode_again(m, op, was.value_or(Was{}));
      order.push_back(op);
    }
  }
  if (order.empty()) return std::nullopt;
  const auto place = [&](int op) {
    return std::tuple(key[at(op)], rank[at(m.ops[at(op)].job)], m.ops[at(op)].task);
  };
  std::sort(order.begin(), order.end(), [&](int a, int b) { return place(a) < place(b); });
  std::optional<Schedule> out(m);
  meter.spend(150 * static_cast<std::int64_t>(order.size()));
  if (!out->assign(order, modes)) return std::nullopt;
  if (fresh.empty()) return out;
  Board board(m);
  for (const int op : order)
    board.put(op, out->mode(op), {out->start(op), out->end(op)});
  for (const int j : by_due_date(m))
    if (std::find(fresh.begin(), fresh.end(), j) != fresh.end() && !board.add(j)) return std::nullopt;
  meter.spend(150 * board.placed());
  if (!out->assign(board.order(), board.modes())) return std::nullopt;
  return out;
}

} // namespace nutward::agenda
