// The shop's hours as stored, and as the bench's calendar.
#include "shop/apply.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cctype>

namespace nutward::shop {

namespace {

[[noreturn]] void refuse(std::string what) {
  throw Problem(Fault::value, std::move(what), "hours",
                "Give hours such as 9:00-12:30, 13:30-18:00, or 'closed'.");
}

// "9", "9:00", "24:00", "9am" at `at`; moves `at` past it.
std::int32_t read_clock(std::string_view text, std::size_t& at) {
  auto digits = [&](std::size_t most) {
    int v = -1;
    for (std::size_t n = 0;
         n < most && at < text.size() && std::isdigit(static_cast<unsigned char>(text[at])) != 0; ++n, ++at) {
      v = std::max(v, 0) * 10 + (text[at] - '0');
    }
    return v;
  };
  int hour = digits(2);
  int minute = 0;
  if (at < text.size() && text[at] == ':') minute = digits((++at, 2));
  if (text.substr(at).starts_with("am") || text.substr(at).starts_with("pm")) {
    if (hour < 1 || hour > 12) refuse(fmt::format("'{}' is no time of day.", text.substr(0, 60)));
    hour = hour % 12 + (text[at] == 'p' ? 12 : 0);
    at += 2;
  }
  if (hour < 0 || minute < 0 || minute > 59 || hour * 60 + minute > 24 * 60) {
    refuse(fmt::format("'{}' is no time of day.", text.substr(0, 60)));
  }
  return (hour * 60 + minute) * 60;
}

} // namespace

std::vector<hours::Span> read_spans(std::string_view text) {
  std::vector<hours::Span> out;
  if (text == "closed") return out;
  std::size_t at = 0;
  auto skip = [&](std::string_view what) {
    while (at < text.size() && what.find(text[at]) != std::string_view::npos)
      ++at;
  };
  for (skip(" ,"); at < text.size(); skip(" ,")) {
    hours::Span span;
    span.open_s = read_clock(text, at);
    skip(" ");
    if (text.substr(at).starts_with("to "))
      at += 2;
    else if (at < text.size() && text[at] == '-')
      ++at;
    else
      refuse(fmt::format("'{}' says no closing.", text.substr(0, 60)));
    skip(" ");
    span.close_s = read_clock(text, at);
    out.push_back(span);
  }
  hours::Calendar trial;
  trial.weekly[0] = out;
  try {
    hours::check(trial);
  } catch (const hours::BadHours& bad) {
    throw Problem(Fault::value, bad.what(), "hours", bad.would_do);
  }
  return hours::merged(std::move(out));
}

std::string write_spans(const std::vector<hours::Span>& spans) {
  std::string out;
  for (const hours::Span& s : spans) {
    out += fmt::format("{}{:02}:{:02}-{:02}:{:02}", out.empty() ? "" : " ", s.open_s / 3600,
                       s.open_s / 60 % 60, s.close_s / 3600, s.close_s / 60 % 60);
  }
  return out;
}

hours::Calendar calendar_of(const House& house) {
  hours::Calendar out;
  for (const Weekday& day : house.week())
    out.weekly.at(static_cast<std::size_t>(day.id - 1)) = read_spans(day.spans);
  for (const SpecialDay& day : house.special_days()) {
    if (day.closed) out.closures.insert(day.day);
    if (!day.extra.empty()) out.extra[day.day] = read_spans(day.extra);
  }
  return out;
}

} // namespace nutward::shop
