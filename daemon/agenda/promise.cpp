#include "agenda/promise.hpp"

#include "agenda/begin.hpp"
#include "agenda/exact.hpp"
#include "agenda/fill.hpp"
#include "agenda/insert.hpp"
#include "agenda/of_plan.hpp"

#include <algorithm>
#include <array>
#include <memory>

namespace nutward::agenda {

namespace {

std::size_t at(int i) {
  return static_cast<std::size_t>(i);
}

// The problem with the new job as its last, beginning with the present plan.
Problem with_extra(const Problem& problem, const Plan& present, const Job& extra) {
  if (present.jobs.size() != problem.jobs.size())
    throw BadAgenda("The plan is none of this agenda: it has other jobs.",
                    "Plan again, and ask with that plan.");
  Problem out = problem;
  out.goal = Goal::in_time;
  remember(out, present);
  out.jobs.push_back(extra);
  out.jobs.back().due.reset();
  for (Task& task : out.jobs.back().tasks)
    task.was.reset();
  return out;
}

class Extra {
public:
  Extra(const Problem& whole, const Plan& present, const Meter& meter)
      : whole_(whole), present_(present), meter_(meter), m_(model_of(whole)), me_(whole.jobs.size() - 1) {
    for (std::size_t j = 0; j < me_; ++j)
      if (present.jobs[j].tasks.empty()) m_.jobs[j].planned = false;
    std::erase_if(m_.job_order, [&](int j) { return !m_.jobs[at(j)].planned; });
  }

  Model& model() { return m_; }
  JobFacts& mine() { return m_.jobs[me_]; }
  bool has_place() const { return m_.jobs[me_].planned && schedule_; }
  const Schedule& schedule() const { return *schedule_; }
  bool proved() const { return proved_; }
  Meter& meter() { return meter_; }
  Instant finish() const { return Instant{schedule_->finish(static_cast<int>(me_))}; }

  // Due dates that hold: none of the others need be earlier than it is now.
  Instant held(std::size_t j) const { return std::max(*whole_.jobs[j].due, present_.jobs[j].finish); }
  template <class F>
  void each_promised(F&& f) {
    for (const int j : m_.job_order)
      if (at(j) != me_ && whole_.jobs[at(j)].due) f(at(j), m_.jobs[at(j)], held(at(j)));
  }

  // `bound`: no plan of this model has less, or nobody wants one that has.
  void search(Value bound) {
    if (!m_.jobs[me_].planned || !begin()) return;
    const bool small = m_.ops.size() <= few_ops;
    if (schedule_->value() > bound) make_room(bound);
    if (!small && m_.ops.size() <= most_bound && schedule_->value() > bound) {
      Meter part = meter_.part(meter_.left() / 4);
      bound = std::max(bound, lower_bound(m_, schedule_->value(), part));
      meter_.spend(part.spent());
    }
    Meter part = meter_.part(small ? meter_.left() / 2 : meter_.left());
    improve(bound, part);
    meter_.spend(part.spent());
    Kept best = kept(*schedule_);
    proved_ = best.value <= bound;
    if (!proved_ && small) proved_ = branch_and_bound(m_, best, meter_);
    schedule_->assign(best.order, best.modes);
  }
  bool large() const { return m_.ops.size() > few_ops; }

  PlannedJob job(std::size_t j) const {
    PlannedJob out;
    auto next = m_.jobs[j].ops.begin();
    for (const Task& task : whole_.jobs[j].tasks) {
      if (task.fixed) {
        out.tasks.push_back({task.fixed->start, task.fixed->end, task.fixed->units, true});
      } else {
        const int op = *next++;
        Placed placed{Instant{schedule_->start(op)}, Instant{schedule_->end(op)}, {}, false};
        for (const int u : m_.ops[at(op)].modes[at(schedule_->mode(op))].told)
          if (u >= 0) placed.units.push_back(at(u));
        out.tasks.push_back(std::move(placed));
      }
      out.finish = std::max(out.tasks.size() == 1 ? out.tasks.back().end : out.finish, out.tasks.back().end);
    }
    const auto& due = whole_.jobs[j].due;
    if (due && out.finish > *due) out.late = out.finish - *due;
    return out;
  }

private:
  static constexpr std::size_t few_ops = 120;    // all orders may be looked at
  static constexpr std::size_t most_bound = 400; // ops, up to which propagation bounds
  static constexpr std::uint32_t mixes = 10;     // ways to place all jobs one after the other
  static constexpr std::size_t many_jobs = 40;   // as in plan.cpp

