#include "supply/order.hpp"

#include <algorithm>
#include <boost/math/distributions/normal.hpp>
#include <cmath>

namespace nutward::supply {

Lead lead(std::span<const double> took, double said, double weight) {
  const auto check = [](double days) {
    if (!(days >= 0 && days <= 366))
      throw BadSupply("A lead time is 0 to 366 days.", "Say how many days it is from order to arrival.");
  };
  check(said);
  if (!(weight > 0)) throw BadSupply("What a supplier says counts as more than no delivery.", "2 is usual.");
  double sum = weight * said;
  for (const double t : took)
    check(t), sum += t;
  const double n = weight + static_cast<double>(took.size());
  Lead out{sum / n, 0, took.size()};
  const double spread = said_spread * said;
  double squares = weight * (spread * spread + (said - out.mean) * (said - out.mean));
  for (const double t : took)
    squares += (t - out.mean) * (t - out.mean);
  out.deviation = std::sqrt(squares / n);
  return out;
}

double service_factor(double service) {
  if (!(service > 0.5 && service < 1))
    throw BadSupply("A service level lies between 0.5 and 1.", "0.98 is usual.");
  return boost::math::quantile(boost::math::normal_distribution<>(), service);
}

double safety_stock(double z, const Demand& demand, const Lead& lead) {
  return z * std::sqrt(lead.mean * demand.deviation * demand.deviation +
                       demand.mean * demand.mean * lead.deviation * lead.deviation);
}

double reorder_point(double z, const Demand& demand, const Lead& lead) {
  return demand.mean * lead.mean + safety_stock(z, demand, lead);
}

double economic_quantity(double a_year, double order_cost, double holding_cost) {
  if (!(a_year > 0 && order_cost > 0 && holding_cost > 0))
    throw BadSupply("An economic quantity wants a demand, a cost of ordering and one of holding, all over 0.",
                    "Set what is not known yet.");
  return std::sqrt(2 * a_year * order_cost / holding_cost);
}

Length rounded_up(Length wanted, const Terms& terms) {
  if (wanted <= Length{}) return {};
  const Length least = std::max(wanted, terms.minimum);
  if (terms.pack <= Length{}) return least;
  return terms.pack * ((least.nm + terms.pack.nm - 1) / terms.pack.nm);
}

} // namespace nutward::supply
