#include "level/simplex.hpp"

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace nutward::level {

namespace {
constexpr double least_pivot = 1e-11;
constexpr int steps_before_bland = 500, most_steps = 20'000;
} // namespace

Simplex::Simplex(std::span<const double> costs) : n_(costs.size()), stride_(costs.size() + 1) {
  cost_row_.reserve(stride_);
  cost_row_.push_back(0);
  cost_row_.insert(cost_row_.end(), costs.begin(), costs.end());
  for (std::size_t i = 0; i < n_; ++i)
    free_.push_back(i);
  point_.assign(n_, 0);
}

void Simplex::add(std::span<const double> factors, double least, int name) {
  const std::size_t row = basic_.size();
  rows_.resize((row + 1) * stride_, 0);
  double* out = rows_.data() + row * stride_;
  out[0] = -least;
  for (std::size_t c = 0; c < n_; ++c) {
    if (free_[c] < n_) out[c + 1] += factors[free_[c]];
  }
  for (std::size_t r = 0; r < row; ++r) {
    if (basic_[r] >= n_ || factors[basic_[r]] == 0) continue;
    const double by = factors[basic_[r]];
    const double* from = rows_.data() + r * stride_;
    for (std::size_t c = 0; c < stride_; ++c)
      out[c] += by * from[c];
  }
  basic_.push_back(n_ + names_.size());
  names_.push_back(name);
}

// Row's basic variable and the free one of `column` change places.
void Simplex::pivot(std::size_t row, std::size_t column) {
  double* at = rows_.data() + row * stride_;
  const double by = 1 / at[column + 1];
  for (std::size_t c = 0; c < stride_; ++c)
    at[c] *= -by;
  at[column + 1] = by;
  const auto put_in = [&](double* other) {
    const double factor = other[column + 1];
    if (factor == 0) return;
    other[column + 1] = 0;
    for (std::size_t c = 0; c < stride_; ++c)
      other[c] += factor * at[c];
  };
  for (std::size_t r = 0; r < basic_.size(); ++r) {
    if (r != row) put_in(rows_.data() + r * stride_);
  }
  put_in(cost_row_.data());
  std::swap(basic_[row], free_[column]);
}

// The row says: its slack = constant < 0 plus nothing that is over 0. Each slack in it is a row of the proof.
void Simplex::prove(std::size_t row) {
  proof_.clear();
  const double* at = rows_.data() + row * stride_;
  if (basic_[row] >= n_) proof_.push_back({names_[basic_[row] - n_], 1});
  for (std::size_t c = 0; c < n_; ++c) {
    if (free_[c] >= n_ && at[c + 1] < -least_pivot) proof_.push_back({names_[free_[c] - n_], -at[c + 1]});
  }
}

// One exchange. False: nothing to do, or (stuck) a row that nothing lifts.
bool Simplex::step(bool bland, bool& stuck) {
  std::size_t leaves = basic_.size();
  double worst = -simplex_tolerance;
  for (std::size_t r = 0; r < basic_.size(); ++r) {
    const double value = rows_[r * stride_];
    if (value >= worst) continue;
    if (bland && leaves != basic_.size() && basic_[r] > basic_[leaves]) continue;
    leaves = r;
    if (!bland) worst = value;
  }
  if (leaves == basic_.size()) return false;
  const double* at = rows_.data() + leaves * stride_;
  std::size_t enters = n_;
  double best = 0;
  for (std::size_t c = 0; c < n_; ++c) {
    if (at[c + 1] <= least_pivot) continue;
    const double ratio = std::max(0.0, cost_row_[c + 1]) / at[c + 1];
    const bool better = enters == n_ || ratio < best ||
                        (ratio == best && (bland ? free_[c] < free_[enters] : at[c + 1] > at[enters + 1]));
    if (!better) continue;
    enters = c;
    best = ratio;
  }
  if (enters == n_) {
    prove(leaves);
    stuck = true;
    return false;
  }
  pivot(leaves, enters);
  return true;
}

bool Simplex::solve() {
  bool stuck = false;
  for (int steps = 0; step(steps > steps_before_bland, stuck); ++steps) {
    if (steps > most_steps) throw std::logic_error("level: the simplex does not end");
  }
  if (stuck) return false;
  std::fill(point_.begin(), point_.end(), 0);
  for (std::size_t r = 0; r < basic_.size(); ++r) {
    if (basic_[r] < n_) point_[basic_[r]] = std::max(0.0, rows_[r * stride_]);
  }
  cost_ = cost_row_[0];
  return true;
}

} // namespace nutward::level
