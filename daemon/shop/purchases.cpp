#include "shop/purchases.hpp"

#include "shop/bench.hpp"
#include "shop/metre.hpp"
#include "shop/nearly.hpp"
#include "shop/rows.hpp"

#include <fmt/format.h>

#include <cmath>
#include <numeric>

namespace nutward::shop {

namespace {

constexpr std::size_t leads_seen = 20;

std::string folded(std::string_view text) {
  std::string out{text};
  for (char& c : out)
    c = static_cast<char>(c >= 'A' && c <= 'Z' ? c - 'A' + 'a' : c);
  return out;
}

} // namespace

std::vector<OnOrder> left_of(const Purchase& purchase, const View& view) {
  std::vector<OnOrder> out;
  if (purchase.state != PurchaseState::open) return out;
  for (const Awaited& a : view.purchases().lines(purchase.id)) {
    const std::int64_t left = a.line.count - a.came;
    if (left > 0) out.push_back({purchase, a.line, left, a.line.each * left});
  }
  return out;
}

std::vector<OnOrder> on_order(std::optional<std::int64_t> wire, const View& view) {
  std::vector<OnOrder> out;
  for (const Purchase& p : view.purchases().open()) {
    for (OnOrder& o : left_of(p, view))
      if (!wire || o.line.wire == *wire) out.push_back(std::move(o));
  }
  return out;
}

std::optional<Supplier> supplier_called(std::string_view name, const View& view) {
  for (const Supplier& s : view.purchases().suppliers())
    if (folded(s.name) == folded(name)) return s;
  return std::nullopt;
}

std::optional<Supplier> supplier_meant(std::string_view said, const Call& call, std::string_view where,
                                       const View& view) {
  if (auto whole = supplier_called(said, view)) return whole;
  std::vector<Supplier> have;
  for (const Supplier& s : view.purchases().suppliers())
    if (folded(s.name).find(folded(said)) != std::string::npos) have.push_back(s);
  if (have.empty()) return std::nullopt;
  if (have.size() == 1) return have.front();
  Problem problem(Fault::ambiguous, fmt::format("More than one supplier is called '{}'.", said),
                  std::string(where), "Say more of the name.");
  for (const Supplier& s : have) {
    Choice choice{s.name, call, {seen({Thing::supplier, s.id}, view)}};
    std::erase_if(choice.call.args, [&](const auto& a) { return a.first == where; });
    choice.call.args.emplace_back(std::string(where), s.name);
    problem.choices.push_back(std::move(choice));
  }
  throw Problem(std::move(problem));
}

std::string nearly_supplier(std::string_view said, const View& view) {
  std::vector<std::string> names;
  for (const Supplier& s : view.purchases().suppliers()) {
    names.push_back(s.name);
    names.push_back(s.name.substr(0, s.name.find(' ')));
  }
  std::string out = nearly(said, names);
  if (const auto the = out.find("the "); the != std::string::npos)
    out.erase(the, 4); // of things, not of names
  return out;
}

std::optional<Supplier> usual_supplier(std::int64_t wire, const View& view) {
  if (const auto last = view.purchases().last_supplier(wire)) return view.purchases().supplier(*last);
  for (const Lot& lot : view.wires().lots(wire)) {
    if (lot.supplier.empty()) continue;
    if (auto s = supplier_called(lot.supplier, view)) return s;
    break;
  }
  const auto all = view.purchases().suppliers();
  return all.size() == 1 ? std::optional(all.front()) : std::nullopt;
}

std::string name_of_supplier(std::int64_t id, const View& view) {
  const auto s = view.purchases().supplier(id);
  return s ? s->name : fmt::format("supplier {}", id);
}

std::string words_of(const Amount& amount, const Setup&) {
  if (amount.sticks) return plural(*amount.sticks, "stick");
  if (amount.length) return units::print(*amount.length, units::LengthUnit::m);
  return amount.mass ? units::print(*amount.mass) : "any";
}

std::string words_of(std::int64_t count, const PurchaseLine& line, const View& view, const Setup& setup) {
  const bool coil = line.form == Form::coil;
  return fmt::format("{} of {}, {} each", plural(count, coil ? "coil" : "stick"),
                     wire_of(view, line.wire).name,
                     coil ? units::print(line.each, units::LengthUnit::m) : say(line.each, setup));
}

std::string named(const Purchase& purchase, const View& view, const Setup& setup) {
  std::string what;
  for (const Awaited& a : view.purchases().lines(purchase.id))
    what += (what.empty() ? "" : "; ") + words_of(a.line.count, a.line, view, setup);
  return fmt::format("order {} ({}, from {})", purchase.id, what, name_of_supplier(purchase.supplier, view));
}

LeadTime lead_time(const Supplier& supplier, const View& view, const hours::Zone& zone) {
  LeadTime out;
  for (const Delivered& d : view.purchases().delivered(supplier.id, leads_seen)) {
    const int days = zone.local(d.received).day.days - zone.local(d.ordered).day.days;
    if (days >= 0 && days <= 366) out.took.push_back(days);
  }
  const auto n = static_cast<double>(out.took.size());
  if (!out.took.empty()) out.mean = std::accumulate(out.took.begin(), out.took.end(), 0.0) / n;
  if (out.took.size() > 1) {
    double squares = 0;
    for (const double t : out.took)
      squares += (t - *out.mean) * (t - *out.mean);
    out.spread = std::sqrt(squares / (n - 1));
  }
  if (supplier.lead_days || out.mean)
    out.to_plan = supply::lead(out.took, supplier.lead_days ? *supplier.lead_days : *out.mean);
  return out;
}

std::string took_words(const LeadTime& lead) {
  if (!lead.mean) return "not known yet";
  const auto orders = plural(static_cast<std::int64_t>(lead.took.size()), "order");
  const std::string days = fmt::format("{:.3g} {}", *lead.mean, *lead.mean == 1 ? "day" : "days");
  return lead.spread ? fmt::format("{} (± {:.2g}, of {})", days, *lead.spread, orders)
                     : fmt::format("{} (of {})", days, orders);
}

supply::Terms terms_of(const Supplier& supplier, const Wire& wire) {
  const auto length = [&](const Amount& a) {
    if (a.length) return *a.length;
    if (a.sticks) return wire.stick ? *wire.stick * *a.sticks : Length{};
    const auto metre = a.mass ? metre_of(wire) : std::nullopt;
    return metre ? wire::weighed(*a.mass, metre->linear, Mass{1}).length : Length{};
  };
  return {length(supplier.pack), length(supplier.minimum)};
}

namespace {

std::string choice_label(const Purchase& p, const View& view, const Setup& set) {
  std::string out = named(p, view, set);
  if (p.promised) out += ", due " + hours::human(*p.promised);
  return out;
}

[[noreturn]] void ask_which(const std::vector<Purchase>& have, const Args& args, const View& view) {
  const Setup set = setup(view);
  Problem problem(Fault::ambiguous, fmt::format("{} orders are open. Which one?", have.size()), "order",
                  "Say its number, or its wire.");
  for (const Purchase& p : have) {
    Choice choice{choice_label(p, view, set), args.call(), {seen({Thing::purchase, p.id}, view)}};
    choice.call.args.emplace_back("order", p.id);
    problem.choices.push_back(std::move(choice));
  }
  throw Problem(std::move(problem));
}

Purchase by_number(std::int64_t id, const View& view) {
  const auto p = view.purchases().find(id);
  if (!p) {
    throw Problem(Fault::value, fmt::format("There is no order {}.", id), "order",
                  "Ask what is on order to see them.");
  }
  if (p->state != PurchaseState::open) {
    throw Problem(Fault::state,
                  fmt::format("Nothing more is to come of {}: it {}.", named(*p, view, setup(view)),
                              p->state == PurchaseState::cancelled ? "was cancelled" : "has arrived"),
                  "order", "Ask what is on order to see the open ones, or undo what closed it.");
  }
  return *p;
}

} // namespace

Purchase purchase_of(const Args& args, const View& view) {
  if (const auto id = args.opt<std::int64_t>("order")) return by_number(*id, view);
  const std::int64_t wire = args.row().find("wire") ? args.opt_id("wire").value_or(0) : 0;
  std::int64_t from = 0; // these two: 0 not said
  if (args.row().find("supplier") && args.has("supplier")) {
    const auto s = supplier_meant(args.text("supplier"), args.call(), "supplier", view);
    if (!s) {
      throw Problem(Fault::value, fmt::format("No supplier is called '{}'.", args.text("supplier")),
                    "supplier", "Ask for 'suppliers' to see them.");
    }
    from = s->id;
  }
  std::vector<Purchase> have;
  for (const Purchase& p : view.purchases().open()) {
    const auto left = left_of(p, view);
    const bool has_wire = wire == 0 || std::any_of(left.begin(), left.end(),
                                                   [&](const OnOrder& o) { return o.line.wire == wire; });
    if (has_wire && (from == 0 || p.supplier == from)) have.push_back(p);
  }
  if (have.size() > 1) ask_which(have, args, view);
  if (have.size() == 1) return have.front();
  throw Problem(Fault::state,
                wire != 0 ? fmt::format("No {} is on order.", wire_of(view, wire).name)
                          : "Nothing is on order.",
                "order",
                "Record the order first, such as: ordered 40 sticks of tall, due friday; what came without "
                "one is said as: received 12 sticks of tall.");
}

void check_after_order(const Purchase& p, Instant came, const View& view) {
  if (came >= p.ordered) return;
  throw Problem(Fault::value,
                fmt::format("Order {} of {} was made after that; nothing of it can have come before.", p.id,
                            name_of_supplier(p.supplier, view)),
                "at", "Say when it came, or undo the order and record it with its own time: at 9 days ago.");
}

std::optional<Money> share_of(const PurchaseLine& line, std::int64_t before, std::int64_t now) {
  if (!line.price) return std::nullopt;
  const auto up_to = [&](std::int64_t n) {
    return units::share(*line.price, Length{std::min(n, line.count)}, Length{line.count});
  };
  return up_to(before + now) - up_to(before);
}

bool close_if_all_came(Purchase& purchase, Instant happened, const View& view) {
  if (!left_of(purchase, view).empty()) return false;
  purchase.state = PurchaseState::arrived;
  purchase.closed = happened;
  return true;
}

Lot take_in(Lot lot, Tx& tx) {
  lot.id = tx.put(lot);
  tx.move({MovementKind::received,
           lot.wire,
           lot.id,
           {},
           {},
           {},
           Place::outside,
           Place::stock,
           lot.each * lot.count,
           0,
           ""});
  return lot;
}

} // namespace nutward::shop
