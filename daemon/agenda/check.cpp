#include "agenda/check.hpp"

#include "agenda/windows.hpp"

#include <algorithm>

namespace nutward::agenda {

namespace {

std::string named(std::size_t job, std::size_t task) {
  return "Job " + std::to_string(job) + ", task " + std::to_string(task);
}

struct Held {
  Instant start, end;
  std::size_t job = 0, task = 0;
  bool fixed = false;
};

class Checker {
public:
  Checker(const Problem& p, const Plan& plan) : p_(p), plan_(plan), held_(p.units.size()) {}

  std::vector<std::string> run() {
    if (plan_.jobs.size() != p_.jobs.size()) return {"The plan has not one entry for each job."};
    for (std::size_t j = 0; j < p_.jobs.size(); ++j)
      collect(j);
    for (auto& list : held_)
      std::stable_sort(list.begin(), list.end(), [](const Held& a, const Held& b) {
        return std::tie(a.start, a.end) < std::tie(b.start, b.end);
      });
    overlaps();
    for (std::size_t j = 0; j < p_.jobs.size(); ++j)
      if (!plan_.jobs[j].tasks.empty()) job(j);
    value();
    return std::move(wrong_);
  }

private:
  void say(std::string text) { wrong_.push_back(std::move(text)); }
  bool flagged(Why why, std::size_t j, std::size_t t) const {
    return std::any_of(plan_.faults.begin(), plan_.faults.end(),
                       [&](const Fault& f) { return f.why == why && f.job == j && f.task == t; });
  }

  void collect(std::size_t j) {
    const auto& placed = plan_.jobs[j].tasks;
    if (!placed.empty() && placed.size() != p_.jobs[j].tasks.size()) {
      say("Job " + std::to_string(j) + " has not one place for each task.");
      return;
    }
    for (std::size_t t = 0; t < p_.jobs[j].tasks.size(); ++t) {
      const auto& fixed = p_.jobs[j].tasks[t].fixed;
      if (fixed) {
        for (const std::size_t u : fixed->units)
          if (u < held_.size()) held_[u].push_back({fixed->start, fixed->end, j, t, true});
      } else if (!placed.empty() && p_.jobs[j].tasks[t].work > seconds{0}) {
        const auto& units = placed[t].units; // one may stand for two needs
        for (std::size_t i = 0; i < units.size(); ++i)
          if (units[i] < held_.size() &&
              std::find(units.begin(), units.begin() + static_cast<std::ptrdiff_t>(i), units[i]) ==
                  units.begin() + static_cast<std::ptrdiff_t>(i))
            held_[units[i]].push_back({placed[t].start, placed[t].end, j, t, false});
      }
    }
  }

  // Planned tasks apart from one another; that fixed ones are kept clear follows from work().
  void overlaps() {
    for (std::size_t u = 0; u < held_.size(); ++u) {
      if (p_.units[u].shared) continue;
      const Held* before = nullptr;
      for (const Held& h : held_[u]) {
        if (h.fixed) continue;
        if (before != nullptr && h.start < before->end)
          say(named(h.job, h.task) + " begins before " + named(before->job, before->task) +
              " is over, on unit " + std::to_string(u) + ".");
        if (before == nullptr || h.end > before->end) before = &h;
      }
    }
  }

  void job(std::size_t j) {
    const Job& job = p_.jobs[j];
    const auto& placed = plan_.jobs[j].tasks;
    Instant last{INT64_MIN / 4};
    for (std::size_t t = 0; t < job.tasks.size(); ++t) {
      const Task& task = job.tasks[t];
      const Placed& at = placed[t];
      last = std::max(last, at.end);
      if (task.fixed) {
        if (at.start != task.fixed->start || at.end != task.fixed->end || !at.fixed)
          say(named(j, t) + " is fixed, and was moved.");
        continue;
      }
      if (at.fixed) say(named(j, t) + " is said to be fixed, and is not.");
      bounds(j, t);
      order(j, t);
      if (units(j, t)) work(j, t);
    }
    if (plan_.jobs[j].finish != last) say("The finish of job " + std::to_string(j) + " is not its last end.");
    const seconds late = job.due && last > *job.due ? last - *job.due : seconds{0};
    if (plan_.jobs[j].late != late) say("Job " + std::to_string(j) + " is late by something else.");
  }

