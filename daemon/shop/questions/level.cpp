// What the readings of a job come to: which frets are off, what to do next, and whether it may be called
// level.
#include "shop/level_asked.hpp"

namespace nutward::shop::question_rows {

namespace {

Answer ask(const Args& args, const Moment& moment, const View& view) {
  const Setup set = setup_at(view, moment.now);
  const Job job = job_of(args, view);
  LevelAsked asked{job, view, set};
  if (args.has("line")) {
    for (const level::Line line : level::all_lines) {
      if (word_of(line) == args.text("line")) asked.line = line;
    }
  }
  if (const auto slot = args.opt<std::int64_t>("slot")) asked.slot = static_cast<int>(*slot);
  asked.only = args.text("only");
  asked.all = args.yes("all");
  return answer_of(asked);
}

std::vector<std::string_view> phrases() {
  return {
      ("is (it|{job}) level [now|yet|again] [on [the] {line} [side]]"),
      ("how level is (it|{job}) [on [the] {line} [side]]"),
      ("(can|may|should) (i|we) call (it|{job}) level [now|yet] [on [the] {line} [side]] {only=call}"),
      ("(may|can) (it|{job}) be called level [now|yet] [on [the] {line} [side]] {only=call}"),
      ("is (it|{job}) level enough {only=call}"),
      ("what (do|did) the readings [of {job}] (say|tell|mean|show) [[about|of] [fret] {slot}] [on [the] "
       "{line} [side]]"),
      ("what (do|did) the readings (say|tell|mean|show) (of|for) {job}"),
      ("what is (high|off|uneven) [on [the] {line} [side]] [(of|on) {job}]"),
      ("what is (high|low|off) (of|on) {job} [on [the] {line} [side]]"),
      ("(what|which) (fret|frets) (is|are) (high|low|off|uneven) [on [the] {line} [side]] [(of|on) {job}]"),
      ("(what|which) (fret|frets) (stand|stands) (high|low) [on [the] {line} [side]] [(of|on) {job}]"),
      ("what (should|do|must|can) (i|we) do (about|with) [fret|slot] {slot} [(of|on) {job}]"),
      ("[fret] {slot} [(of|on) {job}] is loose (glue|glue it|what now|now what|does it want glue)"),
      ("what (should|do|must|can) (i|we) do (about|with) (it|that fret) {slot=it}"),
      ("why is [fret] {slot} (high|low|off) [on [the] {line} [side]] [(of|on) {job}]"),
      ("why [fret] {slot} (high|low) [on [the] {line} [side]] [(of|on) {job}]"),
      ("is [fret] {slot} (high|low|level|off) [on [the] {line} [side]] [(of|on) {job}]"),
      ("(which|what) (span|reading) [is|comes|do (i|we) take] next [on [the] {line} [side]] [(of|on|for) "
       "{job}] {only=next}"),
      ("[what is] [the] next (span|reading) [on [the] {line} [side]] [(of|on|for) {job}] {only=next}"),
      ("(where|what) (do|should) (i|we) (read|lay the straightedge|lay the rocker) next [on [the] {line} "
       "[side]] [(of|on) {job}] {only=next}"),
      ("[show|list|which are] [me] [all] [the] readings [(of|for|on) {job}] {all=yes}"),
      ("which readings [still] count [(of|for|on) {job}] {all=yes}"),
      ("what is left to read [(of|on) {job}] {all=yes}"),
      ("[where] [does] [the] (levelling|leveling) (of|on) {job} [stand|stands]")};
}

} // namespace

extern const Question level_question;
const Question level_question{
    {"level",
     "What the readings of a job come to: which frets are high or low, what to do next, and whether it may "
     "be "
     "called level.",
     {takes::job,
      {"line", Kind::one_of, false, false, "only this one", {}, {"bass", "middle", "treble"}},
      takes::optional(
          {"slot", Kind::slot, false, false, "one fret: whether it is off, and what to do about it"}),
      {"only",
       Kind::one_of,
       false,
       false,
       "next: the reading to take now; call: whether it may be called level",
       {},
       {"next", "call"}},
      {"all", Kind::yes, false, false, "the whole table: readings, and the spans still to read"}},
     phrases(),
     {"is job 5 level now", "what do the readings of job 5 say", "which span next on job 5",
      "can I call job 5 level"},
     Role::look,
     level_gives()},
    &ask};

} // namespace nutward::shop::question_rows
