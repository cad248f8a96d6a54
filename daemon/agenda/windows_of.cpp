#include "agenda/windows_of.hpp"

#include "agenda/edges.hpp"

#include <algorithm>

namespace nutward::agenda {

Propagator::Propagator(const Model& model)
    : m_(model), words_(model.ops.size() / 64 + 1), of_unit_(model.units) {
  for (const int j : m_.job_order)
    ops_.insert(ops_.end(), m_.jobs[at(j)].ops.begin(), m_.jobs[at(j)].ops.end());
  planned_.assign(m_.ops.size(), 0);
  for (const int op : ops_)
    planned_[at(op)] = 1;
  for (const Op& o : m_.ops)
    mode_words_ = std::max(mode_words_, (o.modes.size() + 63) / 64);
}

Node Propagator::root() const {
  const std::size_t n = m_.ops.size();
  Node node;
  node.start.assign(n, -never);
  node.end.assign(n, -never);
  node.latest_start.assign(n, m_.until);
  node.latest_end.assign(n, m_.until);
  node.before.assign(n * words_, 0);
  node.after.assign(n * words_, 0);
  node.modes.assign(n * mode_words_, 0);
  for (const int op : ops_) {
    for (std::size_t k = 0; k < m_.ops[at(op)].modes.size(); ++k)
      node.modes[at(op) * mode_words_ + k / 64] |= std::uint64_t{1} << (k % 64);
    for (const Arc& a : m_.ops[at(op)].in)
      decide(node, a.op, op);
  }
  return node;
}

// `first` and all before it come before `second` and all after it.
bool Propagator::decide(Node& n, int first, int second) const {
  if (is_before(n, first, second)) return true;
  if (first == second || is_before(n, second, first)) return false;
  const auto each = [&](const std::uint64_t* row, int self, auto&& f) {
    f(self);
    for (std::size_t w = 0; w < words_; ++w)
      for (std::uint64_t bits = row[w]; bits != 0; bits &= bits - 1)
        f(static_cast<int>(w * 64 + static_cast<std::size_t>(std::countr_zero(bits))));
  };
  const std::vector<std::uint64_t> before(&n.before[at(first) * words_],
                                          &n.before[at(first) * words_] + words_);
  const std::vector<std::uint64_t> after(&n.after[at(second) * words_],
                                         &n.after[at(second) * words_] + words_);
  const auto merge = [&](std::uint64_t* row, const std::vector<std::uint64_t>& more, int one) {
    for (std::size_t w = 0; w < words_; ++w)
      row[w] |= more[w];
    row[at(one) / 64] |= std::uint64_t{1} << (at(one) % 64);
  };
  each(before.data(), first, [&](int a) { merge(&n.after[at(a) * words_], after, second); });
  each(after.data(), second, [&](int b) { merge(&n.before[at(b) * words_], before, first); });
  return true;
}

void Propagator::take_mode(Node& node, int op, int mode) const {
  std::uint64_t* row = &node.modes[at(op) * mode_words_];
  std::fill(row, row + mode_words_, 0);
  row[at(mode) / 64] = std::uint64_t{1} << (at(mode) % 64);
}

std::vector<int> Propagator::modes(const Node& node, int op) const {
  std::vector<int> out;
  each_mode(node, op, [&](int k) {
    out.push_back(k);
    return true;
  });
  return out;
}

int Propagator::count(const Node& node, int op) const {
  int out = 0;
  for (std::size_t w = 0; w < mode_words_; ++w)
    out += std::popcount(node.modes[at(op) * mode_words_ + w]);
  return out;
}

bool Propagator::certain(const Node& node, int op, int unit) const {
  return each_mode(node, op, [&](int k) {
    const auto& units = m_.ops[at(op)].modes[at(k)].unit;
    return units[0] == unit || units[1] == unit;
  });
}

const std::vector<std::vector<int>>& Propagator::of_unit(const Node& node) {
  for (auto& list : of_unit_)
    list.clear();
  for (const int op : ops_) {
    int first = 0;
    each_mode(node, op, [&](int k) {
      first = k;
      return false;
    });
    for (const int unit : m_.ops[at(op)].modes[at(first)].unit)
      if (unit >= 0 && certain(node, op, unit)) of_unit_[at(unit)].push_back(op);
  }
  return of_unit_;
}

bool Propagator::undecided(const Node& n, int a, int b) const {
  return !is_before(n, a, b) && !is_before(n, b, a);
}

Value Propagator::least(const Node& n) const {
  Value v;
  for (const int op : ops_) {
    const Op& o = m_.ops[at(op)];
    if (n.start[at(op)] > o.start_by) v.overrun_s += n.start[at(op)] - o.start_by;
    if (n.end[at(op)] > o.end_by) v.overrun_s += n.end[at(op)] - o.end_by;
  }
  for (const int op : ops_)
    if (m_.ops[at(op)].busy) v.busy += m_.ops[at(op)].work * (n.end[at(op)] - m_.from);
  for (const int j : m_.job_order) {
    const JobFacts& f = m_.jobs[at(j)];
    const Second finish = f.ops.empty() ? f.fixed_end : std::max(f.fixed_end, n.end[at(f.ops.back())]);
    if (m_.goal == Goal::last_end) {
      v.last_s = std::max(v.last_s, finish - m_.from);
      continue;
    }
    const Second late = f.weight * std::max<Second>(0, finish - f.due);
    v.late_s += late;
    v.worst_s = std::max(v.worst_s, late);
    v.finish_s += f.weight * std::max<Second>(0, finish - m_.from);
  }
  return v;
}

// Latest ends of jobs: by what each may cost more than its least if the whole is to be better than `best`.
bool Propagator::set_deadlines(Node& n, const Value& best) {
  const Value v = least(n);
  if (v >= best) return false;
  const Second over = best.overrun_s - v.overrun_s; // how much more may overrun
  for (const int op : ops_) {
    const Op& o = m_.ops[at(op)];
    if (o.end_by < never && !set_end(n, op, std::max(o.end_by, n.end[at(op)]) + over)) return false;
  }
  if (over > 0) return true; // anything may still be traded for that
  const bool tie_helps = std::tie(v.worst_s, v.last_s, v.busy, v.finish_s) <
                         std::tie(best.worst_s, best.last_s, best.busy, best.finish_s);
  const std::int64_t room = best.late_s - v.late_s - (tie_helps ? 0 : 1);
  for (const int j : m_.job_order) {
    const JobFacts& f = m_.jobs[at(j)];
    if (f.ops.empty()) continue;
    const int last = f.ops.back();
    Second by = m_.until;
    if (m_.goal == Goal::last_end) {
      by = m_.from + best.last_s - 1;
    } else {
      const Second finish = std::max(f.fixed_end, n.end[at(last)]);
      const Second late = f.weight * std::max<Second>(0, finish - f.due);
      if (f.due < never) by = std::min(by, f.due + (late + room) / f.weight);
      if (v.late_s == best.late_s) {
        if (f.due < never) by = std::min(by, f.due + best.worst_s / f.weight);
        if (v.worst_s == best.worst_s && v.busy == best.busy && f.weight > 0) {
          const Second rest = best.finish_s - 1 - v.finish_s;
          by = std::min(by, std::max(m_.from, finish) + rest / f.weight);
        }
      }
    }
    if (!set_end(n, last, by)) return false;
  }
  return true;
}

// ---- single ops

// The earliest start at or after `least`, and end, over the modes left; modes that come too late are dropped.
bool Propagator::set_start(Node& n, int op, Second least) {
  if (least <= n.start[at(op)]) return true;
  n.start[at(op)] = least;
  return fit(n, op);
}

bool Propagator::set_end(Node& n, int op, Second most) {
  if (most >= n.latest_end[at(op)]) return true;
  n.latest_end[at(op)] = most;
  return fit(n, op);
}

bool Propagator::fit(Node& n, int op) {
  changed_ = true;
  const Op& o = m_.ops[at(op)];
  Second start = never, end = never, latest_start = -never;
  int kept = 0;
  each_mode(n, op, [&](int k) {
    const Timeline& time = m_.timeline(o, k);
    const Stretch s = time.place(n.start[at(op)], o.work);
    if (s.end > n.latest_end[at(op)]) {
      n.modes[at(op) * mode_words_ + at(k) / 64] &= ~(std::uint64_t{1} << (at(k) % 64));
      return true;
    }
    ++kept;
    start = std::min(start, s.start);
    end = std::min(end, s.end);
    latest_start = std::max(latest_start, time.latest(n.latest_end[at(op)], o.work));
    return true;
  });
  if (kept == 0) return false;
  meter_->spend(40 * kept);
  n.start[at(op)] = start;
  n.end[at(op)] = std::max(n.end[at(op)], end);
  n.latest_start[at(op)] = latest_start;
  return start <= latest_start && n.end[at(op)] <= n.latest_end[at(op)];
}

// ---- all of them

bool Propagator::forward(Node& n) {
  for (const int op : ops_) {
    const Op& o = m_.ops[at(op)];
    Second least = std::max(o.ready, n.start[at(op)]);
    for (const Arc& a : o.in)
      least = std::max(least, n.end[at(a.op)] + a.lag);
    const std::uint64_t* row = &n.before[at(op) * words_];
    for (std::size_t w = 0; w < words_; ++w)
      for (std::uint64_t bits = row[w]; bits != 0; bits &= bits - 1)
        least = std::max(least, n.end[w * 64 + static_cast<std::size_t>(std::countr_zero(bits))]);
    if (!set_start(n, op, least)) return false;
    if (o.most.source < 0) continue;
    const Second end = m_.end_for(o.most, n.start[at(op)]);
    if (end <= n.end[at(o.most.source)]) continue;
    const Op& source = m_.ops[at(o.most.source)];
    Second from = never;
    each_mode(n, o.most.source, [&](int k) {
      from = std::min(from, m_.timeline(source, k).start_to_end_at(end, source.work));
      return true;
    });
    n.end[at(o.most.source)] = end;
    changed_ = true;
    if (!set_start(n, o.most.source, from) || end > n.latest_end[at(o.most.source)]) return false;
  }
  return true;
}

bool Propagator::backward(Node& n) {
  for (std::size_t i = ops_.size(); i-- > 0;) {
    const int op = ops_[i];
    Second most = n.latest_end[at(op)];
    const std::uint64_t* row = &n.after[at(op) * words_];
    for (std::size_t w = 0; w < words_; ++w)
      for (std::uint64_t bits = row[w]; bits != 0; bits &= bits - 1)
        most = std::min(most, n.latest_start[w * 64 + static_cast<std::size_t>(std::countr_zero(bits))]);
    for (const int next : m_.ops[at(op)].out)
      for (const Arc& a : m_.ops[at(next)].in)
        if (a.op == op && planned_[at(next)] != 0) most = std::min(most, n.latest_start[at(next)] - a.lag);
    if (!set_end(n, op, most)) return false;
  }
  return true;
}

bool Propagator::pairs(Node& n) {
  for (const auto& list : of_unit_)
    for (std::size_t i = 0; i < list.size(); ++i)
      for (std::size_t k = i + 1; k < list.size(); ++k) {
        const int a = list[i], b = list[k];
        if (!undecided(n, a, b)) continue;
        const bool ab = n.end[at(a)] <= n.latest_start[at(b)], ba = n.end[at(b)] <= n.latest_start[at(a)];
        if (ab && ba) continue;
        if (!ab && !ba) return false;
        changed_ = true;
        if (!(ab ? decide(n, a, b) : decide(n, b, a))) return false;
      }
  return true;
}

bool Propagator::edges(Node& n) {
  std::vector<OneMachineOp> ops;
  std::vector<int> which;
  for (std::size_t u = 0; u < of_unit_.size(); ++u) {
    const Timeline& time = m_.unit_time[u];
    ops.clear();
    which.clear();
    for (const int op : of_unit_[u]) {
      if (m_.ops[at(op)].work == 0) continue;
      ops.push_back(
          {time.open_before(n.start[at(op)]), time.open_before(n.latest_end[at(op)]), m_.ops[at(op)].work});
      which.push_back(op);
    }
    if (ops.size() < 2) continue;
    const std::vector<OneMachineOp> were = ops;
    meter_->spend(6 * static_cast<std::int64_t>(ops.size() * ops.size()));
    if (!find_edges(ops)) return false;
    for (std::size_t i = 0; i < ops.size(); ++i) {
      if (ops[i].head > were[i].head && !set_start(n, which[i], time.first_at(ops[i].head))) return false;
      if (ops[i].tail < were[i].tail && !set_end(n, which[i], time.last_at(ops[i].tail))) return false;
    }
  }
  return true;
}

bool Propagator::propagate(Node& n, const std::optional<Value>& best, Meter& meter) {
  meter_ = &meter;
  of_unit(n);
  for (;;) {
    do {
      changed_ = false;
      meter.spend(static_cast<std::int64_t>(ops_.size()) * static_cast<std::int64_t>(20 + 2 * words_));
      if (!forward(n) || (best && !set_deadlines(n, *best)) || !backward(n)) return false;
      of_unit(n); // modes may have been dropped
      if (!pairs(n)) return false;
    } while (changed_);
    if (!edges(n)) return false;
    if (!changed_) return true;
  }
}

} // namespace nutward::agenda
