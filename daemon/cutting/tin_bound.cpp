#include "cutting/tin_bound.hpp"

#include "cutting/singles.hpp"

#include <algorithm>
#include <cmath>
#include <tuple>

namespace nutward::cutting {

namespace {

constexpr int grid = 16; // thresholds tried with each other
constexpr int most_thresholds = 40;
constexpr int weights = 12; // lines from length alone to number alone

// Prices without their scale: weight·size + (1 − weight)·mean for sizes from `from` to `to`, what `to`
// costs beyond.
struct Prices {
  double weight = 1, mean = 0, from = 0, to = 0;

  double of(double sizes, double frets) const { return weight * sizes + (1 - weight) * mean * frets; }
  // The most that frets are worth in a room: both length and number are greatest where most go in.
  double most(double room) const {
    const double frets = std::floor(room / from + 1e-9);
    return of(std::min(room, frets * to), frets);
  }
};

// The slots from some threshold on, and those of them that single pieces serve at best.
struct Share {
  double sizes = 0, frets = 0;
  double served_sizes = 0, served_frets = 0;
  double from = 0;
};

// Whatever the raw ends.
Interval widest(const Problem& p, std::size_t slot, bool dressed) {
  Interval out = interval(p, slot, 0, dressed);
  for (const int raw : {1, 2}) {
    const Interval other = interval(p, slot, raw, dressed);
    out = {std::min(out.from, other.from), std::max(out.to, other.to)};
  }
  return out;
}

// Intervals of the slots, the heaviest first, widened until neither bound rises along that order.
std::vector<Interval> widened(const Problem& p, const std::vector<std::size_t>& order, bool dressed) {
  std::vector<Interval> in;
  in.reserve(order.size());
  for (const std::size_t s : order)
    in.push_back(widest(p, s, dressed));
  for (std::size_t i = 1; i < in.size(); ++i) {
    in[i].from = std::min(in[i].from, in[i - 1].from);
    in[in.size() - 1 - i].to = std::max(in[in.size() - 1 - i].to, in[in.size() - i].to);
  }
  return in;
}

// Heaviest slot first, each takes the longest piece of its interval: for slots from any threshold on, and
// prices that rise with the size, single pieces can serve no set that is worth more.
std::vector<Share> shares(const Problem& p, std::span<const std::size_t> slots,
                          std::span<const std::size_t> singles) {
  const bool dressed = any_rounded(p, slots);
  const std::vector<std::size_t> order = by_size(p, slots);
  const std::vector<Interval> in = widened(p, order, dressed);
  std::vector<Length> worths; // ascending
  for (const std::size_t i : singles)
    worths.push_back(worth(p, i, dressed));
  std::sort(worths.begin(), worths.end());
  std::vector<Share> out;
  Share sum;
  for (std::size_t i = 0; i < order.size(); ++i) {
    const auto size = static_cast<double>(size_of(p, order[i]).nm);
    sum.sizes += size;
    ++sum.frets;
    while (!worths.empty() && worths.back() > in[i].to)
      worths.pop_back();
    if (!worths.empty() && worths.back() >= in[i].from) {
      worths.pop_back();
      sum.served_sizes += size;
      ++sum.served_frets;
    }
    sum.from = size;
    if (i + 1 == order.size() || size_of(p, order[i + 1]) < size_of(p, order[i])) out.push_back(sum);
  }
  return out;
}

// The most that the last fret of several is shorter than its cut, from a piece with one or two raw ends.
std::int64_t most_saved(const Problem& p, std::span<const std::size_t> slots, int raw) {
  Piece piece;
  piece.facts.raw_ends = raw;
  std::int64_t out = 0;
  for (const std::size_t s : slots)
    out = std::max(out, (p.slots[s].need.cut - shortest_last(p, piece, s)).nm);
  return out;
}

// What a long piece can serve, as room.
std::vector<double> rooms_of_ends(const Problem& p, std::span<const std::size_t> slots,
                                  std::span<const std::size_t> ends) {
  const std::int64_t saved[] = {most_saved(p, slots, 1), most_saved(p, slots, 2)};
  std::vector<double> out;
  for (const std::size_t i : ends) {
    const bool raw = p.pieces[i].facts.raw_ends == 2 || p.pieces[i].flat_ends > 0;
    out.push_back(static_cast<double>(room(p, p.pieces[i]).nm + saved[raw ? 1 : 0]));
  }
  return out;
}

// The gain that a length of wire makes at best, where frets are `dearer` than their price and it costs what
// is taken.
double gain(const Problem& p, const Stock& stock, const Prices& y, double dearer) {
  const auto all = static_cast<double>(room(p, stock).nm);
  const double near = stock.flat_ends == 2 ? static_cast<double>(p.flat_end.nm) : 0;
  double out = dearer * y.most(all) - static_cast<double>(stock.length.nm); // nothing kept
  const double kept = all - static_cast<double>((p.least_useful + p.settings.nip_loss).nm);
  const double frets = std::floor(kept / y.from + 1e-9);
  const double number = dearer * (1 - y.weight) * y.mean,
               length = dearer * y.weight - 1; // worth of one, and of 1 nm
  if (frets < 1) return std::max(0.0, out);
  // Straight in the number of frets while they are all short, or all long; so its ends and its bend are
  // enough.
  for (const double n : {1.0, std::clamp(std::floor(kept / y.to), 1.0, frets),
                         std::clamp(std::ceil(kept / y.to), 1.0, frets), frets}) {
    const double sizes = length > 0 ? std::min(kept, n * y.to) : n * y.from;
    out = std::max(out, number * n + length * sizes - near);
  }
  return std::max(0.0, out);
}

class Bounds {
public:
  Bounds(const Problem& p, std::span<const std::size_t> slots, const Sorted& pieces,
         const std::vector<int>& stock)
      : p_(p), stock_(stock), shares_(shares(p, slots, pieces.singles)),
        ends_(rooms_of_ends(p, slots, pieces.ends)) {
    any_ = std::any_of(stock.begin(), stock.end(), [](int n) { return n > 0; });
  }

