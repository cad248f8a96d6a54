// What a fret of a job measures.
#include "shop/commands/frets.hpp"

namespace nutward::shop::command_rows {

namespace {

// The ledger follows what a fret measures: what is missing was ground off, and more than was known of, or a
// fret that nobody had reported as made, is counted in.
void correct(Tx& tx, const Job& job, int slot, Length known, Length measured) {
  if (known > measured) {
    tx.move({MovementKind::scrapped,
             job.wire,
             {},
             {},
             job.id,
             slot,
             Place::board,
             Place::scrap,
             known - measured,
             0,
             "measured"});
  } else if (known < measured) {
    tx.move({MovementKind::corrected,
             job.wire,
             {},
             {},
             job.id,
             slot,
             Place::outside,
             Place::board,
             measured - known,
             0,
             "measured"});
  }
}

} // namespace

void record_length(Tx& tx, const Job& job, int slot, Length length) {
  const auto before = fret_in(job, slot, tx);
  correct(tx, job, slot, before ? before->length.value_or(Length{}) : Length{}, length);
  const bool stands = before && before->state != FretState::came_short; // else a new one was made
  put_fret(tx, job, slot, stands ? before->state : FretState::made, length,
           stands ? before->piece : std::nullopt);
}

std::string hardly_its_length(const Args& args, const Moment&, const View& view) {
  if (!args.has("length")) return "";
  const Setup set = setup(view);
  const Job job = job_of(args, view);
  const int slot = slot_of(args, job);
  const Length length = along(args, args.get<Length>("length"));
  const board::Need need = need_of(job, slot, set);
  if (length.nm * 2 >= need.least.nm && length.nm <= need.target.nm * 2) return "";
  return fmt::format("Fret {} of {} would be {} long, and its slot takes {}. Is that its length?", slot,
                     named(job), say(length, set), range_of(need, set));
}

Effect keep_measure(const Args& args, const Job& job, int slot, Tx& tx, const Setup& set) {
  const auto said = args.get<Length>("length");
  const Length length = along(args, said);
  const board::Need need = need_of(job, slot, set);
  const auto before = fret_in(job, slot, tx);
  const bool known = before && before->state != FretState::came_short;
  record_length(tx, job, slot, length);
  Effect out;
  out.answer.text = fmt::format("Fret {} of {} measures {}{}: {}.{}", slot, named(job), say(length, set),
                                across(args, said, set), verdict(length, need, set),
                                known ? ""
                                      : " No fret was on record there: it is counted in as made, and no wire "
                                        "of the stock was taken for it.");
  out.answer.reason = fmt::format("The slot takes {}.", range_of(need, set));
  if (!known)
    out.answer.reason +=
        " If it was cut from the stock: undo this, and report the cutting before the length.";
  if (length < need.least - set.fit.borderline) {
    out.answer.reason +=
        fmt::format(" If it is no use there: fret {} of job {} came out short.", slot, job.id);
  }
  out.answer.data = record({{"job", ref(Thing::job, job.id)},
                            {"slot", std::int64_t{slot}},
                            {"length", length},
                            {"short", length < need.least}});
  out.answer.about.args = {{"job", ref(Thing::job, job.id)}, {"slot", std::int64_t{slot}}};
  return out;
}

namespace {

Effect measured(const Args& args, const Moment&, Tx& tx) {
  const Setup set = setup(tx);
  const Job job = job_of(args, tx);
  return keep_measure(args, job, slot_of(args, job), tx, set);
}

} // namespace

extern const Command measured_row;
const Command measured_row{
    {"measured",
     "Keeps what a fret of a job measures, and says whether it will do.",
     {takes::job,
      takes::slot,
      {"length", Kind::length, true, false, "along the fret", takes::piece_length},
      takes::measured,
      takes::bend_radius,
      takes::at},
     {"fret {slot} of {job} (is|measures|measured) {length}",
      "[the] fret (in|for) slot {slot} of {job} (is|measures) {length}",
      "measured {length} (in|for|at) slot {slot} of {job}",
      "fret {slot} of {job} (is|measures|measured) {length} across {measured=across} [its] [ends] "
      "[(bent to|bend radius|radius) {bend_radius}]"},
     {"fret 3 of job 1 measures 52 mm across its ends, bent to 300 mm", "fret 3 of job 1 measures 52.4 mm",
      "measured 52.4 mm for slot 3 of job 1"},
     Role::bench,
     {gives::job,
      gives::slot,
      {"length", Kind::length, "as measured"},
      {"short", Kind::yes, "whether it is shorter than its slot takes"}}},
    &measured,
    &hardly_its_length};

} // namespace nutward::shop::command_rows
