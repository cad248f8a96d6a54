// The days that a question or a command is about: one, a part of one, several in a row, or a week.
#pragma once

#include "shop/bookings.hpp"
#include "shop/rows.hpp"

#include <optional>
#include <string>
#include <string_view>

namespace nutward::shop {

namespace takes {
inline const Param part_of_day{"part",
                               Kind::one_of,
                               false,
                               false,
                               "only of that day; today's where no day is said",
                               {},
                               {"morning", "afternoon", "evening"}};
inline const Param last_day{"last", Kind::day, false, false, "the last of several; the same where not said"};
inline const Param week{
    "week", Kind::one_of,    false, false, "what is left of this one, or monday to sunday of the next",
    {},     {"this", "next"}};
} // namespace takes

struct DaysAsked {
  Day first;
  int count = 1;
  std::string part;  // of the one day; "" all of it
  bool said = false; // false: nothing was said, and it is what is usual
  std::string week;  // "this", "next", where a week was said
};

// From the row's `day`, `last`, `part`, `week`, `days`, as far as it takes them; `usual` days from today on
// where none is given. Throws Problem{value} for days that end before they begin, over `most`, and two ways
// of saying it at once.
DaysAsked days_asked(const Args& args, const Moment& moment, int usual, int most = 62);

// Of a day: up to its break about noon or to 12:00; from there to its closing, or to 18:00 where it is open
// late; from 17:00 on (18:00 where that is the afternoon).
Stretch part_of(Day day, std::string_view part, const hours::Calendar& calendar, const hours::Zone& zone);
Stretch stretch_of(const DaysAsked& days, const Moment& moment);

// "today", "this afternoon", "Fri 27 Nov in the morning", "the next 7 days", "next week", "Mon 30 Nov to Wed
// 2 Dec"; `preposition`: "on Fri 27 Nov", "in the next 7 days".
std::string words_of(const DaysAsked& days, const Moment& moment, bool preposition = false);

} // namespace nutward::shop
