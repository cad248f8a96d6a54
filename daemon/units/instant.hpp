// Instant: whole seconds since 1970-01-01T00:00:00Z, without leap seconds. Day: a calendar date without a
// place on the clock; which instants it covers depends on the shop's time zone. Durations are
// std::chrono::seconds.
#pragma once

#include <chrono>
#include <compare>
#include <cstdint>

namespace nutward::units {

struct Instant {
  std::int64_t s = 0;

  friend constexpr auto operator<=>(Instant, Instant) = default;
  friend constexpr Instant operator+(Instant a, std::chrono::seconds d) { return {a.s + d.count()}; }
  friend constexpr Instant operator-(Instant a, std::chrono::seconds d) { return {a.s - d.count()}; }
  friend constexpr std::chrono::seconds operator-(Instant a, Instant b) {
    return std::chrono::seconds{a.s - b.s};
  }
};

struct Day {
  std::int32_t days = 0; // since 1970-01-01

  friend constexpr auto operator<=>(Day, Day) = default;
  friend constexpr Day operator+(Day a, int n) { return {a.days + n}; }
  friend constexpr Day operator-(Day a, int n) { return {a.days - n}; }
  friend constexpr int operator-(Day a, Day b) { return a.days - b.days; }

  static constexpr Day from(std::chrono::year_month_day d) {
    return {static_cast<std::int32_t>(std::chrono::sys_days{d}.time_since_epoch().count())};
  }
  constexpr std::chrono::year_month_day ymd() const { return std::chrono::sys_days{std::chrono::days{days}}; }
  // 0 is Monday, 6 is Sunday (ISO 8601 order, counted from 0).
  constexpr int weekday() const {
    return static_cast<int>(
               std::chrono::weekday{std::chrono::sys_days{std::chrono::days{days}}}.iso_encoding()) -
           1;
  }
};

} // namespace nutward::units
