#include "cutting/rest_columns.hpp"

#include "cutting/knapsack.hpp"
#include "cutting/master.hpp"

#include <algorithm>
#include <cmath>
#include <deque>
#include <map>

namespace nutward::cutting {

namespace {

constexpr std::int64_t most_units = 6'000; // of the longest room
constexpr std::size_t most_rooms = 150;    // different long pieces; beyond that they are rounded up further
constexpr std::int64_t a_stick = 1'000'000'000; // its price where sticks are counted; what is taken is
                                                // priced in nm

// Lengths of new wire or of pieces that are alike to the tables.
struct Kind {
  std::int64_t room = 0; // units
  int count = 0;
  std::int64_t length = 0, near = 0,
               kept = -1; // of a stick: nm, nm, units that may be filled if the
                          // rest is kept
  bool stick = false;
};

// What one length is worth at best, and by filling how much of it.
struct Best {
  std::int64_t gain = 0, cost = 0, filled = 0;
};

class Relaxation {
public:
  Relaxation(const Problem& p, const Rest& rest, const std::vector<int>& stock) : p_(p) {
    std::int64_t most = rest.longest;
    for (const std::int64_t end : rest.ends)
      most = std::max(most, end);
    for (std::size_t i = 0; i < stock.size(); ++i)
      if (stock[i] > 0) most = std::max(most, room(p, p.stock[i]).nm);
    unit_ = most / most_units + 1;
    std::map<std::int64_t, int> lots;
    for (const std::int64_t size : rest.sizes)
      ++lots[std::max<std::int64_t>(1, size / unit_)];
    for (const auto& [size, count] : lots) {
      sizes_.push_back(size);
      counts_.push_back(count);
    }
    add_ends(rest.ends, rest.longest);
    for (std::size_t i = 0; i < stock.size(); ++i)
      if (stock[i] > 0) add_stick(p.stock[i], stock[i]);
  }

