// Simplex: the least Σ cost·v over v ≥ 0 under rows Σ factor·v ≥ least that are added one by one.
//
// A dual simplex on a dense dictionary, in double, for a handful of unknowns and rows: costs ≥ 0 make v = 0
// the start, and each added row is worked off from where the last one ended. Pure, and free of any fretting.
#pragma once

#include <cstddef>
#include <span>
#include <vector>

namespace nutward::level {

// What a row may fall short of by rounding; factors and limits are of the size 1.
inline constexpr double simplex_tolerance = 1e-9;

class Simplex {
public:
  // One cost for each unknown, none under 0.
  explicit Simplex(std::span<const double> costs);

  // A new row; `name` (≥ 0) is whoever calls's own, for proof(). Not worked off before solve().
  void add(std::span<const double> factors, double least, int name);

  // False: no v ≥ 0 meets the rows (to within simplex_tolerance). True: v is the cheapest. Throws
  // std::logic_error after 20,000 steps (Bland's rule makes every run end; far from what a line needs).
  bool solve();

  // After solve() was true.
  std::span<const double> point() const { return point_; }
  double cost() const { return cost_; }

  // After solve() was false: rows and multipliers > 0 whose sum asks of every v ≥ 0 what it cannot give
  // (Farkas): Σ multiplier·factors ≤ 0 in every unknown, Σ multiplier·least > 0.
  struct Part {
    int name = 0;
    double multiplier = 0;
  };
  const std::vector<Part>& proof() const { return proof_; }

private:
  // Basic and free variables by number: the unknowns first, then one slack a row.
  std::size_t n_ = 0;
  std::size_t stride_ = 0;
  std::vector<double> rows_;       // of each basic variable: constant, then a factor for each free one
  std::vector<double> cost_row_;   // the same of the cost
  std::vector<std::size_t> basic_; // which variable each row is
  std::vector<std::size_t> free_;
  std::vector<int> names_; // of the slacks
  std::vector<double> point_;
  std::vector<Part> proof_;
  double cost_ = 0;

  bool step(bool bland, bool& stuck);
  void pivot(std::size_t row, std::size_t column);
  void prove(std::size_t row);
};

} // namespace nutward::level
