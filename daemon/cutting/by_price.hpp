// A draft from the tin and new wire together, guided by the relaxation.
#pragma once

#include "cutting/relax.hpp"

namespace nutward::cutting {

// Cuts long pieces as the relaxation has them, some at a time, and then some of them anew as long as that
// makes the relaxation of all the rest better and the meter lasts; what is left is matched with single pieces
// at its prices, and the rest cut from sticks.
Draft draft_by_price(const Problem& problem, const std::vector<std::size_t>& slots, const Supply& supply,
                     Chance& chance, Meter& meter);

} // namespace nutward::cutting
