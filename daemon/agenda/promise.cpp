#include "agenda/promise.hpp"

#include "agenda/begin.hpp"
#include "agenda/exact.hpp"
#include "agenda/of_plan.hpp"

#include <algorithm>

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
  Extra(const Problem& whole, const Plan& present, const Budget& budget)
      : whole_(whole), present_(present), meter_(budget), m_(model_of(whole)), me_(whole.jobs.size() - 1) {
    for (std::size_t j = 0; j < me_; ++j)
      if (present.jobs[j].tasks.empty()) m_.jobs[j].planned = false;
    std::erase_if(m_.job_order, [&](int j) { return !m_.jobs[at(j)].planned; });
  }

  Model& model() { return m_; }
  JobFacts& mine() { return m_.jobs[me_]; }
  bool has_place() const { return m_.jobs[me_].planned && schedule_; }
  const Schedule& schedule() const { return *schedule_; }
  bool proved() const { return proved_; }

  // Due dates that hold: none of the others need be earlier than it is now.
  Instant held(std::size_t j) const { return std::max(*whole_.jobs[j].due, present_.jobs[j].finish); }
  template <class F>
  void each_promised(F&& f) {
    for (const int j : m_.job_order)
      if (at(j) != me_ && whole_.jobs[at(j)].due) f(at(j), m_.jobs[at(j)], held(at(j)));
  }

  void search(const Value& bound) {
    if (!m_.jobs[me_].planned) return;
    if (auto last = continue_last(m_, meter_)) schedule_.emplace(std::move(*last));
    if (!schedule_) {
      const std::size_t all = m_.job_order.size();
      const Board board = begin_by_due_date(m_, meter_);
      if (m_.job_order.size() < all) return; // somebody would have no place at all
      schedule_.emplace(m_);
      if (!schedule_->assign(board.order(), board.modes())) schedule_.reset();
      if (!schedule_) return;
    }
    Chance chance(1);
    Meter part = meter_.part(meter_.left() / 2);
    tabu(*schedule_, bound, chance, part);
    meter_.spend(part.spent());
    Kept best = kept(*schedule_);
    proved_ = best.value <= bound;
    if (!proved_ && m_.ops.size() <= 120) proved_ = branch_and_bound(m_, best, meter_);
    schedule_->assign(best.order, best.modes);
    if (!proved_ && m_.ops.size() > 120) tabu(*schedule_, bound, chance, meter_);
  }

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
  const Problem& whole_;
  const Plan& present_;
  Meter meter_;
  Model m_;
  std::size_t me_;
  std::optional<Schedule> schedule_;
  bool proved_ = false;
};

} // namespace

Promise promise(const Problem& problem, const Plan& present, const Job& extra, const Budget& budget) {
  const Problem whole = with_extra(problem, present, extra);
  Extra e(whole, present, budget);
  // The others' days count first, as bookings do; the new job is the only one that can be late.
  e.each_promised([&](std::size_t, JobFacts& facts, Instant held) {
    facts.due = never;
    if (facts.ops.empty()) return;
    Op& last = e.model().ops[at(facts.ops.back())];
    last.end_by = std::min(last.end_by, held.s);
  });
  e.mine().due = whole.from.s;
  e.mine().weight = 1;
  Promise out;
  out.earliest = Instant{e.mine().alone};
  // When the others are done does not count as long as none is late.
  for (const int j : e.model().job_order)
    if (at(j) + 1 < whole.jobs.size()) e.model().jobs[at(j)].weight = 0;
  Value bound;
  bound.late_s = bound.worst_s = bound.finish_s = std::max<Second>(0, e.mine().alone - whole.from.s);
  e.search(bound);
  if (!e.has_place()) return out;
  out.possible = true;
  e.each_promised([&](std::size_t j, const JobFacts&, Instant held) {
    out.possible = out.possible && e.schedule().finish(static_cast<int>(j)) <= held.s;
  });
  if (!out.possible) return out;
  out.job = e.job(whole.jobs.size() - 1);
  out.proved = e.proved() || out.job.finish <= out.earliest;
  out.plan.jobs.resize(whole.jobs.size());
  for (const int j : e.model().job_order)
    out.plan.jobs[at(j)] = e.job(at(j));
  out.plan.value = e.schedule().value();
  out.plan.bound = bound;
  return out;
}

Price promise_by(const Problem& problem, const Plan& present, const Job& extra, Instant by,
                 const Budget& budget) {
  const Problem whole = with_extra(problem, present, extra);
  Extra e(whole, present, budget);
  e.each_promised([](std::size_t, JobFacts& facts, Instant held) { facts.due = held.s; });
  if (!e.mine().ops.empty()) {
    Op& last = e.model().ops[at(e.mine().ops.back())];
    last.end_by = std::min(last.end_by, by.s);
  }
  Price out;
  e.search({});
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
