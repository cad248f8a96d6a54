#include "agenda/slack.hpp"

#include "agenda/of_plan.hpp"

#include <algorithm>

namespace nutward::agenda {

namespace {

std::size_t at(int i) {
  return static_cast<std::size_t>(i);
}

// Latest starts of a job's ops if its units are free; -never where there is none. What is booked or begun
// after an op bounds it as the due date does, and so does what is over for a recheck that counts from it.
void alone(const Model& m, const JobFacts& facts, std::vector<Second>& start) {
  if (facts.due >= never) return;
  for (auto it = facts.ops.rbegin(); it != facts.ops.rend(); ++it) {
    const Op& o = m.ops[at(*it)];
    Second end = std::min({facts.due, o.end_by, m.until});
    for (const int next : o.out)
      if (m.ops[at(next)].job == o.job)
        for (const Arc& a : m.ops[at(next)].in)
          if (a.op == *it) end = std::min(end, start[at(next)] - a.lag);
    Second latest = -never;
    for (const Mode& mode : o.modes)
      if (end > -never) latest = std::max(latest, m.timelines[mode.timeline].latest(end, o.work));
    latest = std::min(latest, o.start_by);
    start[at(*it)] = latest >= m.from ? latest : -never;
  }
}

// Latest starts if every unit keeps its order.
void in_plan(const Schedule& s, std::vector<Second>& start) {
  const Model& m = s.model();
  for (std::size_t n = s.order().size(); n-- > 0;) {
    const int op = s.order()[n];
    const Op& o = m.ops[at(op)];
    const JobFacts& facts = m.jobs[at(o.job)];
    Second end = m.until;
    if (o.last && facts.due < never) end = std::max(facts.due, s.end(op));
    if (o.end_by < never) end = std::min(end, std::max(o.end_by, s.end(op)));
    for (const int next : o.out)
      if (s.position(next) >= 0)
        for (const Arc& a : m.ops[at(next)].in)
          if (a.op == op) end = std::min(end, start[at(next)] - a.lag);
    for (int i = 0; i < 2; ++i)
      if (const int next = s.after(op, i); next >= 0) end = std::min(end, start[at(next)]);
    const Second work = s.work_of(op);
    Second latest = m.timeline(o, s.mode(op)).latest(end, work);
    if (o.most.source >= 0) latest = std::min(latest, m.limit(o.most, s.end(o.most.source)));
    if (o.start_by < never) latest = std::min(latest, o.start_by);
    start[at(op)] = std::max(latest, s.start(op));
  }
}

} // namespace

std::vector<std::vector<std::optional<Latest>>> latest_starts(const Problem& problem, const Plan& plan) {
  Model m = model_of(problem);
  const auto schedule = schedule_of(m, plan);
  if (!schedule)
    throw BadAgenda("The plan is none of this agenda: its jobs, tasks or units are others.",
                    "Plan again, and ask with that plan.");
  std::vector<Second> free(m.ops.size(), -never), kept(m.ops.size(), never);
  for (const int j : m.job_order)
    alone(m, m.jobs[at(j)], free);
  in_plan(*schedule, kept);
  std::vector<std::vector<std::optional<Latest>>> out(problem.jobs.size());
  for (std::size_t j = 0; j < out.size(); ++j)
    out[j].resize(problem.jobs[j].tasks.size());
  for (const int op : schedule->order()) {
    const Op& o = m.ops[at(op)];
    const Instant planned = plan.jobs[at(o.job)].tasks[at(o.task)].start;
    Latest latest;
    if (free[at(op)] > -never) latest.alone = Instant{free[at(op)]};
    latest.in_plan = std::max(planned, Instant{kept[at(op)]});
    latest.slack = latest.in_plan - planned;
    out[at(o.job)][at(o.task)] = latest;
  }
  return out;
}

} // namespace nutward::agenda
