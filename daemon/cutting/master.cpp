#include "cutting/master.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

namespace nutward::cutting {

namespace {

constexpr double tiny = 1e-9;
constexpr double least_pivot = 1e-7; // a smaller one would spoil the inverse

// Equal demands make a vertex of many bases, between which the simplex would turn in circles: each is moved a
// little, by its row.
double moved(double value, std::size_t row) {
  return value + 1e-6 * (1.0 + 0.618033988749895 * static_cast<double>(row + 1) -
                         std::floor(0.618033988749895 * static_cast<double>(row + 1)));
}

} // namespace

Master::Master(std::vector<double> demands, const std::vector<double>& limits, double shortage)
    : covering_(demands.size()), demand_(std::move(demands)), shortage_(shortage) {
  for (std::size_t i = 0; i < demand_.size(); ++i)
    right_.push_back(moved(demand_[i], i));
  for (const double limit : limits)
    right_.push_back(moved(limit, right_.size()));
  const std::size_t n = right_.size();
  inverse_.assign(n * n, 0);
  for (std::size_t i = 0; i < n; ++i) {
    inverse_[i * n + i] = 1;
    basis_.push_back(-1 - static_cast<int>(i));
  }
  reprice();
}

double Master::cost_of(int id) const {
  if (id >= 0) return pool_[static_cast<std::size_t>(id)]->cost;
  if (id <= surplus_base) return 0;
  return static_cast<std::size_t>(-1 - id) < covering_ ? shortage_ : 0;
}

void Master::direction(int id, std::vector<double>& out) const {
  const std::size_t n = rows();
  out.assign(n, 0);
  const auto add = [&](std::size_t row, double by) {
    for (std::size_t i = 0; i < n; ++i)
      out[i] += inverse_[i * n + row] * by;
  };
  if (id >= 0)
    for (const auto& [row, by] : pool_[static_cast<std::size_t>(id)]->entries)
      add(static_cast<std::size_t>(row), by);
  else if (id <= surplus_base)
    add(static_cast<std::size_t>(surplus_base - id), -1);
  else
    add(static_cast<std::size_t>(-1 - id), 1);
}

void Master::reprice() {
  const std::size_t n = rows();
  prices_.assign(n, 0);
  for (std::size_t i = 0; i < n; ++i) {
    const double cost = cost_of(basis_[i]);
    if (cost == 0) continue;
    for (std::size_t j = 0; j < n; ++j)
      prices_[j] += cost * inverse_[i * n + j];
  }
}

int Master::entering() const {
  int best = std::numeric_limits<int>::min();
  double least = -1e-7;
  const auto offer = [&](int id, double reduced) {
    if (reduced >= least) return;
    least = reduced;
    best = id;
  };
  for (std::size_t i = 0; i < rows(); ++i)
    if (i < covering_)
      offer(surplus_base - static_cast<int>(i), prices_[i]);
    else
      offer(-1 - static_cast<int>(i), -prices_[i]);
  for (std::size_t k = 0; k < pool_.size(); ++k) {
    double reduced = pool_[k]->cost;
    for (const auto& [row, by] : pool_[k]->entries)
      reduced -= prices_[static_cast<std::size_t>(row)] * by;
    offer(static_cast<int>(k), reduced);
  }
  return best;
}

bool Master::pivot(int id) {
  const std::size_t n = rows();
  std::vector<double> d;
  direction(id, d);
  std::size_t leaving = n;
  double step = 0;
  for (std::size_t i = 0; i < n; ++i) {
    if (d[i] <= least_pivot) continue;
    const double ratio = right_[i] / d[i];
    if (leaving == n || ratio < step - 1e-10 || (ratio < step + 1e-10 && d[i] > d[leaving])) {
      leaving = i;
      step = ratio;
    }
  }
  if (leaving == n) return false; // unbounded: only by rounding
  double* const pivot_row = &inverse_[leaving * n];
  for (std::size_t j = 0; j < n; ++j)
    pivot_row[j] /= d[leaving];
  right_[leaving] = step;
  for (std::size_t i = 0; i < n; ++i) {
    if (i == leaving || std::abs(d[i]) < tiny) continue;
    double* const row = &inverse_[i * n];
    for (std::size_t j = 0; j < n; ++j)
      row[j] -= d[i] * pivot_row[j];
    right_[i] = std::max(0.0, right_[i] - d[i] * step);
  }
  basis_[leaving] = id;
  return true;
}

bool Master::improve(Meter& meter) {
  const auto n = static_cast<std::int64_t>(rows());
  for (;;) {
    const int id = entering();
    if (id == std::numeric_limits<int>::min()) return true;
    if (!meter.spend(3 * n * n + 8 * static_cast<std::int64_t>(pool_.size())) || !pivot(id)) return false;
    reprice();
  }
}

double Master::objective() const {
  double sum = 0;
  for (std::size_t i = 0; i < rows(); ++i)
    sum += cost_of(basis_[i]) * right_[i];
  return sum;
}

std::vector<double> Master::uses() const {
  std::vector<double> out(pool_.size());
  for (std::size_t i = 0; i < rows(); ++i)
    if (basis_[i] >= 0) out[static_cast<std::size_t>(basis_[i])] += right_[i];
  return out;
}

} // namespace nutward::cutting
