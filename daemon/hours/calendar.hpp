// The shop's calendar: when it is open, and arithmetic in open time.
//
// Hours are said in local time and mean stretches of real time: a span is everything between the instant its
// opening is first reached and the instant its closing is first reached (Zone::instant). "00:00 to 24:00" is
// 23 hours on the day the clock goes forward, and a span that lies wholly in the gap does not happen. An
// opening includes its first instant, not its last. All functions are pure, exact to the second, and take a
// calendar that passes check(). BadHours for an instant outside the years 1 to 9999.
#pragma once

#include "hours/zone.hpp"

#include <array>
#include <chrono>
#include <cstdint>
#include <map>
#include <optional>
#include <set>
#include <utility>
#include <vector>

namespace nutward::hours {

// Seconds of the local day: 0 <= open_s < close_s <= 86400 (24:00). Past midnight is said in two spans, the
// second on the next day; they join by themselves. A break is what lies between two spans.
struct Span {
  std::int32_t open_s = 0;
  std::int32_t close_s = 0;
  friend constexpr auto operator<=>(Span, Span) = default;
};

struct Calendar {
  std::array<std::vector<Span>, 7> weekly;       // Monday first, as Day::weekday()
  std::set<units::Day> closures;                 // days on which the weekly hours do not hold
  std::map<units::Day, std::vector<Span>> extra; // added to that day's hours, also on a closed day
  friend bool operator==(const Calendar&, const Calendar&) = default;
};

using Opening = std::pair<units::Instant, units::Instant>; // from the first up to, not including, the second

// How far the functions below look for an opening: a shop closed for longer has no next open minute.
inline constexpr int horizon_days = 400;

// BadHours, with the day and the spans, where a span closes before or when it opens, leaves the day, or two
// spans of one list overlap (touching is allowed), or a list has over 48 spans. Extra hours may overlap the
// weekly ones.
void check(const Calendar& calendar);
// The same spans sorted, those that overlap or touch made one. Judges nothing: check() does.
std::vector<Span> merged(std::vector<Span> spans);
// Every list merged, days without a span dropped from `extra`: two calendars that say the same become equal.
Calendar normalised(Calendar calendar);

// The openings of a local day, in order, none empty, none touching. Takes a calendar as it is, merged or not.
std::vector<Opening> spans(const Calendar& calendar, const Zone& zone, units::Day day);
// The openings between two instants, cut to them; those that touch (over midnight) are one. Empty if to <=
// from. BadHours for more than 200 years.
std::vector<Opening> openings_between(const Calendar& calendar, const Zone& zone, units::Instant from,
                                      units::Instant to);
std::chrono::seconds open_between(const Calendar& calendar, const Zone& zone, units::Instant from,
                                  units::Instant to);

bool is_open(const Calendar& calendar, const Zone& zone, units::Instant t);
// t itself if the shop is open then, else the next opening; nullopt if there is none within 400 days.
std::optional<units::Instant> next_open(const Calendar& calendar, const Zone& zone, units::Instant t);

// The earliest instant at or after t by which `work` of open time has passed since t: t itself for none, and
// a closing (not the opening after it) where the work just fits. nullopt where nothing opens for 400 days
// before it is done. BadHours for a negative time or one over 10 years.
std::optional<units::Instant> add_open(const Calendar& calendar, const Zone& zone, units::Instant t,
                                       std::chrono::seconds work);
// The latest instant at or before t from which `work` of open time passes until t; otherwise as add_open.
std::optional<units::Instant> subtract_open(const Calendar& calendar, const Zone& zone, units::Instant t,
                                            std::chrono::seconds work);

// The last closing of a local day, or of t's; nullopt if it has no opening.
std::optional<units::Instant> end_of_open_day(const Calendar& calendar, const Zone& zone, units::Day day);
std::optional<units::Instant> end_of_open_day(const Calendar& calendar, const Zone& zone, units::Instant t);
// The last closing of the first day after t's local day that has an opening; nullopt if none has within 400
// days.
std::optional<units::Instant> end_of_next_open_day(const Calendar& calendar, const Zone& zone,
                                                   units::Instant t);

// The same local time on the n-th day before t's that has an opening (t's own day does not count), moved to
// the first open instant at or after it on that day, or else to that day's last closing. t itself for n = 0;
// nullopt if nothing opens for 400 days on the way. BadHours for n outside 0..1000.
std::optional<units::Instant> subtract_open_days(const Calendar& calendar, const Zone& zone, units::Instant t,
                                                 int n);

} // namespace nutward::hours
