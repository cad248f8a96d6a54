#include "shop/agenda_words.hpp"

#include "shop/machines.hpp"
#include "shop/people.hpp"
#include "shop/stage_words.hpp"

namespace nutward::shop {

using std::chrono::seconds;

namespace {

constexpr std::int64_t day_s = 86400, hour_s = 3600;

AgendaItem item_of(const AgendaPlan& agenda, std::size_t j, std::size_t t, const agenda::Placed& placed) {
  AgendaItem out;
  out.at_job = j, out.at_task = t;
  out.job = agenda.what.jobs[j].job, out.task = agenda.what.jobs[j].tasks[t];
  out.start = placed.start, out.end = placed.end, out.fixed = placed.fixed;
  for (const std::size_t u : placed.units) {
    const AgendaUnit& unit = agenda.what.units[u];
    if (unit.person != 0) {
      out.person = unit;
    } else {
      out.machine = unit;
      const auto alike = std::count_if(agenda.what.units.begin(), agenda.what.units.end(),
                                       [&](const AgendaUnit& x) { return x.machine == unit.machine; });
      out.scarce = alike == 1 && !agenda.what.problem.units[u].shared;
    }
  }
  return out;
}

} // namespace

std::vector<AgendaItem> items_of(const AgendaPlan& agenda) {
  std::vector<AgendaItem> out;
  const auto& jobs = agenda.what.problem.jobs;
  for (std::size_t j = 0; j < jobs.size(); ++j) {
    const bool placed = j < agenda.plan.jobs.size() && !agenda.plan.jobs[j].tasks.empty();
    for (std::size_t t = 0; t < jobs[j].tasks.size(); ++t) {
      const auto& fixed = jobs[j].tasks[t].fixed;
      if (!placed && !fixed) continue;
      const agenda::Placed where = placed ? agenda.plan.jobs[j].tasks[t]
                                          : agenda::Placed{fixed->start, fixed->end, fixed->units, true};
      if (where.start < where.end) out.push_back(item_of(agenda, j, t, where));
    }
  }
  std::stable_sort(out.begin(), out.end(),
                   [](const AgendaItem& a, const AgendaItem& b) { return a.start < b.start; });
  return out;
}

Outlook outlook_of(const AgendaPlan& agenda, std::size_t j, const Moment& moment) {
  using State = Outlook::State;
  const agenda::PlannedJob& planned = agenda.plan.jobs.at(j);
  const auto& due = agenda.what.problem.jobs[j].due;
  Outlook out;
  if (planned.tasks.empty()) return out.state = State::unplaced, out;
  out.ready = planned.finish;
  if (!due) return out;
  if (planned.finish > *due) return out.state = State::late, out.late = planned.finish - *due, out;
  const auto spare = hours::open_between(moment.calendar, moment.zone, planned.finish, *due);
  out.state = spare < little_to_spare ? State::at_risk : State::in_time;
  return out;
}

std::optional<Outlook> outlook_of(const AgendaPlan& agenda, std::int64_t job, const Moment& moment) {
  for (std::size_t j = 0; j < agenda.what.jobs.size(); ++j)
    if (agenda.what.jobs[j].job == job && job != 0) return outlook_of(agenda, j, moment);
  return std::nullopt;
}

std::string_view word_for(Outlook::State state) {
  static constexpr std::array<std::string_view, 5> words{"undated", "in_time", "at_risk", "late", "unplaced"};
  return words.at(static_cast<std::size_t>(state));
}

std::string words_of(const Outlook& o) {
  switch (o.state) {
  case Outlook::State::undated:
    return "no day promised";
  case Outlook::State::in_time:
    return "in time";
  case Outlook::State::at_risk:
    return "at risk: less than half a day to spare";
  case Outlook::State::late:
    return "will be late by " + span_words(o.late);
  case Outlook::State::unplaced:
    break;
  }
  return "has no place in the plan";
}

std::string day_words(Day day, const Moment& moment) {
  const Day today = moment.zone.local(moment.now).day;
  if (day == today) return "today";
  if (day == today + 1) return "tomorrow";
  std::string out = hours::human(day);
  if (day.ymd().year() == today.ymd().year()) out.resize(out.size() - 5);
  return out;
}

std::string part_of_day(Instant t, const Moment& moment) {
  const hours::LocalTime local = moment.zone.local(t);
  const auto open = hours::spans(moment.calendar, moment.zone, local.day);
  for (std::size_t i = 0; i + 1 < open.size(); ++i) {
    const std::int32_t s = moment.zone.local(open[i].second).s;
    if (s >= 11 * hour_s && s <= 15 * hour_s) return t < open[i].second ? "before lunch" : "after lunch";
  }
  return local.s < 12 * hour_s   ? "in the morning"
         : local.s < 17 * hour_s ? "in the afternoon"
                                 : "in the evening";
}

std::string clock_words(Instant t, const Moment& moment) {
  const std::int32_t s = moment.zone.local(t).s;
  return hours::human_time(s - s % 300);
}

std::string when_words(const AgendaItem& item, const Moment& moment) {
  if (item.start <= moment.now) return "now";
  const std::string day = day_words(moment.zone.local(item.start).day, moment);
  if (item.scarce || item.fixed) return fmt::format("{} at {}", day, clock_words(item.start, moment));
  return fmt::format("{} {}", day, part_of_day(item.start, moment));
}

std::string span_words(seconds elapsed) {
  const std::int64_t s = elapsed.count();
  if (s >= day_s) return plural((s + day_s / 2) / day_s, "day");
  if (s >= hour_s) return plural((s + hour_s / 2) / hour_s, "hour");
  return plural(std::max<std::int64_t>(1, (s + 30) / 60), "minute");
}

std::string name_of(const AgendaUnit& unit, const View& view) {
  if (unit.person != 0) return name_of(unit.person, view);
  const auto m = machine_at(unit.machine, view);
  if (!m) return "-";
  return m->count > 1 ? named(*m, unit.number) : named(*m);
}

std::string work_words(const AgendaItem& item) {
  return item.task.stage.empty() ? "booked" : item.task.stage;
}

std::string to_do_words(const AgendaItem& item, const View& view) {
  if (item.task.stage.empty()) return fmt::format("what booking {} is for", item.task.booking);
  const auto job = view.jobs().find(item.job);
  const auto kind = agenda::stage_named(item.task.stage);
  const std::string what = kind ? std::string(agenda::row(*kind).what) : item.task.stage;
  return fmt::format("{} of {}", what, job ? named(*job) : fmt::format("job {}", item.job));
}

std::string age_of(const AgendaPlan& agenda, const Moment& moment) {
  if (agenda.what.problem.jobs.empty()) return "";
  const bool more = !agenda.settled && !agenda.plan.proved;
  std::string better = more ? " A better one is being worked on." : "";
  if (!agenda.planned_at) return better;
  const seconds age = moment.now - *agenda.planned_at;
  const std::string ago = age < seconds{60} ? "" : fmt::format(" Planned {} ago.", span_words(age));
  if (!agenda.brought_up_to_date) return ago + better;
  return fmt::format(" It is the plan of {}, brought up to date.",
                     age < seconds{day_s} ? clock_words(*agenda.planned_at, moment)
                                          : moment.zone.human(*agenda.planned_at)) +
         better;
}

std::string proof_of(const agenda::Plan& plan) {
  if (plan.proved) return "Proved best: no other plan is less late.";
  if (plan.value.late_s == 0 && plan.value.unplaced == 0) return "Nothing is late by it.";
  return "Not proved best: another one may be less late.";
}

} // namespace nutward::shop
