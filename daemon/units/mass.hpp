// Mass: a whole number of milligrams. 1 lb = 0.45359237 kg exactly (NIST SP 811, from memory); an ounce is
// 1/16 lb.
#pragma once

#include <compare>
#include <cstdint>

namespace nutward::units {

struct Mass {
  std::int64_t mg = 0;

  friend constexpr auto operator<=>(Mass, Mass) = default;
  friend constexpr Mass operator+(Mass a, Mass b) { return {a.mg + b.mg}; }
  friend constexpr Mass operator-(Mass a, Mass b) { return {a.mg - b.mg}; }

  constexpr double g() const { return static_cast<double>(mg) * 1e-3; }
};

} // namespace nutward::units
