// Explain: all smallest sets of deviations with which the claims of one line can hold. For the sources of
// this folder; diagnose.hpp is what others call.
#pragma once

#include "level/feasible.hpp"

#include <optional>
#include <vector>

namespace nutward::level {

using Set = std::vector<Unknown>; // rising, each column once

// Sets of one size that are possible; none smaller is. Empty: none of most_off or fewer. {{}}: nothing is
// off.
//
// From the empty set on, each impossible set grows by what helps it (Feasible::helps()): a possible set has
// one of these beyond any impossible part of it, so that every smallest one is reached, and few others are
// tried.
std::vector<Set> smallest_sets(Feasible& feasible, int most_off);

} // namespace nutward::level
