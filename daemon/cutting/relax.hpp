// The tin and new wire together, in fractions: the best prices of frets, and the bound that they prove.
//
// Slots that are all to be served are covered by: one matching of single pieces (fractions of several), one
// filling of each long piece, and as many fillings of sticks as are needed, at the least new wire. Prices of
// frets, straight lines between some sizes, are found by column generation (Gilmore and Gomory, see
// columns.hpp; Dantzig and Wolfe, Oper. Res. 8 (1960) 101, for matching and long pieces), each new price
// taken half way between the best and the master's. Whatever they are they prove a bound (Lagrange): what all
// frets are worth, less the most that single pieces can serve of it, that each long piece can hold, and that
// each stick could gain. That is reckoned in whole numbers, with sizes rounded down.
//
// Which piece has how many raw ends, and crowns and tangs, are left out of account where they can only make
// less possible.
#pragma once

#include "cutting/cover.hpp"
#include "cutting/draft.hpp"
#include "cutting/grades.hpp"
#include "cutting/master.hpp"

#include <deque>
#include <memory>

namespace nutward::cutting {

class Relaxation {
public:
  struct Aim {
    bool taken = false;      // the least length; else the fewest sticks
    std::int64_t sticks = 0; // opened at most, for `taken`
    Rounding rounding = Rounding::down;
    int units = 8000; // of the longest room
    std::size_t knots = 24;
  };
  Relaxation(const Problem& problem, std::span<const std::size_t> slots, const Sorted& pieces,
             const std::vector<int>& stock, const Aim& aim);

  // Until the bound is within `enough` (sticks, or mm) of the solution, or the meter is out. `start`: prices
  // to begin with, by slot of the problem; empty: by length.
  void solve(const std::vector<double>& start, double enough, Meter& meter);

  std::int64_t bound() const { return bound_; } // sticks, or nm; at least 0
  std::vector<double> prices() const;           // by slot of the problem, in sticks or mm

private:
  void begin();
  std::int64_t evaluate(const std::vector<double>& y, Meter& meter);
  std::int64_t match(Meter& meter);
  std::int64_t fill_ends(Meter& meter);
  std::int64_t fill_stock();
  std::int64_t fill_stock(std::size_t row);
  std::int64_t fill_long(std::size_t row);
  std::int64_t keep_rest(std::size_t row);
  void add(const std::vector<std::size_t>& grades, std::int64_t cost,
           std::initializer_list<std::size_t> rows);
  double in_master(std::int64_t cost) const { return static_cast<double>(cost) / one_; }

  const Problem& p_;
  Aim aim_;
  std::vector<std::size_t> stock_; // that there is, in Problem::stock
  std::vector<int> counts_;
  std::vector<std::size_t> ends_; // shortest first
  std::int64_t longest_ = 0;      // nm of room that fillings_ reach
  Grades grades_;
  Fillings fillings_;
  Cover cover_;
  double one_ = 1; // the master's unit: a stick, or a millimetre
  std::vector<std::int64_t> values_;
  std::unique_ptr<Master> master_;
  std::deque<Column> columns_;
  std::vector<double> best_; // prices at the knots
  std::int64_t bound_ = 0;
};

} // namespace nutward::cutting
