// What was done to frets one by one besides pressing: reseated, glued and clamped, levelled.
#include "shop/commands/frets.hpp"
#include "shop/commands/press_report.hpp"
#include "shop/touch.hpp"
#include "shop/touched_frets.hpp"

namespace nutward::shop::command_rows {

namespace {

const Param which{"slots", Kind::slot, true, true, "which frets"};
const Give gives_which{"slots", Kind::slot, "these frets", Often::many};

Effect reseated(const Args& args, const Moment&, Tx& tx) {
  const Job job = job_of(args, tx);
  const auto slots = args.slots("slots");
  change_frets(tx, job, slots, [](Fret& f) { f.state = FretState::seated; });
  for (const int slot : slots)
    forget_pressings(tx, job, slot);
  touch(tx, job, slots);
  Effect out = about_frets(job, slots,
                           fmt::format("{}: reseated. What was read and pressed of {} before counts no more.",
                                       of_frets(job, slots), slots.size() == 1 ? "it" : "them"),
                           tx, {Hazard::iron, Hazard::hammering});
  return out;
}

Effect glued(const Args& args, const Moment&, Tx& tx) {
  Job job = job_of(args, tx);
  const auto slots = args.slots("slots");
  change_frets(tx, job, slots, [](Fret& f) {
    if (f.state == FretState::sprang) f.state = FretState::pressed;
  });
  touch(tx, job, slots);
  job.bed.glue_set = false;
  tx.put(job);
  Effect out = about_frets(
      job, slots,
      fmt::format(
          "{}: glued and clamped. Leave it alone until the glue has set, then say: the glue of job {} is "
          "set; and read it again.",
          of_frets(job, slots), job.id),
      tx, {Hazard::glue});
  out.answer.reason = "Nothing is pressed over fresh glue.";
  return out;
}

Effect levelled(const Args& args, const Moment&, Tx& tx) {
  const Job job = job_of(args, tx);
  const auto slots = args.slots("slots");
  frets_on_record(job, slots, tx);
  levelled_down(tx, job, slots);
  touch(tx, job, slots);
  Effect out = about_frets(job, slots,
                           fmt::format("{}: levelled. Crown and polish {}, then read again.",
                                       of_frets(job, slots), slots.size() == 1 ? "it" : "them"),
                           tx, {Hazard::metal_dust});
  return out;
}

} // namespace

extern const Command reseated_row;
const Command reseated_row{
    {"reseated",
     "Reports frets that were pulled and seated anew, or shimmed: they count as seated and not as pressed.",
     {takes::job_spoken_of, which, takes::at},
     {("[pulled and] reseated [fret|frets] {slots} [of {job}] [{at}]"),
      ("[job {job}|of {job}|for {job}] {slots} [of {job}] (is|are|was|were) [pulled and] (reseated|shimmed) "
       "[{at}]"),
      ("seated [fret|frets] {slots} [of {job}] (again|anew|afresh) [{at}]"),
      ("shimmed [and] [reseated] [fret|frets] {slots} [of {job}] [{at}]")},
     {"reseated fret 9 of job 5", "shimmed 9 of job 5"},
     Role::bench,
     {gives::job, gives_which}},
    &reseated};

extern const Command glued_row;
const Command glued_row{
    {"glued",
     "Reports frets that were glued and clamped; nothing is pressed there until the glue is said to be set.",
     {takes::job_spoken_of, which, takes::at},
     {("glued [and] [clamped] [down] [fret|frets] {slots} [of {job}] [{at}]"),
      ("clamped [and] [glued] [down] [fret|frets] {slots} [of {job}] [{at}]"),
      ("[job {job}|of {job}|for {job}] {slots} [of {job}] [is|are|was|were] (glued|clamped) [and "
       "clamped|down] [{at}]")},
     {"glued and clamped 9 of job 5", "9 of job 5 is glued"},
     Role::bench,
     {gives::job, gives_which}},
    &glued};

extern const Command levelled_row;
const Command levelled_row{
    {"levelled",
     "Reports frets that were levelled with abrasive one by one; the whole board is a stage.",
     {takes::job_spoken_of, which, takes::at},
     {("(levelled|leveled) [down] [fret|frets] {slots} [of {job}] [{at}]"),
      ("[job {job}|of {job}|for {job}] {slots} [of {job}] (is|are|was|were) (levelled|leveled|filed "
       "down|sanded down) [{at}]"),
      ("(filed|sanded|took|rubbed) [fret|frets] {slots} [of {job}] down [{at}]")},
     {"levelled fret 9 of job 5", "9 of job 5 is levelled"},
     Role::bench,
     {gives::job, gives_which}},
    &levelled};

} // namespace nutward::shop::command_rows
