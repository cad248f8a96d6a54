// What there is: sticks and coils, and the tin.
#include "shop/rows.hpp"

namespace nutward::shop::question_rows {

namespace {

// ", 0.54 m of it set aside for job 8".
std::string aside_words(const Wire& wire, Length aside, const View& view, const Setup& set) {
  if (aside == Length{}) return "";
  std::vector<std::int64_t> jobs;
  for (const Job& job : view.jobs().open())
    if (job.wire == wire.id && set_aside(job, view, set) > Length{}) jobs.push_back(job.id);
  return fmt::format(", {} of it set aside for {} {}", units::print(aside, units::LengthUnit::m),
                     jobs.size() == 1 ? "job" : "jobs", fmt::join(jobs, ", "));
}

// A late entry may leave less than nothing, which nobody has.
std::string less_than_nothing(const std::vector<std::string>& wires) {
  if (wires.empty()) return "";
  return fmt::format(" Less than nothing is on hand of {}: enter the delivery that is missing, or count it.",
                     fmt::join(wires, ", "));
}

Answer ask_one(const Wire& wire, const View& view, const Setup& set) {
  const TinSum tin = view.tin().sum(wire.id);
  const Length on_hand = view.wires().on_hand(wire.id);
  Answer out;
  const Length aside = set_aside(wire.id, view, set);
  out.text = fmt::format("Of {} there is {} in sticks and coils{}, and {} in the tin{}{}.", wire.name,
                         units::print(on_hand, units::LengthUnit::m), aside_words(wire, aside, view, set),
                         plural(tin.pieces, "measured piece"),
                         tin.unmeasured > 0 ? fmt::format(" with {} more not measured", tin.unmeasured) : "",
                         tin.held > 0 ? fmt::format(", {} of them held", tin.held) : "");
  if (on_hand < Length{}) out.text += less_than_nothing({wire.name});
  const auto pieces = view.tin().list(wire.id, {}, 200);
  if (!pieces.empty()) {
    out.table = Table{{"piece", "length", "ends", "where", "held for"}, {}};
    for (const Piece& p : pieces) {
      const char* ends = raw_ends(p) == 0 ? "dressed" : raw_ends(p) == 1 ? "one raw" : "raw";
      out.table->rows.push_back({std::to_string(p.id),
                                 p.length ? say(*p.length, set) : plural(p.count, "piece") + " not measured",
                                 ends, p.place, held_words(p)});
    }
  }
  std::vector<Value> all;
  all.reserve(pieces.size());
  for (const Piece& p : pieces) {
    all.push_back(record({{"piece", ref(Thing::piece, p.id)},
                          {"length_mm", opt(p.length)},
                          {"count", p.count},
                          {"raw_ends", std::int64_t{raw_ends(p)}},
                          {"place", p.place},
                          {"job", p.job ? Value{*p.job} : Value{}},
                          {"slot", p.slot ? Value{std::int64_t{*p.slot}} : Value{}},
                          {"more_slots", list_of(p.more_slots)}}));
  }
  out.data = record({{"wire", ref(Thing::wire, wire.id)},
                     {"name", wire.name},
                     {"on_hand", on_hand},
                     {"less_than_nothing", on_hand < Length{}},
                     {"set_aside", aside},
                     {"tin", tin.length},
                     {"pieces", list(std::move(all))}});
  out.about.args = {{"wire", ref(Thing::wire, wire.id)}};
  return out;
}

Answer ask(const Args& args, const Moment&, const View& view) {
  const Setup set = setup(view);
  if (args.has("wire")) return ask_one(wire_of(view, args.id("wire")), view, set);
  Answer out;
  out.table = Table{
      {"wire", "sticks and coils", "set aside", "in the tin", "length there", "not measured", "held"}, {}};
  std::vector<Value> all;
  std::vector<std::string> below;
  std::int64_t pieces = 0;
  const auto wires = view.wires().all();
  for (const Wire& wire : wires) {
    const TinSum tin = view.tin().sum(wire.id);
    const Length on_hand = view.wires().on_hand(wire.id);
    pieces += tin.pieces + tin.unmeasured;
    if (on_hand < Length{}) below.push_back(wire.name);
    const Length aside = set_aside(wire.id, view, set);
    out.table->rows.push_back({wire.name, units::print(on_hand, units::LengthUnit::m),
                               aside == Length{} ? "-" : units::print(aside, units::LengthUnit::m),
                               plural(tin.pieces, "piece"), say(tin.length, set),
                               std::to_string(tin.unmeasured), std::to_string(tin.held)});
    all.push_back(record({{"wire", ref(Thing::wire, wire.id)},
                          {"name", wire.name},
                          {"on_hand", on_hand},
                          {"less_than_nothing", on_hand < Length{}},
                          {"set_aside", aside},
                          {"pieces", tin.pieces},
                          {"tin", tin.length},
                          {"unmeasured", tin.unmeasured},
                          {"held", tin.held}}));
  }
  out.text = wires.empty() ? "No wire has been defined yet."
                           : fmt::format("{} on the shelf, {} in the tin.",
                                         plural(static_cast<std::int64_t>(wires.size()), "wire"),
                                         plural(pieces, "piece"));
  out.text += less_than_nothing(below);
  if (wires.empty()) out.table.reset(), out.reason = "Start with: define wire medium.";
  out.data = record({{"wires", list(std::move(all))}});
  return out;
}

} // namespace

extern const Question stock;
const Question stock{
    {"stock",
     "What there is of a wire, or of all: sticks and coils, and the pieces in the tin.",
     {takes::optional(takes::wire)},
     {("how many (short frets|pieces|offcuts|stick ends) (have we [got]|do we have|are there|are in the tin) "
       "[of {wire}]"),
      ("how many (short frets|pieces|offcuts|stick ends) of {wire} (have we [got]|do we have|are there|are "
       "in "
       "the tin)"),
      "(what|how much) [wire] (do we have|have we|is there|is in stock|is on the shelf)",
      "what is in the tin", "how much {wire} (do we have|have we [got]|is there|is left)",
      "(what|which) pieces of {wire} [are there|do we have]", "stock of {wire}",
      "what is left of [the] {wire} [wire]", "how much {wire} is (free|spare|to spare)", "[show] [the] tin",
      "what [{wire}] is in the tin"},
     {"stock", "how much medium is left", "what is in the tin"},
     Role::look,
     {gives::records("wires", "every wire",
                     {gives::wire,
                      gives::wire_name,
                      {"on_hand", Kind::length, "in sticks and coils"},
                      {"less_than_nothing", Kind::yes, "whether a delivery is missing"},
                      {"set_aside", Kind::length, "of that, for jobs"},
                      {"pieces", Kind::count, "measured ones in the tin"},
                      {"tin", Kind::length, "of these"},
                      {"unmeasured", Kind::count, "pieces that nobody has measured"},
                      {"held", Kind::count, "pieces that are held"}})},
     {gives::wire,
      gives::wire_name,
      {"on_hand", Kind::length, "in sticks and coils"},
      {"less_than_nothing", Kind::yes, "whether a delivery is missing"},
      {"set_aside", Kind::length, "of that, for jobs"},
      {"tin", Kind::length, "of the measured pieces"},
      gives::records("pieces", "up to 200",
                     {gives::piece,
                      {"length", Kind::length, "null where nobody has measured it", Often::or_null},
                      {"count", Kind::count, "over 1 for a handful"},
                      {"raw_ends", Kind::count, "0 to 2"},
                      {"place", Kind::words, "where in the shop"},
                      gives::or_null(gives::job),
                      gives::or_null(gives::slot),
                      {"more_slots", Kind::slot, "that it is held for besides", Often::many}})}},
    &ask};

} // namespace nutward::shop::question_rows
