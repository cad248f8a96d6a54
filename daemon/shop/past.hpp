// A line of the journal as a sentence.
#pragma once

#include "hours/zone.hpp"
#include "shop/store.hpp"

#include <string>

namespace nutward::shop {

struct Told {
  std::string when; // "Tue 24 Nov 2026, 11:09 (told Wed 25 Nov 2026, 12:09)": the second where it differs
  std::string who;  // "Ines"
  // `said "pressed job 5": Job 5 … Taken back by Mara, Wed 25 Nov 2026, 10:00.`; `called "…"` with the
  // canonical sentence where it came as a call; quotation marks in either become single ones
  std::string what;
  std::string call;                     // the call's canonical sentence: "pressed job 5, slots 1 and 2"
  std::optional<Instant> taken_back;    // when it was taken back, where it was
  std::optional<std::int64_t> taken_by; // and the actor who did
  std::string taken_by_name;

  std::string sentence() const { return when + ", " + who + " " + what; }
};

Told told(const Past& past, const View& view, const hours::Zone& zone);

} // namespace nutward::shop
