#include "agenda/fill.hpp"

#include <algorithm>

namespace nutward::agenda {

namespace {

class Tighten {
public:
  Tighten(Schedule& s, int unit, Chance& chance, Meter& meter)
      : s_(s), unit_(unit), chance_(chance), meter_(meter), first_(s.value()),
        most_finish_(first_.finish_s + first_.finish_s / most_part) {}

  // As long as its end is not earlier, finish times may drift; the best is gone back to.
  void run(Second least) {
    fill_anew(least);
    Kept best = kept(s_);
    Second best_end = s_.end(s_.last_on(unit_));
    while (best_end > least && !meter_.over()) {
      const int last = s_.last_on(unit_);
      trace(s_, last, chance_, path_);
      find_blocks(path_, blocks_);
      meter_.spend(100 + 15 * static_cast<std::int64_t>(path_.size()));
      if (blocks_.empty()) break;
      choose();
      const std::int64_t before = s_.recomputed(), end = s_.end(last);
      const auto value = s_.try_moves(moves_);
      meter_.spend(350 + 45 * (s_.recomputed() - before));
      if (!value) continue;
      const Second now = s_.end(s_.last_on(unit_));
      if (now > end || !no_worse(*value)) {
        s_.take_back();
        continue;
      }
      s_.keep();
      if (now > best_end || (now == best_end && *value >= best.value)) continue;
      best = kept(s_);
      best_end = now;
    }
    s_.assign(best.order, best.modes);
  }

private:
  static constexpr std::int64_t most_part = 200;

  bool no_worse(const Value& v) const {
    return v.unplaced <= first_.unplaced && v.overrun_s <= first_.overrun_s && v.late_s <= first_.late_s &&
           v.worst_s <= first_.worst_s && v.busy <= first_.busy && v.finish_s <= most_finish_;
  }

  void fill_anew(Second least) {
    const Second end = s_.end(s_.last_on(unit_));
    if (end <= least) return;
    const auto other = filled(s_, unit_, meter_);
    if (!other || !no_worse(other->value)) return;
    const Kept mine = kept(s_);
    s_.assign(other->order, other->modes);
    if (s_.end(s_.last_on(unit_)) >= end) s_.assign(mine.order, mine.modes);
  }

  // Two of a block change places: one of the first blocks, which are the last in time.
  void choose() {
    moves_.clear();
    std::size_t k = 0;
    while (k + 1 < blocks_.size() && chance_.below(3) == 0)
      ++k;
    const Block& b = blocks_[k];
    const auto length = static_cast<std::uint32_t>(b.last - b.first + 1);
    const std::uint32_t i = chance_.below(length - 1);
    const std::uint32_t j = chance_.below(2) == 0 ? i + 1 : i + 1 + chance_.below(length - 1 - i);
    const int later = path_[b.first + i].op, earlier = path_[b.first + j].op;
    if (chance_.below(2) == 0)
      add_with_followers(s_, {later, s_.mode(later), earlier, true}, moves_);
    else
      add_with_followers(s_, {earlier, s_.mode(earlier), later, false}, moves_);
  }

  Schedule& s_;
  int unit_;
  Chance& chance_;
  Meter& meter_;
  Value first_;
  std::int64_t most_finish_;
  std::vector<Link> path_;
  std::vector<Block> blocks_;
  std::vector<Move> moves_;
};

} // namespace

void tighten(Schedule& schedule, int unit, Second least, Chance& chance, Meter& meter) {
  if (schedule.last_on(unit) >= 0) Tighten(schedule, unit, chance, meter).run(least);
}

} // namespace nutward::agenda
