#include "agenda/load.hpp"

#include "agenda/model.hpp"
#include "agenda/windows.hpp"

#include <algorithm>

namespace nutward::agenda {

namespace {

std::size_t at(int i) {
  return static_cast<std::size_t>(i);
}

// The part of `open` within [from, to).
std::vector<Window> within(const std::vector<Window>& open, Instant from, Instant to) {
  std::vector<Window> out;
  auto it = std::partition_point(open.begin(), open.end(), [&](const Window& w) { return w.to <= from; });
  for (; it != open.end() && it->from < to; ++it)
    out.push_back({std::max(it->from, from), std::min(it->to, to)});
  return out;
}

class Loads {
public:
  Loads(const Problem& p, std::span<const Instant> bounds) : p_(p), bounds_(bounds) {
    out_.assign(p.units.size(), std::vector<Load>(bounds.size() < 2 ? 0 : bounds.size() - 1));
    for (std::size_t u = 0; u < p.units.size(); ++u)
      add(p.units[u].open, u, &Load::open);
    for (const Job& job : p.jobs)
      for (const Task& task : job.tasks)
        if (task.fixed) held(*task.fixed);
    for (std::size_t u = 0; u < p.units.size(); ++u)
      free_.push_back(p.units[u].shared ? p.units[u].open : without(p.units[u].open, blocks_[u]));
  }

  void planned(const Task& task, const Placed& placed) {
    if (placed.fixed || task.work == seconds{0} || placed.units.empty()) return;
    for (const std::size_t u : placed.units)
      if (u >= free_.size()) return;
    std::vector<Window> worked = within(free_[placed.units[0]], placed.start, placed.end);
    if (placed.units.size() > 1)
      worked = both(worked, within(free_[placed.units[1]], placed.start, placed.end));
    add(worked, placed.units[0], &Load::planned);
    if (placed.units.size() > 1 && placed.units[1] != placed.units[0])
      add(worked, placed.units[1], &Load::planned);
  }
  std::vector<std::vector<Load>> result() && { return std::move(out_); }

private:
  void held(const Fixed& fixed) {
    blocks_.resize(p_.units.size());
    for (const std::size_t u : fixed.units)
      if (u < p_.units.size()) {
        blocks_[u].push_back({fixed.start, fixed.end});
        add(within(p_.units[u].open, fixed.start, fixed.end), u, &Load::fixed);
      }
  }

  void add(const std::vector<Window>& windows, std::size_t unit, seconds Load::*part) {
    for (const Window& w : windows)
      for (std::size_t i = first_after(w.from); i + 1 < bounds_.size() && bounds_[i] < w.to; ++i) {
        const Instant from = std::max(w.from, bounds_[i]), to = std::min(w.to, bounds_[i + 1]);
        if (from < to) out_[unit][i].*part += to - from;
      }
  }
  std::size_t first_after(Instant t) const { // the first stretch that ends after it
    const auto it = std::upper_bound(bounds_.begin(), bounds_.end(), t);
    return it == bounds_.begin() ? 0 : static_cast<std::size_t>(it - bounds_.begin()) - 1;
  }

  const Problem& p_;
  std::span<const Instant> bounds_;
  std::vector<std::vector<Load>> out_;
  std::vector<std::vector<Window>> blocks_ = std::vector<std::vector<Window>>(p_.units.size()), free_;
};

// When each op can start at the earliest if its job alone were done.
std::vector<Second> heads(const Model& m) {
  std::vector<Second> start(m.ops.size(), never), end(m.ops.size(), never);
  for (const int j : m.job_order)
    for (const int op : m.jobs[at(j)].ops) {
      const Op& o = m.ops[at(op)];
      Second ready = o.ready;
      for (const Arc& a : o.in)
        ready = std::max(ready, end[at(a.op)] + a.lag);
      for (const Mode& mode : o.modes) {
        const Stretch s = m.timelines[mode.timeline].place(ready, o.work);
        start[at(op)] = std::min(start[at(op)], s.start);
        end[at(op)] = std::min(end[at(op)], s.end);
      }
    }
  return start;
}

bool needs_for_certain(const Op& op, int unit) {
  return op.work > 0 && std::all_of(op.modes.begin(), op.modes.end(), [&](const Mode& mode) {
           return mode.unit[0] == unit || mode.unit[1] == unit;
         });
}

} // namespace

std::vector<std::vector<Load>> load(const Problem& problem, const Plan& plan,
                                    std::span<const Instant> bounds) {
  Loads loads(problem, bounds);
  for (std::size_t j = 0; j < std::min(problem.jobs.size(), plan.jobs.size()); ++j)
    for (std::size_t t = 0; t < std::min(problem.jobs[j].tasks.size(), plan.jobs[j].tasks.size()); ++t)
      loads.planned(problem.jobs[j].tasks[t], plan.jobs[j].tasks[t]);
  return std::move(loads).result();
}

std::optional<Busiest> bottleneck(const Problem& problem, const Plan& plan) {
  const Model m = model_of(problem);
  const std::vector<Second> start = heads(m);
  std::optional<Busiest> out;
  for (std::size_t u = 0; u < problem.units.size(); ++u) {
    std::vector<std::pair<Second, Second>> ops; // head in the unit's open time, work
    Busiest now{u, {}, problem.from, seconds{0}};
    for (const int j : m.job_order) {
      const auto& placed = plan.jobs.at(at(j)).tasks;
      for (const int op : m.jobs[at(j)].ops) {
        const Op& o = m.ops[at(op)];
        if (placed.empty() || !needs_for_certain(o, static_cast<int>(u))) continue;
        ops.emplace_back(m.unit_time[u].open_before(start[at(op)]), o.work);
        now.work += seconds{o.work};
        now.planned_end = std::max(now.planned_end, placed.at(at(o.task)).end);
      }
    }
    if (ops.empty()) continue;
    std::sort(ops.begin(), ops.end());
    Second open = 0;
    for (const auto& [head, work] : ops)
      open = std::max(open, head) + work;
    now.earliest_end = Instant{m.unit_time[u].first_at(open)};
    if (!out || now.earliest_end > out->earliest_end) out = now;
  }
  return out;
}

} // namespace nutward::agenda
