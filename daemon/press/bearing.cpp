// Both kinds of bearing are one search for a plane w(x,y) = a + b·x + c·y over the supports: a part is k·w
// where supports may pull, and k·max(0, w) where they may not, and the plane is the one whose parts keep the
// force and both moments. That is the maximum of the concave, piecewise quadratic function
//   w(load) − ½·Σ k·max(0, w)²,
// found by Newton's steps: each solves one piece exactly, and an exact search along the step finds the next.
// A piece on which the plane is not determined (all that bears stands on one line) has a direction that costs
// nothing; if the load asks for it, that direction is taken first, until another support comes to bear.
#include "press/bearing.hpp"

#include "press/spectrum.hpp"

#include <algorithm>
#include <cmath>

namespace nutward::press {

namespace {

constexpr double rank_tolerance = 1e-13;    // of the largest eigenvalue: beneath it the plane is not held
constexpr double balance_tolerance = 1e-13; // of force and moments: parts of the load, arms of the size 1

struct Row { // of one support, or of the load, in coordinates of the size 1
  Vector3 at{};
  double stiffness = 1;
};

struct Problem {
  std::vector<Row> rows;
  Vector3 load{};
};

Problem scaled(std::span<const Support> supports, Place load) {
  double weight = 0, mean_x = 0, mean_y = 0, size = 0;
  for (const Support& s : supports) {
    weight += s.stiffness;
    mean_x += s.stiffness * s.x;
    mean_y += s.stiffness * s.y;
  }
  mean_x /= weight;
  mean_y /= weight;
  for (const Support& s : supports)
    size = std::max({size, std::abs(s.x - mean_x), std::abs(s.y - mean_y)});
  if (size == 0) size = 1;
  Problem out;
  out.rows.reserve(supports.size());
  for (const Support& s : supports) // the stiffnesses' mean becomes 1, so that w is of the size of the parts
    out.rows.push_back({{1, (s.x - mean_x) / size, (s.y - mean_y) / size},
                        s.stiffness * static_cast<double>(supports.size()) / weight});
  out.load = {1, (load.x - mean_x) / size, (load.y - mean_y) / size};
  return out;
}

// What of the load's force and moments the parts leave over.
template <class Part>
Vector3 left_over(const Problem& problem, const Part& part) {
  Vector3 left = problem.load;
  for (const Row& row : problem.rows) {
    const double p = part(row);
    for (std::size_t i = 0; i < 3; ++i)
      left[i] -= p * row.at[i];
  }
  return left;
}

double size_of(const Vector3& v) {
  return std::sqrt(dot(v, v));
}

struct Step {
  Vector3 held{}; // the plane's change that balances what the supports that bear can balance
  Vector3 free{}; // what is left over along directions in which none of them resists
};

template <class Bears>
Step newton(const Problem& problem, const Vector3& left, const Bears& bears) {
  Matrix3 sum{};
  for (const Row& row : problem.rows) {
    if (!bears(row)) continue;
    for (std::size_t i = 0; i < 3; ++i) {
      for (std::size_t j = 0; j < 3; ++j)
        sum[i][j] += row.stiffness * row.at[i] * row.at[j];
    }
  }
  const Spectrum s = spectrum(sum);
  const double largest = std::max({s.values[0], s.values[1], s.values[2]});
  Step step;
  for (std::size_t e = 0; e < 3; ++e) {
    const double along = dot(left, s.vectors[e]);
    const bool held = s.values[e] > rank_tolerance * largest;
    Vector3& into = held ? step.held : step.free;
    for (std::size_t i = 0; i < 3; ++i)
      into[i] += (held ? along / s.values[e] : along) * s.vectors[e][i];
  }
  return step;
}

// How far along `direction` the function still rises: the zero of its slope, which falls, piece by piece, in
// straight lines. nullopt: it rises for ever.
std::optional<double> way(const Problem& problem, const Vector3& plane, const Vector3& direction) {
  const auto slope = [&](double t) {
    double sum = dot(problem.load, direction);
    for (const Row& row : problem.rows) {
      const double turn = dot(row.at, direction);
      sum -= row.stiffness * std::max(0.0, dot(row.at, plane) + t * turn) * turn;
    }
    return sum;
  };
  std::vector<double> breaks;
  for (const Row& row : problem.rows) {
    const double turn = dot(row.at, direction);
    const double t = turn == 0 ? 0 : -dot(row.at, plane) / turn;
    if (t > 0 && std::isfinite(t)) breaks.push_back(t);
  }
  std::sort(breaks.begin(), breaks.end());
  double before = 0, slope_before = slope(0);
  if (slope_before <= 0) return 0;
  for (double t : breaks) {
    const double here = slope(t);
    if (here <= 0) {
      const double fall = slope_before - here;
      return fall > 0 ? before + (t - before) * slope_before / fall : t;
    }
    before = t;
    slope_before = here;
  }
  double resistance = 0; // of what bears from the last break on: all that the plane rises over
  for (const Row& row : problem.rows) {
    const double turn = dot(row.at, direction);
    if (turn > 0) resistance += row.stiffness * turn * turn;
  }
  if (resistance <= 0) return std::nullopt;
  return before + slope_before / resistance;
}

} // namespace

std::optional<std::vector<double>> plane_parts(std::span<const Support> supports, Place load) {
  if (supports.empty()) return std::nullopt;
  const Problem problem = scaled(supports, load);
  Vector3 plane{};
  const auto part = [&](const Row& row) { return row.stiffness * dot(row.at, plane); };
  // Twice: the second step takes away what the first left over by rounding.
  for (int i = 0; i < 2; ++i) {
    const Step step = newton(problem, left_over(problem, part), [](const Row&) { return true; });
    for (std::size_t k = 0; k < 3; ++k)
      plane[k] += step.held[k];
  }
  if (size_of(left_over(problem, part)) > 1e-9 * size_of(problem.load)) return std::nullopt;
  std::vector<double> parts;
  parts.reserve(supports.size());
  for (const Row& row : problem.rows)
    parts.push_back(part(row));
  return parts;
}

std::optional<std::vector<double>> contact_parts(std::span<const Support> supports, Place load) {
  if (supports.empty()) return std::nullopt;
  const Problem problem = scaled(supports, load);
  Vector3 plane{1.0 / static_cast<double>(supports.size()), 0, 0};
  const auto bears = [&](const Row& row) { return dot(row.at, plane) > 0; };
  const auto part = [&](const Row& row) { return row.stiffness * std::max(0.0, dot(row.at, plane)); };
  const double enough = balance_tolerance * size_of(problem.load);
  constexpr int most_steps = 200; // a dozen are usual
  for (int i = 0; i < most_steps; ++i) {
    const Vector3 left = left_over(problem, part);
    if (size_of(left) <= enough) break;
    const Step step = newton(problem, left, bears);
    const Vector3& direction = size_of(step.free) > enough ? step.free : step.held;
    const auto t = way(problem, plane, direction);
    if (!t) return std::nullopt;
    if (*t == 0) break;
    for (std::size_t k = 0; k < 3; ++k)
      plane[k] += *t * direction[k];
  }
  if (size_of(left_over(problem, part)) > 1e-10 * size_of(problem.load)) return std::nullopt;
  std::vector<double> parts;
  parts.reserve(supports.size());
  for (const Row& row : problem.rows)
    parts.push_back(part(row));
  return parts;
}

namespace {

double mean_of(std::span<const double> x) {
  double sum = 0;
  for (double v : x)
    sum += v;
  return sum / static_cast<double>(x.size());
}

double spread_of(std::span<const double> x, double mean) {
  double sum = 0;
  for (double v : x)
    sum += (v - mean) * (v - mean);
  return sum;
}

} // namespace

Range kern(std::span<const double> x) {
  const double mean = mean_of(x), n = static_cast<double>(x.size());
  const double nutward = mean - x.front(), bodyward = x.back() - mean;
  if (!(nutward > 0) || !(bodyward > 0)) return {mean, mean};
  const double spread = spread_of(x, mean);
  return {mean - spread / (n * bodyward), mean + spread / (n * nutward)};
}

Range within_times(std::span<const double> x, double times) {
  const double mean = mean_of(x), n = static_cast<double>(x.size());
  const double nutward = mean - x.front(), bodyward = x.back() - mean;
  if (!(nutward > 0) || !(bodyward > 0)) return {mean, mean};
  const double reach = (times - 1) * spread_of(x, mean) / n;
  const Range all = kern(x);
  return {std::max(all.from, mean - reach / nutward), std::min(all.to, mean + reach / bodyward)};
}

std::optional<Strip> strip(double length, double off) {
  const double e = std::abs(off);
  if (!(length > 0) || e >= length / 2) return std::nullopt;
  if (e <= length / 6) return Strip{1 + 6 * e / length, 1 - 6 * e / length, length};
  const double contact = 3 * (length / 2 - e);
  return Strip{2 * length / contact, 0, contact};
}

} // namespace nutward::press
