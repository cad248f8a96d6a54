// Invented shops with a long queue: one press, one levelling jig, sanders, people, weekly hours, a day's
// wait.
#pragma once

#include "agenda/plan.hpp"

namespace nutward::bench {

struct Shop {
  int jobs = 100, people = 12;
  std::uint32_t seed = 1;
  // The last due dates, over the time that the press takes for all of them: 1.4 leaves room for all, 0.7
  // cannot be kept by all.
  double due = 1.4;
};

// Jobs of eight tasks each: pull, true (sander), cut, dress (sander), seat, press (press, not overnight),
// recheck (16 h after pressing, not later than the end of the next open day), level (jig), each by the job's
// builder, who is one of the people. Minutes as DESIGN 4.8, by 12 to 24 frets, in steps of five. A third is
// seated already. The press has most to do. Due dates are spread over a part of the time that it takes.
agenda::Problem queue(const Shop& shop);

} // namespace nutward::bench
