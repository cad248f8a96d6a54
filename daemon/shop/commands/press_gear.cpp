// What the shop presses with besides its settings: bars.
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

} // namespace nutward::shop::command_rows