  WireBound best;

  // First the sticks to open, then what is taken of so many: from the best of a grid each number is moved
  // to where the bound is best, one after another.
  void search(std::int64_t sticks) {
    for (const bool only : {true, false}) {
      sticks_only_ = only;
      if (!only) best.sticks = std::max(best.sticks, sticks);
      try_grid();
      for (int turn = 0; turn < 2; ++turn) {
        try_all(weight_, weights);
        try_all(from_, last());
        try_all(to_, last());
      }
    }
  }

private:
  // A thousandth of a millimetre is more than rounding could add.
  static std::int64_t down(double nm) { return std::max<std::int64_t>(0, std::llround(nm) - 1000); }

  int last() const { return static_cast<int>(shares_.size()) - 1; }

  void try_grid() {
    std::tuple<double, int, int> most{-1, last(), 0};
    weight_ = 0;
    const int step = std::max(1, last() / grid);
    for (from_ = last(); from_ >= 0; from_ -= step)
      for (to_ = 0; to_ <= from_; to_ += step)
        most = std::max(most, std::tuple(evaluate(), from_, to_));
    std::tie(std::ignore, from_, to_) = most;
  }

  // Some values about evenly spread, and the one it has.
  void try_all(int& which, int highest) {
    int best_value = which;
    double most = evaluate();
    const int step = std::max(1, highest / most_thresholds);
    for (int v = highest; v > -step; v -= step) {
      which = v > 0 ? v : 0;
      if (to_ > from_) continue;
      const double found = evaluate();
      if (found > most) best_value = which;
      most = std::max(most, found);
    }
    which = best_value;
  }

