// What of a problem can be planned; the rest is named.
#pragma once

#include "cutting/serve.hpp"

#include <vector>

namespace nutward::cutting {

struct Checked {
  std::vector<std::size_t> slots;    // to be planned: sound, not served by what is held, not too long for all
  std::vector<std::size_t> hopeless; // sound, but too long for everything
  std::vector<std::size_t> bad;      // unsound; counted as unserved as well
  std::vector<std::size_t> pieces;   // to be planned with
  std::vector<int> stock_left;       // of each entry of Problem::stock
  std::vector<Cutting> held;         // that work
  std::vector<Fault> faults;
};

Checked check(const Problem& problem);

// The due ranks that occur, ascending.
std::vector<int> ranks_of(const Problem& problem);

// Adds what cannot be served at all, and what is held: it counts on both sides of a comparison. `ranks`:
// those that the cost counts by.
void add_given(const Problem& problem, const Checked& checked, const std::vector<int>& ranks, Cost& cost);

} // namespace nutward::cutting
