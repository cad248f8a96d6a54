// A bound on the new wire that slots need besides what the tin can serve of them.
#pragma once

#include "cutting/draft.hpp"

namespace nutward::cutting {

struct WireBound {
  std::int64_t sizes = 0;  // nanometres of sizes that the tin cannot serve, at least
  std::int64_t sticks = 0; // to open
  std::int64_t taken = 0;  // nanometres
};

// Where all slots are served. By Lagrange: each fret is given a price; what the slots are worth, less the
// most that each piece can serve, less the gain that each stick could make at best, is never more than the
// cost. Any prices give a bound. Tried are those that are 0 below some size, rise in a straight line from
// there, and stay level beyond another: short frets that the tin serves anyhow and long ones that it serves
// alone then weigh nothing, and the line weighs length against number, which counts where only so many
// frets go into a stick. The sizes that fill a room are relaxed to any between those two. `taken` is of as
// many sticks as `sticks`.
WireBound least_new_wire(const Problem& problem, std::span<const std::size_t> slots, const Sorted& pieces,
                         const std::vector<int>& stock, std::int64_t sticks);

} // namespace nutward::cutting
