// A span of time that a question is about, in the shop's zone: a month, a year, or days.
#pragma once

#include "shop/bind.hpp"

#include <limits>
#include <string>
#include <string_view>
#include <vector>

namespace nutward::shop {

inline constexpr Instant beginning{std::numeric_limits<std::int64_t>::min()};
inline constexpr Instant no_end{std::numeric_limits<std::int64_t>::max()};

struct Period {
  Instant from = beginning, before = no_end; // from `from` on, before `before`
  std::string words;                         // "in November 2026"
};

// The options of a parameter `month`: the months by name, this_month, last_month, this_year, last_year,
// all_time.
std::vector<std::string_view> period_words();
std::vector<std::string_view> month_words(); // the months alone, January first

// From a row's parameters `month` and `year` (of a month by its name; without it the last one of that name
// that has begun), or `first` and `until` (days, both included; either may be left out). `otherwise`: the
// option where none of them is given. Throws Problem{value} where two periods are named at once.
Period period_of(const Args& args, std::string_view first, std::string_view otherwise, const Moment& moment);
// From the first of the last month of that name that has begun, without an end.
Period since_month(std::string_view name, const Moment& moment);

// The calendar months of the shop's zone that make up a period, each cut to it, "2026-11" in `words`. One
// that has no beginning or no end is cut to the instants given: what happened lies between them.
std::vector<Period> months_of(const Period& period, Instant earliest, Instant latest, const Moment& moment);

} // namespace nutward::shop
