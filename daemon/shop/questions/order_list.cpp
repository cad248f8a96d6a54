// What to order from whom: every wire whose day to order is near, with what it comes to.
#include "shop/agenda_words.hpp"
#include "shop/supply_words.hpp"

#include <cmath>
#include <map>
#include <utility>

namespace nutward::shop::question_rows {

namespace {

// Of one supplier, or of nobody that is known (""), by day.
using Groups = std::map<std::string, std::vector<WireSupply>>;

void order(WireSupply& s, Length length) {
  const Buying& b = s.buying;
  s.outlook.order = length;
  s.price = b.last_price && length > Length{}
                ? std::optional(units::share(*b.last_price, length, b.last_length))
                : std::nullopt;
}

// A supplier's least order is of all that is ordered from them at once: each wire by itself needs no more
// than it needs, and if all of them together are less, more is taken of the one that is due first. What has
// no usual stick counts for nothing there: nobody can say what the least is of it.
void share_minimum(std::vector<WireSupply>& supplies, Day today) {
  WireSupply* first = nullptr;
  double share = 0;
  for (WireSupply& s : supplies) {
    const Length least = std::exchange(s.wanted.terms.minimum, Length{});
    if (least <= Length{}) continue;
    order(s, supply::outlook(s.wanted, today).order);
    share += static_cast<double>(s.outlook.order.nm) / static_cast<double>(least.nm);
    if (first == nullptr) first = &s;
  }
  if (first == nullptr) return;
  const supply::Terms& terms = first->buying.terms;
  const double more = std::max(0.0, 1 - share) * static_cast<double>(terms.minimum.nm);
  order(*first, supply::rounded_up(first->outlook.order + Length{static_cast<std::int64_t>(std::ceil(more))},
                                   {terms.pack, Length{}}));
}

Groups groups_of(const Supplying& all, int days) {
  Groups out;
  for (WireSupply& s : all.of_all())
    if (s.order_due(all.today() + days)) out[s.buying.supplier_name].push_back(std::move(s));
  for (auto& [name, supplies] : out)
    std::stable_sort(supplies.begin(), supplies.end(), [](const WireSupply& a, const WireSupply& b) {
      return a.outlook.order_by < b.outlook.order_by;
    });
  for (auto& [name, supplies] : out)
    if (!name.empty()) share_minimum(supplies, all.today());
  return out;
}

// What is known of the price, and of how many wires nothing is.
struct Total {
  units::Money known;
  int unknown = 0;
  void add(const WireSupply& s) {
    if (s.price)
      known = known + *s.price;
    else
      ++unknown;
  }
};

std::string total_words(const Total& total, const Setup& set) {
  if (total.known.minor == 0) return total.unknown == 0 ? "" : "; no price is known";
  return fmt::format("; {} at the last prices{}", units::print(total.known, set.currency),
                     total.unknown == 0 ? "" : fmt::format(", without {}", plural(total.unknown, "wire")));
}

std::string words_of(const std::string& supplier, const std::vector<WireSupply>& supplies, const Setup& set,
                     const Moment& moment) {
  std::vector<std::string> parts;
  Total total;
  for (const WireSupply& s : supplies) {
    parts.push_back(fmt::format("{} of {} {}", quantity_words(s), s.wire.name, by_words(s, moment)));
    total.add(s);
  }
  return fmt::format("Order{} {}{}.", supplier.empty() ? "" : fmt::format(" from {}:", supplier),
                     fmt::join(parts, ", "), total_words(total, set));
}

// RFC 4180. A spreadsheet must not take text for a formula: such a cell begins with an apostrophe.
std::string cell(std::string text) {
  if (!text.empty() && std::string_view("=+-@\t\r").find(text[0]) != std::string_view::npos)
    text.insert(0, 1, '\'');
  if (text.find_first_of(",\"\r\n") == std::string::npos) return text;
  std::string out = "\"";
  for (const char c : text)
    out += c == '"' ? std::string("\"\"") : std::string(1, c);
  return out + "\"";
}

std::string csv_of(const Groups& groups, const Setup& set) {
  std::string out = "supplier,wire,order_by_on,packs,length_mm,price,currency\r\n";
  for (const auto& [supplier, supplies] : groups) {
    for (const WireSupply& s : supplies) {
      const auto packs = s.buying.terms.pack > Length{} ? s.outlook.order.nm / s.buying.terms.pack.nm : 0;
      out += fmt::format("{},{},{},{},{},{},{}\r\n", cell(supplier), cell(s.wire.name),
                         units::print(*s.outlook.order_by), packs == 0 ? "" : std::to_string(packs),
                         units::print_exact_mm(s.outlook.order),
                         s.price ? fmt::format("{}.{:02}", s.price->minor / 100, s.price->minor % 100) : "",
                         s.price ? set.currency : "");
    }
  }
  return out;
}

Value data_of(const Groups& groups, const Setup& set) {
  std::vector<Value> out;
  Total all;
  for (const auto& [supplier, supplies] : groups) {
    Total total;
    std::vector<Value> wires;
    for (const WireSupply& s : supplies) {
      total.add(s), all.add(s);
      wires.push_back(
          record({{"wire", ref(Thing::wire, s.wire.id)},
                  {"name", s.wire.name},
                  {"order_by_on", units::print(*s.outlook.order_by)},
                  {"length", s.outlook.order},
                  {"packs", s.buying.terms.pack > Length{} ? s.outlook.order.nm / s.buying.terms.pack.nm : 0},
                  {"price_minor", s.price ? Value{*s.price} : Value{}},
                  {"guess", s.by_a_guess()}}));
    }
    out.push_back(record({{"supplier", supplier},
                          {"wires", list(std::move(wires))},
                          {"total", total.known},
                          {"without_price", std::int64_t{total.unknown}}}));
  }
  return record({{"suppliers", list(std::move(out))},
                 {"total", all.known},
                 {"without_price", std::int64_t{all.unknown}},
                 {"currency", set.currency},
                 {"csv", csv_of(groups, set)}});
}

Answer ask(const Args& args, const Moment& moment, const View& view) {
  const Supplying all(view, moment.calendar, moment.zone, moment.now);
  const int days = args.has("days") ? static_cast<int>(args.get<std::int64_t>("days")) : sight_days;
  const Groups groups = groups_of(all, days);
  Answer out;
  out.table = Table{{"supplier", "wire", "order", "by", "price"}, {}};
  for (const auto& [supplier, supplies] : groups) {
    out.text += (out.text.empty() ? "" : " ") + words_of(supplier, supplies, all.setup(), moment);
    for (const WireSupply& s : supplies)
      out.table->rows.push_back({supplier.empty() ? "-" : supplier, s.wire.name, quantity_words(s),
                                 day_words(*s.outlook.order_by, moment),
                                 s.price ? units::print(*s.price, all.setup().currency) : "-"});
  }
  if (groups.empty()) {
    out.text = fmt::format("Nothing is to be ordered within {}.", plural(days, "day"));
    out.table.reset();
  }
  out.reason =
      fmt::format("Wires whose last day to order is within {}; ask about the supply of one to see why.",
                  plural(days, "day"));
  out.data = data_of(groups, all.setup());
  return out;
}

} // namespace

extern const Question order_list;
const Question order_list{
    {"order-list",
     "What to order from whom, by when, and what it comes to at the last prices; also as CSV.",
     {{"days",
       Kind::count,
       false,
       false,
       "whose last day to order is within so many; 7 where not said",
       {0, 366}}},
     {"[show|make] [me] [the|our|an|one] (order list|shopping list|list of orders)",
      "[show|make] [me] [the|our|an|one] (order list|shopping list) for [the next] {days} days",
      "what (do|should|must|shall) (we|i) [have to|need to] (order|buy) [now|this week|today]",
      "what (is|has) to be ordered [now|this week|today]",
      "what (do|should|must) (we|i) (order|buy) [with]in [the next] {days} days",
      "what wire (do|should|must|shall) (we|i) (order|buy)",
      "which (wire|wires) (do|should|must|shall) (we|i) [have to|need to] (order|buy)"},
     {"order list", "what do we have to order", "order list for the next 30 days"},
     Role::look,
     {gives::records(
          "suppliers", "by name; the one without a name is whoever it is bought from",
          {{"supplier", Kind::words, "may be empty"},
           gives::records("wires", "by the day by which to order",
                          {gives::wire,
                           gives::wire_name,
                           {"order_by", Kind::day, "the last day on which an order comes in time"},
                           {"length", Kind::length, "to order"},
                           {"packs", Kind::count, "how many packs that is; 0: it is not sold in packs"},
                           {"price", Kind::money, "at the price of the newest delivery", Often::or_null},
                           {"guess", Kind::yes, "whether nothing but a guess at new work says so"}}),
           {"total", Kind::money, "of those with a known price"},
           {"without_price", Kind::count, "wires whose price is not known"}}),
      {"total", Kind::money, "of all with a known price"},
      {"without_price", Kind::count, "wires whose price is not known"},
      {"currency", Kind::words, "of prices"},
      {"csv", Kind::words, "the list as CSV (RFC 4180), for a spreadsheet"}}},
    &ask};

} // namespace nutward::shop::question_rows
