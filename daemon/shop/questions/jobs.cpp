// The queue, and one job of it.
#include "shop/boards.hpp"
#include "shop/rows.hpp"

namespace nutward::shop::question_rows {

namespace {

std::string next_stage(const Job& job, const View& view, const Setup& set) {
  const auto done = view.jobs().stages(job.id);
  for (const agenda::Stage& s : stages_of(job, set)) {
    const auto& row = agenda::row(s.kind);
    const bool reported = std::any_of(done.begin(), done.end(),
                                      [&](const Stage& d) { return d.kind == row.word && d.finished; });
    if (!reported && (s.work.count() > 0 || s.lag.count() > 0)) return std::string(row.what);
  }
  return "nothing more";
}

Answer ask_jobs(const Args&, const Moment& moment, const View& view) {
  const Setup set = setup(view);
  const auto open = view.jobs().open();
  Answer out;
  out.text = open.empty() ? "No job is open."
                          : fmt::format("{} open.",
                                        plural(static_cast<std::int64_t>(open.size()), "job is", "jobs are"));
  if (!open.empty())
    out.table = Table{{"job", "instrument", "for", "wire", "due", "frets to make", "next"}, {}};
  std::vector<Value> all;
  for (const Job& job : open) {
    const auto slots = open_slots(job, view, set);
    const std::string next = next_stage(job, view, set);
    const std::string wire = wire_of(view, job.wire).name;
    out.table->rows.push_back({std::to_string(job.id), job.instrument, job.owner, wire,
                               job.due ? moment.zone.human(*job.due) : "-", std::to_string(slots.size()),
                               next});
    all.push_back(record({{"job", ref(Thing::job, job.id)},
                          {"instrument", job.instrument},
                          {"owner", job.owner},
                          {"wire", ref(Thing::wire, job.wire)},
                          {"due_at", opt(job.due)},
                          {"open_slots", static_cast<std::int64_t>(slots.size())},
                          {"next", next}}));
  }
  out.data = record({{"jobs", list(std::move(all))}});
  return out;
}

std::string press_words(const Job& job, const Moment& moment, const View& view, const Setup& set) {
  const auto by = press_by(job, view, set, moment.calendar, moment.zone);
  return by ? fmt::format(" Press it by {}.", moment.zone.human(by->latest)) : "";
}

Answer ask_job(const Args& args, const Moment& moment, const View& view) {
  const Setup set = setup(view);
  const Job job = job_of(args, view, false);
  static constexpr std::array states{"open", "done", "cancelled"};
  const auto slots = open_slots(job, view, set);
  std::vector<int> missing;
  for (const SlotNeed& s : slots)
    missing.push_back(s.slot);
  Answer out;
  out.text = fmt::format(
      "{} is {}, {}. {} Next: {}.{}", named(job), states.at(static_cast<std::size_t>(job.state)),
      job.due ? "due " + moment.zone.human(*job.due) : "with no day promised",
      missing.empty() ? "Every slot has its fret."
                      : fmt::format("Slots without a fret: {}.", ranges(missing)),
      next_stage(job, view, set), job.state == JobState::open ? press_words(job, moment, view, set) : "");
  out.reason =
      fmt::format("{} frets of {}; {} wide at the nut. {}", job.slots.size(), wire_of(view, job.wire).name,
                  say(job.board.nut_width, set), words_of(job.board, set));
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
  out.data = record({{"job", ref(Thing::job, job.id)},
                     {"state", std::string(states.at(static_cast<std::size_t>(job.state)))},
                     {"instrument", job.instrument},
                     {"owner", job.owner},
                     {"due_at", opt(job.due)},
                     {"wire", ref(Thing::wire, job.wire)},
                     {"open_slots", list_of(missing)},
                     {"stages", list(std::move(stages))},
                     {"rechecks", list(std::move(rechecks))}});
  out.about.args = {{"job", ref(Thing::job, job.id)}};
  return out;
}

} // namespace

extern const Question jobs;
const Question jobs{{"jobs",
                     "The open jobs, the one due first leading.",
                     {},
                     {"(what|which) jobs (are there|are open|do we have|have we)",
                      "[show me|show|list] [the] [open] jobs", "[show] [the] queue"},
                     {"jobs", "which jobs are open", "show the queue"},
                     Role::look,
                     {gives::records("jobs", "open ones, the one due first leading",
                                     {gives::job,
                                      {"instrument", Kind::words, "may be empty"},
                                      {"owner", Kind::words, "may be empty"},
                                      gives::wire,
                                      {"due", Kind::at, "when it is promised for", Often::or_null},
                                      {"open_slots", Kind::count, "how many lack a fret"},
                                      {"next", Kind::words, "the stage that comes next"}})}},
                    &ask_jobs};

extern const Question job;
const Question job{{"job",
                    "One job: what is done, what is next, which slots still lack a fret.",
                    {takes::job},
                    {"(how is|how about|what about|show me|show) {job}",
                     "(where are we|how far are we|how far) with {job}", "[the] (status|state) of {job}"},
                    {"job 12", "how far are we with job 12", "status of job 12"},
                    Role::look,
                    {gives::job,
                     gives::one_of("state", "of the job", {"open", "done", "cancelled"}),
                     {"instrument", Kind::words, "may be empty"},
                     {"owner", Kind::words, "may be empty"},
                     {"due", Kind::at, "when it is promised for", Often::or_null},
                     gives::wire,
                     {"open_slots", Kind::slot, "those without a fret", Often::many},
                     gives::records("stages", "as they were reported",
                                    {{"kind", Kind::words, "which stage"},
                                     {"finished", Kind::at, "when it was", Often::or_null},
                                     {"recorded", Kind::at, "when that was reported"}}),
                     gives::records("rechecks", "of this job",
                                    {{"slots", Kind::slot, "which frets", Often::many},
                                     {"pressed", Kind::at, "its last pass"},
                                     {"from", Kind::at, "when it may be done"},
                                     {"due", Kind::at, "when it falls due"},
                                     gives::one_of("state", "of the recheck",
                                                   {"waiting", "level", "sprang", "superseded"})})}},
                   &ask_job};

} // namespace nutward::shop::question_rows
