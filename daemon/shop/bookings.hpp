// Who has which machine when, and what does not go together.
#pragma once

#include "hours/calendar.hpp"
#include "shop/machines.hpp"

#include <optional>
#include <string>
#include <vector>

namespace nutward::shop {

// "Ines has the press on Thu 26 Nov 2026, 14:00 to 15:00, for job 3 (booking 7)".
std::string words_of(const Booking& booking, const View& view, const hours::Zone& zone);
std::string words_of(const std::vector<Booking>& bookings, const View& view,
                     const hours::Zone& zone); // at most 5

// The bookings of the machine between two instants at times at which more of it are booked than are in
// service.
std::vector<Booking> bookings_without_a_machine(const Machine& machine, Instant from, Instant to,
                                                const View& view);
// Throws Problem{state} at "machine" where one more booking would be more than there are in service, and says
// who has it, or until when it is out of service.
void check_room(const Booking& wish, const Machine& machine, const View& view, const hours::Zone& zone);

// A stretch of hours on a day as instants. Hours said without a half of the day ("2-3") are of the afternoon
// where the shop is closed in the morning then and open at some time twelve hours later. Throws
// Problem{value} at "hours".
struct Stretch {
  Instant from, to;
};
Stretch stretch_of(Day day, std::string_view hours, const hours::Calendar& calendar, const hours::Zone& zone);

// "12:30 to 13:30 is closed time", of what the shop is closed for between two instants; "" where it is open
// throughout.
std::string closed_words(Instant from, Instant to, const hours::Calendar& calendar, const hours::Zone& zone);

} // namespace nutward::shop
