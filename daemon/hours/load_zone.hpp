// Makes a Zone from the system's tz database. The only file of the bench that does I/O and the only one that
// includes the tz part of the date library; everything else of hours takes the value it returns.
#pragma once

#include "hours/zone.hpp"

#include <memory>
#include <string_view>

namespace nutward::hours {

// The zone of an IANA name ("Europe/Berlin"), with every change of clock from 1970 to 2100: as listed in the
// database, after that by the rule it ends with. Takes milliseconds and reads files: the caller keeps the
// result. A newer database is seen by the next start of the program. Thread-safe.
//
// BadHours for a name that no zone can have (empty, over 64 characters, dots, …: it never reaches the file
// system), for one that says what this machine has instead of where the shop is (localtime, posixrules,
// Factory), for one that the database does not know, and where there is no database. The environment's TZ is
// never looked at.
std::shared_ptr<const Zone> load_zone(std::string_view iana);

} // namespace nutward::hours
