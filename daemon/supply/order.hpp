// Order: when stock has come down to where an order is due, and how much to order then.
#pragma once

#include "supply/bad_supply.hpp"
#include "supply/forecast.hpp"
#include "units/length.hpp"

#include <span>

namespace nutward::supply {

using units::Length;

// How long an order takes, in the same periods as Demand.
struct Lead {
  double mean = 0;
  double deviation = 0;
  std::size_t seen = 0; // deliveries that it is known from; 0: as the supplier says
};

// From what deliveries really took, in periods, none negative; `said` is what the supplier says (a standard
// deviation of said_spread of it is taken), and counts as `weight` deliveries. The deviation is about the
// mean of both, so that a supplier who keeps missing what he says is not trusted the more. BadSupply for a
// lead that is negative or over a year of days (366).
inline constexpr double said_spread = 0.25; // from memory: a guess
Lead lead(std::span<const double> took, double said, double weight = 2);

// The standard normal quantile of a service level, strictly within 0.5 and 1 (0.98: out of stock in at most
// one order cycle of fifty, if demand were normal). BadSupply otherwise.
double service_factor(double service);

// z·√(L·σd² + d²·σL²): what is kept for demand over the lead time L that is above the mean, and for leads
// that are longer (any text of operations management; with σL 0 or σd 0 the simpler forms). The lead's mean
// includes the time between reviews.
double safety_stock(double z, const Demand& demand, const Lead& lead);
// d·L + safety stock: an order is due when stock and what is on order have come down to this.
double reorder_point(double z, const Demand& demand, const Lead& lead);

// √(2DS/H), a reference only: what is cheapest if demand were even. `a_year` over 0, `order_cost` for an
// order, `holding_cost` for a unit and year, both over 0 and in the same money.
double economic_quantity(double a_year, double order_cost, double holding_cost);

struct Terms {
  Length pack;    // it is sold in whole ones of these; 0: any length
  Length minimum; // and not in less than this in all; 0: none
};
// At least `wanted`, at least the minimum, in whole packs. 0 for a wanted of 0 or less.
Length rounded_up(Length wanted, const Terms& terms);

} // namespace nutward::supply
