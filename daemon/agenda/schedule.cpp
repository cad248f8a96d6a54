#include "agenda/schedule.hpp"

#include <algorithm>
#include <bit>

namespace nutward::agenda {

Schedule::Schedule(const Model& model)
    : m_(model), position_(model.ops.size(), -1), mode_(model.ops.size(), 0), prev_(2 * model.ops.size(), -1),
      next_(2 * model.ops.size(), -1), first_(model.units, -1), last_(model.units, -1),
      start_(model.ops.size(), -never), end_(model.ops.size(), -never), floor_(model.ops.size(), -never),
      finish_(model.jobs.size(), -never), cost_(model.jobs.size(), 0), counted_(model.jobs.size(), 0),
      logged_(model.ops.size(), 0), mark_(model.ops.size(), 0) {}

bool Schedule::assign(std::vector<int> order, std::vector<int> modes) {
  order_ = std::move(order);
  mode_ = std::move(modes);
  std::fill(position_.begin(), position_.end(), -1);
  for (std::size_t i = 0; i < order_.size(); ++i)
    position_[at(order_[i])] = static_cast<int>(i);
  for (std::size_t j = 0; j < m_.jobs.size(); ++j) {
    const JobFacts& facts = m_.jobs[j];
    counted_[j] = facts.planned && (facts.ops.empty() || position_[at(facts.ops.front())] >= 0) ? 1 : 0;
  }
  dirty_.assign(order_.size() / 64 + 1, 0);
  down_.assign(dirty_.size(), 0);
  downs_ = 0;
  link_all();
  return evaluate();
}

bool Schedule::evaluate() {
  logging_ = false;
  value_ = {};
  for (const int op : order_) { // nothing of the old times may count
    start_[at(op)] = end_[at(op)] = -never;
  }
  for (std::size_t j = 0; j < m_.jobs.size(); ++j) {
    finish_[j] = -never;
    cost_[j] = 0;
    if (counted_[j] != 0 && m_.jobs[j].ops.empty()) job_finish(static_cast<int>(j));
  }
  const bool good = start_fresh();
  total();
  return good;
}

bool Schedule::start_fresh() {
  clear_dirty();
  for (const int op : order_) {
    if (floor_[at(op)] > -never) {
      log(op);
      floor_[at(op)] = -never;
    }
    dirty(op, true);
  }
  fresh_ = true;
  pushes_ = 0;
  const bool good = propagate();
  fresh_ = false;
  find_pushed();
  return good;
}

void Schedule::find_pushed() {
  pushed_.clear();
  if (!m_.has_most) return;
  for (const int op : order_)
    if (const int source = m_.ops[at(op)].most.source; source >= 0 && floor_[at(source)] > -never)
      pushed_.emplace_back(source, op);
}

// What waits for a later op may hold itself up through ops that stand between the two: a circle that would go
// on standing when what began it has gone. Whatever changes there is worked out anew.
bool Schedule::near_push(int op) const {
  const int p = position_[at(op)];
  return std::any_of(pushed_.begin(), pushed_.end(), [&](const std::pair<int, int>& pair) {
    return position_[at(pair.first)] <= p && p <= position_[at(pair.second)];
  });
}

std::optional<Value> Schedule::try_move(const Move& move) {
  return try_moves({&move, 1});
}

std::optional<Value> Schedule::try_moves(std::span<const Move> moves, const Value* limit) {
  log_.clear();
  ++trial_;
  depth_ = 0;
  not_alone_ = false;
  value_was_ = value_;
  for (const Move& move : moves)
    if (!apply(move)) {
      take_back();
      return std::nullopt;
    }
  for (std::size_t i = 0; i < depth_; ++i) { // only now: positions have changed since
    const Change& change = changes_[i];
    dirty(change.op, true);
    dirty_next(change.op, true);
    for (const int after : change.next)
      if (after >= 0) dirty(after / 2, true);
  }
  logging_ = true;
  limit_ = limit;
  bool good = propagate();
  limit_ = nullptr;
  if (not_alone_) good = start_fresh();
  logging_ = false;
  if (!good) {
    take_back();
    return std::nullopt;
  }
  total();
  return value_;
}

// In the order and its links alone.
bool Schedule::apply(const Move& move) {
  Change& change = changes_[depth_++];
  change.op = move.op;
  change.mode = mode_[at(move.op)];
  change.segment.clear();
  for (int i = 0; i < 2; ++i) {
    change.prev[at(i)] = prev_[node(move.op, i)];
    change.next[at(i)] = next_[node(move.op, i)];
  }
  unlink(move.op);
  const bool good = shift(move);
  if (good) mode_[at(move.op)] = move.mode;
  link(move.op);
  return good;
}

void Schedule::keep() {
  depth_ = 0;
}

void Schedule::take_back() {
  while (depth_ > 0) {
    const Change& change = changes_[--depth_];
    unlink(change.op);
    put_back(change);
  }
  clear_dirty();
  restore_times();
  value_ = value_was_;
}

void Schedule::restore_times() {
  for (const Was& was : log_) {
    start_[at(was.op)] = was.start;
    end_[at(was.op)] = was.end;
    floor_[at(was.op)] = was.floor;
  }
  if (not_alone_) find_pushed();
  for (const Was& was : log_)
    if (m_.ops[at(was.op)].last) job_finish(m_.ops[at(was.op)].job);
}

// ---- what changes

void Schedule::dirty(int op, bool down) {
  const auto p = at(position_[at(op)]);
  const std::uint64_t bit = std::uint64_t{1} << (p % 64);
  dirty_[p / 64] |= bit;
  if (down && (down_[p / 64] & bit) == 0) {
    down_[p / 64] |= bit;
    ++downs_;
  }
  cursor_ = std::min(cursor_, p / 64);
}

// Everything that is still to come can only be later, so that no part of the value becomes less.
bool Schedule::beyond_limit() const {
  if (value_.overrun_s != limit_->overrun_s) return value_.overrun_s > limit_->overrun_s;
  if (value_.late_s != limit_->late_s) return value_.late_s > limit_->late_s;
  if (m_.goal == Goal::last_end || value_.late_s != 0) return false;
  if (value_.busy != limit_->busy) return value_.busy > limit_->busy;
  return value_.finish_s > limit_->finish_s;
}

void Schedule::dirty_next(int op, bool down) {
  for (int i = 0; i < 2; ++i)
    if (const int next = next_[node(op, i)]; next >= 0) dirty(next / 2, down);
}

int Schedule::next_dirty() {
  for (; cursor_ < dirty_.size(); ++cursor_) {
    if (dirty_[cursor_] == 0) continue;
    const auto bit = static_cast<std::size_t>(std::countr_zero(dirty_[cursor_]));
    dirty_[cursor_] &= dirty_[cursor_] - 1;
    if ((down_[cursor_] >> bit & 1) != 0) {
      down_[cursor_] &= ~(std::uint64_t{1} << bit);
      --downs_;
    }
    return order_[cursor_ * 64 + bit];
  }
  return -1;
}

void Schedule::clear_dirty() {
  for (; cursor_ < dirty_.size(); ++cursor_)
    dirty_[cursor_] = down_[cursor_] = 0;
  downs_ = 0;
}

bool Schedule::propagate() {
  for (int op = next_dirty(); op >= 0; op = next_dirty()) {
    if (!recompute(op)) return false;
    if (limit_ != nullptr && downs_ == 0 && beyond_limit()) return false;
  }
  return true;
}

Second Schedule::ready(int op) const {
  const Op& o = m_.ops[at(op)];
  Second ready = o.ready;
  for (const Arc& a : o.in)
    ready = std::max(ready, end_[at(a.op)] + a.lag);
  for (int i = 0; i < 2; ++i)
    if (const int before = prev_[node(op, i)]; before >= 0) ready = std::max(ready, end_[at(before / 2)]);
  return ready;
}

Second Schedule::work_of(int op) const {
  const Op& o = m_.ops[at(op)];
  if (o.set_up_work == 0) return o.work;
  const int before = mode_of(op).unit[0] >= 0 ? op_of(prev_[node(op, 0)]) : -1;
  const int told = mode_of(op).told[0];
  const std::int64_t last = before >= 0 ? m_.ops[at(before)].set_up : m_.set_up_for[at(told)];
  return last == o.set_up ? o.work : o.work + o.set_up_work;
}

bool Schedule::recompute(int op) {
  ++recomputed_;
  const Op& o = m_.ops[at(op)];
  if (!fresh_ && near_push(op)) not_alone_ = true;
  const Stretch to =
      m_.timelines[mode_of(op).timeline].place(std::max(ready(op), floor_[at(op)]), work_of(op));
  if (to.end >= never) return false;
  if (o.most.source >= 0) {
    const bool late = to.start > m_.limit(o.most, end_[at(o.most.source)]);
    if (!fresh_ && late) not_alone_ = true;
    if (fresh_ && late && !push(o, to.start)) return false;
  }
  if (not_alone_ && !fresh_) return false;
  if (to.start == start_[at(op)] && to.end == end_[at(op)]) return true;
  const bool down = to.end < end_[at(op)];
  set(op, to);
  for (const int next : o.out)
    if (position_[at(next)] >= 0) dirty(next, down);
  dirty_next(op, down);
  return true;
}

// Too late after the op that its most lag counts from: that one waits.
bool Schedule::push(const Op& o, Second start) {
  const int source = o.most.source;
  const Second end = m_.end_for(o.most, start);
  const Second floor = m_.timelines[mode_of(source).timeline].start_to_end_at(end, work_of(source));
  if (floor <= floor_[at(source)] || ++pushes_ > 200 + static_cast<int>(order_.size())) return false;
  log(source);
  floor_[at(source)] = floor;
  dirty(source, false);
  return true;
}

void Schedule::log(int op) {
  if (!logging_ || logged_[at(op)] == trial_) return;
  logged_[at(op)] = trial_;
  log_.push_back({op, start_[at(op)], end_[at(op)], floor_[at(op)]});
}

void Schedule::set(int op, Stretch to) {
  log(op);
  account(op, -1);
  start_[at(op)] = to.start;
  end_[at(op)] = to.end;
  account(op, 1);
  if (m_.ops[at(op)].last) job_finish(m_.ops[at(op)].job);
}

void Schedule::account(int op, int sign) {
  const Op& o = m_.ops[at(op)];
  if (o.busy && end_[at(op)] > -never) value_.busy += sign * o.work * (end_[at(op)] - m_.from);
  value_.overrun_s += sign * (std::max<Second>(0, start_[at(op)] - o.start_by) +
                              std::max<Second>(0, end_[at(op)] - o.end_by));
}

void Schedule::job_finish(int job) {
  const JobFacts& facts = m_.jobs[at(job)];
  const auto after = [&] {
    return finish_[at(job)] <= -never ? 0 : std::max<Second>(0, finish_[at(job)] - m_.from);
  };
  const auto sign = [&](std::int64_t by) {
    if (m_.goal == Goal::last_end) return;
    value_.late_s += by * cost_[at(job)];
    value_.finish_s += by * facts.weight * after();
  };
  sign(-1);
  const Second end = facts.ops.empty() ? -never : end_[at(facts.ops.back())];
  finish_[at(job)] = std::max(end, facts.fixed_end);
  cost_[at(job)] = m_.goal == Goal::last_end ? after()
                   : finish_[at(job)] <= -never
                       ? 0
                       : facts.weight * std::max<Second>(0, finish_[at(job)] - facts.due);
  sign(1);
}

void Schedule::total() {
  const std::int64_t worst = cost_.empty() ? 0 : *std::max_element(cost_.begin(), cost_.end());
  (m_.goal == Goal::last_end ? value_.last_s : value_.worst_s) = worst;
}

} // namespace nutward::agenda
