#include "agenda/busiest.hpp"

#include <algorithm>

namespace nutward::agenda {

namespace {

std::size_t at(int i) {
  return static_cast<std::size_t>(i);
}

} // namespace

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

bool only_by(const Op& op, int unit) {
  return op.work > 0 && std::all_of(op.modes.begin(), op.modes.end(), [&](const Mode& mode) {
           return mode.unit[0] == unit || mode.unit[1] == unit;
         });
}

std::optional<Burden> burden(const Model& m, const std::vector<Second>& heads, int unit) {
  const Timeline& time = m.unit_time[at(unit)];
  std::vector<std::pair<Second, Second>> ops; // head in the unit's open time, work
  Burden out;
  out.unit = unit;
  for (const int j : m.job_order)
    for (const int op : m.jobs[at(j)].ops) {
      const Op& o = m.ops[at(op)];
      if (!only_by(o, unit)) continue;
      ops.emplace_back(time.open_before(heads[at(op)]), o.work);
      out.work += o.work;
    }
  if (ops.empty()) return std::nullopt;
  std::sort(ops.begin(), ops.end());
  Second open = 0;
  for (const auto& [head, work] : ops)
    open = std::max(open, head) + work;
  out.earliest_end = time.first_at(open);
  out.done = time.first_at(time.open_before(m.from) + out.work);
  return out;
}

std::optional<Burden> deciding(const Model& m) {
  const std::vector<Second> start = heads(m);
  std::optional<Burden> out;
  for (int u = 0; u < static_cast<int>(m.units); ++u) {
    const auto now = burden(m, start, u);
    if (now && (!out || std::tie(now->done, now->earliest_end) > std::tie(out->done, out->earliest_end)))
      out = now;
  }
  return out;
}

} // namespace nutward::agenda
