#include "agenda/search.hpp"

namespace nutward::agenda {

namespace {

std::size_t at(int i) {
  return static_cast<std::size_t>(i);
}

class Late {
public:
  Late(Schedule& s, const Value& bound, Chance& chance, Meter& meter)
      : s_(s), m_(s.model()), bound_(bound), chance_(chance), meter_(meter), best_(kept(s)) {
    for (const int j : m_.job_order)
      if (!m_.jobs[at(j)].ops.empty() && s_.position(m_.jobs[at(j)].ops.front()) >= 0) jobs_.push_back(j);
  }

  void run() {
    if (jobs_.empty()) return;
    std::vector<Value> before(history, s_.value());
    bool ahead = false; // better than best_, and not kept yet: copies are made only before it gets worse
    for (std::size_t n = 0; best_.value > bound_ && !meter_.over(); ++n) {
      const auto move = choose();
      if (!move) continue;
      const Value now = s_.value();
      const std::int64_t recomputed = s_.recomputed();
      if (ahead && chance_.below(64) == 0) save(ahead);
      const auto value = s_.try_move(*move);
      meter_.spend(350 + 45 * (s_.recomputed() - recomputed) + static_cast<std::int64_t>(m_.jobs.size()));
      if (!value) continue;
      Value& then = before[n % history];
      if (*value > now && *value > then) {
        s_.take_back();
        then = std::min(then, now);
        continue;
      }
      if (ahead && *value > now) { // leaves the best so far
        s_.take_back();
        save(ahead);
        s_.try_move(*move);
      }
      s_.keep();
      then = std::min(then, *value);
      ahead = ahead || *value < best_.value;
      if (*value <= bound_) save(ahead);
    }
    if (ahead) save(ahead);
    s_.assign(best_.order, best_.modes);
  }

private:
  static constexpr std::size_t history = 400;

  void save(bool& ahead) {
    if (s_.value() < best_.value) {
      best_ = kept(s_);
      meter_.spend(2 * static_cast<std::int64_t>(s_.order().size()));
    }
    ahead = false;
  }

  // Of a few jobs at random the one that costs most: lateness first, else whichever.
  int target() {
    int out = jobs_[chance_.below(static_cast<std::uint32_t>(jobs_.size()))];
    if (m_.goal == Goal::in_time && s_.value().late_s == 0) return out;
    for (int n = 0; n < 3; ++n) {
      const int j = jobs_[chance_.below(static_cast<std::uint32_t>(jobs_.size()))];
      if (cost(j) > cost(out)) out = j;
    }
    return out;
  }
  std::int64_t cost(int j) const {
    if (m_.goal == Goal::last_end) return s_.finish(j);
    return m_.jobs[at(j)].weight * std::max<Second>(0, s_.finish(j) - m_.jobs[at(j)].due);
  }

  std::optional<Move> choose() {
    trace(s_, target(), chance_, path_);
    find_blocks(path_, blocks_);
    meter_.spend(100 + 15 * static_cast<std::int64_t>(path_.size()));
    const bool swap = !blocks_.empty() && chance_.below(4) != 0;
    return swap ? within(blocks_[chance_.below(static_cast<std::uint32_t>(blocks_.size()))]) : other_mode();
  }

  // An op of a block before another one, or behind it; mostly a near one.
  Move within(const Block& b) {
    const auto length = static_cast<std::uint32_t>(b.last - b.first + 1);
    const std::uint32_t i = chance_.below(length);
    std::uint32_t k = chance_.below(2) == 0 ? i + 1 : i + 1 + chance_.below(length);
    if (k >= length) k = chance_.below(length);
    if (k == i) k = i + 1 < length ? i + 1 : i - 1;
    const int a = path_[b.first + i].op, c = path_[b.first + k].op;
    return k > i ? Move{a, s_.mode(a), c, true} : Move{a, s_.mode(a), c, false};
  }

  std::optional<Move> other_mode() {
    const Link& link = path_[chance_.below(static_cast<std::uint32_t>(path_.size()))];
    const auto modes = static_cast<std::uint32_t>(m_.ops[at(link.op)].modes.size());
    if (modes < 2) return std::nullopt;
    const auto mode = static_cast<int>(chance_.below(modes));
    if (mode == s_.mode(link.op)) return std::nullopt;
    return Move{link.op, mode, link.op, false};
  }

  Schedule& s_;
  const Model& m_;
  Value bound_;
  Chance& chance_;
  Meter& meter_;
  Kept best_;
  std::vector<int> jobs_;
  std::vector<Link> path_;
  std::vector<Block> blocks_;
};

} // namespace

void late_acceptance(Schedule& schedule, const Value& bound, Chance& chance, Meter& meter) {
  Late(schedule, bound, chance, meter).run();
}

} // namespace nutward::agenda
