#include "agenda/plan.hpp"

#include "agenda/begin.hpp"
#include "agenda/busiest.hpp"
#include "agenda/exact.hpp"
#include "agenda/fill.hpp"

#include <algorithm>

namespace nutward::agenda {

namespace {

std::size_t at(int i) {
  return static_cast<std::size_t>(i);
}

constexpr std::size_t few_ops = 250;  // up to here all orders may be looked at
constexpr std::size_t some_jobs = 12; // from here on openings are filled
constexpr std::size_t many_jobs = 40; // from here on late acceptance does better than tabu search
constexpr std::int64_t tightening = 10'000;
constexpr std::size_t most_bound = 1600; // ops, up to which propagation bounds

class Planner {
public:
  Planner(const Problem& problem, const Budget& budget) : meter_(budget), m_(model_of(problem)) {}

  Plan run() {
    Board list = begin_by_due_date(m_, meter_);
    Schedule schedule(m_);
    schedule.assign(list.order(), list.modes());
    best_ = kept(schedule);
    std::optional<Kept> last;
    if (auto before = continue_last(m_, meter_)) {
      last = kept(*before);
      schedule.assign(last->order, last->modes);
      best_ = *last;
    }
    bound();
    if (!proved() && !(last && near_enough(last->value))) improve(schedule);
    Plan plan;
    if (last && !worth(best_.value, last->value)) {
      plan.kept = best_.value < last->value;
      best_ = *last;
    }
    plan.proved = proved();
    schedule.assign(best_.order, best_.modes);
    write(schedule, plan);
    return plan;
  }

private:
  bool proved() const { return best_.value <= bound_; }

  void bound() {
    bound_ = {};
    if (std::any_of(m_.faults.begin(), m_.faults.end(),
                    [](const Fault& f) { return f.why == Why::beyond_horizon; }))
      return;
    if (m_.ops.size() > most_bound) {
      for (const int j : m_.job_order)
        add_alone(m_.jobs[at(j)]);
      return;
    }
    Meter part = meter_.part(meter_.left() / 4);
    bound_ = lower_bound(m_, best_.value, part);
    meter_.spend(part.spent());
  }

  void add_alone(const JobFacts& f) {
    const Second after = std::max<Second>(0, f.alone - m_.from);
    if (m_.goal == Goal::last_end) {
      bound_.last_s = std::max(bound_.last_s, after);
      return;
    }
    const Second late = f.weight * std::max<Second>(0, f.alone - f.due);
    bound_.late_s += late;
    bound_.worst_s = std::max(bound_.worst_s, late);
    bound_.finish_s += f.weight * after;
  }

  // Slices of search and of proof in turn, each longer than the last.
  void improve(Schedule& schedule) {
    Chance chance(1);
    const bool small = m_.ops.size() <= few_ops;
    const auto decides =
        m_.goal == Goal::in_time && m_.job_order.size() >= some_jobs ? deciding(m_) : std::nullopt;
    for (std::int64_t slice = 20'000; !proved() && !meter_.over(); slice *= 2) {
      Meter part = meter_.part(small ? slice : meter_.left());
      schedule.assign(best_.order, best_.modes);
      if (decides) fill_if_better(schedule, decides->unit, part);
      if (m_.goal == Goal::last_end || m_.job_order.size() < many_jobs)
        tabu(schedule, bound_, chance, part);
      else
        large(schedule, decides, chance, part);
      meter_.spend(part.spent());
      best_ = kept(schedule);
      if (!small || proved()) continue;
      Meter proof = meter_.part(slice);
      if (branch_and_bound(m_, best_, proof)) bound_ = best_.value;
      meter_.spend(proof.spent());
    }
  }

  void large(Schedule& schedule, const std::optional<Burden>& decides, Chance& chance, Meter& meter) {
    fill_and_search(schedule, decides, bound_, chance, meter);
    if (!decides || schedule.value() <= bound_) return;
    Meter last({tightening, {}}); // also when a stop was asked for
    tighten(schedule, decides->unit, decides->earliest_end, chance, last);
    meter.spend(last.spent());
  }

  // No plan can be so much better that it would be preferred.
  bool near_enough(const Value& last) const { return !worth(bound_, last); }

  bool worth(const Value& better, const Value& last) const {
    if (better >= last) return false;
    const auto least = m_.problem->worth_moving.count();
    if (better.unplaced < last.unplaced || better.overrun_s < last.overrun_s) return true;
    if (last.late_s - better.late_s >= std::max<std::int64_t>(1, least)) return true;
    if (m_.goal == Goal::last_end) return last.last_s - better.last_s >= std::max<std::int64_t>(1, least);
    return better.late_s <= last.late_s && better.finish_s + last.finish_s / 20 < last.finish_s;
  }

  void write(const Schedule& s, Plan& plan) {
    const Problem& p = *m_.problem;
    plan.jobs.resize(p.jobs.size());
    std::int64_t unplaced = 0;
    for (std::size_t j = 0; j < p.jobs.size(); ++j) {
      if (m_.jobs[j].planned)
        write_job(s, j, plan);
      else
        ++unplaced;
    }
    plan.value = s.value();
    plan.value.unplaced = unplaced;
    plan.bound = std::min(bound_, s.value());
    plan.bound.unplaced = unplaced;
    const bool none_left = std::none_of(m_.faults.begin(), m_.faults.end(),
                                        [](const Fault& f) { return f.why == Why::beyond_horizon; });
    if (!none_left) plan.bound = {};
    plan.proved = plan.bound == plan.value;
    plan.stopped = !plan.proved && meter_.over();
    plan.steps = meter_.steps();
    plan.faults.insert(plan.faults.end(), m_.faults.begin(), m_.faults.end());
    std::stable_sort(plan.faults.begin(), plan.faults.end(),
                     [](const Fault& a, const Fault& b) { return a.job < b.job; });
  }

  void write_job(const Schedule& s, std::size_t j, Plan& plan) const {
    const Job& job = m_.problem->jobs[j];
    PlannedJob& out = plan.jobs[j];
    auto next = m_.jobs[j].ops.begin();
    for (std::size_t t = 0; t < job.tasks.size(); ++t) {
      if (const auto& fixed = job.tasks[t].fixed) {
        out.tasks.push_back({fixed->start, fixed->end, fixed->units, true});
        continue;
      }
      const int op = *next++;
      const Op& o = m_.ops[at(op)];
      Placed placed{Instant{s.start(op)}, Instant{s.end(op)}, {}, false};
      for (const int u : o.modes[at(s.mode(op))].told)
        if (u >= 0) placed.units.push_back(at(u));
      if (s.start(op) > o.start_by || s.end(op) > o.end_by) plan.faults.push_back({Why::overruns, j, t, {}});
      out.tasks.push_back(std::move(placed));
    }
    out.finish = out.tasks.front().end;
    for (const Placed& placed : out.tasks)
      out.finish = std::max(out.finish, placed.end);
    if (!job.due || out.finish <= *job.due) return;
    out.late = out.finish - *job.due;
    plan.faults.push_back({Why::late, j, {}, {}});
  }

  Meter meter_;
  Model m_;
  Kept best_;
  Value bound_;
};

} // namespace

Plan plan(const Problem& problem, const Budget& budget) {
  return Planner(problem, budget).run();
}

} // namespace nutward::agenda
