// What a job says about its wire: which lot its frets are of, and how its slots were sawn.
#include "shop/rows.hpp"
#include "wire/suits.hpp"

namespace nutward::shop::command_rows {

namespace {

Effect from_lot(const Args& args, const Moment&, Tx& tx) {
  const Setup set = setup(tx);
  Job job = job_of(args, tx);
  const Lot lot = lot_of(args.get<std::int64_t>("lot"), job.wire, tx);
  job.lot = lot.id;
  tx.put(job);
  Effect out;
  out.answer.text = fmt::format("{} is fretted from lot {} of {}.", sentence(named(job)), lot.id,
                                wire_of(tx, job.wire).name);
  out.answer.reason =
      lot.crown_height
          ? fmt::format("Its crown is {} high: pieces that differ by more than {} are not offered.",
                        say(*lot.crown_height, set), say(set.fit.crown_tolerance, set))
          : "Nobody has measured that lot's crown, so that no piece is left out for it.";
  out.answer.data = record({{"job", ref(Thing::job, job.id)},
                            {"lot", ref(Thing::lot, lot.id)},
                            {"crown_height_mm", opt(lot.crown_height)}});
  out.answer.about.args = {{"job", ref(Thing::job, job.id)}};
  return out;
}

Effect slot_size(const Args& args, const Moment&, Tx& tx) {
  const Setup set = setup(tx);
  Job job = job_of(args, tx);
  if (!args.has("slot_width") && !args.has("slot_depth")) {
    throw Problem(
        Fault::value, "Neither a width nor a depth was said.", "slot_width_mm",
        fmt::format("Say for example: the slots of job {} are 0.6 mm wide and 2.2 mm deep.", job.id));
  }
  if (args.has("slot_width")) job.slot_width = args.opt<Length>("slot_width");
  if (args.has("slot_depth")) job.slot_depth = args.opt<Length>("slot_depth");
  if (args.has("bottom")) job.slot_flat_bottom = args.text("bottom") == "flat";
  try {
    wire::suits({}, {job.slot_width, job.slot_depth, true, false}, {});
  } catch (const wire::BadProfile& bad) {
    throw Problem(Fault::value, bad.what(), bad.field + "_mm", bad.would_do);
  }
  tx.put(job);
  Effect out;
  out.answer.text =
      fmt::format("The slots of {} are {} wide, and {} deep.", named(job),
                  job.slot_width ? say(*job.slot_width, set) : "nobody knows how",
                  job.slot_depth ? "in the middle " + say(*job.slot_depth, set) : "nobody knows how");
  out.answer.reason = job.slot_flat_bottom
                          ? "Their bottom is taken as flat: under a radius they are shallower at the edge."
                          : "Their bottom follows the board: they are as deep at the edge.";
  out.answer.data = record({{"job", ref(Thing::job, job.id)},
                            {"slot_width_mm", opt(job.slot_width)},
                            {"slot_depth_mm", opt(job.slot_depth)},
                            {"flat_bottom", job.slot_flat_bottom}});
  out.answer.about.args = {{"job", ref(Thing::job, job.id)}};
  return out;
}

} // namespace

extern const Command from_lot_row;
const Command from_lot_row{
    {"from-lot",
     "Says which delivery of its wire a job is fretted from, so that crowns match.",
     {takes::job, {"lot", Kind::count, true, false, "its number", {1, 1e9}}, takes::at},
     {"{job} is fretted (from|with|of) lot {lot}", "fret {job} (from|with) lot {lot}",
      "{job} (takes|gets|uses) lot {lot}", "lot {lot} is for {job}"},
     {"job 1 is fretted from lot 2", "lot 2 is for job 1"},
     Role::bench,
     {gives::job,
      {"lot", Kind::count, "its number"},
      {"crown_height", Kind::length, "as measured on it", Often::or_null}}},
    &from_lot};

extern const Command slot_size_row;
const Command slot_size_row{
    {"slot-size",
     "Keeps how wide and how deep the slots of a job were sawn.",
     {takes::job,
      {"slot_width", Kind::length, false, false, "of the slots", {0.1, 5}},
      {"slot_depth", Kind::length, false, false, "in the middle of the board", {0.1, 20}},
      {"bottom", Kind::one_of, false, false, "flat, or curved like the board; flat", {}, {"flat", "curved"}},
      takes::at},
     {"[the] slots of {job} are {slot_width} wide [[and] {slot_depth} deep]",
      "[the] slots of {job} are {slot_depth} deep",
      "{job} has slots [of] {slot_width} wide [[and] {slot_depth} deep]",
      "{job} has slots [of] {slot_width} [by] {slot_depth} [with [a] {bottom} bottom]"},
     {"the slots of job 1 are 0.6 mm wide and 2.2 mm deep", "job 1 has slots 0.6 mm wide"},
     Role::bench,
     {gives::job,
      {"slot_width", Kind::length, "as kept", Often::or_null},
      {"slot_depth", Kind::length, "as kept", Often::or_null},
      {"flat_bottom", Kind::yes, "whether the slots are flat at the bottom"}}},
    &slot_size};

} // namespace nutward::shop::command_rows
