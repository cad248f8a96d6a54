// From the shop's calendar to the windows of a unit.
#pragma once

#include "agenda/plan.hpp"
#include "hours/calendar.hpp"

#include <span>

namespace nutward::agenda {

// The calendar's openings between two instants. BadHours as hours::openings_between.
std::vector<Window> windows(const hours::Calendar& calendar, const hours::Zone& zone, Instant from,
                            Instant to);

// `open` less `closed` (out of service, booked, away), which may overlap and stand in any order; what is
// empty or the wrong way round in it takes nothing away. `open` in rising order, none overlapping.
std::vector<Window> without(std::span<const Window> open, std::span<const Window> closed);

// Where both are open. Both in rising order, none overlapping.
std::vector<Window> both(std::span<const Window> a, std::span<const Window> b);

std::chrono::seconds length(std::span<const Window> windows);

// For Problem::day_limits: from each local day's 00:00 on the limit is the last closing of the first open day
// after it. Days from the one before `from` to that of `to`; where nothing opens within 400 days, the end of
// the next day of 24 h. Thus a recheck that is due on a Saturday is late from Monday evening on.
std::vector<DayLimit> day_limits(const hours::Calendar& calendar, const hours::Zone& zone, Instant from,
                                 Instant to);

} // namespace nutward::agenda