  void bounds(std::size_t j, std::size_t t) {
    const Task& task = p_.jobs[j].tasks[t];
    const Placed& at = plan_.jobs[j].tasks[t];
    if (at.start < p_.from || at.end > p_.until) say(named(j, t) + " is outside of the horizon.");
    if (at.start < p_.jobs[j].release) say(named(j, t) + " begins before its job is released.");
    if (task.not_before && at.start < *task.not_before) say(named(j, t) + " begins too early.");
    for (const std::size_t other : p_.jobs[j].after)
      for (const Placed& theirs : plan_.jobs.at(other).tasks)
        if (theirs.end > at.start)
          say(named(j, t) + " begins before job " + std::to_string(other) + " is over.");
  }

  void order(std::size_t j, std::size_t t) {
    const Job& job = p_.jobs[j];
    const auto& placed = plan_.jobs[j].tasks;
    const Task& task = job.tasks[t];
    const Placed& at = placed[t];
    for (std::size_t before = 0; before < t; ++before)
      if (placed[before].end > at.start) say(named(j, t) + " begins before the one before it is over.");
    for (std::size_t later = t + 1; later < job.tasks.size(); ++later) {
      if (!job.tasks[later].fixed || later != next_fixed(j, t)) continue;
      const seconds lag = source(j, later) == t ? job.tasks[later].least_lag : seconds{0};
      if (at.end + lag <= job.tasks[later].fixed->start) continue;
      over_ += (at.end + lag - job.tasks[later].fixed->start).count();
      if (!flagged(Why::overruns, j, t)) say(named(j, t) + " is not over before what is booked after it.");
    }
    if (t == 0) return;
    const std::size_t from = source(j, t);
    if (from >= t) return;
    if (at.start - placed[from].end < task.least_lag)
      say(named(j, t) + " begins before its least lag is over.");
    if (!task.most_lag) return;
    const Instant limit = limit_after(placed[from].end + *task.most_lag, task.to_day_limit);
    if (at.start <= limit || flagged(Why::most_lag_impossible, j, t)) return;
    if (job.tasks[from].fixed && flagged(Why::overruns, j, t))
      over_ += (at.start - limit).count();
    else
      say(named(j, t) + " begins later than its most lag allows.");
  }

  std::size_t source(std::size_t j, std::size_t t) const {
    return p_.jobs[j].tasks[t].lags_from.value_or(t == 0 ? SIZE_MAX : t - 1);
  }
  std::size_t next_fixed(std::size_t j, std::size_t t) const {
    for (++t; t < p_.jobs[j].tasks.size(); ++t)
      if (p_.jobs[j].tasks[t].fixed) return t;
    return SIZE_MAX;
  }
  Instant limit_after(Instant t, bool day) const {
    Instant limit = t;
    if (day)
      for (const DayLimit& row : p_.day_limits)
        if (row.from <= t) limit = std::max(t, row.limit);
    return limit;
  }

  bool units(std::size_t j, std::size_t t) {
    const Task& task = p_.jobs[j].tasks[t];
    const Placed& at = plan_.jobs[j].tasks[t];
    bool good = task.needs.size() == at.units.size();
    for (std::size_t i = 0; good && i < at.units.size(); ++i)
      good = std::find(task.needs[i].begin(), task.needs[i].end(), at.units[i]) != task.needs[i].end();
    if (!good) say(named(j, t) + " has not the units that it needs.");
    return good;
  }

  seconds work_of(std::size_t j, std::size_t t) const {
    const Task& task = p_.jobs[j].tasks[t];
    if (task.set_up == 0 || task.needs.empty() || task.work == seconds{0}) return task.work;
    const std::size_t u = plan_.jobs[j].tasks[t].units[0];
    std::int64_t last = p_.units[u].set_up_for;
    for (const Held& h : held_[u]) {
      if (p_.units[u].shared || (h.job == j && h.task == t)) break;
      if (!h.fixed) last = p_.jobs[h.job].tasks[h.task].set_up;
    }
    return task.work + (last == task.set_up ? seconds{0} : task.set_up_work);
  }

