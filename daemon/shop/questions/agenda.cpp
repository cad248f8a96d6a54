// The agenda: who does what when, what comes next and why, and how busy machines and people are.
#include "shop/agenda_next.hpp"
#include "shop/commands/frets.hpp"
#include "shop/days_asked.hpp"
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
  DaysAsked days;
  std::string range; // "the next 7 days"
};

Part asked_for(const Args& args, const Moment& moment, const View& view) {
  Part out;
  const Day today = moment.zone.local(moment.now).day;
  out.days = days_asked(args, moment, args.has("job") ? 60 : 7, 60);
  if (out.days.first + out.days.count <= today) {
    throw Problem(Fault::value,
                  fmt::format("{} is over: nothing is planned for it.", hours::human(out.days.first)),
                  "day_on", "Ask what happened then, such as: what happened yesterday.");
  }
  out.range = args.has("job") && !out.days.said ? "" : words_of(out.days, moment);
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
  const Stretch asked = stretch_of(part.days, moment);
  const Instant from = std::max(moment.now, asked.from), to = asked.to;
  std::vector<AgendaItem> out;
  for (const AgendaItem& i : all) {
    const bool late = !i.fixed && i.start <= moment.now && from == moment.now;  // should have been begun
    if (!is_of(i, part) || (i.end <= from && !late) || i.start >= to) continue; // below: no work while closed
    const Instant a = std::max(i.start, from), b = std::min(i.end, to);
    if (i.fixed || late || hours::open_between(moment.calendar, moment.zone, a, b).count() > 0)
      out.push_back(i);
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

// `from`: the beginning of what is shown; what began before it goes on then.
Table by_people(const std::vector<AgendaItem>& items, Instant from, const View& view, const Moment& moment) {
  std::vector<Lump> lumps;
  for (const AgendaItem& i : items) {
    const Instant shown = std::max(i.start, from);
    Lump one{moment.zone.local(shown).day,
             part_of_day(shown, moment),
             i.person.person == 0 ? "-" : name_of(i.person, view),
             job_words(i, view),
             {}};
    std::string work = work_words(i);
    if (i.task.stage.empty()) work += " " + name_of(i.machine, view);
    if (i.start < from && (i.fixed || from > moment.now))
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

Table by_machine(const std::vector<AgendaItem>& items, Instant from, const View& view, const Moment& moment) {
  Table out{{"day", "when", "work", "job", "who", "at", ""}, {}};
  std::optional<Day> day;
  for (const AgendaItem& i : items) {
    if (out.rows.size() == most_rows) break;
    const Day d = moment.zone.local(std::max(i.start, from)).day;
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
  if (part.machine && part.person) return fmt::format("{} on {}", part.person->name, named(*part.machine));
  if (part.machine) return named(*part.machine);
  return part.person ? part.person->name : "";
}

std::string lead_of(const Part& part, const std::vector<AgendaItem>& items, const AgendaPlan& agenda,
                    const View& view, const Moment& moment) {
  const std::string who = whose(part), range = part.range;
  if (agenda.what.problem.jobs.empty()) return "Nothing is planned: no job is open and nothing is booked.";
  if (items.empty())
    return sentence(fmt::format("nothing is planned{}{} {}.", who.empty() ? "" : " for ", who,
                                words_of(part.days, moment, true)));
  std::set<std::int64_t> jobs;
  for (const AgendaItem& i : items)
    jobs.insert(i.job);
  jobs.erase(0);
  const Instant from = std::max(moment.now, stretch_of(part.days, moment).from);
  const auto begins =
      std::find_if(items.begin(), items.end(), [&](const AgendaItem& i) { return i.start >= from; });
  const AgendaItem& first = begins == items.end() || from == moment.now ? items.front() : *begins;
  std::string out = fmt::format("{}{}{}: {} of {}.", who, who.empty() || range.empty() ? "" : ", ", range,
                                plural(std::ssize(items), "piece of work", "pieces of work"),
                                plural(std::ssize(jobs), "job"));
  out += fmt::format(" First, {}: {}{}.", when_words(first, moment), to_do_words(first, view),
                     first.person.person == 0 || part.person ? "" : " (" + name_of(first.person, view) + ")");
  return sentence(out);
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
  out.table = Table{{"when", "who", "work", "at", "begin by", "to spare"}, {}};
  for (const AgendaItem& i : c.next)
    out.table->rows.push_back({when_words(i, moment), i.person.person == 0 ? "-" : name_of(i.person, view),
                               to_do_words(i, view), i.machine.machine == 0 ? "-" : name_of(i.machine, view),
                               begin_by_words(i, agenda, latests, moment),
                               spare_words(spare_of(i, agenda, latests, moment))});
  out.cautions = command_rows::hazards_for(next.task.stage);
  offer(out, next, view, moment);
  if (next.job != 0) out.about.args = {{"job", ref(Thing::job, next.job)}};
}

void say_days(Answer& out, const Part& part, const std::vector<AgendaItem>& items, const AgendaPlan& agenda,
              const View& view, const Moment& moment) {
  out.text = lead_of(part, items, agenda, view, moment);
  if (!agenda.plan.jobs.empty()) out.text += outlooks_words(agenda, moment);
  if (!items.empty()) {
    const Instant from = std::max(moment.now, stretch_of(part.days, moment).from);
    out.table = part.machine ? by_machine(items, from, view, moment) : by_people(items, from, view, moment);
    if (out.table->rows.size() == most_rows)
      out.reason = "The table is cut short: ask for a day, a person or a machine. ";
  }
  const std::string decides = bottleneck_words(agenda, view, moment);
  out.reason += decides.empty() ? "" : decides + " ";
  if (!agenda.what.problem.jobs.empty()) out.reason += proof_of(agenda.plan);
}

WhichFree free_asked(const Part& part, const Args& args, const Moment& moment) {
  const Stretch asked = stretch_of(part.days, moment);
  WhichFree out{part.machine,
                part.person,
                std::max(moment.now, asked.from),
                asked.to,
                words_of(part.days, moment, true),
                args.opt<Instant>("begins")};
  if (!out.at) return out;
  if (args.has("day")) out.at = moment.zone.instant(part.days.first, moment.zone.local(*out.at).s);
  const Day day = moment.zone.local(*out.at).day;
  out.from = *out.at, out.to = moment.zone.instant(day, 86400);
  return out;
}

Answer ask(const Args& args, const Moment& moment, const View& view) {
  const Part part = asked_for(args, moment, view);
  const AgendaPlan agenda = agenda_of(view, moment.calendar, moment.zone, moment.now);
  const auto all = items_of(agenda);
  auto items = items_in(all, part, moment);
  const Latests latests(agenda, view, moment);
  const Loads loads = loads_of(agenda, moment, weeks_ahead);
  const auto troubles = troubles_of(agenda, view, moment);
  Answer out;
  if (args.yes("load"))
    say_load(out, part.machine, part.person, part.days.week == "next" ? 1 : 0, loads, agenda, view, moment);
  else if (args.yes("free"))
    say_free(out, free_asked(part, args, moment), all, agenda, view, moment);
  else if (args.yes("ready"))
    say_outlooks(out, part.job, agenda, view, moment);
  else if (args.yes("deadlines"))
    say_deadlines(out, {part.job, part.machine, part.person}, all, agenda, latests, view, moment);
  else if (args.yes("next") && !part.days.said)
    say_next(out, part, all, agenda, latests, view, moment);
  else
    say_days(out, part, items, agenda, view, moment);
  out.reason += words_of(troubles, 3) + age_of(agenda, moment);
  if (out.reason.starts_with(' ')) out.reason.erase(0, 1);
  if (items.size() > most_items) items.resize(most_items);
  out.data = data_of(agenda, items, latests, loads, data_of(troubles), view, moment);
  out.picture = week_picture(all, agenda, {part.days.first, part.days.count}, out, view, moment);
  if (part.machine) out.about.args.emplace_back("machine", ref(Thing::machine, part.machine->id));
  if (part.job) out.about.args.emplace_back("job", ref(Thing::job, part.job->id));
  return out;
}

} // namespace

namespace {

// When: a day, a part of it, several days, a week.
const std::string when =
    " [on|for|in] (from {day} (to|until|till|-) {last}|{day} [(to|until|till|-) {last}]|{day} [in the] "
    "{part}|this "
    "{part}|tonight {part=evening}|[what is] [the] rest of (the|this) week {week=this}|(this|the) week "
    "{week=this}|next week {week=next}|[the] next {days} days)";

std::vector<std::string_view> phrases() {
  static const std::string maybe = " [" + when.substr(1) + "]", plan = "(agenda|schedule|plan|work plan)";
  static const std::vector<std::string> made{
      "[show] [me] [the|our] " + plan + maybe,
      "[show] [me] [the|our] " + plan + " [for|of|on] ({person}|{machine}|{job})" + maybe,
      "[show] [me] (my|mine) {mine=yes} (agenda|schedule|work plan|plan|day|week)" + maybe,
      "what is [the|our] " + plan + " [for|of|on] [({person}|{machine}|{job})]" + maybe,
      ("[show] [me] (this|the) week {week=this} [by (machine|machines|person|people)] [(for|of|on) "
       "({machine}|{person})]"),
      ("[show] [me] next week {week=next} [by (machine|machines|person|people)] [(for|of|on) "
       "({machine}|{person})]"),
      "week [plan] (for|of|on|by) ({machine}|{person}|machine) {week=this}",
      "week plan {week=this}",
      ("what (should|shall|must|can|could|do) (i {mine=yes}|we) (do|start|begin|work on) [with] "
       "[next|now|first] {next=yes}"),
      "(what|which job) (is|comes) next [up] {next=yes} [(for|on|at) ({person}|{machine})]",
      "what next {next=yes}",
      "what now {next=yes}",
      "what (needs|wants) (doing|to be done) [next|now|first] {next=yes}",
      "what (should|shall|must|can|does) {person} (do|start|work on) (next|now|first) {next=yes}",
      "what (is|comes) next for me {mine=yes} {next=yes}",
      "why (that|this|it) (next|first|now) {next=yes} {mine=yes}",
      ("i (am free|have time|have nothing to do|have an hour|am idle) {mine=yes} {next=yes} [what "
       "(can|should) i do]"),
      "give me (something|work) [to do] {mine=yes} {next=yes}",
      "where (do|should) i (start|begin|go on) {mine=yes} {next=yes}",
      "what (am i {mine=yes}|are we|is {person}) (doing|at|up to|working on) [now] {next=yes}",
      "what (do|should|must|shall|will) (i {mine=yes}|we) (do|have)" + when,
      "what (have i got {mine=yes}|have we got|do we have|have we) [on|planned|to do]" + when,
      "what (does|should|must|will) {person} (do|have)" + when,
      "what (am i {mine=yes}|are we|is {person}) (doing|at|working on)" + when,
      "what (is|are) (planned|on|scheduled|up) [on|for|at]" + when,
      "what (is|are) (planned|on|scheduled) [on|for|at] ({machine}|{person})" + maybe,
      "what is [still] left [to do|to be done]" + when,
      "(what is|who is|who works) (on|at) {machine} {day}",
      "(when|what day) (is|does|will) {job} [go|be|come] (in|under|on|at|into) {machine}",
      "when (do|will) (i|we) (work on|do|get to) {job}",
      "when (is|does) {job} (planned|scheduled|start|begin)",
      "when is {machine} (busy|taken|wanted|in use|needed)",
      "(what|which work|which jobs) (goes|go|comes|come) on {machine}" + maybe,
      "when is ({machine}|{person}) free [next] {free=yes}" + maybe,
      "when am i free {mine=yes} {free=yes}" + maybe,
      "is ({machine}|{person}) free {free=yes}" + when,
      "is ({machine}|{person}) free [on] [{day}] at {begins} {free=yes}",
      "(is there|have we) [any|some] [free] (time|room) (on|at) {machine} {free=yes}" + maybe,
      "can (i|we|{person}) (have|use|get) {machine} [on] [{day}] at {begins} {free=yes}",
      "can (i|we|{person}) (have|use|get) {machine} {free=yes}" + when,
      "who (is free|has time) {free=yes}" + maybe,
      ("how (busy|loaded|full) (is|are) {load=yes} ({machine}|{person}|we|the shop|the machines|this "
       "week|next week {week=next}) [this week|next week {week=next}|in the coming weeks]"),
      "how busy am i {mine=yes} {load=yes}",
      "(which|what) machine (decides|is busiest|is the busiest|is the bottleneck|holds us up) {load=yes}",
      "(what|where|which) is [the|our] bottleneck {load=yes}",
      "[the|our] bottleneck {load=yes}",
      "what (holds|is holding) (us|everything) up {load=yes}",
      ("[show] [the] [machine|machines] load [of|on|for] [({machine}|{person})] [(of|in|for) the "
       "(next|coming) weeks] {load=yes}"),
      "how much work (do we have|have we|is there) {load=yes} [(for|on|at) ({machine}|{person})]",
      "[the] (slack|leeway) [(of|for|on) ({job}|{machine}|{person})] {deadlines=yes}",
      "(what|where|how much) is the (slack|leeway) [(of|for|on) ({job}|{machine}|{person})] {deadlines=yes}",
      ("how much (slack|leeway|time to spare) (is there|do we have|have we) [(for|on|with) {job}] "
       "{deadlines=yes}"),
      "how much (slack|leeway|time) (does|has) {job} [have|left|got] {deadlines=yes}",
      "how much time (do we have|have we|is there|is left) [left] (for|on) {job} {deadlines=yes}",
      "[what are] [the] deadlines [(of|for|on) ({job}|{machine}|{person})] {deadlines=yes}",
      ("(when|by when|how late) (must|can|may|should) {job} be "
       "(started|begun|cut|dressed|seated|pulled|bent) "
       "[at the latest] {deadlines=yes}"),
      ("(when|by when) (must|do|should) (i|we) [have to] (start|begin) [on|with] {job} [at the latest] "
       "{deadlines=yes}"),
      "(what|which job|which) is [the] (tightest|most urgent|urgent) {deadlines=yes}",
      "[the] latest (start|beginning) of {job} {deadlines=yes}",
      "(when|what day|which day) (is|will|would) {job} [be] (ready|done|finished) [by the plan] {ready=yes}",
      ("(is|will) {job} [be] (late|in time|on time|ready in time|done in time|finished in time|ready on "
       "time) "
       "{ready=yes}"),
      ("(are we|what is|which jobs are|which are|is anything|are any jobs) [running] (late|behind|at risk|in "
       "danger) {ready=yes}"),
      "(do|will) we keep [all] [our] (promises|promise) {ready=yes}",
      "when are [all] [the] jobs (ready|done|finished) {ready=yes}",
      "who (does|is doing|works on) what" + maybe};
  return {made.begin(), made.end()};
}

} // namespace

extern const Question agenda_question;
const Question agenda_question{
    {"agenda",
     ("Who does what when: for everybody, a person, a machine or a job; what comes next and why; how busy; "
      "when "
      "free; what must begin by when."),
     {{"person", Kind::person, false, false, "only theirs"},
      {"mine", Kind::yes, false, false, "only yours"},
      {"machine", Kind::machine, false, false, "only on this one"},
      takes::optional(takes::job),
      {"day", Kind::day, false, false, "only that day; from today on where it is not said"},
      takes::last_day,
      takes::part_of_day,
      takes::week,
      {"days", Kind::count, false, false, "how many days; 7, or that day alone", {1, 60}},
      {"next", Kind::yes, false, false, "only what comes next, and why"},
      {"load", Kind::yes, false, false, "how busy machines and people are, and which of them decides"},
      {"free", Kind::yes, false, false, "when a machine or a person has nothing to do"},
      {"begins", Kind::at, false, false, "whether it is free then"},
      {"deadlines", Kind::yes, false, false, "by when what must begin, and what there is to spare"},
      {"ready", Kind::yes, false, false, "when each job is ready, and which will be late"}},
     phrases(),
     {"agenda", "what should I do next", "agenda for the press", "what does Ines do tomorrow",
      "how busy are the machines", "when is the press free", "deadlines", "when will job 1 be ready"},
     Role::look,
     gives_of_agenda()},
    &ask,
    true};

} // namespace nutward::shop::question_rows
