// Contradiction: readings of one line that cannot all be true, whatever is off.
#pragma once

#include "level/claims.hpp"

#include <cstddef>
#include <span>
#include <vector>

namespace nutward::level {

// Whether all of them can be true with every fret and the bow off by up to most_amount.
bool can_all_be(const Lines& lines, Line line, std::span<const Reading> readings);

// A set that cannot, and of which every reading is needed: without any one of them the rest can. Of up to 120
// readings two that cannot both be true are found where there are such. Of up to 24 none is smaller, as long
// as the search for that stays within 60 guesses. Which of several equal ones is fixed by the order of the
// readings. Empty where all can be true.
std::vector<std::size_t> smallest_contradiction(const Lines& lines, Line line,
                                                std::span<const Reading> readings);

} // namespace nutward::level
