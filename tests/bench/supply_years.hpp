// Shops that order by supply/outlook for two years, beside the same shops with a reorder level that does not
// move. Prints how often work waited for wire in the second year, and how much wire lay there.
#pragma once

namespace nutward::bench {

void simulate(int shops);

} // namespace nutward::bench
