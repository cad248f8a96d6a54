// What a wire of the shop measures, said after it was defined.
#include "shop/rows.hpp"

namespace nutward::shop::command_rows {

namespace {

struct Size {
  std::string_view param, words;
  std::optional<Length> wire::Profile::*member;
};
constexpr std::array<Size, 5> sizes{{
    {"crown_width", "crown {} wide", &wire::Profile::crown_width},
    {"crown_height", "crown {} high", &wire::Profile::crown_height},
    {"tang_depth", "tang {} deep", &wire::Profile::tang_depth},
    {"tang_thickness", "tang {} thick", &wire::Profile::tang_thickness},
    {"barb_width", "{} over the barbs", &wire::Profile::barb_width},
}};

Effect wire_size(const Args& args, const Moment&, Tx& tx) {
  const Setup set = setup(tx);
  Wire wire = wire_of(tx, args.id("wire"));
  std::vector<std::string> now, was;
  for (const Size& size : sizes) {
    if (!args.has(size.param)) continue;
    const Length said = args.get<Length>(size.param);
    std::optional<Length>& kept = wire.profile.*size.member;
    now.push_back(fmt::format(fmt::runtime(size.words), say(said, set)));
    if (kept && *kept != said) was.push_back(fmt::format(fmt::runtime(size.words), say(*kept, set)));
    kept = said;
  }
  if (now.empty()) {
    throw Problem(Fault::value, fmt::format("What does {} measure?", wire.name), "crown_width_mm",
                  fmt::format("Say it, such as: the crown of {} is 2.4 mm wide.", wire.name));
  }
  try {
    wire::check(wire.profile);
  } catch (const wire::BadProfile& bad) {
    throw Problem(Fault::value, bad.what(), bad.field + "_mm", bad.would_do);
  }
  tx.put(wire);
  Effect out;
  out.answer.text = fmt::format("{}: {}{}.", wire.name, fmt::join(now, ", "),
                                was.empty() ? " now" : fmt::format(" now; it was {}", fmt::join(was, ", ")));
  out.answer.data = record({{"wire", ref(Thing::wire, wire.id)},
                            {"crown_width_mm", opt(wire.profile.crown_width)},
                            {"crown_height_mm", opt(wire.profile.crown_height)},
                            {"tang_depth_mm", opt(wire.profile.tang_depth)},
                            {"tang_thickness_mm", opt(wire.profile.tang_thickness)},
                            {"barb_width_mm", opt(wire.profile.barb_width)}});
  out.answer.about.args = {{"wire", ref(Thing::wire, wire.id)}};
  return out;
}

} // namespace

extern const Command wire_size_row;
const Command wire_size_row{
    {"wire-size",
     "Keeps what a wire measures: its crown, its tang, its barbs.",
     {takes::wire,
      {"crown_width", Kind::length, false, false, "of the crown"},
      {"crown_height", Kind::length, false, false, "of the crown"},
      {"tang_depth", Kind::length, false, false, "of the tang"},
      {"tang_thickness", Kind::length, false, false, "of the tang"},
      {"barb_width", Kind::length, false, false, "over the barbs"}},
     {"[the] crown of {wire} [wire] is {crown_width} wide [and {crown_height} high]",
      "[the] crown of {wire} [wire] is {crown_height} high [and {crown_width} wide]",
      "[the] crown width of {wire} [wire] is {crown_width}",
      "[the] crown height of {wire} [wire] is {crown_height}",
      "[the] tang of {wire} [wire] is {tang_depth} deep [and {tang_thickness} thick]",
      "[the] tang of {wire} [wire] is {tang_thickness} thick [and {tang_depth} deep]",
      "[the] barbs of {wire} [wire] are {barb_width} wide",
      "{wire} [wire] (has a|has|is) crown {crown_width} wide",
      "{wire} [wire] measures {barb_width} over [the|its] barbs"},
     {"the crown of medium is 2.4 mm wide", "the tang of medium is 1.9 mm deep and 0.5 mm thick",
      "medium measures 0.8 mm over the barbs"},
     Role::bench,
     {gives::wire,
      {"crown_width", Kind::length, "as it is kept now, like the next", Often::or_null},
      {"crown_height", Kind::length, "of the crown", Often::or_null},
      {"tang_depth", Kind::length, "of the tang", Often::or_null},
      {"tang_thickness", Kind::length, "of the tang", Often::or_null},
      {"barb_width", Kind::length, "over the barbs", Often::or_null}}},
    &wire_size};

} // namespace nutward::shop::command_rows
