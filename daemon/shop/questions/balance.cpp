// A month's wire, where it came from and where it went, to the nanometre.
#include "shop/period.hpp"
#include "shop/rows.hpp"

namespace nutward::shop::question_rows {

namespace {

using units::print_exact_mm;

// What came to a place, less what left it.
Length net(const std::vector<Flow>& flows, Place place) {
  Length out;
  for (const Flow& f : flows)
    out += f.to == place ? f.length : f.from == place ? -f.length : Length{};
  return out;
}

struct Books {
  Length before; // on hand and in the tin at the start
  Length received, counted;
  Length used, scrapped, kerf, tin, on_hand;
  Length in() const { return before + received + counted; }
  Length out() const { return used + scrapped + kerf + tin + on_hand; }
  bool adds_up() const { return in() == out(); }
};

// The two sides come from different sums: what is left from all movements up to the end, the rest from those
// of the period and those before it.
Books books_of(std::int64_t wire, const Period& period, const View& view) {
  const auto earlier = view.wires().flows(wire, beginning, period.from);
  const auto during = view.wires().flows(wire, period.from, period.before);
  const auto all = view.wires().flows(wire, beginning, period.before);
  Books b;
  b.before = net(earlier, Place::stock) + net(earlier, Place::tin);
  for (const Flow& f : during) {
    Length& side = f.kind == MovementKind::received ? b.received : b.counted;
    if (f.from == Place::outside) side += f.length;
    if (f.to == Place::outside) side -= f.length;
  }
  b.used = net(during, Place::board);
  b.scrapped = net(during, Place::scrap);
  b.kerf = net(during, Place::kerf);
  b.tin = net(all, Place::tin);
  b.on_hand = net(all, Place::stock);
  return b;
}

Value data_of_books(const Wire& w, const Books& b) {
  return record({{"wire", ref(Thing::wire, w.id)},
                 {"name", w.name},
                 {"before_nm", b.before.nm},
                 {"received_nm", b.received.nm},
                 {"counted_in_nm", b.counted.nm},
                 {"used_nm", b.used.nm},
                 {"in_the_tin_nm", b.tin.nm},
                 {"scrapped_nm", b.scrapped.nm},
                 {"kerf_nm", b.kerf.nm},
                 {"on_hand_nm", b.on_hand.nm},
                 {"adds_up", b.adds_up()}});
}

std::string one_wire(const Wire& w, const Books& b, const Period& period) {
  const auto m = [](Length v) { return units::print(v, units::LengthUnit::m); };
  return fmt::format(
      "{} {}: {} at the start and {} received and {} counted in make {} used, {} in the tin, {} "
      "scrapped, {} lost in cuts and {} on hand.",
      sentence(w.name), period.words, m(b.before), m(b.received), m(b.counted), m(b.used), m(b.tin),
      m(b.scrapped), m(b.kerf), m(b.on_hand));
}

Answer ask(const Args& args, const Moment& moment, const View& view) {
  const Period period = period_of(args, "from", "this_month", moment);
  const auto wires = args.has("wire") ? std::vector{wire_of(view, args.id("wire"))} : view.wires().all();
  Answer out;
  out.table = Table{{"wire, in mm", "at the start", "received", "counted in", "used", "in the tin",
                     "scrapped", "kerf", "on hand"},
                    {}};
  std::vector<Value> all;
  std::vector<std::string> off;
  for (const Wire& w : wires) {
    const Books b = books_of(w.id, period, view);
    if (!b.adds_up()) off.push_back(w.name);
    out.table->rows.push_back({w.name, print_exact_mm(b.before), print_exact_mm(b.received),
                               print_exact_mm(b.counted), print_exact_mm(b.used), print_exact_mm(b.tin),
                               print_exact_mm(b.scrapped), print_exact_mm(b.kerf),
                               print_exact_mm(b.on_hand)});
    all.push_back(data_of_books(w, b));
    if (args.has("wire")) out.text = one_wire(w, b, period);
  }
  if (wires.empty()) {
    out.text = "No wire has been defined yet.";
    out.table.reset();
  } else if (!args.has("wire")) {
    out.text = fmt::format("The books of {} {}.", plural(static_cast<std::int64_t>(wires.size()), "wire"),
                           period.words);
  }
  out.text += wires.empty() ? ""
              : off.empty()
                  ? " It adds up to the nanometre."
                  : fmt::format(" It does not add up for {}: have the shop verified.", fmt::join(off, ", "));
  out.reason = "At the start + received + counted in = used + in the tin + scrapped + kerf + on hand. Pieces "
               "that nobody has measured "
               "count nothing.";
  out.data = record({{"adds_up", off.empty()},
                     {"from_at", period.from == beginning ? Value{} : Value{period.from}},
                     {"before_at", period.before == no_end ? Value{} : Value{period.before}},
                     {"wires", list(std::move(all))}});
  if (args.has("wire")) out.about.args = {{"wire", ref(Thing::wire, args.id("wire"))}};
  return out;
}

} // namespace

extern const Question balance;
const Question balance{
    {"balance",
     "Where a month's wire came from and where it went: a sum that adds up, for one wire or for all.",
     {takes::optional(takes::wire),
      {"month", Kind::one_of, false, false, "this month where not said", {}, period_words()},
      {"year", Kind::count, false, false, "of the month; else the last one of its name", {1970, 2200}},
      {"from", Kind::day, false, false, "or the first day"},
      {"until", Kind::day, false, false, "and the last day"}},
     {"[the] balance [of {wire}] [(for|of|in|over)] {month} [{year}]", "[the] balance (of|for) {wire}",
      "[the] books [of {wire}] [(for|of|in|over)] {month} [{year}]",
      "where did [(the|all|our)] {wire} go [in|over] [{month} [{year}]]",
      "where did [the|all the|our] wire go [in|over] [{month} [{year}]]",
      "[the] balance [of {wire}] from {from} (to|until) {until}"},
     {"balance", "the balance of medium for last month", "where did the wire go in november"},
     Role::look,
     {{"adds_up", Kind::yes, "for every wire"},
      {"from", Kind::at, "start of the period; null for the beginning", Often::or_null},
      {"before", Kind::at, "its end; null for none", Often::or_null},
      gives::records(
          "wires", "those asked about",
          {gives::wire,
           gives::wire_name,
           {"before_nm", Kind::count, "at the start, on hand and in the tin, in nanometres"},
           {"received_nm", Kind::count, "delivered, in nanometres"},
           {"counted_in_nm", Kind::count, "found by counting, weighing or correcting, in nanometres"},
           {"used_nm", Kind::count, "in frets, in nanometres"},
           {"in_the_tin_nm", Kind::count, "at the end, in nanometres"},
           {"scrapped_nm", Kind::count, "thrown away or ground off, in nanometres"},
           {"kerf_nm", Kind::count, "lost in cuts, in nanometres"},
           {"on_hand_nm", Kind::count, "in sticks and coils, at the end, in nanometres"},
           {"adds_up", Kind::yes, "whether both sides are equal"}})}},
    &ask};

} // namespace nutward::shop::question_rows
