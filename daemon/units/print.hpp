// Printing quantities. Nothing is rounded silently: a length prints to 0.01 mm or 0.001 in, and where that is
// not the value itself the exact functions serve.
#pragma once

#include "units/read.hpp"

#include <optional>
#include <string>
#include <string_view>

namespace nutward::units {

std::string print(Length v, LengthUnit unit = LengthUnit::mm);       // "52.40 mm", "2.063 in", "1.25 m"
std::string print_plain(Length v, LengthUnit unit = LengthUnit::mm); // "52.4": trailing zeros gone, no unit
std::string
print_fraction(Length v); // "2 1/16 in", nearest 1/64; "2 1/16 in (+0.03 mm)" where it is 0.03 mm more
std::string print_exact_mm(Length v); // "52.396875": every digit of the nanometre, as read_length takes it
std::string print(Force v, ForceUnit unit,
                  double division); // to the gauge's division (in `unit`): "1780 N", "400 lb"
// All of it: in `unit` where three digits behind the point will do ("1825 lb"), else in the unit that takes
// the fewest characters ("8 kN" where 1798.471… lb would not end); nullopt where none will.
std::optional<std::string> print_exact(Force v, ForceUnit unit);
double newtons_in(ForceUnit unit);                      // exact by definition of the units
std::string_view name_of(ForceUnit unit);               // "N", "kN", "lb", "kgf"
std::string print(Mass v, MassUnit unit = MassUnit::g); // "310 g", "0.310 kg"
std::string print(Money v, std::string_view currency);  // "12.50 EUR"
std::string print_utc(Instant v);                       // RFC 3339, "2026-12-12T08:30:00Z"
std::string print(Day v);                               // "2026-12-12"

// Text for a terminal, a log or a page: C0, C1, DEL, bidirectional and zero-width characters and bytes that
// are not UTF-8 come out as \x1b or \u202e; everything else is left alone. Never fails; at most 6 bytes out
// for one in.
std::string escape_for_print(std::string_view text);

} // namespace nutward::units
