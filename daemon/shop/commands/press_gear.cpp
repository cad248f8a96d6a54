// What the shop presses with besides its settings: bars; and what a job's neck lies on.
#include "shop/press_settings.hpp"
#include "shop/rows.hpp"

namespace nutward::shop::command_rows {

namespace {

std::string words_of(const press::Bar& bar, const Setup& set) {
  return fmt::format("{}{} long and {} wide, sole {}, {}", bar.narrow ? "narrow, " : "", say(bar.length, set),
                     say(bar.width, set),
                     bar.sole_radius ? "of radius " + say(*bar.sole_radius, set) : "flat",
                     bar.rating ? "rated for " + as_said(*bar.rating, set) : "its rating not known");
}

Effect define_bar(const Args& args, const Moment&, Tx& tx) {
  const Setup set = setup(tx);
  const std::string name = args.text("name");
  const auto before = bar_called(name, tx);
  Bar bar = before.value_or(Bar{});
  bar.is = {name,
            args.get<Length>("length"),
            args.get<Length>("width"),
            args.opt<Length>("sole_radius"),
            args.opt<Force>("rating"),
            args.yes("narrow")};
  try {
    press::check(bar.is, set.load_unit);
  } catch (const press::BadEquipment& bad) {
    throw Problem(Fault::value, bad.what(), "name", bad.would_do);
  }
  bar.id = tx.put(bar);
  std::string ladder;
  if (args.has("ladder")) {
    ladder = check_setting("narrow_ladder", args.text("ladder"), force_unit(tx));
    tx.put(Setting{0, "narrow_ladder", ladder});
    check_equipment(tx, "ladder");
  }
  Effect out;
  out.answer.text = fmt::format("Bar {}: {}{}.{}", name, words_of(bar.is, set),
                                before ? "; it was " + words_of(before->is, set) : "",
                                ladder.empty() ? ""
                                               : fmt::format(" The ladder for narrow bars is {} on a fret {} "
                                                             "long now.",
                                                             ladder, say(ladder_fret, set)));
  if (bar.is.narrow && ladder.empty() && equipment(tx, set).narrow_ladder.empty())
    out.answer.reason =
        "A narrow bar is advised only after its ladder is set: set narrow_ladder to its loads.";
  if (!bar.is.rating)
    out.answer.reason += fmt::format("{}A bar without a known rating limits nothing: the plate does.",
                                     out.answer.reason.empty() ? "" : " ");
  out.answer.cautions = {Hazard::press};
  out.answer.data = record({{"bar", bar.id}, {"name", name}});
  return out;
}

Effect drop_bar(const Args& args, const Moment&, Tx& tx) {
  const Bar bar = bar_of(args.text("name"), "name", tx);
  tx.drop({Thing::bar, bar.id});
  Effect out;
  out.answer.text = fmt::format("Nothing is pressed with bar {} any more.", bar.is.name);
  out.answer.data = record({{"bar", bar.id}, {"name", bar.is.name}});
  return out;
}

// What was said now takes the place of what was said before; what was not stays.
void take_bed(Job& job, const Args& args) {
  job.bed.cradled = args.or_else("cradled", job.bed.cradled);
  job.bed.head_clear = args.or_else("head_clear", job.bed.head_clear);
  job.bed.nothing_bridges = args.or_else("nothing_bridges", job.bed.nothing_bridges);
  job.bed.glue_set = args.or_else("glue_set", job.bed.glue_set);
  job.soft_wood = args.or_else("soft_wood", job.soft_wood);
  job.nut_off = args.or_else("nut_off", job.nut_off);
  if (args.has("body_from")) job.bed.body_from = args.opt<Length>("body_from");
  if (args.has("bare_from")) job.bed.bare_from = args.opt<Length>("bare_from");
  if (args.has("hollow_from") != args.has("hollow_to")) {
    throw Problem(Fault::value, "A hollow is from one place to another.",
                  args.has("hollow_from") ? "hollow_to_mm" : "hollow_from_mm",
                  "Say both, such as: hollow from 350 mm, hollow to 372 mm.");
  }
  if (!args.has("hollow_from")) return;
  const press::Stretch hollow{args.get<Length>("hollow_from"), args.get<Length>("hollow_to")};
  if (hollow.to < hollow.from) {
    throw Problem(Fault::value,
                  fmt::format("A hollow from {} mm to {} mm is the wrong way round.",
                              units::print_exact_mm(hollow.from), units::print_exact_mm(hollow.to)),
                  "hollow_to_mm", "Both are from the nut.");
  }
  constexpr std::size_t most = 20;
  if (job.bed.voids.size() == most)
    throw Problem(Fault::value, fmt::format("That would be more than {} hollows.", most), "hollow_from_mm",
                  "Press such a board somewhere else.");
  job.bed.voids.push_back(hollow);
}

std::string under(const Job& job, const Setup& set) {
  std::string out;
  if (job.bed.body_from) out += fmt::format(" A closed body from {}.", say(*job.bed.body_from, set));
  if (job.bed.bare_from)
    out += fmt::format(" Nothing under the board from {}.", say(*job.bed.bare_from, set));
  for (const press::Stretch& v : job.bed.voids)
    out += fmt::format(" Hollow from {} to {}.", say(v.from, set), say(v.to, set));
  if (job.soft_wood) out += " Soft wood.";
  if (job.nut_off) out += " The nut is off.";
  return out;
}

Effect press_support(const Args& args, const Moment&, Tx& tx) {
  const Setup set = setup(tx);
  Job job = job_of(args, tx);
  if (args.call().args.size() == 1) {
    throw Problem(Fault::value, fmt::format("What does the neck of {} lie on?", named(job)), "cradled",
                  fmt::format("Say: job {} is cradled, head clear, nothing bridging, glue set.", job.id));
  }
  take_bed(job, args);
  tx.put(job);
  const std::string missing = still_to_say(job);
  Effect out;
  out.answer.text =
      fmt::format("{}: {}{}", named(job),
                  missing.empty() ? "cradled under the whole group, head clear, nothing bridging, glue set."
                                  : "still to say before it is pressed: " + missing + ".",
                  under(job, set));
  out.answer.cautions = {Hazard::press};
  out.answer.data = record({{"job", ref(Thing::job, job.id)},
                            {"cradled", job.bed.cradled},
                            {"head_clear", job.bed.head_clear},
                            {"nothing_bridges", job.bed.nothing_bridges},
                            {"glue_set", job.bed.glue_set},
                            {"body_from_mm", opt(job.bed.body_from)},
                            {"bare_from_mm", opt(job.bed.bare_from)},
                            {"soft_wood", job.soft_wood},
                            {"nut_off", job.nut_off},
                            {"ready", missing.empty()}});
  out.answer.about.args = {{"job", ref(Thing::job, job.id)}};
  return out;
}

constexpr Bounds along_neck{1, 2000};

} // namespace

extern const Command define_bar_row;
const Command define_bar_row{
    {"define-bar",
     "Defines a bar that the shop presses with, or says anew what an old one is.",
     {{"name", Kind::name, true, false, "what it is called"},
      {"length", Kind::length, true, false, "along the neck", {3, 400}},
      {"width", Kind::length, true, false, "across it", {20, 300}},
      {"sole_radius", Kind::length, false, false, "of a hollow sole; flat where not said", {50, 10000}},
      {"rating", Kind::load, false, false, "what it is rated for", {0, 1e6}},
      {"narrow", Kind::yes, false, false, "made to bear on one fret"},
      {"ladder", Kind::words, false, false,
       "its loads for a fret 50 mm long, one after the other: the shop's, of every narrow bar"}},
     {"define [a|the] [new] bar [called] {name} {length} (by|x) {width} <flat|sole flat|sole radius "
      "{sole_radius}|rated [for|at] {rating}|narrow {narrow=yes}>",
      "define [a|the] [new] narrow {narrow=yes} bar [called] {name} {length} (by|x) {width} <flat|sole flat|"
      "sole radius {sole_radius}|rated [for|at] {rating}> [[its|with [a]] ladder {ladder}]",
      "bar {name} is {length} (by|x) {width} <flat|sole flat|sole radius {sole_radius}|rated [for|at] "
      "{rating}|narrow {narrow=yes}>"},
     {"define bar long, length 112 mm, width 90 mm",
      "define a narrow bar called thin, 8 mm by 90 mm, its ladder 1000 1500 2000 lb"},
     Role::lead,
     {{"bar", Kind::count, "its id"}, {"name", Kind::name, "what it is called"}}},
    &define_bar};

extern const Command drop_bar_row;
const Command drop_bar_row{
    {"drop-bar",
     "Takes a bar out of use.",
     {{"name", Kind::name, true, false, "what it is called"}},
     {"drop [the] bar {name}", "remove [the] bar {name}", "(we|i) [do] no longer have [the] bar {name}"},
     {"drop bar long"},
     Role::lead,
     {{"bar", Kind::count, "its id"}, {"name", Kind::name, "what it was called"}}},
    &drop_bar};

extern const Command press_support_row;
const Command press_support_row{
    {"press-support",
     "Keeps what a job's neck lies on in the press: nothing is pressed before all four have been said.",
     {takes::job,
      {"cradled", Kind::yes, false, false, "its back lies in a cradle under the whole group"},
      {"head_clear", Kind::yes, false, false, "the head touches nothing"},
      {"nothing_bridges", Kind::yes, false, false, "nothing under the neck keeps it off the cradle"},
      {"glue_set", Kind::yes, false, false, "no glue is fresh"},
      {"body_from", Kind::length, false, false, "from the nut: beyond here there is a closed body",
       along_neck},
      {"bare_from", Kind::length, false, false, "beyond here the board has nothing under it", along_neck},
      {"hollow_from", Kind::length, false, false, "where one more hollow under the board begins", along_neck},
      {"hollow_to", Kind::length, false, false, "and ends", along_neck},
      {"soft_wood", Kind::yes, false, false, "the board is of soft wood"},
      {"nut_off", Kind::yes, false, false, "the nut is out: a bar may reach over its place"}},
     {"[the neck of] {job} (is|lies) <cradled {cradled=yes}|head [is] clear {head_clear=yes}|nothing [is] "
      "bridging {nothing_bridges=yes}|nothing bridges {nothing_bridges=yes}|glue [is] set {glue_set=yes}|no "
      "fresh glue {glue_set=yes}|soft wood {soft_wood=yes}|nut off {nut_off=yes}>",
      "[the] head of {job} is clear {head_clear=yes}", "[the] nut of {job} is (off|out) {nut_off=yes}",
      "[the] glue of {job} (is|has) set {glue_set=yes}",
      "nothing bridges [under] {job} {nothing_bridges=yes}",
      "[the] body of {job} begins (at|from) {body_from}",
      "[the] board of {job} is soft wood {soft_wood=yes}"},
     {"job 5 is cradled, head clear, nothing bridging, glue set", "the body of job 5 begins at 420 mm"},
     Role::bench,
     {gives::job,
      {"cradled", Kind::yes, "whether it was said"},
      {"head_clear", Kind::yes, "likewise"},
      {"nothing_bridges", Kind::yes, "likewise"},
      {"glue_set", Kind::yes, "likewise"},
      {"body_from", Kind::length, "from the nut", Often::or_null},
      {"bare_from", Kind::length, "from the nut", Often::or_null},
      {"soft_wood", Kind::yes, "whether its board is of it"},
      {"nut_off", Kind::yes, "whether the nut is out"},
      {"ready", Kind::yes, "whether all four have been said"}}},
    &press_support};

} // namespace nutward::shop::command_rows
