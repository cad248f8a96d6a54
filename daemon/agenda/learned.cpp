#include "agenda/learned.hpp"

#include <algorithm>
#include <fmt/core.h>

namespace nutward::agenda {

std::chrono::seconds for_22(StageKind stage, const Report& report) {
  if (report.work.count() <= 0 || report.frets < 1 || report.frets > 200)
    throw BadAgenda(
        fmt::format("A report of {} s for {} frets is out of range.", report.work.count(), report.frets),
        "Give over 0 s and 1 to 200 frets.");
  if (!row(stage).per_fret) return report.work;
  return std::chrono::seconds{(report.work.count() * 22 + report.frets / 2) / report.frets};
}

std::optional<std::int32_t> learnt_minutes(StageKind stage, std::span<const Report> reports) {
  if (reports.size() < least_reports) return std::nullopt;
  std::vector<std::int64_t> all;
  all.reserve(reports.size());
  for (const Report& r : reports)
    all.push_back(for_22(stage, r).count());
  std::sort(all.begin(), all.end());
  const std::size_t half = all.size() / 2;
  const std::int64_t twice = all[half] + all[all.size() % 2 == 1 ? half : half - 1];
  return static_cast<std::int32_t>(std::max<std::int64_t>(1, (twice + 60) / 120));
}

} // namespace nutward::agenda
