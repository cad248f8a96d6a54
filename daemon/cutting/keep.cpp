#include "cutting/keep.hpp"

#include <algorithm>

namespace nutward::cutting {

namespace {

constexpr int attempts = 12; // for one number of rests

class Keeping {
public:
  Keeping(const Task& task, const Packing& packing) : task_(task), used_(task.wires.size(), 0) {
    std::int64_t sticks = packing.price.sticks;
    for (std::size_t w = 0; w < used_.size(); ++w) {
      if (!is_stick(w)) continue;
      used_[w] = static_cast<int>(std::min<std::int64_t>(sticks, task.wires[w].count));
      spare_ += used_[w] * task.wires[w].room;
      sticks -= used_[w];
    }
    for (const Bin& bin : packing.bins) {
      if (is_stick(bin.wire))
        spare_ -= sizes_of(task, bin);
      else
        ++used_[bin.wire];
    }
  }

  // How many rests there could be at most.
  int most() const {
    int out = 0;
    std::int64_t left = spare_;
    for (std::size_t w = 0; w < used_.size(); ++w) {
      if (!may_keep(w)) continue;
      const auto n = static_cast<int>(std::min<std::int64_t>(used_[w], left / rest()));
      out += n;
      left -= n * rest();
    }
    return out;
  }

  // Wires in which `rests` sticks, the longest, are used, and have so much less room.
  Task with(int rests) {
    Task out{task_.problem, task_.lots, {}};
    from_.clear();
    for (std::size_t w = 0; w < used_.size(); ++w) {
      const int some = may_keep(w) ? std::min(rests, used_[w]) : 0;
      rests -= some;
      add(out, w, used_[w] - some, 0);
      add(out, w, some, rest());
    }
    return out;
  }
  Packing as_before(Packing packing) const {
    for (Bin& bin : packing.bins)
      bin.wire = from_[bin.wire];
    return packing;
  }

private:
  std::int64_t rest() const { return (task_.problem.least_useful + task_.problem.settings.nip_loss).nm; }
  bool is_stick(std::size_t wire) const {
    return task_.problem.stock[task_.wires[wire].stock].kind == StockKind::stick;
  }
  bool may_keep(std::size_t wire) const { return is_stick(wire) && task_.wires[wire].room > 2 * rest(); }
  void add(Task& out, std::size_t wire, int count, std::int64_t less) {
    if (count == 0) return;
    out.wires.push_back(task_.wires[wire]);
    out.wires.back().count = count;
    out.wires.back().room -= less;
    from_.push_back(wire);
  }

  const Task& task_;
  std::vector<int> used_; // by wire
  std::int64_t spare_ = 0;
  std::vector<std::size_t> from_; // the task's wire, by that of with()
};

} // namespace

Packing keep_more(const Task& task, Packing best, Chance& chance, Meter& meter) {
  if (best.unpacked > 0 || task.problem.least_useful.nm == 0) return best;
  Keeping keeping(task, best);
  for (int rests = keeping.most(); rests > 0 && !meter.over(); --rests) {
    const Task part = keeping.with(rests);
    Meter some = meter.part(0.3);
    Packing found = pack(part, {best.price.sticks, 0}, attempts, chance, some);
    meter.spend(some.steps() * Meter::per_step);
    if (found.unpacked > 0) continue;
    found = keeping.as_before(std::move(found));
    if (better(found, best)) best = std::move(found);
    break;
  }
  return best;
}

} // namespace nutward::cutting
