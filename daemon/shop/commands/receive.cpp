// What comes in: sticks or coils, by length or by mass, of an order or of none.
#include "shop/metre.hpp"
#include "shop/purchases.hpp"
#include "shop/rows.hpp"

namespace nutward::shop::command_rows {

namespace {

// How long one is, and by how much that may be off where it was weighed.
struct Long {
  Length each, error;
};

Mass net_mass(const Args& args, const Wire& wire) {
  if (args.has("mass")) return args.get<Mass>("mass");
  const auto gross = args.get<Mass>("gross");
  if (!args.has("tare")) {
    throw Problem(
        Fault::value, "What does the empty spool weigh?", "tare_g",
        fmt::format("Say it, such as: received a coil of {} weighing {} tare 120 g; or tare 0 g where "
                    "the coil lay bare on the scale.",
                    wire.name, units::print(gross)));
  }
  const auto tare = args.get<Mass>("tare");
  if (tare >= gross) {
    throw Problem(
        Fault::value,
        fmt::format("The spool alone would weigh {} of {}.", units::print(tare), units::print(gross)),
        "tare_g", "Give a tare less than the mass on the scale.");
  }
  return gross - tare;
}

Long long_of(const Args& args, const Wire& wire, Form form) {
  const bool weighed = args.has("mass") || args.has("gross");
  if (static_cast<int>(args.has("each")) + static_cast<int>(args.has("mass")) +
          static_cast<int>(args.has("gross")) >
      1) {
    throw Problem(Fault::value, "A coil is taken in by its length or by its mass.", "each_mm",
                  "Say one of them, such as: received a 500 g coil of medium.");
  }
  if (weighed) {
    const Mass net = net_mass(args, wire);
    const auto found = wire::weighed(net, known_metre(wire).linear, args.or_else("division", Mass{1000}));
    return {found.length, found.error};
  }
  const auto each = args.has("each")      ? args.opt<Length>("each")
                    : form == Form::stick ? wire.stick
                                          : std::nullopt;
  if (each) return {*each, {}};
  throw Problem(
      Fault::value,
      fmt::format("How long is one {} of {}?", form == Form::coil ? "coil" : "stick", wire.name), "each_mm",
      form == Form::coil
          ? fmt::format("Say its length or its mass, such as: received a 10 m coil of {}, or: a 500 g coil.",
                        wire.name)
          : fmt::format("Say its length, such as: received 10 sticks of {}, 610 mm each.", wire.name));
}

// The lines of open orders that may have brought it: of that wire and form, ordered by then, from whom it is
// said to come.
std::vector<OnOrder> brought_by(const Args& args, const Lot& lot, const View& view) {
  std::vector<OnOrder> out;
  if (args.yes("unordered")) return out;
  for (OnOrder& o : on_order(lot.wire, view)) {
    const bool theirs = lot.supplier.empty() ||
                        supplier_called(lot.supplier, view).value_or(Supplier{}).id == o.purchase.supplier;
    if (theirs && o.line.form == lot.form && o.purchase.ordered <= lot.received) out.push_back(std::move(o));
  }
  return out;
}

[[noreturn]] void ask_of_which(const std::vector<OnOrder>& have, const Args& args, const View& view) {
  const Setup set = setup(view);
  Problem problem(Fault::ambiguous,
                  have.size() == 1 ? "More came than is still to come of the open order. Is it of that one?"
                                   : "Of which order did it come?",
                  "order", "Say the order's number, or that it was not ordered.");
  for (const OnOrder& o : have) {
    Choice choice{fmt::format("order {}: {} still to come from {}", o.purchase.id,
                              words_of(o.left, o.line, view, set),
                              name_of_supplier(o.purchase.supplier, view)),
                  args.call(),
                  {seen({Thing::purchase, o.purchase.id}, view)}};
    choice.call.args.emplace_back("order", o.purchase.id);
    problem.choices.push_back(std::move(choice));
  }
  problem.choices.push_back({"it was not ordered", args.call(), {}});
  problem.choices.back().call.args.emplace_back("unordered", true);
  throw Problem(std::move(problem));
}

// The line that it came of; nullopt: of none.
std::optional<OnOrder> of_order(const Args& args, const Lot& lot, const View& view) {
  if (args.has("order")) {
    const Purchase p = purchase_of(args, view);
    check_after_order(p, lot.received, view);
    for (OnOrder& o : left_of(p, view))
      if (o.line.wire == lot.wire) return o;
    throw Problem(
        Fault::state,
        sentence(fmt::format("{} lacks no {}.", named(p, view, setup(view)), wire_of(view, lot.wire).name)),
        "order", "Say that it was not ordered, or of which order it came.");
  }
  const auto have = brought_by(args, lot, view);
  std::vector<OnOrder> fit;
  std::copy_if(have.begin(), have.end(), std::back_inserter(fit),
               [&](const OnOrder& o) { return o.left >= lot.count; });
  if (fit.size() == 1) return fit.front();
  if (!have.empty()) ask_of_which(fit.empty() ? have : fit, args, view);
  return std::nullopt;
}

std::string of_order_words(const OnOrder& o, Tx& tx, Instant happened) {
  Purchase p = o.purchase;
  const bool all = close_if_all_came(p, happened, tx);
  tx.put(p);
  if (all) return fmt::format(" That is all of order {}.", p.id);
  std::string left;
  for (const OnOrder& more : left_of(p, tx))
    left += (left.empty() ? "" : "; ") + words_of(more.left, more.line, tx, setup(tx));
  return fmt::format(" It is of order {}; still to come: {}.", p.id, left);
}

Effect receive(const Args& args, const Moment& moment, Tx& tx) {
  const Wire wire = wire_of(tx, args.id("wire"));
  const Setup set = setup(tx);
  Lot lot;
  lot.wire = wire.id;
  lot.form = args.text("form") == "coil" || args.has("mass") || args.has("gross") ? Form::coil : Form::stick;
  lot.count = args.or_else<std::int64_t>("count", 1);
  const Long each = long_of(args, wire, lot.form);
  lot.each = each.each;
  lot.crown_height = args.opt<Length>("crown_height");
  lot.supplier = args.text("supplier");
  if (!lot.supplier.empty()) {
    if (const auto known = supplier_meant(lot.supplier, args.call(), "supplier", tx))
      lot.supplier = known->name;
  }
  lot.price = args.opt<Money>("price");
  lot.received = moment.happened;
  lot.gross = args.opt<Mass>("gross"), lot.tare = args.opt<Mass>("tare");
  const auto order = of_order(args, lot, tx);
  if (order) {
    lot.purchase_line = order->line.id;
    lot.supplier = name_of_supplier(order->purchase.supplier, tx);
    if (!lot.price) lot.price = share_of(order->line, order->line.count - order->left, lot.count);
  }
  lot = take_in(std::move(lot), tx);
  const auto metres = [&](Length length) {
    return each.error.nm > 0 ? rounded_metres(length) : units::print(length, units::LengthUnit::m);
  };
  Effect out;
  out.answer.text =
      fmt::format("Received {} of {}, {}{} each, {} in all{}.",
                  plural(lot.count, lot.form == Form::coil ? "coil" : "stick"), wire.name,
                  lot.form == Form::coil ? metres(lot.each) : say(lot.each, set),
                  each.error.nm > 0 ? " ± " + about_metres(each.error) : "", metres(lot.each * lot.count),
                  lot.price ? " for " + units::print(*lot.price, set.currency) : "");
  if (order) out.answer.text += of_order_words(*order, tx, moment.happened);
  out.answer.reason =
      fmt::format("It is lot {}. On hand now: {}.", lot.id, metres(tx.wires().on_hand(wire.id)));
  if (each.error.nm > 0) {
    const Metre metre = known_metre(wire);
    out.answer.reason += fmt::format(" A metre weighs {:.4g} g ± {:.2g} %, {}.", metre.linear.g_per_m,
                                     metre.linear.error * 100, metre.from);
  }
  out.answer.data = record({{"lot", ref(Thing::lot, lot.id)},
                            {"wire", ref(Thing::wire, wire.id)},
                            {"length", lot.each * lot.count},
                            {"error", each.error},
                            {"order", order ? Value{order->purchase.id} : Value{}}});
  out.answer.about.args = {{"wire", ref(Thing::wire, wire.id)}};
  return out;
}

std::string why_more_than_ordered(const Args& args, const Moment&, const View& view) {
  if (!args.has("order")) return "";
  const Purchase p = purchase_of(args, view);
  for (const OnOrder& o : left_of(p, view)) {
    const auto count = args.or_else<std::int64_t>("count", 1);
    if (o.line.wire != args.id("wire") || count <= o.left) continue;
    return fmt::format("Of order {} only {} was still to come. Did {} come all the same?", p.id,
                       words_of(o.left, o.line, view, setup(view)), count);
  }
  return "";
}

} // namespace

extern const Command receive_row;
const Command receive_row{
    {"receive",
     "Takes delivered sticks or coils into stock, by length or by mass; of an open order where one is.",
     {takes::wire,
      {"count", Kind::count, false, false, "how many; 1", {1, 10000}},
      {"each", Kind::length, false, false, "length of one; the wire's usual stick", {50, 500000}},
      {"form", Kind::one_of, false, false, "stick or coil; stick", {}, {"stick", "coil"}},
      {"mass",
       Kind::mass,
       false,
       false,
       "of the wire of one coil alone, in place of its length",
       {1, 100000}},
      {"gross", Kind::mass, false, false, "of one coil with its spool, in place of its length", {1, 100000}},
      {"tare", Kind::mass, false, false, "of the empty spool", {0, 20000}},
      {"division", Kind::mass, false, false, "what the scale shows at least; 1 g", {0.001, 1000}},
      {"supplier", Kind::words, false, false, "from whom"},
      {"price", Kind::money, false, false, "of the whole lot", {0, 1e9}},
      {"crown_height", Kind::length, false, false, "as measured on this lot", {0.2, 4}},
      {"order", Kind::count, false, false, "the order that it came of; the open one that it fits", {1, 1e9}},
      {"unordered", Kind::yes, false, false, "it came of no order"},
      takes::at},
     {("(received|got|bought|unpacked|booked in|took in) {count} {form} of {wire} [{each} each] [from "
       "{supplier}]"),
      ("(received|got|bought|unpacked|booked in|took in) {count} {form} of {wire} <{each} each|from "
       "{supplier}|for {price}|crown {crown_height} high|{at}>"),
      "(received|got) {count} {form} of {wire} of {each} [each]",
      ("(received|got|bought) {count} {wire} (stick|sticks) {form=stick} <{each} each|from {supplier}|for "
       "{price}|{at}>"),
      "(received|got|bought) {count} {wire} (stick|sticks) {form=stick}",
      "{count} {form} of {wire} (came|arrived|came in|are here|have come|were delivered) [{each} each]",
      ("{count} {form} of {wire} (came|arrived|came in|are here|have come|were delivered) <{each} each|from "
       "{supplier}|for {price}|{at}>"),
      "{count} {wire} (stick|sticks) {form=stick} (came|arrived|came in|are here|have come)",
      "[a] delivery of {count} {form} of {wire} [{each} each] [from {supplier}]",
      "{supplier} (delivered|sent|brought) [us] {count} {form} of {wire} <{each} each|for {price}|{at}>",
      "{supplier} (delivered|sent|brought) [us] {count} {form} of {wire}",
      "(there came|there arrived) {count} {form} of {wire} [{each} each]",
      "(put|took) {count} [more|new] {form} of {wire} (into|in) [the] (stock|rack|shelf)",
      "{count} {form} of {wire} (came|arrived) (without an order|unordered) {unordered=yes}",
      "received {count} {form} of {wire} [that was|that were] not ordered {unordered=yes}",
      "(received|got|bought) [a] {form} of {wire} [of] {each}",
      "(received|got|bought) [a] {form} of {wire} [of] {each} <from {supplier}|for {price}|{at}>",
      "(received|got|bought) [a] {each} coil of {wire} {form=coil}",
      "(received|got|bought) [a] {each} coil of {wire} {form=coil} <from {supplier}|for {price}|{at}>",
      "(received|got|bought) {each} of {wire} {form=coil}",
      "(received|got|bought) {each} of {wire} {form=coil} <from {supplier}|for {price}|{at}>",
      "(received|got|bought) [a] {mass} coil of {wire} {form=coil}",
      "(received|got|bought) [a] {mass} coil of {wire} {form=coil} <from {supplier}|for {price}|{at}>",
      "(received|got|bought) {mass} of {wire} {form=coil}",
      ("(received|got|bought) [a] coil of {wire} {form=coil} (of|weighing) {gross} [(tare|spool|empty) "
       "{tare}]"),
      "[a] coil of {wire} {form=coil} (came|arrived) weighing {gross} [(tare|spool|empty) {tare}]",
      "[a] {each} coil of {wire} {form=coil} (came|arrived|is here)"},
     {"received 10 sticks of medium", "got 12 sticks of medium 610 mm each", "received 5 m of medium",
      "received 10 sticks of medium from Lindwurm for 19.50",
      "received a coil of medium weighing 620 g tare 120 g"},
     Role::bench,
     {{"lot", Kind::count, "its number"},
      gives::wire,
      {"length", Kind::length, "of all of it"},
      {"error", Kind::length, "how far one may be off, where it was weighed; else 0"},
      {"order", Kind::count, "that it came of", Often::or_null}}},
    &receive,
    &why_more_than_ordered};

} // namespace nutward::shop::command_rows
