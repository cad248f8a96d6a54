// What the shop goes by when it orders wire: how sure it wants to be, for how much new work it buys, how long
// an order takes where nobody knows. From its settings.
#pragma once

#include "shop/setup.hpp"

#include <optional>
#include <string>
#include <string_view>

namespace nutward::shop {

struct SupplySettings {
  double service = 0.98;               // within 0.5 and 1
  double further = 3;                  // refrets of new work that an order covers besides
  int review_days = 2;                 // that may pass from when an order is due until somebody places it
  int lead_days = 14;                  // from order to arrival, where no supplier says and none has shown
  double guess = 0.25;                 // refrets a week of a wire without history
  int again_days = 3;                  // after which an order that is due is spoken of again
  std::optional<double> holding{};     // what wire on hand costs a year, as a share of its price
  std::optional<units::Money> order{}; // what an order costs, whatever is in it
};
SupplySettings supply_settings(const View& view);

// How a setting of them is kept; nullopt where `name` is none of them. Throws Problem{value}.
std::optional<std::string> check_supply_setting(std::string_view name, std::string_view text);

} // namespace nutward::shop