  double evaluate() {
    const Share& low = shares_[static_cast<std::size_t>(from_)];
    const Share& high = shares_[static_cast<std::size_t>(to_)];
    Prices y{1 - static_cast<double>(weight_) / weights, low.sizes / low.frets, low.from, high.from};
    const double beyond = high.frets - high.served_frets;
    const double sizes =
        (low.sizes - low.served_sizes) - (high.sizes - high.served_sizes) + beyond * high.from;
    double need = y.of(sizes, low.frets - low.served_frets);
    const double one = y.of(y.to, 1); // goes in whatever its cut is
    for (const double room : ends_)
      need -= std::max(y.most(room), one);
    if (need <= 0) return 0;
    if (y.weight == 1) best.sizes = std::max(best.sizes, down(need));
    if (!any_) return need;
    if (sticks_only_) return sticks_for(y, need);
    const double taken = least_taken(y, need);
    best.taken = std::max(best.taken, down(taken));
    return taken;
  }

  // The best over how dear the frets are: a concave function of that.
  double least_taken(const Prices& y, double need) const {
    double low = 0.8, high = 3;
    for (int i = 0; i < 24; ++i) {
      const double a = low + (high - low) * 0.4, b = low + (high - low) * 0.6;
      if (lagrange(y, need, a) < lagrange(y, need, b))
        low = a;
      else
        high = b;
    }
    return lagrange(y, need, (low + high) / 2);
  }

  // At most best.sticks sticks are opened, those that gain most; of other wire there is what there is.
  double lagrange(const Prices& y, double need, double dearer) const {
    double out = need * dearer;
    std::vector<std::pair<double, int>> gains;
    for (std::size_t i = 0; i < stock_.size(); ++i) {
      if (stock_[i] == 0) continue;
      const double g = gain(p_, p_.stock[i], y, dearer);
      if (p_.stock[i].kind == StockKind::stick)
        gains.emplace_back(g, stock_[i]);
      else
        out -= g * stock_[i];
    }
    std::sort(gains.rbegin(), gains.rend());
    std::int64_t left = best.sticks;
    for (const auto& [g, count] : gains) {
      const std::int64_t n = std::min<std::int64_t>(left, count);
      out -= g * static_cast<double>(n);
      left -= n;
    }
    return out;
  }

  // A fraction of the last one tells which prices are better.
  double sticks_for(const Prices& y, double need) {
    std::vector<std::pair<double, int>> by_worth;
    for (std::size_t i = 0; i < stock_.size(); ++i) {
      const double most = y.most(static_cast<double>(room(p_, p_.stock[i]).nm));
      if (p_.stock[i].kind != StockKind::stick)
        need -= most * stock_[i];
      else if (stock_[i] > 0 && most > 0)
        by_worth.emplace_back(most, stock_[i]);
    }
    std::sort(by_worth.rbegin(), by_worth.rend());
    double out = 0;
    for (const auto& [most, count] : by_worth) {
      if (need <= 1000) break;
      const double n = std::min<double>(count, (need - 1000) / most);
      out += n;
      need -= n * most;
    }
    best.sticks = std::max(best.sticks, static_cast<std::int64_t>(std::ceil(out - 1e-9)));
    return out;
  }

  const Problem& p_;
  const std::vector<int>& stock_;
  std::vector<Share> shares_;
  std::vector<double> ends_;
  bool any_ = false;
  int from_ = 0, to_ = 0, weight_ = 0; // shares_[from_] and [to_], to_ ≤ from_
                                       // (longest first); of `weights`
  bool sticks_only_ = true;
};

} // namespace

WireBound least_new_wire(const Problem& p, std::span<const std::size_t> slots, const Sorted& pieces,
                         const std::vector<int>& stock, std::int64_t sticks) {
  if (slots.empty()) return {};
  Bounds bounds(p, slots, pieces, stock);
  bounds.search(sticks);
  return bounds.best;
}

} // namespace nutward::cutting
