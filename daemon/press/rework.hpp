// Rework: one fret that stands high is pressed again, by itself, one step further than last time and never
// two. That there is a gap under its crown, and that nothing keeps it from going down, has been seen before.
#pragma once

#include "press/group.hpp"

#include <optional>
#include <vector>

namespace nutward::press {

// The next load after `last`: between step_least and step_most more, and never above `most`. Both on_gauge().
struct Step {
  Force least, most; // least ≤ most; where `limit` cuts the step short they may be the same
  LimitedBy limited = LimitedBy::step;
};
// nullopt: `last` is at the limit, or so near that the gauge shows no step. last is over 0.
std::optional<Step> next_step(Force last, const Limit& most, const Equipment& equipment);

// The next rung of the narrow bar's ladder, in N for each mm; nullopt: there is none higher, or no ladder.
// A load within 2 % of a rung was that rung: a gauge is no better. nullopt for `last`: the first.
std::optional<double> next_rung(std::optional<double> last_n_per_mm, const Equipment& equipment);

struct OneFret {
  int slot = 0;
  std::vector<int> under; // the slots under the bar, this one among them, rising
  Length bar_at; // the bar's middle: over the fret, or as near to it as keeps the bar's ends off crowns
  Between bar_between;
  Length load_at;      // over the fret
  Force least;         // of the step; else as `load`
  Force load, first;   // first half of it, then all
  double n_per_mm = 0; // until it is down it takes all of the load
  LimitedBy limited = LimitedBy::step;
  bool again = false; // a step up from the last load; false: what is usual, or the ladder's first rung
};
struct OneFretAnswer {
  std::optional<OneFret> fret;
  std::vector<Reason> refused; // empty if there is a fret
};

// With a long bar: what is usual for the frets under it (as passes()), or a step up from `last`, at most
// most_on_one_fret(). It must have a fret on either side (Tips), and the bar may be off the fret by a quarter
// of its length at most. With a narrow bar: nothing else under it, and the load is a rung × the fret's length
// (on soft wood less), again at most most_on_one_fret(); NoLadder where the shop has set none.
// `last`: what this fret was last pressed with by a bar of this kind, alone; for a long bar also with its
// group. Throws BadWork where `slot` is no seated slot, or `last` is not over 0.
//
// Common practice, from memory, without a published source.
OneFretAnswer one_fret(const Work& work, const Equipment& equipment, const Bar& bar, int slot,
                       std::optional<Force> last);

} // namespace nutward::press