  // Where the units are open together, less what is fixed on one of them by others.
  std::vector<Window> open_of(std::size_t j, std::size_t t, bool with_fixed) const {
    std::vector<Window> open{{Instant{INT64_MIN / 4}, Instant{INT64_MAX / 4}}};
    for (const std::size_t u : plan_.jobs[j].tasks[t].units) {
      open = both(open, p_.units[u].open);
      if (!with_fixed || p_.units[u].shared) continue;
      std::vector<Window> closed;
      for (const Held& h : held_[u])
        if (h.fixed) closed.push_back({h.start, h.end});
      open = without(open, closed);
    }
    return open;
  }

  void work(std::size_t j, std::size_t t) {
    const Task& task = p_.jobs[j].tasks[t];
    const Placed& at = plan_.jobs[j].tasks[t];
    const seconds work = work_of(j, t);
    if (at.units.empty() || work == seconds{0}) {
      if (at.end - at.start != work) say(named(j, t) + " takes another time than it needs.");
      return;
    }
    const std::vector<Window> span{{at.start, at.end}};
    const std::vector<Window> open = both(open_of(j, t, true), span);
    if (length(open) != work) {
      say(named(j, t) + " works for " + std::to_string(length(open).count()) + " s and needs " +
          std::to_string(work.count()) + ".");
      return;
    }
    if (open.front().from != at.start || open.back().to != at.end)
      say(named(j, t) + " begins or ends while closed.");
    const std::vector<Window> hours = both(open_of(j, t, false), span);
    for (std::size_t i = 1; i < open.size(); ++i) {
      const seconds pause = open[i].from - open[i - 1].to;
      const bool mere_hours = std::none_of(hours.begin(), hours.end(), [&](const Window& w) {
        return w.from < open[i].from && open[i - 1].to < w.to;
      });
      if (task.longest_pause < any_pause &&
          (pause > task.longest_pause || (pause > seconds{0} && !mere_hours)))
        say(named(j, t) + " pauses longer than it may.");
    }
  }

  static bool only_by(const Task& task, std::size_t unit) {
    return std::any_of(task.needs.begin(), task.needs.end(),
                       [&](const auto& need) { return need == std::vector<std::size_t>{unit}; });
  }

  void value() {
    Value sum;
    sum.overrun_s = over_;
    for (std::size_t j = 0; j < p_.jobs.size(); ++j) {
      const PlannedJob& job = plan_.jobs[j];
      if (job.tasks.empty()) {
        ++sum.unplaced;
        continue;
      }
      const auto after = std::max<std::int64_t>(0, (job.finish - p_.from).count());
      if (p_.goal == Goal::last_end) {
        sum.last_s = std::max(sum.last_s, after);
        continue;
      }
      const std::int64_t cost = p_.jobs[j].weight * job.late.count();
      sum.late_s += cost;
      sum.worst_s = std::max(sum.worst_s, cost);
      sum.finish_s += p_.jobs[j].weight * after;
    }
    if (p_.goal == Goal::in_time && p_.keep_busy)
      for (const Held& h : held_[*p_.keep_busy])
        if (!h.fixed && only_by(p_.jobs[h.job].tasks[h.task], *p_.keep_busy))
          sum.busy += p_.jobs[h.job].tasks[h.task].work.count() * (h.end - p_.from).count();
    if (sum != plan_.value) say("The plan says another value than it has.");
    if (plan_.bound > plan_.value) say("The plan's bound is above its value.");
    if (plan_.bound == plan_.value && !plan_.proved)
      say("The plan reaches its bound, and is not called proved.");
  }

  const Problem& p_;
  const Plan& plan_;
  std::vector<std::vector<Held>> held_; // of each unit, by start
  std::int64_t over_ = 0;
  std::vector<std::string> wrong_;
};

} // namespace

std::vector<std::string> check(const Problem& problem, const Plan& plan) {
  return Checker(problem, plan).run();
}

} // namespace nutward::agenda