  // With the new job where there is room for it now.
  bool begin() {
    if (auto last = continue_last(m_, meter_)) schedule_.emplace(std::move(*last));
    if (schedule_) return true;
    const std::size_t all = m_.job_order.size();
    const Board board = begin_by_due_date(m_, meter_);
    if (m_.job_order.size() < all) return false; // somebody would have no place at all
    schedule_.emplace(m_);
    if (!schedule_->assign(board.order(), board.modes())) schedule_.reset();
    return schedule_.has_value();
  }

  // The others go around the new job in several ways. Where their days are limits it then goes before them
  // where they stand, each of its tasks as far as they can wait; and begins no later than it must for the
  // others.
  void make_room(const Value& bound) {
    const auto& ops = m_.jobs[me_].ops;
    if (ops.empty()) return;
    Meter part = meter_.part(meter_.left() / 2);
    const auto enough = [&] { return schedule_->value() <= bound || part.over(); };
    const std::array<std::optional<Second>, 3> begins{m_.from, std::nullopt, latest_start()};
    for (std::uint32_t n = 0; n < mixes && !enough(); ++n)
      go_around({others_count() ? begins.at(n % 3) : m_.from, others_count() ? n / 3 : n}, part);
    if (!others_count() && !enough()) {
      insert_early(*schedule_, static_cast<int>(me_), part);
      Second from = m_.from + 1, to = schedule_->start(ops.front());
      for (int tries = 0; tries < 6 && from <= to && !enough(); ++tries) {
        const Second now = from + (to - from) / 2;
        if (go_around({now, 0}, part))
          to = now - 1;
        else
          from = now + 1;
      }
    }
    meter_.spend(part.spent());
  }

  // Of the new job if it is to be done by when it is due or must be, and nobody stood in its way.
  Second latest_start() const {
    const auto& ops = m_.jobs[me_].ops;
    const Second by = std::min(m_.ops[at(ops.back())].end_by, m_.jobs[me_].due);
    Second from = m_.from, to = std::max(m_.from, std::min(by, m_.until));
    while (from < to) {
      const Second middle = to - (to - from) / 2;
      Board board(m_);
      std::vector<Second> least(ops.size(), -never);
      least.front() = middle;
      if (board.add_ops(ops, least) && board.at(ops.back()).end <= by)
        from = middle;
      else
        to = middle - 1;
    }
    return from;
  }

  bool go_around(const Turn& turn, Meter& meter) {
    const auto other = around(*schedule_, static_cast<int>(me_), turn, meter);
    if (!other || other->value >= schedule_->value()) return false;
    schedule_->assign(other->order, other->modes);
    return true;
  }

  // Whether it counts how late the others are; else their days are limits.
  bool others_count() const {
    return std::any_of(m_.job_order.begin(), m_.job_order.end(),
                       [&](int j) { return at(j) != me_ && m_.jobs[at(j)].due < never; });
  }

  void improve(const Value& bound, Meter& meter) {
    Chance chance(1);
    if (!others_count() && large()) return; // what has to give for a day leads further, see earlier()
    if (m_.job_order.size() >= many_jobs)
      fill_and_search(*schedule_, deciding(m_), bound, chance, meter);
    else
      tabu(*schedule_, bound, chance, meter);
  }

