// Whether to order: on hand, what the open jobs still need, and the reorder level, said in refrets.
#include "shop/rows.hpp"

#include <cmath>

namespace nutward::shop::question_rows {

namespace {

struct Row1 {
  Wire wire;
  Length on_hand, wanted, aside;
  PerRefret each;
  bool low = false, short_of_jobs = false;
  double refrets_left() const {
    return each.length.nm == 0
               ? 0
               : static_cast<double>((on_hand - wanted).nm) / static_cast<double>(each.length.nm);
  }
};

Row1 look(const Wire& wire, const View& view, const Setup& set) {
  Row1 r{wire, view.wires().on_hand(wire.id), wanted_by_jobs(wire.id, view, set),
         set_aside(wire.id, view, set), per_refret(wire.id, view, set)};
  r.low = wire.reorder_at && r.on_hand < *wire.reorder_at;
  r.short_of_jobs = r.on_hand < r.wanted;
  return r;
}

// "3 refrets" after the queue is served; a part of one does not count, but is not nothing.
std::string left_words(const Row1& r) {
  if (r.on_hand <= r.wanted) return "none";
  const auto whole = static_cast<std::int64_t>(std::floor(r.refrets_left()));
  if (whole == 0) return "less than one refret";
  return (r.each.guessed ? "about " : "") + plural(whole, "refret");
}

std::string verdict(const Row1& r) {
  using units::LengthUnit;
  if (r.short_of_jobs)
    return fmt::format("order now: the open jobs lack {}", units::print(r.wanted - r.on_hand, LengthUnit::m));
  if (r.low) return "order: it is below its reorder level";
  return r.on_hand.nm == 0 ? "none left, and no open job needs it" : "enough";
}

Answer ask(const Args& args, const Moment&, const View& view) {
  const Setup set = setup(view);
  const auto wires = args.has("wire") ? std::vector{wire_of(view, args.id("wire"))} : view.wires().all();
  Answer out;
  out.table = Table{{"wire", "on hand", "open jobs need", "left after them", "reorder level", "so"}, {}};
  std::vector<Value> all;
  std::vector<std::string> order, fine, gone;
  for (const Wire& wire : wires) {
    const Row1 r = look(wire, view, set);
    if (r.low || r.short_of_jobs)
      order.push_back(fmt::format("{} ({} left)", wire.name, left_words(r)));
    else if (r.on_hand.nm == 0)
      gone.push_back(wire.name);
    else
      fine.push_back(fmt::format("{} of {}", left_words(r), wire.name));
    using units::LengthUnit;
    out.table->rows.push_back(
        {wire.name, units::print(r.on_hand, LengthUnit::m), units::print(r.wanted, LengthUnit::m),
         left_words(r), wire.reorder_at ? units::print(*wire.reorder_at, LengthUnit::m) : "-", verdict(r)});
    all.push_back(record({{"wire", ref(Thing::wire, wire.id)},
                          {"name", wire.name},
                          {"on_hand", r.on_hand},
                          {"open_jobs", r.wanted},
                          {"set_aside", r.aside},
                          {"refret", r.each.length},
                          {"refret_guessed", r.each.guessed},
                          {"refrets_left", std::floor(std::max(0.0, r.refrets_left()))},
                          {"reorder_at_mm", opt(wire.reorder_at)},
                          {"order", r.low || r.short_of_jobs}}));
  }
  std::vector<std::string> aside;
  for (const Wire& wire : wires)
    if (const Length v = set_aside(wire.id, view, set); v > Length{})
      aside.push_back(fmt::format("{} of {}", units::print(v, units::LengthUnit::m), wire.name));
  if (wires.empty())
    out.text = "No wire has been defined yet.", out.table.reset();
  else if (order.empty())
    out.text = "No need to order." +
               (fine.empty() ? "" : fmt::format(" Left after the open jobs: {}.", fmt::join(fine, ", ")));
  else
    out.text =
        fmt::format("Order {}.{}", fmt::join(order, ", "),
                    fine.empty() ? "" : fmt::format(" Enough of the rest: {}.", fmt::join(fine, ", ")));
  if (!gone.empty())
    out.text += fmt::format(" None left, and no open job needs it: {}.", fmt::join(gone, ", "));
  out.reason = "Left means after every open slot of the queue is cut from new wire, in refrets of the usual "
               "length; pieces held for a slot count as wire saved.";
  if (!aside.empty())
    out.reason += fmt::format(" Of what they need {} {} set aside.", fmt::join(aside, ", "),
                              aside.size() == 1 ? "is" : "are");
  out.data = record({{"order", !order.empty()}, {"wires", list(std::move(all))}});
  if (args.has("wire")) out.about.args = {{"wire", ref(Thing::wire, args.id("wire"))}};
  return out;
}

} // namespace

extern const Question supply;
const Question supply{
    {"supply",
     "Whether to order wire: on hand, what the open jobs need, the reorder level; in refrets.",
     {takes::optional(takes::wire)},
     {"(do|should|must) (we|i) order [wire|anything|any wire]",
      "(do|should|must) (we|i) order [more|some] {wire}", "(is there|do we have|have we) enough [wire]",
      "(is there|do we have|have we) enough {wire}", "how many refrets [are] (left|are left) (in|of) {wire}",
      "(what|which wire) (runs|is running) (out|low)"},
     {"supply", "do we order wire", "is there enough medium"},
     Role::look,
     {{"order", Kind::yes, "whether any wire is to be ordered"},
      gives::records("wires", "those asked about",
                     {gives::wire,
                      gives::wire_name,
                      {"on_hand", Kind::length, "in sticks and coils"},
                      {"open_jobs", Kind::length, "what open jobs still need"},
                      {"set_aside", Kind::length, "of that, set aside for them"},
                      {"refret", Kind::length, "what one refret takes"},
                      {"refret_guessed", Kind::yes, "whether that is a guess"},
                      {"refrets_left", Kind::number, "whole ones, after the open jobs"},
                      {"reorder_at", Kind::length, "its reorder level", Often::or_null},
                      {"order", Kind::yes, "whether to order it"}})}},
    &ask};

} // namespace nutward::shop::question_rows
