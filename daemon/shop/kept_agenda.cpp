#include "shop/kept_agenda.hpp"
#include "shop/kept_text.hpp"

#include <algorithm>

namespace nutward::shop {

namespace {

using std::chrono::seconds;

constexpr std::int64_t written_so = 1; // one more where the text changes

void write(KeptWriter& out, const agenda::Value& v) {
  out.put(v.unplaced), out.put(v.overrun_s), out.put(v.late_s), out.put(v.worst_s), out.put(v.last_s),
      out.put(v.finish_s);
}

agenda::Value read_value(KeptReader& in) {
  agenda::Value v;
  v.unplaced = in.number(), v.overrun_s = in.number(), v.late_s = in.number(), v.worst_s = in.number(),
  v.last_s = in.number(), v.finish_s = in.number();
  return v;
}

void write(KeptWriter& out, const KeptTask& t) {
  out.word(t.name.stage), out.put(t.name.recheck), out.put(t.name.booking), out.put(t.start), out.put(t.end);
  out.put(std::int64_t{t.fixed}), out.put(t.units.size());
  for (const AgendaUnit& u : t.units)
    out.put(u.machine), out.put(std::int64_t{u.number}), out.put(u.person);
}

KeptTask read_task(KeptReader& in) {
  KeptTask t;
  t.name.stage = in.word(), t.name.recheck = in.number(), t.name.booking = in.number();
  t.start = in.instant(), t.end = in.instant(), t.fixed = in.yes();
  for (std::size_t left = in.many(); left > 0; --left) {
    AgendaUnit& u = t.units.emplace_back();
    u.machine = in.number(), u.number = static_cast<int>(in.number(0, INT32_MAX)), u.person = in.number();
  }
  return t;
}

void write_rest(KeptWriter& out, const agenda::Plan& plan) {
  out.put(plan.faults.size());
  for (const agenda::Fault& f : plan.faults)
    out.put(static_cast<std::int64_t>(f.why)), out.put(f.job), out.put(f.task), out.put(f.unit);
  write(out, plan.value), write(out, plan.bound);
  out.put(std::int64_t{plan.proved}), out.put(std::int64_t{plan.kept}), out.put(std::int64_t{plan.stopped});
  out.put(plan.steps);
}

agenda::Plan read_rest(KeptReader& in) {
  agenda::Plan out;
  for (std::size_t left = in.many(); left > 0; --left) {
    agenda::Fault& f = out.faults.emplace_back();
    f.why = static_cast<agenda::Why>(in.number(0, static_cast<std::int64_t>(agenda::Why::double_booked)));
    f.job = in.maybe_index(), f.task = in.maybe_index(), f.unit = in.maybe_index();
  }
  out.value = read_value(in), out.bound = read_value(in);
  out.proved = in.yes(), out.kept = in.yes(), out.stopped = in.yes(), out.steps = in.number();
  return out;
}

bool same(const AgendaTask& a, const AgendaTask& b) {
  return a.stage == b.stage && a.recheck == b.recheck && a.booking == b.booking;
}

std::optional<std::size_t> unit_at(const AgendaInput& input, const AgendaUnit& u) {
  return u.person != 0 ? unit_of_person(input, u.person) : unit_of(input, u.machine, u.number);
}

std::optional<std::vector<std::size_t>> units_at(const AgendaInput& input, const KeptTask& task) {
  std::vector<std::size_t> out;
  out.reserve(task.units.size());
  for (const AgendaUnit& u : task.units) {
    const auto at = unit_at(input, u);
    if (!at) return std::nullopt;
    out.push_back(*at);
  }
  return out;
}

bool names_what_is_there(const agenda::Plan& rest, const agenda::Problem& p) {
  return std::all_of(rest.faults.begin(), rest.faults.end(), [&](const agenda::Fault& f) {
    if (f.job && *f.job >= p.jobs.size()) return false;
    if (f.task && (!f.job || *f.task >= p.jobs[*f.job].tasks.size())) return false;
    return !f.unit || *f.unit < p.units.size();
  });
}

// The one of the kept job's tasks that is called so, after `used` of them of that name.
const KeptTask* find(const KeptJob& job, const AgendaTask& name, std::size_t used) {
  for (const KeptTask& t : job.tasks) {
    if (t.name.stage == name.stage && t.name.recheck == name.recheck && used-- == 0) return &t;
  }
  return nullptr;
}

} // namespace

KeptAgenda kept(const AgendaInput& input, const std::string& digest, const agenda::Plan& plan) {
  KeptAgenda out;
  out.digest = digest;
  out.from = input.problem.from;
  out.rest = plan;
  out.rest.jobs.clear();
  for (std::size_t j = 0; j < plan.jobs.size(); ++j) {
    const agenda::PlannedJob& planned = plan.jobs[j];
    KeptJob& k = out.jobs.emplace_back();
    k.job = input.jobs[j].job, k.finish = planned.finish, k.late = planned.late;
    k.placed = !planned.tasks.empty();
    for (std::size_t i = 0; i < planned.tasks.size(); ++i) {
      const agenda::Placed& p = planned.tasks[i];
      KeptTask& t = k.tasks.emplace_back();
      t.name = input.jobs[j].tasks[i], t.start = p.start, t.end = p.end, t.fixed = p.fixed;
      for (const std::size_t u : p.units)
        t.units.push_back(input.units[u]);
    }
  }
  return out;
}

std::string to_text(const KeptAgenda& agenda) {
  KeptWriter out;
  out.put(written_so);
  out.word(agenda.digest), out.put(agenda.from);
  out.put(agenda.jobs.size());
  for (const KeptJob& j : agenda.jobs) {
    out.put(j.job), out.put(std::int64_t{j.placed}), out.put(j.finish), out.put(std::int64_t{j.late.count()});
    out.put(j.tasks.size());
    for (const KeptTask& t : j.tasks)
      write(out, t);
  }
  write_rest(out, agenda.rest);
  return out.take();
}

std::optional<KeptAgenda> agenda_from_text(std::string_view text) {
  KeptReader in(text);
  try {
    KeptAgenda out;
    if (in.number() != written_so) return std::nullopt;
    out.digest = in.word(), out.from = in.instant();
    for (std::size_t left = in.many(); left > 0; --left) {
      KeptJob& j = out.jobs.emplace_back();
      j.job = in.number(), j.placed = in.yes(), j.finish = in.instant(), j.late = seconds{in.number()};
      for (std::size_t tasks = in.many(); tasks > 0; --tasks)
        j.tasks.push_back(read_task(in));
      if (j.placed == j.tasks.empty()) return std::nullopt;
    }
    out.rest = read_rest(in);
    in.done();
    return out;
  } catch (const NoPlan&) {
    return std::nullopt;
  }
}

std::optional<agenda::Plan> plan_of(const KeptAgenda& agenda, const AgendaInput& input) {
  if (agenda.jobs.size() != input.jobs.size() || !names_what_is_there(agenda.rest, input.problem))
    return std::nullopt;
  agenda::Plan out = agenda.rest;
  for (std::size_t j = 0; j < agenda.jobs.size(); ++j) {
    const KeptJob& k = agenda.jobs[j];
    const AgendaJob& there = input.jobs[j];
    if (k.job != there.job || (k.placed && k.tasks.size() != there.tasks.size())) return std::nullopt;
    agenda::PlannedJob& planned = out.jobs.emplace_back();
    planned.finish = k.finish, planned.late = k.late;
    for (std::size_t i = 0; i < k.tasks.size(); ++i) {
      const KeptTask& t = k.tasks[i];
      auto units = units_at(input, t);
      if (!units || !same(t.name, there.tasks[i])) return std::nullopt;
      planned.tasks.push_back({t.start, t.end, std::move(*units), t.fixed});
    }
  }
  return out;
}

void remember(AgendaInput& input, const KeptAgenda& agenda) {
  for (std::size_t j = 0; j < input.jobs.size(); ++j) {
    const AgendaJob& there = input.jobs[j];
    const auto k = std::find_if(agenda.jobs.begin(), agenda.jobs.end(), [&](const KeptJob& other) {
      return there.job != 0 && other.job == there.job;
    });
    if (k == agenda.jobs.end()) continue;
    for (std::size_t i = 0; i < there.tasks.size(); ++i) {
      agenda::Task& task = input.problem.jobs[j].tasks[i];
      task.was.reset();
      if (task.fixed) continue;
      const auto before = there.tasks.begin() + static_cast<std::ptrdiff_t>(i);
      const auto used = std::count_if(there.tasks.begin(), before, [&](const AgendaTask& t) {
        return t.stage == there.tasks[i].stage && t.recheck == there.tasks[i].recheck;
      });
      const KeptTask* was = find(*k, there.tasks[i], static_cast<std::size_t>(used));
      if (was == nullptr || was->fixed) continue;
      if (auto units = units_at(input, *was); units && units->size() == task.needs.size())
        task.was = agenda::Was{was->start, std::move(*units)};
    }
  }
}

std::optional<Instant> first_start(const KeptAgenda& agenda) {
  std::optional<Instant> out;
  for (const KeptJob& j : agenda.jobs)
    for (const KeptTask& t : j.tasks)
      if (!t.fixed && (!out || t.start < *out)) out = t.start;
  return out;
}

} // namespace nutward::shop
