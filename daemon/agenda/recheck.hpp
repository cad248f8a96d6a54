// The clock of a pressing: a pressed fret may spring back, so it is looked at again about a day later (common
// practice, from memory; the hours are a setting of the shop). A fret pressed again gets a clock of its own.
#pragma once

#include "agenda/bad_agenda.hpp"
#include "hours/calendar.hpp"

namespace nutward::agenda {

// Elapsed hours after pressing, not hours of the local clock: a change of clock in between moves what the
// clock on the wall shows, never the time the wire had.
struct RecheckHours {
  std::int32_t from_h = 16; // 1..168: earlier, the wire has not shown yet what it will do
  std::int32_t due_h = 24;  // from_h..336
};

struct RecheckClock {
  units::Instant from;    // it may be done from here
  units::Instant due;     // and is due here
  units::Instant remind;  // the first open instant at or after due
  units::Instant overdue; // the end of the first open day after due's local day
  friend bool operator==(const RecheckClock&, const RecheckClock&) = default;
};

// A shop that is closed for the 400 days after due, or has said no hours yet, is reminded all the same: at
// due, and it is overdue a day later. BadAgenda for hours out of range.
RecheckClock recheck_clock(units::Instant pressed, const RecheckHours& hours, const hours::Calendar& calendar,
                           const hours::Zone& zone);

// Likewise for a recheck whose window somebody said otherwise. BadAgenda where it is due before it may be
// done.
RecheckClock window_clock(units::Instant from, units::Instant due, const hours::Calendar& calendar,
                          const hours::Zone& zone);

} // namespace nutward::agenda
