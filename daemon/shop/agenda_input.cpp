#include "shop/agenda_input.hpp"

#include "agenda/deadline.hpp"
#include "agenda/windows.hpp"
#include "shop/machines.hpp"
#include "shop/own_hours.hpp"
#include "shop/people.hpp"
#include "shop/wire_there.hpp"
#include "shop/work.hpp"

#include <algorithm>

namespace nutward::shop {

using agenda::Window;
using std::chrono::seconds;

namespace {

constexpr std::chrono::hours look_back{24 * 21}; // for the limits of rechecks whose pressing is over
constexpr seconds least_rest{300};               // of a stage that took longer than it should

class Builder {
public:
  Builder(const View& view, const hours::Calendar& calendar, const hours::Zone& zone, Instant now)
      : view_(view), calendar_(calendar), zone_(zone), now_(now), set_(setup(view)) {
    const Day today = zone.local(now).day;
    day_begin_ = zone.instant(today, 0);
    out_.problem.from = now;
    out_.problem.until = zone.instant(today + agenda_days, 0);
  }

  AgendaInput build() {
    shop_ = agenda::windows(calendar_, zone_, day_begin_, out_.problem.until);
    for (const Machine& m : view_.machines().all())
      add_machine(m);
    add_people();
    wire_.emplace(view_, set_, zone_);
    bookings_ = view_.machines().bookings(day_begin_, out_.problem.until);
    for (const Job& job : view_.jobs().open())
      add_job(job);
    for (const Booking& b : bookings_)
      add_booking(b);
    add_after();
    out_.problem.day_limits =
        agenda::day_limits(calendar_, zone_, day_begin_ - look_back, out_.problem.until);
    return std::move(out_);
  }

  agenda::Job alone(const AgendaInput& input, const Job& job) {
    out_.units = input.units;
    out_.problem.units = input.problem.units;
    wire_.emplace(view_, set_, zone_);
    add_job(job);
    if (out_.problem.jobs.empty()) return {};
    return std::move(out_.problem.jobs.back());
  }

private:
  void add_machine(const Machine& m) {
    const auto outages = view_.machines().outages(day_begin_);
    for (int n = m.count == 0 ? 0 : 1; n <= m.count; ++n) {
      std::vector<Window> closed;
      for (const Outage& o : outages) {
        if (o.machine == m.id && (o.number == 0 || o.number == n))
          closed.push_back({o.from, o.to.value_or(out_.problem.until)});
      }
      std::sort(closed.begin(), closed.end());
      out_.units.push_back({m.id, n, 0});
      out_.problem.units.push_back({agenda::without(shop_, closed), m.count == 0, 0});
    }
  }

  // Who may do work, within the shop's hours.
  void add_people() {
    const auto own = own_calendars(view_, zone_.local(day_begin_).day);
    for (const Actor& a : workers(view_)) {
      const auto at = own.find(a.id);
      out_.units.push_back({0, 0, a.id});
      out_.problem.units.push_back(
          {at == own.end()
               ? shop_
               : agenda::both(shop_, agenda::windows(at->second, zone_, day_begin_, out_.problem.until)),
           false, 0});
    }
  }

  std::vector<std::size_t> units_of(std::int64_t machine) const {
    std::vector<std::size_t> out;
    for (std::size_t u = 0; u < out_.units.size(); ++u)
      if (out_.units[u].machine == machine && machine != 0) out.push_back(u);
    return out;
  }

  // Its builder, else those of its bench, else everybody.
  std::vector<std::size_t> hands_for(const Job& job) const {
    std::vector<std::size_t> all, at_bench;
    for (std::size_t u = 0; u < out_.units.size(); ++u) {
      const std::int64_t person = out_.units[u].person;
      if (person == 0) continue;
      if (job.builder == person) return {u};
      all.push_back(u);
      const auto a = view_.house().actor(person);
      if (!job.bench.empty() && a && a->bench == job.bench) at_bench.push_back(u);
    }
    return at_bench.empty() ? all : at_bench;
  }

  bool is_free(std::size_t unit, Instant from, Instant to) const {
    if (out_.problem.units[unit].shared) return true;
    for (const agenda::Job& j : out_.problem.jobs) {
      for (const agenda::Task& t : j.tasks) {
        if (!t.fixed || t.fixed->start >= to || from >= t.fixed->end) continue;
        if (std::find(t.fixed->units.begin(), t.fixed->units.end(), unit) != t.fixed->units.end())
          return false;
      }
    }
    return true;
  }

  // A unit of the machine that nothing fixed holds then and that is in service, else that nothing holds, else
  // the first; nothing where there is none.
  void hold(std::vector<std::size_t>& held, std::int64_t machine, Instant from, Instant to) const {
    const auto units = units_of(machine);
    if (units.empty()) return;
    const Window span{from, to};
    std::size_t best = units.front();
    int rank = 2;
    for (const std::size_t u : units) {
      if (!is_free(u, from, to)) continue;
      const auto open = agenda::both(out_.problem.units[u].open, std::span(&span, 1));
      const int r = open.empty() ? 1 : 0;
      if (r < rank) rank = r, best = u;
    }
    held.push_back(best);
  }

