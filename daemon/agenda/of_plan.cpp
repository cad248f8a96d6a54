#include "agenda/of_plan.hpp"

#include <algorithm>

namespace nutward::agenda {

namespace {

std::size_t at(int i) {
  return static_cast<std::size_t>(i);
}

std::optional<int> mode_with(const Op& op, const std::vector<std::size_t>& units) {
  for (int k = 0; k < static_cast<int>(op.modes.size()); ++k) {
    bool same = true;
    for (std::size_t i = 0; i < 2; ++i)
      same = same && op.modes[at(k)].told[i] == (i < units.size() ? static_cast<int>(units[i]) : -1);
    if (same) return k;
  }
  return std::nullopt;
}

} // namespace

void remember(Problem& problem, const Plan& plan) {
  for (std::size_t j = 0; j < std::min(problem.jobs.size(), plan.jobs.size()); ++j) {
    auto& tasks = problem.jobs[j].tasks;
    const auto& placed = plan.jobs[j].tasks;
    for (std::size_t t = 0; t < tasks.size(); ++t) {
      tasks[t].was.reset();
      if (t < placed.size() && !placed[t].fixed) tasks[t].was = Was{placed[t].start, placed[t].units};
    }
  }
}

std::optional<Schedule> schedule_of(Model& m, const Plan& plan) {
  if (plan.jobs.size() != m.jobs.size()) return std::nullopt;
  std::vector<int> order, modes(m.ops.size(), 0), rank(m.ops.size(), 0);
  int next = 0;
  std::erase_if(m.job_order, [&](int j) { return plan.jobs[at(j)].tasks.empty(); });
  for (std::size_t j = 0; j < m.jobs.size(); ++j) {
    if (!m.jobs[j].planned && !plan.jobs[j].tasks.empty()) return std::nullopt;
    m.jobs[j].planned = !plan.jobs[j].tasks.empty();
  }
  const auto placed = [&](int op) -> const Placed& {
    return plan.jobs[at(m.ops[at(op)].job)].tasks[at(m.ops[at(op)].task)];
  };
  for (const int j : m.job_order)
    for (const int op : m.jobs[at(j)].ops) {
      if (at(m.ops[at(op)].task) >= plan.jobs[at(j)].tasks.size()) return std::nullopt;
      const auto mode = mode_with(m.ops[at(op)], placed(op).units);
      if (!mode) return std::nullopt;
      modes[at(op)] = *mode;
      rank[at(op)] = next++;
      order.push_back(op);
    }
  std::sort(order.begin(), order.end(), [&](int a, int b) {
    const Placed &x = placed(a), &y = placed(b);
    return std::tie(x.start, x.end, rank[at(a)]) < std::tie(y.start, y.end, rank[at(b)]);
  });
  std::optional<Schedule> out(m);
  if (!out->assign(std::move(order), std::move(modes))) return std::nullopt;
  return out;
}

} // namespace nutward::agenda
