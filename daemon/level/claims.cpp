#include "level/claims.hpp"

namespace nutward::level {

std::vector<double> bow_shape(const Lines& lines, Line line) {
  const auto& at = lines.on(line);
  const double from = at.front().x, to = at.back().x;
  std::vector<double> out;
  out.reserve(at.size());
  for (const Crown& crown : at)
    out.push_back(4 * (crown.x - from) * (to - crown.x) / ((to - from) * (to - from)));
  return out;
}

ClaimsOf::ClaimsOf(const Lines& lines, Line line)
    : at_(&lines.on(line)), lines_(&lines), bow_(bow_shape(lines, line)) {
  claims_.columns = at_->size() + 1;
}

// One row: how far b is above the line through a and c, at least or at most `than`.
std::uint32_t ClaimsOf::above(std::size_t b, std::size_t a, std::size_t c, Side side, double than) {
  const auto& at = *at_;
  const double sign = side == Side::at_least ? 1 : -1;
  const double share = (at[b].x - at[a].x) / (at[c].x - at[a].x);
  const double of_a = -sign * (1 - share), of_c = -sign * share;
  const std::size_t row = claims_.least.size();
  claims_.factors.resize((row + 1) * claims_.columns, 0);
  double* factors = claims_.factors.data() + row * claims_.columns;
  factors[a] = of_a;
  factors[b] = sign;
  factors[c] = of_c;
  factors[claims_.bow()] = of_a * bow_[a] + sign * bow_[b] + of_c * bow_[c];
  claims_.least.push_back(sign * than - (of_a * at[a].z + sign * at[b].z + of_c * at[c].z));
  return static_cast<std::uint32_t>(row);
}

std::uint32_t ClaimsOf::alone(std::size_t fret, double factor, double least) {
  const std::size_t row = claims_.least.size();
  claims_.factors.resize((row + 1) * claims_.columns, 0);
  claims_.factors[row * claims_.columns + fret] = factor;
  claims_.least.push_back(least);
  return static_cast<std::uint32_t>(row);
}

void ClaimsOf::pivots(std::size_t p, std::size_t i, std::size_t j, double eps) {
  claims_.all.push_back(above(p, i, j, Side::at_least, eps + more_than.mm()));
  for (std::size_t l = i; l < p; ++l) {
    for (std::size_t r = p + 1; r <= j; ++r) {
      if (l != i || r != j) claims_.all.push_back(above(p, l, r, Side::at_least, -eps));
    }
  }
}

void ClaimsOf::laid(const Reading& reading, std::size_t i, std::size_t j) {
  const double eps = reading.epsilon.mm();
  if (reading.pivot) {
    pivots(*lines_->find(*reading.pivot), i, j, eps);
  } else if (reading.felt == Felt::rocks) {
    std::vector<std::uint32_t> some;
    for (std::size_t k = i + 1; k < j; ++k)
      some.push_back(above(k, i, j, Side::at_least, eps + more_than.mm()));
    claims_.some.push_back(std::move(some));
  } else {
    for (std::size_t k = i + 1; k < j; ++k)
      claims_.all.push_back(above(k, i, j, Side::at_most, eps));
  }
}

void ClaimsOf::feeler(const Reading& reading, std::size_t i, std::size_t j) {
  const double eps = reading.epsilon.mm(), gap = -eps - more_than.mm();
  const auto each_stop = [&](std::size_t f, auto&& take) {
    const std::size_t on = reading.held == Held::bodyward ? j : i;
    for (std::size_t k = i; k <= j; ++k) {
      if (k == on || k == f) continue;
      if (reading.held || k == j) take(k < on ? k : on, k < on ? on : k);
    }
  };
  for (const int slot : reading.gaps) {
    const std::size_t f = *lines_->find(slot);
    std::vector<std::uint32_t> some;
    each_stop(f, [&](std::size_t a, std::size_t c) { some.push_back(above(f, a, c, Side::at_most, gap)); });
    claims_.some.push_back(std::move(some));
  }
  for (const int slot : reading.snug) {
    const std::size_t f = *lines_->find(slot);
    each_stop(f, [&](std::size_t a, std::size_t c) {
      claims_.all.push_back(above(f, a, c, Side::at_least, -eps));
    });
  }
}

void ClaimsOf::add(const Reading& reading) {
  if (&lines_->on(reading.line) != at_) return;
  if (reading.felt != Felt::not_laid) {
    const std::size_t i = *lines_->find(reading.span.from), j = *lines_->find(reading.span.to);
    laid(reading, i, j);
    feeler(reading, i, j);
  }
  const double seen = (reading.epsilon + more_than).mm();
  for (const int slot : reading.looks_sunk)
    claims_.all.push_back(alone(*lines_->find(slot), -1, seen));
  for (const int slot : reading.looks_high)
    claims_.all.push_back(alone(*lines_->find(slot), 1, seen));
}

Claims claims_of(const Lines& lines, Line line, std::span<const Reading> readings) {
  ClaimsOf out(lines, line);
  for (const Reading& reading : readings)
    out.add(reading);
  return out.claims();
}

} // namespace nutward::level
