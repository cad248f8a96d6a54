// Money: a whole number of minor units (cents) of the shop's one currency, which is a setting and not part of
// the value.
#pragma once

#include "units/length.hpp"

#include <compare>
#include <cstdint>

namespace nutward::units {

struct Money {
  std::int64_t minor = 0;

  friend constexpr auto operator<=>(Money, Money) = default;
  friend constexpr Money operator+(Money a, Money b) { return {a.minor + b.minor}; }
  friend constexpr Money operator-(Money a, Money b) { return {a.minor - b.minor}; }
};

// What `part` of a wire is worth that costs `whole` for `of`: whole · part / of, exactly, then rounded once
// to the nearest minor unit, a half away from zero. `of` > 0; a result beyond the range of Money throws
// std::overflow_error.
Money share(Money whole, Length part, Length of);

} // namespace nutward::units
