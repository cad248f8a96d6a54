#include "shop/boards.hpp"

#include "shop/rows.hpp"

namespace nutward::shop {

std::vector<Param> board_params() {
  return {
      {"scale", Kind::length, true, false, "scale length; of a fanned board the bass side's", {100, 2000}},
      {"frets", Kind::count, true, false, "the number of its highest fret", {1, 48}},
      {"nut_width", Kind::length, true, false, "width of the board at the nut", {5, 200}},
      {"far_width", Kind::length, true, false, "width further up, at far_slot", {5, 200}},
      {"far_slot", Kind::slot, false, false, "where far_width was measured; slot 12"},
      {"far_distance", Kind::length, false, false, "or how far from the nut it was", {1, 2000}},
      {"widths", Kind::length, false, true, "more widths, measured at width_slots", {5, 200}},
      {"width_slots", Kind::slot, false, true, "the slots of widths, one for each, in the same order"},
      {"flat", Kind::yes, false, false, "the board is flat, as where no radius is said"},
      {"radius", Kind::length, false, false, "of a cylindrical board; flat where not said", {20, 10000}},
      {"nut_radius", Kind::length, false, false, "of a compound board, at the nut", {20, 10000}},
      {"far_radius", Kind::length, false, false, "of a compound board, at the last fret", {20, 10000}},
      {"divisions", Kind::count, false, false, "of the octave; 12", {5, 72}},
      {"positions", Kind::length, false, true, "measured, of each slot from the nut", {0.1, 2000}},
      {"fanned", Kind::yes, false, false, "the frets are fanned; say treble_scale and square_slot"},
      {"treble_scale", Kind::length, false, false, "of a fanned board, its treble side's", {100, 2000}},
      {"square_slot", Kind::slot, false, false,
       "of a fanned board, the slot square to its middle; 0 the nut"},
      {"string_inset", Kind::length, false, false, "of its outer strings from the edges; 3 mm", {0, 50}},
      {"zero_fret", Kind::yes, false, false, "slot 0, at the nut's place, takes a fret"},
      {"ends", Kind::one_of, false, false, "of the frets; rounded where not said", {}, {"rounded", "filed"}},
      {"bound", Kind::yes, false, false, "the board is bound; say how thick the binding is"},
      {"binding",
       Kind::length,
       false,
       false,
       "how thick the binding of a bound board is at one edge",
       {0.3, 6}},
  };
}

namespace {

[[noreturn]] void refuse(std::string what, std::string where, std::string would_do) {
  throw Problem(Fault::value, std::move(what), std::move(where), std::move(would_do));
}

board::Surface surface_of(const Args& args) {
  if (args.has("nut_radius") != args.has("far_radius")) {
    refuse("A compound board has two radii.", args.has("nut_radius") ? "far_radius_mm" : "nut_radius_mm",
           "Say the radius at the nut and at the last slot.");
  }
  if (args.has("nut_radius") && args.has("radius")) {
    refuse("One radius and two radii cannot both be.", "radius_mm",
           "Say either one radius, or the two of a compound board.");
  }
  if (args.yes("flat") && (args.has("radius") || args.has("nut_radius"))) {
    refuse("A flat board has no radius.", args.has("radius") ? "radius_mm" : "nut_radius_mm",
           "Leave one of them out.");
  }
  if (args.has("nut_radius")) {
    return board::Compound{args.get<Length>("nut_radius"), args.get<Length>("far_radius"),
                           static_cast<int>(args.get<std::int64_t>("frets"))};
  }
  if (args.has("radius")) return board::Cylinder{args.get<Length>("radius")};
  return board::Flat{};
}

board::Spot far_at(const Args& args, int slots) {
  if (!args.has("far_distance"))
    return static_cast<int>(args.or_else<std::int64_t>("far_slot", std::min(12, slots)));
  if (args.has("far_slot")) {
    refuse("The far width was measured at a slot or at a distance, not both.", "far_distance_mm",
           "Say one of them.");
  }
  return args.get<Length>("far_distance");
}

std::vector<board::MeasuredWidth> more_widths(const Args& args) {
  const auto widths = args.many<Length>("widths");
  const auto at = args.many<std::int64_t>("width_slots");
  if (widths.size() != at.size()) {
    refuse(fmt::format("{} and {} do not go together.",
                       plural(static_cast<std::int64_t>(widths.size()), "more width"),
                       plural(static_cast<std::int64_t>(at.size()), "slot")),
           "width_slots", "Say one slot for each width, in the same order.");
  }
  std::vector<board::MeasuredWidth> out;
  for (std::size_t i = 0; i < at.size(); ++i)
    out.push_back({board::Spot{static_cast<int>(at[i])}, widths[i]});
  return out;
}

std::optional<board::Fan> fan_of(const Args& args) {
  if (!args.has("treble_scale")) {
    if (args.yes("fanned"))
      refuse("What is the scale on the treble side?", "treble_scale_mm",
             "Say for example: fanned to 635 mm.");
    for (const char* name : {"square_slot", "string_inset"}) {
      if (args.has(name))
        refuse("Only a fanned board has that.",
               name == std::string_view("string_inset") ? "string_inset_mm" : name,
               "Say the treble scale too, or leave it out.");
    }
    return std::nullopt;
  }
  if (args.has("fanned") && !args.yes("fanned"))
    refuse("A board that is not fanned has one scale.", "treble_scale_mm", "Leave one of them out.");
  if (!args.has("square_slot")) {
    refuse("Which slot of the fanned board is square to its middle?", "square_slot",
           "Say its number; 0 is the nut.");
  }
  board::Fan fan{args.get<Length>("treble_scale"), static_cast<int>(args.get<std::int64_t>("square_slot"))};
  fan.string_inset = args.or_else<Length>("string_inset", fan.string_inset);
  return fan;
}

std::optional<Length> binding_of(const Args& args) {
  const auto binding = args.opt<Length>("binding");
  if (args.yes("bound") && !binding)
    refuse("How thick is the binding at one edge?", "binding_mm", "Say for example: binding 1.6 mm.");
  if (binding && args.has("bound") && !args.yes("bound"))
    refuse("A board that is not bound has no binding.", "binding_mm", "Leave one of them out.");
  return binding;
}

// The parameter that a member of the board came from.
std::string field_of(const std::string& member, const Args& args) {
  if (member == "far_at") return args.has("far_distance") ? "far_distance_mm" : "far_slot";
  if (member == "radius_at" || member == "slots") return "frets";
  if (member == "square_at") return "square_slot";
  if (member == "more_widths") return "widths_mm";
  if (member == "divisions") return member;
  return member + "_mm";
}

} // namespace

board::Board board_of(const Args& args, const Setup& setup) {
  board::Board b;
  b.scale = args.get<Length>("scale");
  b.divisions = static_cast<int>(args.or_else<std::int64_t>("divisions", b.divisions));
  b.slots = static_cast<int>(args.get<std::int64_t>("frets"));
  b.nut_width = args.get<Length>("nut_width");
  b.far_width = args.get<Length>("far_width");
  b.far_at = far_at(args, b.slots);
  b.surface = surface_of(args);
  b.ends = args.text("ends") == "filed" ? board::EndStyle::filed : board::EndStyle::rounded;
  b.binding = binding_of(args);
  b.zero_fret = args.yes("zero_fret");
  b.fan = fan_of(args);
  b.positions = args.many<Length>("positions");
  b.more_widths = more_widths(args);
  if (!b.positions.empty() && args.has("divisions"))
    refuse("Measured positions leave nothing to divide.", "divisions", "Say one of them.");
  try {
    board::check(b);
    board::check_binding(b, setup.fit);
  } catch (const board::BadBoard& bad) {
    refuse(bad.what(), field_of(bad.field, args), bad.would_do);
  }
  return b;
}

namespace {

std::string surface_words(const board::Surface& surface, const Setup& setup) {
  if (const auto* round = std::get_if<board::Cylinder>(&surface))
    return "radius " + say(round->radius, setup);
  if (const auto* cone = std::get_if<board::Compound>(&surface)) {
    return fmt::format("radius {} at the nut to {} at {}", say(cone->nut_radius, setup),
                       say(cone->far_radius, setup), words_of(cone->far_at, setup));
  }
  return "flat";
}

} // namespace

std::string words_of(const board::Board& b, const Setup& setup) {
  std::string out = fmt::format("Scale {}", say(b.scale, setup));
  if (b.fan) {
    out += fmt::format(" on the bass and {} on the treble side, {} square", say(b.fan->treble_scale, setup),
                       words_of(board::Spot{b.fan->square_at}, setup));
  }
  out +=
      b.positions.empty() ? fmt::format(", equal temperament of {}", b.divisions) : ", positions as measured";
  if (b.zero_fret) out += ", a zero fret";
  out += ", " + surface_words(b.surface, setup);
  const char* ends = b.ends == board::EndStyle::filed ? "filed" : "rounded";
  if (b.binding)
    return out + fmt::format(", bound in {}, the crown's ends {}.", say(*b.binding, setup), ends);
  return out + fmt::format(", {} ends.", ends);
}

std::string words_of(const board::Spot& spot, const Setup& setup) {
  if (const int* slot = std::get_if<int>(&spot))
    return *slot == 0 ? "the nut" : fmt::format("slot {}", *slot);
  return say(std::get<Length>(spot), setup) + " from the nut";
}

std::string width_warning(const board::Board& b, const Setup& setup) {
  std::vector<std::string> off;
  for (const board::OffLine& w : board::off_line(b)) {
    off.push_back(fmt::format("{} at {}, where the line has {}", say(w.measured, setup),
                              words_of(w.at, setup), say(w.line, setup)));
  }
  if (off.empty()) return "";
  return fmt::format(
      " Not on one straight line with the other widths: {}. Measure there again; if it is so, the "
      "edge is not straight.",
      fmt::join(off, "; "));
}

Value widths_off(const board::Board& b) {
  std::vector<Value> all;
  for (const board::OffLine& w : board::off_line(b)) {
    const int* slot = std::get_if<int>(&w.at);
    all.push_back(record({{"slot", slot ? Value{std::int64_t{*slot}} : Value{}},
                          {"distance_mm", slot ? Value{} : Value{std::get<Length>(w.at)}},
                          {"measured", w.measured},
                          {"line", w.line}}));
  }
  return list(std::move(all));
}

} // namespace nutward::shop
