#include "hours/calendar.hpp"

#include <algorithm>
#include <fmt/core.h>

namespace nutward::hours {

using std::chrono::seconds;
using units::Day;
using units::Instant;

namespace {

constexpr std::int32_t day_s = 86'400;
constexpr std::size_t most_spans = 48;

std::string said(const Span& s) {
  return fmt::format("{} to {}", human_time(s.open_s), human_time(s.close_s));
}

void check_spans(std::vector<Span> list, const std::string& where) {
  if (list.size() > most_spans)
    throw BadHours(fmt::format("{} has {} spans of open hours.", where, list.size()),
                   fmt::format("Say at most {}.", most_spans));
  for (const auto& s : list) {
    if (s.open_s < 0 || s.open_s > day_s || s.close_s < 0 || s.close_s > day_s)
      throw BadHours(fmt::format("{}: {} to {} seconds leaves the day.", where, s.open_s, s.close_s),
                     "Say times from 00:00 to 24:00; past midnight is a second span, on the next day.");
    if (s.close_s <= s.open_s)
      throw BadHours(fmt::format("{}: {} closes before or when it opens.", where, said(s)),
                     "Say the opening first; past midnight is a second span, on the next day.");
  }
  std::sort(list.begin(), list.end());
  for (std::size_t i = 1; i < list.size(); ++i)
    if (list[i].open_s < list[i - 1].close_s)
      throw BadHours(fmt::format("{}: {} and {} overlap.", where, said(list[i - 1]), said(list[i])),
                     "Say them as one span, or move one.");
}

std::vector<Span> hours_of(const Calendar& calendar, Day day) {
  std::vector<Span> out;
  if (!calendar.closures.contains(day)) out = calendar.weekly.at(static_cast<std::size_t>(day.weekday()));
  if (const auto extra = calendar.extra.find(day); extra != calendar.extra.end())
    out.insert(out.end(), extra->second.begin(), extra->second.end());
  return merged(std::move(out));
}

void check_work(seconds work) {
  if (work < seconds{0} || work > std::chrono::hours{24 * 3'660})
    throw BadHours(fmt::format("{} s is not an amount of work.", work.count()), "Say 0 s to 10 years of it.");
}

// No instant belongs to the hours of a day before the one its clock shows. To those of the day after, it may:
// where the clock is put back over midnight it shows yesterday again while today's hours have begun.
Day first_day(const Zone& zone, Instant t) {
  return zone.local(t).day;
}
Day last_day(const Zone& zone, Instant t) {
  return zone.local(t).day + 1;
}

} // namespace

void check(const Calendar& calendar) {
  static constexpr std::array days = {"Monday", "Tuesday",  "Wednesday", "Thursday",
                                      "Friday", "Saturday", "Sunday"};
  for (std::size_t i = 0; i < days.size(); ++i)
    check_spans(calendar.weekly.at(i), days.at(i));
  for (const auto& [day, list] : calendar.extra)
    check_spans(list, human(day));
}

std::vector<Span> merged(std::vector<Span> spans) {
  std::sort(spans.begin(), spans.end());
  std::vector<Span> out;
  for (const auto& s : spans) {
    if (!out.empty() && s.open_s <= out.back().close_s)
      out.back().close_s = std::max(out.back().close_s, s.close_s);
    else
      out.push_back(s);
  }
  return out;
}

Calendar normalised(Calendar calendar) {
  for (auto& list : calendar.weekly)
    list = merged(std::move(list));
  for (auto& [day, list] : calendar.extra)
    list = merged(std::move(list));
  std::erase_if(calendar.extra, [](const auto& entry) { return entry.second.empty(); });
  return calendar;
}

std::vector<Opening> spans(const Calendar& calendar, const Zone& zone, Day day) {
  std::vector<Opening> out;
  for (const auto& s : hours_of(calendar, day)) {
    const auto from = zone.instant(day, s.open_s);
    const auto to = zone.instant(day, s.close_s);
    if (from >= to) continue; // wholly in a gap of the clock
    if (!out.empty() && out.back().second == from)
      out.back().second = to; // the break between them was in the gap
    else
      out.emplace_back(from, to);
  }
  return out;
}

std::vector<Opening> openings_between(const Calendar& calendar, const Zone& zone, Instant from, Instant to) {
  std::vector<Opening> out;
  if (to <= from) return out;
  if (zone.local(to).day - zone.local(from).day > 73'050)
    throw BadHours("Open hours were asked for more than 200 years.", "Ask for a shorter time.");
  for (Day day = first_day(zone, from), end = last_day(zone, to); day <= end; day = day + 1) {
    for (const auto& [open, close] : spans(calendar, zone, day)) {
      const auto a = std::max(open, from);
      const auto b = std::min(close, to);
      if (a >= b) continue;
      if (!out.empty() && out.back().second == a)
        out.back().second = b;
      else
        out.emplace_back(a, b);
    }
  }
  return out;
}

seconds open_between(const Calendar& calendar, const Zone& zone, Instant from, Instant to) {
  seconds sum{0};
  for (const auto& [open, close] : openings_between(calendar, zone, from, to))
    sum += close - open;
  return sum;
}

bool is_open(const Calendar& calendar, const Zone& zone, Instant t) {
  for (Day day = first_day(zone, t), end = last_day(zone, t); day <= end; day = day + 1)
    for (const auto& [open, close] : spans(calendar, zone, day))
      if (open <= t && t < close) return true;
  return false;
}

std::optional<Instant> next_open(const Calendar& calendar, const Zone& zone, Instant t) {
  Day day = first_day(zone, t);
  const auto limit = t + std::chrono::hours{24 * horizon_days};
  for (const Day end = last_day(zone, limit); day <= end; day = day + 1)
    for (const auto& [open, close] : spans(calendar, zone, day))
      if (close > t) return open > limit ? std::nullopt : std::optional(std::max(open, t));
  return std::nullopt;
}

std::optional<Instant> add_open(const Calendar& calendar, const Zone& zone, Instant t, seconds work) {
  check_work(work);
  if (work == seconds{0}) return t;
  auto seen = t; // up to here everything is counted
  for (Day day = first_day(zone, t); day <= last_day(zone, seen) + horizon_days; day = day + 1) {
    for (const auto& [open, close] : spans(calendar, zone, day)) {
      if (close <= t) continue;
      const auto from = std::max(open, t);
      if (work <= close - from) return from + work;
      work -= close - from;
      seen = close;
    }
  }
  return std::nullopt;
}

std::optional<Instant> subtract_open(const Calendar& calendar, const Zone& zone, Instant t, seconds work) {
  check_work(work);
  if (work == seconds{0}) return t;
  auto seen = t; // back to here everything is counted
  for (Day day = last_day(zone, t); day >= first_day(zone, seen) - horizon_days; day = day - 1) {
    const auto list = spans(calendar, zone, day);
    for (auto it = list.rbegin(); it != list.rend(); ++it) {
      if (it->first >= t) continue;
      const auto to = std::min(it->second, t);
      if (work <= to - it->first) return to - work;
      work -= to - it->first;
      seen = it->first;
    }
  }
  return std::nullopt;
}

std::optional<Instant> end_of_open_day(const Calendar& calendar, const Zone& zone, Day day) {
  const auto list = spans(calendar, zone, day);
  return list.empty() ? std::nullopt : std::optional(list.back().second);
}

std::optional<Instant> end_of_open_day(const Calendar& calendar, const Zone& zone, Instant t) {
  return end_of_open_day(calendar, zone, zone.local(t).day);
}

std::optional<Instant> end_of_next_open_day(const Calendar& calendar, const Zone& zone, Instant t) {
  const auto today = zone.local(t).day;
  for (int n = 1; n <= horizon_days; ++n)
    if (const auto end = end_of_open_day(calendar, zone, today + n)) return end;
  return std::nullopt;
}

std::optional<Instant> subtract_open_days(const Calendar& calendar, const Zone& zone, Instant t, int n) {
  if (n < 0 || n > 1000)
    throw BadHours(fmt::format("{} is not a number of open days to go back.", n), "Say 0 to 1000.");
  if (n == 0) return t;
  const auto at = zone.local(t);
  Day day = at.day;
  for (int closed = 0; n > 0; ++closed) {
    if (closed >= horizon_days) return std::nullopt;
    day = day - 1;
    if (!spans(calendar, zone, day).empty()) {
      --n;
      closed = -1;
    }
  }
  const auto wanted = zone.instant(day, at.s);
  const auto list = spans(calendar, zone, day);
  for (const auto& [open, close] : list)
    if (close > wanted) return std::max(open, wanted);
  return list.back().second;
}

} // namespace nutward::hours
