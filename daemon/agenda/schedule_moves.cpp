// The order of a Schedule, and the links of each unit through it.
#include "agenda/schedule.hpp"

#include <algorithm>

namespace nutward::agenda {

void Schedule::link_all() {
  std::fill(prev_.begin(), prev_.end(), -1);
  std::fill(next_.begin(), next_.end(), -1);
  std::fill(first_.begin(), first_.end(), -1);
  std::fill(last_.begin(), last_.end(), -1);
  for (const int op : order_)
    for (int i = 0; i < 2; ++i) {
      const int unit = mode_of(op).unit[at(i)];
      if (unit < 0) continue;
      const int me = 2 * op + i, before = last_[at(unit)];
      prev_[at(me)] = before;
      if (before >= 0)
        next_[at(before)] = me;
      else
        first_[at(unit)] = me;
      last_[at(unit)] = me;
    }
}

void Schedule::unlink(int op) {
  for (int i = 0; i < 2; ++i) {
    const int unit = mode_of(op).unit[at(i)];
    if (unit < 0) continue;
    const int me = 2 * op + i, before = prev_[at(me)], after = next_[at(me)];
    if (before >= 0)
      next_[at(before)] = after;
    else
      first_[at(unit)] = after;
    if (after >= 0)
      prev_[at(after)] = before;
    else
      last_[at(unit)] = before;
    prev_[at(me)] = next_[at(me)] = -1;
  }
}

void Schedule::link_after(int me, int unit, int before) {
  const int after = before >= 0 ? next_[at(before)] : first_[at(unit)];
  prev_[at(me)] = before;
  next_[at(me)] = after;
  if (before >= 0)
    next_[at(before)] = me;
  else
    first_[at(unit)] = me;
  if (after >= 0)
    prev_[at(after)] = me;
  else
    last_[at(unit)] = me;
}

int Schedule::node_on(int op, int unit) const {
  const Mode& mode = mode_of(op);
  return mode.unit[0] == unit ? 2 * op : mode.unit[1] == unit ? 2 * op + 1 : -1;
}

// Between its neighbours by position: looked for on both sides, step by step.
void Schedule::link(int op) {
  const int n = static_cast<int>(order_.size());
  for (int i = 0; i < 2; ++i) {
    const int unit = mode_of(op).unit[at(i)];
    if (unit < 0) continue;
    int before = -1;
    const int p = position_[at(op)];
    for (int d = 1; first_[at(unit)] >= 0 && (p - d >= 0 || p + d < n); ++d) {
      if (p - d >= 0)
        if (const int found = node_on(order_[at(p - d)], unit); found >= 0) {
          before = found;
          break;
        }
      if (p + d < n)
        if (const int found = node_on(order_[at(p + d)], unit); found >= 0) {
          before = prev_[at(found)];
          break;
        }
    }
    link_after(2 * op + i, unit, before);
  }
}

// Puts the op, which is unlinked, to its place in the order. False if it cannot stand there.
bool Schedule::shift(const Move& move) {
  if (move.to == move.op) return true;
  const int p = position_[at(move.op)], q = position_[at(move.to)];
  if (p < q) return forward(move.op, p, move.before ? q - 1 : q, move.before ? -1 : move.to);
  return backward(move.op, move.before ? q : q + 1, p, move.before ? move.to : -1);
}

// Behind order_[last]; what depends on it goes along, which must not be `to`.
bool Schedule::forward(int op, int first, int last, int to) {
  ++stamp_;
  mark_[at(op)] = stamp_;
  ahead_.clear();
  behind_.assign(1, op);
  for (int i = first + 1; i <= last; ++i) {
    const int y = order_[at(i)];
    const auto& in = m_.ops[at(y)].in;
    bool along = std::any_of(in.begin(), in.end(), [&](const Arc& a) { return mark_[at(a.op)] == stamp_; });
    for (int k = 0; k < 2 && !along; ++k)
      if (const int before = prev_[node(y, k)]; before >= 0) along = mark_[at(before / 2)] == stamp_;
    if (along) mark_[at(y)] = stamp_;
    (along ? behind_ : ahead_).push_back(y);
  }
  if (to >= 0 && mark_[at(to)] == stamp_) return false;
  ahead_.insert(ahead_.end(), behind_.begin(), behind_.end());
  place_segment(first);
  return true;
}

// Before order_[first]; what it depends on goes along, which must not be `to`.
bool Schedule::backward(int op, int first, int last, int to) {
  ++stamp_;
  mark_[at(op)] = stamp_;
  ahead_.assign(1, op); // both in falling order at first
  behind_.clear();
  for (int i = last - 1; i >= first; --i) {
    const int y = order_[at(i)];
    const auto& out = m_.ops[at(y)].out;
    bool along = std::any_of(out.begin(), out.end(), [&](int next) { return mark_[at(next)] == stamp_; });
    for (int k = 0; k < 2 && !along; ++k)
      if (const int after = next_[node(y, k)]; after >= 0) along = mark_[at(after / 2)] == stamp_;
    if (along) mark_[at(y)] = stamp_;
    (along ? ahead_ : behind_).push_back(y);
  }
  if (to >= 0 && mark_[at(to)] == stamp_) return false;
  std::reverse(ahead_.begin(), ahead_.end());
  ahead_.insert(ahead_.end(), behind_.rbegin(), behind_.rend());
  place_segment(first);
  return true;
}

void Schedule::place_segment(int first) {
  const auto from = order_.begin() + first;
  Change& change = changes_[depth_ - 1];
  change.first = first;
  change.segment.assign(from, from + static_cast<std::ptrdiff_t>(ahead_.size()));
  for (std::size_t i = 0; i < ahead_.size(); ++i) {
    order_[at(first) + i] = ahead_[i];
    position_[at(ahead_[i])] = first + static_cast<int>(i);
  }
}

// The moved op, which is unlinked, and the order as they were.
void Schedule::put_back(const Change& change) {
  for (std::size_t i = 0; i < change.segment.size(); ++i) {
    order_[at(change.first) + i] = change.segment[i];
    position_[at(change.segment[i])] = change.first + static_cast<int>(i);
  }
  mode_[at(change.op)] = change.mode;
  for (int i = 0; i < 2; ++i)
    if (const int unit = mode_of(change.op).unit[at(i)]; unit >= 0)
      link_after(2 * change.op + i, unit, change.prev[at(i)]);
}

} // namespace nutward::agenda
