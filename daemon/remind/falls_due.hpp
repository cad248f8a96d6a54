// What falls due in a snapshot of the shop, and what to write down once it is told.
#pragma once

#include "shop/apply.hpp"
#include "shop/setup.hpp"

#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace nutward::remind {

struct Due {
  units::Instant at; // when it is to be told
  shop::Event event;
  std::string cause;                   // told once a receiver
  std::function<void(shop::Tx&)> mark; // keeps that it was told
};

// Everything that is still to be told, whenever that is; in no order; what is told no more
// (wire.well) is due now.
std::vector<Due> falls_due(const shop::View& view, const hours::Calendar& calendar, const hours::Zone& zone,
                           units::Instant now);

} // namespace nutward::remind
