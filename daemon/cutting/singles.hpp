// Which lengths of a piece make one fret for a slot, as intervals: what matching and its bound go by.
#pragma once

#include "cutting/serve.hpp"

#include <span>
#include <vector>

namespace nutward::cutting {

// Whether anything is dressed at all: for filed ends alone raw ends do not matter.
bool any_rounded(const Problem& problem, std::span<const std::size_t> slots);

// What counts of a piece: its length without flat ends, less the dressing of its raw ends where there is any.
Length worth(const Problem& problem, std::size_t piece, bool dressed);

// The worth that a single piece with so many raw ends must have for a slot. Nothing that judge takes lies
// outside, and only crowns and tangs keep it from taking what lies inside.
struct Interval {
  Length from, to; // inclusive
};
Interval interval(const Problem& problem, std::size_t slot, int raw_ends, bool dressed);

// Longest first.
std::vector<std::size_t> by_size(const Problem& problem, std::span<const std::size_t> slots);

} // namespace nutward::cutting
