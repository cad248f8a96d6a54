#include "hours/zone.hpp"

#include <algorithm>
#include <array>
#include <fmt/core.h>

namespace nutward::hours {

using units::Day;
using units::Instant;

namespace {

constexpr std::int64_t day_s = 86'400;
constexpr std::int64_t most_offset_s = 26 * 3'600;
constexpr std::int64_t year_1 = -62'135'596'800;    // 0001-01-01T00:00:00Z
constexpr std::int64_t year_9999 = 253'402'300'799; // 9999-12-31T23:59:59Z

// Floor division: seconds before 1970 belong to the day they are in, not to the one after.
LocalTime split(std::int64_t local_s) {
  std::int64_t day = local_s / day_s;
  std::int64_t rest = local_s % day_s;
  if (rest < 0) {
    --day;
    rest += day_s;
  }
  return {Day{static_cast<std::int32_t>(day)}, static_cast<std::int32_t>(rest)};
}

std::string date_and_time(LocalTime at) {
  const auto d = at.day.ymd();
  return fmt::format("{:04}-{:02}-{:02}T{:02}:{:02}:{:02}", static_cast<int>(d.year()),
                     static_cast<unsigned>(d.month()), static_cast<unsigned>(d.day()), at.s / 3600,
                     at.s / 60 % 60, at.s % 60);
}

void check_year(Instant t) {
  // A day's room, so that the local date too stays in range.
  if (t.s < year_1 + 2 * day_s || t.s > year_9999 - 2 * day_s)
    throw BadHours(fmt::format("The instant {} s from 1970 lies outside the years 1 to 9999.", t.s),
                   "Check the clock of this machine.");
}

} // namespace

Zone::Zone(std::string name, std::vector<Transition> transitions)
    : name_(std::move(name)), transitions_(std::move(transitions)) {
  if (transitions_.empty())
    throw BadHours(fmt::format("The zone {} has no offset from UTC.", name_),
                   "Give at least one transition.");
  for (std::size_t i = 0; i < transitions_.size(); ++i) {
    if (transitions_[i].offset_s > most_offset_s || transitions_[i].offset_s < -most_offset_s)
      throw BadHours(
          fmt::format("The zone {} is {} s from UTC at one time.", name_, transitions_[i].offset_s),
          "An offset is at most 26 hours.");
    if (i > 0 && transitions_[i].from <= transitions_[i - 1].from)
      throw BadHours(fmt::format("The transitions of the zone {} are not in order.", name_),
                     "Sort them by the instant from which they hold, each once.");
  }
}

std::size_t Zone::index_at(Instant t) const {
  const auto after = std::upper_bound(transitions_.begin(), transitions_.end(), t,
                                      [](Instant v, const Transition& tr) { return v < tr.from; });
  return after == transitions_.begin() ? 0 : static_cast<std::size_t>(after - transitions_.begin()) - 1;
}

const Transition& Zone::at(Instant t) const {
  return transitions_[index_at(t)];
}

LocalTime Zone::local(Instant t) const {
  check_year(t);
  return split(t.s + at(t).offset_s);
}

Instant Zone::instant(Day day, std::int32_t seconds_of_day) const {
  if (seconds_of_day < 0 || seconds_of_day > day_s)
    throw BadHours(fmt::format("{} is not a second of a day.", seconds_of_day),
                   "Say 0 (00:00) to 86400 (24:00).");
  const std::int64_t wanted = day.days * day_s + seconds_of_day;
  // A stretch that ends before this one shows only earlier times, whatever its offset.
  std::size_t i = index_at({wanted - most_offset_s});
  for (;; ++i) {
    const std::int64_t shown = wanted - transitions_[i].offset_s;
    const std::int64_t t = i == 0 ? shown : std::max(shown, transitions_[i].from.s);
    if (i + 1 == transitions_.size() || t < transitions_[i + 1].from.s) return {t};
  }
}

std::string Zone::rfc3339(Instant t) const {
  const auto offset = at(t).offset_s;
  check_year(t);
  if (offset % 60 != 0) return date_and_time(split(t.s)) + "Z";
  const auto size = offset < 0 ? -offset : offset;
  return fmt::format("{}{}{:02}:{:02}", date_and_time(local(t)), offset < 0 ? '-' : '+', size / 3600,
                     size / 60 % 60);
}

bool Zone::shown_twice(Instant t) const {
  const std::size_t i = index_at(t);
  const auto back_by = [&](std::size_t n) { // how far the clock was put back at transition n
    return transitions_[n - 1].offset_s - transitions_[n].offset_s;
  };
  const bool second = i > 0 && t.s - transitions_[i].from.s < back_by(i);
  const bool first = i + 1 < transitions_.size() && transitions_[i + 1].from.s - t.s <= back_by(i + 1);
  return first || second;
}

std::string Zone::human(Instant t) const {
  const auto l = local(t);
  const auto text = fmt::format("{}, {}", hours::human(l.day), human_time(l.s));
  return shown_twice(t) ? text + " " + at(t).abbreviation : text;
}

std::string human(Day day) {
  static constexpr std::array days = {"Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"};
  static constexpr std::array months = {"Jan", "Feb", "Mar", "Apr", "May", "Jun",
                                        "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"};
  const auto d = day.ymd();
  return fmt::format("{} {} {} {}", days.at(static_cast<std::size_t>(day.weekday())),
                     static_cast<unsigned>(d.day()), months.at(static_cast<unsigned>(d.month()) - 1),
                     static_cast<int>(d.year()));
}

std::string human_time(std::int32_t seconds_of_day) {
  return fmt::format("{:02}:{:02}", seconds_of_day / 3600, seconds_of_day / 60 % 60);
}

} // namespace nutward::hours
