// Orders and who they go to: what is still to come, what a supplier sells at once, how long they really take.
#pragma once

#include "hours/zone.hpp"
#include "shop/bind.hpp"
#include "shop/setup.hpp"
#include "supply/order.hpp"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace nutward::shop {

// A line of an open order of which something is still to come.
struct OnOrder {
  Purchase purchase;
  PurchaseLine line;
  std::int64_t left = 0; // sticks or coils, 1 or more
  Length left_length;    // left · each
};
// By promised day, those without last. Of one wire, or of all.
std::vector<OnOrder> on_order(std::optional<std::int64_t> wire, const View& view);
// What is still to come of one order, in the order of its lines.
std::vector<OnOrder> left_of(const Purchase& purchase, const View& view);

// Whatever its capitals; nullopt: none is called that.
std::optional<Supplier> supplier_called(std::string_view name, const View& view);
// By the whole name, or any part of it that only one has; nullopt: none has. Throws Problem{ambiguous} with
// the choices of `call`, at `where`.
std::optional<Supplier> supplier_meant(std::string_view said, const Call& call, std::string_view where,
                                       const View& view);
// "Is it Lindwurm Supply? ", of the supplier whose name is nearest to what was said; else "".
std::string nearly_supplier(std::string_view said, const View& view);
// Who the wire is ordered from where nobody says: from whom it was ordered last, or else came last, or the
// only supplier that there is.
std::optional<Supplier> usual_supplier(std::int64_t wire, const View& view);
std::string name_of_supplier(std::int64_t id, const View& view);

// "12 sticks", "2 coils", "10 m", "500 g"; "any" for none.
std::string words_of(const Amount& amount, const Setup& setup);
// "40 sticks of tall, 610.00 mm each".
std::string words_of(std::int64_t count, const PurchaseLine& line, const View& view, const Setup& setup);
// "order 3 (40 sticks of tall, 610.00 mm each, from Lindwurm Supply)".
std::string named(const Purchase& purchase, const View& view, const Setup& setup);

// How long a supplier takes, in calendar days from the day of the order to the day on which the last of it
// came. Known from the orders of which nothing more is to come, the newest 20 of them.
struct LeadTime {
  std::vector<double> took;           // the newest leading
  std::optional<double> mean, spread; // of `took`; the spread (a standard deviation, n - 1) from two on
  std::optional<supply::Lead>
      to_plan; // with what they say, as supply::lead weighs it; nullopt: nothing known
};
LeadTime lead_time(const Supplier& supplier, const View& view, const hours::Zone& zone);
// "6.3 days (± 1.5, of 4 orders)"; "not known yet".
std::string took_words(const LeadTime& lead);

// A supplier's pack and minimum as lengths of a wire; 0 where they set none, or where sticks or masses of it
// cannot be told in lengths (no usual stick, or nobody knows what a metre weighs).
supply::Terms terms_of(const Supplier& supplier, const Wire& wire);

// The order that is meant: by `order`, or the only open one that has `wire` and is from `supplier`, as far as
// they are said. Throws Problem{value} where there is none, {state} for one that is not open, and {ambiguous}
// with the choices of the call where there are several.
Purchase purchase_of(const Args& args, const View& view);

// Throws Problem{value} at "at" where something is said to have come before it was ordered.
void check_after_order(const Purchase& purchase, Instant came, const View& view);
// What `now` sticks or coils cost that come after `before` others of the line: all shares add up to the price
// of the line. What comes beyond what was ordered costs nothing more. nullopt: no price was said.
std::optional<Money> share_of(const PurchaseLine& line, std::int64_t before, std::int64_t now);
// Whether all of it has come; then the order is closed as arrived, yet to be put.
bool close_if_all_came(Purchase& purchase, Instant happened, const View& view);
// Puts the lot and its wire's movement into stock. Returns it with its id.
Lot take_in(Lot lot, Tx& tx);

} // namespace nutward::shop
