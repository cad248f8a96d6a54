// Zone: a time zone as an immutable value. Between two transitions the local clock runs a fixed offset ahead
// of UTC; that is all it holds. It reads no clock and no file; hours/load_zone.hpp makes one from the
// system's tz database.
//
// Local time is not always a function of the calendar: a clock put forward leaves a gap of readings that
// never occur, a clock put back shows some readings twice. instant() settles both with one rule.
#pragma once

#include "hours/bad_hours.hpp"
#include "units/instant.hpp"

#include <chrono>
#include <cstdint>
#include <string>
#include <vector>

namespace nutward::hours {

// What a clock on the wall shows: a date, and seconds since its 00:00 as shown (0..86399).
struct LocalTime {
  units::Day day;
  std::int32_t s = 0;
  friend constexpr auto operator<=>(const LocalTime&, const LocalTime&) = default;
};

// From this instant on, local time = UTC + offset_s (positive is east of Greenwich).
struct Transition {
  units::Instant from;
  std::int32_t offset_s = 0;
  std::string abbreviation; // "EDT", "+1030"
};

class Zone {
public:
  // At least one transition, in rising order of `from`, offsets within ±26 h (RFC 9636); BadHours otherwise.
  // The first one also serves every instant before it, the last one every instant after it.
  Zone(std::string name, std::vector<Transition> transitions);

  const std::string& name() const { return name_; }
  const std::vector<Transition>& transitions() const { return transitions_; }

  // The transition in force at t.
  const Transition& at(units::Instant t) const;
  std::chrono::seconds offset_at(units::Instant t) const { return std::chrono::seconds{at(t).offset_s}; }

  // BadHours for an instant outside the years 1 to 9999: a clock that says so is broken.
  LocalTime local(units::Instant t) const;

  // The earliest instant at which the local clock shows that time or a later one. Hence the earlier of two
  // where the clock shows it twice; the first instant after the gap where it never shows it; and it never
  // decreases as the local time grows. seconds_of_day is 0..86400, where 86400 is 24:00, the start of the
  // next day; BadHours beyond.
  units::Instant instant(units::Day day, std::int32_t seconds_of_day) const;

  // RFC 3339 with the zone's offset: "2026-11-26T09:00:00-05:00". An offset that is not whole minutes cannot
  // be written so (only found before 1973); the same instant is then given in UTC, with Z.
  std::string rfc3339(units::Instant t) const;

  // For people: "Thu 26 Nov 2026, 09:00", the minute it is in (seconds are dropped). Where the clock shows
  // that time twice, the abbreviation follows and tells them apart: "Sun 1 Nov 2026, 01:30 EST".
  std::string human(units::Instant t) const;

private:
  std::size_t index_at(units::Instant t) const;
  bool shown_twice(units::Instant t) const;

  std::string name_;
  std::vector<Transition> transitions_;
};

std::string human(units::Day day);                   // "Thu 26 Nov 2026"
std::string human_time(std::int32_t seconds_of_day); // "09:00"; 86400 is "24:00"; seconds are dropped

} // namespace nutward::hours
