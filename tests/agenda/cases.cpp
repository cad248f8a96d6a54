#include "agenda/cases.hpp"

#include <algorithm>
#include <set>

namespace cases {

using namespace nutward::agenda;

int below(std::mt19937& random, int n) {
  return static_cast<int>(random() % static_cast<std::uint32_t>(n));
}

namespace {

seconds hours(int n) {
  return seconds{std::int64_t{n} * hour};
}
Instant at_hour(int n) {
  return Instant{std::int64_t{n} * hour};
}

std::vector<Window> some_hours(std::mt19937& random, int horizon) {
  std::vector<Window> out;
  const int day = 8 + below(random, 5), opens = below(random, 3), length = 3 + below(random, 4);
  for (int start = 0; start < horizon; start += day) {
    if (one_in(random, 5)) continue;
    const int open = start + opens, close = std::min(start + opens + length, horizon);
    if (length > 3 && one_in(random, 2)) { // a break of an hour
      out.push_back({at_hour(open), at_hour(open + 2)});
      if (open + 3 < close) out.push_back({at_hour(open + 3), at_hour(close)});
    } else if (open < close) {
      out.push_back({at_hour(open), at_hour(close)});
    }
  }
  std::erase_if(out, [&](const Window& w) { return w.to > at_hour(horizon); });
  return out;
}

Task some_task(std::mt19937& random, const Wanted& w, int& doubles) {
  Task t;
  t.work = hours(one_in(random, 12) ? 0 : 1 + below(random, 3));
  const auto machine = static_cast<std::size_t>(below(random, 2));
  switch (doubles > 0 ? below(random, 4) : 1 + 2 * below(random, 2)) {
  case 0:
    t.needs = {{0, 1}};
    --doubles;
    break;
  case 2:
    t.needs = {{machine}, {2}};
    --doubles;
    break;
  case 3:
    if (one_in(random, 4)) break; // it only waits
    [[fallthrough]];
  default:
    t.needs = {{machine}};
  }
  if (w.calendars && one_in(random, 2)) t.longest_pause = hours(below(random, 2));
  if (w.set_ups && one_in(random, 2)) {
    t.set_up = 1 + below(random, 2);
    t.set_up_work = hours(1);
  }
  if (one_in(random, 8)) t.not_before = at_hour(below(random, 10));
  return t;
}

void add_lags(std::mt19937& random, const Wanted& w, Job& job) {
  for (std::size_t t = 1; t < job.tasks.size(); ++t) {
    if (!one_in(random, 2)) continue;
    Task& task = job.tasks[t];
    if (one_in(random, 4)) task.lags_from = static_cast<std::size_t>(below(random, static_cast<int>(t)));
    task.least_lag = hours(below(random, 5));
    if (!w.most_lags || !one_in(random, 2)) continue;
    task.most_lag = task.least_lag + hours(below(random, 4));
    task.to_day_limit = one_in(random, 3);
  }
}

void fix_one(std::mt19937& random, Job& job) {
  const auto t = static_cast<std::size_t>(below(random, static_cast<int>(job.tasks.size())));
  const Instant start = at_hour(below(random, 12) - 2);
  Fixed fixed{start, start + hours(1 + below(random, 3)), {}};
  for (const auto& need : job.tasks[t].needs)
    fixed.units.push_back(need.front());
  job.tasks[t].fixed = fixed;
}

} // namespace

Problem some_shop(std::mt19937& random, const Wanted& w) {
  Problem p;
  p.until = at_hour(w.horizon_h);
  p.units.resize(3);
  for (Unit& unit : p.units)
    unit.open = w.calendars ? some_hours(random, w.horizon_h) : std::vector<Window>{{p.from, p.until}};
  for (int day = 0; day * 10 < w.horizon_h; ++day)
    p.day_limits.push_back({at_hour(day * 10), at_hour(day * 10 + 16)});
  if (w.keep_busy) p.keep_busy = 0;
  int doubles = w.doubles;
  const int jobs = std::max(1, w.jobs - below(random, 2));
  for (int j = 0; j < jobs; ++j) {
    Job job;
    const int tasks = std::max(2, w.tasks - below(random, 2));
    for (int t = 0; t < tasks; ++t)
      job.tasks.push_back(some_task(random, w, doubles));
    if (w.lags) add_lags(random, w, job);
    if (w.fixed && one_in(random, 4)) fix_one(random, job);
    if (!one_in(random, 5)) job.due = at_hour(5 + below(random, 25));
    job.weight = 1 + below(random, 3);
    if (one_in(random, 6)) job.release = at_hour(below(random, 8));
    if (j > 0 && one_in(random, 6)) job.after = {static_cast<std::size_t>(below(random, j))};
    p.jobs.push_back(std::move(job));
  }
  return p;
}

namespace {

// One task that may move, in hours.
struct Piece {
  std::size_t job = 0, task = 0;
  std::vector<std::size_t> units;
  int start = 0, end = 0; // end follows from start
};

class All {
public:
  All(const Problem& p, const Judge& judge)
      : p_(p), judge_(judge), horizon_(static_cast<int>(p.until.s / hour)) {
    open_.assign(p.units.size(), std::vector<char>(at(horizon_), 0));
    held_ = open_;
    for (std::size_t u = 0; u < p.units.size(); ++u)
      for (const Window& w : p.units[u].open)
        for (auto h = w.from.s / hour; h < w.to.s / hour; ++h)
          open_[u][at(static_cast<int>(h))] = 1;
    for (std::size_t j = 0; j < p.jobs.size(); ++j)
      for (std::size_t t = 0; t < p.jobs[j].tasks.size(); ++t) {
        const Task& task = p.jobs[j].tasks[t];
        if (!task.fixed) {
          pieces_.push_back({j, t, {}, 0, 0});
          continue;
        }
        for (const std::size_t u : task.fixed->units)
          for (auto h = std::max<std::int64_t>(0, task.fixed->start.s / hour); h < task.fixed->end.s / hour;
               ++h)
            held_[u][at(static_cast<int>(h))] = 1;
      }
  }

