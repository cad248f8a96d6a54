#include "agenda/judge.hpp"

#include <algorithm>

namespace nutward::agenda {

namespace {

constexpr std::int64_t ten_years = 10LL * 366 * 86'400;
constexpr std::int64_t far = std::int64_t{1} << 45; // seconds; a million years

void judge_whole(const Problem& p) {
  const auto say = [](bool good, const char* what, const char* remedy) {
    if (!good) throw BadAgenda(what, remedy);
  };
  const bool sane = p.from.s > -far && p.until.s < far;
  say(sane && p.from < p.until && p.until.s - p.from.s <= 3 * ten_years,
      "The agenda's horizon is not after its beginning, or over 30 years after it.",
      "Give a horizon of a year or two.");
  say(p.jobs.size() <= 5000 && p.units.size() <= 300, "There are over 5000 jobs, or over 300 units.",
      "Plan fewer at once.");
  say(!p.keep_busy || (*p.keep_busy < p.units.size() && !p.units[*p.keep_busy].shared),
      "The unit to keep busy is none, or a shared one.", "Name a machine.");
  for (const Job& job : p.jobs) {
    say(job.tasks.size() <= 64, "A job has over 64 tasks.",
        "Make it several jobs that wait for one another.");
    for (const Task& task : job.tasks)
      for (const auto& need : task.needs)
        say(need.size() <= 40, "A task could be done on over 40 units.", "Name fewer.");
  }
}

bool good_unit(const Unit& unit) {
  for (std::size_t i = 0; i < unit.open.size(); ++i)
    if (unit.open[i].to <= unit.open[i].from || (i > 0 && unit.open[i].from < unit.open[i - 1].to))
      return false;
  return true;
}

bool within(seconds s, std::int64_t least, std::int64_t most) {
  return least <= s.count() && s.count() <= most;
}

bool good_task(const Problem& p, const Task& t, std::size_t index) {
  const auto unit = [&](std::size_t u) { return u < p.units.size(); };
  if (!within(t.work, 0, ten_years) || !within(t.set_up_work, 0, ten_years) || t.needs.size() > 2)
    return false;
  if (!within(t.longest_pause, 0, any_pause.count()) || !within(t.least_lag, 0, ten_years)) return false;
  if (t.most_lag && !within(*t.most_lag, t.least_lag.count(), ten_years)) return false;
  if (t.lags_from && *t.lags_from >= index) return false;
  if (t.not_before && std::abs(t.not_before->s) > far) return false;
  for (const auto& need : t.needs)
    if (!std::all_of(need.begin(), need.end(), unit)) return false;
  if (!t.fixed) return true;
  return t.fixed->start <= t.fixed->end && std::abs(t.fixed->start.s) < far &&
         std::abs(t.fixed->end.s) < far && std::all_of(t.fixed->units.begin(), t.fixed->units.end(), unit);
}

// The first fault of a job, if it has one.
std::optional<Fault> fault_of(const Problem& p, std::size_t j) {
  const Job& job = p.jobs[j];
  const bool due = !job.due || std::abs(job.due->s) < far;
  if (job.tasks.empty() || job.weight < 1 || job.weight > 1000 || !due || job.release.s > far)
    return Fault{Why::bad_job, j, {}, {}};
  for (const std::size_t other : job.after)
    if (other >= p.jobs.size()) return Fault{Why::bad_job, j, {}, {}};
  for (std::size_t t = 0; t < job.tasks.size(); ++t)
    if (!good_task(p, job.tasks[t], t)) return Fault{Why::bad_job, j, t, {}};
  for (std::size_t t = 0; t < job.tasks.size(); ++t)
    for (const auto& need : job.tasks[t].needs)
      if (need.empty() && !job.tasks[t].fixed) return Fault{Why::no_unit, j, t, {}};
  return {};
}

// Jobs in an order in which each comes after those that it waits for; those in a circle, and those that wait
// for one that cannot be planned, are left out.
void put_in_order(const Problem& p, Judged& out) {
  std::vector<std::size_t> waits(p.jobs.size(), 0);
  std::vector<std::vector<std::size_t>> followers(p.jobs.size());
  std::vector<std::size_t> ready;
  for (std::size_t j = 0; j < p.jobs.size(); ++j) {
    for (const std::size_t other : p.jobs[j].after)
      if (other < p.jobs.size()) {
        ++waits[j];
        followers[other].push_back(j);
      }
    if (waits[j] == 0) ready.push_back(j);
  }
  std::vector<char> seen(p.jobs.size(), 0);
  for (std::size_t i = 0; i < ready.size(); ++i) {
    const std::size_t j = ready[i];
    seen[j] = 1;
    const auto& after = p.jobs[j].after;
    if (out.job_good[j] != 0 &&
        std::any_of(after.begin(), after.end(), [&](std::size_t o) { return out.job_good[o] == 0; })) {
      out.job_good[j] = 0;
      out.faults.push_back({Why::waits_for_unplaced, j, {}, {}});
    }
    if (out.job_good[j] != 0) out.job_order.push_back(static_cast<int>(j));
    for (const std::size_t f : followers[j])
      if (--waits[f] == 0) ready.push_back(f);
  }
  for (std::size_t j = 0; j < p.jobs.size(); ++j)
    if (seen[j] == 0 && out.job_good[j] != 0) {
      out.job_good[j] = 0;
      out.faults.push_back({Why::circular, j, {}, {}});
    }
}

void find_double_bookings(const Problem& p, Judged& out) {
  struct Held {
    Instant start, end;
    std::size_t job, task;
  };
  std::vector<std::vector<Held>> held(p.units.size());
  for (std::size_t j = 0; j < p.jobs.size(); ++j)
    for (std::size_t t = 0; t < p.jobs[j].tasks.size(); ++t)
      if (const auto& fixed = p.jobs[j].tasks[t].fixed; fixed && good_task(p, p.jobs[j].tasks[t], t))
        for (const std::size_t u : fixed->units)
          held[u].push_back({fixed->start, fixed->end, j, t});
  for (std::size_t u = 0; u < held.size(); ++u) {
    if (p.units[u].shared) continue;
    std::stable_sort(held[u].begin(), held[u].end(),
                     [](const Held& a, const Held& b) { return a.start < b.start; });
    Instant end{INT64_MIN / 4};
    for (const Held& h : held[u]) {
      if (h.start < end && h.start < h.end && h.end > p.from)
        out.faults.push_back({Why::double_booked, h.job, h.task, u});
      end = std::max(end, h.end);
    }
  }
}

} // namespace

Judged judge(const Problem& p) {
  judge_whole(p);
  Judged out;
  out.unit_good.assign(p.units.size(), 1);
  out.job_good.assign(p.jobs.size(), 1);
  for (std::size_t u = 0; u < p.units.size(); ++u)
    if (!good_unit(p.units[u])) {
      out.unit_good[u] = 0;
      out.faults.push_back({Why::bad_unit, {}, {}, u});
    }
  for (std::size_t j = 0; j < p.jobs.size(); ++j)
    if (const auto fault = fault_of(p, j)) {
      out.job_good[j] = 0;
      out.faults.push_back(*fault);
    }
  put_in_order(p, out);
  find_double_bookings(p, out);
  return out;
}

} // namespace nutward::agenda
