// When each person works: their own hours where they have some, within the shop's.
#pragma once

#include "hours/calendar.hpp"
#include "shop/store.hpp"

#include <map>
#include <string>

namespace nutward::shop {

// The hours of everybody who has some of their own, by person. A day off is a closure, other hours on a day a
// closure with these besides. Days before `from` are left out. Who is not there works whenever the shop is
// open.
std::map<std::int64_t, hours::Calendar> own_calendars(const View& view, Day from);

// "Mon 09:00-13:00, Tue 09:00-13:00"; weekdays with the same hours in a row as one: "Mon-Thu 09:00-13:00".
std::string week_words(const hours::Calendar& calendar);

} // namespace nutward::shop
