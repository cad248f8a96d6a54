#include "shop/promising.hpp"

namespace nutward::shop {

namespace {

using std::chrono::seconds;

[[noreturn]] void refuse(const agenda::BadAgenda& bad) {
  throw Problem(Fault::state, bad.what(), "/", bad.would_do);
}

// Until that day every open day goes on for so many hours after its last closing.
hours::Calendar longer(hours::Calendar calendar, int h, Instant by, const Moment& moment) {
  const Day last = moment.zone.local(by).day;
  for (Day d = moment.zone.local(moment.now).day; d <= last; d = d + 1) {
    const auto closing = hours::end_of_open_day(calendar, moment.zone, d);
    if (!closing) continue;
    const hours::LocalTime local = moment.zone.local(*closing);
    if (local.day > d || local.s >= 86400) continue; // it is open until midnight as it is
    calendar.extra[d].push_back({local.s, std::min(86400, local.s + h * 3600)});
  }
  return calendar;
}

// The agenda of longer hours holds the same jobs in the same order, so that the plan is one of it too.
bool with_overtime(const Wish& wish, int h, Instant by, const View& view, const Moment& moment) {
  const hours::Calendar calendar = longer(moment.calendar, h, by, moment);
  AgendaInput input = agenda_input(view, calendar, moment.zone, moment.now);
  if (wish.job) {
    for (std::size_t j = 0; j < input.jobs.size(); ++j) {
      if (input.jobs[j].job != wish.job->id) continue;
      input.jobs.erase(input.jobs.begin() + static_cast<std::ptrdiff_t>(j));
      input.problem.jobs.erase(input.problem.jobs.begin() + static_cast<std::ptrdiff_t>(j));
      break;
    }
  }
  if (input.problem.jobs.size() != wish.agenda.plan.jobs.size()) return false;
  for (std::size_t j = 0; j < input.problem.jobs.size(); ++j)
    input.problem.jobs[j].after = wish.agenda.what.problem.jobs[j].after;
  const agenda::Price price =
      agenda::promise_by(input.problem, wish.agenda.plan, wish.extra, by, {steps_of_overtime, {}});
  return price.possible && price.later.empty();
}

// The jobs that wait for another one, by their new numbers once that one is gone.
void take_out(AgendaPlan& agenda, std::size_t j) {
  const auto at = static_cast<std::ptrdiff_t>(j);
  agenda.what.jobs.erase(agenda.what.jobs.begin() + at);
  agenda.what.problem.jobs.erase(agenda.what.problem.jobs.begin() + at);
  agenda.plan.jobs.erase(agenda.plan.jobs.begin() + at);
  agenda.plan.faults.clear(); // they name jobs by number
  for (agenda::Job& job : agenda.what.problem.jobs) {
    std::erase(job.after, j);
    for (std::size_t& other : job.after)
      if (other > j) --other;
  }
}

} // namespace

Wish wish_for(const Job& like, std::string words, const View& view, const Moment& moment) {
  Wish out;
  out.agenda = agenda_of(view, moment.calendar, moment.zone, moment.now, seconds{0});
  out.extra = agenda_job(out.agenda.what, like, view, moment.calendar, moment.zone, moment.now);
  out.words = std::move(words);
  out.like = like;
  return out;
}

std::optional<Wish> wish_for(const Job& job, const View& view, const Moment& moment) {
  Wish out;
  out.agenda = agenda_of(view, moment.calendar, moment.zone, moment.now, seconds{0});
  out.words = named(job);
  out.job = out.like = job;
  for (std::size_t j = 0; j < out.agenda.what.jobs.size(); ++j) {
    if (out.agenda.what.jobs[j].job != job.id) continue;
    out.extra = out.agenda.what.problem.jobs[j];
    take_out(out.agenda, j);
    // What it waits for keeps its number unless it stood behind it.
    for (std::size_t& other : out.extra.after)
      if (other > j) --other;
    return out;
  }
  return std::nullopt;
}

Promised promised(const Wish& wish, std::optional<Instant> by, const View& view, const Moment& moment) {
  const agenda::Problem& problem = wish.agenda.what.problem;
  const agenda::Plan& plan = wish.agenda.plan;
  Promised out;
  try {
    out.free = agenda::promise(problem, plan, wish.extra, {steps_of_a_promise, {}});
    if (!out.free.possible && !by) // whether it has no place at all, or none that keeps the others
      out.price = agenda::promise_by(problem, plan, wish.extra, problem.until, {steps_of_a_promise, {}});
    if (!by || (out.free.possible && out.free.job.finish <= *by)) return out;
    out.price = agenda::promise_by(problem, plan, wish.extra, *by, {steps_of_a_promise, {}});
    if (out.price->possible && out.price->later.empty()) return out;
    for (const int h : {1, 2, 4}) {
      if (!with_overtime(wish, h, *by, view, moment)) continue;
      out.overtime_h = h;
      break;
    }
  } catch (const agenda::BadAgenda& bad) {
    refuse(bad);
  }
  return out;
}

} // namespace nutward::shop
