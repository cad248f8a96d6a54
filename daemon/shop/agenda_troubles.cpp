// What is wrong with a plan, in words: what, where, and what would do.
#include "shop/agenda_words.hpp"
#include "shop/bookings.hpp"
#include "shop/machines.hpp"
#include "shop/people.hpp"
#include "shop/stage_words.hpp"

namespace nutward::shop {

namespace {

using agenda::Why;

class Teller {
public:
  Teller(const AgendaPlan& agenda, const View& view, const Moment& moment)
      : agenda_(agenda), view_(view), moment_(moment) {}

  AgendaTrouble tell(const agenda::Fault& f) const {
    AgendaTrouble out;
    if (f.job && agenda_.what.jobs[*f.job].job != 0) out.job = agenda_.what.jobs[*f.job].job;
    switch (f.why) {
    case Why::bad_unit:
    case Why::bad_job:
      return say(out, "bad_input", fmt::format("{} could not be planned as it is kept", whose(f)),
                 "Ask 'job' and 'hours' and put right what is odd there.");
    case Why::no_unit:
      return no_unit(f, out);
    case Why::no_open_hours:
      return no_hours(f, out);
    case Why::circular:
      return circular(f, out);
    case Why::waits_for_unplaced:
      return say(
          out, "waits", fmt::format("{} waits for a job that has no place itself", whose(f)),
          fmt::format("See to that one first, or say: job {} does not wait for it any more.", number(f)));
    case Why::beyond_horizon:
      return say(out, "no_room", fmt::format("{} has no room within {} days", whose(f), agenda_days),
                 "Open longer, take in fewer jobs, or let more people work.");
    default:
      return timely(f, out);
    }
  }

private:
  static AgendaTrouble say(AgendaTrouble out, std::string code, const std::string& text, std::string would) {
    out.code = std::move(code);
    out.text = sentence(text) + ".";
    out.would_do = std::move(would);
    return out;
  }

  std::string whose(const agenda::Fault& f) const {
    if (!f.job) return "something";
    const std::int64_t id = agenda_.what.jobs[*f.job].job;
    const auto job = id == 0 ? std::nullopt : view_.jobs().find(id);
    return job ? named(*job) : "a booking";
  }
  std::int64_t number(const agenda::Fault& f) const { return f.job ? agenda_.what.jobs[*f.job].job : 0; }
  std::string stage(const agenda::Fault& f) const {
    if (!f.job || !f.task) return "its work";
    const std::string& word = agenda_.what.jobs[*f.job].tasks[*f.task].stage;
    return word.empty() ? "its work" : std::string(doing(word));
  }

  AgendaTrouble no_unit(const agenda::Fault& f, const AgendaTrouble& out) const {
    const auto& needs = agenda_.what.problem.jobs[*f.job].tasks[f.task.value_or(0)].needs;
    const bool machine = !needs.empty() && needs.front().empty();
    if (machine)
      return say(out, "no_machine", fmt::format("there is no machine for {} {}", stage(f), whose(f)),
                 fmt::format("Say where that is done, such as '{} is done at the bench'.", stage(f)));
    return say(out, "nobody", fmt::format("there is nobody for {} {}", stage(f), whose(f)),
               fmt::format("Say who works here ('new person Ines'), or give job {} to somebody.", number(f)));
  }

  AgendaTrouble no_hours(const agenda::Fault& f, const AgendaTrouble& out) const {
    return say(out, "no_open_hours",
               fmt::format("there are no open hours long enough for {} {}: what it needs is never there "
                           "together for so long",
                           stage(f), whose(f)),
               "Look at 'hours' and 'machines': open longer, give its builder longer hours, or bring the "
               "machine back.");
  }

  AgendaTrouble circular(const agenda::Fault& f, const AgendaTrouble& out) const {
    std::int64_t other = 0;
    const auto job = view_.jobs().find(number(f));
    if (job && !job->after.empty()) other = job->after.front();
    return say(out, "circular", fmt::format("{} waits for job {}, which waits for it", whose(f), other),
               fmt::format("Say: job {} does not wait for job {} any more.", number(f), other));
  }

  AgendaTrouble timely(const agenda::Fault& f, const AgendaTrouble& out) const {
    switch (f.why) {
    case Why::most_lag_impossible:
      return say(
          out, "recheck_too_late",
          fmt::format("{} {} cannot be in its time after the press: the shop is closed then", stage(f),
                      whose(f)),
          "Press on another day, or open extra ('also open on saturday 9:00-12:00'); else it is done as "
          "early as it can be.");
    case Why::overruns:
      return say(out, "overruns",
                 fmt::format("{} {} comes later than it may, because of what is begun or booked", stage(f),
                             whose(f)),
                 "Move the booking, or do it by hand before.");
    case Why::due_passed:
      return say(
          out, "due_passed",
          fmt::format("{} cannot be ready by its day any more, even if nothing else were done", whose(f)),
          fmt::format("Promise another day: 'promise job {} for {}'.", number(f), day_it_is_ready(f)));
    case Why::late:
      return say(out, "late", fmt::format("{} {}", whose(f), words_of(outlook_of(agenda_, *f.job, moment_))),
                 "Make it more urgent, open longer, or promise another day.");
    case Why::double_booked:
      return double_booked(f, out);
    default:
      return say(out, "other", "something is wrong with the plan", "Ask 'bookings' and 'jobs'.");
    }
  }

