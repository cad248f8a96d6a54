// The agenda: who does what when, what comes next and why, and how busy machines and people are.
#include "shop/agenda_next.hpp"
#include "shop/commands/frets.hpp"
#include "shop/machines.hpp"
#include "shop/people.hpp"

#include <set>

namespace nutward::shop::question_rows {

namespace {

using std::chrono::seconds;

constexpr std::size_t most_rows = 80, most_items = 1000;
constexpr int weeks_ahead = 4;

// What was asked for.
struct Part {
  std::optional<Actor> person;
  std::optional<Machine> machine;
  std::optional<Job> job;
  Day first;
  int days = 7;
  bool of_a_day = false;
};

Part part_of(const Args& args, const Moment& moment, const View& view) {
  Part out;
  const Day today = moment.zone.local(moment.now).day;
  out.first = args.opt<Day>("day").value_or(today);
  if (out.first < today) {
    throw Problem(Fault::value,
                  fmt::format("{} is over: nothing is planned for it.", hours::human(out.first)), "day_on",
                  "Ask what happened then, such as: what happened yesterday.");
  }
  out.of_a_day = args.has("day");
  out.days = static_cast<int>(args.or_else<std::int64_t>("days", out.of_a_day ? 1 : 7));
  if (args.has("person"))
    out.person = person_of(args, view, false);
  else if (args.yes("mine"))
    out.person = view.house().actor(moment.who.actor);
  if (args.has("machine")) out.machine = machine_of(args, view);
  if (args.has("job")) out.job = job_of(args, view);
  return out;
}

bool is_of(const AgendaItem& i, const Part& part) {
  return (!part.person || i.person.person == part.person->id) &&
         (!part.machine || i.machine.machine == part.machine->id) && (!part.job || i.job == part.job->id);
}

std::vector<AgendaItem> items_in(const std::vector<AgendaItem>& all, const Part& part, const Moment& moment) {
  const Instant from = std::max(moment.now, moment.zone.instant(part.first, 0));
  const Instant to = moment.zone.instant(part.first + part.days, 0);
  std::vector<AgendaItem> out;
  for (const AgendaItem& i : all) {
    const bool late = !i.fixed && i.start <= moment.now && from == moment.now; // should have been begun
    if (is_of(i, part) && (i.end > from || late) && i.start < to) out.push_back(i);
  }
  return out;
}

// One line: what one person does for one job in one part of a day.
struct Lump {
  Day day;
  std::string when, who, job;
  std::vector<std::string> works;
};

std::string job_words(const AgendaItem& i, const View& view) {
  const auto job = i.job == 0 ? std::nullopt : view.jobs().find(i.job);
  return job ? named(*job) : "-";
}

Table by_people(const std::vector<AgendaItem>& items, const View& view, const Moment& moment) {
  std::vector<Lump> lumps;
  for (const AgendaItem& i : items) {
    const Instant shown = std::max(i.start, moment.now);
    Lump one{moment.zone.local(shown).day,
             part_of_day(shown, moment),
             i.person.person == 0 ? "-" : name_of(i.person, view),
             job_words(i, view),
             {}};
    std::string work = work_words(i);
    if (i.task.stage.empty()) work += " " + name_of(i.machine, view);
    if (i.fixed && i.start <= moment.now)
      work += " (goes on)";
    else if (i.scarce || i.fixed)
      work += " at " + clock_words(shown, moment);
    const auto there = std::find_if(lumps.begin(), lumps.end(), [&](const Lump& l) {
      return l.day == one.day && l.when == one.when && l.who == one.who && l.job == one.job;
    });
    if (there == lumps.end())
      lumps.push_back(std::move(one)), lumps.back().works.push_back(work);
    else
      there->works.push_back(work);
  }
  Table out{{"day", "when", "who", "job", "work"}, {}};
  std::optional<Day> day;
  for (const Lump& l : lumps) {
    if (out.rows.size() == most_rows) break;
    out.rows.push_back({day == l.day ? "" : day_words(l.day, moment), l.when, l.who, l.job,
                        fmt::format("{}", fmt::join(l.works, ", "))});
    day = l.day;
  }
  return out;
}

Table by_machine(const std::vector<AgendaItem>& items, const View& view, const Moment& moment) {
  Table out{{"day", "when", "work", "job", "who", "at", ""}, {}};
  std::optional<Day> day;
  for (const AgendaItem& i : items) {
    if (out.rows.size() == most_rows) break;
    const Day d = moment.zone.local(std::max(i.start, moment.now)).day;
    const std::string state = i.task.booking != 0 ? "booked" : i.fixed ? "begun" : "";
    out.rows.push_back({day == d ? "" : day_words(d, moment),
                        fmt::format("{}-{}", clock_words(i.start, moment), clock_words(i.end, moment)),
                        work_words(i), job_words(i, view),
                        i.person.person == 0 ? "-" : name_of(i.person, view), name_of(i.machine, view),
                        state});
    day = d;
  }
  return out;
}

std::string whose(const Part& part) {
  if (part.job) return named(*part.job);
  if (part.machine) return named(*part.machine);
  return part.person ? part.person->name : "";
}

std::string range_words(const Part& part, const Moment& moment) {
  if (part.of_a_day && part.days == 1) return day_words(part.first, moment);
  return fmt::format("the next {}", plural(part.days, "day"));
}

// " Late by this plan: job 4 by 2 days. At risk: job 5."
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

std::string lead_of(const Part& part, const std::vector<AgendaItem>& items, const AgendaPlan& agenda,
                    const View& view, const Moment& moment) {
  const std::string who = whose(part), range = range_words(part, moment);
  if (agenda.what.problem.jobs.empty()) return "Nothing is planned: no job is open and nothing is booked.";
  if (items.empty())
    return sentence(fmt::format("nothing is planned{}{} {}.", who.empty() ? "" : " for ", who,
                                part.of_a_day ? range : "in " + range));
  std::set<std::int64_t> jobs;
  for (const AgendaItem& i : items)
    jobs.insert(i.job);
  jobs.erase(0);
  const AgendaItem& first = items.front();
  std::string out = fmt::format("{}{}{}: {} of {}.", who, who.empty() ? "" : ", ", range,
                                plural(std::ssize(items), "piece of work", "pieces of work"),
                                plural(std::ssize(jobs), "job"));
  out += fmt::format(" First, {}: {}{}.", when_words(first, moment), to_do_words(first, view),
                     first.person.person == 0 || part.person ? "" : " (" + name_of(first.person, view) + ")");
  return sentence(out);
}

Table load_table(const Loads& loads, const View& view, const Moment& moment) {
  Table out{{"", "rest of this week"}, {}};
  for (std::size_t w = 1; w + 1 < loads.bounds.size(); ++w)
    out.columns.push_back("from " + day_words(moment.zone.local(loads.bounds[w]).day, moment));
  for (const UnitLoad& u : loads.units) {
    std::vector<std::string> row{name_of(u.unit, view)};
    for (const agenda::Load& load : u.weeks)
      row.push_back(load_words(load));
    out.rows.push_back(std::move(row));
  }
  return out;
}

void say_load(Answer& out, const Part& part, Loads loads, const AgendaPlan& agenda, const View& view,
              const Moment& moment) {
  std::erase_if(loads.units, [&](const UnitLoad& u) {
    return (part.machine && u.unit.machine != part.machine->id) ||
           (part.person && u.unit.person != part.person->id);
  });
  std::string busiest;
  int most = -1;
  for (const UnitLoad& u : loads.units) {
    const int p = u.weeks.empty() ? 0 : percent_of(u.weeks.front());
    if (p > most) most = p, busiest = name_of(u.unit, view);
  }
  const std::string decides = bottleneck_words(agenda, view, moment);
  out.text = most < 0
                 ? "Nothing is there that could be busy."
                 : sentence(fmt::format("{} is taken for {} % of what is left of this week.", busiest, most));
  if (!decides.empty()) out.text += " " + decides;
  out.table = load_table(loads, view, moment);
  out.reason = "Work that is planned, begun or booked, of the open hours of each.";
}

void offer(Answer& out, const AgendaItem& i, const View& view, const Moment& moment) {
  const bool theirs = i.person.person == moment.who.actor;
  if (!theirs || i.fixed || i.job == 0 || i.start > moment.now + let_pass) return;
  const Ref job{Thing::job, i.job};
  out.choices.push_back({fmt::format("begin: {} job {}", i.task.stage, i.job),
                         Call{"start", {{"job", job}, {"stage", i.task.stage}}},
                         {seen(job, view)}});
}

void say_next(Answer& out, const Part& part, const std::vector<AgendaItem>& all, const AgendaPlan& agenda,
              const Latests& latests, const View& view, const Moment& moment) {
  std::vector<AgendaItem> mine;
  for (const AgendaItem& i : all)
    if (is_of(i, part)) mine.push_back(i);
  const Coming c = coming(mine, part.person ? part.person->id : 0, moment, 6);
  const std::string who = whose(part);
  if (!c.at.empty()) {
    const AgendaItem& at = c.at.front();
    out.text = fmt::format("{} is at {}, until about {}. ",
                           at.person.person == 0 ? "Somebody" : name_of(at.person, view),
                           to_do_words(at, view), clock_words(at.end, moment));
  }
  if (c.next.empty()) {
    out.text += sentence(fmt::format("nothing is planned{}{}.", c.at.empty() ? "" : " after that",
                                     who.empty() ? "" : " for " + who));
    const Coming others = coming(all, 0, moment, 1);
    if (part.person && !others.next.empty()) {
      const AgendaItem& i = others.next.front();
      out.text += fmt::format(" In the shop, {}: {}{}.", when_words(i, moment), to_do_words(i, view),
                              i.person.person == 0 ? "" : " (" + name_of(i.person, view) + ")");
    }
    return;
  }
  const AgendaItem& next = c.next.front();
  const std::string by =
      part.person || next.person.person == 0 ? "" : fmt::format(" ({})", name_of(next.person, view));
  out.text +=
      fmt::format("Next{}, {}: {}{}{}.", who.empty() ? "" : " for " + who, when_words(next, moment),
                  to_do_words(next, view), next.scarce ? ", at " + name_of(next.machine, view) : "", by);
  out.reason = why_words(next, agenda, latests, view, moment);
  const std::string decides = bottleneck_words(agenda, view, moment);
  if (next.scarce && !decides.empty()) out.reason += " " + decides;
  out.table = Table{{"when", "who", "work", "at", "why"}, {}};
  for (const AgendaItem& i : c.next)
    out.table->rows.push_back({when_words(i, moment), i.person.person == 0 ? "-" : name_of(i.person, view),
                               to_do_words(i, view), i.machine.machine == 0 ? "-" : name_of(i.machine, view),
                               why_words(i, agenda, latests, view, moment)});
  out.cautions = command_rows::hazards_for(next.task.stage);
  offer(out, next, view, moment);
  if (next.job != 0) out.about.args = {{"job", ref(Thing::job, next.job)}};
}

void say_days(Answer& out, const Part& part, const std::vector<AgendaItem>& items, const AgendaPlan& agenda,
              const View& view, const Moment& moment) {
  out.text = lead_of(part, items, agenda, view, moment);
  if (!agenda.plan.jobs.empty()) out.text += outlooks_words(agenda, moment);
  if (!items.empty()) {
    out.table = part.machine ? by_machine(items, view, moment) : by_people(items, view, moment);
    if (out.table->rows.size() == most_rows)
      out.reason = "The table is cut short: ask for a day, a person or a machine. ";
  }
  const std::string decides = bottleneck_words(agenda, view, moment);
  out.reason += decides.empty() ? "" : decides + " ";
  if (!agenda.what.problem.jobs.empty()) out.reason += proof_of(agenda.plan);
}

Answer ask(const Args& args, const Moment& moment, const View& view) {
  const Part part = part_of(args, moment, view);
  const AgendaPlan agenda = agenda_of(view, moment.calendar, moment.zone, moment.now);
  const auto all = items_of(agenda);
  auto items = items_in(all, part, moment);
  const Latests latests(agenda);
  const Loads loads = loads_of(agenda, moment, weeks_ahead);
  const auto troubles = troubles_of(agenda, view, moment);
  Answer out;
  if (args.yes("load"))
    say_load(out, part, loads, agenda, view, moment);
  else if (args.yes("next"))
    say_next(out, part, all, agenda, latests, view, moment);
  else
    say_days(out, part, items, agenda, view, moment);
  out.reason += words_of(troubles, 3) + age_of(agenda, moment);
  if (out.reason.starts_with(' ')) out.reason.erase(0, 1);
  if (items.size() > most_items) items.resize(most_items);
  out.data = data_of(agenda, items, latests, loads, data_of(troubles), view, moment);
  out.picture = week_picture(all, agenda, {part.first, part.days}, out, view, moment);
  if (part.machine) out.about.args.emplace_back("machine", ref(Thing::machine, part.machine->id));
  if (part.job) out.about.args.emplace_back("job", ref(Thing::job, part.job->id));
  return out;
}

} // namespace

extern const Question agenda_question;
const Question agenda_question{
    {"agenda",
     "Who does what when: for everybody, a person, a machine or a job; what comes next and why; how busy.",
     {{"person", Kind::person, false, false, "only theirs"},
      {"mine", Kind::yes, false, false, "only yours"},
      {"machine", Kind::machine, false, false, "only on this one"},
      takes::optional(takes::job),
      {"day", Kind::day, false, false, "from that day on; today where it is not said"},
      {"days", Kind::count, false, false, "how many days; 7, or that day alone", {1, 60}},
      {"next", Kind::yes, false, false, "only what comes next, and why"},
      {"load", Kind::yes, false, false, "how busy machines and people are, and which of them decides"}},
     {"[show] [me] [the|our] (agenda|schedule|work plan)",
      "[show] [me] [the|our] (agenda|schedule|work plan) (for|of|on) ({person}|{machine}|{job}|{day})",
      "[show] [me] [the|our] (agenda|schedule|work plan) (for|of|on) ({person}|{machine}) [for|on] {day}",
      "[show] [me] (my|mine) {mine=yes} (agenda|schedule|work plan|day) [[for|on] {day}]",
      "[show] [me] [the|our] (agenda|schedule|work plan) (for|of) (the|this|next) week {days=7}",
      "[show] [me] [the|our] (agenda|schedule|work plan) (for|of) [the next] {days} days",
      "[show] [me] (the|this) week {days=7} [by machine]",
      "what (should|shall|must|can|do) i {mine=yes} do [next|now|first] {next=yes}",
      "what (should|shall|must|can|do) we do [next|now|first] {next=yes}",
      "(what|which job) (is|comes) next [up] {next=yes} [(for|on|at) ({person}|{machine})]",
      "what next {next=yes}",
      "what now {next=yes}",
      "what (should|shall|must|can|does) {person} do (next|now|first) {next=yes}",
      "what (is|comes) next for me {mine=yes} {next=yes}",
      "why (that|this|it) (next|first|now) {next=yes} {mine=yes}",
      "what (do|should|must) i {mine=yes} do [on] {day}",
      "what (does|should|must) {person} do [on] {day}",
      "what (do|should|must) we do [on] {day}",
      "what (is|are) (planned|on|scheduled) [on|for] ({day}|{machine}|{person})",
      "what is (planned|on|scheduled) [on|at|for] {machine} [on|for] {day}",
      "(what is|who is|who works) (on|at) {machine} {day}",
      "(when|what day) (is|does|will) {job} [go|be|come] (in|under|on|at|into) {machine}",
      "when (do|will) (i|we) (work on|do|get to) {job}",
      "when (is|does) {job} (planned|scheduled|start|begin)",
      "when is {machine} (busy|taken|wanted|in use)",
      "when is {machine} (free|needed) [next]",
      "how (busy|loaded|full) (is|are) {load=yes} ({machine}|{person}|we|the shop|the machines)",
      "(which|what) machine (decides|is busiest|is the bottleneck|holds us up) {load=yes}",
      "(what|where) is the bottleneck {load=yes}",
      "[show] [the] [machine] load {load=yes} [of the [next] weeks]",
      "who does what [[on] {day}]",
      "who (does|works on) what (this|the) week {days=7}"},
     {"agenda", "what should I do next", "agenda for the press", "what does Ines do tomorrow",
      "how busy are the machines"},
     Role::look,
     gives_of_agenda()},
    &ask,
    true};

} // namespace nutward::shop::question_rows