  // Sticks at least, or nanometres taken from at most so many sticks.
  std::int64_t solve(bool count_sticks, std::int64_t sticks, Meter& meter) {
    counting_ = count_sticks;
    sticks_ = sticks;
    std::vector<double> limits;
    for (const Kind& k : kinds_)
      limits.push_back(k.count);
    if (!counting_) limits.push_back(static_cast<double>(sticks));
    Master master({counts_.begin(), counts_.end()}, limits,
                  counting_ ? 1 : static_cast<double>(sizes_.back() * unit_) * 3e-6);
    std::deque<Column> columns;
    std::int64_t most = 0;
    for (const Kind& k : kinds_)
      most = std::max(most, k.room);
    // As many as go in: in the place of a fret of the rest may stand a longer one that the tin serves.
    Knapsack knapsack(sizes_, std::vector<int>(sizes_.size(), 1'000), most);
    std::int64_t bound = 0;
    while (master.improve(meter)) {
      const std::vector<std::int64_t> values = whole(master.prices());
      knapsack.solve(values, meter);
      bound = std::max(bound, prove(values, knapsack));
      if (meter.over() || !add(master, knapsack, columns)) break;
    }
    return counting_ ? (bound + a_stick - 1) / a_stick : bound;
  }

private:
  std::int64_t up(std::int64_t nm) const { return (nm + unit_ - 1) / unit_; }

  void add_ends(const std::vector<std::int64_t>& ends, std::int64_t longest) {
    std::map<std::int64_t, int> rooms;
    for (std::int64_t coarse = 1;; coarse *= 2) {
      rooms.clear();
      for (const std::int64_t end : ends)
        ++rooms[(up(std::max(end, longest)) + coarse - 1) / coarse * coarse];
      if (rooms.size() <= most_rooms) break;
    }
    for (const auto& [units, count] : rooms)
      kinds_.push_back({units, count, 0, 0, -1, false});
  }
  void add_stick(const Stock& stock, int count) {
    const std::int64_t all = room(p_, stock).nm;
    const std::int64_t kept = all - (p_.least_useful + p_.settings.nip_loss).nm;
    kinds_.push_back({up(all), count, stock.length.nm, stock.flat_ends == 2 ? p_.flat_end.nm : 0,
                      kept > 0 ? up(kept) : -1, true});
  }

  double scale() const {
    return counting_ ? 1 / static_cast<double>(a_stick) : 1e-6;
  } // to the master's sticks or mm

  std::vector<std::int64_t> whole(const std::vector<double>& prices) const {
    std::vector<std::int64_t> out;
    std::int64_t highest = 0; // a longer fret is worth no less: the prices must
                              // rise for the bound to hold
    for (std::size_t i = 0; i < sizes_.size(); ++i) {
      highest = std::max<std::int64_t>(highest, std::llround(prices[i] / scale()));
      out.push_back(highest);
    }
    return out;
  }

  Best best(const Kind& k, const Knapsack& knapsack) const {
    Best out{knapsack.value(k.room), 0, k.room};
    if (!k.stick) return out;
    out.cost = counting_ ? a_stick : k.length;
    out.gain -= out.cost;
    for (std::int64_t units = 1; !counting_ && units <= std::min(k.kept, k.room); ++units) {
      const std::int64_t cost = k.near + units * unit_;
      if (knapsack.value(units) - cost > out.gain) out = {knapsack.value(units) - cost, cost, units};
    }
    return out;
  }

  std::int64_t prove(const std::vector<std::int64_t>& values, const Knapsack& knapsack) const {
    std::int64_t out = 0;
    for (std::size_t i = 0; i < values.size(); ++i)
      out += values[i] * counts_[i];
    std::vector<std::pair<std::int64_t, int>> gains;
    for (const Kind& k : kinds_) {
      const std::int64_t gain = std::max<std::int64_t>(0, best(k, knapsack).gain);
      if (k.stick)
        gains.emplace_back(gain, k.count);
      else
        out -= gain * k.count;
    }
    std::sort(gains.rbegin(), gains.rend());
    std::int64_t left = counting_ ? INT64_MAX : sticks_;
    for (const auto& [gain, count] : gains) {
      const std::int64_t n = std::min<std::int64_t>(left, count);
      out -= gain * n;
      left -= n;
    }
    return out;
  }

  bool add(Master& master, const Knapsack& knapsack, std::deque<Column>& columns) const {
    bool added = false;
    for (std::size_t i = 0; i < kinds_.size(); ++i) {
      const Best found = best(kinds_[i], knapsack);
      double gain = static_cast<double>(found.gain) * scale() + master.prices()[sizes_.size() + i];
      if (kinds_[i].stick && !counting_) gain += master.prices().back();
      if (gain < 1e-6 || found.filled == 0) continue;
      Column column{static_cast<double>(found.cost) * scale(), {}};
      const std::vector<int> set = knapsack.set(found.filled);
      for (std::size_t k = 0; k < set.size(); ++k)
        if (set[k] > 0) column.entries.emplace_back(static_cast<int>(k), set[k]);
      column.entries.emplace_back(static_cast<int>(sizes_.size() + i), 1);
      if (kinds_[i].stick && !counting_)
        column.entries.emplace_back(static_cast<int>(sizes_.size() + kinds_.size()), 1);
      columns.push_back(std::move(column));
      master.add(columns.back());
      added = true;
    }
    return added;
  }

  const Problem& p_;
  std::int64_t unit_ = 1;
  std::vector<std::int64_t> sizes_; // units, ascending
  std::vector<int> counts_;
  std::vector<Kind> kinds_;
  bool counting_ = true;
  std::int64_t sticks_ = 0;
};

} // namespace

WireBound least_for_rest(const Problem& p, const Rest& rest, const std::vector<int>& stock,
                         std::int64_t sticks, Meter& meter) {
  for (std::size_t i = 0; i < stock.size(); ++i)
    if (stock[i] > 0 && p.stock[i].kind != StockKind::stick) return {};
  if (rest.sizes.empty() || std::all_of(stock.begin(), stock.end(), [](int n) { return n == 0; })) return {};
  Relaxation relaxation(p, rest, stock);
  Meter half = meter.part(0.5);
  WireBound out;
  out.sticks = std::max(sticks, relaxation.solve(true, 0, half));
  meter.spend(half.steps() * Meter::per_step);
  out.taken = std::max<std::int64_t>(0, relaxation.solve(false, out.sticks, meter));
  return out;
}

} // namespace nutward::cutting
