// By when what must begin: the deadlines of the stages that are still to be done.
#include "shop/agenda_next.hpp"
#include "shop/machines.hpp"
#include "shop/work.hpp"

#include <set>

namespace nutward::shop {

namespace {

struct Deadline {
  AgendaItem item;
  std::optional<std::chrono::seconds> spare;
};

bool is_meant(const AgendaItem& i, const WhichDeadlines& which) {
  return i.job != 0 && (!which.job || i.job == which.job->id) &&
         (!which.machine || i.machine.machine == which.machine->id) &&
         (!which.person || i.person.person == which.person->id);
}

// Of every job what comes next; where less is asked for, all of that.
std::vector<Deadline> deadlines_of(const WhichDeadlines& which, const std::vector<AgendaItem>& all,
                                   const AgendaPlan& agenda, const Latests& latests, const Moment& moment) {
  const bool first_of_each = !which.job && !which.machine && !which.person;
  std::set<std::int64_t> seen;
  std::vector<Deadline> out;
  for (const AgendaItem& i : all) {
    if (!is_meant(i, which) || i.fixed || (first_of_each && !seen.insert(i.job).second)) continue;
    out.push_back({i, spare_of(i, agenda, latests, moment)});
  }
  if (which.job) return out; // in the order of work
  std::stable_sort(out.begin(), out.end(), [](const Deadline& a, const Deadline& b) {
    return a.spare && (!b.spare || *a.spare < *b.spare);
  });
  return out;
}

std::string tightest_words(const Deadline& d, const AgendaPlan& agenda, const Latests& latests,
                           const View& view, const Moment& moment) {
  const std::string by = begin_by_words(d.item, agenda, latests, moment);
  if (by == "too late")
    return fmt::format("{} begins too late to keep its day, or what is booked for later work on it",
                       to_do_words(d.item, view));
  return fmt::format("{} must begin by {} ({} to spare)", to_do_words(d.item, view), by,
                     spare_words(d.spare));
}

} // namespace

void say_deadlines(Answer& out, const WhichDeadlines& which, const std::vector<AgendaItem>& all,
                   const AgendaPlan& agenda, const Latests& latests, const View& view, const Moment& moment) {
  const auto deadlines = deadlines_of(which, all, agenda, latests, moment);
  const auto first =
      std::find_if(deadlines.begin(), deadlines.end(), [](const Deadline& d) { return d.spare; });
  if (deadlines.empty())
    out.text = "Nothing is planned that could be late.";
  else if (first == deadlines.end())
    out.text = sentence(fmt::format("{} no promised day: nothing must begin by any time.",
                                    which.job ? named(*which.job) + " has" : "what is planned has"));
  else
    out.text = sentence(tightest_words(*first, agenda, latests, view, moment) + ".");
  if (which.job && first != deadlines.end()) {
    const auto press = std::find_if(deadlines.begin(), deadlines.end(),
                                    [](const Deadline& d) { return d.item.task.stage == "press"; });
    if (press != deadlines.end() && press != first && press->spare)
      out.text += fmt::format(" Press it by {}.", begin_by_words(press->item, agenda, latests, moment));
    out.text += fmt::format(
        " Promised for {}.",
        day_words(
            moment.zone.local(*agenda.what.problem.jobs[first->item.at_job].due - std::chrono::seconds{1})
                .day,
            moment));
  }
  out.reason =
      "By when each must begin if nothing else comes in its way; the recheck has its full time after the "
      "press, as far as the plan leaves it.";
  if (deadlines.empty()) return;
  out.table = Table{{"job", "work", "planned", "begin by", "to spare"}, {}};
  for (const Deadline& d : deadlines) {
    if (out.table->rows.size() == 60) break;
    out.table->rows.push_back({std::to_string(d.item.job), work_words(d.item), when_words(d.item, moment),
                               begin_by_words(d.item, agenda, latests, moment), spare_words(d.spare)});
  }
}

std::string outlooks_words(const AgendaPlan& agenda, const Moment& moment) {
  std::vector<std::string> late, risk;
  for (std::size_t j = 0; j < agenda.plan.jobs.size(); ++j) {
    if (agenda.what.jobs[j].job == 0) continue;
    const Outlook o = outlook_of(agenda, j, moment);
    if (o.state == Outlook::State::late)
      late.push_back(fmt::format("job {} by {}", agenda.what.jobs[j].job, span_words(o.late)));
    if (o.state == Outlook::State::at_risk) risk.push_back(fmt::format("job {}", agenda.what.jobs[j].job));
  }
  std::string out;
  if (!late.empty()) out += fmt::format(" Late by this plan: {}.", fmt::join(late, ", "));
  if (!risk.empty()) out += fmt::format(" Less than half a day to spare: {}.", fmt::join(risk, ", "));
  return out.empty() ? " Every promised day holds." : out;
}

namespace {

std::string ready_words(const Outlook& o, const Moment& moment) {
  if (!o.ready) return "-";
  const Instant last = *o.ready - std::chrono::seconds{1};
  return fmt::format("{} {}", day_words(moment.zone.local(last).day, moment), part_of_day(last, moment));
}

} // namespace

void say_outlooks(Answer& out, const std::optional<Job>& job, const AgendaPlan& agenda, const View& view,
                  const Moment& moment) {
  Table table{{"job", "", "promised", "ready", ""}, {}};
  for (std::size_t j = 0; j < agenda.plan.jobs.size(); ++j) {
    const std::int64_t id = agenda.what.jobs[j].job;
    if (id == 0 || (job && job->id != id)) continue;
    const Outlook o = outlook_of(agenda, j, moment);
    const auto& due = agenda.what.problem.jobs[j].due;
    const std::string promised =
        due ? day_words(moment.zone.local(*due - std::chrono::seconds{1}).day, moment) : "-";
    const auto there = view.jobs().find(id);
    table.rows.push_back({std::to_string(id), there ? there->instrument : "", promised,
                          ready_words(o, moment), due ? words_of(o) : "no day promised"});
    if (job)
      out.text = o.ready
                     ? sentence(fmt::format("{} is ready {}: {}.", named(*job), ready_words(o, moment),
                                            due ? fmt::format("promised for {}, {}", promised, words_of(o))
                                                : "no day is promised"))
                     : sentence(fmt::format("{} has no place in the plan.", named(*job)));
  }
  if (job && table.rows.empty())
    out.text = sentence(fmt::format("nothing is left to do for {}: it can be handed over.", named(*job)));
  else if (!job)
    out.text = table.rows.empty() ? "No job is open." : outlooks_words(agenda, moment).substr(1);
  if (!job && !table.rows.empty()) out.table = std::move(table);
  if (!agenda.what.problem.jobs.empty()) out.reason = "By the agenda. " + proof_of(agenda.plan);
}

} // namespace nutward::shop