  std::optional<Value> run() {
    choose_units(0);
    return best_;
  }

private:
  static std::size_t at(int i) { return static_cast<std::size_t>(i); }
  const Task& task(const Piece& x) const { return p_.jobs[x.job].tasks[x.task]; }

  void choose_units(std::size_t i) {
    if (i == pieces_.size()) {
      std::vector<std::size_t> next(p_.jobs.size(), 0);
      order_.clear();
      choose_order();
      return;
    }
    const auto& needs = task(pieces_[i]).needs;
    if (needs.empty()) return choose_units(i + 1);
    for (const std::size_t u : needs[0]) {
      if (needs.size() == 1) {
        pieces_[i].units = {u};
        choose_units(i + 1);
        continue;
      }
      for (const std::size_t v : needs[1]) {
        pieces_[i].units = {u, v};
        choose_units(i + 1);
      }
    }
  }

  // All interleavings of the jobs; of those that mean the same order on each unit the first.
  void choose_order() {
    if (order_.size() == pieces_.size()) {
      std::vector<std::vector<std::size_t>> on(p_.units.size());
      for (const std::size_t i : order_)
        for (const std::size_t u : pieces_[i].units)
          if (task(pieces_[i]).work > seconds{0}) on[u].push_back(i);
      std::vector<std::size_t> key;
      for (const Piece& x : pieces_)
        key.insert(key.end(), x.units.begin(), x.units.end());
      for (const auto& list : on)
        key.insert(key.end(), list.begin(), list.end());
      if (seen_.insert(std::move(key)).second) judge(on);
      return;
    }
    for (std::size_t i = 0; i < pieces_.size(); ++i) {
      const bool taken = std::find(order_.begin(), order_.end(), i) != order_.end();
      const bool waits = i > 0 && pieces_[i - 1].job == pieces_[i].job &&
                         std::find(order_.begin(), order_.end(), i - 1) == order_.end();
      if (taken || waits) continue;
      order_.push_back(i);
      choose_order();
      order_.pop_back();
    }
  }

  // The end of a piece that starts at its start; nullopt if it cannot start there.
  std::optional<int> end_of(const Piece& x, int work) const {
    if (work == 0 || x.units.empty())
      return x.start + work <= horizon_ ? std::optional(x.start + work) : std::nullopt;
    const seconds most = task(x).longest_pause;
    int pause = 0;
    for (int h = x.start; h < horizon_; ++h) {
      bool hours_open = true, free = true;
      for (const std::size_t u : x.units) {
        hours_open = hours_open && open_[u][at(h)] != 0;
        free = free && held_[u][at(h)] == 0;
      }
      if (hours_open && free) {
        pause = 0;
        if (--work == 0) return h + 1;
        continue;
      }
      if (h == x.start) return std::nullopt;
      ++pause;
      if (most < any_pause && (hours_open || pause * std::int64_t{hour} > most.count())) return std::nullopt;
    }
    return std::nullopt;
  }

  const Piece* piece(std::size_t job, std::size_t t) const {
    for (const Piece& x : pieces_)
      if (x.job == job && x.task == t) return &x;
    return nullptr;
  }
  std::int64_t end_s(std::size_t job, std::size_t t) const {
    const auto& fixed = p_.jobs[job].tasks[t].fixed;
    return fixed ? fixed->end.s : std::int64_t{piece(job, t)->end} * hour;
  }
  std::int64_t limit_s(std::int64_t t, bool day) const {
    std::int64_t out = t;
    if (day)
      for (const DayLimit& row : p_.day_limits)
        if (row.from.s <= t) out = std::max(t, row.limit.s);
    return out;
  }

  int work_h(const Piece& x, const std::vector<std::vector<std::size_t>>& on) const {
    const Task& t = task(x);
    auto work = static_cast<int>(t.work.count() / hour);
    if (t.set_up == 0 || x.units.empty() || work == 0) return work;
    std::int64_t last = p_.units[x.units[0]].set_up_for;
    for (const std::size_t i : on[x.units[0]]) {
      if (&pieces_[i] == &x) break;
      last = task(pieces_[i]).set_up;
    }
    return last == t.set_up ? work : work + static_cast<int>(t.set_up_work.count() / hour);
  }

