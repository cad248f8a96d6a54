// Deliveries: which lots there are, and how high their crowns are.
#include "shop/rows.hpp"

namespace nutward::shop::question_rows {

namespace {

void add(Answer& out, std::vector<Value>& all, const Wire& w, const Lot& l, const Moment& moment,
         const View& view, const Setup& set) {
  const bool coil = l.form == Form::coil;
  const auto line = l.purchase_line ? view.purchases().line(*l.purchase_line) : std::nullopt;
  const std::int64_t order = line ? line->purchase : 0;
  out.table->rows.push_back(
      {std::to_string(l.id), w.name, hours::human(moment.zone.local(l.received).day),
       fmt::format("{} of {}", plural(l.count, coil ? "coil" : "stick"),
                   coil ? units::print(l.each, units::LengthUnit::m) : say(l.each, set)),
       l.crown_height ? say(*l.crown_height, set) : "not measured", l.supplier,
       l.price ? units::print(*l.price, set.currency) : "not said", order > 0 ? std::to_string(order) : "-"});
  all.push_back(record({{"lot", ref(Thing::lot, l.id)},
                        {"wire", ref(Thing::wire, w.id)},
                        {"form", std::string(coil ? "coil" : "stick")},
                        {"count", l.count},
                        {"each", l.each},
                        {"crown_height_mm", opt(l.crown_height)},
                        {"supplier", l.supplier},
                        {"received", l.received},
                        {"price_minor", l.price ? Value{*l.price} : Value{}},
                        {"order", order > 0 ? Value{order} : Value{}},
                        {"gross_g", l.gross ? Value{*l.gross} : Value{}},
                        {"tare_g", l.tare ? Value{*l.tare} : Value{}}}));
}

// "the newest: 30 sticks of 610.00 mm from Lindwurm, for 58.50 EUR (3.20 EUR a metre)".
std::string newest_words(const Lot& l, const Moment& moment, const Setup& set) {
  const bool coil = l.form == Form::coil;
  std::string out =
      fmt::format(" The newest came {}: {} of {}{}", hours::human(moment.zone.local(l.received).day),
                  plural(l.count, coil ? "coil" : "stick"),
                  coil ? units::print(l.each, units::LengthUnit::m) : say(l.each, set),
                  l.supplier.empty() ? "" : " from " + l.supplier);
  if (!l.price) return out + ", at a price that nobody said.";
  const auto metre = units::share(*l.price, units::from_mm(1000), l.each * l.count);
  return out + fmt::format(", for {} ({} a metre).", units::print(*l.price, set.currency),
                           units::print(metre, set.currency));
}

Answer ask(const Args& args, const Moment& moment, const View& view) {
  const Setup set = setup(view);
  const auto wires = args.has("wire") ? std::vector{wire_of(view, args.id("wire"))} : view.wires().all();
  Answer out;
  out.table = Table{{"lot", "wire", "received", "what", "crown height", "from", "price", "order"}, {}};
  std::vector<Value> all;
  for (const Wire& w : wires) {
    for (const Lot& l : view.wires().lots(w.id))
      add(out, all, w, l, moment, view, set);
  }
  const std::string of = args.has("wire") ? " of " + wires.front().name : "";
  out.text = all.empty()
                 ? fmt::format("No delivery{} is on record.", of)
                 : fmt::format("{}{} on record.", plural(static_cast<std::int64_t>(all.size()), "lot"), of);
  if (all.empty()) out.table.reset();
  if (args.has("wire") && !all.empty())
    out.text += newest_words(view.wires().lots(wires.front().id).front(), moment, set);
  out.data = record({{"lots", list(std::move(all))}});
  if (args.has("wire")) out.about.args = {{"wire", ref(Thing::wire, args.id("wire"))}};
  return out;
}

} // namespace

extern const Question lots;
const Question lots{
    {"lots",
     "Which deliveries there were of a wire, or of all: crown heights, from whom and for how much.",
     {takes::optional(takes::wire)},
     {"what did we pay for [the] [last] {wire}", "(how much|what) (did|does) [the] [last] {wire} cost",
      "what is the price of {wire}", "(what|which) lots [of {wire}] [(are there|do we have|have we)]",
      "[show] [the] lots of {wire}", "(what|which) deliveries [of {wire}] [(were there|came|did we get)]"},
     {"lots of medium", "which lots do we have", "what did we pay for medium"},
     Role::look,
     {gives::records("lots", "deliveries, by wire",
                     {{"lot", Kind::count, "its number"},
                      gives::wire,
                      gives::one_of("form", "of the wire", {"stick", "coil"}),
                      {"count", Kind::count, "how many"},
                      {"each", Kind::length, "of one"},
                      {"crown_height", Kind::length, "as measured on it", Often::or_null},
                      {"supplier", Kind::words, "may be empty"},
                      {"received", Kind::at, "when it came"},
                      {"price", Kind::money, "of all of it", Often::or_null},
                      {"order", Kind::count, "that it came of", Often::or_null},
                      {"gross", Kind::mass, "of one coil with its spool, as it came", Often::or_null},
                      {"tare", Kind::mass, "of its empty spool", Often::or_null}})}},
    &ask};

} // namespace nutward::shop::question_rows
