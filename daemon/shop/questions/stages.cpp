// The stages of a job or of a kind of job: machine, how long, and from how many reports that is known.
#include "shop/machines.hpp"
#include "shop/people.hpp"
#include "shop/rows.hpp"
#include "shop/stage_words.hpp"
#include "shop/work.hpp"

namespace nutward::shop::question_rows {

namespace {

std::string source_words(const Duration& d) {
  switch (d.from) {
  case Duration::From::set:
    return "as set";
  case Duration::From::learnt:
    return fmt::format("median of {}", plural(d.reports, "report"));
  case Duration::From::table:
    return d.reports == 0 ? "usual" : fmt::format("usual; {} so far", plural(d.reports, "report"));
  }
  return "";
}

std::string_view source_code(Duration::From from) {
  static constexpr std::array<std::string_view, 3> words{"usual", "learnt", "set"};
  return words.at(static_cast<std::size_t>(from));
}

struct Standing {
  std::string state, words; // "done", "in_hand", "stopped", "to_do"
};

Standing standing(const Job& job, std::string_view stage, const Moment& moment, const View& view) {
  Standing out{"to_do", ""};
  for (const Stage& s : view.jobs().stages(job.id)) {
    if (s.kind != stage) continue;
    if (s.finished) {
      out = {"done", "done " + moment.zone.human(*s.finished) +
                         (s.open_s ? ", took " + minutes_words(std::chrono::seconds{*s.open_s}) : "")};
    } else if (s.stopped) {
      out = {"stopped", "stopped " + moment.zone.human(*s.stopped)};
    } else {
      out = {"in_hand", fmt::format("{} since {}", name_of(s.actor, view),
                                    moment.zone.human(s.started.value_or(moment.now)))};
    }
  }
  return out;
}

// A job of a kind that is none of the shop's yet.
Job typical(const Args& args) {
  Job out;
  const std::string kind = args.has("kind") ? args.text("kind") : "refret";
  out.kind = kind == "some_slots"  ? JobKind::some_slots
             : kind == "new_board" ? JobKind::new_board
                                   : JobKind::refret;
  out.board.ends = args.text("ends") == "filed" ? board::EndStyle::filed : board::EndStyle::rounded;
  if (args.yes("bound")) out.board.binding = units::from_mm(1.5);
  const auto frets = args.or_else<std::int64_t>("frets", out.kind == JobKind::some_slots ? 5 : 22);
  for (int n = 1; n <= frets; ++n)
    out.slots.push_back(n);
  return out;
}

struct Shown {
  std::vector<Value> data;
  std::chrono::seconds work{0};
  std::string next;
};

Shown show(const Job& job, bool real, const Moment& moment, const View& view, Table& table) {
  Shown out;
  for (const agenda::Stage& s : stages_of(job, view, setup(view))) {
    const agenda::StageRow& row = agenda::row(s.kind);
    if (s.work.count() == 0 && s.lag.count() == 0) continue;
    const auto m = row.minutes > 0 ? machine_for(s.kind, view) : std::nullopt;
    const Duration d = duration_of(s.kind, view);
    const Standing at = real ? standing(job, row.word, moment, view) : Standing{"to_do", ""};
    if (at.state != "done") out.work += s.work;
    if (out.next.empty() && at.state != "done" && row.minutes > 0) out.next = row.what;
    const std::string time =
        s.work.count() > 0
            ? minutes_words(s.work)
            : fmt::format("{} h after", std::chrono::duration_cast<std::chrono::hours>(s.lag).count());
    table.rows.push_back({std::string(row.word), std::string(row.what),
                          row.minutes == 0 ? "-"
                          : m              ? m->name
                                           : "none there",
                          time, row.minutes > 0 ? source_words(d) : "", at.words});
    out.data.push_back(record({{"stage", std::string(row.word)},
                               {"what", std::string(row.what)},
                               {"machine", m ? ref(Thing::machine, m->id) : Value{}},
                               {"minutes", s.work.count() / 60},
                               {"lag_hours", s.lag.count() / 3600},
                               {"minutes_for_22", static_cast<std::int64_t>(d.minutes)},
                               {"known_from", std::string(source_code(d.from))},
                               {"reports", static_cast<std::int64_t>(d.reports)},
                               {"state", at.state}}));
  }
  return out;
}

// "Pressing takes 1 h for 22 frets, as usual; it needs the press."
std::string how_long(const std::string& word, const Job& job, const View& view) {
  const auto all = stages_of(job, view, setup(view));
  const auto kind = agenda::stage_named(word);
  const auto s = std::find_if(all.begin(), all.end(), [&](const agenda::Stage& x) { return x.kind == kind; });
  if (!kind || s == all.end() || s->work.count() == 0)
    return sentence(fmt::format("such a job has no {} to be done.", doing(word)));
  const auto m = machine_for(*kind, view);
  const Duration d = duration_of(*kind, view);
  return sentence(fmt::format("{} takes {} for {}, {}; it needs {}.", doing(word), minutes_words(s->work),
                              plural(std::ssize(job.slots), "fret"), source_words(d),
                              m ? "the " + m->name : "a machine that is not there"));
}

Answer ask(const Args& args, const Moment& moment, const View& view) {
  const bool real = args.has("job");
  const Job job = real ? job_of(args, view, false) : typical(args);
  Answer out;
  out.table = Table{{"stage", "", "machine", "time", "known from", ""}, {}};
  Shown shown = show(job, real, moment, view, *out.table);
  const std::string word = args.text("stage");
  const std::string frets = plural(std::ssize(job.slots), "fret");
  static constexpr std::array kinds{"a whole refret", "some slots", "a new board"};
  const std::string what = kinds.at(static_cast<std::size_t>(job.kind));
  out.text = real ? fmt::format("{}: {} of work to do{}.", named(job), minutes_words(shown.work),
                                shown.next.empty() ? "" : "; next: " + shown.next)
                  : fmt::format("{} of {} takes {} of work.", what, frets, minutes_words(shown.work));
  out.text = sentence(out.text);
  if (!word.empty()) out.text = how_long(word, job, view) + " " + out.text;
  out.reason = fmt::format(
      "Times are open time. A median is of the last {} reports at most, from {} on; usual times are "
      "common practice, from memory.",
      agenda::most_reports, agenda::least_reports);
  out.data = record({{"job", real ? ref(Thing::job, job.id) : Value{}},
                     {"frets", std::ssize(job.slots)},
                     {"work_minutes", shown.work.count() / 60},
                     {"stages", list(std::move(shown.data))}});
  if (real) out.about.args = {{"job", ref(Thing::job, job.id)}};
  return out;
}

} // namespace

namespace {

std::vector<std::string_view> phrases() {
  static const std::string kind =
      "[a|an|the] [whole] (refret {kind=refret}|job|refret with rounded ends {kind=refret} "
      "{ends=rounded}|refret with filed "
      "ends {kind=refret} {ends=filed}|filed refret {kind=refret} {ends=filed}|(refret {kind=refret}|job) "
      "(of|with) {frets} frets|new board {kind=new_board} [(of|with) {frets} "
      "frets]|new board with filed ends {kind=new_board} "
      "{ends=filed}|bound board {bound=yes}|(some|a few) (slots|crowns|frets) "
      "{kind=some_slots}|{frets} (slots|crowns) {kind=some_slots})";
  static const std::vector<std::string> made{
      "[what are|show|list] [the] stages [of|for] {job}",
      "[what are|show|list] [the] stages",
      "[what are|show|list] [the] stages (of|for) " + kind,
      "[what are|show|list] [the] stages (of|for) [a] [whole] {kind}",
      "(which|what) stages (does|has) " + kind + " [have]",
      "what is (left|still) [to be done|to do] (on|for|at|of) {job}",
      "what is left of {job}",
      "how long (do|does) [the] (stages|stage|work|everything) [of a refret {kind=refret}] take",
      "how long (does|will) " + kind + " take",
      "how long (does|will) {job} [still] take",
      "how (far|long) is {job}",
      "how far (are we|am i) (with|on) the work on {job}",
      "how much work is [left] (in|on) {job}",
      "how much (is|work is) (left|still to do) (of|on|for|in) {job}",
      "how much work is " + kind,
      "what is the next stage (of|for|on) {job}",
      "(what|which stage) (is|comes) next (for|on|of|with) {job}",
      "how long does " + stage_pattern(SaidAs::doing) +
          " [the] [frets|board|ends] take [(for|on) ({job}|{frets} frets)]",
      "how long does {stage} take [(for|on) ({job}|{frets} frets)]",
      "how long does it take to " + stage_pattern(SaidAs::to_do) +
          " [the] [frets|board|ends] [(of|for|on) {job}|{frets} frets|{job}]",
      "how long (do|will) (i|we) need (to|for) " + stage_pattern(SaidAs::to_do) +
          " [the] [frets|board|ends] [of] [{job}]"};
  return {made.begin(), made.end()};
}

} // namespace

extern const Question stages;
const Question stages{
    {"stages",
     ("The stages of a job, or of a kind of job: what they need, how long they take, and from how many "
      "reports that "
      "is known."),
     {takes::optional(takes::job),
      {"kind",
       Kind::one_of,
       false,
       false,
       "of a job that is none yet; refret where not said",
       {},
       {"refret", "some_slots", "new_board"}},
      {"frets", Kind::count, false, false, "of such a job; 22, or 5 of some slots", {1, 49}},
      {"ends", Kind::one_of, false, false, "of such a job; rounded where not said", {}, {"rounded", "filed"}},
      {"bound", Kind::yes, false, false, "its board is bound"},
      {"stage", Kind::one_of, false, false, "how long that one takes", {}, worked_stages()}},
     phrases(),
     {"stages", "stages of job 1", "stages of a new board", "how much work is left on job 1",
      "how long does pressing take", "how long does a new board take"},
     Role::look,
     {gives::or_null(gives::job),
      {"frets", Kind::count, "that it sets"},
      {"work_minutes", Kind::count, "of open time still to do"},
      gives::records("stages", "in the order of work",
                     {{"stage", Kind::words, "its word"},
                      {"what", Kind::words, "what is done"},
                      {"machine", Kind::machine, "that it needs", Often::or_null},
                      {"minutes", Kind::count, "of open time"},
                      {"lag_hours", Kind::count, "elapsed, that must have passed since pressing or seating"},
                      {"minutes_for_22", Kind::count, "for 22 frets"},
                      gives::one_of("known_from", "where the time comes from", {"usual", "learnt", "set"}),
                      {"reports", Kind::count, "that there are, at most 9"},
                      gives::one_of("state", "how it stands", {"to_do", "in_hand", "stopped", "done"})})}},
    &ask};

} // namespace nutward::shop::question_rows
