#include "agenda/recheck.hpp"

#include <algorithm>
#include <fmt/core.h>

namespace nutward::agenda {

RecheckClock recheck_clock(units::Instant pressed, const RecheckHours& hours, const hours::Calendar& calendar,
                           const hours::Zone& zone) {
  if (hours.from_h < 1 || hours.from_h > 168)
    throw BadAgenda(fmt::format("A recheck from {} h after pressing is out of range.", hours.from_h),
                    "Say 1 to 168 hours; 16 is usual.");
  if (hours.due_h < hours.from_h || hours.due_h > 336)
    throw BadAgenda(fmt::format("A recheck due {} h after pressing, done from {} h, is out of range.",
                                hours.due_h, hours.from_h),
                    "Say at least the hours it may be done from and at most 336; 24 is usual.");
  return window_clock(pressed + std::chrono::hours{hours.from_h}, pressed + std::chrono::hours{hours.due_h},
                      calendar, zone);
}

RecheckClock window_clock(units::Instant from, units::Instant due, const hours::Calendar& calendar,
                          const hours::Zone& zone) {
  if (due < from)
    throw BadAgenda("A recheck cannot be due before it may be done.", "Give a later time for it.");
  RecheckClock clock;
  clock.from = from;
  clock.due = due;
  clock.remind = next_open(calendar, zone, clock.due).value_or(clock.due);
  const auto overdue = end_of_next_open_day(calendar, zone, clock.due);
  // Where the clock is put back over midnight the reminder may lie in the next day's hours: never overdue
  // before it.
  clock.overdue = std::max(overdue.value_or(clock.due + std::chrono::hours{24}), clock.remind);
  return clock;
}

} // namespace nutward::agenda
