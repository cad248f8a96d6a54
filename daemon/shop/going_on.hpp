// Where a new plan begins: with what the last one had, as far as it is still to be had.
#pragma once

#include "shop/kept_cuts.hpp"

#include <vector>

namespace nutward::shop {

// What is left of the last plan for another problem of the wire (Problem::previous): what is gone, cut or
// held for something else is left out; a coil is the same however much is on it, and a stick is any of its
// length. Where sticks have become fewer, it is the one from which frets are missing that was opened.
//
// Then the pieces that the last plan did not use serve what is left without a fret, and what it would cut
// from new wire: a fret each, or several where a piece is long enough. So that one more piece in the tin
// moves the frets that it makes, and nothing else.
std::vector<cutting::Cutting> previous_of(const KeptCuts& cuts, const cutting::Problem& problem);

} // namespace nutward::shop
