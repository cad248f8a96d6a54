#include "level/feasible.hpp"

#include <algorithm>
#include <limits>

namespace nutward::level {

namespace {

constexpr double slack = 0.5e-6; // mm; half of the nanometre that a claim may be missed by
constexpr double nothing = 1e-12;
constexpr std::uint64_t every_depth = ~std::uint64_t{0};

std::uint64_t bit(unsigned depth) {
  return std::uint64_t{1} << std::min(depth, 63U); // all deeper ones share a bit: they are then never skipped
}

} // namespace

Feasible::Feasible(const Claims& claims) : claims_(claims), rows_(claims.least.size()) {
  transposed_.resize(rows_ * claims.columns);
  for (std::uint32_t r = 0; r < rows_; ++r) {
    const auto row = claims.row(r);
    for (std::size_t c = 0; c < claims.columns; ++c)
      transposed_[c * rows_ + r] = row[c];
    least_.push_back(claims.least[r] - slack);
  }
  for (std::size_t i = 0; i < claims.some.size(); ++i)
    by_length_.push_back(i);
  std::stable_sort(by_length_.begin(), by_length_.end(), [&](std::size_t a, std::size_t b) {
    return claims.some[a].size() < claims.some[b].size();
  });
  branch_of_.assign(rows_, 0);
  values_.assign(rows_, 0);
  sum_.assign(claims.columns, 0);
}

void Feasible::begin(std::span<const Unknown> unknowns, int room) {
  unknowns_.assign(unknowns.begin(), unknowns.end());
  columns_.clear();
  for (const Unknown& u : unknowns)
    columns_.push_back({by_row(u.column), u.low ? -1.0 : 1.0});
  room_ = room;
  if (room > 0) helps_.assign(2 * claims_.columns, 0);
  flipped_.reset();
  seek_extreme_ = false;
  costs_.resize(unknowns.size());
  for (std::size_t j = 0; j < costs_.size(); ++j) // all differ, so that the simplex has no ties
    costs_[j] = 1 + 0.01 * static_cast<double>(j * 37 % 101) / 101;
}

// The most that a row can come to.
double Feasible::potential(std::uint32_t r) const {
  double out = 0;
  for (std::size_t j = 0; j < columns_.size(); ++j)
    out += std::max(0.0, factor(j, r));
  return out * most_amount;
}

// A claim that nothing among the unknowns can meet, the one of fewest rows. It needs no linear program.
bool Feasible::hopeless() {
  for (const std::size_t i : by_length_) {
    const auto& some = claims_.some[i];
    if (std::any_of(some.begin(), some.end(), [&](std::uint32_t r) { return potential(r) >= least_[r]; }))
      continue;
    for (const std::uint32_t r : some)
      note_row(r);
    return true;
  }
  return false;
}

// Whatever adds to a contradiction's sum, in proportion to what it lacks: of `room` unknowns that together
// make up for it one brings at least its share.
void Feasible::note_sum(std::span<const double> sum, double lacking) {
  if (room_ <= 0) return;
  for (std::size_t j = 0; j < columns_.size(); ++j)
    lacking -= std::max(0.0, (unknowns_[j].low ? -1 : 1) * sum[unknowns_[j].column]) * most_amount;
  const double enough = std::max(nothing, lacking / room_ / most_amount - nothing);
  for (std::size_t c = 0; c < sum.size(); ++c) {
    if (sum[c] >= enough) helps_[2 * c] = 1;
    if (-sum[c] >= enough) helps_[2 * c + 1] = 1;
  }
}

void Feasible::note_row(std::uint32_t r) {
  note_sum(claims_.row(r), least_[r]);
}

void Feasible::note_proof(const Simplex& lp, std::uint64_t& used) {
  double lacking = 0;
  std::fill(sum_.begin(), sum_.end(), 0);
  for (const auto& part : lp.proof()) {
    const auto r = static_cast<std::uint32_t>(part.name);
    if (r >= rows_) continue; // an amount's own limit
    used |= branch_of_[r];
    if (room_ <= 0) continue;
    lacking += part.multiplier * least_[r];
    const auto row = claims_.row(r);
    for (std::size_t c = 0; c < row.size(); ++c)
      sum_[c] += part.multiplier * row[c];
  }
  note_sum(sum_, lacking);
}

std::vector<Unknown> Feasible::helps() const {
  std::vector<Unknown> out;
  for (std::uint32_t c = 0; c < claims_.columns; ++c) {
    const bool taken =
        std::any_of(unknowns_.begin(), unknowns_.end(), [&](const Unknown& u) { return u.column == c; });
    if (taken) continue;
    if (helps_[2 * c] != 0) out.push_back({c, false});
    if (helps_[2 * c + 1] != 0) out.push_back({c, true});
  }
  return out;
}

void Feasible::add_row(Simplex& lp, std::uint32_t r) const {
  std::vector<double> factors(columns_.size());
  double least = least_[r];
  for (std::size_t j = 0; j < columns_.size(); ++j) {
    factors[j] = factor(j, r);
    if (flipped_ != j) continue;
    least -= factors[j] * most_amount;
    factors[j] = -factors[j];
  }
  lp.add(factors, least, static_cast<int>(r));
}

// Amounts out of the program's point, and what every row comes to with them.
void Feasible::values_at(const Simplex& lp) {
  amounts_.assign(lp.point().begin(), lp.point().end());
  if (flipped_) amounts_[*flipped_] = most_amount - amounts_[*flipped_];
  std::fill(values_.begin(), values_.end(), 0);
  for (std::size_t j = 0; j < columns_.size(); ++j) {
    amounts_[j] *= columns_[j].sign;
    if (amounts_[j] == 0) continue;
    const double* factors = columns_[j].factors;
    for (std::size_t r = 0; r < rows_; ++r)
      values_[r] += amounts_[j] * factors[r];
  }
}

// Adds rows that are missed, the worst first, until none is.
bool Feasible::work_off(Simplex& lp, std::uint64_t& used) {
  for (;;) {
    if (!lp.solve()) {
      note_proof(lp, used);
      return false;
    }
    values_at(lp);
    double worst = simplex_tolerance * 4;
    std::optional<std::uint32_t> missed;
    for (const std::uint32_t r : claims_.all) {
      if (least_[r] - values_[r] <= worst) continue;
      worst = least_[r] - values_[r];
      missed = r;
    }
    std::optional<std::size_t> over;
    for (std::size_t j = 0; j < amounts_.size(); ++j) {
      if (lp.point()[j] - most_amount <= worst) continue;
      worst = lp.point()[j] - most_amount;
      over = j;
    }
    if (over) {
      std::vector<double> factors(columns_.size(), 0);
      factors[*over] = -1;
      lp.add(factors, -most_amount, static_cast<int>(rows_ + *over));
    } else if (missed) {
      add_row(lp, *missed);
    } else {
      return true;
    }
  }
}

// The first claim of which no row is met, of those with fewest rows; empty: all are met.
std::span<const std::uint32_t> Feasible::unmet() const {
  for (const std::size_t i : by_length_) {
    const auto& some = claims_.some[i];
    if (std::none_of(some.begin(), some.end(),
                     [&](std::uint32_t r) { return values_[r] >= least_[r] - 4 * simplex_tolerance; }))
      return some;
  }
  return {};
}

// Rows of a claim that the unknowns can meet, without those that ask more than another one does. What of all
// others could help is noted: a row's own proof, or where it exceeds the row that stands for it.
std::vector<std::uint32_t> Feasible::worth_trying(std::span<const std::uint32_t> some) {
  std::vector<std::uint32_t> out;
  const auto implies = [&](std::uint32_t harder, std::uint32_t easier) {
    if (least_[harder] < least_[easier]) return false;
    for (std::size_t j = 0; j < columns_.size(); ++j) {
      if (factor(j, harder) > factor(j, easier)) return false;
    }
    return true;
  };
  const auto stands_for = [&](std::uint32_t easier, std::uint32_t harder) {
    if (room_ <= 0) return;
    const auto e = claims_.row(easier), h = claims_.row(harder);
    for (std::size_t c = 0; c < claims_.columns; ++c) {
      if (h[c] - e[c] > nothing) helps_[2 * c] = 1;
      if (e[c] - h[c] > nothing) helps_[2 * c + 1] = 1;
    }
  };
  for (const std::uint32_t r : some) {
    if (potential(r) < least_[r]) {
      note_row(r);
      continue;
    }
    const auto easier = std::find_if(out.begin(), out.end(), [&](std::uint32_t o) { return implies(r, o); });
    if (easier != out.end()) {
      stands_for(*easier, r);
      continue;
    }
    std::erase_if(out, [&](std::uint32_t o) {
      if (!implies(o, r)) return false;
      stands_for(r, o);
      return true;
    });
    out.push_back(r);
  }
  return out;
}

bool Feasible::branch(const Simplex& lp, std::span<const std::uint32_t> some, unsigned depth,
                      std::uint64_t& used) {
  for (const std::uint32_t r : worth_trying(some)) {
    Simplex tried = lp;
    add_row(tried, r);
    branch_of_[r] = bit(depth);
    std::uint64_t used_below = 0;
    const bool met = settle(tried, depth + 1, used_below);
    branch_of_[r] = 0;
    if (met) return true;
    // What failed did not need this choice: it would fail with every other one.
    if ((used_below & bit(depth)) == 0) {
      used = used_below;
      return false;
    }
    used |= depth < 63 ? used_below & ~bit(depth) : used_below;
  }
  return false;
}

bool Feasible::finish(const Simplex& lp) {
  if (!seek_extreme_) return true;
  if (lp.cost() < best_) {
    best_ = lp.cost();
    best_amounts_ = amounts_;
  }
  return false;
}

bool Feasible::settle(Simplex& lp, unsigned depth, std::uint64_t& used) {
  if (!work_off(lp, used)) return false;
  if (seek_extreme_) {
    used = every_depth;
    if (lp.cost() >= best_) return false;
  }
  const auto some = unmet();
  return some.empty() ? finish(lp) : branch(lp, some, depth, used);
}

bool Feasible::possible(std::span<const Unknown> unknowns, int room) {
  begin(unknowns, room);
  if (hopeless()) return false;
  Simplex lp(costs_);
  std::uint64_t used = 0;
  return settle(lp, 0, used);
}

std::optional<double> Feasible::extreme(std::span<const Unknown> unknowns, std::size_t which, bool largest) {
  begin(unknowns, 0);
  if (hopeless()) return std::nullopt;
  for (double& cost : costs_)
    cost *= 1e-9;
  costs_[which] = 1;
  seek_extreme_ = true;
  if (largest) flipped_ = which;
  best_ = std::numeric_limits<double>::infinity();
  Simplex lp(costs_);
  std::uint64_t used = 0;
  settle(lp, 0, used);
  if (best_ == std::numeric_limits<double>::infinity()) return std::nullopt;
  amounts_ = best_amounts_;
  return std::clamp(largest ? most_amount - best_ : best_, 0.0, most_amount);
}

} // namespace nutward::level
