// Passes: in which groups the frets of a job are pressed, from the bodyward end to the nut, with what load,
// and where it may stand.
#pragma once

#include "press/bearing.hpp"
#include "press/group.hpp"

#include <optional>
#include <span>
#include <vector>

namespace nutward::press {

// Load factors of a fret: times its fair part, load/n, at which it is green no more, and amber no more.
inline constexpr double green_times = 1.25, amber_times = 1.5;

// Where the load may stand along the centreline, from the nut, for the group of a pass once all its frets are
// down: no fret above green_times or amber_times its fair part (and never beyond the kern); to the edge of
// the kern, where a fret takes nothing any more.
struct Room {
  Stretch green, amber, kern;
};

struct Pass {
  std::size_t bar = 0;    // which of the bars it is pressed with
  int lo = 0, hi = 0;     // slots, the outermost
  std::vector<int> slots; // all that are under the bar, rising
  Length bar_at;          // the bar's middle, from the nut
  Between bar_between;
  Length load_at; // where the load stands: then each fret takes the same, `average`
  Between load_between;
  Force load;        // in whole divisions of the gauge
  Force first;       // come up to this, look, and only then to `load`: half of it
  Force average;     // load / frets: what each takes
  double n_per_mm;   // load over all the length of the frets
  LimitedBy limited; // why it is not more
  Room room;
  std::optional<Refusal> larger; // why the next fret nutward is not under the bar too; nullopt: there is none
};

struct PassedOver { // a group inside the one before it
  int lo = 0, hi = 0;
  std::optional<Refusal> larger;
};

struct Plan {
  std::vector<Pass> passes;
  std::vector<PassedOver> inside; // left out, unless asked for
  std::vector<Reason> refused;    // why nothing at all is pressed; then there are no passes
  std::vector<Refusal> slots;     // those to press that no pass reaches, each by itself, bodyward first
  std::vector<Reason> notes;      // what became of the load that was asked for
};

struct Wish {
  bool every_group = false;    // also those inside the one before
  std::optional<Force> load{}; // instead of what is usual; cut to what press, gauge, bar and shop allow
};

// For each slot to press from the bodyward end, the largest group without a hindrance() that has it as its
// highest; a group inside the pass before is left out. A group's load is the least of Σ line load × length
// over its frets (less on soft wood; under a narrow bar no more than its ladder's first rung; with a wished
// load that instead), the pass limit, and the ratings that are known, and then on_gauge(). Throws BadWork for
// a wished load that is not over 0, or less than the gauge's division, which would be told as nothing.
//
// Common practice, from memory, without a published source; the load shares are bearing.hpp's.
Plan passes(const Work& work, const Equipment& equipment, const Bar& bar, const Wish& wish = {});
// With whichever of several bars takes the largest group; of two that take the same, the one named first. So
// a shorter bar serves where a long one would stand on frets outside. A narrow bar takes part only where it
// is the only one: it is for one fret, with a ladder of its own. What is refused is told for the first bar
// that could be used at all. Throws BadWork where there is no bar.
Plan passes(const Work& work, const Equipment& equipment, std::span<const Bar> bars, const Wish& wish = {});

// One group by itself, if it may be pressed: `slots` as a what-if. Throws BadWork where lo or hi is no seated
// slot of the work, or lo is above hi.
struct OneGroup {
  std::optional<Pass> pass;
  std::vector<Reason> refused;
  std::vector<Reason> notes;
};
OneGroup one_group(const Work& work, const Equipment& equipment, const Bar& bar, int lo, int hi,
                   const Wish& wish = {});

} // namespace nutward::press
