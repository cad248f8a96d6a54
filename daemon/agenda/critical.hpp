// Why a job ends when it does: the chain of ops that hold one another up, and the moves that could break it.
#pragma once

#include "agenda/schedule.hpp"

namespace nutward::agenda {

struct Link {
  int op = -1;
  int unit = -1; // the unit on which the op before it in time (the next in the list) holds it up; -1: an arc
};

// From an op back to one that nothing holds up but its own limits. Empty for op -1.
void trace(const Schedule& schedule, int op, Chance& chance, std::vector<Link>& path);

// The last op of a job; -1 if it has none.
inline int last_op(const Schedule& schedule, int job) {
  const auto& ops = schedule.model().jobs[static_cast<std::size_t>(job)].ops;
  return ops.empty() ? -1 : ops.back();
}

// A move within a mode, and what must go with it, appended to `moves`. An op that goes earlier takes along
// the one whose most lag counts from it, or it would have to wait for that where it was. One that goes later
// first moves the rest of its job to where that may then be, or what its units do in between would stand in
// the way.
void add_with_followers(const Schedule& schedule, const Move& move, std::vector<Move>& moves);

// Along a path, ops that one unit does without a break: path[first] is the last of them in time, path[last]
// the first one. At least two.
struct Block {
  std::size_t first = 0, last = 0;
};
void find_blocks(const std::vector<Link>& path, std::vector<Block>& blocks);

} // namespace nutward::agenda
