// Packing by diving: patterns of the column generation are fixed one after another, and the rest packed.
#pragma once

#include "cutting/columns.hpp"
#include "cutting/pack.hpp"

namespace nutward::cutting {

// Looks for a packing of everything into `sticks` sticks, whose root relaxation is given. Depth first with
// few discrepancies (where a dive fails, another pattern is fixed in its place, at few nodes of a path),
// every node bounded by its own relaxation and tried by pack(). nullopt where none was found before the meter
// was out.
std::optional<Packing> dive(const Task& task, Columns& columns, const Relaxed& root, std::int64_t sticks,
                            Chance& chance, Meter& meter);

} // namespace nutward::cutting