  const Problem& whole_;
  const Plan& present_;
  Meter meter_;
  Model m_;
  std::size_t me_;
  std::optional<Schedule> schedule_;
  bool proved_ = false;
};

} // namespace

namespace {

// Nobody is late; the rest does not count any more.
Value nobody_late() {
  Value out;
  out.finish_s = INT64_MAX;
  return out;
}

// The others' days count first, as bookings do; the new job is the only one that can be late.
void hold_the_others(Extra& e, const Problem& whole) {
  e.each_promised([&](std::size_t, JobFacts& facts, Instant held) {
    facts.due = never;
    if (facts.ops.empty()) return;
    Op& last = e.model().ops[at(facts.ops.back())];
    last.end_by = std::min(last.end_by, held.s);
  });
  e.mine().due = whole.from.s;
  e.mine().weight = 1;
  // When the others are done does not count as long as none is late.
  for (const int j : e.model().job_order)
    if (at(j) + 1 < whole.jobs.size()) e.model().jobs[at(j)].weight = 0;
}

// The new job's end is a limit, and how late the others are counts.
void hold_the_new(Extra& e, Instant by) {
  e.each_promised([](std::size_t, JobFacts& facts, Instant held) { facts.due = held.s; });
  if (e.mine().ops.empty()) return;
  Op& last = e.model().ops[at(e.mine().ops.back())];
  last.end_by = std::min(last.end_by, by.s);
}

bool keeps_the_others(Extra& e) {
  bool out = e.has_place();
  if (!out) return false;
  e.each_promised([&](std::size_t j, const JobFacts&, Instant held) {
    out = out && e.schedule().finish(static_cast<int>(j)) <= held.s;
  });
  return out;
}

// The new job is due by then, before all others, and how late anybody is counts: a search gets further where
// no limit stands in its way.
void want_all(Extra& e, Instant by) {
  e.each_promised([](std::size_t, JobFacts& facts, Instant held) { facts.due = held.s; });
  e.mine().due = by.s;
  e.mine().weight = 1000;
}

// For days between the earliest and the one that is found: what has to give, until nothing has to.
std::unique_ptr<Extra> earlier(const Problem& whole, const Plan& present, Instant from, Instant found,
                               Meter& meter) {
  std::unique_ptr<Extra> out;
  constexpr int tries = 6; // the first ones are worth the most
  Instant by = from;
  for (int n = 0; n < tries && by < found && !meter.over(); ++n) {
    auto e = std::make_unique<Extra>(whole, present, meter.part(meter.left() / 2));
    want_all(*e, by);
    e->search(nobody_late());
    meter.spend(e->meter().spent());
    if (keeps_the_others(*e) && e->finish() < found) {
      found = e->finish();
      out = std::move(e);
    } else {
      from = by;
    }
    by = from + (found - from) / 2;
  }
  return out;
}

} // namespace

Promise promise(const Problem& problem, const Plan& present, const Job& extra, const Budget& budget) {
  const Problem whole = with_extra(problem, present, extra);
  Meter meter(budget);
  auto e = std::make_unique<Extra>(whole, present, meter);
  hold_the_others(*e, whole);
  Promise out;
  out.earliest = Instant{e->mine().alone};
  Value bound;
  bound.late_s = bound.worst_s = bound.finish_s = std::max<Second>(0, e->mine().alone - whole.from.s);
  if (e->large()) e->meter() = meter.part(meter.left() / 4);
  e->search(bound);
  meter.spend(e->meter().spent());
  if (!e->has_place()) return out;
  const bool proved = e->proved();
  if (!proved && e->large()) {
    const Instant found = keeps_the_others(*e) ? e->finish() : whole.until;
    if (auto better = earlier(whole, present, out.earliest, found, meter)) e = std::move(better);
  }
  out.possible = keeps_the_others(*e);
  if (!out.possible) return out;
  out.job = e->job(whole.jobs.size() - 1);
  out.proved = proved || out.job.finish <= out.earliest;
  out.plan.jobs.resize(whole.jobs.size());
  for (const int j : e->model().job_order)
    out.plan.jobs[at(j)] = e->job(at(j));
  out.plan.value = e->schedule().value();
  out.plan.bound = bound;
  return out;
}

Price promise_by(const Problem& problem, const Plan& present, const Job& extra, Instant by,
                 const Budget& budget) {
  const Problem whole = with_extra(problem, present, extra);
  Extra e(whole, present, Meter(budget));
  hold_the_new(e, by);
  Price out;
  e.search(nobody_late());
  if (!e.has_place()) return out;
  out.job = e.job(whole.jobs.size() - 1);
  out.possible = out.job.finish <= by;
  out.proved = e.proved();
  e.each_promised([&](std::size_t j, const JobFacts&, Instant held) {
    const Instant finish{e.schedule().finish(static_cast<int>(j))};
    if (finish > held) out.later.push_back({j, finish, finish - held});
  });
  return out;
}

} // namespace nutward::agenda
