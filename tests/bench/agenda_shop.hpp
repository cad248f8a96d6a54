// An invented shop with a long queue: one press, one levelling jig, sanders, people, weekly hours, a day's
// wait.
#pragma once

#include "agenda/plan.hpp"

namespace nutward::bench {

// Jobs of eight tasks each: pull, true (sander), cut, dress (sander), seat, press (press, not overnight),
// recheck (16 h after pressing, not later than the end of the next open day), level (jig), each by the job's
// builder, who is one of the people. Minutes as DESIGN 4.8, by 12 to 24 frets, in steps of five. A third is
// seated already. The press has most to do, and is to be kept busy. Due dates are spread over the time that
// it takes.
agenda::Problem queue(int jobs, int people, std::uint32_t seed);

} // namespace nutward::bench
