// Wire: what kinds there are, when to say that it is low.
#include "shop/rows.hpp"

namespace nutward::shop::command_rows {

namespace {

void check_profile(const wire::Profile& profile) {
  try {
    wire::check(profile);
  } catch (const wire::BadProfile& bad) {
    throw Problem(Fault::value, bad.what(), bad.field + "_mm", bad.would_do);
  }
}

Effect define_wire(const Args& args, const Moment&, Tx& tx) {
  Wire wire;
  wire.name = args.text("name");
  for (const Wire& other : tx.wires().all()) {
    if (other.name == wire.name) {
      throw Problem(Fault::state, fmt::format("There is a wire called {} already.", wire.name), "name",
                    "Give it another name.");
    }
  }
  wire.material = args.text("material");
  wire.profile = {args.opt<Length>("crown_width"), args.opt<Length>("crown_height"),
                  args.opt<Length>("tang_depth"), args.opt<Length>("tang_thickness"),
                  args.opt<Length>("barb_width")};
  check_profile(wire.profile);
  wire.stick = args.opt<Length>("stick");
  wire.density = args.opt<double>("g_per_cm3");
  wire.id = tx.put(wire);
  Effect out;
  out.answer.text = fmt::format("{} is a wire of the shop now.", wire.name);
  out.answer.data = record({{"wire", ref(Thing::wire, wire.id)}});
  out.answer.about.args = {{"wire", ref(Thing::wire, wire.id)}};
  return out;
}

Effect reorder_level(const Args& args, const Moment&, Tx& tx) {
  Wire wire = wire_of(tx, args.id("wire"));
  wire.reorder_at = args.get<Length>("level");
  tx.put(wire);
  Effect out;
  out.answer.text = fmt::format("{} is low from now on when less than {} is on hand.", wire.name,
                                units::print(*wire.reorder_at, units::LengthUnit::m));
  out.answer.data = record({{"wire", ref(Thing::wire, wire.id)}, {"level", *wire.reorder_at}});
  out.answer.about.args = {{"wire", ref(Thing::wire, wire.id)}};
  return out;
}

} // namespace

extern const Command define_wire_row;
const Command define_wire_row{
    {"define-wire",
     "Adds a kind of fret wire.",
     {{"name", Kind::name, true, false, "what the shop calls it"},
      {"material", Kind::words, false, false, "nickel silver, stainless …"},
      {"crown_width", Kind::length, false, false, "of the crown"},
      {"crown_height", Kind::length, false, false, "of the crown"},
      {"tang_depth", Kind::length, false, false, "of the tang"},
      {"tang_thickness", Kind::length, false, false, "of the tang"},
      {"barb_width", Kind::length, false, false, "over the barbs"},
      {"stick", Kind::length, false, false, "usual length of a stick", {50, 5000}},
      {"g_per_cm3", Kind::number, false, false, "density, where the material does not say it", {1, 25}}},
     {"define [a] [new] wire [called] {name}", "new wire [called] {name}",
      "(define [a] [new] wire|new wire) [called] {name} <crown {crown_width} wide|crown {crown_height} "
      "high|{crown_width} wide|{crown_height} high|tang {tang_depth} deep|tang {tang_thickness} thick"
      "|{tang_depth} deep|{tang_thickness} thick|sticks of {stick}|stick {stick}|material {material}>",
      "add [a] [kind of] wire [called] {name}"},
     {"define wire slim", "define wire soft brass, stick 500 mm", "new wire called slim"},
     Role::bench,
     {gives::wire}},
    &define_wire};

extern const Command reorder_level_row;
const Command reorder_level_row{
    {"reorder-level",
     "Says from when on a wire is low.",
     {takes::wire, {"level", Kind::length, true, false, "on hand below this is low", {0, 1e7}}},
     {"reorder {wire} (at|below|under) {level}", "(tell me|say) when {wire} is (below|under) {level}",
      "{wire} is low (at|below|under) {level}", "[the] reorder level of {wire} is {level}"},
     {"reorder medium below 6 m", "tell me when tall is under 4 m"},
     Role::bench,
     {gives::wire, {"level", Kind::length, "on hand below this is low"}}},
    &reorder_level};

} // namespace nutward::shop::command_rows
