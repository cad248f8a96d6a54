// What is on order, and who it comes from.
#include "shop/purchases.hpp"
#include "shop/rows.hpp"

namespace nutward::shop::question_rows {

namespace {

constexpr std::size_t closed_shown = 20;

std::string_view word_of(PurchaseState state, bool some_came) {
  if (state == PurchaseState::open) return some_came ? "part arrived" : "ordered";
  return state == PurchaseState::arrived ? "arrived" : "cancelled";
}

// "Fri 4 Dec 2026", "Fri 4 Dec 2026, 3 days late".
std::string due_words(const Purchase& p, Day today) {
  if (!p.promised) return "not said";
  const int late = today - *p.promised;
  const bool is_late = p.state == PurchaseState::open && late > 0;
  return hours::human(*p.promised) + (is_late ? fmt::format(", {} late", plural(late, "day")) : "");
}

class Orders {
public:
  Orders(const Moment& moment, const View& view)
      : moment_(moment), view_(view), set_(setup(view)), today_(moment.zone.local(moment.now).day) {}

  void add(const Purchase& p, std::optional<std::int64_t> wire) {
    std::vector<Value> lines;
    bool some_came = false;
    const auto all = view_.purchases().lines(p.id);
    for (const Awaited& a : all)
      some_came = some_came || a.came > 0;
    for (const Awaited& a : all) {
      if (wire && a.line.wire != *wire) continue;
      lines.push_back(line(p, a, some_came));
    }
    if (lines.empty()) return;
    ++orders;
    if (p.promised && p.state == PurchaseState::open && *p.promised < today_) ++late;
    records.push_back(record({{"order", p.id},
                              {"supplier", p.supplier},
                              {"name", name_of_supplier(p.supplier, view_)},
                              {"state", std::string(word_of(p.state, some_came))},
                              {"ordered", p.ordered},
                              {"promised_on", p.promised ? Value{*p.promised} : Value{}},
                              {"first_promised_on", p.promised_first ? Value{*p.promised_first} : Value{}},
                              {"closed_at", opt(p.closed)},
                              {"lines", list(std::move(lines))}}));
  }

  Table table{{"order", "from", "what", "still to come", "ordered", "due", "state"}, {}};
  std::vector<Value> records;
  std::vector<std::string> coming; // of open ones
  int orders = 0, late = 0;

private:
  Value line(const Purchase& p, const Awaited& a, bool some_came) {
    const std::int64_t left =
        p.state == PurchaseState::open ? std::max<std::int64_t>(0, a.line.count - a.came) : 0;
    const std::string due = due_words(p, today_);
    table.rows.push_back(
        {std::to_string(p.id), name_of_supplier(p.supplier, view_),
         words_of(a.line.count, a.line, view_, set_), left == 0 ? "nothing" : std::to_string(left),
         hours::human(moment_.zone.local(p.ordered).day), due, std::string(word_of(p.state, some_came))});
    if (left > 0)
      coming.push_back(fmt::format("{} of {} from {}{}",
                                   plural(left, a.line.form == Form::coil ? "coil" : "stick"),
                                   wire_of(view_, a.line.wire).name, name_of_supplier(p.supplier, view_),
                                   p.promised ? ", due " + due : ""));
    return record({{"wire", ref(Thing::wire, a.line.wire)},
                   {"form", std::string(a.line.form == Form::coil ? "coil" : "stick")},
                   {"count", a.line.count},
                   {"each", a.line.each},
                   {"came", a.came},
                   {"to_come", left},
                   {"to_come_length", a.line.each * left},
                   {"price_minor", a.line.price ? Value{*a.line.price} : Value{}}});
  }

