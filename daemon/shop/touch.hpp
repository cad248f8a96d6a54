// Touches: what was done to frets that readings of a straightedge do not outlive.
//
// They count up within a job: pressing, seating, pulling, gluing, levelling or reseating some frets is one
// touch, which stands with each of them, and a reading stands for how many there had been. It counts as long
// as no fret that it tells of was touched since (level::counts). The number is in no row of its own, so that
// reports of one job by several people can be taken back one by one; after an undo it goes on from whatever
// still stands.
#pragma once

#include "level/reading.hpp"
#include "shop/store.hpp"

#include <span>
#include <vector>

namespace nutward::shop {

// How many touches there have been: a reading that is taken now has this as its revision.
int touches(const Job& job, const View& view);

// One more touch. What was seen of these frets is no longer known: gap, cause, how low they stand. A slot
// without a fret on record is passed over.
void touch(Tx& tx, const Job& job, std::span<const int> slots);

// By slot, ascending: frets that were touched, as level::counts wants them. `all`: the slots of the board
// that straightening the neck touches, whether their frets are on record or not.
std::vector<level::Touched> touched(const Job& job, const View& view, std::span<const int> all);

} // namespace nutward::shop
