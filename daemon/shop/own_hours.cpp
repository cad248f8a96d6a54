#include "shop/own_hours.hpp"

#include "shop/apply.hpp"

#include <fmt/format.h>

#include <array>

namespace nutward::shop {

std::map<std::int64_t, hours::Calendar> own_calendars(const View& view, Day from) {
  std::map<std::int64_t, hours::Calendar> out;
  for (const OwnHours& own : view.machines().own_hours())
    out[own.actor].weekly.at(static_cast<std::size_t>(own.weekday - 1)) = read_spans(own.spans);
  const hours::Calendar shop = calendar_of(view.house());
  for (const OwnDay& own : view.machines().own_days(from)) {
    hours::Calendar& c = out.try_emplace(own.actor, shop).first->second;
    c.closures.insert(own.day);
    c.extra.erase(own.day);
    if (!own.spans.empty()) c.extra[own.day] = read_spans(own.spans);
  }
  return out;
}

std::string week_words(const hours::Calendar& c) {
  static constexpr std::array names{"Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"};
  std::string out;
  for (std::size_t d = 0; d < 7;) {
    std::size_t last = d;
    while (last + 1 < 7 && c.weekly.at(last + 1) == c.weekly.at(d))
      ++last;
    if (!c.weekly.at(d).empty()) {
      out += fmt::format("{}{}{} {}", out.empty() ? "" : ", ", names.at(d),
                         last > d ? fmt::format("-{}", names.at(last)) : "", write_spans(c.weekly.at(d)));
    }
    d = last + 1;
  }
  return out;
}

} // namespace nutward::shop
