#include "agenda/load.hpp"

#include "agenda/busiest.hpp"
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
  Model m = model_of(problem);
  std::erase_if(m.job_order, [&](int j) { return plan.jobs.at(at(j)).tasks.empty(); });
  const auto found = deciding(m);
  if (!found) return std::nullopt;
  Busiest out{at(found->unit), Instant{found->earliest_end}, problem.from, seconds{found->work}};
  for (const int j : m.job_order)
    for (const int op : m.jobs[at(j)].ops)
      if (const Op& o = m.ops[at(op)]; only_by(o, found->unit))
        out.planned_end = std::max(out.planned_end, plan.jobs[at(j)].tasks.at(at(o.task)).end);
  return out;
}

} // namespace nutward::agenda
