#include "agenda/list.hpp"

#include <algorithm>
#include <numeric>

namespace nutward::agenda {

namespace {

std::size_t at(int i) {
  return static_cast<std::size_t>(i);
}

} // namespace

Board::Board(const Model& model)
    : m_(model), busy_(model.units), start_(model.ops.size(), -never), end_(model.ops.size(), -never),
      mode_(model.ops.size(), 0), there_(model.ops.size(), 0), rank_(model.jobs.size(), 0) {
  for (std::size_t i = 0; i < model.job_order.size(); ++i)
    rank_[agenda::at(model.job_order[i])] = static_cast<int>(i);
}

// The first stretch that meets nothing placed; each that it meets moves it to that one's end.
Stretch Board::find(const Mode& mode, Second ready, Second work) const {
  const Timeline& time = m_.timelines[mode.timeline];
  for (;;) {
    ++placed_;
    const Stretch s = time.place(ready, work);
    if (s.end >= never) return s;
    Second free = s.start;
    for (const int unit : mode.unit) {
      if (unit < 0) continue;
      const auto& busy = busy_[agenda::at(unit)];
      auto it = std::partition_point(busy.begin(), busy.end(), [&](const Busy& b) {
        return b.end <= s.start;
      }); // The busy ones that it meets, and those after which there is no gap long enough.
      for (; it != busy.end() && it->start < (free > s.start ? free + work : s.end); ++it)
        free = std::max(free, it->end);
    }
    if (free == s.start) return s;
    ready = free;
  }
}

bool Board::add_op(int op, Second ready, std::optional<int> fixed_mode) {
  const Op& o = m_.ops[agenda::at(op)];
  ready = std::max(ready, o.ready);
  for (const Arc& a : o.in)
    ready = std::max(ready, end_[agenda::at(a.op)] + a.lag);
  Stretch best;
  int mode = 0;
  for (int k = 0; k < static_cast<int>(o.modes.size()); ++k) {
    if (fixed_mode && *fixed_mode != k) continue;
    // A set-up may be needed or spared: that is told only when all are placed, so it is left room for.
    const Stretch s = find(o.modes[agenda::at(k)], ready, o.work + o.set_up_work);
    if (s.end >= best.end) continue;
    best = s;
    mode = k;
  }
  if (best.end >= never) return false;
  put(op, mode, best);
  return true;
}

void Board::put(int op, int mode, Stretch where) {
  start_[agenda::at(op)] = where.start;
  end_[agenda::at(op)] = where.end;
  mode_[agenda::at(op)] = mode;
  there_[agenda::at(op)] = 1;
  for (const int unit : m_.ops[agenda::at(op)].modes[agenda::at(mode)].unit) {
    if (unit < 0) continue;
    auto& busy = busy_[agenda::at(unit)];
    const auto it = std::partition_point(busy.begin(), busy.end(), [&](const Busy& b) {
      return b.start < where.start || (b.start == where.start && b.end <= where.end);
    });
    busy.insert(it, {where.start, where.end, op});
  }
}

void Board::remove_op(int op) {
  if (there_[agenda::at(op)] == 0) return;
  there_[agenda::at(op)] = 0;
  for (const int unit : m_.ops[agenda::at(op)].modes[agenda::at(mode_[agenda::at(op)])].unit)
    if (unit >= 0) std::erase_if(busy_[agenda::at(unit)], [&](const Busy& b) { return b.op == op; });
}

bool Board::add(int job, const std::vector<int>* by) {
  const std::vector<int>& ops = m_.jobs[agenda::at(job)].ops;
  std::vector<Second> least(ops.size(), -never);
  return add_ops(ops, least, by);
}

bool Board::add_ops(std::span<const int> ops, std::vector<Second>& least, const std::vector<int>* by) {
  int pushes = 0;
  for (std::size_t i = 0; i < ops.size();) {
    const Op& o = m_.ops[agenda::at(ops[i])];
    std::optional<int> mode;
    if (by != nullptr && (*by)[agenda::at(ops[i])] >= 0) mode = (*by)[agenda::at(ops[i])];
    bool good = add_op(ops[i], least[i], mode);
    const int source = o.most.source;
    if (good && (source < 0 || start_[agenda::at(ops[i])] <= m_.limit(o.most, end_[agenda::at(source)]))) {
      ++i;
      continue;
    }
    good = good && source >= ops.front() && ++pushes < 5000;
    std::size_t back = 0;
    if (good) {
      back = agenda::at(source - ops.front());
      const Op& from = m_.ops[agenda::at(source)];
      const Second floor =
          m_.timeline(from, mode_[agenda::at(source)])
              .start_to_end_at(m_.end_for(o.most, start_[agenda::at(ops[i])]), from.work + from.set_up_work);
      least[back] = std::max(floor, least[back] + 1);
    }
    for (std::size_t k = back; k <= i; ++k)
      remove_op(ops[k]);
    if (!good) return false;
    i = back;
  }
  return true;
}

std::vector<int> Board::order() const {
  std::vector<int> out;
  for (std::size_t op = 0; op < there_.size(); ++op)
    if (there_[op] != 0) out.push_back(static_cast<int>(op));
  std::sort(out.begin(), out.end(), [&](int a, int b) {
    const auto key = [&](int op) {
      const Op& o = m_.ops[agenda::at(op)];
      return std::tuple(start_[agenda::at(op)], end_[agenda::at(op)], rank_[agenda::at(o.job)], o.task);
    };
    return key(a) < key(b);
  });
  return out;
}

std::vector<int> by_due_date(const Model& m) {
  std::vector<int> wanted = m.job_order;
  std::stable_sort(wanted.begin(), wanted.end(), [&](int a, int b) {
    const JobFacts &x = m.jobs[at(a)], &y = m.jobs[at(b)];
    return std::tuple(x.due, -x.weight, a) < std::tuple(y.due, -y.weight, b);
  });
  std::vector<int> out;
  std::vector<char> in(m.jobs.size(), 0);
  while (out.size() < wanted.size())
    for (const int j : wanted) {
      const auto& after = m.problem->jobs[at(j)].after;
      if (in[at(j)] != 0 ||
          std::any_of(after.begin(), after.end(), [&](std::size_t o) { return in[o] == 0; }))
        continue;
      in[at(j)] = 1;
      out.push_back(j);
    }
  return out;
}

Board list_schedule(const Model& m, const std::vector<int>& order, std::vector<int>& unplaced) {
  Board board(m);
  std::vector<char> missing(m.jobs.size(), 0);
  for (const int j : order) {
    const auto& after = m.problem->jobs[at(j)].after;
    const bool waits =
        std::any_of(after.begin(), after.end(), [&](std::size_t o) { return missing[o] != 0; });
    if (!waits && board.add(j)) continue;
    missing[at(j)] = 1;
    unplaced.push_back(j);
  }
  return board;
}

} // namespace nutward::agenda
