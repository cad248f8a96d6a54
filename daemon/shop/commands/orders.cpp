// Orders: what was ordered from whom, when it is to come, and what comes no more.
#include "shop/metre.hpp"
#include "shop/purchases.hpp"
#include "shop/rows.hpp"

#include <cmath>

namespace nutward::shop::command_rows {

namespace {

constexpr int far_days = 365;

PurchaseLine line_of(const Args& args, const Wire& wire) {
  PurchaseLine line;
  line.wire = wire.id;
  line.form = args.text("form") == "coil" || args.has("mass") ? Form::coil : Form::stick;
  line.count = args.or_else<std::int64_t>("count", 1);
  line.price = args.opt<Money>("price");
  line.mass = args.opt<Mass>("mass");
  if (line.mass && args.has("each")) {
    throw Problem(Fault::value, "A coil is ordered by its length or by its mass.", "mass_g",
                  "Say one of them, such as: ordered a 500 g coil of medium.");
  }
  if (line.mass) {
    line.each = wire::weighed(*line.mass, known_metre(wire).linear, Mass{1}).length;
    return line;
  }
  const auto each = args.has("each")           ? args.opt<Length>("each")
                    : line.form == Form::stick ? wire.stick
                                               : std::nullopt;
  if (!each) {
    throw Problem(
        Fault::value,
        fmt::format("How long is one {} of {}?", line.form == Form::coil ? "coil" : "stick", wire.name),
        "each_mm", "Say its length, such as: 610 mm each; or of a coil its mass, such as: 500 g.");
  }
  line.each = *each;
  return line;
}

// Nullopt: somebody was named whom the shop does not know yet.
std::optional<Supplier> from_whom(const Args& args, std::int64_t wire, const View& view) {
  if (args.has("supplier")) return supplier_meant(args.text("supplier"), args.call(), "supplier", view);
  if (auto usual = usual_supplier(wire, view)) return usual;
  Problem problem(Fault::value, "From whom was it ordered?", "supplier",
                  "Say for example: ordered 40 sticks of tall from Old Mill Wire, due friday.");
  for (const Supplier& s : view.purchases().suppliers()) {
    Choice choice{s.name, args.call(), {}};
    choice.call.args.emplace_back("supplier", s.name);
    problem.choices.push_back(std::move(choice));
  }
  if (!problem.choices.empty()) problem.fault = Fault::ambiguous;
  throw Problem(std::move(problem));
}

// A promise on the day of the order, or a year and more after it, is a slip more often than not.
std::string odd_promise(Day promised, Day ordered) {
  const int days = promised - ordered;
  if (days == 0)
    return fmt::format("{} is the day it was ordered on. Does it come that same day?",
                       hours::human(promised));
  if (days >= far_days)
    return fmt::format("{} is {} after the order. Is that meant?", hours::human(promised),
                       plural(days, "day"));
  return "";
}

std::string why_ordered_yes(const Args& args, const Moment& moment, const View& view) {
  std::string why;
  if (args.has("supplier") && !args.has("order") && !from_whom(args, args.id("wire"), view))
    why = fmt::format("There is no supplier called {} yet. {}Is that a new one?", args.text("supplier"),
                      nearly_supplier(args.text("supplier"), view));
  if (const auto day = args.opt<Day>("promised")) {
    const std::string odd = odd_promise(*day, moment.zone.local(moment.happened).day);
    if (!odd.empty()) why += (why.empty() ? "" : " ") + odd;
  }
  return why;
}

// A line more of that order; else a new one. What one sentence orders from one supplier is one order.
Purchase order_for(const Args& args, const Moment& moment, std::int64_t wire, Tx& tx) {
  if (args.has("order")) {
    Purchase p = purchase_of(args, tx);
    if (args.has("supplier")) {
      const auto s = from_whom(args, wire, tx);
      if (!s || s->id != p.supplier) {
        throw Problem(Fault::value,
                      fmt::format("Order {} is from {}.", p.id, name_of_supplier(p.supplier, tx)), "supplier",
                      "Leave the supplier out, or record an order of its own.");
      }
    }
    return p;
  }
  auto s = from_whom(args, wire, tx);
  if (!s) {
    s.emplace();
    s->name = args.text("supplier");
    s->id = tx.put(*s);
  }
  const auto promised = args.opt<Day>("promised");
  for (const Purchase& p : tx.purchases().open()) {
    if (p.supplier == s->id && p.ordered == moment.happened && (!promised || p.promised == promised))
      return p;
  }
  Purchase p;
  p.supplier = s->id;
  p.ordered = moment.happened;
  return p;
}

void promise(Purchase& p, Day day, const hours::Zone& zone, std::string_view where) {
  const Day ordered = zone.local(p.ordered).day;
  if (day < ordered) {
    throw Problem(Fault::value,
                  fmt::format("{} is before the order, which was made on {}.", hours::human(day),
                              hours::human(ordered)),
                  std::string(where),
                  "Say a day from the order on, or when the order was made: at 5 days ago.");
  }
  p.promised = day;
  if (!p.promised_first) p.promised_first = day;
}

std::string below_minimum(const Purchase& p, const Supplier& s, const View& view, const Setup& set) {
  if (s.minimum.any()) return "";
  Length least{}, all{};
  std::int64_t sticks = 0;
  for (const Awaited& a : view.purchases().lines(p.id)) {
    least = std::max(least, terms_of(s, wire_of(view, a.line.wire)).minimum);
    all = all + a.line.each * a.line.count;
    sticks += a.line.count;
  }
  const bool less = s.minimum.sticks ? sticks < *s.minimum.sticks : least.nm > 0 && all < least;
  return less ? fmt::format(" {} delivers no less than {}.", s.name, words_of(s.minimum, set)) : "";
}

std::string not_whole_packs(const PurchaseLine& line, const Supplier& s, const View& view, const Setup& set) {
  if (s.pack.any()) return "";
  const Length pack = terms_of(s, wire_of(view, line.wire)).pack;
  const Length all = line.each * line.count;
  const bool whole = s.pack.sticks ? line.count % *s.pack.sticks == 0 : pack.nm == 0 || all.nm % pack.nm == 0;
  return whole ? "" : fmt::format(" {} sells it in packs of {}.", s.name, words_of(s.pack, set));
}

std::string arrival_words(const Purchase& p, const Supplier& s, const Moment& moment, const View& view) {
  if (p.promised) return ", due " + hours::human(*p.promised);
  const LeadTime lead = lead_time(s, view, moment.zone);
  if (!lead.to_plan) return "; nobody said when it comes";
  const int days = static_cast<int>(std::lround(lead.to_plan->mean));
  return fmt::format("; no day was promised, by their lead time about {}",
                     hours::human(moment.zone.local(p.ordered).day + days));
}

Effect ordered(const Args& args, const Moment& moment, Tx& tx) {
  const Setup set = setup(tx);
  const Wire wire = wire_of(tx, args.id("wire"));
  PurchaseLine line = line_of(args, wire);
  Purchase p = order_for(args, moment, wire.id, tx);
  if (const auto day = args.opt<Day>("promised")) promise(p, *day, moment.zone, "promised_on");
  if (args.has("note")) p.note = args.text("note");
  p.id = line.purchase = tx.put(p);
  line.id = tx.put(line);
  const auto s = tx.purchases().supplier(p.supplier).value_or(Supplier{});
  Effect out;
  out.answer.text =
      fmt::format("Ordered {} from {}{}{}. It is order {}.", words_of(line.count, line, tx, set), s.name,
                  line.price ? " for " + units::print(*line.price, set.currency) : "",
                  arrival_words(p, s, moment, tx), p.id);
  out.answer.reason =
      fmt::format("{} in all{}.{}{}", units::print(line.each * line.count, units::LengthUnit::m),
                  args.has("supplier") || args.has("order") ? "" : ", from the usual supplier",
                  not_whole_packs(line, s, tx, set), below_minimum(p, s, tx, set));
  out.answer.data = record({{"order", p.id},
                            {"supplier", p.supplier},
                            {"wire", ref(Thing::wire, wire.id)},
                            {"length", line.each * line.count},
                            {"promised_on", p.promised ? Value{*p.promised} : Value{}}});
  out.answer.about.args = {{"wire", ref(Thing::wire, wire.id)}, {"order", p.id}};
  return out;
}

std::string why_promised_yes(const Args& args, const Moment& moment, const View& view) {
  const Purchase p = purchase_of(args, view);
  return odd_promise(args.get<Day>("promised"), moment.zone.local(p.ordered).day);
}

Effect order_promised(const Args& args, const Moment& moment, Tx& tx) {
  const Setup set = setup(tx);
  Purchase p = purchase_of(args, tx);
  const auto before = p.promised;
  const Day day = args.get<Day>("promised");
  if (day < moment.zone.local(moment.now).day) {
    throw Problem(Fault::value, fmt::format("{} is over.", hours::human(day)), "promised_on",
                  fmt::format("Say a day to come, or what came: order {} came.", p.id));
  }
  promise(p, day, moment.zone, "promised_on");
  tx.put(p);
  Effect out;
  out.answer.text =
      sentence(fmt::format("{} is due {} now{}.", named(p, tx, set), hours::human(day),
                           !before          ? ""
                           : *before == day ? ", as it was"
                                            : fmt::format("; it was {}", hours::human(*before))));
  if (p.promised_first && *p.promised_first != day)
    out.answer.reason = fmt::format("They first said {}.", hours::human(*p.promised_first));
  out.answer.data = record({{"order", p.id}, {"promised", day}});
  out.answer.about.args = {{"order", p.id}};
  return out;
}

Effect cancel_order(const Args& args, const Moment& moment, Tx& tx) {
  const Setup set = setup(tx);
  Purchase p = purchase_of(args, tx);
  std::string left;
  bool came = false;
  for (const OnOrder& o : left_of(p, tx))
    left += (left.empty() ? "" : "; ") + words_of(o.left, o.line, tx, set);
  for (const Awaited& a : tx.purchases().lines(p.id))
    came = came || a.came > 0;
  const std::string what = named(p, tx, set);
  p.state = came ? PurchaseState::arrived : PurchaseState::cancelled;
  p.closed = moment.happened;
  tx.put(p);
  Effect out;
  out.answer.text = came ? sentence(fmt::format("{} is closed: {} will not come.", what, left))
                         : sentence(fmt::format("{} is cancelled.", what));
  if (args.has("why")) out.answer.reason = sentence(args.text("why"));
  out.answer.data = record({{"order", p.id}, {"some_came", came}});
  out.answer.about.args = {{"order", p.id}};
  return out;
}

const Param order_number{"order", Kind::count, false, false, "its number; the only one that is meant",
                         {1, 1e9}};
const Param of_wire{"wire", Kind::wire, false, false, "the order that has it"};
const Param of_supplier{"supplier", Kind::words, false, false, "the order from them"};
const Give gives_order{"order", Kind::count, "its number"};

} // namespace

extern const Command ordered_row;
const Command ordered_row{
    {"ordered",
     "Records that wire was ordered: how much, from whom, for how much, and when it is to come.",
     {takes::wire,
      {"count", Kind::count, false, false, "sticks or coils; 1", {1, 10000}},
      {"each", Kind::length, false, false, "length of one; the wire's usual stick", {50, 500000}},
      {"form", Kind::one_of, false, false, "stick or coil; stick", {}, {"stick", "coil"}},
      {"mass", Kind::mass, false, false, "of one coil, without its spool", {1, 100000}},
      {"supplier", Kind::words, false, false, "from whom; who the wire came from last"},
      {"promised", Kind::day, false, false, "the day they say"},
      {"price", Kind::money, false, false, "of all of it", {0, 1e9}},
      {"order", Kind::count, false, false, "one more line of this order", {1, 1e9}},
      takes::note,
      takes::at},
     {"ordered {count} {form} of {wire} <from {supplier}|for {price}|due [on] {promised}|{each} each|{at}>",
      "ordered {count} {form} of {wire}", "(ordered|order) {count} {wire} (stick|sticks) {form=stick}",
      "ordered [a] {each} coil of {wire} {form=coil} <from {supplier}|for {price}|due [on] {promised}|{at}>",
      "ordered [a] {each} coil of {wire} {form=coil}",
      "ordered [a] {mass} coil of {wire} <from {supplier}|for {price}|due [on] {promised}|{at}>",
      "ordered [a] {mass} coil of {wire}", "ordered {mass} of {wire}",
      "ordered {each} of {wire} {form=coil} <from {supplier}|for {price}|due [on] {promised}|{at}>",
      "ordered {each} of {wire} {form=coil}",
      "{count} {form} of {wire} (are|is|were) ordered <from {supplier}|due [on] {promised}|for {price}|{at}>",
      "{count} {form} of {wire} (are|is|were) ordered",
      "[we] (have|i) ordered {count} {form} of {wire} <from {supplier}|due [on] {promised}|for {price}|{at}>",
      "{count} {form} of {wire} (are|is) on order <from {supplier}|due [on] {promised}|for {price}|{at}>",
      ("(put|placed|sent) [in] an order for {count} {form} of {wire} <from {supplier}|with {supplier}|due "
       "[on] "
       "{promised}|for {price}|{at}>")},
     {"ordered 40 sticks of tall, due friday", "ordered 40 sticks of tall from Lindwurm, due friday",
      "ordered a 500 g coil of medium from Ferro for 32.50"},
     Role::bench,
     {gives_order,
      {"supplier", Kind::count, "its number"},
      gives::wire,
      {"length", Kind::length, "of this wire in all"},
      {"promised", Kind::day, "when it is to come", Often::or_null}}},
    &ordered,
    &why_ordered_yes};

extern const Command order_promised_row;
const Command order_promised_row{
    {"order-promised",
     "Says when an order is to come by now; what they said first is kept.",
     {{"promised", Kind::day, true, false, "the day they say now"},
      order_number,
      of_wire,
      of_supplier,
      takes::at},
     {"[the] {wire} (is coming|comes|arrives|will come|is due) [only] [on] {promised} [now|instead]",
      "[the] order {order} (is coming|comes|arrives|will come|is due) [only] [on] {promised} [now|instead]",
      ("[the] order [from {supplier}] (is coming|comes|arrives|will come|is due) [only] [on] {promised} "
       "[now|instead]"),
      "[the] order (is|was) (delayed|postponed|moved|late) (to|until|till) {promised}",
      "[the] order {order} (is|was) (delayed|postponed|moved|late) (to|until|till) {promised}",
      "[the] {wire} (is|was) (delayed|postponed|moved|late) (to|until|till) {promised}",
      "[the] rest (is coming|comes|arrives|will come|is due) [on] {promised} [now|instead]",
      "[the] rest of order {order} (is coming|comes|arrives|will come|is due) [on] {promised} [now|instead]",
      "[the] rest of [the] {wire} (is coming|comes|arrives|will come|is due) [on] {promised} [now|instead]",
      "{supplier} (delivers|ships|will deliver|will come) [only] [on] {promised} [now|instead]",
      "expect order {order} [on] {promised}", "expect [the] {wire} [on] {promised}"},
     {"the tall is coming friday now", "order 4 comes on friday", "the order is delayed to 2027-01-15"},
     Role::bench,
     {gives_order, {"promised", Kind::day, "when it is to come"}}},
    &order_promised,
    &why_promised_yes};

extern const Command cancel_order_row;
const Command cancel_order_row{
    {"cancel-order",
     "Cancels an order, or what of it has not come.",
     {order_number, of_wire, of_supplier, {"why", Kind::words, false, false, "the reason"}, takes::at},
     {"cancel [the] order [because {why}]", "cancel [the] order {order} [because {why}]",
      "cancel [the] {wire} order [because {why}]", "cancel [the] order (of|for) {wire} [because {why}]",
      "cancel [the] order from {supplier} [because {why}]", "cancel the rest [of the order] [because {why}]",
      "cancel the rest of order {order} [because {why}]", "[the] order (is|was) cancelled [because {why}]",
      "[the] order {order} (is|was) cancelled [because {why}]",
      "[the] rest (is not|will not be) coming [because {why}]",
      "[the] rest (will not|does not|will never) come [because {why}]",
      "[the] rest of order {order} (is not coming|will not come) [because {why}]",
      "[the] {wire} (is not coming|will not come) [because {why}]",
      "[the] order (is not coming|will not come) [because {why}]"},
     {"cancel the order", "cancel order 4", "the rest is not coming"},
     Role::bench,
     {gives_order, {"some_came", Kind::yes, "whether a part of it had come"}}},
    &cancel_order};

} // namespace nutward::shop::command_rows
