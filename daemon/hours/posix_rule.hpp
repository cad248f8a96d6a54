// The rule by which a zone goes on after its last listed change of clock, as POSIX.1 (environment variable
// TZ) and RFC 9636 §3.3.1 (the last line of a TZif file) write it: "EST5EDT,M3.2.0,M11.1.0",
// "<-02>2<-01>,M3.5.0/-1,M10.5.0/0". Here and not from the date library, whose reader of such rules refuses
// the negative times that Greenland uses.
#pragma once

#include "hours/zone.hpp"

#include <string_view>
#include <vector>

namespace nutward::hours {

// Every change of clock of the years first..last (by the local date), in order; of two at one instant the
// later one in the list holds. Empty for a rule without a summer time. BadHours for a text that is not such a
// rule; the RFC's times from -167 to 167 h are taken.
std::vector<Transition> changes_by_rule(std::string_view rule, int first, int last);

} // namespace nutward::hours