  // What was booked for it may be what makes it late.
  std::string held_up(const agenda::Fault& f) const {
    for (const AgendaTask& t : agenda_.what.jobs[*f.job].tasks)
      if (t.booking != 0) return fmt::format("Move booking {}, if that holds it up. ", t.booking);
    return "";
  }

  std::string day_it_is_ready(const agenda::Fault& f) const {
    const auto ready = outlook_of(agenda_, *f.job, moment_).ready.value_or(moment_.now);
    const auto ymd = moment_.zone.local(ready).day.ymd();
    return fmt::format("{:04}-{:02}-{:02}", static_cast<int>(ymd.year()), static_cast<unsigned>(ymd.month()),
                       static_cast<unsigned>(ymd.day()));
  }

  AgendaTrouble double_booked(const agenda::Fault& f, const AgendaTrouble& out) const {
    const auto& task = agenda_.what.problem.jobs[*f.job].tasks[*f.task];
    const AgendaTask& name = agenda_.what.jobs[*f.job].tasks[*f.task];
    const std::string unit = f.unit ? name_of(agenda_.what.units[*f.unit], view_) : "a machine";
    return say(out, "double_booked",
               fmt::format("{} is wanted twice on {}", unit, moment_.zone.human(task.fixed->start)),
               name.booking != 0 ? fmt::format("Move or cancel one: 'cancel booking {}'.", name.booking)
                                 : "Stop or finish what is not being done.");
  }

  const AgendaPlan& agenda_;
  const View& view_;
  const Moment& moment_;
};

// A booking stands in the plan whatever becomes of its machine: it was made by hand.
void add_booked_out_of_service(std::vector<AgendaTrouble>& out, const AgendaPlan& agenda, const View& view,
                               const Moment& moment) {
  for (const Machine& m : view.machines().all()) {
    const auto hit = bookings_without_a_machine(m, moment.now, agenda.what.problem.until, view);
    if (hit.empty()) continue;
    out.push_back(
        {"no_machine", hit.front().job,
         fmt::format("The {} is out of service when it is booked: {}.", m.name,
                     words_of(hit, view, moment.zone)),
         fmt::format("Book another time ('cancel booking {}' drops this one), or say when it is back: "
                     "'the {} is back'.",
                     hit.front().id, m.name)});
  }
}

bool nothing_is_open(const agenda::Problem& problem) {
  return std::all_of(problem.units.begin(), problem.units.end(),
                     [](const agenda::Unit& u) { return u.open.empty(); });
}

} // namespace

std::vector<AgendaTrouble> troubles_of(const AgendaPlan& agenda, const View& view, const Moment& moment) {
  std::vector<AgendaTrouble> out;
  if (!agenda.what.problem.jobs.empty() && nothing_is_open(agenda.what.problem)) {
    out.push_back({"no_open_hours", std::nullopt, "No opening hours are known, so nothing can be planned.",
                   "Say them: 'open mon-fri 9:00-12:30, 13:30-18:00'."});
    return out;
  }
  const Teller teller(agenda, view, moment);
  out.reserve(agenda.plan.faults.size());
  for (const agenda::Fault& f : agenda.plan.faults)
    out.push_back(teller.tell(f));
  add_booked_out_of_service(out, agenda, view, moment);
  return out;
}

Give gives_of_troubles() {
  return gives::records(
      "troubles", "what is wrong with the plan",
      {gives::one_of("what", "which trouble",
                     {"bad_input", "no_machine", "nobody", "no_open_hours", "circular", "waits", "no_room",
                      "recheck_too_late", "overruns", "due_passed", "late", "double_booked", "other"}),
       gives::or_null(gives::job),
       {"text", Kind::words, "as a sentence"},
       {"would_do", Kind::words, "what would do"}});
}

Value data_of(const std::vector<AgendaTrouble>& troubles) {
  std::vector<Value> out;
  out.reserve(troubles.size());
  for (const AgendaTrouble& t : troubles)
    out.push_back(record({{"what", t.code},
                          {"job", t.job ? ref(Thing::job, *t.job) : Value{}},
                          {"text", t.text},
                          {"would_do", t.would_do}}));
  return list(std::move(out));
}

std::string words_of(const std::vector<AgendaTrouble>& troubles, std::size_t most) {
  std::string out;
  std::size_t left = 0;
  for (const AgendaTrouble& t : troubles) {
    if (t.code == "late") continue;
    if (most == 0) {
      ++left;
      continue;
    }
    --most;
    out += fmt::format(" {} {}", t.text, t.would_do);
  }
  if (left > 0) out += fmt::format(" And {} more.", left);
  return out;
}

} // namespace nutward::shop
