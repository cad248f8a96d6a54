// A sharper bound on new wire, by column generation: what single pieces cannot serve is cut from long
// pieces, which cost nothing, and from sticks.
#pragma once

#include "cutting/draft.hpp"
#include "cutting/tin_bound.hpp"

namespace nutward::cutting {

// Sizes are rounded down to a tenth of a millimetre or so, rooms up, so that the bound holds; it is proved
// from the prices in whole numbers. Nothing (zeros) where there is a coil or a blank. `taken` is of as many
// sticks as are bound to be opened: by this bound, or by the argument.
WireBound least_for_rest(const Problem& problem, const Rest& rest, const std::vector<int>& stock,
                         std::int64_t sticks, Meter& meter);

} // namespace nutward::cutting
