// Force: a load in newtons, as a double: a press gauge is good to a percent, and shares of a load are
// fractions. 1 lbf = 4.4482216152605 N exactly (from 0.45359237 kg and 9.80665 m/s²).
#pragma once

#include <compare>

namespace nutward::units {

inline constexpr double newtons_per_lbf = 4.4482216152605;

struct Force {
  double n = 0;

  friend constexpr auto operator<=>(Force, Force) = default;
  friend constexpr Force operator+(Force a, Force b) { return {a.n + b.n}; }
  friend constexpr Force operator-(Force a, Force b) { return {a.n - b.n}; }
  friend constexpr Force operator*(Force a, double k) { return {a.n * k}; }

  constexpr double lbf() const { return n / newtons_per_lbf; }
};

} // namespace nutward::units
