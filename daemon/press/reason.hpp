// Reasons: why something is not pressed, each with its numbers. Lengths are along the neck where nothing else
// is said; a slot of -1 is none.
#pragma once

#include "press/crowns.hpp"
#include "press/equipment.hpp"

#include <optional>
#include <variant>

namespace nutward::press {

// Of the press, the job or the bar as a whole.
struct OutOfService {};
struct NoPlate {}; // what the press is rated for has not been set
struct NotCradled {};
struct HeadNotClear {};
struct NeckBridged {};
struct FreshGlue {};
struct LongerThanBoard {
  Length bar, board;
};

// Of a slot.
struct NoFret { // none stands in it
  int slot = -1;
};
struct OtherFret { // stands under the bar and is not to be pressed
  int slot = -1;
};

// Of a group.
struct OverCap {
  int frets = 0, most = 0;
};
struct TooLong { // its crowns are longer together than the bar
  Length crowns, bar;
};
struct TooNarrow {  // the bar does not bear over the whole fret
  Length bar, fret; // across the neck
  int slot = -1;
};
// A sole that does not fit the board. A flat or wider one touches in the middle of the fret: `bears_on` is
// how much of it lies within 0.02 mm, 2·√(2·0.02·Rb·Rs/(Rs − Rb)). A tighter one touches at the edges: `gap`
// is how far it stands off in the middle, w²/8·(1/Rs − 1/Rb). Both for shallow arcs.
struct WrongSole {
  int slot = -1;
  std::optional<Length> sole, board; // radii; nullopt: flat
  Length bears_on, gap;              // the other is 0
};
// One fret alone under a bar that is not made for it. `beyond` is whether it has no neighbour on the one
// side.
struct Tips {
  int slot = -1;
};
// An end of the bar stands on a crown outside the group, or too near to it: `clear` is what lies between
// (under 0: the bar reaches over it). A bar from `shortest` to `longest` would do; longest < shortest: none
// would.
struct EndOnCrown {
  int slot = -1;
  Length clear, shortest, longest;
};
struct OnNut { // the same, of a nut that is in place
  Length clear, shortest, longest;
};
struct OverBody {
  int slot = -1;
  Length from;
};
struct Unsupported {
  int slot = -1;
  Length from;
};
struct OverVoid {
  Stretch hollow;
};
struct BeyondReach {
  Length bar_at, reach;
};

// Of a load. It is cut to the least `most.load`.
struct OverRating { // of press, gauge or bar, as `most.by` says
  Force asked;
  Limit most;
};
struct OverShopLimit { // most in a pass, or on one fret
  Force asked;
  Limit most;
};
struct OverLineLoad { // not cut: more for each mm of fret than is usual
  Force asked, usual;
};
// Of a rework.
struct NoLadder {}; // the shop has set none for its narrow bar
struct AtLimit {    // there is no further step
  Force last;
  Limit most;
};
struct LadderDone { // of the narrow bar: no higher rung
  double last_n_per_mm = 0, highest = 0;
};

using Reason = std::variant<OutOfService, NoPlate, NotCradled, HeadNotClear, NeckBridged, FreshGlue,
                            LongerThanBoard, NoFret, OtherFret, OverCap, TooLong, TooNarrow, WrongSole, Tips,
                            EndOnCrown, OnNut, OverBody, Unsupported, OverVoid, BeyondReach, OverRating,
                            OverShopLimit, OverLineLoad, NoLadder, AtLimit, LadderDone>;

// lo..hi: slots, both included.
struct Refusal {
  int lo = -1, hi = -1;
  Reason why;
};

} // namespace nutward::press
