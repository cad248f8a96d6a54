// Parts of talk/recognise_time.cpp that need no more of a sentence than its tokens: spans of time, and dates.
#pragma once

#include "talk/recognise.hpp"

namespace nutward::talk {

// "2 hours ago", "in an hour and a half", "24 h from now", "1 h 30 min ago": elapsed time, to the second.
struct SaidInstant {
  units::Instant at;
  std::size_t end = 0;
};
std::optional<SaidInstant> elapsed_at(std::size_t i, const Reader& in);

struct FoundDay {
  units::Day day;
  std::size_t end = 0;
};
// "in 3 days", "two weeks ago", "a month from now", "in a couple of days": by the calendar. The 31st of a
// month that has none is its last day.
std::optional<FoundDay> counted_day(std::size_t i, const Reader& in);
// "2026-12-12", "2026/12/12", "25/12/2026", "12/25/2026", "25.12.2026". Which of two is the month must be
// clear; where it is not, the trouble asks. Two numbers alone ("12/25") are slot 25 of job 12.
std::optional<FoundDay> date_in_digits(std::size_t i, const Reader& in);
// That day, or the trouble that there is none.
std::optional<FoundDay> calendar_day(std::int64_t year, std::int64_t month, std::int64_t day, std::size_t end,
                                     const Reader& in);

} // namespace nutward::talk
