// Deadlines, walked backward from the promised instant: by when a job must be in the press.
//
// The other stages pause when the shop closes and go on when it opens; nothing pauses overnight in mid-press.
// A break of up to night_h hours within a day is no night. Machines are taken as free: the agenda proper
// looks at that.
#pragma once

#include "agenda/stages.hpp"
#include "hours/calendar.hpp"

namespace nutward::agenda {

inline constexpr std::chrono::hours night{
    4}; // a closed time longer than this is a night, a shorter one a break

// The instant that "due on that day" means: the day's last closing, or where the shop is closed that day the
// last closing before it; nullopt if there is none in the 400 days before.
std::optional<units::Instant> due_instant(units::Day day, const hours::Calendar& calendar,
                                          const hours::Zone& zone);

// The latest instant at which the press stage may begin so that every stage after it is over by `due`: their
// work in open time, each lag in elapsed time since the press stage ended. It may lie in the past: then it is
// too late. With several press stages the last counts. nullopt where no stage is a press, or where the open
// hours of the year before `due` leave no room (a press stage longer than any day of the shop).
std::optional<units::Instant> latest_press(units::Instant due, std::span<const Stage> stages,
                                           const hours::Calendar& calendar, const hours::Zone& zone);

// When to say so: one open day before, at the same local time, moved into that day's hours. Where the shop
// has none in the 400 days before: a day of 24 h before.
units::Instant press_due_reminder(units::Instant latest_press, const hours::Calendar& calendar,
                                  const hours::Zone& zone);

} // namespace nutward::agenda
