#include "agenda/model.hpp"

#include "agenda/alone.hpp"
#include "agenda/judge.hpp"
#include "agenda/windows.hpp"

#include <algorithm>
#include <map>

namespace nutward::agenda {

namespace {

class Builder {
public:
  explicit Builder(const Problem& p) : p_(p), judged_(judge(p)) {}

  Model build() {
    m_.problem = &p_;
    m_.from = p_.from.s;
    m_.until = p_.until.s;
    m_.goal = p_.goal;
    if (p_.keep_busy && p_.goal == Goal::in_time) m_.busy = static_cast<int>(*p_.keep_busy);
    m_.units = p_.units.size();
    m_.faults = judged_.faults;
    lay_out_units();
    m_.jobs.resize(p_.jobs.size());
    for (std::size_t j = 0; j < p_.jobs.size(); ++j)
      facts(j);
    for (const int j : judged_.job_order)
      add_job(static_cast<std::size_t>(j));
    drop_what_cannot_be(m_, judged_.job_order);
    for (const int j : judged_.job_order)
      if (m_.jobs[static_cast<std::size_t>(j)].planned) m_.job_order.push_back(j);
    return std::move(m_);
  }

private:
  void lay_out_units() {
    blocks_.resize(p_.units.size());
    for (const Job& job : p_.jobs)
      for (const Task& t : job.tasks)
        if (t.fixed)
          for (const std::size_t u : t.fixed->units)
            if (u < blocks_.size() && !p_.units[u].shared)
              blocks_[u].push_back({t.fixed->start, t.fixed->end});
    for (std::size_t u = 0; u < p_.units.size(); ++u) {
      hours_.push_back(judged_.unit_good[u] != 0 ? p_.units[u].open : std::vector<Window>{});
      free_.push_back(without(hours_.back(), blocks_[u]));
      m_.unit_time.push_back(timeline(free_.back(), free_.back(), any_pause));
      m_.set_up_for.push_back(p_.units[u].set_up_for);
    }
  }

  // What pauses no longer than `pause` may go on from one opening into the next, unless something fixed lies
  // between them; what may pause at any_pause always may.
  Timeline timeline(const std::vector<Window>& free, const std::vector<Window>& hours, seconds pause) const {
    std::vector<char> joined(free.size(), 0);
    auto h = hours.begin();
    for (std::size_t i = 1; i < free.size(); ++i) {
      const Window gap{free[i - 1].to, free[i].from};
      while (h != hours.end() && h->to <= gap.from)
        ++h;
      const bool held = h != hours.end() && std::max(h->from, gap.from) < std::min(h->to, gap.to);
      joined[i] = pause >= any_pause || (gap.to - gap.from <= pause && !held) ? 1 : 0;
    }
    return {free, joined, p_.from.s, p_.until.s};
  }

  std::size_t timeline_of(const std::array<int, 2>& told, seconds pause) {
    const auto [at, is_new] = known_.try_emplace({told, pause.count()}, m_.timelines.size());
    if (!is_new) return at->second;
    if (told[0] < 0) {
      m_.timelines.emplace_back(p_.until.s);
      return at->second;
    }
    std::vector<Window> free = free_[static_cast<std::size_t>(told[0])];
    std::vector<Window> hours = hours_[static_cast<std::size_t>(told[0])];
    if (told[1] >= 0) {
      free = both(free, free_[static_cast<std::size_t>(told[1])]);
      hours = both(hours, hours_[static_cast<std::size_t>(told[1])]);
    }
    m_.timelines.push_back(timeline(free, hours, pause));
    return at->second;
  }

  std::vector<Mode> modes_of(const Task& task) {
    std::vector<Mode> out;
    const auto add = [&](int first, int second) {
      Mode mode;
      mode.told = {first, second};
      for (std::size_t i = 0; i < 2; ++i)
        if (mode.told[i] >= 0 && !p_.units[static_cast<std::size_t>(mode.told[i])].shared)
          mode.unit[i] = mode.told[i];
      if (first == second) mode.unit[1] = -1;            // one unit as both: held once
      if (task.work == seconds{0}) mode.unit = {-1, -1}; // no work holds nothing
      mode.timeline = timeline_of(mode.told, task.longest_pause);
      out.push_back(mode);
    };
    if (task.needs.empty()) add(-1, -1);
    if (task.needs.size() == 1)
      for (const std::size_t u : task.needs[0])
        add(static_cast<int>(u), -1);
    if (task.needs.size() == 2)
      for (const std::size_t u : task.needs[0])
        for (const std::size_t v : task.needs[1])
          add(static_cast<int>(u), static_cast<int>(v));
    return out;
  }

  void facts(std::size_t j) {
    JobFacts& facts = m_.jobs[j];
    facts.weight = std::clamp<std::int64_t>(p_.jobs[j].weight, 1, 1000);
    if (p_.jobs[j].due && p_.goal == Goal::in_time) facts.due = p_.jobs[j].due->s;
    for (const Task& t : p_.jobs[j].tasks)
      if (t.fixed) facts.fixed_end = std::max(facts.fixed_end, t.fixed->end.s);
  }

