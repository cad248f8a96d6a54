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

} // namespace nutward::cutting