  void hold_person(std::vector<std::size_t>& held, std::int64_t person, Instant from, Instant to) const {
    const auto u = unit_of_person(out_, person);
    if (u && is_free(*u, from, to)) held.push_back(*u);
  }

  // When work that began is expected to be over: never in the past, to the quarter of an hour.
  Instant expected_end(Instant start, seconds rest) const {
    const auto end = hours::add_open(calendar_, zone_, start, rest);
    if (end && *end > now_) return *end;
    constexpr std::int64_t quarter = 900;
    return {(now_.s / quarter + 1) * quarter};
  }

  void fix_running(agenda::Task& task, const Job& job, const Stage& going, std::int64_t machine) const {
    const auto before = spent(job, going.kind, view_, *going.started, calendar_, zone_).value_or(seconds{0});
    const seconds rest = std::max(task.work - before, least_rest);
    agenda::Fixed fixed{*going.started, expected_end(*going.started, rest), {}};
    hold(fixed.units, machine, fixed.start, fixed.end);
    hold_person(fixed.units, going.actor, fixed.start, fixed.end);
    task.fixed = fixed;
  }

  // The first booking of this machine for this job that no stage has taken yet.
  void fix_booked(agenda::Task& task, AgendaTask& name, const Job& job, std::int64_t machine) {
    const auto b = std::find_if(bookings_.begin(), bookings_.end(), [&](const Booking& x) {
      return x.job == job.id && x.machine == machine && x.to > now_;
    });
    if (b == bookings_.end()) return;
    agenda::Fixed fixed{b->from, b->to, {}};
    hold(fixed.units, machine, b->from, b->to);
    hold_person(fixed.units, b->actor, b->from, b->to);
    task.fixed = fixed;
    name.booking = b->id;
    bookings_.erase(b);
  }

  // What a lag of this job counts from: a stage that is over, in the problem as what is fixed.
  std::size_t over(Instant end, std::string_view stage, agenda::Job& to, AgendaJob& names) const {
    agenda::Task task;
    task.fixed = agenda::Fixed{end, end, {}};
    to.tasks.push_back(std::move(task));
    names.tasks.push_back({std::string(stage), 0, 0});
    return to.tasks.size() - 1;
  }

  std::optional<Instant> end_of(const Job& job, std::string_view stage) const {
    std::optional<Instant> out;
    for (const Stage& s : view_.jobs().stages(job.id))
      if (s.kind == stage && s.finished) out = std::max(out.value_or(*s.finished), *s.finished);
    return out;
  }

  // Where a job's stages have come to while they are gone through in order.
  struct Going {
    agenda::Job job;
    AgendaJob names;
    std::optional<std::size_t> lag_from; // the pressing, or the seating of what is not pressed
    seconds cure{0};                     // to be kept before the next worked stage
    std::optional<Instant> cured_from;   // where what it counts from is over
  };

  agenda::Task task_for(const Job& job, agenda::StageKind kind, seconds work) const {
    agenda::Task task;
    const auto m = machine_for(kind, view_);
    task.needs = {units_of(m ? m->id : 0), hands_for(job)};
    const auto before = spent(job, agenda::row(kind).word, view_, now_, calendar_, zone_);
    const bool running = in_hand(job, agenda::row(kind).word, view_).has_value();
    task.work = before && !running ? std::max(work - *before, least_rest) : work;
    const bool glued = kind == agenda::StageKind::seat && !job.glue.empty();
    if (kind == agenda::StageKind::press || glued) task.longest_pause = agenda::night;
    if (m && m->setup_s > 0) {
      task.set_up = static_cast<std::int64_t>(kind) + 1;
      task.set_up_work = seconds{m->setup_s};
    }
    return task;
  }

  void add_stage(const Job& job, const agenda::Stage& s, Going& at) {
    const agenda::StageRow& row = agenda::row(s.kind);
    if (s.kind == agenda::StageKind::cure) {
      at.cure = s.lag;
      return;
    }
    if (row.minutes == 0) return;
    const bool marks =
        s.kind == agenda::StageKind::press || (s.kind == agenda::StageKind::seat && !pressed_at_all(job));
    if (is_finished(job, row.word, view_) && !in_hand(job, row.word, view_)) {
      if (marks) at.cured_from = end_of(job, row.word);
      return;
    }
    agenda::Task task = task_for(job, s.kind, s.work);
    AgendaTask name{std::string(row.word), 0, 0};
    lags(s, task, at);
    if (s.kind == agenda::StageKind::cut) {
      if (const auto from = wire_->there_for(job.id))
        task.not_before = std::max(task.not_before.value_or(*from), *from);
    }
    if (s.kind == agenda::StageKind::recheck && add_rechecks(job, task, name, at)) return;
    const auto m = machine_for(s.kind, view_);
    if (const auto going = in_hand(job, row.word, view_))
      fix_running(task, job, *going, m ? m->id : 0);
    else if (m)
      fix_booked(task, name, job, m->id);
    at.job.tasks.push_back(std::move(task));
    at.names.tasks.push_back(std::move(name));
    if (marks) at.lag_from = at.job.tasks.size() - 1;
  }

