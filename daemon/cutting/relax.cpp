#include "cutting/relax.hpp"

#include <algorithm>
#include <cmath>

namespace nutward::cutting {

namespace {

constexpr std::size_t end_rows = 8;           // long pieces of about one length share a row
constexpr std::int64_t stick = 1'000'000'000; // in the whole numbers of prices
constexpr int most_rounds = 150;
constexpr std::int64_t most_frets = 30; // of a room whose fillings are looked at; of longer ones only density

std::int64_t longest_room(const Problem& p, std::span<const std::size_t> slots, const Sorted& pieces,
                          const std::vector<int>& stock) {
  Length size{}, out{};
  for (const std::size_t s : slots)
    size = std::max(size, size_of(p, s));
  for (const std::size_t i : pieces.ends)
    out = std::max(out, room(p, p.pieces[i]));
  for (std::size_t i = 0; i < stock.size(); ++i)
    if (stock[i] > 0) out = std::max(out, room(p, p.stock[i]));
  return std::max<std::int64_t>(1, std::min(out, most_frets * size).nm);
}

std::vector<std::size_t> in_stock(const std::vector<int>& stock) {
  std::vector<std::size_t> out;
  for (std::size_t i = 0; i < stock.size(); ++i)
    if (stock[i] > 0) out.push_back(i);
  return out;
}

std::int64_t near_end(const Problem& p, const Stock& s) {
  return s.flat_ends == 2 ? p.flat_end.nm : 0;
}

} // namespace

Relaxation::Relaxation(const Problem& p, std::span<const std::size_t> slots, const Sorted& pieces,
                       const std::vector<int>& stock, const Aim& aim)
    : p_(p), aim_(aim), stock_(in_stock(stock)), ends_(pieces.ends),
      longest_(longest_room(p, slots, pieces, stock)),
      grades_(p, slots, longest_, aim.units, aim.knots, aim.rounding), fillings_(grades_, longest_),
      cover_(p, grades_.order, pieces.singles, aim.rounding),
      one_(aim.taken ? 1e6 : static_cast<double>(stick)), values_(grades_.all.size()) {
  for (const std::size_t i : stock_)
    counts_.push_back(stock[i]);
  std::stable_sort(ends_.begin(), ends_.end(),
                   [&](std::size_t a, std::size_t b) { return room(p, p.pieces[a]) < room(p, p.pieces[b]); });
}

// Rows: the knots, then limits: stock, one matching, one filling for each group of ends, sticks opened.
void Relaxation::begin() {
  std::vector<double> demands(grades_.knots()), limits;
  for (std::size_t g = 0; g < grades_.all.size(); ++g)
    grades_.spread(g, grades_.all[g].count, demands);
  for (const int n : counts_)
    limits.push_back(n);
  limits.insert(limits.end(), 1 + end_rows, 1);
  if (aim_.taken) limits.push_back(static_cast<double>(aim_.sticks));
  double more = 1e-6; // no two alike, or the simplex method may go round in circles
  for (auto* numbers : {&demands, &limits})
    for (double& number : *numbers)
      number += more *= 1.05;
  columns_.clear();
  // More than any fret costs: a stick of its own, twice.
  Length most{};
  for (const std::size_t i : stock_)
    most = std::max(most, std::min(p_.stock[i].length, 2 * Length{longest_}));
  master_ = std::make_unique<Master>(demands, limits, aim_.taken ? std::max(1.0, 2 * most.mm()) : 2.0);
}

void Relaxation::solve(const std::vector<double>& start, double enough, Meter& meter) {
  begin();
  best_.resize(grades_.knots());
  for (std::size_t k = 0; k < best_.size(); ++k) {
    const auto size = static_cast<double>(grades_.size_at(k));
    best_[k] = aim_.taken ? size / 1e6 : size / static_cast<double>(longest_);
    if (!start.empty()) best_[k] = start[grades_.order[grades_.position_at(k)]];
  }
  std::vector<double> y = best_;
  std::int64_t most = INT64_MIN;
  int stale = 0; // rounds without a better bound
  for (int round = 0; round < most_rounds; ++round) {
    const std::int64_t found = evaluate(y, meter);
    ++stale;
    if (found > most) {
      most = found;
      best_ = y;
      stale = 0;
    }
    if (!master_->improve(meter) || meter.over()) break;
    if (master_->objective() - in_master(most) < enough) break;
    const double step = stale < 2 ? 0.5 : 1;
    for (std::size_t k = 0; k < y.size(); ++k)
      y[k] = best_[k] + step * (std::max(0.0, master_->prices()[k]) - best_[k]);
  }
  const std::int64_t whole = aim_.taken ? most : (most + stick - 1) / stick;
  bound_ = most > 0 ? whole : 0;
}

std::vector<double> Relaxation::prices() const {
  std::vector<double> out(p_.slots.size());
  for (std::size_t i = 0; i < grades_.order.size(); ++i)
    out[grades_.order[i]] = grades_.price(best_, grades_.of[i]);
  return out;
}

void Relaxation::add(const std::vector<std::size_t>& grades, std::int64_t cost,
                     std::initializer_list<std::size_t> rows) {
  std::vector<double> at_knots(grades_.knots());
  for (const std::size_t g : grades)
    grades_.spread(g, 1, at_knots);
  Column column{in_master(cost), {}};
  for (std::size_t k = 0; k < at_knots.size(); ++k)
    if (at_knots[k] > 0) column.entries.emplace_back(static_cast<int>(k), at_knots[k]);
  for (const std::size_t row : rows)
    column.entries.emplace_back(static_cast<int>(grades_.knots() + row), 1.0);
  columns_.push_back(std::move(column));
  master_->add(columns_.back());
}

// The bound that these prices prove; what reaches it is added to the master.
std::int64_t Relaxation::evaluate(const std::vector<double>& y, Meter& meter) {
  std::int64_t out = 0;
  for (std::size_t g = 0; g < values_.size(); ++g) {
    values_[g] = std::max<std::int64_t>(0, std::llround(grades_.price(y, g) * one_));
    out += values_[g] * grades_.all[g].count;
  }
  fillings_.solve(values_, meter);
  return out - match(meter) - fill_ends(meter) - fill_stock();
}

// The heaviest set that single pieces serve: greedily, for such sets are independent sets of a matroid.
std::int64_t Relaxation::match(Meter& meter) {
  std::vector<std::size_t> by_value(grades_.order.size());
  for (std::size_t i = 0; i < by_value.size(); ++i)
    by_value[i] = i;
  const auto value = [&](std::size_t i) { return values_[grades_.of[i]]; };
  std::stable_sort(by_value.begin(), by_value.end(),
                   [&](std::size_t a, std::size_t b) { return value(a) > value(b); });
  cover_.clear();
  std::vector<std::size_t> taken;
  std::int64_t out = 0;
  for (const std::size_t i : by_value) {
    if (value(i) == 0) break;
    if (!cover_.take(i)) continue;
    out += value(i);
    taken.push_back(grades_.of[i]);
  }
  meter.spend(10'000 + static_cast<std::int64_t>(by_value.size()) * 100);
  add(taken, 0, {stock_.size()});
  return out;
}

std::int64_t Relaxation::fill_ends(Meter& meter) {
  std::int64_t out = 0;
  for (std::size_t row = 0; row < end_rows; ++row) {
    std::vector<std::size_t> grades;
    for (std::size_t k = row * ends_.size() / end_rows; k < (row + 1) * ends_.size() / end_rows; ++k) {
      const EndFilling filling = fill_end(p_, ends_[k], grades_, fillings_, values_);
      out += filling.value;
      grades.insert(grades.end(), filling.grades.begin(), filling.grades.end());
    }
    if (!grades.empty()) add(grades, 0, {stock_.size() + 1 + row});
  }
  meter.spend(static_cast<std::int64_t>(ends_.size() * values_.size()) * 2);
  return out;
}

// Sticks beyond those that may be opened gain nothing: the best do.
std::int64_t Relaxation::fill_stock() {
  std::int64_t out = 0;
  std::vector<std::pair<std::int64_t, int>> sticks;
  for (std::size_t row = 0; row < stock_.size(); ++row) {
    const bool dense = room(p_, p_.stock[stock_[row]]).nm > longest_;
    const std::int64_t gain = dense ? fill_long(row) : fill_stock(row);
    if (aim_.taken && p_.stock[stock_[row]].kind == StockKind::stick)
      sticks.emplace_back(gain, counts_[row]);
    else
      out += gain * counts_[row];
  }
  std::sort(sticks.rbegin(), sticks.rend());
  std::int64_t left = aim_.sticks;
  for (const auto& [gain, count] : sticks) {
    const std::int64_t n = std::min<std::int64_t>(left, count);
    out += gain * n;
    left -= n;
  }
  return out;
}

std::int64_t Relaxation::fill_stock(std::size_t row) {
  const Stock& stock = p_.stock[stock_[row]];
  const bool opened = stock.kind == StockKind::stick;
  const std::int64_t most = room(p_, stock).nm / grades_.unit;
  std::int64_t cost = opened ? stick : 0;
  if (aim_.taken) cost = stock.length.nm;
  std::vector<std::size_t> grades;
  fillings_.append(most, grades);
  if (aim_.taken && opened)
    add(grades, cost, {row, stock_.size() + 1 + end_rows});
  else
    add(grades, cost, {row});
  const std::int64_t gain = std::max<std::int64_t>(0, fillings_.value(most) - cost);
  return aim_.taken ? std::max(gain, keep_rest(row)) : gain;
}

// What remains is kept: the flat end before it and the frets are taken.
std::int64_t Relaxation::keep_rest(std::size_t row) {
  const Stock& stock = p_.stock[stock_[row]];
  const std::int64_t near = near_end(p_, stock);
  const std::int64_t most = (room(p_, stock) - p_.least_useful - p_.settings.nip_loss).nm / grades_.unit;
  std::int64_t best = 0, at = 0;
  for (std::int64_t filled = 1; filled <= most; ++filled) {
    const std::int64_t gain = fillings_.value(filled) - near - filled * grades_.unit;
    if (at > 0 && gain <= best) continue;
    best = gain;
    at = filled;
  }
  if (at == 0) return 0;
  std::vector<std::size_t> grades;
  fillings_.append(at, grades);
  if (stock.kind == StockKind::stick)
    add(grades, near + at * grades_.unit, {row, stock_.size() + 1 + end_rows});
  else
    add(grades, near + at * grades_.unit, {row});
  return std::max<std::int64_t>(0, best);
}

// Of a long one: as many of one size as go in, those that gain most for their length.
std::int64_t Relaxation::fill_long(std::size_t row) {
  const Stock& stock = p_.stock[stock_[row]];
  const std::int64_t most = room(p_, stock).nm / grades_.unit;
  const std::int64_t each = aim_.taken ? grades_.unit : 0; // what a unit costs, at least
  double best = 0;
  std::size_t densest = 0;
  for (std::size_t g = 0; g < values_.size(); ++g) {
    const double gain = static_cast<double>(values_[g] - each * grades_.all[g].size) /
                        static_cast<double>(grades_.all[g].size);
    if (gain <= best) continue;
    best = gain;
    densest = g;
  }
  const std::int64_t opened = stock.kind == StockKind::stick && !aim_.taken ? stick : 0;
  const std::int64_t n = std::min<std::int64_t>(most / grades_.all[densest].size, grades_.all[densest].count);
  const std::vector<std::size_t> grades(static_cast<std::size_t>(n), densest);
  const std::int64_t cost = opened + each * n * grades_.all[densest].size;
  if (aim_.taken && stock.kind == StockKind::stick)
    add(grades, cost, {row, stock_.size() + 1 + end_rows});
  else
    add(grades, cost, {row});
  const auto gain = static_cast<std::int64_t>(std::ceil(best * static_cast<double>(most) * (1 + 1e-12))) + 1;
  return std::max<std::int64_t>(0, gain - opened);
}

} // namespace nutward::cutting
