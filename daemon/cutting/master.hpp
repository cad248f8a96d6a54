// A small linear program: which columns to use how often so that every row is covered at least cost.
//
// minimise cost·x with sum of columns ≥ demand in the covering rows and ≤ limit in the limiting rows, x ≥ 0.
// A primal simplex with an explicit inverse, enough for some hundred rows. What it says is only a guide:
// bounds are proved from its prices in whole numbers (see columns.hpp), plans are checked by serve().
#pragma once

#include "cutting/meter.hpp"

#include <cstddef>
#include <utility>
#include <vector>

namespace nutward::cutting {

struct Column {
  double cost = 0;
  std::vector<std::pair<int, double>> entries; // row, coefficient
};

class Master {
public:
  // Every covering row can also be left uncovered at `shortage` a unit.
  Master(std::vector<double> demands, const std::vector<double>& limits, double shortage);

  void add(const Column& column) { pool_.push_back(&column); }
  // Improves with the columns that it has; false if the meter ran out.
  bool improve(Meter& meter);
  // Dual prices of the rows: at least 0 of a covering row, at most 0 of a limiting one.
  const std::vector<double>& prices() const { return prices_; }
  double objective() const;
  // How often each added column is used.
  std::vector<double> uses() const;

private:
  // What stands in the basis: at least 0 an added column; below, −1−row, the row's own shortage or slack.
  static constexpr int surplus_base = -1'000'000; // and from here on down the row's surplus
  std::size_t rows() const { return right_.size(); }
  double cost_of(int id) const;
  void direction(int id, std::vector<double>& out) const;
  void reprice();
  int entering() const;
  bool pivot(int id);

  std::size_t covering_ = 0;
  std::vector<double> demand_;
  std::vector<double> right_; // values of the basis
  double shortage_ = 0;
  std::vector<const Column*> pool_;
  std::vector<int> basis_;
  std::vector<double> inverse_; // rows × rows
  std::vector<double> prices_;
};

} // namespace nutward::cutting
