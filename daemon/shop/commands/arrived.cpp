// What comes of an order: all of it, or a part and the rest later.
#include "shop/purchases.hpp"
#include "shop/rows.hpp"

namespace nutward::shop::command_rows {

namespace {

struct Came {
  PurchaseLine line;
  std::int64_t count = 0, left = 0; // sticks or coils; left before this
};

// The line that a part came of: the only one of which something is still to come, or that of the wire.
OnOrder part_of(const Purchase& p, const Args& args, const View& view) {
  auto left = left_of(p, view);
  if (args.has("wire")) std::erase_if(left, [&](const OnOrder& o) { return o.line.wire != args.id("wire"); });
  if (left.size() == 1) return left.front();
  const Setup set = setup(view);
  if (left.empty()) {
    throw Problem(Fault::state, sentence(fmt::format("{} lacks nothing of that.", named(p, view, set))),
                  "wire", "Say what came without an order: received 12 sticks of tall.");
  }
  Problem problem(Fault::ambiguous, fmt::format("Of what in order {} did it come?", p.id), "wire",
                  "Say the wire too.");
  for (const OnOrder& o : left) {
    Choice choice{words_of(o.left, o.line, view, set), args.call(), {}};
    std::erase_if(choice.call.args, [](const auto& a) { return a.first == "order" || a.first == "wire"; });
    choice.call.args.emplace_back("order", p.id);
    choice.call.args.emplace_back("wire", ref(Thing::wire, o.line.wire));
    problem.choices.push_back(std::move(choice));
  }
  throw Problem(std::move(problem));
}

std::vector<Came> came_of(const Purchase& p, const Args& args, const View& view) {
  std::vector<Came> out;
  if (!args.has("count") && !args.has("wire") && !args.has("each")) {
    for (const OnOrder& o : left_of(p, view))
      out.push_back({o.line, o.left, o.left});
    return out;
  }
  const OnOrder o = part_of(p, args, view);
  out.push_back({o.line, args.or_else<std::int64_t>("count", o.left), o.left});
  return out;
}

std::string why_more(const Args& args, const Moment&, const View& view) {
  const Purchase p = purchase_of(args, view);
  for (const Came& c : came_of(p, args, view)) {
    if (c.count <= c.left) continue;
    const Setup set = setup(view);
    return fmt::format("Of order {} only {} was still to come. Did {} come all the same?", p.id,
                       words_of(c.left, c.line, view, set), c.count);
  }
  return "";
}

Lot lot_for(const Came& c, const Purchase& p, const Args& args, const Moment& moment, const View& view) {
  Lot lot;
  lot.wire = c.line.wire;
  lot.form = c.line.form;
  lot.count = c.count;
  lot.each = args.opt<Length>("each").value_or(c.line.each);
  lot.crown_height = args.opt<Length>("crown_height");
  lot.supplier = name_of_supplier(p.supplier, view);
  lot.price = args.has("price") ? args.opt<Money>("price") : share_of(c.line, c.line.count - c.left, c.count);
  lot.received = moment.happened;
  lot.purchase_line = c.line.id;
  return lot;
}

// What is still to come, and whether the order is closed by it.
std::string goes_on(Purchase& p, const Args& args, const Moment& moment, const View& view) {
  const Setup set = setup(view);
  std::string left;
  for (const OnOrder& o : left_of(p, view))
    left += (left.empty() ? "" : "; ") + words_of(o.left, o.line, view, set);
  const bool closes = left.empty() || args.yes("was_all");
  if (closes) {
    p.state = PurchaseState::arrived;
    p.closed = moment.happened;
    return left.empty() ? fmt::format(" That is all of order {}.", p.id)
                        : fmt::format(" Order {} is closed: {} will not come.", p.id, left);
  }
  if (const auto rest = args.opt<Day>("rest")) {
    if (*rest < moment.zone.local(moment.happened).day) {
      throw Problem(Fault::value, fmt::format("{} is before the part that came.", hours::human(*rest)),
                    "rest_on", "Say a day still to come.");
    }
    p.promised = *rest;
    if (!p.promised_first) p.promised_first = *rest;
  }
  return fmt::format(" Still to come of order {}: {}{}.", p.id, left,
                     p.promised ? ", due " + hours::human(*p.promised) : "");
}

std::string as_promised(const Purchase& p, const Moment& moment) {
  const Day came = moment.zone.local(moment.happened).day, ordered = moment.zone.local(p.ordered).day;
  std::string out = came == ordered ? "on the day of the order"
                                    : fmt::format("{} after the order", plural(came - ordered, "day"));
  if (p.promised_first) {
    const int late = came - *p.promised_first;
    out += late == 0  ? ", on the day first promised"
           : late > 0 ? fmt::format(", {} later than first promised", plural(late, "day"))
                      : fmt::format(", {} earlier than first promised", plural(-late, "day"));
  }
  return out;
}

Effect arrived(const Args& args, const Moment& moment, Tx& tx) {
  const Setup set = setup(tx);
  Purchase p = purchase_of(args, tx);
  check_after_order(p, moment.happened, tx);
  const auto came = came_of(p, args, tx);
  if (args.has("price") && came.size() > 1) {
    throw Problem(Fault::value, "That is the price of which wire?", "price",
                  "Say what came of each wire, each with its price.");
  }
  std::string what, on_hand;
  std::vector<Value> lots;
  for (const Came& c : came) {
    const Lot lot = take_in(lot_for(c, p, args, moment, tx), tx);
    PurchaseLine as_came = c.line;
    as_came.each = lot.each;
    what += fmt::format("{}{}{} (lot {})", what.empty() ? "" : "; ", words_of(lot.count, as_came, tx, set),
                        lot.price ? ", for " + units::print(*lot.price, set.currency) : "", lot.id);
    on_hand += fmt::format("{}{} of {}", on_hand.empty() ? "" : ", ",
                           units::print(tx.wires().on_hand(lot.wire), units::LengthUnit::m),
                           wire_of(tx, lot.wire).name);
    lots.push_back(record({{"lot", ref(Thing::lot, lot.id)},
                           {"wire", ref(Thing::wire, lot.wire)},
                           {"count", lot.count},
                           {"length", lot.each * lot.count}}));
  }
  const std::string rest = goes_on(p, args, moment, tx);
  tx.put(p);
  Effect out;
  out.answer.text = fmt::format("Received from {}: {}.{}", name_of_supplier(p.supplier, tx), what, rest);
  out.answer.reason = fmt::format("{}. On hand now: {}.", sentence(as_promised(p, moment)), on_hand);
  out.answer.data =
      record({{"order", p.id},
              {"lots", list(std::move(lots))},
              {"closed", p.state != PurchaseState::open},
              {"rest_on", p.state == PurchaseState::open && p.promised ? Value{*p.promised} : Value{}}});
  out.answer.about.args = {{"wire", ref(Thing::wire, came.front().line.wire)}, {"order", p.id}};
  return out;
}

} // namespace

extern const Command arrived_row;
const Command arrived_row{
    {"arrived",
     "Takes what came of an order into stock: all that is still to come, or a part of it.",
     {{"order", Kind::count, false, false, "its number; the only one that is meant", {1, 1e9}},
      {"wire", Kind::wire, false, false, "of it, the line with this wire"},
      {"supplier", Kind::words, false, false, "the order from them"},
      {"count", Kind::count, false, false, "sticks or coils that came; all", {1, 10000}},
      {"each",
       Kind::length,
       false,
       false,
       "length of one, where it is another than was ordered",
       {50, 500000}},
      {"rest", Kind::day, false, false, "when the rest is to come"},
      {"was_all", Kind::yes, false, false, "the rest will not come"},
      {"price", Kind::money, false, false, "of what came; its share of the order's", {0, 1e9}},
      {"crown_height", Kind::length, false, false, "as measured on it", {0.2, 4}},
      takes::at},
     {"[the] order (came|arrived|is here|is in|has come|has arrived) [in] [{at}]",
      "[the] order {order} (came|arrived|is here|is in|has come|has arrived) [in] [{at}]",
      "[the] order from {supplier} (came|arrived|is here|has come|has arrived) [{at}]",
      "[the] {wire} order (came|arrived|is here|is in|has come|has arrived) [{at}]",
      "[the] {wire} (came|arrived|is here|has come|has arrived) [{at}]",
      "[all of] the order (came|arrived)",
      "[the] rest (came|arrived|is here|has come|has arrived) [{at}]",
      "[the] rest of [the] {wire} (came|arrived|is here|has come|has arrived)",
      "[the] rest of order {order} (came|arrived|is here|has come|has arrived)",
      "{count} [sticks|coils|stick|coil] (came|arrived|are here|have come|have arrived) [{at}]",
      ("{count} [sticks|coils|stick|coil] [of them] (came|arrived|are here|have come|have arrived) [and] "
       "[the] "
       "(rest|others) [comes|come|is coming|are coming|is due|follows|follow] [on] {rest}"),
      ("{count} [sticks|coils] (came|arrived) [and] (that was all|nothing more is coming|the rest is "
       "cancelled) "
       "{was_all=yes}"),
      ("{count} [sticks|coils|stick|coil] of order {order} (came|arrived|are here|have come|have arrived) "
       "[[and] "
       "[the] rest [comes|is coming|is due|follows] [on] {rest}]"),
      ("[only] {count} of [the] order (came|arrived) [[and] [the] rest [comes|is coming|is due] [on] "
       "{rest}]"),
      "received [the] order",
      "received [the] order {order}",
      "received order {order}",
      "(received|got) {count} of order {order}",
      "[we] got [the] order [from {supplier}]",
      "[the] delivery (came|arrived|is here) [from {supplier}]",
      "[the] delivery from {supplier} (came|arrived|is here)",
      "[a|the] parcel from {supplier} (came|arrived)",
      "{supplier} (delivered|sent|brought) [us] (the|our|my) (order|rest|wire) [{at}]",
      "{supplier} (delivered|sent|brought) [us] {count} of (them|the order|order {order}) [{at}]"},
     {"the order came", "4 came, the rest next week", "4 of order 4 came"},
     Role::bench,
     {{"order", Kind::count, "its number"},
      gives::records("lots", "what came, one of each wire",
                     {{"lot", Kind::count, "its number"},
                      gives::wire,
                      {"count", Kind::count, "sticks or coils"},
                      {"length", Kind::length, "of all of it"}}),
      {"closed", Kind::yes, "whether nothing more is to come"},
      {"rest", Kind::day, "when the rest is to come", Often::or_null}}},
    &arrived,
    &why_more};

} // namespace nutward::shop::command_rows
