// What one parameter of a call says of another: days and times that were said together, whose day it is.
#include "talk/understand.hpp"

#include "hours/calendar.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <chrono>

namespace nutward::talk {
namespace {

using units::Day;
using units::Instant;

const Said* said_for(const Match& match, std::string_view name) {
  for (const auto& [index, s] : match.args)
    if (match.phrase->row->takes[static_cast<std::size_t>(index)].name == name) return &s;
  return nullptr;
}

void put(shop::Call& call, std::string_view name, shop::Value value) {
  std::erase_if(call.args, [&](const auto& a) { return a.first == name; });
  call.args.emplace_back(name, std::move(value));
}

void drop(shop::Call& call, std::string_view name) {
  std::erase_if(call.args, [&](const auto& a) { return a.first == name; });
}

// "From 1 december to 3 december": the days, the last of them too.
void days_of_times(const Match& match, shop::Call& call, const Surroundings& at) {
  const shop::Row& row = *match.phrase->row;
  const Said *begins = said_for(match, "begins"), *until = said_for(match, "until");
  if (begins == nullptr || until == nullptr || !begins->whole_day || !until->whole_day) return;
  if (row.find("day") == nullptr || row.find("last") == nullptr || call.find("day") != nullptr) return;
  const auto* from = std::get_if<Instant>(&begins->value);
  const auto* to = std::get_if<Instant>(&until->value);
  if (from == nullptr || to == nullptr) return;
  const Day first = at.names.zone->local(*from).day;
  Day last = at.names.zone->local(*to).day;
  if (until->weekday && last < first) last = last + 7 * ((first - last + 6) / 7);
  drop(call, "begins"), drop(call, "until");
  put(call, "day", first), put(call, "last", last);
}

// The clock of that time, as one that is said alone is read: the next one.
Instant next_clock(Instant t, const Surroundings& at) {
  const hours::LocalTime now = at.names.zone->local(at.now);
  const std::int32_t s = at.names.zone->local(t).s;
  const Instant today = at.names.zone->instant(now.day, s);
  return today > at.now ? today : at.names.zone->instant(now.day + 1, s);
}

// "At half past ten next monday", where the row takes the day by itself: the day, and the time of it.
void day_of_a_time(const Match& match, shop::Call& call, const Surroundings& at) {
  if (call.row != "day-on" && call.row != "close-day" && call.row != "book") return;
  for (const char* name : {"begins", "until"}) {
    const Said* said = said_for(match, name);
    const auto* t = said == nullptr ? nullptr : std::get_if<Instant>(&said->value);
    if (t == nullptr || said->clock_alone || said->whole_day || call.find("day") != nullptr) continue;
    put(call, "day", at.names.zone->local(*t).day);
    put(call, name, next_clock(*t, at));
  }
}

// "Friday from 14:00 to 16:00", "out tomorrow from 11:00 on": a day beside times is their day.
void times_of_a_day(const Match& match, shop::Call& call, const Surroundings& at) {
  if (call.row != "machine-down") return;
  if (call.find("at") != nullptr && call.find("day") == nullptr)
    drop(call, "part"); // since nine this morning
  const auto* day = call.find("day");
  const auto* on = day == nullptr ? nullptr : std::get_if<Day>(day);
  const Said *begins = said_for(match, "begins"), *until = said_for(match, "until");
  if (on == nullptr || call.find("last") != nullptr || (begins == nullptr && until == nullptr)) return;
  const Day that = *on;
  const auto clock = [&](const Said* s) -> std::optional<std::int32_t> {
    const auto* t = s == nullptr || !s->clock_alone ? nullptr : std::get_if<Instant>(&s->value);
    return t == nullptr ? std::nullopt : std::optional{at.names.zone->local(*t).s};
  };
  const auto from = clock(begins), to = clock(until);
  if (from && to && *from < *to) {
    drop(call, "begins"), drop(call, "until");
    put(call, "hours",
        fmt::format("{:02}:{:02}-{:02}:{:02}", *from / 3600, *from / 60 % 60, *to / 3600, *to / 60 % 60));
  } else {
    if (from) put(call, "begins", at.names.zone->instant(that, *from));
    if (to) put(call, "until", at.names.zone->instant(that, *to));
    if ((begins == nullptr || from) && (until == nullptr || to || begins != nullptr)) drop(call, "day");
  }
}

// "Open until half past seven": no shop that closes at six opens until then in the morning.
void until_the_evening(const Match& match, shop::Call& call, const Surroundings& at) {
  if (call.row != "open-extra") return;
  const auto* day = call.find("day");
  const auto* on = day == nullptr ? nullptr : std::get_if<Day>(day);
  if (on == nullptr) return;
  const Day that = *on;
  const auto weekly = hours::spans(at.names.calendar, *at.names.zone, that);
  const Said* until = said_for(match, "until");
  const auto* t = until == nullptr ? nullptr : std::get_if<Instant>(&until->value);
  if (t == nullptr) return;
  std::int32_t s = at.names.zone->local(*t).s;
  constexpr std::int32_t half = 12 * 3600;
  // Behind midnight it closes on the next day.
  const hours::LocalTime closes = at.names.zone->local(weekly.empty() ? at.now : weekly.back().second);
  const std::int32_t closing = weekly.empty() ? 0 : closes.day > that ? closes.s + 24 * 3600 : closes.s;
  if (s > 0 && s < half && s <= closing && s + half > closing) s += half;
  if (s != at.names.zone->local(*t).s)
    put(call, "until", next_clock(at.names.zone->instant(at.names.zone->local(at.now).day, s), at));
}

// "Open on friday 10 to 14" says neither "only" nor "also": on a day with hours it is in place of them, and
// where there are none it is all the same.
void in_place_of_hours(shop::Call& call, const Surroundings& at) {
  const auto* only = call.row == "open-extra" ? call.find("only") : nullptr;
  const auto* open = only == nullptr ? nullptr : std::get_if<bool>(only);
  const auto* day = call.find("day");
  const auto* on = day == nullptr ? nullptr : std::get_if<Day>(day);
  if (open == nullptr || *open || on == nullptr) return;
  const bool has_hours = !hours::spans(at.names.calendar, *at.names.zone, *on).empty();
  drop(call, "only");
  if (has_hours) put(call, "only", true);
}

// "Delayed till thursday", said on a thursday, is the next one.
void not_today(const Match& match, shop::Call& call, const Surroundings& at) {
  const Said* said = call.row == "order-promised" ? said_for(match, "promised") : nullptr;
  const auto* day = said == nullptr || !said->weekday ? nullptr : std::get_if<Day>(&said->value);
  if (day != nullptr && *day == at.names.zone->local(at.now).day) put(call, "promised", *day + 7);
}

// "From monday to wednesday": the first wednesday after that monday, not after today.
void week_after(const Match& match, shop::Call& call) {
  const Said *first = said_for(match, "day"), *last = said_for(match, "last");
  if (first == nullptr || last == nullptr || !last->weekday) return;
  const auto* from = std::get_if<Day>(&first->value);
  for (auto& [name, value] : call.args) {
    auto* day = std::get_if<Day>(&value);
    if (name == "last" && day != nullptr && from != nullptr && *day < *from)
      *day = *day + 7 * ((*from - *day + 6) / 7);
  }
}

} // namespace

void settle(const Match& match, shop::Call& call, const Surroundings& at) {
  week_after(match, call);
  if (!at.names.zone || match.phrase->canonical) return; // which says each by its own name
  days_of_times(match, call, at);
  day_of_a_time(match, call, at);
  times_of_a_day(match, call, at);
  until_the_evening(match, call, at);
  not_today(match, call, at);
  in_place_of_hours(call, at);
}

} // namespace nutward::talk
