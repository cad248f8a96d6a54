#include "agenda/search.hpp"

#include <algorithm>

namespace nutward::agenda {

namespace {

std::size_t at(int i) {
  return static_cast<std::size_t>(i);
}

// What must not be turned back yet, by pairs of ops (first before second) or an op and a mode. A table that
// forgets: where two pairs share a place the later one stays.
class Forbidden {
public:
  Forbidden() : rows_(std::size_t{1} << 14) {}
  void add(std::int64_t a, std::int64_t b, std::int64_t until) { row(a, b) = {key(a, b), until}; }
  bool holds(std::int64_t a, std::int64_t b, std::int64_t now) {
    const Row& r = row(a, b);
    return r.key == key(a, b) && r.until > now;
  }
  void clear() { std::fill(rows_.begin(), rows_.end(), Row{}); }

private:
  struct Row {
    std::int64_t key = -1, until = 0;
  };
  static std::int64_t key(std::int64_t a, std::int64_t b) { return a * 1'000'003 + b; }
  Row& row(std::int64_t a, std::int64_t b) {
    const auto mixed = static_cast<std::uint64_t>(key(a, b)) * 0x9E3779B97F4A7C15ULL;
    return rows_[mixed >> 50];
  }
  std::vector<Row> rows_;
};

// A move along a path, and the ops that it jumps: path[from..to].
struct Jump {
  Move move;
  std::size_t from = 0, to = 0;
  bool earlier = false; // the op goes before those that it jumps
};

class Tabu {
public:
  Tabu(Schedule& s, const Value& bound, Chance& chance, Meter& meter)
      : s_(s), m_(s.model()), bound_(bound), chance_(chance), meter_(meter), best_(kept(s)) {}

  void run() {
    std::int64_t idle = 0;
    const std::int64_t patience = 1000 + 20 * static_cast<std::int64_t>(s_.order().size());
    while (best_.value > bound_ && !meter_.over()) {
      ++now_;
      if (!step()) {
        shake();
        continue;
      }
      if (s_.value() < best_.value) {
        best_ = kept(s_);
        idle = 0;
      } else if (++idle > patience) {
        idle = 0;
        s_.assign(best_.order, best_.modes);
        forbidden_.clear();
        shake();
      }
    }
    s_.assign(best_.order, best_.modes);
  }

private:
  int target() {
    int out = -1;
    std::int64_t most = -1;
    std::uint32_t ties = 1;
    const bool by_end = m_.goal == Goal::last_end || s_.value().late_s == 0;
    for (const int j : m_.job_order) {
      if (s_.finish(j) <= -never || m_.jobs[at(j)].ops.empty()) continue;
      const JobFacts& facts = m_.jobs[at(j)];
      std::int64_t cost =
          by_end ? s_.finish(j) : facts.weight * std::max<Second>(0, s_.finish(j) - facts.due);
      // In time: any late job, the later the likelier; or any job at all.
      if (m_.goal == Goal::in_time) {
        if (!by_end && cost == 0) continue;
        cost = by_end ? chance_.below(1000) : cost * (1 + chance_.below(16));
      }
      if (cost < most || (cost == most && chance_.below(++ties) != 0)) continue;
      if (cost > most) ties = 1;
      most = cost;
      out = j;
    }
    return out;
  }

  void collect() {
    jumps_.clear();
    find_blocks(path_, blocks_);
    for (const Block& b : blocks_) {
      // path_[i] comes later in time than path_[i + 1].
      for (std::size_t i = b.first; i < b.last; ++i) {
        const bool edge = i == b.first || i + 1 == b.last;
        if (edge || m_.goal == Goal::in_time) add(i, i + 1, i + 1, true);
        if (i + 1 < b.last) add(i, i + 1, b.last, true); // to the very front
        if (i > b.first) add(i, b.first, i - 1, false);  // to the very end
      }
      if (b.last > b.first + 1) add(b.last, b.first, b.last - 1, false);
    }
    for (std::size_t i = 0; i < path_.size(); ++i) {
      const int op = path_[i].op;
      const int modes = static_cast<int>(m_.ops[at(op)].modes.size());
      for (int k = 0; k < modes; ++k)
        if (k != s_.mode(op)) jumps_.push_back({{op, k, op, false}, i, i, false});
    }
    constexpr std::size_t most = 24;
    for (std::size_t i = 0; jumps_.size() > most && i < most; ++i)
      std::swap(jumps_[i], jumps_[i + chance_.below(static_cast<std::uint32_t>(jumps_.size() - i))]);
    if (jumps_.size() > most) jumps_.resize(most);
  }