  void add_job(std::size_t j) {
    const Job& job = p_.jobs[j];
    JobFacts& facts = m_.jobs[j];
    facts.planned = true;
    std::vector<int> op_of(job.tasks.size(), -1);
    Second fixed_before = -never;
    for (std::size_t t = 0; t < job.tasks.size(); ++t) {
      if (job.tasks[t].fixed) {
        fixed_before = std::max(fixed_before, job.tasks[t].fixed->end.s);
        book(job, op_of, t);
        continue;
      }
      op_of[t] = static_cast<int>(m_.ops.size());
      m_.ops.push_back(op_for(j, t, op_of, fixed_before));
      facts.ops.push_back(op_of[t]);
    }
    if (!facts.ops.empty()) m_.ops[static_cast<std::size_t>(facts.ops.back())].last = true;
  }

  // A fixed task: what comes before it should be over by then.
  void book(const Job& job, const std::vector<int>& op_of, std::size_t t) {
    for (std::size_t before = t; before-- > 0 && op_of[before] >= 0;) {
      const bool counts = job.tasks[t].lags_from.value_or(t - 1) == before;
      m_.ops[static_cast<std::size_t>(op_of[before])].end_by =
          job.tasks[t].fixed->start.s - (counts ? job.tasks[t].least_lag.count() : 0);
    }
  }

  Op op_for(std::size_t j, std::size_t t, const std::vector<int>& op_of, Second fixed_before) {
    const Job& job = p_.jobs[j];
    const Task& task = job.tasks[t];
    JobFacts& facts = m_.jobs[j];
    Op op;
    op.job = static_cast<int>(j);
    op.task = static_cast<int>(t);
    op.work = task.work.count();
    op.set_up = task.set_up;
    if (task.set_up != 0 && !task.needs.empty() && op.work > 0) op.set_up_work = task.set_up_work.count();
    m_.has_set_up = m_.has_set_up || op.set_up_work > 0;
    op.ready = std::max({m_.from, job.release.s, task.not_before.value_or(p_.from).s, fixed_before});
    op.modes = modes_of(task);
    op.busy =
        m_.busy >= 0 && op.work > 0 && std::all_of(op.modes.begin(), op.modes.end(), [&](const Mode& mode) {
          return mode.unit[0] == m_.busy || mode.unit[1] == m_.busy;
        });
    if (!facts.ops.empty())
      op.in.push_back({facts.ops.back(), 0});
    else
      after_others(job, op);
    if (t > 0) add_lags(job, t, op_of, op);
    const int me = static_cast<int>(m_.ops.size());
    for (const Arc& a : op.in)
      m_.ops[static_cast<std::size_t>(a.op)].out.push_back(me);
    return op;
  }

  void after_others(const Job& job, Op& op) {
    for (const std::size_t other : job.after) {
      const JobFacts& theirs = m_.jobs[other];
      op.ready = std::max(op.ready, theirs.fixed_end);
      const bool known = !theirs.ops.empty() && std::any_of(op.in.begin(), op.in.end(), [&](const Arc& a) {
        return a.op == theirs.ops.back();
      });
      if (!theirs.ops.empty() && !known) op.in.push_back({theirs.ops.back(), 0});
    }
  }

  void add_lags(const Job& job, std::size_t t, const std::vector<int>& op_of, Op& op) {
    const Task& task = job.tasks[t];
    const std::size_t from = task.lags_from.value_or(t - 1);
    Most most;
    most.lag = task.most_lag.value_or(seconds{0}).count();
    most.day = task.to_day_limit;
    if (job.tasks[from].fixed) {
      const Second end = job.tasks[from].fixed->end.s;
      op.ready = std::max(op.ready, end + task.least_lag.count());
      if (task.most_lag) op.start_by = m_.limit(most, end);
      return;
    }
    if (op.in.front().op == op_of[from])
      op.in.front().lag = task.least_lag.count();
    else
      op.in.push_back({op_of[from], task.least_lag.count()});
    if (!task.most_lag) return;
    most.source = op_of[from];
    op.most = most;
    m_.ops[static_cast<std::size_t>(op_of[from])].bounds = true;
    m_.has_most = true;
  }

  const Problem& p_;
  Judged judged_;
  Model m_;
  std::vector<std::vector<Window>> blocks_, hours_, free_; // of each unit
  std::map<std::pair<std::array<int, 2>, std::int64_t>, std::size_t> known_;
};

} // namespace

Second Model::limit(const Most& most, Second end) const {
  const Second t = end + most.lag;
  if (!most.day) return t;
  const auto& rows = problem->day_limits;
  const auto it =
      std::partition_point(rows.begin(), rows.end(), [&](const DayLimit& r) { return r.from.s <= t; });
  return it == rows.begin() ? t : std::max(t, std::prev(it)->limit.s);
}

Second Model::end_for(const Most& most, Second start) const {
  if (!most.day) return start - most.lag;
  const auto& rows = problem->day_limits;
  const auto it =
      std::partition_point(rows.begin(), rows.end(), [&](const DayLimit& r) { return r.limit.s < start; });
  // From that row on its limit does; from `start` itself on, whatever the row.
  const Second t = it == rows.end() ? start : std::min(start, it->from.s);
  return t - most.lag;
}

Model model_of(const Problem& problem) {
  return Builder(problem).build();
}

} // namespace nutward::agenda
