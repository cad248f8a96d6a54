// Off centre: what each fret of a group takes when the load does not stand over the mean of its slots, or not
// on the centreline; and how far it may be moved to favour one side.
#pragma once

#include "press/passes.hpp"

#include <optional>
#include <vector>

namespace nutward::press {

struct Off {
  Length along;    // of load_place(); over 0: bodyward
  Length sideways; // of the centreline; over 0: to the treble
};

// By `at_end`: up to green_times, up to amber_times, more, or nothing at all.
enum class Zone { green = 0, amber = 1, over = 2, lifted = 3 };

struct FretLoad {
  int slot = 0;
  Force share;         // of the load; they add up to it
  double times = 0;    // share as times the fair part, load/n
  double at_end = 0;   // times the larger end's 1 + 6y/L, of a fret L long: times the fair load for each mm
  double n_per_mm = 0; // there
  Zone zone = Zone::green;
};

struct Shares {
  std::vector<FretLoad> frets; // by slot
  double worst = 1;            // the largest at_end
  Zone zone = Zone::green;     // the worst: lifted where any fret is
  Force
      cut; // on_gauge(load/worst): with this no end of a fret gets more than it would with the load in place
};

// Once all frets are down; until then the proudest takes most. Within the kern the rigid-bar formula
//   R_i = P·[1/n + (xP − x̄)(x_i − x̄)/Σ(x_j − x̄)²],
// beyond it contact_parts(); sideways strip(). The product of both is what counts: it is never less than a
// plane of supports gives (there the two add). Of a fanned group the frets count as if they were square: the
// slope that its bar takes along the neck it takes across leaning frets too, and each still bears evenly.
// nullopt: the bar tips. Throws BadWork where lo..hi are no seated slots of the work.
std::optional<Shares> shares(const Work& work, const Equipment& equipment, int lo, int hi, Force load,
                             Off off);

// To favour one side: how far off the centreline at most (at_end stays within amber_times for every fret,
// with the load in its place along the neck), and the load to go with that. For anything less, shares().cut.
struct Favour {
  Length most;
  Force load;
};
Favour favour(const Work& work, const Equipment& equipment, int lo, int hi, Force load);

} // namespace nutward::press