  bool may_start(const Piece& x) const {
    const Job& job = p_.jobs[x.job];
    const std::int64_t start = std::int64_t{x.start} * hour;
    if (start < job.release.s || (task(x).not_before && start < task(x).not_before->s)) return false;
    for (const std::size_t other : job.after)
      for (std::size_t t = 0; t < p_.jobs[other].tasks.size(); ++t)
        if (end_s(other, t) > start) return false;
    for (std::size_t t = 0; t < x.task; ++t)
      if (end_s(x.job, t) > start) return false;
    if (x.task == 0) return true;
    return start - end_s(x.job, task(x).lags_from.value_or(x.task - 1)) >= task(x).least_lag.count();
  }

  // Raises one start, or the source's where a most lag is exceeded. False if all is well.
  bool raise_one(const std::vector<std::vector<std::size_t>>& on) {
    for (Piece& x : pieces_) {
      const auto end = end_of(x, work_h(x, on));
      if (!end || !may_start(x)) {
        ++x.start;
        x.end = x.start;
        return true;
      }
      x.end = *end;
    }
    for (const auto& list : on)
      for (std::size_t i = 1; i < list.size(); ++i)
        if (pieces_[list[i]].start < pieces_[list[i - 1]].end) {
          ++pieces_[list[i]].start;
          return true;
        }
    for (const Piece& x : pieces_) {
      if (x.task == 0 || !task(x).most_lag) continue;
      const std::size_t from = task(x).lags_from.value_or(x.task - 1);
      const Piece* source = piece(x.job, from);
      if (source == nullptr) continue;
      if (std::int64_t{x.start} * hour >
          limit_s(end_s(x.job, from) + task(x).most_lag->count(), task(x).to_day_limit)) {
        ++pieces_[static_cast<std::size_t>(source - pieces_.data())].start;
        return true;
      }
    }
    return false;
  }

  void judge(const std::vector<std::vector<std::size_t>>& on) {
    for (Piece& x : pieces_)
      x.start = x.end = 0;
    while (raise_one(on))
      for (const Piece& x : pieces_)
        if (x.start > horizon_) return;
    std::optional<Value> v = value();
    if (judge_) {
      std::vector<std::int64_t> finish;
      for (std::size_t j = 0; j < p_.jobs.size(); ++j)
        finish.push_back(finish_s(j));
      const Value own = *v;
      v = judge_(finish);
      if (v) v->overrun_s += own.overrun_s;
    }
    if (v && (!best_ || *v < *best_)) best_ = v;
  }

  std::int64_t finish_s(std::size_t j) const {
    std::int64_t finish = INT64_MIN;
    for (std::size_t t = 0; t < p_.jobs[j].tasks.size(); ++t)
      finish = std::max(finish, end_s(j, t));
    return finish;
  }

  Value value() const {
    Value v;
    for (const Piece& x : pieces_)
      for (const auto& need : task(x).needs)
        if (p_.keep_busy && need == std::vector<std::size_t>{*p_.keep_busy})
          v.busy += task(x).work.count() * std::int64_t{x.end} * hour;
    for (const Piece& x : pieces_) {
      const auto& tasks = p_.jobs[x.job].tasks;
      const std::size_t from = x.task == 0 ? 0 : task(x).lags_from.value_or(x.task - 1);
      if (x.task > 0 && task(x).most_lag && tasks[from].fixed)
        v.overrun_s += std::max<std::int64_t>(
            0, std::int64_t{x.start} * hour -
                   limit_s(tasks[from].fixed->end.s + task(x).most_lag->count(), task(x).to_day_limit));
      for (std::size_t t = x.task + 1; t < tasks.size(); ++t) {
        if (!tasks[t].fixed) continue;
        const bool counts = tasks[t].lags_from.value_or(t - 1) == x.task;
        v.overrun_s +=
            std::max<std::int64_t>(0, std::int64_t{x.end} * hour + (counts ? tasks[t].least_lag.count() : 0) -
                                          tasks[t].fixed->start.s);
        break;
      }
    }
    for (std::size_t j = 0; j < p_.jobs.size(); ++j) {
      const std::int64_t finish = finish_s(j);
      const std::int64_t late = p_.jobs[j].due ? std::max<std::int64_t>(0, finish - p_.jobs[j].due->s) : 0;
      v.late_s += p_.jobs[j].weight * late;
      v.worst_s = std::max(v.worst_s, p_.jobs[j].weight * late);
      v.finish_s += p_.jobs[j].weight * std::max<std::int64_t>(0, finish);
    }
    return v;
  }

  const Problem& p_;
  const Judge& judge_;
  int horizon_;
  std::vector<std::vector<char>> open_, held_; // of each unit by hour
  std::vector<Piece> pieces_;
  std::vector<std::size_t> order_;
  std::set<std::vector<std::size_t>> seen_;
  std::optional<Value> best_;
};

} // namespace

std::optional<Value> best_of_all(const Problem& problem) {
  const Judge none;
  return All(problem, none).run();
}

std::optional<Value> best_of_all(const Problem& problem, const Judge& judge) {
  return All(problem, judge).run();
}

} // namespace cases
