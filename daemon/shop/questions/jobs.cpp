// The queue, and one job of it.
#include "shop/agenda_words.hpp"
#include "shop/boards.hpp"
#include "shop/levelling.hpp"
#include "shop/people.hpp"
#include "shop/pressing.hpp"
#include "shop/rows.hpp"
#include "shop/spring_back.hpp"

namespace nutward::shop::question_rows {

namespace {

std::string next_stage(const Job& job, const View& view, const Setup& set) {
  const auto done = view.jobs().stages(job.id);
  for (const agenda::Stage& s : stages_of(job, view, set)) {
    const auto& row = agenda::row(s.kind);
    const bool reported = std::any_of(done.begin(), done.end(),
                                      [&](const Stage& d) { return d.kind == row.word && d.finished; });
    if (!reported && (s.work.count() > 0 || s.lag.count() > 0)) return std::string(row.what);
  }
  return "nothing more";
}

std::string builder_word(const Job& job, const View& view) {
  if (job.builder) return name_of(*job.builder, view);
  return job.bench.empty() ? "-" : job.bench + " bench";
}

// Which part of the queue was asked for, and what to call it: "Ines's"; everything is "".
struct Part {
  std::vector<Job> jobs;
  std::string whose;
};

Part part_of_queue(const Args& args, const Moment& moment, const View& view) {
  Part out{view.jobs().open(), ""};
  if (args.yes("mine") || args.has("person")) {
    const auto person =
        args.has("person") ? person_of(args, view, false) : view.house().actor(moment.who.actor);
    if (!person) return {{}, "yours"};
    std::erase_if(out.jobs, [&](const Job& job) { return !falls_to(job, *person); });
    out.whose = person->name + "'s";
  }
  if (args.has("bench")) {
    const std::string bench = bench_of(args.text("bench"), view);
    std::erase_if(out.jobs, [&](const Job& job) { return bench_of(job, view) != bench; });
    out.whose += fmt::format("{}the {} bench's", out.whose.empty() ? "" : " and ", bench);
  }
  return out;
}

std::string opening(const Part& part, const View& view) {
  const auto n = static_cast<std::int64_t>(part.jobs.size());
  if (part.whose.empty())
    return n == 0 ? "No job is open." : fmt::format("{} open.", plural(n, "job is", "jobs are"));
  if (n > 0) return fmt::format("{} {}.", plural(n, "open job is", "open jobs are"), part.whose);
  const auto all = view.jobs().open();
  const auto free = std::count_if(all.begin(), all.end(),
                                  [&](const Job& job) { return !job.builder && job.bench.empty(); });
  return fmt::format("No open job is {}{}", part.whose,
                     free == 0 ? "." : fmt::format("; {} nobody's yet.", plural(free, "is", "are")));
}

Answer ask_jobs(const Args& args, const Moment& moment, const View& view) {
  const Setup set = setup(view);
  const Part part = part_of_queue(args, moment, view);
  const auto& open = part.jobs;
  Answer out;
  out.text = opening(part, view);
  if (!open.empty())
    out.table = Table{{"job", "instrument", "for", "wire", "due", "frets to make", "next", "builder"}, {}};
  std::vector<Value> all;
  for (const Job& job : open) {
    const auto slots = open_slots(job, view, set);
    const std::string next = next_stage(job, view, set);
    const std::string wire = wire_of(view, job.wire).name;
    out.table->rows.push_back({std::to_string(job.id), job.instrument, job.owner, wire,
                               job.due ? moment.zone.human(*job.due) : "-", std::to_string(slots.size()),
                               next, builder_word(job, view)});
    all.push_back(record({{"job", ref(Thing::job, job.id)},
                          {"instrument", job.instrument},
                          {"owner", job.owner},
                          {"wire", ref(Thing::wire, job.wire)},
                          {"due_at", opt(job.due)},
                          {"open_slots", static_cast<std::int64_t>(slots.size())},
                          {"next", next},
                          {"builder", job.builder ? ref(Thing::actor, *job.builder) : Value{}},
                          {"bench", bench_of(job, view)}}));
  }
  out.data = record({{"jobs", list(std::move(all))}});
  return out;
}

std::string press_words(const Job& job, const Moment& moment, const View& view, const Setup& set) {
  const auto by = press_by(job, view, set, moment.calendar, moment.zone);
  return by ? fmt::format(" Press it by {}.", moment.zone.human(by->latest)) : "";
}

// " Held for it: piece 3 (slot 1), 0.54 m of new wire."
std::string held_for_job(const Job& job, const View& view, const Setup& set) {
  std::vector<std::string> all;
  for (const Piece& p : view.tin().held_for(job.id)) {
    auto slots = held_slots(p);
    std::sort(slots.begin(), slots.end());
    const std::string where = fmt::format(" ({} {})", slots.size() == 1 ? "slot" : "slots", ranges(slots));
    all.push_back(fmt::format("piece {}{}", p.id, slots.empty() ? "" : where));
  }
  const Length wire = set_aside(job, view, set);
  if (wire > Length{}) all.push_back(units::print(wire, units::LengthUnit::m) + " of new wire");
  return all.empty() ? "" : fmt::format(" Held for it: {}.", fmt::join(all, ", "));
}

Value pieces_of(const Job& job, const View& view) {
  std::vector<Value> out;
  for (const Piece& p : view.tin().held_for(job.id))
    out.push_back(ref(Thing::piece, p.id));
  return list(std::move(out));
}

// " Levelling: 5 readings count; the bass may be called level." "" where nobody read anything.
std::string levelling_words(const Job& job, const View& view, const Setup& set) {
  if (view.jobs().readings(job.id).empty()) return "";
  static constexpr std::array<std::string_view, 3> names{"bass", "middle", "treble"};
  try {
    const Levelling l = levelling(job, view, PressAgainWith(job, view, set));
    std::vector<std::string_view> level;
    for (std::size_t i = 0; i < names.size(); ++i) {
      if (l.calls.at(i).may_be_called) level.push_back(names.at(i));
    }
    return fmt::format(" Levelling: {} {}; {}.", plural(std::ssize(l.kept), "reading"),
                       l.kept.size() == 1 ? "counts" : "count",
                       level.empty() ? "no line may be called level yet"
                                     : fmt::format("{} may be called level", fmt::join(level, ", ")));
  } catch (const Problem&) { // no frets stand any more
    return "";
  }
}

// What the agenda has for it; nullopt where nothing of it is planned.
std::optional<Outlook> planned_for(const Job& job, const Moment& moment, const View& view) {
  if (job.state != JobState::open) return std::nullopt;
  return outlook_of(agenda_of(view, moment.calendar, moment.zone, moment.now), job.id, moment);
}

std::string ready_words(const Outlook& o, const Moment& moment) {
  if (!o.ready) return " It has no place in the agenda: ask 'agenda' why.";
  const Instant last = *o.ready - std::chrono::seconds{1};
  return fmt::format(" By the agenda it is ready {} {}: {}.", day_words(moment.zone.local(last).day, moment),
                     part_of_day(last, moment), words_of(o));
}

Answer ask_job(const Args& args, const Moment& moment, const View& view) {
  const Setup set = setup(view);
  const Job job = job_of(args, view, false);
  static constexpr std::array states{"open", "done", "cancelled"};
  const auto slots = open_slots(job, view, set);
  std::vector<int> missing;
  missing.reserve(slots.size());
  for (const SlotNeed& s : slots)
    missing.push_back(s.slot);
  Answer out;
  out.text = fmt::format(
      "{} is {}, {}. {} Next: {}.{}", named(job), states.at(static_cast<std::size_t>(job.state)),
      job.due ? "due " + moment.zone.human(*job.due) : "with no day promised",
      missing.empty() ? "Every slot has its fret."
                      : fmt::format("Slots without a fret: {}.", ranges(missing)),
      next_stage(job, view, set), job.state == JobState::open ? press_words(job, moment, view, set) : "");
  const PressState pressing = press_state(job, view, set);
  out.text += words_of(pressing);
  if (job.state == JobState::open)
    out.text += sprang_words(job, view) + waiting_words(job, view, moment.zone);
  const std::string on_the_edge = levelling_words(job, view, set);
  out.text += on_the_edge;
  out.reason =
      fmt::format("{} frets of {}; {} wide at the nut. {}", job.slots.size(), wire_of(view, job.wire).name,
                  say(job.board.nut_width, set), words_of(job.board, set));
  out.reason += " " + sentence(who_does(job, view)) + "." + held_for_job(job, view, set);
  const auto outlook = planned_for(job, moment, view);
  if (outlook) out.reason += ready_words(*outlook, moment);
  out.table = Table{{"stage", "reported", "finished"}, {}};
  std::vector<Value> stages, rechecks;
  for (const Stage& s : view.jobs().stages(job.id)) {
    out.table->rows.push_back(
        {s.kind, moment.zone.human(s.recorded), s.finished ? moment.zone.human(*s.finished) : "-"});
    stages.push_back(record({{"kind", s.kind}, {"finished_at", opt(s.finished)}, {"recorded", s.recorded}}));
  }
  if (out.table->rows.empty()) out.table.reset();
  static constexpr std::array recheck_states{"waiting", "level", "sprang", "superseded"};
  for (const Recheck& r : view.jobs().rechecks(job.id)) {
    rechecks.push_back(
        record({{"slots", list_of(r.slots)},
                {"pressed", r.pressed},
                {"from", r.from},
                {"due", r.due},
                {"state", std::string(recheck_states.at(static_cast<std::size_t>(r.state)))}}));
  }
  out.data =
      record({{"job", ref(Thing::job, job.id)},
              {"state", std::string(states.at(static_cast<std::size_t>(job.state)))},
              {"instrument", job.instrument},
              {"owner", job.owner},
              {"builder", job.builder ? ref(Thing::actor, *job.builder) : Value{}},
              {"bench", bench_of(job, view)},
              {"due_at", opt(job.due)},
              {"ready_at", outlook ? opt(outlook->ready) : Value{}},
              {"outlook", outlook ? std::string(word_for(outlook->state)) : ""},
              {"wire", ref(Thing::wire, job.wire)},
              {"open_slots", list_of(missing)},
              {"passes", pressing.passes ? Value{static_cast<std::int64_t>(*pressing.passes)} : Value{}},
              {"passes_done", static_cast<std::int64_t>(pressing.done)},
              {"next_pass", list_of(pressing.next)},
              {"pressed_beyond", pressing.beyond},
              {"levelling", on_the_edge},
              {"held", pieces_of(job, view)},
              {"set_aside", set_aside(job, view, set)},
              {"stages", list(std::move(stages))},
              {"rechecks", list(std::move(rechecks))}});
  out.about.args = {{"job", ref(Thing::job, job.id)}};
  return out;
}

} // namespace

extern const Question jobs;
const Question jobs{
    {"jobs",
     "The open jobs, or those of one person or bench; the one due first leading.",
     {{"person", Kind::person, false, false, "only theirs, and those of their bench that nobody does"},
      {"bench", Kind::words, false, false, "only those done there"},
      {"mine", Kind::yes, false, false, "only yours"}},
     {"(what|which) jobs (are there|are open|do we have|have we)", "[show me|show|list] [the] [open] jobs",
      "[show] [the] queue", "[show|list|what are] my [open] jobs {mine=yes}",
      "[how is|how are|show] my (neck|necks|job) {mine=yes}", "(what|which) jobs are mine {mine=yes}",
      "(what|which) jobs do i have {mine=yes}", "[show|list] [the] jobs of {person}",
      "[show|list] {person} jobs", "(what|which) jobs (does|has) {person} [have|got|do]",
      "[show|list] [the] jobs (of|at|on) [the] {bench} bench",
      "(what|which) jobs are (at|on) [the] {bench} bench"},
     {"jobs", "my jobs", "jobs of Ines", "which jobs are open", "show the queue"},
     Role::look,
     {gives::records("jobs", "open ones, the one due first leading",
                     {gives::job,
                      {"instrument", Kind::words, "may be empty"},
                      {"owner", Kind::words, "may be empty"},
                      gives::wire,
                      {"due", Kind::at, "when it is promised for", Often::or_null},
                      {"open_slots", Kind::count, "how many lack a fret"},
                      {"next", Kind::words, "the stage that comes next"},
                      gives::builder,
                      gives::bench})}},
    &ask_jobs};

extern const Question job;
const Question job{
    {"job",
     "One job: what is done, what is next, which slots still lack a fret.",
     {takes::job},
     {"(how is|how about|what about|show me|show) {job}", "(where are we|how far are we|how far) with {job}",
      "[the] (status|state) of {job}",
      ("(which|what) (slots|frets|slot|fret) [of {job}] (is|are) [still] (open|missing|to make|to do) "
       "[(on|in|of|for) {job}]"),
      "(what|which) [slots|frets] (is|are) (left|still) [left] to cut (for|of|on) {job}",
      "is {job} [all] (cut|pressed|done|finished|dressed|seated) [yet]"},
     {"job 1", "how far are we with job 1", "status of job 1"},
     Role::look,
     {gives::job,
      gives::one_of("state", "of the job", {"open", "done", "cancelled"}),
      {"instrument", Kind::words, "may be empty"},
      {"owner", Kind::words, "may be empty"},
      gives::builder,
      gives::bench,
      {"due", Kind::at, "when it is promised for", Often::or_null},
      {"ready", Kind::at, "when the agenda has it finished", Often::or_null},
      {"outlook", Kind::words, "how it does by the agenda, as 'agenda' has it; empty: nothing is planned"},
      gives::wire,
      {"passes", Kind::count, "in the press, once it has begun and where they are known", Often::or_null},
      {"passes_done", Kind::count, "of these"},
      {"next_pass", Kind::slot, "the frets of the next one", Often::many},
      {"pressed_beyond", Kind::words, "what was pressed above the press's rating; empty: nothing"},
      {"levelling", Kind::words, "how many readings count, and which lines may be called level; empty: none"},
      {"open_slots", Kind::slot, "those without a fret", Often::many},
      {"held", Kind::piece, "pieces that are held for it", Often::many},
      {"set_aside", Kind::length, "new wire that is set aside for it"},
      gives::records("stages", "as they were reported",
                     {{"kind", Kind::words, "which stage"},
                      {"finished", Kind::at, "when it was", Often::or_null},
                      {"recorded", Kind::at, "when that was reported"}}),
      gives::records(
          "rechecks", "of this job",
          {{"slots", Kind::slot, "which frets", Often::many},
           {"pressed", Kind::at, "its last pass"},
           {"from", Kind::at, "when it may be done"},
           {"due", Kind::at, "when it falls due"},
           gives::one_of("state", "of the recheck", {"waiting", "level", "sprang", "superseded"})})}},
    &ask_job};

} // namespace nutward::shop::question_rows
