// One laying of a straightedge, or one look along the frets, as somebody at the bench says it.
#include "shop/level_asked.hpp"
#include "shop/level_words.hpp"
#include "shop/readings.hpp"
#include "shop/touched_frets.hpp"

namespace nutward::shop::command_rows {

namespace {

std::optional<int> one_fret(const level::Reading& r) {
  if (r.pivot) return r.pivot;
  if (r.felt != level::Felt::not_laid) {
    const bool three = r.span.to == r.span.from + 2;
    return three ? std::optional{r.span.from + 1} : std::nullopt;
  }
  const auto& seen = r.looks_sunk.empty() ? r.looks_high : r.looks_sunk;
  return seen.size() == 1 ? std::optional{seen.front()} : std::nullopt;
}

Value data_of(const Reading& r) {
  const bool laid = r.is.felt != level::Felt::not_laid;
  return record({{"job", ref(Thing::job, r.job)},
                 {"reading", r.id},
                 {"line", std::string(word_of(r.is.line))},
                 {"line_assumed", r.line_assumed},
                 {"laid", laid},
                 {"rocks", r.is.felt == level::Felt::rocks},
                 {"from", std::int64_t{r.is.span.from}},
                 {"to", std::int64_t{r.is.span.to}},
                 {"span_assumed", r.span_assumed},
                 {"gaps", list_of(r.is.gaps)},
                 {"snug", list_of(r.is.snug)},
                 {"sunk", list_of(r.is.looks_sunk)},
                 {"high", list_of(r.is.looks_high)}});
}

Effect reading(const Args& args, const Moment& moment, Tx& tx) {
  const Setup set = setup(tx);
  const Job job = job_of(args, tx);
  Reading r = reading_in(args, job, tx, moment.happened);
  r.id = tx.put(r);
  const Answer means = answer_of({job, tx, set, r.is.line});
  Effect out;
  out.answer.text =
      fmt::format("{}: {}.{} {}", named(job), words_of(r.is), assumed_words(r), without_job(means.text, job));
  out.answer.reason = means.reason;
  out.answer.cautions = means.cautions;
  out.answer.choices = means.choices;
  out.answer.data = data_of(r);
  out.answer.about.args = {{"job", ref(Thing::job, job.id)}, {"reading", r.id}};
  // "No gap" is about the fret that the answer asks about, "still high" else about the one that was read.
  if (const Value* slot = means.about.find("slot"))
    out.answer.about.args.emplace_back("slot", *slot);
  else if (const auto fret = one_fret(r.is))
    out.answer.about.args.emplace_back("slot", std::int64_t{*fret});
  carry_asked(out.answer.about, means);
  return out;
}

// Articles, prepositions and commas need not stand in a pattern (talk/lexicon.cpp); where they do, they tell
// two meanings apart: "on the bass" is a line before it is a job.
#define JOB "[job {job}|of {job}|for {job}] "
#define OF "[of {job}|on job {job}] "
#define ON_THE "[on [the] {line} [side|edge|line]|{line} [side|edge|line]] "
#define A_BIT "|bit|little|slightly|rather|too"
#define OVER "<laid|straight|edge|straightedge|rocker|span|over|across> [frets|fret]"
#define JOINT "(to|-|through|thru|until|till)"
#define ROCKS "(rocks|rocking|wobbles|wobbling|tips|tipping|teeters|teetering) {felt=rocks}"
#define EDGE "[it|still|rocker|edge|straightedge] "
#define STEADY                                                                                               \
  "(steady|solid|flat|quiet|dead|does not (rock|wobble)|do not (rock|wobble)|not rocking|no "                \
  "(rock|rocking)) {felt=steady}"
#define FINE "(ok|okay|fine|good|level) {felt=steady}"
#define FEELS "<is|are|stands|sits|feels|still" A_BIT ">"
#define NO_ROCK "(steady|solid|flat|no (rock|rocking)|not rocking|does not rock) {felt=steady}"
#define VERB "<is|are|it|its|sits|lies|stays|reads|feels|still|quite|perfectly|all|dead>"
#define END                                                                                                  \
  "(nutward {held=nutward}|[toward|towards|against] nut [end|side] {held=nutward}|bodyward "                 \
  "{held=bodyward}|[toward|towards|against] (body|bridge) [end|side] {held=bodyward})"
#define HELD "(held|hold|holding|pressed|pushed|pushing) [it] [down] " END
#define UNDER "(under|below|beneath)"
// What may follow in any order: along which line, on which fret, what a feeler says, and of which job. Each
// begins with a word, so that one of them surely takes one.
#define AT_LINE                                                                                              \
  "({line} [side|edge|line|strings]|(centre|center) [line] {line=middle}|(centreline|centerline) "           \
  "{line=middle})"
#define ON_LINE                                                                                              \
  "on [the] " AT_LINE "|along [the] " AT_LINE "|down [the] " AT_LINE                                         \
  "|{line} [side|edge|line|strings]|centre [line] {line=middle}|center [line] {line=middle}|centreline "     \
  "{line=middle}|centerline {line=middle}"
#define ON_FRET "on [fret] {pivot}|pivots on [fret] {pivot}|pivoting on [fret] {pivot}|over [fret] {pivot}"
#define FEELER                                                                                               \
  "held [down] " END "|when [it] [is] held [down] " END "|hold [down] " END "|holding [down] " END           \
  "|pressed [down] " END "|pushed [down] " END                                                               \
  "|nut [end|side] held [down] {held=nutward}|body [end|side] held [down] {held=bodyward}|gap " UNDER        \
  " {gaps}|shows [a] gap " UNDER " {gaps}|light " UNDER " {gaps}|feeler (goes|slips|fits) " UNDER            \
  " {gaps}|no gap " UNDER " {snug}|snug (under|on|at) {snug}|tight (under|on|at) {snug}"
#define TAIL                                                                                                 \
  "<" ON_LINE "|" ON_FRET "|" FEELER                                                                         \
  "|quick {quick=yes}|quickly {quick=yes}|by [a] quick look {quick=yes}|of {job}|for {job}|on job {job}>"

std::vector<std::string_view> phrases() {
  return {(JOB ON_THE OVER " {from} " JOINT " {to} " OF VERB " (" ROCKS "|" STEADY ") " TAIL),
          (JOB ON_THE OVER " {from} " JOINT " {to} " OF VERB " " FINE " " TAIL),
          (JOB OVER " {from} " JOINT " {to} {line} [side|edge] " VERB " (" ROCKS "|" STEADY ") " TAIL),
          (JOB OVER " {from} {to} " OF VERB " (" ROCKS "|" STEADY ") " TAIL),
          (JOB EDGE ROCKS " [over|across|from|between] {from} (" JOINT "|and) {to} " TAIL),
          (JOB NO_ROCK " [over|across|from|between] {from} (" JOINT "|and) {to} " TAIL),
          (JOB ON_THE "[fret] {about} " OF VERB " (" ROCKS "|" STEADY ") " TAIL),
          (JOB EDGE ROCKS " (on|at|over|across|around) [fret] {about} " TAIL),
          (JOB NO_ROCK " (on|at|over|across|around) [fret] {about} " TAIL),
          // High, without a word of looking, is what a rocker says: it rocks over that fret.
          (JOB ON_THE "[fret] {about} " OF FEELS " (high|proud) {felt=rocks} " TAIL),
          ("[it] [is] still (high|proud|rocks|rocking) {about=it} {felt=rocks} " TAIL),
          ("[it] [is] steady now {about=it} {felt=steady} " TAIL),
          // Where the last answer asked for a reading.
          ("[yes|no|yeah|nope] " EDGE "<is|it|now> (" ROCKS "|" STEADY ") {from=it} {to=it} {line=it}"),
          // Low without a number is what the eye says: no edge tells a low fret by itself.
          (JOB "[fret] {sunk} " OF "<looks|seems|appears|feels|is|are|sits" A_BIT
               "> (sunk|sunken|low|deep) " TAIL),
          ("reflection [of the board] dips (at|by|beside|next) [fret] {sunk} " TAIL),
          (JOB "[fret] {high} " OF "(looks|seems|appears) <still" A_BIT "> (high|proud) " TAIL),
          (HELD " [is] gap " UNDER " {gaps} {reading=it}"),
          (HELD " [is] no gap " UNDER " {snug} {reading=it}"),
          (HELD " feeler (goes|slips|fits) " UNDER " {gaps} {reading=it}"),
          (HELD " [it] [is] (snug|tight) (under|on|at) {snug} {reading=it}"),
          ("gap " UNDER " {gaps} (when|while|with) [it] [is] " HELD " {reading=it}"),
          ("no gap " UNDER " {snug} (when|while|with) [it] [is] " HELD " {reading=it}"),
          ("(that|it) (is|was) (on|along) [the] {line} [side|edge|line] {reading=it}"),
          ("it (pivots|pivoted|rocked) on [fret] {pivot} {reading=it}")};
}

} // namespace

extern const Command reading_row;
const Command reading_row{
    {"reading",
     "Reports one laying of a straightedge over frets, or what the eye saw, and says what it means.",
     {takes::job_spoken_of,
      {"from", Kind::slot, false, false, "the first fret under the edge"},
      {"to", Kind::slot, false, false, "the last one"},
      {"about", Kind::slot, false, false,
       "instead of a span: from the fret before this one to the one after"},
      {"felt", Kind::one_of, false, false, "whether the edge rocks or is steady", {}, {"rocks", "steady"}},
      {"line",
       Kind::one_of,
       false,
       false,
       "along which; the middle where not said",
       {},
       {"bass", "middle", "treble"},
       true},
      {"pivot", Kind::slot, false, false, "the fret that it rocks on"},
      {"held",
       Kind::one_of,
       false,
       false,
       "which end of the edge is held down for a feeler",
       {},
       {"nutward", "bodyward"}},
      {"gaps", Kind::slot, false, true, "frets that a feeler goes under, or between them and the edge"},
      {"snug", Kind::slot, false, true, "frets where it was tried and does not"},
      {"sunk", Kind::slot, false, true, "frets that look sunk to the eye"},
      {"high", Kind::slot, false, true, "frets that look high to the eye"},
      {"quick", Kind::yes, false, false, "a quick look, which feels less"},
      {"reading",
       Kind::count,
       false,
       false,
       "the number of an earlier one, of which this tells more; or say the whole, as in '6 to 8 rocks, held "
       "nutward a gap under 8'",
       {1, 1e15}}},
     phrases(),
     {"6 to 8 of job 5 rocks on the treble side", "5-7 of job 5 steady", "rocks on 9 of job 5",
      "9's high on job 5", "6 to 8 of job 5 rocks on 7, held nutward a gap under 8", "7 of job 5 looks sunk"},
     Role::bench,
     {gives::job,
      {"reading", Kind::count, "its number"},
      gives::one_of("line", "along which", {"bass", "middle", "treble"}),
      {"line_assumed", Kind::yes, "whether the line was not said"},
      {"laid", Kind::yes, "whether an edge was laid; else it was only looked at"},
      {"rocks", Kind::yes, "whether it rocks"},
      {"from", Kind::slot, "the first fret under the edge; of a look, the fret that was seen"},
      {"to", Kind::slot, "the last one"},
      {"span_assumed", Kind::yes, "whether the span was not said"},
      {"gaps", Kind::slot, "where a feeler goes under", Often::many},
      {"snug", Kind::slot, "where it does not", Often::many},
      {"sunk", Kind::slot, "that look sunk", Often::many},
      {"high", Kind::slot, "that look high", Often::many}}},
    &reading};

} // namespace nutward::shop::command_rows
