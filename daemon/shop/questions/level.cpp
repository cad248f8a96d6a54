// What the readings of a job come to: which frets are off, what to do next, and whether it may be called
// level.
#include "shop/level_asked.hpp"

namespace nutward::shop::question_rows {

namespace {

Answer ask(const Args& args, const Moment&, const View& view) {
  const Setup set = setup(view);
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
     {"is {job} level [now|yet]", "is it level [now|yet] [on the {line} [side]]",
      "what do the readings [of {job}] (say|tell|mean|show) [on the {line} [side]]",
      "what do the readings (say|tell|mean|show) (of|about|for) {job}",
      "how level is {job} [on the {line} [side]]",
      "what is (high|low|off) [on the {line} [side]] [(of|on) {job}]",
      "(what|which) (frets|fret) (are|is) (high|low|off) [on the {line} [side]] [(of|on) {job}]",
      "what should (i|we) do (about|with) [fret] {slot} [(of|on) {job}]",
      "what (about|is wrong with) [fret] {slot} [(of|on) {job}]",
      "why is [fret] {slot} (high|low|off) [(of|on) {job}]", "why [fret] {slot} (high|low) [(of|on) {job}]",
      "is [fret] {slot} (high|low|level|off) [(of|on) {job}]",
      "(which|what) span next [on the {line} [side]] [(of|on|for) {job}] <{only=next}>", "level {job} all"},
     {"level job 1", "is job 1 level now"},
     Role::look,
     level_gives()},
    &ask};

} // namespace nutward::shop::question_rows
