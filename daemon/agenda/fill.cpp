#include "agenda/fill.hpp"

#include "agenda/list.hpp"

#include <algorithm>
#include <bit>
#include <numeric>

namespace nutward::agenda {

namespace {

std::size_t at(int i) {
  return static_cast<std::size_t>(i);
}

// Of items in order of preference those whose sum is greatest without exceeding `room`, and of such sets the
// one whose items stand foremost (least sum of place * work). Gives the first item of it.
class Subset {
public:
  std::size_t first_of_best(const std::vector<Second>& works, Second room) {
    Second unit = room;
    for (const Second w : works)
      unit = std::gcd(unit, w);
    unit = std::max(unit, room / most_columns + 1); // coarser than it is: sums are rounded up
    const auto columns = static_cast<std::size_t>(room / unit) + 1;
    cost_.assign(columns, unreached);
    set_.assign(columns, 0);
    cost_[0] = 0;
    for (std::size_t i = 0; i < works.size(); ++i) {
      const auto w = static_cast<std::size_t>((works[i] + unit - 1) / unit);
      const std::int64_t more = static_cast<std::int64_t>(i) * static_cast<std::int64_t>(w);
      for (std::size_t c = columns; c-- > w;) {
        if (cost_[c - w] == unreached || cost_[c - w] + more >= cost_[c]) continue;
        cost_[c] = cost_[c - w] + more;
        set_[c] = set_[c - w] | std::uint64_t{1} << i;
      }
    }
    for (std::size_t c = columns; c-- > 1;)
      if (cost_[c] != unreached) return static_cast<std::size_t>(std::countr_zero(set_[c]));
    return 0;
  }
  static constexpr std::size_t most_items = 40;

private:
  static constexpr Second most_columns = 1000;
  static constexpr std::int64_t unreached = INT64_MAX;
  std::vector<std::int64_t> cost_;
  std::vector<std::uint64_t> set_;
};

class Fill {
public:
  Fill(const Schedule& s, int unit, Meter& meter)
      : s_(s), m_(s.model()), unit_(unit), meter_(meter), board_(m_), head_(heads(m_)),
        next_(m_.jobs.size(), 0), by_(m_.ops.size(), -1) {
    for (int op = s.last_on(unit); op >= 0; op = s.before(op, side(op)))
      wait_.push_back(op);
    std::reverse(wait_.begin(), wait_.end());
    for (const int op : wait_)
      by_[at(op)] = s.mode(op);
  }

  std::optional<Kept> run() {
    Second now = m_.from;
    int failures = 0;
    for (const int j : m_.job_order) // those without any op on the unit that others wait for
      for (const std::size_t other : m_.problem->jobs[at(j)].after)
        if (!comes_here(static_cast<int>(other)) && !place_rest(static_cast<int>(other))) return std::nullopt;
    while (!wait_.empty()) {
      meter_.spend(300 + 12 * static_cast<std::int64_t>(wait_.size()));
      if (!look(now)) return std::nullopt;
      const std::size_t i = choose();
      if (!take(wait_[i])) {
        if (++failures > 100 + 20 * static_cast<int>(s_.order().size()) || meter_.over()) return std::nullopt;
        continue;
      }
      now = board_.at(wait_[i]).end;
      wait_.erase(wait_.begin() + static_cast<std::ptrdiff_t>(i));
    }
    for (const int op : s_.order())
      if (!place_rest(m_.ops[at(op)].job)) return std::nullopt;
    meter_.spend(60 * (board_.placed() - told_));
    Schedule out(m_);
    if (!out.assign(board_.order(), board_.modes())) return std::nullopt;
    return kept(out);
  }

private:
  int side(int op) const { return m_.ops[at(op)].modes[at(s_.mode(op))].unit[0] == unit_ ? 0 : 1; }
  Second work(int op) const { return m_.ops[at(op)].work + m_.ops[at(op)].set_up_work; }
  const Timeline& time(int op) const { return m_.timeline(m_.ops[at(op)], s_.mode(op)); }

  // When the next can begin, and which could.
  bool look(Second now) {
    start_ = never;
    able_.clear();
    for (std::size_t i = 0; i < wait_.size(); ++i) {
      if (!is_next(wait_[i])) continue;
      const Second s = time(wait_[i]).place(std::max(now, head_[at(wait_[i])]), work(wait_[i])).start;
      if (s < start_) able_.clear();
      start_ = std::min(start_, s);
      if (s == start_ && s < never) able_.push_back(i);
    }
    return !able_.empty();
  }

