// The most valuable set of frets that goes into a length, for every length at once: exact, in whole numbers.
#pragma once

#include "cutting/meter.hpp"

#include <cstdint>
#include <vector>

namespace nutward::cutting {

class Knapsack {
public:
  // Sizes over 0, each `counts` times at most; rooms up to `most`, which bounds the memory (a byte for each
  // unit of room and copy of a size).
  Knapsack(std::vector<std::int64_t> sizes, const std::vector<int>& counts, std::int64_t most);

  // values ≥ 0, by size. One that is 0 is never chosen.
  void solve(const std::vector<std::int64_t>& values, Meter& meter);
  // The best value in a room from 0 to `most`, and a set that has it: how many of each size.
  std::int64_t value(std::int64_t room) const { return best_[static_cast<std::size_t>(room)]; }
  std::vector<int> set(std::int64_t room) const;

private:
  struct Copy {
    std::size_t item = 0;
    int times = 1;
  };
  std::vector<std::int64_t> sizes_;
  std::vector<Copy> copies_; // counts in powers of two
  std::vector<std::int64_t> best_;
  std::vector<std::uint8_t> chosen_; // by copy, then room
};

} // namespace nutward::cutting
