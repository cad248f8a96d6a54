// How a job is pressed: the next pass, all of them, one group, or one fret again.
#include "shop/press_asked.hpp"

namespace nutward::shop::question_rows {

namespace {

constexpr Bounds along_board{0, 200};

// New crowns beside worn ones are blended.
void refuse_some_slots(const Job& job) {
  if (job.kind != JobKind::some_slots) return;
  throw Problem(
      Fault::state,
      fmt::format("{} is of some slots only: new crowns beside worn ones are seated and blended, not "
                  "pressed under a bar.",
                  named(job)),
      "job", "Seat them, level the new crowns to the old ones with abrasive, and polish.");
}

PressWish wish_of(const Args& args, const View& view) {
  PressWish out;
  if (args.has("bar")) out.bar = bar_of(args.text("bar"), "bar", view);
  out.load = args.opt<Force>("load");
  out.crown_width = args.opt<Length>("crown_width");
  out.every_group = args.yes("every_group");
  return out;
}

std::optional<press::Off> off_of(const Args& args) {
  if (args.has("off") != args.has("toward")) {
    throw Problem(Fault::value, "A load off its place is so far off, and toward one side.",
                  args.has("off") ? "toward" : "off_mm", "Say both, such as: off 5 mm, toward treble.");
  }
  if (!args.has("off")) return std::nullopt;
  const Length off = args.get<Length>("off"), back{-off.nm};
  const std::string toward = args.text("toward");
  press::Off out;
  if (toward == "bodyward" || toward == "nutward")
    out.along = toward == "bodyward" ? off : back;
  else
    out.sideways = toward == "treble" ? off : back;
  return out;
}

// A crown that was said with the question holds for this answer alone; where it is not what the wire has on
// record, keeping it is offered.
void offer_to_keep(Answer& out, const Job& job, Length said, const View& view, const Setup& set) {
  const Wire wire = wire_of(view, job.wire);
  if (wire.profile.crown_width == said) return;
  out.reason +=
      fmt::format("{}Reckoned with a crown {} wide, as you said; {}. To keep it, say: the crown of {} is {} "
                  "wide.",
                  out.reason.empty() ? "" : " ", say(said, set),
                  wire.profile.crown_width
                      ? fmt::format("{} has {} on record", wire.name, say(*wire.profile.crown_width, set))
                      : fmt::format("for {} none is on record", wire.name),
                  wire.name, say(said, set));
  out.choices.push_back({fmt::format("keep it: the crown of {} is {} wide", wire.name, say(said, set)),
                         {"wire-size", {{"wire", Ref{Thing::wire, wire.id}}, {"crown_width", said}}},
                         {}});
}

Answer ask(const Args& args, const Moment& moment, const View& view) {
  const Setup set = setup_at(view, moment.now);
  const Job job = job_of(args, view);
  refuse_some_slots(job);
  const PressWish wish = wish_of(args, view);
  Answer out = answer_of(
      {job, set, view, wish, args.slots("slots"), off_of(args), args.text("favour"), args.yes("all")});
  if (wish.crown_width) offer_to_keep(out, job, *wish.crown_width, view, set);
  out.cautions = {Hazard::press};
  out.about.args.emplace_back("job", ref(Thing::job, job.id));
  return out;
}

} // namespace

extern const Question press_question;
const Question press_question{
    {"press",
     ("How a job is pressed: the next pass with its bar, place and load; all passes; one group; or one fret "
      "again."),
     {takes::job,
      {"slots", Kind::slot, false, true, "one group of frets; one alone: that fret again"},
      {"bar", Kind::name, false, false, "with this one; whichever takes most where not said"},
      {"load", Kind::load, false, false, "what if it were this", {0, 1e6}},
      {"all", Kind::yes, false, false, "all passes, as a table"},
      {"every_group", Kind::yes, false, false, "also groups inside the one before"},
      {"off", Kind::length, false, false, "what if the load stood this far off its place", along_board},
      {"toward",
       Kind::one_of,
       false,
       false,
       "and in which direction",
       {},
       {"bodyward", "nutward", "bass", "treble"}},
      {"favour",
       Kind::one_of,
       false,
       false,
       "how far to a side at most, and with what load",
       {},
       {"bass", "treble"}},
      {"crown_width", Kind::length, false, false, "of the wire, where the shop does not know it", {0.5, 6}}},
     {("how (do|should|must|can) (i|we) press {job} [with [the|a] bar ({bar})] [(at|with) {load}] [[with] "
       "[a] "
       "crown "
       "{crown_width} [wide]]"),
      ("how (do|should|must|can) (i|we) press [fret|frets|slot|slots] {slots} (of|on) {job} [again] "
       "[(with|under) "
       "[the] bar ({bar})] [(at|with) {load}]"),
      "press {job} [with [the|a] bar ({bar})] [(at|with) {load}] [[with] [a] crown {crown_width} [wide]]",
      "[the] next pass of {job} with [a] crown {crown_width} [wide]",
      "press {job} (at|with) {load} [with [the|a] bar ({bar})]",
      ("press [fret|frets|slot|slots] {slots} (of|on) {job} [again] [(with|under) [the] bar ({bar})] "
       "[(at|with) "
       "{load}]"),
      "(what|how much|which) load (is|would be) (safe|right|enough|too much) for [fret|frets|slot|slots] "
      "{slots} "
      "(of|on) {job}",
      "[what is|which is|show] [the] next pass [(of|for|on) {job}]",
      "(which|what) frets [do (i|we) press|are|come] next [(of|for|on) {job}]",
      ("where (did|was|were|am|are) (i|we) [stop|stopped|leave off|left off] [pressing] [(of|for|on|with) "
       "{job}]"),
      "how far did (i|we) (get|press) [pressing] [(of|on) {job}]",
      "press [fret|frets|slot|slots] {slots} again [(with|under) [the] bar ({bar})] [(at|with) {load}]",
      "what if (i|we) (use|used|take|took) [the] (bar ({bar})|({bar}) bar) [(of|on|for) {job}]",
      "what if (i|we) (press|pressed|go|went|come|came) [up] (at|with|to) {load} [(of|on|for) {job}]",
      "what if [the] load (is|was|were) {load} [(of|on|for) {job}]",
      "[show|list] [me] [all] [the] passes (of|for) {job} {all=yes}",
      "[show|list] [me] all [the] passes {all=yes}",
      "[the] press plan (of|for) {job} {all=yes}",
      "(what|which|how much) load [for|on] [fret|frets|slot|slots] {slots} [of {job}]",
      "(what|which|how much) load [for|on] [fret|frets|slot|slots] {slots} (of|on) {job}",
      ("what if the load (is|stands) {off} [too far|off] [to|toward] [the] {toward} [of the middle] "
       "[(of|on|for) "
       "{job}]"),
      ("what if the load [on] [fret|frets|slot|slots] {slots} (of|on) {job} (is|stands) {off} [too far|off] "
       "[to|toward] [the] {toward} [of the middle]"),
      ("what if the load (is|stands) {off} [too far|off] [to|toward] [the] {toward} [side] [of the middle] "
       "(on|over|at) [fret|frets|slot|slots] {slots} (of|on) {job}"),
      "how (do|can) (i|we) (favour|favor) [the] {favour} [side] [(of|on) {job}]",
      ("how (do|can) (i|we) (favour|favor) [the] {favour} [side] (on|of|at) [fret|frets|slot|slots] {slots} "
       "(of|on) "
       "{job}")},
     {"next pass of job 5", "passes for job 5", "press job 5 at 2000 lb",
      "what load for frets 9-14 of job 5"},
     Role::look,
     press_gives()},
    &ask,
    true};

} // namespace nutward::shop::question_rows
