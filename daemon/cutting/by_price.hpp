// A draft from the tin and new wire together, guided by the relaxation.
#pragma once

#include "cutting/relax.hpp"

namespace nutward::cutting {

// Cuts long pieces with the relaxation's prices for a guide (recut.hpp), matches single pieces with the rest,
// and cuts what they leave from new wire.
Draft draft_by_price(const Problem& problem, const std::vector<std::size_t>& slots, const Supply& supply,
                     Chance& chance, Meter& meter);

} // namespace nutward::cutting
