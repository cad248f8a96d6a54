// What comes first: the priority of a job, jobs that wait for others, and when a recheck is done.
#include "shop/rows.hpp"

namespace nutward::shop::command_rows {

namespace {

std::string priority_words(int p) {
  return fmt::format("{}{}", p, p == 9 ? " (urgent)" : p == 3 ? " (as usual)" : p == 1 ? " (can wait)" : "");
}

Effect priority(const Args& args, const Moment&, Tx& tx) {
  Job job = job_of(args, tx);
  const int was = job.priority;
  job.priority = static_cast<int>(args.get<std::int64_t>("priority"));
  if (job.priority == was) {
    throw Problem(Fault::state, fmt::format("{} has priority {} already.", named(job), priority_words(was)),
                  "priority", "There is nothing to do.");
  }
  tx.put(job);
  Effect out;
  out.answer.text = fmt::format("{} has priority {} now; it was {}.", named(job),
                                priority_words(job.priority), priority_words(was));
  out.answer.reason = fmt::format("An hour late counts {} as much for it as for a job as usual.",
                                  job.priority == 1   ? "a third"
                                  : job.priority == 2 ? "two thirds"
                                  : job.priority == 3 ? "just"
                                                      : fmt::format("{:.2g} times", job.priority / 3.0));
  out.answer.data =
      record({{"job", ref(Thing::job, job.id)}, {"priority", static_cast<std::int64_t>(job.priority)}});
  out.answer.about.args = {{"job", ref(Thing::job, job.id)}};
  return out;
}

// The jobs that a job waits for, and those that these wait for, and so on.
std::vector<std::int64_t> waited_for(std::int64_t job, const View& view) {
  std::vector<std::int64_t> out, todo{job};
  while (!todo.empty()) {
    const auto j = view.jobs().find(todo.back());
    todo.pop_back();
    if (!j) continue;
    for (const std::int64_t id : j->after) {
      if (std::find(out.begin(), out.end(), id) != out.end()) continue;
      out.push_back(id);
      todo.push_back(id);
    }
  }
  return out;
}

Job other_of(const Args& args, const View& view) {
  const auto other = view.jobs().find(args.id("other"));
  if (!other) throw Problem(Fault::value, "There is no such job.", "other", "Ask for 'jobs' to see them.");
  return *other;
}

Effect after(const Args& args, const Moment&, Tx& tx) {
  Job job = job_of(args, tx);
  const Job other = other_of(args, tx);
  const bool drop = args.yes("no_more");
  const auto at = std::lower_bound(job.after.begin(), job.after.end(), other.id);
  const bool there = at != job.after.end() && *at == other.id;
  if (there != drop) {
    throw Problem(
        Fault::state,
        fmt::format("{} {} for {}.", named(job), drop ? "does not wait" : "waits already", named(other)),
        "other", "There is nothing to do.");
  }
  if (!drop) {
    if (other.state != JobState::open)
      throw Problem(Fault::state, fmt::format("{} is not open any more.", named(other)), "other",
                    "There is nothing to wait for.");
    const auto behind = waited_for(other.id, tx);
    if (other.id == job.id || std::find(behind.begin(), behind.end(), job.id) != behind.end()) {
      throw Problem(Fault::state,
                    other.id == job.id ? fmt::format("{} cannot wait for itself.", named(job))
                                       : fmt::format("{} waits for {} itself: neither would ever begin.",
                                                     named(other), named(job)),
                    "other",
                    fmt::format("Say first: job {} does not wait for job {} any more.", other.id, job.id));
    }
    job.after.insert(at, other.id);
  } else {
    job.after.erase(at);
  }
  tx.put(job);
  Effect out;
  out.answer.text =
      fmt::format("{} {} for {}.", named(job), drop ? "does not wait any more" : "waits", named(other));
  std::vector<Value> all;
  for (const std::int64_t id : job.after)
    all.push_back(ref(Thing::job, id));
  out.answer.data = record({{"job", ref(Thing::job, job.id)}, {"after", list(std::move(all))}});
  out.answer.about.args = {{"job", ref(Thing::job, job.id)}};
  return out;
}

// When it is to be looked at: moved into the shop's hours of that day.
Instant look_at(const Args& args, const Moment& moment) {
  const Instant said = args.get<Instant>("again");
  if (said <= moment.now) {
    throw Problem(Fault::value, fmt::format("{} is over.", moment.zone.human(said)), "again_at",
                  "Give a time still to come.");
  }
  const auto open = hours::next_open(moment.calendar, moment.zone, said);
  if (!open) return said;
  const Day day = moment.zone.local(said).day;
  if (moment.zone.local(*open).day == day) return *open;
  throw Problem(Fault::state,
                fmt::format("The shop is closed on {}{}.", hours::human(day),
                            moment.zone.local(said).s == 0 ? "" : " from then on"),
                "again_at", fmt::format("It opens again {}.", moment.zone.human(*open)));
}

std::vector<Recheck> meant_rechecks(const Args& args, const Job& job, const View& view) {
  const auto slots = args.slots("slots");
  std::vector<Recheck> out;
  for (const Recheck& r : view.jobs().rechecks(job.id)) {
    if (r.state != RecheckState::waiting) continue;
    const bool meant = slots.empty() || std::any_of(r.slots.begin(), r.slots.end(), [&](int s) {
                         return std::find(slots.begin(), slots.end(), s) != slots.end();
                       });
    if (meant) out.push_back(r);
  }
  if (!out.empty()) return out;
  throw Problem(Fault::state, fmt::format("{} has no recheck waiting.", named(job)), "job",
                fmt::format("Report the pressing first: pressed job {}.", job.id));
}

Effect look_again(const Args& args, const Moment& moment, Tx& tx) {
  const Job job = job_of(args, tx);
  const Instant when = look_at(args, moment);
  std::vector<int> slots;
  Instant was;
  for (Recheck r : meant_rechecks(args, job, tx)) {
    if (when < r.from) {
      throw Problem(
          Fault::state,
          fmt::format("Frets {} of {} may still spring back then: they may be looked at from {} on.",
                      ranges(r.slots), named(job), moment.zone.human(r.from)),
          "again_at", "Give a later time.");
    }
    was = r.due;
    r.due = when;
    r.told = r.overdue_told = false;
    slots.insert(slots.end(), r.slots.begin(), r.slots.end());
    tx.put(r);
  }
  std::sort(slots.begin(), slots.end());
  const auto clock = agenda::window_clock(when, when, moment.calendar, moment.zone);
  Effect out;
  out.answer.text = fmt::format("{}: frets {} are looked at again {}; that was due {}.", named(job),
                                ranges(slots), moment.zone.human(when), moment.zone.human(was));
  out.answer.reason =
      fmt::format("I remind you then; it is overdue after {}.", moment.zone.human(clock.overdue));
  out.answer.data = record({{"job", ref(Thing::job, job.id)},
                            {"slots", list_of(slots)},
                            {"again", when},
                            {"overdue", clock.overdue}});
  out.answer.about.args = {{"job", ref(Thing::job, job.id)}};
  return out;
}

} // namespace

extern const Command priority_row;
const Command priority_row{
    {"priority",
     "Says how much it matters that a job is in time.",
     {takes::job, {"priority", Kind::count, true, false, "1 can wait, 3 as usual, 9 urgent", {1, 9}}},
     {"{job} has priority {priority}", "[the] priority of {job} is {priority}",
      "[give] {job} priority {priority}", "{job} is [very] urgent {priority=9}",
      "{job} (comes|goes|is) first {priority=9}", "{job} first {priority=9}",
      "{job} has priority {priority=9}", "{job} is [very|more] important {priority=9}",
      "do {job} (first|next) {priority=9}", "{job} is a rush [job] {priority=9}",
      "{job} is (next|on top) {priority=9}", "[put] {job} on top {priority=9}",
      "{job} is a priority {priority=9}", "{job} [is] in a hurry {priority=9}", "{job} can wait {priority=1}",
      "{job} is not urgent {priority=3}", "there is no hurry (with|about|for) {job} {priority=1}",
      "{job} is not urgent any more {priority=3}", "{job} [is] as usual {priority=3}"},
     {"job 1 has priority 5", "job 1 is urgent", "job 2 can wait"},
     Role::bench,
     {gives::job, {"priority", Kind::count, "1 to 9"}}},
    &priority};

extern const Command after_row;
const Command after_row{
    {"after",
     "Lets a job wait until another one is done.",
     {takes::job,
      {"other", Kind::job, true, false, "the one that is done first"},
      {"no_more", Kind::yes, false, false, "it waits no more"}},
     {"{job} (waits|has to wait|must wait) for {other}", "{job} (comes|goes|is) after {other}",
      "[do] {job} after {other} [is done]", "[do] {other} before {job}",
      "{other} (comes|goes|is) before {job}", "{other} first [and] then {job}",
      "do not (begin|start) {job} before {other} [is done]",
      "{job} does not (wait for|come after) {other} [any more] {no_more=yes}",
      "{job} (need not|no longer has to) wait for {other} {no_more=yes}"},
     {"job 2 waits for job 1", "job 3 does not wait for job 1 any more"},
     Role::bench,
     {gives::job, {"after", Kind::job, "that it waits for", Often::many}}},
    &after};

extern const Command look_again_row;
const Command look_again_row{
    {"look-again",
     "Says when the recheck of a job is done, in place of the usual hours after pressing.",
     {takes::job,
      {"again", Kind::at, true, false, "when; a day alone is its opening"},
      {"slots", Kind::slot, false, true, "of these frets; all that wait where not said"}},
     {"look at {job} again [on|at] {again}", "look again at {job} [on|at] {again}",
      "(recheck|check) {job} [again] [on|at] {again}",
      "(recheck|check|look at) [frets|slots] {slots} (of|on) {job} [again] [on|at] {again}",
      "[the] recheck of {job} is [on|at|done] {again}", "(move|put|set) [the] recheck of {job} to {again}",
      "(i|we) look at {job} again [on|at] {again}", "(i|we) recheck {job} [on|at] {again}",
      "(postpone|put off|delay) [the] recheck of {job} (to|until|till) {again}",
      "(i|we) (will|shall) (look at|check|recheck) {job} [again] [on|at] {again}",
      "{again} (i|we) (look at|recheck) {job} [again]", "remind me of the recheck of {job} [on|at] {again}"},
     {"look at job 1 again next tuesday after lunch", "recheck job 1 next tuesday at 10:00"},
     Role::bench,
     {gives::job,
      {"slots", Kind::slot, "that are looked at then", Often::many},
      {"again", Kind::at, "when"},
      {"overdue", Kind::at, "when that is overdue"}}},
    &look_again};

} // namespace nutward::shop::command_rows
