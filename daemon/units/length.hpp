// Length: a whole number of nanometres, so that a ledger of lengths adds up exactly.
//
// 1 in = 25.4 mm exactly (NIST SP 811, from memory), so 1/64 in is exactly 396 875 nm. The range is that of a
// 64-bit integer, about ±9.2 million km; arithmetic does not check for overflow, callers bound their input.
#pragma once

#include <cmath>
#include <compare>
#include <cstdint>

namespace nutward::units {

struct Length {
  std::int64_t nm = 0;

  friend constexpr auto operator<=>(Length, Length) = default;
  friend constexpr Length operator+(Length a, Length b) { return {a.nm + b.nm}; }
  friend constexpr Length operator-(Length a, Length b) { return {a.nm - b.nm}; }
  friend constexpr Length operator-(Length a) { return {-a.nm}; }
  friend constexpr Length operator*(Length a, std::int64_t n) { return {a.nm * n}; }
  friend constexpr Length operator*(std::int64_t n, Length a) { return {a.nm * n}; }
  constexpr Length& operator+=(Length b) { return nm += b.nm, *this; }
  constexpr Length& operator-=(Length b) { return nm -= b.nm, *this; }

  // The value in millimetres, for formulas in double. A length under 9 m keeps its nanometre on the way there
  // and back.
  constexpr double mm() const { return static_cast<double>(nm) * 1e-6; }
};

// Rounds to the nearest nanometre. `value` must be finite and under 9e12 in magnitude.
inline Length from_mm(double value) {
  return {std::llround(value * 1e6)};
}

constexpr Length abs(Length a) {
  return a.nm < 0 ? -a : a;
}

inline constexpr Length inch{25'400'000};
inline constexpr Length millimetre{1'000'000};

namespace literals {
// 52.4_mm, rounded to the nanometre; for settings and tests.
constexpr Length operator""_mm(long double v) {
  return {static_cast<std::int64_t>(v * 1e6L + (v < 0 ? -0.5L : 0.5L))};
}
constexpr Length operator""_mm(unsigned long long v) {
  return {static_cast<std::int64_t>(v) * 1'000'000};
}
} // namespace literals

} // namespace nutward::units
