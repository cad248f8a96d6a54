// Why a job ends when it does: the chain of ops that hold one another up, and the moves that could break it.
#pragma once

#include "agenda/schedule.hpp"

namespace nutward::agenda {

struct Link {
  int op = -1;
  int unit = -1; // the unit on which the op before it in time (the next in the list) holds it up; -1: an arc
};

// From the job's last op back to one that nothing holds up but its own limits. Empty if the job has no op.
void trace(const Schedule& schedule, int job, Chance& chance, std::vector<Link>& path);

// Along a path, ops that one unit does without a break: path[first] is the last of them in time, path[last]
// the first one. At least two.
struct Block {
  std::size_t first = 0, last = 0;
};
void find_blocks(const std::vector<Link>& path, std::vector<Block>& blocks);

} // namespace nutward::agenda
