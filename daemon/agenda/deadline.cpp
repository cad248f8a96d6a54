#include "agenda/deadline.hpp"

#include <algorithm>

namespace nutward::agenda {

using std::chrono::seconds;
using units::Instant;

namespace {

// Where a stage that may not pause overnight must begin to be over by `end`; nullopt if no day of the year
// before has the room.
std::optional<Instant> begin_without_night(Instant end, seconds work, const hours::Calendar& calendar,
                                           const hours::Zone& zone) {
  const auto earliest = end - std::chrono::hours{24 * hours::horizon_days};
  while (true) {
    const auto begin = subtract_open(calendar, zone, end, work);
    if (!begin || *begin < earliest) return std::nullopt;
    const auto openings = openings_between(calendar, zone, *begin, end);
    std::optional<Instant> before_night;
    for (std::size_t i = 1; i < openings.size(); ++i)
      if (openings[i].first - openings[i - 1].second > night) before_night = openings[i - 1].second;
    if (!before_night) return begin;
    end = *before_night;
  }
}

} // namespace

std::optional<Instant> due_instant(units::Day day, const hours::Calendar& calendar, const hours::Zone& zone) {
  for (int n = 0; n <= hours::horizon_days; ++n)
    if (const auto end = end_of_open_day(calendar, zone, day - n)) return end;
  return std::nullopt;
}

std::optional<Instant> latest_press(Instant due, std::span<const Stage> stages,
                                    const hours::Calendar& calendar, const hours::Zone& zone) {
  const auto is_press = [](const Stage& s) { return s.kind == StageKind::press; };
  const auto last = std::find_if(stages.rbegin(), stages.rend(), is_press);
  if (last == stages.rend()) return std::nullopt;

  auto begin = due;     // of the stage looked at, and so the end of the one before
  auto press_end = due; // what every stage so far leaves, its lag taken off
  for (auto stage = stages.rbegin(); stage != last; ++stage) {
    const auto earlier = subtract_open(calendar, zone, begin, stage->work);
    if (!earlier) return std::nullopt;
    begin = *earlier;
    press_end = std::min(press_end, begin - stage->lag);
  }
  return begin_without_night(press_end, last->work, calendar, zone);
}

Instant press_due_reminder(Instant latest_press, const hours::Calendar& calendar, const hours::Zone& zone) {
  return subtract_open_days(calendar, zone, latest_press, 1).value_or(latest_press - std::chrono::hours{24});
}

} // namespace nutward::agenda
