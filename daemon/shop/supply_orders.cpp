// Where a wire is bought, and what is on order: the one file of supply that knows of suppliers and orders.
#include "shop/supplying.hpp"

#include <algorithm>

namespace nutward::shop {

Buying buying_of(const Wire& wire, const SupplySettings& settings, const View& view, const hours::Zone&) {
  Buying out;
  for (const Lot& lot : view.wires().lots(wire.id)) {
    if (!out.form) out.form = lot.form, out.each = lot.each, out.supplier_name = lot.supplier;
    if (!lot.price || lot.price->minor <= 0) continue;
    out.last_price = lot.price;
    out.last_length = lot.count * lot.each;
    break;
  }
  if (!out.form && wire.stick) out.form = Form::stick, out.each = *wire.stick;
  out.terms.pack = out.each;
  out.lead = supply::lead({}, settings.lead_days);
  return out;
}

std::vector<Arrival> arrivals_of(const Wire&, const Buying&, Day, const View&, const hours::Zone&) {
  return {};
}

} // namespace nutward::shop
