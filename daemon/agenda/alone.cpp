#include "agenda/alone.hpp"

#include <algorithm>

namespace nutward::agenda {

namespace {

class Alone {
public:
  explicit Alone(Model& m) : m_(m), start_(m.ops.size(), never), end_(m.ops.size(), never) {}

  void job(int j) {
    JobFacts& facts = m_.jobs[static_cast<std::size_t>(j)];
    for (std::size_t k = 0; k < facts.ops.size(); ++k) {
      const int op = facts.ops[k];
      least_.assign(facts.ops.size(), -never);
      if (run(facts, k)) continue;
      Op& o = m_.ops[static_cast<std::size_t>(op)];
      if (o.most.source >= 0) {
        o.most.source = -1;
        say(Why::most_lag_impossible, op);
        least_.assign(facts.ops.size(), -never);
        if (run(facts, k)) continue;
      }
      say(ever_open(o) ? Why::beyond_horizon : Why::no_open_hours, op);
      facts.planned = false;
      return;
    }
    facts.alone = facts.fixed_end;
    if (!facts.ops.empty())
      facts.alone = std::max(facts.alone, end_[static_cast<std::size_t>(facts.ops.back())]);
    if (facts.due < facts.alone) m_.faults.push_back({Why::due_passed, static_cast<std::size_t>(j), {}, {}});
  }

private:
  void say(Why why, int op) {
    const Op& o = m_.ops[static_cast<std::size_t>(op)];
    m_.faults.push_back({why, static_cast<std::size_t>(o.job), static_cast<std::size_t>(o.task), {}});
  }
  bool ever_open(const Op& o) const {
    return std::any_of(o.modes.begin(), o.modes.end(), [&](const Mode& mode) {
      return m_.timelines[mode.timeline].place(m_.from, o.work).end < never;
    });
  }

  // The earliest times of the ops 0..k of the job that keep every most lag; false if there are none.
  bool run(const JobFacts& facts, std::size_t k) {
    int pushes = 0;
    for (std::size_t i = 0; i <= k;) {
      const auto op = static_cast<std::size_t>(facts.ops[i]);
      const Op& o = m_.ops[op];
      place(o, op, least_[i]);
      if (start_[op] >= never) return false;
      if (o.most.source < 0 ||
          start_[op] <= m_.limit(o.most, end_[static_cast<std::size_t>(o.most.source)])) {
        ++i;
        continue;
      }
      if (++pushes > 20'000) return false;
      const std::size_t source = index_of(facts, o.most.source);
      least_[source] = m_.end_for(o.most, start_[op]);
      i = source;
    }
    return true;
  }

  static std::size_t index_of(const JobFacts& facts, int op) {
    return static_cast<std::size_t>(op - facts.ops.front());
  }

  // On whichever units it begins first, and on whichever it ends first, but not before `least_end`.
  void place(const Op& o, std::size_t op, Second least_end) {
    Second ready = o.ready;
    for (const Arc& a : o.in)
      ready = std::max(ready, end_[static_cast<std::size_t>(a.op)] + a.lag);
    Stretch best;
    for (const Mode& mode : o.modes) {
      const Timeline& time = m_.timelines[mode.timeline];
      const Second from =
          least_end > -never ? std::max(ready, time.start_to_end_at(least_end, o.work)) : ready;
      const Stretch at = time.place(from, o.work);
      best.start = std::min(best.start, at.start);
      best.end = std::min(best.end, at.end);
    }
    start_[op] = best.start;
    end_[op] = best.end;
  }

  Model& m_;
  std::vector<Second> start_, end_, least_;
};

} // namespace

void drop_what_cannot_be(Model& m, const std::vector<int>& order) {
  Alone alone(m);
  for (const int j : order) {
    JobFacts& facts = m.jobs[static_cast<std::size_t>(j)];
    const auto& after = m.problem->jobs[static_cast<std::size_t>(j)].after;
    if (std::any_of(after.begin(), after.end(), [&](std::size_t o) { return !m.jobs[o].planned; })) {
      facts.planned = false;
      m.faults.push_back({Why::waits_for_unplaced, static_cast<std::size_t>(j), {}, {}});
      continue;
    }
    alone.job(j);
  }
  for (Op& o : m.ops)
    o.bounds = false;
  m.has_most = false;
  for (const Op& o : m.ops)
    if (o.most.source >= 0 && m.jobs[static_cast<std::size_t>(o.job)].planned) {
      m.ops[static_cast<std::size_t>(o.most.source)].bounds = true;
      m.has_most = true;
    }
}

} // namespace nutward::agenda