  const Moment& moment_;
  const View& view_;
  Setup set_;
  Day today_;
};

Answer ask_orders(const Args& args, const Moment& moment, const View& view) {
  const auto wire = args.opt_id("wire");
  Orders found(moment, view);
  for (const Purchase& p : view.purchases().open())
    found.add(p, wire);
  const int open = found.orders;
  if (args.yes("closed")) {
    for (const Purchase& p : view.purchases().closed(closed_shown))
      found.add(p, wire);
  }
  Answer out;
  const std::string of = wire ? " of " + wire_of(view, *wire).name : "";
  out.text = open == 0 ? (wire ? fmt::format("No {} is on order.", wire_of(view, *wire).name)
                               : "Nothing is on order.")
                       : fmt::format("{} open{}: {}.", plural(open, "order"),
                                     wire ? " with " + of.substr(4) : "", fmt::join(found.coming, "; "));
  if (found.late > 0) out.text += fmt::format(" {} late.", plural(found.late, "order is", "orders are"));
  if (found.orders > 0) out.table = std::move(found.table);
  out.data = record({{"open", std::int64_t{open}},
                     {"late", std::int64_t{found.late}},
                     {"orders", list(std::move(found.records))}});
  if (wire) out.about.args = {{"wire", ref(Thing::wire, *wire)}};
  return out;
}

Value opt_number(const std::optional<double>& v) {
  return v ? Value{*v} : Value{};
}

Value amount_of(const Amount& a) {
  return record({{"sticks", a.sticks ? Value{*a.sticks} : Value{}},
                 {"length_mm", a.length ? Value{*a.length} : Value{}},
                 {"mass_g", a.mass ? Value{*a.mass} : Value{}}});
}

// The one that is asked about, by name or by what they deliver; nullopt: all are.
std::optional<Supplier> one_supplier(const Args& args, const View& view) {
  if (args.has("supplier")) {
    if (auto s = supplier_meant(args.text("supplier"), args.call(), "supplier", view)) return s;
    throw Problem(Fault::value, fmt::format("No supplier is called '{}'.", args.text("supplier")), "supplier",
                  "Ask for 'suppliers' to see them.");
  }
  if (!args.has("wire")) return std::nullopt;
  const Wire wire = wire_of(view, args.id("wire"));
  if (auto s = usual_supplier(wire.id, view)) return s;
  throw Problem(Fault::state, fmt::format("Nobody has said yet who delivers {}.", wire.name), "wire",
                fmt::format("Say for example: ordered 12 sticks of {} from Old Mill Wire.", wire.name));
}

Value value_of(const Supplier& s, const LeadTime& lead, std::int64_t owed) {
  return record({{"supplier", s.id},
                 {"name", s.name},
                 {"pack", amount_of(s.pack)},
                 {"minimum", amount_of(s.minimum)},
                 {"said_days", s.lead_days ? Value{std::int64_t{*s.lead_days}} : Value{}},
                 {"took_days", opt_number(lead.mean)},
                 {"took_spread_days", opt_number(lead.spread)},
                 {"of_orders", static_cast<std::int64_t>(lead.took.size())},
                 {"plan_days", lead.to_plan ? Value{lead.to_plan->mean} : Value{}},
                 {"plan_spread_days", lead.to_plan ? Value{lead.to_plan->deviation} : Value{}},
                 {"open_orders", owed},
                 {"note", s.note}});
}

Answer ask_suppliers(const Args& args, const Moment& moment, const View& view) {
  const Setup set = setup(view);
  Answer out;
  out.table = Table{{"supplier", "packs of", "at least", "they say", "really took", "orders open"}, {}};
  std::vector<Value> all;
  std::vector<std::string> names;
  const std::optional<Supplier> only = one_supplier(args, view);
  const bool by_wire = args.has("wire") && !args.has("supplier");
  const auto open = view.purchases().open();
  for (const Supplier& s : view.purchases().suppliers()) {
    if (only && only->id != s.id) continue;
    const LeadTime lead = lead_time(s, view, moment.zone);
    const auto owed =
        std::count_if(open.begin(), open.end(), [&](const Purchase& p) { return p.supplier == s.id; });
    names.push_back(fmt::format("{}{} {}", s.name, by_wire ? ", which takes" : " takes",
                                lead.mean     ? took_words(lead)
                                : s.lead_days ? plural(*s.lead_days, "day") + " as they say"
                                              : "nobody knows how many days"));
    out.table->rows.push_back({s.name, words_of(s.pack, set), words_of(s.minimum, set),
                               s.lead_days ? plural(*s.lead_days, "day") : "not said", took_words(lead),
                               std::to_string(owed)});
    all.push_back(value_of(s, lead, owed));
  }
  out.text = names.empty() ? "No supplier is on record."
             : by_wire     ? fmt::format("{} comes from {}.", sentence(wire_of(view, args.id("wire")).name),
                                         names.front())
                           : fmt::format("{}.", fmt::join(names, "; "));
  if (names.empty()) {
    out.table.reset();
    out.reason = "Say for example: new supplier Old Mill Wire, packs of 12 sticks, 5 days.";
  } else {
    out.reason =
        "Calendar days from the day of the order to the day on which the last of it came, of the newest "
        "20 orders that are closed, ± their standard deviation.";
  }
  out.data = record({{"suppliers", list(std::move(all))}});
  if (only) out.about.args = {{"supplier", only->name}};
  return out;
}

Give amount(std::string_view name, std::string_view what) {
  return gives::record(name, what,
                       {{"sticks", Kind::count, "or coils", Often::or_null},
                        {"length", Kind::length, "or so much of it", Often::or_null},
                        {"mass", Kind::mass, "or so much of it", Often::or_null}});
}

} // namespace

extern const Question orders_question;
const Question orders_question{
    {"orders",
     "What wire is on order, from whom, and when it is to come.",
     {takes::optional(takes::wire), {"closed", Kind::yes, false, false, "the last 20 that are closed too"}},
     {"what is on order", "what (have|did) (we|i) [ordered|order]", "[show|list] [the] open orders",
      "is [any|some] {wire} on order", "(have|did) (we|i) (ordered|order) [any|some] {wire}",
      "when (does|will|is) [the] {wire} (come|arrive|coming|due)", "how much {wire} is on order",
      "what {wire} is on order", "[show|list] [the] orders (of|for) {wire}",
      "when (does|will) [the] order (come|arrive)", "which orders are (late|open|due)",
      "[show|list] all [the] orders {closed=yes}", "what is (still to come|coming)",
      "(has|have|did) [the|our] order (come|arrived|arrive) [yet]",
      "(has|have|did) [the] {wire} (come|arrived|arrive) [yet]", "when (is|comes) the next (delivery|order)",
      "when does the next (delivery|order) (come|arrive)",
      "(is|are) (an order|any order|any orders|orders) (late|overdue)",
      "(what|which) orders (are|were) closed {closed=yes}"},
     {"what is on order", "orders", "is tall on order", "when does the tall come"},
     Role::look,
     {{"open", Kind::count, "orders of which something is to come"},
      {"late", Kind::count, "of them, whose day is over"},
      gives::records(
          "orders", "open ones by the day promised, then closed ones, the last closed leading",
          {{"order", Kind::count, "its number"},
           {"supplier", Kind::count, "its number"},
           {"name", Kind::words, "what the supplier is called"},
           gives::one_of("state", "how it stands", {"ordered", "part arrived", "arrived", "cancelled"}),
           {"ordered", Kind::at, "when"},
           {"promised", Kind::day, "when it is to come, as they say by now", Often::or_null},
           {"first_promised", Kind::day, "and as they said first", Often::or_null},
           {"closed", Kind::at, "when the last of it came, or it was cancelled", Often::or_null},
           gives::records("lines", "its wires",
                          {gives::wire,
                           gives::one_of("form", "of the wire", {"stick", "coil"}),
                           {"count", Kind::count, "ordered"},
                           {"each", Kind::length, "of one"},
                           {"came", Kind::count, "so far"},
                           {"to_come", Kind::count, "still"},
                           {"to_come_length", Kind::length, "of that"},
                           {"price", Kind::money, "of all that was ordered", Often::or_null}})})}},
    &ask_orders};

extern const Question suppliers_question;
const Question suppliers_question{
    {"suppliers",
     "Who wire is ordered from: packs, minimum, how long they say and how long they really took.",
     {{"supplier", Kind::words, false, false, "only this one"}, takes::optional(takes::wire)},
     {"who are (our|the) suppliers", "who (delivers|sells|supplies|ships) {wire}",
      "who (do|did) (we|i) (get|buy|order) {wire} [from]",
      "(from whom|where) do (we|i) (get|buy|order) {wire} [from]",
      "how long does {wire} take to (come|arrive|be delivered|get here)",
      "how long does it take until {wire} (comes|arrives|is here)",
      "how long (does|do) {supplier} (take|need) [to (deliver|come|send|ship)]",
      "(who|from whom) do (we|i) (order|buy) [wire] [from]", "[show|list] [the|our] suppliers",
      "what is the lead time (of|from|at) {supplier}",
      "(what|which) suppliers (are there|do we have|have we)", "[what are] the terms of {supplier}"},
     {"suppliers", "how long does Lindwurm take", "who delivers medium"},
     Role::look,
     {gives::records(
         "suppliers", "by name",
         {{"supplier", Kind::count, "its number"},
          {"name", Kind::name, "what the shop calls them"},
          amount("pack", "sold in whole ones of it; all null: any amount"),
          amount("minimum", "the least of one order; all null: none"),
          {"said_days", Kind::count, "from order to arrival, as they say", Often::or_null},
          {"took_days", Kind::number, "what it really took in the mean", Often::or_null},
          {"took_spread_days", Kind::number, "standard deviation of that", Often::or_null},
          {"of_orders", Kind::count, "so many orders that is known from"},
          {"plan_days", Kind::number, "what is planned with: both weighed together", Often::or_null},
          {"plan_spread_days", Kind::number, "and its spread", Often::or_null},
          {"open_orders", Kind::count, "of which something is to come"},
          {"note", Kind::words, "may be empty"}})}},
    &ask_suppliers};

} // namespace nutward::shop::question_rows