  // No other op of its job on this unit, and no job that it waits for, is still to come.
  bool is_next(int op) const {
    const Op& o = m_.ops[at(op)];
    const auto& ops = m_.jobs[at(o.job)].ops;
    for (int k = ops.front() + next_[at(o.job)]; k < op; ++k)
      if (on_unit(k)) return false;
    if (next_[at(o.job)] > 0) return true;
    const auto& after = m_.problem->jobs[at(o.job)].after;
    return std::all_of(after.begin(), after.end(),
                       [&](std::size_t j) { return all_placed(static_cast<int>(j)); });
  }
  bool on_unit(int op) const {
    const Mode& mode = m_.ops[at(op)].modes[at(s_.mode(op))];
    return mode.unit[0] == unit_ || mode.unit[1] == unit_;
  }

  std::size_t choose() {
    const Second room = time(wait_[able_.front()]).room(start_);
    works_.clear();
    Second sum = 0;
    for (const std::size_t i : able_) {
      if (works_.size() >= Subset::most_items) break;
      works_.push_back(work(wait_[i]));
      sum += works_.back();
    }
    if (sum <= room) return able_.front();
    meter_.spend(3 * 100 * static_cast<std::int64_t>(works_.size()));
    return able_[subset_.first_of_best(works_, room)];
  }

  // Places its job up to it, and on to the next op on this unit. False if it would begin later than now: then
  // it is known when.
  bool take(int op) {
    const Op& o = m_.ops[at(op)];
    const auto& ops = m_.jobs[at(o.job)].ops;
    const auto first = at(next_[at(o.job)]), me = at(op - ops.front());
    auto last = me + 1;
    while (last < ops.size() && !on_unit(ops[last]))
      ++last;
    const std::span<const int> part(&ops[first], last - first);
    std::vector<Second> least(part.size(), -never);
    least[me - first] = start_;
    const bool good = board_.add_ops(part, least, &by_);
    meter_.spend(60 * (board_.placed() - told_));
    told_ = board_.placed();
    if (good && board_.at(op).start == start_) {
      next_[at(o.job)] = static_cast<int>(last);
      return true;
    }
    head_[at(op)] = good ? board_.at(op).start : never;
    if (good)
      for (const int k : part)
        board_.remove_op(k);
    return false;
  }

  bool comes_here(int j) const {
    const auto& ops = m_.jobs[at(j)].ops;
    return std::any_of(ops.begin(), ops.end(), [&](int op) { return on_unit(op); });
  }
  bool all_placed(int j) const { return next_[at(j)] == static_cast<int>(m_.jobs[at(j)].ops.size()); }

  // A job that does not come here, after those that it waits for.
  bool place_rest(int j) {
    if (all_placed(j)) return true;
    if (comes_here(j)) return false;
    for (const std::size_t other : m_.problem->jobs[at(j)].after)
      if (!place_rest(static_cast<int>(other))) return false;
    next_[at(j)] = static_cast<int>(m_.jobs[at(j)].ops.size());
    return board_.add(j);
  }

  const Schedule& s_;
  const Model& m_;
  int unit_;
  Meter& meter_;
  Board board_;
  std::vector<Second> head_;
  std::vector<int> next_;         // of each job: how many ops are placed
  std::vector<int> wait_;         // for the unit, in the order in which it served them
  std::vector<int> by_;           // modes of these; -1: whichever is over first
  std::vector<std::size_t> able_; // of these: may be next
  std::vector<Second> works_;
  Subset subset_;
  Second start_ = 0;
  std::int64_t told_ = 0; // of what was placed, to the meter
};

} // namespace

std::optional<Kept> filled(const Schedule& schedule, int unit, Meter& meter) {
  return Fill(schedule, unit, meter).run();
}

void fill_if_better(Schedule& s, int unit, Meter& meter) {
  const auto other = filled(s, unit, meter);
  if (other && other->value < s.value()) s.assign(other->order, other->modes);
}

void fill_and_search(Schedule& s, const std::optional<Burden>& decides, const Value& bound, Chance& chance,
                     Meter& meter) {
  std::int64_t slice = 1500 * static_cast<std::int64_t>(s.model().job_order.size());
  for (; !meter.over() && s.value() > bound; slice += slice / 2) {
    if (decides) fill_if_better(s, decides->unit, meter);
    Meter part = meter.part(slice);
    late_acceptance(s, bound, chance, part);
    meter.spend(part.spent());
  }
}

} // namespace nutward::agenda
