#include "cutting/dive.hpp"

#include "cutting/bounds.hpp"

#include <algorithm>
#include <cmath>

namespace nutward::cutting {

namespace {

constexpr int most_discrepancies = 4;
constexpr int most_dives = 400;

class Dive {
public:
  Dive(const Task& task, Columns& columns, std::int64_t sticks, Chance& chance, Meter& meter)
      : task_(task), columns_(columns), sticks_(sticks), chance_(chance), meter_(meter) {
    for (const Lot& lot : task.lots)
      lots_.push_back(lot.count);
    for (const Wire& wire : task.wires)
      wires_.push_back(wire.count);
  }

  std::optional<Packing> found;

  // Fixes patterns of `relaxed` and goes on with what remains. True once found.
  bool go(const Relaxed& relaxed, int discrepancies) {
    const std::size_t before = fixed_.size();
    fix_whole(relaxed);
    if (rest_packs()) return true;
    if (fixed_.size() > before) {
      const bool done = deeper(discrepancies);
      unfix(before);
      return done;
    }
    int tried = 0;
    for (const Pattern& pattern : relaxed.patterns) {
      if (tried > discrepancies || meter_.over()) break;
      if (!can_fix(pattern)) continue;
      fix(pattern);
      if (deeper(discrepancies - tried)) return true;
      unfix(before);
      ++tried;
    }
    return false;
  }

private:
  bool can_fix(const Pattern& pattern) const {
    if (wires_[pattern.wire] == 0) return false;
    for (std::size_t i = 0; i < lots_.size(); ++i)
      if (pattern.counts[i] > lots_[i]) return false;
    return true;
  }
  void change(const Pattern& pattern, int by) {
    wires_[pattern.wire] -= by;
    for (std::size_t i = 0; i < lots_.size(); ++i)
      lots_[i] -= by * pattern.counts[i];
  }
  void fix(const Pattern& pattern) {
    change(pattern, 1);
    fixed_.push_back(pattern);
  }
  void unfix(std::size_t down_to) {
    while (fixed_.size() > down_to) {
      change(fixed_.back(), -1);
      fixed_.pop_back();
    }
  }

  // What is used a whole number of times is fixed as it is.
  void fix_whole(const Relaxed& relaxed) {
    for (const Pattern& pattern : relaxed.patterns)
      for (int n = static_cast<int>(std::floor(pattern.uses + 1e-3)); n > 0 && can_fix(pattern); --n)
        fix(pattern);
  }

  bool deeper(int discrepancies) {
    if (meter_.over()) return false;
    if (static_cast<std::int64_t>(fixed_.size()) > sticks_) return false;
    const Relaxed rest = columns_.solve(lots_, wires_, meter_);
    if (static_cast<std::int64_t>(fixed_.size()) + rest.bound > sticks_ || rest.objective < 0) return false;
    return go(rest, discrepancies);
  }

  // Tries the rest; a success is all there is to find.
  bool rest_packs() {
    Task rest{task_.problem, {}, task_.wires};
    std::vector<int> lot_of;
    for (std::size_t i = 0; i < lots_.size(); ++i) {
      if (lots_[i] == 0) continue;
      rest.lots.push_back({task_.lots[i].size, lots_[i]});
      lot_of.push_back(static_cast<int>(i));
    }
    for (std::size_t w = 0; w < wires_.size(); ++w)
      rest.wires[w].count = wires_[w];
    const PackBound bound{sticks_ - static_cast<std::int64_t>(fixed_.size()), INT64_MAX};
    Packing packed = pack(rest, bound, 6, chance_, meter_);
    if (!reached(packed, bound)) return false;
    for (Bin& bin : packed.bins)
      for (int& lot : bin.lots)
        lot = lot_of[static_cast<std::size_t>(lot)];
    add_fixed(packed);
    packed.price = price_of(task_, packed);
    found = std::move(packed);
    return true;
  }

  void add_fixed(Packing& packed) const {
    for (const Pattern& pattern : fixed_) {
      Bin bin{pattern.wire, {}};
      for (std::size_t i = 0; i < pattern.counts.size(); ++i)
        bin.lots.insert(bin.lots.end(), static_cast<std::size_t>(pattern.counts[i]), static_cast<int>(i));
      packed.bins.push_back(std::move(bin));
    }
  }

  const Task& task_;
  Columns& columns_;
  std::int64_t sticks_ = 0;
  Chance& chance_;
  Meter& meter_;
  std::vector<int> lots_, wires_;
  std::vector<Pattern> fixed_;
};

// After the plain dives: the same solution with nothing whole fixed, and another pattern first.
Relaxed shuffled(Relaxed root, Chance& chance) {
  for (std::size_t i = 0; i < root.patterns.size(); ++i)
    std::swap(root.patterns[i], root.patterns[i + chance() % (root.patterns.size() - i)]);
  for (Pattern& pattern : root.patterns)
    pattern.uses = std::min(pattern.uses, 0.99);
  return root;
}

} // namespace

std::optional<Packing> dive(const Task& task, Columns& columns, const Relaxed& root, std::int64_t sticks,
                            Chance& chance, Meter& meter) {
  for (int i = 0; i < most_dives && !meter.over(); ++i) {
    Dive search(task, columns, sticks, chance, meter);
    search.go(i <= most_discrepancies ? root : shuffled(root, chance), std::min(i, most_discrepancies));
    if (search.found) return std::move(search.found);
  }
  return std::nullopt;
}

} // namespace nutward::cutting