  // path_[i] goes before (or after) all of path_[from..to].
  void add(std::size_t i, std::size_t from, std::size_t to, bool earlier) {
    const int op = path_[i].op;
    jumps_.push_back({{op, s_.mode(op), path_[earlier ? to : from].op, earlier}, from, to, earlier});
  }

  bool is_forbidden(const Jump& j) {
    const int op = j.move.op;
    if (j.move.mode != s_.mode(op)) return forbidden_.holds(op, -1 - j.move.mode, now_);
    for (std::size_t i = j.from; i <= j.to; ++i) {
      const int other = path_[i].op;
      if (j.earlier ? forbidden_.holds(op, other, now_) : forbidden_.holds(other, op, now_)) return true;
    }
    return false;
  }

  void forbid(const Jump& j, int old_mode) {
    const std::int64_t until = now_ + 8 + chance_.below(8) + static_cast<std::int64_t>(blocks_.size()) / 4;
    const int op = j.move.op;
    if (j.move.mode != old_mode) {
      forbidden_.add(op, -1 - old_mode, until);
      return;
    }
    for (std::size_t i = j.from; i <= j.to; ++i) {
      const int other = path_[i].op;
      if (j.earlier)
        forbidden_.add(other, op, until);
      else
        forbidden_.add(op, other, until);
    }
  }

  std::optional<Value> price(const Move& move) {
    const std::int64_t before = s_.recomputed();
    moves_.clear();
    add_with_followers(s_, move, moves_);
    const auto value = s_.try_moves(moves_);
    meter_.spend(400 + 45 * (s_.recomputed() - before) + static_cast<std::int64_t>(m_.jobs.size()));
    return value;
  }

  bool step() {
    const int job = target();
    if (job < 0) return false;
    trace(s_, last_op(s_, job), chance_, path_);
    meter_.spend(20 * static_cast<std::int64_t>(path_.size() + m_.jobs.size()));
    collect();
    std::optional<Value> best;
    std::size_t chosen = 0;
    std::uint32_t ties = 1;
    for (std::size_t i = 0; i < jumps_.size() && !meter_.over(); ++i) {
      const bool forbidden = is_forbidden(jumps_[i]);
      const auto value = price(jumps_[i].move);
      if (!value) continue;
      s_.take_back();
      if (forbidden && *value >= best_.value) continue;
      if (best && (*value > *best || (*value == *best && chance_.below(++ties) != 0))) continue;
      if (!best || *value < *best) ties = 1;
      best = value;
      chosen = i;
    }
    if (!best) return false;
    const int old_mode = s_.mode(jumps_[chosen].move.op);
    price(jumps_[chosen].move);
    s_.keep();
    forbid(jumps_[chosen], old_mode);
    return true;
  }

  // Some moves at random along the path of the job in question.
  void shake() {
    for (int n = 4 + static_cast<int>(chance_.below(10)); n > 0 && !meter_.over(); --n) {
      const int job = target();
      if (job < 0) {
        meter_.spend(1000);
        return;
      }
      trace(s_, last_op(s_, job), chance_, path_);
      collect();
      meter_.spend(1000);
      if (jumps_.empty()) continue;
      const auto i = chance_.below(static_cast<std::uint32_t>(jumps_.size()));
      if (price(jumps_[i].move)) s_.keep();
    }
  }

  Schedule& s_;
  const Model& m_;
  Value bound_;
  Chance& chance_;
  Meter& meter_;
  Kept best_;
  Forbidden forbidden_;
  std::vector<Link> path_;
  std::vector<Block> blocks_;
  std::vector<Jump> jumps_;
  std::vector<Move> moves_;
  std::int64_t now_ = 0;
};

} // namespace

Kept kept(const Schedule& s) {
  return {s.order(), s.modes(), s.value()};
}

void tabu(Schedule& schedule, const Value& bound, Chance& chance, Meter& meter) {
  Tabu(schedule, bound, chance, meter).run();
}

} // namespace nutward::agenda
