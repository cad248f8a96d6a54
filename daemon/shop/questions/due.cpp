// What falls due: rechecks, the latest press times, and promised days, with what the agenda makes of them.
#include "shop/agenda_words.hpp"

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

Answer ask(const Args& args, const Moment& moment, const View& view) {
  const Setup set = setup(view);
  std::vector<Item> items;
  add_rechecks(items, moment, view);
  const AgendaPlan agenda = agenda_of(view, moment.calendar, moment.zone, moment.now);
  add_jobs(items, agenda, moment, view, set);
  std::stable_sort(items.begin(), items.end(), [](const Item& a, const Item& b) { return a.when < b.when; });
  const Instant until = moment.now + std::chrono::hours(24 * args.or_else<std::int64_t>("days", 7));
  std::erase_if(items, [&](const Item& i) {
    return i.when > until ||
           (args.has("job") &&
            std::get<Ref>(*std::get<std::shared_ptr<const Node>>(i.data)->find("job")).id != args.id("job"));
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
  if (!now.empty())
    out.text = fmt::format("Due now: {}.", fmt::join(now, "; "));
  else if (!items.empty())
    out.text = fmt::format("Nothing is due now; next: {}, {}.", items.front().what,
                           moment.zone.human(items.front().when));
  else
    out.text = "Nothing falls due in that time.";
  out.reason = fmt::format("A recheck may be done from {} h after pressing and is due at {} h.",
                           set.recheck.from_h, set.recheck.due_h) +
               late_words(agenda, moment) + unreached(view);
  out.data = record({{"due", list(std::move(all))}, {"now", static_cast<std::int64_t>(now.size())}});
  if (args.has("job")) out.about.args = {{"job", ref(Thing::job, args.id("job"))}};
  return out;
}

} // namespace

extern const Question due;
const Question due{
    {"due",
     "What falls due: rechecks, the latest press times, promised days.",
     {takes::optional(takes::job), {"days", Kind::count, false, false, "how far to look ahead; 7", {1, 366}}},
     {"(what|anything|is anything) [is|falls] due [now|today]",
      "what (do i|do we|must i|must we) recheck [now|today]",
      "(what|anything) [is|falls] due (for|on|with) {job}", "when is [the] recheck (of|for) {job} [due]",
      "(when|by when) (must|should) {job} be pressed", "what is due in [the next] {days} days"},
     {"due", "what is due", "when is the recheck of job 1"},
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
