// What of a problem can be planned at all.
#pragma once

#include "agenda/plan.hpp"

namespace nutward::agenda {

struct Judged {
  std::vector<char> unit_good; // 0: taken as closed
  std::vector<char> job_good;  // 0: not placed
  std::vector<int> job_order;  // the good ones, each after those that it waits for
  std::vector<Fault> faults;
};

// BadAgenda as agenda::plan.
Judged judge(const Problem& problem);

} // namespace nutward::agenda
