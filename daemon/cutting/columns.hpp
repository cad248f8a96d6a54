// Column generation for sticks (Gilmore and Gomory, Oper. Res. 9 (1961) 849 and 11 (1963) 863): a bound on
// how many must be opened, and the cuttings that it would use, in fractions.
#pragma once

#include "cutting/knapsack.hpp"
#include "cutting/master.hpp"
#include "cutting/pack.hpp"

#include <cstdint>
#include <deque>
#include <memory>
#include <optional>
#include <vector>

namespace nutward::cutting {

// One stick's worth of frets.
struct Pattern {
  std::size_t wire = 0;
  std::vector<int> counts; // by lot
  double uses = 0;         // in the last solution
};

struct Relaxed {
  std::int64_t bound = 0;        // sticks, at least; proved in whole numbers
  double objective = 0;          // about the fraction that was rounded up; less than 0: not solved to the end
  std::vector<Pattern> patterns; // that are used, most used first
};

// Sizes in units of their greatest common divisor, rooms rounded down: nothing is lost.
class Columns {
public:
  // nullptr where sizes and rooms have too small a common unit for tables (most_units), or there is other new
  // wire than sticks that suit everything: the bound would not hold.
  static std::unique_ptr<Columns> make(const Task& task);

  // Of what remains of the lots and the wires. Patterns found before are used again.
  Relaxed solve(const std::vector<int>& lots_left, const std::vector<int>& wires_left, Meter& meter);

  static constexpr std::int64_t most_units = 20'000;

private:
  Columns(const Task& task, std::int64_t unit);
  struct Known {
    Pattern pattern;
    Column column;
  };
  bool suits(const Known& known, const std::vector<int>& lots_left, const std::vector<int>& wires_left) const;
  bool add_best(const std::vector<double>& prices, Knapsack& knapsack, Master& master,
                std::vector<const Known*>& used);
  std::int64_t prove(const std::vector<std::int64_t>& values, const Knapsack& knapsack,
                     const std::vector<int>& lots_left, const std::vector<int>& wires_left) const;

  std::vector<std::int64_t> sizes_, rooms_;
  std::deque<Known> known_;
};

} // namespace nutward::cutting
