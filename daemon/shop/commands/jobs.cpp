// Jobs come in, get another day, are cancelled.
#include "agenda/deadline.hpp"
#include "shop/rows.hpp"

namespace nutward::shop::command_rows {

namespace {

board::Surface surface_of(const Args& args) {
  if (args.has("nut_radius") != args.has("far_radius")) {
    throw Problem(Fault::value, "A compound board has two radii.",
                  args.has("nut_radius") ? "far_radius_mm" : "nut_radius_mm",
                  "Say the radius at the nut and at the last slot.");
  }
  if (args.has("nut_radius") && args.has("radius")) {
    throw Problem(Fault::value, "One radius and two radii cannot both be.", "radius_mm",
                  "Say either one radius, or the two of a compound board.");
  }
  if (args.has("nut_radius")) {
    return board::Compound{args.get<Length>("nut_radius"), args.get<Length>("far_radius"),
                           static_cast<int>(args.get<std::int64_t>("frets"))};
  }
  if (args.has("radius")) return board::Cylinder{args.get<Length>("radius")};
  return board::Flat{};
}

board::Board board_of(const Args& args) {
  board::Board b;
  b.scale = args.get<Length>("scale");
  b.slots = static_cast<int>(args.get<std::int64_t>("frets"));
  b.nut_width = args.get<Length>("nut_width");
  b.far_width = args.get<Length>("far_width");
  b.far_at = static_cast<int>(args.or_else<std::int64_t>("far_slot", std::min<std::int64_t>(12, b.slots)));
  b.surface = surface_of(args);
  b.ends = args.text("ends") == "filed" ? board::EndStyle::filed : board::EndStyle::rounded;
  try {
    board::check(b);
  } catch (const board::BadBoard& bad) {
    const std::string field = bad.field == "far_at"      ? "far_slot"
                              : bad.field == "radius_at" ? "frets"
                              : bad.field == "slots"     ? "frets"
                                                         : bad.field + "_mm";
    throw Problem(Fault::value, bad.what(), field, bad.would_do);
  }
  return b;
}

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
  if (out.empty()) {
    for (int n = 1; n <= b.slots; ++n)
      out.push_back(n);
  }
  if (out.front() < 1 || out.back() > b.slots) {
    throw Problem(Fault::value,
                  fmt::format("Slot {} is beyond the board's {} frets.",
                              out.front() < 1 ? out.front() : out.back(), b.slots),
                  "slots", fmt::format("Give slots from 1 to {}.", b.slots));
  }
  return out;
}

Effect new_job(const Args& args, const Moment& moment, Tx& tx) {
  const Setup set = setup(tx);
  Job job;
  const std::string kind = args.text("kind");
  job.kind = kind == "some_slots"  ? JobKind::some_slots
             : kind == "new_board" ? JobKind::new_board
                                   : JobKind::refret;
  job.owner = args.text("owner");
  job.instrument = args.text("instrument");
  job.wood = args.text("wood");
  job.glue = args.text("glue");
  job.note = args.text("note");
  job.wire = args.id("wire");
  job.board = board_of(args);
  job.slots = slots_of(args, job.board, job.kind);
  job.humidity_seated = args.opt<double>("humidity");
  job.taken_in = moment.happened;
  if (args.has("due")) job.due = due_of(args.get<Day>("due"), moment);
  job.id = tx.put(job);
  Length sum;
  for (int slot : job.slots)
    sum += need_of(job, slot, set).cut + set.fit.nip_loss;
  Effect out;
  out.answer.text =
      fmt::format("Took in {}: {} frets of {}, {}.", named(job), job.slots.size(), wire_of(tx, job.wire).name,
                  job.due ? "due " + moment.zone.human(*job.due) : "no day promised");
  out.answer.reason =
      fmt::format("Cut from new wire it takes {}; the shortest fret is cut to {}, the longest to {}.",
                  units::print(sum, units::LengthUnit::m), say(need_of(job, job.slots.front(), set).cut, set),
                  say(need_of(job, job.slots.back(), set).cut, set));
  if (job.due) {
    out.answer.reason = earlier_day(args.get<Day>("due"), *job.due, moment) + out.answer.reason;
  }
  if (const auto by = press_by(job, tx, set, moment.calendar, moment.zone))
    out.answer.reason += fmt::format(" Press it by {}.", moment.zone.human(by->latest));
  out.answer.data = record({{"job", ref(Thing::job, job.id)}, {"wire_needed", sum}, {"due", opt(job.due)}});
  out.answer.about.args = {{"job", ref(Thing::job, job.id)}};
  return out;
}

Effect set_due(const Args& args, const Moment& moment, Tx& tx) {
  const Setup set = setup(tx);
  Job job = job_of(args, tx);
  const auto before = job.due;
  job.due = due_of(args.get<Day>("due"), moment);
  tx.put(job);
  Effect out;
  out.answer.text = fmt::format("{} is due {} now{}.", named(job), moment.zone.human(*job.due),
                                before ? fmt::format(", it was {}", moment.zone.human(*before)) : "");
  out.answer.reason = earlier_day(args.get<Day>("due"), *job.due, moment);
  if (const auto by = press_by(job, tx, set, moment.calendar, moment.zone)) {
    out.answer.reason += fmt::format("Press it by {}{}.", moment.zone.human(by->latest),
                                     by->latest < moment.now ? ", which is past: it will be late" : "");
  }
  out.answer.data = record({{"job", ref(Thing::job, job.id)}, {"due", *job.due}});
  out.answer.about.args = {{"job", ref(Thing::job, job.id)}};
  return out;
}

std::string why_yes(const Args& args, const Moment&, const View& view) {
  return fmt::format("That closes {}, and its held pieces are let go.", named(job_of(args, view)));
}

Effect cancel_job(const Args& args, const Moment&, Tx& tx) {
  Job job = job_of(args, tx);
  job.state = JobState::cancelled;
  tx.put(job);
  std::int64_t freed = 0;
  for (Piece p : tx.tin().held_for(job.id)) {
    p.job.reset();
    p.slot.reset();
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
     {takes::wire,
      {"scale", Kind::length, true, false, "scale length", {100, 2000}},
      {"frets", Kind::count, true, false, "how many the board has", {1, 48}},
      {"nut_width", Kind::length, true, false, "width of the board at the nut", {5, 200}},
      {"far_width", Kind::length, true, false, "width at far_slot", {5, 200}},
      {"far_slot", Kind::slot, false, false, "where far_width was measured; slot 12"},
      {"radius", Kind::length, false, false, "of a cylindrical board; flat where not said", {20, 10000}},
      {"nut_radius", Kind::length, false, false, "of a compound board, at the nut", {20, 10000}},
      {"far_radius", Kind::length, false, false, "of a compound board, at the last fret", {20, 10000}},
      {"ends", Kind::one_of, false, false, "rounded where not said", {}, {"rounded", "filed"}},
      {"kind",
       Kind::one_of,
       false,
       false,
       "refret where not said",
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
      takes::at},
     {"new job {instrument} for {owner} scale {scale} [with] {frets} frets nut [width] {nut_width} [and] "
      "{far_width} at slot {far_slot} wire {wire} [due {due}]",
      "new job {instrument} for {owner} scale {scale} [with] {frets} frets nut [width] {nut_width} [and] "
      "{far_width} at slot {far_slot} radius {radius} wire {wire} [due {due}]",
      "take in [a|an] {instrument} for {owner} scale {scale} [with] {frets} frets nut [width] {nut_width} "
      "[and] {far_width} at slot {far_slot} wire {wire} [due {due}]"},
     {"new job tenor ukulele for Mara, scale 432 mm, 18 frets, nut 35 mm and 44 mm at slot 12, wire narrow, "
      "due 2027-01-15"},
     Role::bench},
    &new_job};

extern const Command set_due_row;
const Command set_due_row{{"set-due",
                           "Promises another day for a job.",
                           {takes::job, {"due", Kind::day, true, false, "the promised day"}},
                           {"{job} is due [on] {due}", "promise {job} for {due}",
                            "(move|change) [the] due (date|day) of {job} to {due}",
                            "{job} (must be|has to be) ready (by|on) {due}"},
                           {"job 12 is due 2027-01-20", "promise job 12 for 2027-01-20"},
                           Role::bench},
                          &set_due};

extern const Command cancel_job_row;
const Command cancel_job_row{
    {"cancel-job",
     "Takes a job out of the queue.",
     {takes::job, {"why", Kind::words, false, false, "the reason"}},
     {"cancel {job} [because {why}]", "{job} is (cancelled|off|called off)", "call off {job}"},
     {"cancel job 12", "job 12 is called off"},
     Role::bench},
    &cancel_job,
    &why_yes};

} // namespace nutward::shop::command_rows
