// Stages are begun and stopped; commands/stages.cpp and commands/press.cpp finish them.
#include "shop/work.hpp"
#include "shop/bookings.hpp"
#include "shop/commands/frets.hpp"
#include "shop/people.hpp"
#include "shop/rows.hpp"
#include "shop/stage_words.hpp"

namespace nutward::shop::command_rows {

namespace {

// Throws Problem{value} where the job does not go through the stage.
void check_has(const Job& job, const std::string& stage, const View& view) {
  std::vector<std::string> all;
  for (const agenda::Stage& s : stages_of(job, view, setup(view))) {
    const agenda::StageRow& row = agenda::row(s.kind);
    if (row.word == stage) return;
    if (row.minutes > 0) all.emplace_back(row.word);
  }
  throw Problem(Fault::value, fmt::format("{} has no {} to be done.", named(job), doing(stage)), "stage",
                fmt::format("Its stages are: {}.", fmt::join(all, ", ")));
}

// What was said, else what comes next on the job.
std::string stage_to_start(const Args& args, const View& view) {
  if (args.has("stage")) return args.text("stage");
  const Job job = job_of(args, view);
  std::string next = next_stage(job, view);
  if (next.empty())
    throw Problem(Fault::state, fmt::format("All stages of {} are finished.", named(job)), "stage",
                  fmt::format("Say which is done again, as in 'started polishing job {}'.", job.id));
  return next;
}

std::string why_start_yes(const Args& args, const Moment& moment, const View& view) {
  const std::string stage = stage_to_start(args, view);
  const auto m = machine_for(*agenda::stage_named(stage), view);
  if (!m) return "";
  const Down d = down(*m, moment.happened, view);
  const auto left = left_of(*m, d);
  return left && *left == 0 ? fmt::format("{} {} {}.", named(*m), m->count == 1 ? "is" : "are",
                                          words_of(d.because.front(), moment.zone))
                            : "";
}

// Who else has the machine just now, and when it is booked next.
std::string booked_words(const Machine& m, const Moment& moment, const View& view) {
  if (m.count == 0) return "";
  std::vector<Booking> others;
  for (const Booking& b : view.machines().bookings(moment.now, moment.now + std::chrono::hours(12))) {
    if (b.machine == m.id && b.actor != moment.who.actor) others.push_back(b);
  }
  return others.empty() ? "" : fmt::format(" Booked: {}.", words_of(others, view, moment.zone));
}

// Others who are at the same kind of machine, where it has not so many.
std::string crowded(const Machine& m, const Stage& mine, const View& view) {
  std::vector<std::string> who;
  for (const AtWork& w : at_work(view)) {
    const auto kind = agenda::stage_named(w.stretch.kind);
    const auto its = kind ? machine_for(*kind, view) : std::nullopt;
    if (its && its->id == m.id && w.stretch.id != mine.id)
      who.push_back(fmt::format("{} at job {}", name_of(w.stretch.actor, view), w.job.id));
  }
  if (m.count == 0 || static_cast<int>(who.size()) < m.count) return "";
  return fmt::format(" By what was reported, {} is at the {} too.", fmt::join(who, ", "), m.name);
}

Value data_of(const Job& job, const Stage& s, const std::optional<std::chrono::seconds>& worked) {
  return record({{"job", ref(Thing::job, job.id)},
                 {"stage", s.kind},
                 {"started_at", opt(s.started)},
                 {"stopped_at", opt(s.stopped)},
                 {"worked_minutes", worked ? Value{(worked->count() + 30) / 60} : Value{}}});
}

void leave_others(const Job& job, const std::string& stage, std::int64_t who, const Moment& moment, Tx& tx,
                  std::string& text) {
  for (const AtWork& w : at_work(tx, who)) {
    if (w.job.id == job.id && w.stretch.kind == stage) continue;
    text += fmt::format(" {} still at {} job {}: say 'stopped {} job {}' if not.",
                        who == moment.who.actor ? "You are" : name_of(who, tx) + " is", doing(w.stretch.kind),
                        w.job.id, doing(w.stretch.kind), w.job.id);
  }
}

Effect start(const Args& args, const Moment& moment, Tx& tx) {
  const Job job = job_of(args, tx);
  const std::string stage = stage_to_start(args, tx);
  check_has(job, stage, tx);
  if (const auto going = in_hand(job, stage, tx)) {
    throw Problem(Fault::state,
                  fmt::format("{} has been at {} {} since {}.", name_of(going->actor, tx), doing(stage),
                              named(job), moment.zone.human(*going->started)),
                  "stage", fmt::format("Report its end first: finished {} job {}.", doing(stage), job.id));
  }
  const bool again = is_finished(job, stage, tx);
  const auto before = spent(job, stage, tx, moment.happened, moment.calendar, moment.zone);
  Stage s;
  s.job = job.id;
  s.kind = stage;
  s.sequence = 1;
  for (const Stage& other : tx.jobs().stages(job.id))
    s.sequence = std::max(s.sequence, other.sequence + 1);
  s.started = moment.happened;
  s.recorded = moment.now;
  s.actor = args.has("person") ? person_of(args, tx).id : moment.who.actor;
  s.id = tx.put(s);
  Effect out;
  out.answer.text = fmt::format("{}: {} {} from {}.", named(job), name_of(s.actor, tx),
                                (before  ? "goes on with "
                                 : again ? "begins again with "
                                         : "begins ") +
                                    std::string(doing(stage)),
                                moment.zone.human(moment.happened));
  for (const std::int64_t other : job.after) {
    const auto first = tx.jobs().find(other);
    if (first && first->state == JobState::open)
      out.answer.text += fmt::format(" It was to wait for {}.", named(*first));
  }
  leave_others(job, stage, s.actor, moment, tx, out.answer.reason);
  if (const auto m = machine_for(*agenda::stage_named(stage), tx))
    out.answer.reason += crowded(*m, s, tx) + booked_words(*m, moment, tx);
  if (!out.answer.reason.empty()) out.answer.reason.erase(0, 1);
  out.answer.cautions = hazards_for(stage);
  out.answer.data = data_of(job, s, before);
  out.answer.about.args = {{"job", ref(Thing::job, job.id)}};
  return out;
}

AtWork meant_work(const Args& args, const Moment& moment, const View& view) {
  const bool said = args.has("job") || args.has("stage");
  auto all = at_work(view, args.has("job") ? std::nullopt : std::optional{moment.who.actor});
  std::erase_if(all, [&](const AtWork& w) {
    return (args.has("job") && w.job.id != args.id("job")) ||
           (args.has("stage") && w.stretch.kind != args.text("stage"));
  });
  if (all.size() == 1) return all.front();
  if (all.empty()) {
    throw Problem(Fault::state,
                  said ? "Nobody is at that, by what was reported."
                       : fmt::format("{} is at nothing, by what was reported.", moment.who.name),
                  "job", "Report it as finished, or say when it began: started seating job 2 at 9:00.");
  }
  Problem problem(Fault::ambiguous, "Which work?", "job", "Pick one by its number.");
  for (const AtWork& w : all) {
    if (problem.choices.size() == 9) break;
    problem.choices.push_back({fmt::format("{} {}", doing(w.stretch.kind), named(w.job)),
                               {"stop", {{"job", ref(Thing::job, w.job.id)}, {"stage", w.stretch.kind}}},
                               {seen({Thing::stage, w.stretch.id}, view)}});
  }
  throw Problem(std::move(problem));
}

Effect stop(const Args& args, const Moment& moment, Tx& tx) {
  AtWork w = meant_work(args, moment, tx);
  if (moment.happened < *w.stretch.started) {
    throw Problem(Fault::value,
                  fmt::format("It was begun later than that, {}.", moment.zone.human(*w.stretch.started)),
                  "at", "Check the two times.");
  }
  w.stretch.stopped = moment.happened;
  tx.put(w.stretch);
  const auto worked = spent(w.job, w.stretch.kind, tx, moment.happened, moment.calendar, moment.zone);
  Effect out;
  out.answer.text = fmt::format("{}: stopped {}, {}{}.", named(w.job), doing(w.stretch.kind),
                                moment.zone.human(moment.happened),
                                worked ? fmt::format("; {} of work so far", minutes_words(*worked)) : "");
  out.answer.reason =
      fmt::format("It is not finished: go on with 'start {} job {}', or say 'finished {} job {}'.",
                  doing(w.stretch.kind), w.job.id, doing(w.stretch.kind), w.job.id);
  out.answer.data = data_of(w.job, w.stretch, worked);
  out.answer.about.args = {{"job", ref(Thing::job, w.job.id)}};
  return out;
}

constexpr std::string_view of_job = " [the] [frets|ends|board|tangs|wire|crowns] [of|on|for] {job}";

std::vector<std::string_view> start_phrases() {
  static const std::vector<std::string> made{
      "[i|we] [am|are|have] (start|starting|started|begin|beginning|began|begun) [with] " +
          stage_pattern(SaidAs::doing) + std::string(of_job) + " [{at}]",
      "[i|we] [am|are|have] (start|starting|started|begin|beginning|began|begun) to " +
          stage_pattern(SaidAs::to_do) + std::string(of_job) + " [{at}]",
      ("[i|we] [am|are|have] (start|starting|started|begin|beginning|began|begun) [with] [the] {stage} "
       "(of|on|for|with) "
       "{job} [{at}]"),
      "{person} [has] (started|begun|began|is starting|starts) [with] " + stage_pattern(SaidAs::doing) +
          std::string(of_job) + " [{at}]",
      "{person} (is|has been|goes on|went on) [now|with] " + stage_pattern(SaidAs::doing) +
          std::string(of_job) + " [now] [since {at}]",
      ("[i|we] [am|are|have] (start|starting|started|begin|beginning|began|begun) [on|with|work on] {job} "
       "[{at}]"),
      "(i am|we are) [now] " + stage_pattern(SaidAs::doing) + std::string(of_job) + " [now] [since {at}]",
      "(i am|we are) going to " + stage_pattern(SaidAs::to_do) + std::string(of_job) + " [now]",
      "[i|we] (go|going|went|carry|carrying|carried) on [with] " + stage_pattern(SaidAs::doing) +
          std::string(of_job) + " [{at}]",
      "(resume|resuming|continue|continuing|go on with|going on with|carry on with) {job} [{at}]",
      "(resume|resuming|continue|continuing|back to) " + stage_pattern(SaidAs::doing) + std::string(of_job) +
          " [{at}]",
      ("{job} is being (pulled {stage=pull}|trued {stage=true}|bent {stage=bend}|dressed "
       "{stage=dress}|nipped "
       "{stage=nip}|seated {stage=seat}|pressed {stage=press}|filed {stage=file}|levelled "
       "{stage=level}|crowned "
       "{stage=crown}|polished {stage=polish}) [since {at}]")};
  return {made.begin(), made.end()};
}

std::vector<std::string_view> stop_phrases() {
  static const std::vector<std::string> made{
      std::string((
          "[i|we] [am|are|have] (stopped|stopping|pausing|paused|interrupted) [work|working] [(for today|for "
          "now|here)] [{at}]")),
      std::string("[i|we] [am|are] (taking|having) a (break|rest|pause)"),
      "[i|we] [am|are|have] (stop|stopped|stopping|pause|paused|pausing|interrupt|interrupted) [with] " +
          stage_pattern(SaidAs::doing) + std::string(of_job) + " [{at}]",
      std::string(
          "[i|we] [have] (stop|stopped|pause|paused|left|leave) [work] [on|with|at] {job} [for now] [{at}]"),
      "[i|we] [am|are|have] (stop|stopped|stopping|pause|paused) [with] " + stage_pattern(SaidAs::doing) +
          " [{at}]",
      std::string("[i|we] [am|are] (off|out) (for lunch|to lunch|for a break)"),
      std::string("(pause|break|lunch|lunch break|coffee break)"),
      std::string("[i|we] [am|are] (done|finished|through|off) for (today|now|the day)"),
      std::string("[i|we] [am|are] (going home|off home|calling it a day)"),
      std::string("call it a day")};
  return {made.begin(), made.end()};
}

const std::vector<Give> work_gives{
    gives::job,
    {"stage", Kind::words, "which"},
    {"started", Kind::at, "when this stretch of work began", Often::or_null},
    {"stopped", Kind::at, "when it was broken off", Often::or_null},
    {"worked_minutes", Kind::count, "of open time, in all stretches", Often::or_null}};

} // namespace

extern const Command start_row;
const Command start_row{{"start",
                         "Reports that a stage of a job is begun, or gone on with.",
                         {takes::job,
                          {"stage",
                           Kind::one_of,
                           false,
                           false,
                           "which stage; what comes next where not said",
                           {},
                           worked_stages()},
                          {"person", Kind::person, false, false, "who does it; you where not said"},
                          takes::at},
                         start_phrases(),
                         {"starting to press job 1", "started seating job 2 an hour ago",
                          "I am polishing job 1", "Ines is pulling job 2", "start job 2"},
                         Role::bench,
                         work_gives},
                        &start,
                        &why_start_yes};

extern const Command stop_row;
const Command stop_row{
    {"stop",
     "Reports that work at a stage is broken off, unfinished.",
     {takes::optional(takes::job),
      {"stage", Kind::one_of, false, false, "which stage, where somebody is at several", {}, worked_stages()},
      takes::at},
     stop_phrases(),
     {"stopped working", "stopped seating job 2", "I am taking a break"},
     Role::bench,
     work_gives},
    &stop};

} // namespace nutward::shop::command_rows
