#include "agenda/search.hpp"

#include <algorithm>

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
      const std::vector<Move>& moves = choose();
      if (moves.empty()) continue;
      const Value now = s_.value();
      Value& then = before[n % history];
      const Value limit = std::max(now, then);
      const auto value = attempt(moves, &limit);
      if (!value) {
        then = std::min(then, now);
        continue;
      }
      if (*value > now && *value > then) {
        s_.take_back();
        then = std::min(then, now);
        continue;
      }
      if (ahead && *value > now) { // leaves the best so far
        s_.take_back();
        save(ahead);
        attempt(moves, nullptr);
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
  static constexpr std::size_t history = 100;

  std::optional<Value> attempt(const std::vector<Move>& moves, const Value* limit) {
    const std::int64_t before = s_.recomputed();
    const auto value = s_.try_moves(moves, limit);
    meter_.spend(350 + 45 * (s_.recomputed() - before) + static_cast<std::int64_t>(m_.jobs.size()));
    return value;
  }

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

  // One move, or some that belong together; none if chance found nothing.
  const std::vector<Move>& choose() {
    moves_.clear();
    if (m_.busy >= 0 && chance_.below(s_.value().late_s == 0 ? 2 : 4) == 0) {
      fill_a_hole();
      return moves_;
    }
    trace(s_, last_op(s_, target()), chance_, path_);
    find_blocks(path_, blocks_);
    meter_.spend(100 + 15 * static_cast<std::int64_t>(path_.size()));
    if (!blocks_.empty() && chance_.below(4) != 0)
      within(blocks_[chance_.below(static_cast<std::uint32_t>(blocks_.size()))]);
    else
      other_mode();
    return moves_;
  }

  // Where the busy unit is open and idle: something longer for what stands before it, or something short in
  // it.
  void fill_a_hole() {
    if (since_look_++ % 16 == 0) look_for_holes();
    if (holes_.empty()) return;
    const Hole hole = holes_[chance_.below(static_cast<std::uint32_t>(holes_.size()))];
    const std::size_t back = chance_.below(8);
    const std::size_t i = hole.after < back ? 0 : hole.after - back;
    const int x = busy_[i];
    for (int tries = 0; tries < 8; ++tries) {
      const std::size_t k = hole.after + 1 + chance_.below(tries < 4 ? 40 : 1000);
      if (k >= busy_.size()) continue;
      const int z = busy_[k];
      const Second work = m_.ops[at(z)].work, more = work - m_.ops[at(x)].work;
      if (more > 0 && more <= hole.idle) {
        add_with_followers(s_, {z, s_.mode(z), x, true}, moves_);
        if (busy_[k - 1] != x) add_with_followers(s_, {x, s_.mode(x), busy_[k - 1], false}, moves_);
        return;
      }
      if (work <= hole.idle) {
        add_with_followers(s_, {z, s_.mode(z), busy_[hole.after], false}, moves_);
        return;
      }
    }
  }

  void look_for_holes() {
    busy_.clear();
    holes_.clear();
    for (int op = s_.last_on(m_.busy); op >= 0;) {
      busy_.push_back(op);
      const int on = m_.ops[at(op)].modes[at(s_.mode(op))].unit[0] == m_.busy ? 0 : 1;
      op = s_.before(op, on);
    }
    std::reverse(busy_.begin(), busy_.end());
    const Timeline& time = m_.unit_time[at(m_.busy)];
    for (std::size_t i = 0; i + 1 < busy_.size(); ++i) {
      const Second idle = time.open_before(s_.start(busy_[i + 1])) - time.open_before(s_.end(busy_[i]));
      if (idle > 0) holes_.push_back({i, idle});
    }
    meter_.spend(40 * static_cast<std::int64_t>(busy_.size()));
  }

  // An op of a block before another one, or behind it; mostly a near one.
  void within(const Block& b) {
    const auto length = static_cast<std::uint32_t>(b.last - b.first + 1);
    const std::uint32_t i = chance_.below(length);
    std::uint32_t k = chance_.below(2) == 0 ? i + 1 : i + 1 + chance_.below(length);
    if (k >= length) k = chance_.below(length);
    if (k == i) k = i + 1 < length ? i + 1 : i - 1;
    const int a = path_[b.first + i].op, c = path_[b.first + k].op;
    add_with_followers(s_, {a, s_.mode(a), c, k > i}, moves_);
  }

  void other_mode() {
    const Link& link = path_[chance_.below(static_cast<std::uint32_t>(path_.size()))];
    const auto modes = static_cast<std::uint32_t>(m_.ops[at(link.op)].modes.size());
    const auto mode = static_cast<int>(chance_.below(modes));
    if (mode != s_.mode(link.op)) moves_.push_back({link.op, mode, link.op, false});
  }

  struct Hole {
    std::size_t after = 0; // in busy_
    Second idle = 0;       // open time
  };

  Schedule& s_;
  const Model& m_;
  Value bound_;
  Chance& chance_;
  Meter& meter_;
  Kept best_;
  std::vector<int> jobs_;
  std::vector<Link> path_;
  std::vector<Block> blocks_;
  std::vector<Move> moves_;
  std::vector<int> busy_; // the ops of the unit to keep busy, in order, as it was a while ago
  std::vector<Hole> holes_;
  std::uint32_t since_look_ = 0;
};

} // namespace

void late_acceptance(Schedule& schedule, const Value& bound, Chance& chance, Meter& meter) {
  Late(schedule, bound, chance, meter).run();
}

} // namespace nutward::agenda
