// How long a stage takes, learnt from how long it took.
#pragma once

#include "agenda/stages.hpp"

#include <chrono>
#include <cstddef>
#include <optional>
#include <span>

namespace nutward::agenda {

inline constexpr std::size_t most_reports = 9;  // the last ones; older ones tell of other hands and tools
inline constexpr std::size_t least_reports = 3; // fewer could be one bad day

struct Report {
  std::chrono::seconds work{0}; // open time, > 0
  int frets = 22;               // that the job set, 1..200
};

// What one report says of 22 frets: as it is for a stage of the board, otherwise in proportion.
std::chrono::seconds for_22(StageKind stage, const Report& report);

// The median of the reports in whole minutes, of two in the middle their mean, half minutes upward, at least
// 1; nullopt for fewer than least_reports. BadAgenda for a report out of range.
std::optional<std::int32_t> learnt_minutes(StageKind stage, std::span<const Report> reports);

} // namespace nutward::agenda
