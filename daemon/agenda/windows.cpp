#include "agenda/windows.hpp"

#include <algorithm>

namespace nutward::agenda {

std::vector<Window> windows(const hours::Calendar& calendar, const hours::Zone& zone, Instant from,
                            Instant to) {
  std::vector<Window> out;
  for (const auto& [open, close] : hours::openings_between(calendar, zone, from, to))
    out.push_back({open, close});
  return out;
}

std::vector<Window> without(std::span<const Window> open, std::span<const Window> closed) {
  std::vector<Window> sorted(closed.begin(), closed.end());
  std::erase_if(sorted, [](const Window& w) { return w.to <= w.from; });
  std::sort(sorted.begin(), sorted.end());
  std::vector<Window> out;
  std::size_t first = 0; // the first that can still take something away
  for (Window rest : open) {
    while (first < sorted.size() && sorted[first].to <= rest.from)
      ++first;
    for (std::size_t i = first; i < sorted.size() && sorted[i].from < rest.to && rest.from < rest.to; ++i) {
      if (sorted[i].to <= rest.from) continue;
      if (rest.from < sorted[i].from) out.push_back({rest.from, sorted[i].from});
      rest.from = std::max(rest.from, sorted[i].to);
    }
    if (rest.from < rest.to) out.push_back(rest);
  }
  return out;
}

std::vector<Window> both(std::span<const Window> a, std::span<const Window> b) {
  std::vector<Window> out;
  for (std::size_t i = 0, k = 0; i < a.size() && k < b.size();) {
    const Window w{std::max(a[i].from, b[k].from), std::min(a[i].to, b[k].to)};
    if (w.from < w.to) out.push_back(w);
    if (a[i].to < b[k].to)
      ++i;
    else
      ++k;
  }
  return out;
}

std::chrono::seconds length(std::span<const Window> windows) {
  std::chrono::seconds sum{0};
  for (const Window& w : windows)
    sum += w.to - w.from;
  return sum;
}

std::vector<DayLimit> day_limits(const hours::Calendar& calendar, const hours::Zone& zone, Instant from,
                                 Instant to) {
  std::vector<DayLimit> out;
  const units::Day first = zone.local(from).day - 1, last = zone.local(to).day;
  if (last < first) return out;
  out.reserve(static_cast<std::size_t>(last - first) + 1);
  for (units::Day day = first; day <= last; day = day + 1) {
    const Instant midnight = zone.instant(day, 0);
    const auto limit = hours::end_of_next_open_day(calendar, zone, midnight);
    out.push_back({midnight, limit.value_or(zone.instant(day + 1, 86'400))});
  }
  return out;
}

} // namespace nutward::agenda
