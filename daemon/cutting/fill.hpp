// Filling one length of wire as full as it will go.
#pragma once

#include "cutting/meter.hpp"

#include <cstdint>
#include <vector>

namespace nutward::cutting {

// Frets of one size.
struct Candidate {
  std::int64_t size = 0; // over 0
  std::int64_t last = 0; // what it takes where it is the last: at most `size`
  int count = 0;
  int lot = 0; // the caller's
};

struct Filling {
  std::int64_t sizes = 0; // their sum, the last in full
  std::vector<int> lots;  // in the order of cutting
};

// A depth-first search for the set of candidates with the greatest sum of sizes that goes into `room`, the
// last one counted by what it takes as the last. It ends with room filled to within `enough`, or after
// `nodes`; ties go to the longer candidates. Candidates: by size, longest first. `first`: if not negative,
// the candidate (by position) that must be among them. Exact if it was not cut short; never overfull.
Filling fill(const std::vector<Candidate>& candidates, std::int64_t room, int first, std::int64_t enough,
             std::int64_t nodes, Meter& meter);

} // namespace nutward::cutting
