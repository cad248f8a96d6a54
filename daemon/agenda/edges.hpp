// Edge finding on one machine.
#pragma once

#include "agenda/timeline.hpp"

namespace nutward::agenda {

// What one machine, one at a time, has to do: `work` within [head, tail] for each; work > 0.
struct OneMachineOp {
  Second head = 0, tail = 0, work = 0;
};

// Raises heads and lowers tails by what follows from all others; false if they cannot all be done. Every set
// of ops with the same latest end is weighed, also with interruptions (Jackson's preemptive bound).
bool find_edges(std::vector<OneMachineOp>& ops);

} // namespace nutward::agenda