  static bool pressed_at_all(const Job& job) { return job.kind != JobKind::some_slots; }

  void lags(const agenda::Stage& s, agenda::Task& task, Going& at) const {
    const bool recheck = s.kind == agenda::StageKind::recheck;
    if (at.lag_from) {
      if (recheck) {
        task.lags_from = at.lag_from;
        task.least_lag = std::max<seconds>(std::chrono::hours(set_.recheck.from_h), at.cure);
        task.most_lag = std::max<seconds>(std::chrono::hours(set_.recheck.due_h), task.least_lag);
        task.to_day_limit = true;
      } else if (at.cure.count() > 0) {
        task.lags_from = at.lag_from;
        task.least_lag = at.cure;
      }
    } else if (at.cured_from && at.cure.count() > 0) {
      task.not_before = *at.cured_from + at.cure;
    }
    at.cure = seconds{0}; // what comes after that stage comes after the cure too
  }

  // Rechecks that wait, of a pressing that is over; false: there is none, and the recheck is as for any job.
  bool add_rechecks(const Job& job, const agenda::Task& like, const AgendaTask& name, Going& at) {
    if (at.lag_from) return false;
    bool any = false;
    for (const Recheck& r : view_.jobs().rechecks(job.id)) {
      if (r.state != RecheckState::waiting) continue;
      any = true;
      agenda::Task task = like;
      task.lags_from = over(r.pressed, "press", at.job, at.names);
      task.least_lag = r.from - r.pressed;
      task.most_lag = r.due - r.pressed;
      task.to_day_limit = true;
      task.not_before.reset();
      AgendaTask one = name;
      one.recheck = r.id;
      at.job.tasks.push_back(std::move(task));
      at.names.tasks.push_back(std::move(one));
    }
    return any || is_finished(job, "press", view_);
  }

  void add_job(const Job& job) {
    Going at;
    at.names.job = job.id;
    at.job.due = job.due;
    at.job.weight = job.priority;
    at.job.release = std::min(job.taken_in, day_begin_);
    for (const agenda::Stage& s : stages_of(job, view_, set_))
      add_stage(job, s, at);
    if (at.job.tasks.empty()) return;
    out_.problem.jobs.push_back(std::move(at.job));
    out_.jobs.push_back(std::move(at.names));
  }

  // Of a machine alone, for nothing that is planned.
  void add_booking(const Booking& b) {
    agenda::Task task;
    agenda::Fixed fixed{b.from, b.to, {}};
    hold(fixed.units, b.machine, b.from, b.to);
    hold_person(fixed.units, b.actor, b.from, b.to);
    task.fixed = std::move(fixed);
    agenda::Job job;
    job.tasks.push_back(std::move(task));
    out_.problem.jobs.push_back(std::move(job));
    out_.jobs.push_back({0, {{"", 0, b.id}}});
  }

  void add_after() {
    for (std::size_t j = 0; j < out_.jobs.size(); ++j) {
      const auto job = out_.jobs[j].job == 0 ? std::nullopt : view_.jobs().find(out_.jobs[j].job);
      if (!job) continue;
      for (std::size_t k = 0; k < out_.jobs.size(); ++k) {
        if (std::find(job->after.begin(), job->after.end(), out_.jobs[k].job) != job->after.end() &&
            out_.jobs[k].job != 0)
          out_.problem.jobs[j].after.push_back(k);
      }
    }
  }

  const View& view_;
  const hours::Calendar& calendar_;
  const hours::Zone& zone_;
  Instant now_, day_begin_;
  Setup set_;
  std::vector<Window> shop_;
  std::vector<Booking> bookings_;
  std::optional<WireThere> wire_;
  AgendaInput out_;
};

} // namespace

AgendaInput agenda_input(const View& view, const hours::Calendar& calendar, const hours::Zone& zone,
                         Instant now) {
  return Builder(view, calendar, zone, now).build();
}

agenda::Job agenda_job(const AgendaInput& input, const Job& job, const View& view,
                       const hours::Calendar& calendar, const hours::Zone& zone, Instant now) {
  return Builder(view, calendar, zone, now).alone(input, job);
}

std::optional<std::size_t> unit_of(const AgendaInput& input, std::int64_t machine, int number) {
  for (std::size_t u = 0; u < input.units.size(); ++u) {
    if (input.units[u].machine == machine && input.units[u].number == number) return u;
  }
  return std::nullopt;
}

std::optional<std::size_t> unit_of_person(const AgendaInput& input, std::int64_t person) {
  for (std::size_t u = 0; u < input.units.size(); ++u) {
    if (input.units[u].person == person) return u;
  }
  return std::nullopt;
}

} // namespace nutward::shop
