// Whether one group of frets may be pressed with one bar.
#pragma once

#include "press/reason.hpp"

#include <optional>
#include <vector>

namespace nutward::press {

// The crowns of `work` from one index to another, both included; what is not seated among them is no part of
// it. Both ends must be seated.
struct Group {
  std::size_t first = 0, last = 0;
};

// Of slots lo to hi. Throws BadWork where either is no seated slot of the work, or lo is above hi.
Group group_of(const Work& work, int lo, int hi);

std::vector<int> slots_of(const Work& work, Group group);
std::vector<double> places_of(const Work& work, Group group); // on the centreline, mm
// Where the bar's middle stands: over the middle of all that lies between the group's outermost ends, half a
// nanometre down.
Length bar_place(const Work& work, Group group);
// Where the load stands: over the mean of its slots.
Length load_place(const Work& work, Group group);
// Σ over the group of the load for each mm (on soft wood less) × the fret's length.
Force line_load_of(const Work& work, const Equipment& equipment, Group group);

// Why nothing at all is pressed here with this bar, whatever the group; all that is to be said: the press,
// its plate, the four of Bed, a bar longer than the board, a narrow bar whose ladder the shop has not set.
std::vector<Reason> whole_refusals(const Work& work, const Equipment& equipment, const Bar& bar);

// The first thing that keeps a group from being pressed; nullopt: nothing does. In this order, it fits if
// every fret among them is to be pressed; they are at most most_frets; span + w ≤ bar for their outermost
// ends; the neck bears under all of them; the bar is wider than each, and its sole suits each (flat on flat;
// a board's radius or up to 25 mm tighter); they are at least two, or the bar is narrow; both ends of the
// bar, its middle at bar_place(), are end_clear from every crown outside and from a nut in place; and that
// middle is within reach.
std::optional<Reason> hindrance(const Work& work, const Equipment& equipment, const Bar& bar, Group group);

// The parts of it that do not depend on where the bar stands, for one fret.
std::optional<Reason> sole_hindrance(const Crown& crown, const Bar& bar);
std::optional<Reason> bed_hindrance(const Work& work, Group group);

} // namespace nutward::press
