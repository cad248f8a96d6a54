// Contradiction: readings of one line that cannot all be true, whatever is off.
#pragma once

#include "level/claims.hpp"

#include <cstddef>
#include <span>
#include <vector>

namespace nutward::level {

// Whether all of them can be true with every fret and the bow off by up to most_amount.
bool can_all_be(const Lines& lines, Line line, std::span<const Reading> readings);

// A smallest set that cannot: none is smaller; which of several equal ones is fixed by the order of the
// readings. Empty where all can be true.
std::vector<std::size_t> smallest_contradiction(const Lines& lines, Line line,
                                                std::span<const Reading> readings);

} // namespace nutward::level
