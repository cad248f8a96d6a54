// What falls due: rechecks, the latest press times, and promised days, with what the agenda makes of them.
#include "shop/agenda_words.hpp"
#include "shop/days_asked.hpp"

namespace nutward::shop::question_rows {

namespace {

struct Item {
  Instant when;
  std::string what, state;
  Value data;
};

std::string recheck_state(const Recheck& r, const agenda::RecheckClock& clock, Instant now) {
  if (now > clock.overdue) return "overdue";
  if (now >= r.due) return "due now";
  return now >= r.from ? "may be done" : "too early";
}

void add_rechecks(std::vector<Item>& out, const Moment& moment, const View& view) {
  for (const Recheck& r : view.jobs().waiting()) {
    const auto clock = agenda::window_clock(r.from, r.due, moment.calendar, moment.zone);
    const Job job = *view.jobs().find(r.job);
    const std::string state = recheck_state(r, clock, moment.now);
    out.push_back({r.due,
                   fmt::format("recheck {} of {}",
                               r.slots.size() == 1 ? "fret " + ranges(r.slots) : "frets " + ranges(r.slots),
                               named(job)),
                   state,
                   record({{"what", std::string("recheck")},
                           {"job", ref(Thing::job, job.id)},
                           {"slots", list_of(r.slots)},
                           {"from", r.from},
                           {"due", r.due},
                           {"overdue", clock.overdue},
                           {"state", state}})});
  }
}

std::string ready_day(const Outlook& o, const Moment& moment) {
  return o.ready ? "ready " + day_words(moment.zone.local(*o.ready - std::chrono::seconds{1}).day, moment)
                 : "";
}

// "late", "will be late by 2 days: ready Mon 7 Dec", "at risk: …", "ready Thu 3 Dec".
std::string job_state(const Job& job, const std::optional<Outlook>& o, const Moment& moment) {
  if (moment.now > *job.due) return o && o->ready ? "late: " + ready_day(*o, moment) : "late";
  if (!o) return "";
  if (o->state == Outlook::State::in_time) return ready_day(*o, moment);
  return o->ready ? words_of(*o) + ", " + ready_day(*o, moment) : words_of(*o);
}

void add_jobs(std::vector<Item>& out, const AgendaPlan& agenda, const Moment& moment, const View& view,
              const Setup& set) {
  for (const Job& job : view.jobs().open()) {
    if (!job.due) continue;
    if (const auto by = press_by(job, view, set, moment.calendar, moment.zone)) {
      const std::string state = moment.now > by->latest    ? "too late for its day"
                                : moment.now >= by->remind ? "soon"
                                                           : "";
      out.push_back({by->latest, fmt::format("press {} by then", named(job)), state,
                     record({{"what", std::string("press")},
                             {"job", ref(Thing::job, job.id)},
                             {"slots", list({})},
                             {"latest_at", by->latest},
                             {"state", state}})});
    }
    const auto outlook = outlook_of(agenda, job.id, moment);
    const std::string state = job_state(job, outlook, moment);
    std::vector<std::pair<std::string, Value>> data{{"what", std::string("job")},
                                                    {"job", ref(Thing::job, job.id)},
                                                    {"slots", list({})},
                                                    {"due", *job.due},
                                                    {"state", state}};
    if (outlook && outlook->ready) data.emplace_back("ready", *outlook->ready);
    out.push_back({*job.due, fmt::format("{} is promised", named(job)), state, record(std::move(data))});
  }
}

// Jobs that the agenda cannot have ready by their day, however far ahead that is.
std::string late_words(const AgendaPlan& agenda, const Moment& moment) {
  std::vector<std::string> late;
  for (std::size_t j = 0; j < agenda.plan.jobs.size(); ++j) {
    if (agenda.what.jobs[j].job == 0) continue;
    const Outlook o = outlook_of(agenda, j, moment);
    if (o.state == Outlook::State::late)
      late.push_back(fmt::format("job {} by {}", agenda.what.jobs[j].job, span_words(o.late)));
  }
  return late.empty() ? "" : fmt::format(" Late by the agenda: {}.", fmt::join(late, ", "));
}

// Whom reminders do not reach: their messages are kept, and somebody must look after them.
std::string unreached(const View& view) {
  std::string out;
  for (const Receiver& r : view.house().receivers()) {
    if (!r.failing && !r.disabled) continue;
    const std::int64_t n = view.outbox().undelivered(r.id);
    out += fmt::format(" Receiver {} {}: {} for it.", r.name,
                       r.disabled ? "wants nothing any more" : "has not answered for days",
                       plural(n, "message waits", "messages wait"));
  }
  return out;
}

struct Asked {
  Instant from, until; // until: not itself
  std::string words;   // "within 7 days", "this week", "on Fri 27 Nov", "by Fri 27 Nov"
};

Asked asked_for(const Args& args, const Moment& moment) {
  if (args.has("by")) {
    const Day by = args.get<Day>("by");
    return {moment.now, moment.zone.instant(by, 86400), "by " + day_words(by, moment)};
  }
  // All of a job is told, however far ahead it lies.
  const int usual = args.has("job") || args.has("only") ? 60 : 7;
  const DaysAsked days = days_asked(args, moment, usual, 366);
  if (!args.has("day") && !args.has("part") && !args.has("week")) {
    const Instant until = moment.now + std::chrono::hours(24 * days.count) + std::chrono::seconds{1};
    return {moment.now, until, fmt::format("within {}", plural(days.count, "day"))};
  }
  const Stretch s = stretch_of(days, moment);
  return {s.from, s.to, words_of(days, moment, true)};
}

bool is_meant(const Item& i, const Args& args) {
  const auto& data = std::get<std::shared_ptr<const Node>>(i.data);
  if (args.has("only") && std::get<std::string>(*data->find("what")) != args.text("only")) return false;
  if (args.yes("overdue") && i.state != "overdue" && !i.state.starts_with("late") &&
      !i.state.starts_with("too late"))
    return false;
  return !args.has("job") || std::get<Ref>(*data->find("job")).id == args.id("job");
}

std::string what_words(const Args& args) {
  const std::string only = args.text("only");
  return args.yes("overdue") ? "Nothing overdue"
         : only == "recheck" ? "No recheck"
         : only == "press"   ? "No pressing"
         : only == "job"     ? "No job"
                             : "Nothing";
}

Answer ask(const Args& args, const Moment& moment, const View& view) {
  const Setup set = setup(view);
  std::vector<Item> items;
  add_rechecks(items, moment, view);
  const AgendaPlan agenda = agenda_of(view, moment.calendar, moment.zone, moment.now);
  add_jobs(items, agenda, moment, view, set);
  std::stable_sort(items.begin(), items.end(), [](const Item& a, const Item& b) { return a.when < b.when; });
  const Asked asked = asked_for(args, moment);
  std::erase_if(items, [&](const Item& i) {
    return i.when >= asked.until || (i.when < asked.from && i.when > moment.now) || !is_meant(i, args);
  });
  Answer out;
  std::vector<std::string> now;
  std::vector<Value> all;
  if (!items.empty()) out.table = Table{{"when", "what", ""}, {}};
  for (const Item& i : items) {
    out.table->rows.push_back({moment.zone.human(i.when), i.what, i.state});
    all.push_back(i.data);
    if (i.when <= moment.now) now.push_back(i.what + " (" + i.state + ")");
  }
  const std::string what = what_words(args);
  if (!now.empty())
    out.text = fmt::format("Due now: {}.", fmt::join(now, "; "));
  else if (!items.empty())
    out.text = fmt::format("{} is due now; next: {}, {}.", what, items.front().what,
                           moment.zone.human(items.front().when));
  else
    out.text =
        args.yes("overdue") ? "Nothing is overdue." : fmt::format("{} falls due {}.", what, asked.words);
  out.reason = fmt::format("A recheck may be done from {} h after pressing and is due at {} h.",
                           set.recheck.from_h, set.recheck.due_h) +
               late_words(agenda, moment) + unreached(view);
  out.data = record({{"due", list(std::move(all))}, {"now", static_cast<std::int64_t>(now.size())}});
  if (args.has("job")) out.about.args = {{"job", ref(Thing::job, args.id("job"))}};
  return out;
}

} // namespace

namespace {

std::vector<std::string_view> phrases() {
  static const std::string when = " [on|for|in] ({day}|(by|until|before) {by}|this {part}|tonight "
                                  "{part=evening}|{day} [in the] {part}|[the] rest of (the|this) "
                                  "week {week=this}|(this|the) week {week=this}|next week {week=next}|[the] "
                                  "next {days} days|now|soon|next)";
  static const std::string maybe = " [" + when.substr(1) + "]";
  static const std::string again = "(recheck|check again|look at again|looked at again|rechecked)";
  static const std::vector<std::string> made{
      "(what|anything|is anything|is there anything|something) [is|falls|comes|that is] (due|to do)" + maybe,
      "what (is|are) (coming up|coming|to come)" + maybe,
      "[show] [me] [what] [is] due" + maybe,
      "(what|which jobs|what jobs|which) (must|have to|has to|should|need to) (be ready|be done|be "
      "finished|go out|leave|be handed over) "
      "{only=job}" +
          maybe,
      "(what|which jobs|what jobs|which|what job|which job) (is|are|goes|go|is going) (due "
      "out|out|promised|ready to go out|wanted|due to go out) "
      "{only=job}" +
          maybe,
      "(which|what) jobs (are|fall|come) due {only=job}" + maybe,
      "[show|what are] [the|our] (due dates|due days|promises|promised days|delivery days) {only=job}" +
          maybe,
      "what (do i|do we|must i|must we|should i|should we|have i to|have we to) [have to] " + again +
          " {only=recheck}" + maybe,
      "(what|which job|which jobs|which frets) (needs|need|wants|want|must be|has to be|have to be|should "
      "be|is to be|are to be) [a|to be] " +
          again + " {only=recheck}" + maybe,
      "[show|any|which|what|are there|are there any] [the] (recheck|rechecks) [is|are|falls|fall] "
      "[due|waiting|to do|open] "
      "{only=recheck}" +
          maybe,
      "(what|anything|is anything|which jobs are) [is|falls] (overdue|past due) {overdue=yes}",
      "overdue {overdue=yes}",
      "(are we|am i) (overdue|behind) with (anything|something) {overdue=yes}",
      "what (do i|do we|must i|must we|should i|should we|have i to|have we to) [have to] press "
      "{only=press}" +
          maybe,
      "(what|which jobs|which job) (needs|need|must be|has to be|have to be|should be|is to be|wants) [to "
      "be] (pressed|pressing) "
      "{only=press}" +
          maybe,
      "[what is] [the] [latest] press by [dates|days|date|day] [(for|of) {job}] {only=press}",
      "[the] latest (pressing|press day|press time|day to press) [(for|of) {job}] {only=press}",
      "(what|anything) [is|falls] due (for|on|with) {job}",
      "[when is] [the] recheck (of|for) {job} [due] {only=recheck}",
      "(when|by when) (do|must|should) (i|we) (look at|check|recheck) {job} [again] {only=recheck}",
      "(when|by when) (must|should|does|has) {job} [have to|to|need to] be pressed [at the latest]",
      "(when|by when) (must|should|do) (i|we) [have to] press {job} [at the latest]",
      "when is {job} (due|promised|wanted)",
      "(what|which) day is {job} (due|promised for|promised)",
      "[the] (due date|due day|deadline) of {job}",
      "[what are] [the] deadlines {only=job}" + when,
      "what is due in [the next] {days} days"};
  return {made.begin(), made.end()};
}

} // namespace

extern const Question due;
const Question due{
    {"due",
     "What falls due: rechecks, the latest press times, promised days.",
     {takes::optional(takes::job),
      {"day", Kind::day, false, false, "only on that day"},
      takes::last_day,
      takes::part_of_day,
      takes::week,
      {"by", Kind::day, false, false, "up to that day, it included"},
      {"days", Kind::count, false, false, "how far to look ahead; 7, and 60 of one job or kind", {1, 366}},
      {"only", Kind::one_of, false, false, "only such", {}, {"recheck", "press", "job"}},
      {"overdue", Kind::yes, false, false, "only what is late already, or too late to be in time"}},
     phrases(),
     {"due", "what is due", "when is the recheck of job 1", "what is due this week", "rechecks",
      "when is job 1 due"},
     Role::look,
     {gives::records("due", "by the time it falls due",
                     {gives::one_of("what", "what falls due", {"recheck", "press", "job"}),
                      gives::job,
                      {"slots", Kind::slot, "of a recheck; else empty", Often::many},
                      {"from", Kind::at, "when a recheck may be done", Often::at_times},
                      {"due", Kind::at, "of a recheck or a job", Often::at_times},
                      {"overdue", Kind::at, "of a recheck", Often::at_times},
                      {"latest", Kind::at, "when to press at the latest", Often::at_times},
                      {"ready", Kind::at, "when the agenda has a job finished", Often::at_times},
                      {"state", Kind::words, "how it stands; may be empty"}}),
      {"now", Kind::count, "how many are due by now"}}},
    &ask};

} // namespace nutward::shop::question_rows
