// Where a wire is bought, and what is on order: the one file of supply that knows of suppliers and orders.
#include "shop/purchases.hpp"
#include "shop/supplying.hpp"

#include <algorithm>
#include <cmath>

namespace nutward::shop {

namespace {

void add_last_lots(Buying& out, const Wire& wire, const View& view) {
  for (const Lot& lot : view.wires().lots(wire.id)) {
    out.bought = true;
    if (!out.form) out.form = lot.form, out.each = lot.each, out.supplier_name = lot.supplier;
    if (!lot.price || lot.price->minor <= 0) continue;
    out.last_price = lot.price;
    out.last_length = lot.count * lot.each;
    break;
  }
  if (!out.form && wire.stick) out.form = Form::stick, out.each = *wire.stick;
}

} // namespace

Buying buying_of(const Wire& wire, const SupplySettings& settings, const View& view,
                 const hours::Zone& zone) {
  Buying out;
  add_last_lots(out, wire, view);
  out.lead = supply::lead({}, settings.lead_days);
  const auto supplier = usual_supplier(wire.id, view);
  if (supplier) {
    out.supplier = supplier->id;
    out.supplier_name = supplier->name;
    out.terms = terms_of(*supplier, wire);
    if (supplier->pack.sticks && out.terms.pack > Length{}) out.pack_of = supplier->pack.sticks;
    if (const LeadTime lead = lead_time(*supplier, view, zone); lead.to_plan) {
      out.lead = *lead.to_plan;
      out.lead_from = lead.took.empty() ? Buying::Says::supplier : Buying::Says::orders;
    }
  }
  if (out.terms.pack == Length{}) out.terms.pack = out.each;
  return out;
}

std::vector<Arrival> arrivals_of(const Wire& wire, const Buying& buying, Day today, const View& view,
                                 const hours::Zone& zone) {
  std::vector<Arrival> out;
  for (const OnOrder& o : on_order(wire.id, view)) {
    const Day usual = zone.local(o.purchase.ordered).day + static_cast<int>(std::ceil(buying.lead.mean));
    const Day said = o.purchase.promised.value_or(usual);
    out.push_back({o.purchase.id, std::max(said, today + (said < today ? 1 : 0)), o.left_length,
                   o.purchase.promised.has_value(), said < today});
  }
  std::stable_sort(out.begin(), out.end(), [](const Arrival& a, const Arrival& b) { return a.day < b.day; });
  return out;
}

} // namespace nutward::shop
