// Advice: what to do next at the bench, from a diagnosis and what is known of the frets. Typed, without
// words: whoever tells it says it, and adds the loads (press/rework.hpp) and the cautions of pressing, glue
// and abrasives.
//
// Cause before load: a high fret is pressed again only when there is a gap under its crown and nothing else
// that would keep it up was found. Common practice, from memory, without a published source.
#pragma once

#include "level/next.hpp"

#include <optional>
#include <span>
#include <variant>
#include <vector>

namespace nutward::level {

// The numbers of these never change.
enum class Gap { not_asked = 0, none = 1, some = 2 }; // between the underside of the crown and the board
// What keeps a fret up that has a gap under its crown.
enum class Cause {
  not_asked = 0,
  nothing_found = 1, // it was simply not pressed home
  slot_shallow = 2,
  slot_dirty = 3,
  tang_bottoms = 4,
  wire_misbent = 5, // under-bent or kinked
  slot_loose = 6
};
enum class Bar { long_bar = 0, narrow = 1 };
enum class Side { even = 0, bass = 1, treble = 2 };

// What is known of one fret besides the readings. A fret that nobody told of is as the defaults say.
struct FretFacts {
  int slot = 0;
  Gap gap = Gap::not_asked;
  Cause cause = Cause::not_asked;
  bool long_bar_done = false;    // there is no further step under a long bar (press::AtLimit)
  bool narrow_bar_done = false;  // nor on the narrow bar's ladder (press::LadderDone)
  bool sprang_back = false;      // it was down after pressing, and high at the recheck
  std::optional<Length> below{}; // measured: how far it stands below the line of its neighbours, 0 or more
};
struct Facts {
  std::vector<FretFacts> frets{};  // in any order; the first of a slot counts
  bool narrow_ladder_set = false;  // the shop has set up a ladder for a narrow bar
  std::optional<int> last_ever{};  // the last fret that the board will ever have; nullopt: not said
  bool neck_straight_seen = false; // somebody looked at the neck before
};
// A last fret may stay this low.
inline constexpr Length most_left_low{150'000};

// Before anything else: is the neck straight?
struct AskNeck {};
// The neck is bowed on these lines: straighten it, then read again (it touches every fret, see counts()).
struct StraightenNeck {
  Way way = Way::high; // high: a hump, low: relief
};
// These cannot all be true: read them again. Into the readings given to diagnose().
struct ReadAgain {
  std::vector<std::size_t> readings;
};
struct TakeReading {
  Next next;
};
// More is off than readings tell apart: look at neck and board as a whole.
struct LookAtWhole {};
// What is left open on a line no straightedge tells apart: the explanations, the likeliest first.
struct TryByHand {
  std::vector<std::vector<Off>> left;
};
struct AskGap { // is there a gap under its crown?
  int slot = 0;
};
struct AskCause { // slot shallow or dirty, tang bottomed, wire under-bent or kinked, slot loose?
  int slot = 0;
};
struct PutRight { // pull it, remove the cause, seat it anew
  int slot = 0;
  Cause cause = Cause::nothing_found;
};
struct PressAgain { // one step further than last time, never two
  int slot = 0;
  Bar bar = Bar::long_bar;
  Side load = Side::even; // to which side of the fret's middle the load moves
};
struct GlueAndClamp {
  int slot = 0;
};
struct StopAndLevel { // press no more: fine abrasive on a flat block, then crown and polish
  int slot = 0;
};
struct AskHowLow { // measure how far it stands below its neighbours' line
  int slot = 0;
};
struct LeaveLow {
  int slot = 0;
};
struct TreatLow { // pull and reseat it, shim it, or level the board to it; never press all others down
  int slot = 0;
};
struct MayCallLevel {}; // on these lines
struct ReadFiner {};    // all is read and steady, but with too large an ε to call it level

using Step = std::variant<AskNeck, StraightenNeck, ReadAgain, TakeReading, LookAtWhole, TryByHand, AskGap,
                          AskCause, PutRight, PressAgain, GlueAndClamp, StopAndLevel, AskHowLow, LeaveLow,
                          TreatLow, MayCallLevel, ReadFiner>;

// Why, as one sentence would say it. The numbers never change.
enum class Because {
  neck_first = 0,       // readings mean something only over a straight neck
  one_bow_explains = 1, // a bowed neck alone would explain the readings
  cannot_all_be = 2,
  splits = 3,       // the reading tells apart what could be off
  not_read_yet = 4, // the reading is the next of the sequence
  too_many = 5,
  no_edge_tells = 6,
  cause_before_load = 7, // where there is no gap, pressing crushes; where there is one, something keeps it up
  cause_known = 8,
  gap_and_no_cause = 9,   // it was not pressed home
  high_on_one_side = 10,  // it is high on one edge line and not on the other
  long_bar_at_limit = 11, // the narrow bar has a lower ladder of its own
  no_further_step = 12,   // neither bar has one, or no narrow bar is set up
  seated = 13,            // there is no gap: it is the board or the crown
  slot_is_loose = 14,
  sprang_back = 15,
  last_and_untouched = 16, // no string can touch a last fret below its neighbour
  last_may_stay = 17,      // it may if it is little, which is not measured yet
  too_low_to_leave = 18,
  not_the_last = 19, // strings are pressed beyond it
  all_read = 20,
  too_coarse = 21,
  bow_agreed = 22 // every explanation has it
};

struct Advice {
  std::vector<Line> lines; // which it is about, in order; of a fret: where it is off
  Step step;
  Because because = Because::neck_first;
};

// What to do, first things first: whether the neck is straight, if nobody looked or a bow alone would explain
// a line; readings that contradict one another; a bow that every explanation of a line has; the next reading;
// then each fret that every explanation of some line agrees on, by slot; where no reading can tell more, a
// high fret of the likeliest explanation is asked about (its gap tells). Of a line that is bowed beyond
// doubt, or contradicts itself, no fret is treated. The last fret the board will ever have may be left low if
// it was measured, by at most most_left_low, and if no explanation has it high on another line, or its
// neighbour low as well. Never empty. `readings`, `lines`, `plan` and `epsilon` as given to diagnose() and
// next_reading().
std::vector<Advice> advice(std::span<const Reading> readings, const Lines& lines, const Diagnosis& diagnosis,
                           const Facts& facts, const Plan& plan = {}, Length epsilon = hand);

} // namespace nutward::level
