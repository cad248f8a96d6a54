// The frets of a job as they lie on the bench, for the shift and for one verdict.
#pragma once

#include "pieces/shift.hpp"
#include "shop/bench.hpp"

#include <utility>
#include <vector>

namespace nutward::shop {

// A length that was said, and the slot whose fret it is of.
using SaidLength = std::pair<int, Length>;

// Lengths and slots of a call, one for each, in the same order; without slots, all of the job's. Throws
// Problem{value} where they do not go together, a slot is not the job's, or one is said twice.
std::vector<SaidLength> said_lengths(const Args& args, const Job& job);

struct Laid {
  std::vector<pieces::ShiftSlot> slots; // those with a measured fret, and those whose fret came short
  std::vector<pieces::LaidFret> frets;  // said lengths before recorded ones
  std::vector<int> unmeasured;          // slots whose fret nobody has measured: left as they are
  std::vector<int> served;              // open slots that a held piece serves: left out
};

// A fret that was only cut has two raw ends, any other is dressed. A nipped tang is what its slot wanted.
// What was seated, or came later, is seated here. `open`: also the slots that never had a fret.
Laid laid(const Job& job, const std::vector<SaidLength>& said, bool open, const View& view,
          const Setup& setup);

struct TinPart {
  std::vector<pieces::PieceFacts> pieces;
  bool all = true; // false: there are more of them than were looked at
};

// The measured pieces of the job's wire that nobody holds and that are of a length for one of `slots`, the
// oldest of a length first; without pulled frets, at most `most`.
TinPart tin_for(const std::vector<pieces::ShiftSlot>& slots, const Job& job, const View& view,
                const Setup& setup, std::size_t most);

} // namespace nutward::shop
