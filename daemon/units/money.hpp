// Money: a whole number of minor units (cents) of the shop's one currency, which is a setting and not part of
// the value.
#pragma once

#include <compare>
#include <cstdint>

namespace nutward::units {

struct Money {
  std::int64_t minor = 0;

  friend constexpr auto operator<=>(Money, Money) = default;
  friend constexpr Money operator+(Money a, Money b) { return {a.minor + b.minor}; }
  friend constexpr Money operator-(Money a, Money b) { return {a.minor - b.minor}; }
};

} // namespace nutward::units
