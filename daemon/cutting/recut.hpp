// How long pieces are cut so that the least is left for new wire, with single pieces matched to the rest.
//
// A few long pieces at a time are cut anew: each as it is worth most by prices between what a fret saves just
// now (basis.hpp) and what it is worth over tin and wire together (relax.hpp). What that leaves is then
// reckoned exactly, and kept where it is less, or more by a chance that grows smaller (annealing).
#pragma once

#include "cutting/draft.hpp"

namespace nutward::cutting {

struct Recut {
  std::vector<Cutting> ends;       // of long pieces
  std::vector<std::size_t> chosen; // slots that single pieces can serve together, but for crowns and tangs
  std::vector<std::size_t> rest;   // slots for new wire
};

// `prices`: what frets are worth, by slot of the problem, in nm of new wire.
Recut recut_ends(const Problem& problem, std::span<const std::size_t> slots, const Sorted& pieces,
                 const std::vector<double>& prices, Chance& chance, Meter& meter);

} // namespace nutward::cutting
