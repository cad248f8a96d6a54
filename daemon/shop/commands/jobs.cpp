// Jobs come in, get another day, are cancelled.
#include "agenda/deadline.hpp"
#include "shop/boards.hpp"
#include "shop/rows.hpp"

namespace nutward::shop::command_rows {

namespace {

Instant due_of(Day day, const Moment& moment) {
  if (day > moment.zone.local(moment.now).day + 3660) {
    throw Problem(Fault::value, fmt::format("{} is over ten years away.", hours::human(day)), "due_on",
                  "Check the year.");
  }
  const auto closing = agenda::due_instant(day, moment.calendar, moment.zone);
  // A shop that has said no hours yet promises the end of the day.
  const Instant due = closing.value_or(moment.zone.instant(day, 86400));
  if (due <= moment.happened) {
    throw Problem(Fault::value, fmt::format("{} is over already.", hours::human(day)), "due_on",
                  "Give a day still to come.");
  }
  return due;
}

// Where the promised day is a closed one, the closing before it counts; said, since nobody asked for that
// day.
std::string earlier_day(Day asked, Instant due, const Moment& moment) {
  if (moment.zone.local(due - std::chrono::seconds(1)).day == asked) return "";
  return fmt::format("The shop is closed on {}: the last closing before it counts. ", hours::human(asked));
}

std::vector<int> slots_of(const Args& args, const board::Board& b, JobKind kind) {
  std::vector<int> out = args.slots("slots");
  if (kind == JobKind::some_slots && out.empty()) {
    throw Problem(Fault::value, "Which slots get a new fret?", "slots", "Say them, such as slots 1-5.");
  }
  const int first = b.zero_fret ? 0 : 1;
  if (out.empty()) {
    for (int n = first; n <= b.slots; ++n)
      out.push_back(n);
  }
  if (out.front() < first) {
    throw Problem(Fault::value, "Slot 0 takes a fret only on a board with a zero fret.", "slots",
                  fmt::format("Give slots from 1 to {}, or say that it has a zero fret.", b.slots));
  }
  if (out.back() > b.slots) {
    throw Problem(Fault::value, fmt::format("Slot {} is beyond the board's {} frets.", out.back(), b.slots),
                  "slots", fmt::format("Give slots from {} to {}.", first, b.slots));
  }
  return out;
}

// "Cut from new wire it takes 1.12 m; the shortest fret is cut to …, the longest to …." and, bound, the
// tangs.
struct Takes {
  Length wire;
  std::string words;
};

Takes takes_of(const Job& job, const Setup& set) {
  Takes out;
  std::vector<board::Need> needs;
  for (int slot : job.slots) {
    needs.push_back(need_of(job, slot, set));
    out.wire += needs.back().cut + set.fit.nip_loss;
  }
  // Not always the first and the last: the nut's end of a fan leans most.
  const auto [least, most] = std::minmax_element(
      needs.begin(), needs.end(), [](const board::Need& a, const board::Need& b) { return a.cut < b.cut; });
  out.words =
      fmt::format("Cut from new wire it takes {}; the shortest fret is cut to {}, the longest to {}.",
                  units::print(out.wire, units::LengthUnit::m), say(least->cut, set), say(most->cut, set));
  if (least->tang) {
    out.words += fmt::format(" Their tangs are nipped back to {} to {}.", say(*least->tang, set),
                             say(*most->tang, set));
  }
  return out;
}

// When it must be pressed, or why that cannot be told; empty without a due day.
std::string press_words(const Job& job, const View& view, const Setup& set, const Moment& moment) {
  if (!job.due) return "";
  if (const auto by = press_by(job, view, set, moment.calendar, moment.zone)) {
    const std::string latest = moment.zone.human(by->latest);
    return by->latest >= moment.now
               ? fmt::format("Press it by {}.", latest)
               : fmt::format(
                     "To be ready then it had to be pressed by {}, and that is over already: it will be "
                     "late, unless it is promised for a later day.",
                     latest);
  }
  const auto week = view.house().week();
  const bool no_hours =
      std::all_of(week.begin(), week.end(), [](const Weekday& d) { return d.spans.empty(); });
  return no_hours ? "No opening hours are known, so by when to press it cannot be told." : "";
}

Effect new_job(const Args& args, const Moment& moment, Tx& tx) {
  const Setup set = setup(tx);
  Job job;
  const std::string kind = args.has("kind") ? args.text("kind") : args.has("slots") ? "some_slots" : "refret";
  job.kind = kind == "some_slots"  ? JobKind::some_slots
             : kind == "new_board" ? JobKind::new_board
                                   : JobKind::refret;
  job.owner = args.text("owner");
  job.instrument = args.text("instrument");
  job.wood = args.text("wood");
  job.glue = args.text("glue");
  job.note = args.text("note");
  job.wire = args.id("wire");
  job.board = board_of(args, set);
  job.slots = slots_of(args, job.board, job.kind);
  job.humidity_seated = args.opt<double>("humidity");
  job.taken_in = moment.happened;
  if (args.has("due")) job.due = due_of(args.get<Day>("due"), moment);
  job.id = tx.put(job);
  const Takes takes = takes_of(job, set);
  Effect out;
  out.answer.text =
      fmt::format("Took in {}: {} frets of {}, {}.", named(job), job.slots.size(), wire_of(tx, job.wire).name,
                  job.due ? "due " + moment.zone.human(*job.due) : "no day promised") +
      width_warning(job.board, set);
  out.answer.reason = takes.words;
  if (job.due) {
    out.answer.reason = earlier_day(args.get<Day>("due"), *job.due, moment) + out.answer.reason;
  }
  {
    const std::string press = press_words(job, tx, set, moment);
    out.answer.reason += (press.empty() ? "" : " ") + press;
  }
  out.answer.data = record({{"job", ref(Thing::job, job.id)},
                            {"wire_needed", takes.wire},
                            {"due_at", opt(job.due)},
                            {"widths_off", widths_off(job.board)}});
  out.answer.about.args = {{"job", ref(Thing::job, job.id)}};
  return out;
}

Effect no_due(Job job, const Moment& moment, Tx& tx) {
  if (!job.due)
    throw Problem(Fault::state, fmt::format("{} is promised for no day as it is.", named(job)), "job",
                  "There is nothing to do.");
  Effect out;
  out.answer.text =
      fmt::format("{} is promised for no day now, it was {}.", named(job), moment.zone.human(*job.due));
  out.answer.reason = "It is planned behind what has a day to keep, as soon as that leaves room.";
  job.due.reset();
  tx.put(job);
  out.answer.data = record({{"job", ref(Thing::job, job.id)}, {"due_at", Value{}}});
  out.answer.about.args = {{"job", ref(Thing::job, job.id)}};
  return out;
}

Effect set_due(const Args& args, const Moment& moment, Tx& tx) {
  const Setup set = setup(tx);
  Job job = job_of(args, tx);
  const auto before = job.due;
  if (args.yes("no_day")) return no_due(std::move(job), moment, tx);
  if (!args.has("due"))
    throw Problem(
        Fault::value, fmt::format("Which day is {} promised for?", named(job)), "due_on",
        fmt::format("Say it, as in 'job {0} is due friday', or 'job {0} has no due date'.", job.id));
  job.due = due_of(args.get<Day>("due"), moment);
  tx.put(job);
  Effect out;
  out.answer.text = fmt::format("{} is due {} now{}.", named(job), moment.zone.human(*job.due),
                                before ? fmt::format(", it was {}", moment.zone.human(*before)) : "");
  out.answer.reason = earlier_day(args.get<Day>("due"), *job.due, moment);
  out.answer.reason += press_words(job, tx, set, moment);
  out.answer.data = record({{"job", ref(Thing::job, job.id)}, {"due_at", *job.due}});
  out.answer.about.args = {{"job", ref(Thing::job, job.id)}};
  return out;
}

std::vector<Param> new_job_takes() {
  std::vector<Param> out = board_params();
  out.insert(out.begin(), takes::wire);
  const std::vector<Param> rest{{"kind",
                                 Kind::one_of,
                                 false,
                                 false,
                                 "refret where not said; some_slots where slots are",
                                 {},
                                 {"refret", "some_slots", "new_board"}},
                                {"slots", Kind::slot, false, true, "the slots of a job that does some"},
                                {"instrument", Kind::words, false, false, "what it is"},
                                {"owner", Kind::words, false, false, "whose it is"},
                                {"due", Kind::day, false, false, "the promised day"},
                                {"wood", Kind::words, false, false, "of the board"},
                                {"glue", Kind::words, false, false, "if the frets are glued"},
                                {"humidity", Kind::number, false, false, "in the shop, percent", {0, 100}},
                                takes::note,
                                takes::at};
  out.insert(out.end(), rest.begin(), rest.end());
  return out;
}

// What a board may have besides comes in any order, before the wire or behind it.
std::vector<std::string_view> new_job_phrases() {
  static const std::vector<std::string> all = [] {
    const std::string widths =
        "nut [width] {nut_width} {far_width} (at {far_slot}|at {far_distance} [from the nut]) "
        "[[also] {widths} at {width_slots}] ";
    const std::string board =
        "flat {flat=yes}|radius {radius}|radius {nut_radius} to {far_radius}|compound radius {nut_radius} "
        "to {far_radius}|zero fret {zero_fret=yes}"
        "|bound {bound=yes}|bound in {binding}|binding {binding}|{binding} binding"
        "|{ends} ends|{divisions} [steps|divisions|notes] (to the|per) octave|{divisions} tone"
        "|divisions {divisions}|positions {positions}|slots at {positions}|string inset {string_inset}"
        "|fanned {fanned=yes}|fanned to {treble_scale}|square at {square_slot}|square at nut "
        "{square_slot=0}";
    const std::string work =
        "|kind {kind}|some {kind=some_slots} {slots} [only]|only {kind=some_slots} {slots}|slots {slots} "
        "[only]|new {kind=new_board} board|wood {wood}|board of {wood}|glue {glue}|glued with {glue}"
        "|humidity {humidity}|note {note}|due {due}";
    const std::string besides = "<" + board + work + "> ";
    const std::string rest = "[with] {frets} frets " + widths + besides + "wire {wire} " + besides;
    std::vector<std::string> out;
    for (const std::string who : {"new job {instrument} for {owner} ", "take in {instrument} for {owner} "}) {
      out.push_back(who + besides + "scale {scale} " + besides + rest);
      out.push_back(who + besides + "(fanned|scale|scales) {scale} to {treble_scale} " + besides + rest);
    }
    return out;
  }();
  return {all.begin(), all.end()};
}

std::string why_yes(const Args& args, const Moment&, const View& view) {
  return fmt::format("That closes {}, and its held pieces are let go.", named(job_of(args, view)));
}

Effect cancel_job(const Args& args, const Moment&, Tx& tx) {
  Job job = job_of(args, tx);
  job.state = JobState::cancelled;
  job.set_aside.clear();
  tx.put(job);
  std::int64_t freed = 0;
  for (Piece p : tx.tin().held_for(job.id)) {
    unhold(p);
    tx.put(p);
    ++freed;
  }
  Effect out;
  out.answer.text = fmt::format("Cancelled {}{}.", named(job),
                                freed > 0 ? fmt::format("; let go of {}", plural(freed, "piece")) : "");
  out.answer.data = record({{"job", ref(Thing::job, job.id)}, {"freed", freed}});
  return out;
}

} // namespace

extern const Command new_job_row;
const Command new_job_row{
    {"new-job",
     "Takes in a job with its board.",
     new_job_takes(),
     new_job_phrases(),
     {("new job tenor ukulele for Mara, scale 432 mm, 18 frets, nut 35 mm and 44 mm at slot 12, wire narrow, "
       "due 2027-01-15"),
      ("new job eight-string for Jona, fanned 686 mm to 648 mm square at slot 7, 24 frets, nut 54 mm and 68 "
       "mm "
       "at slot 12, radius 400 mm, wire medium"),
      ("new job archtop for Vida, scale 630 mm, 20 frets, nut 43 mm and 53 mm at slot 12, bound, binding 1.6 "
       "mm, "
       "zero fret, wire medium"),
      ("new job tenor ukulele for Mara, some slots 1-5, wood ebony, scale 432 mm, 18 frets, nut 35 mm and 44 "
       "mm at slot 12, wire narrow, note the third fret is high")},
     Role::bench,
     {gives::job,
      {"wire_needed", Kind::length, "for all its slots"},
      {"due", Kind::at, "when it is promised for", Often::or_null},
      gives::widths_off}},
    &new_job};

extern const Command set_due_row;
const Command set_due_row{
    {"set-due",
     "Promises another day for a job, or none.",
     {takes::job,
      {"due", Kind::day, false, false, "the promised day"},
      {"no_day", Kind::yes, false, false, "no day is promised any more"}},
     {"{job} is due [on] {due}", "promise {job} for {due}",
      "(move|change|set) [the] due [date|day] of {job} to {due}",
      "{job} (must be|has to be|is to be|should be) (ready|done|finished) (by|on|for) {due}",
      "{job} has [time] until {due}", "(promise|promised) {due} for {job}",
      "{job} is promised [for|by|on] {due}",
      "[the] (owner|customer) of {job} (wants|needs) it (by|on|for) {due}",
      "(i|we) (promised|have promised|promise) {job} (by|on|for) {due}",
      "{job} has no [due|promised] (date|day|deadline) [any more] {no_day=yes}",
      "{job} is (not|no longer) due [any more] {no_day=yes}", "{job} has no deadline [any more] {no_day=yes}",
      ("(take|remove|drop|clear|cancel|forget) [away] [the] (due date|due day|promised day|deadline) "
       "(of|from|for|off) {job} {no_day=yes}"),
      "no (day|date) is promised for {job} [any more] {no_day=yes}",
      "{job} is promised for no day [any more] {no_day=yes}"},
     {"job 1 is due 2027-01-20", "promise job 1 for 2027-01-20", "job 1 has no due date any more"},
     Role::bench,
     {gives::job, {"due", Kind::at, "when it is promised for", Often::or_null}}},
    &set_due};

extern const Command cancel_job_row;
const Command cancel_job_row{
    {"cancel-job",
     "Takes a job out of the queue.",
     {takes::job, {"why", Kind::words, false, false, "the reason"}},
     {"cancel {job} [because {why}]", "{job} is (cancelled|off|called off)", "call off {job}"},
     {"cancel job 1", "job 1 is called off"},
     Role::bench,
     {gives::job, {"freed", Kind::count, "pieces that were held for it"}}},
    &cancel_job,
    &why_yes};

} // namespace nutward::shop::command_rows
