#include "agenda/insert.hpp"

#include <algorithm>

namespace nutward::agenda {

namespace {

std::size_t at(int i) {
  return static_cast<std::size_t>(i);
}

class Insert {
public:
  Insert(Schedule& s, int job, Meter& meter) : s_(s), m_(s.model()), job_(job), meter_(meter) {
    limit_ = s.value();
    limit_.late_s = limit_.worst_s = limit_.busy = limit_.finish_s = INT64_MAX;
  }

  void op(int op) {
    end_ = s_.end(op);
    move_.reset();
    ready_ = m_.ops[at(op)].ready;
    for (const Arc& a : m_.ops[at(op)].in)
      ready_ = std::max(ready_, s_.end(a.op) + a.lag);
    for (int k = 0; k < static_cast<int>(m_.ops[at(op)].modes.size()); ++k) {
      if (meter_.over()) return;
      const Stretch alone = m_.timeline(m_.ops[at(op)], k).place(ready_, m_.ops[at(op)].work);
      if (alone.end >= end_) continue; // no place of this mode can be better
      first_place(op, k);
    }
    if (!move_) return;
    if (s_.try_moves({&*move_, 1})) s_.keep();
  }

private:
  // The first of its places that nobody minds.
  void first_place(int op, int mode) {
    places_.clear();
    for (const int unit : m_.ops[at(op)].modes[at(mode)].unit)
      if (unit >= 0) add_places(unit);
    std::sort(places_.begin(), places_.end(), [&](int a, int b) { return s_.position(a) < s_.position(b); });
    places_.erase(std::unique(places_.begin(), places_.end()), places_.end());
    for (const int q : places_) {
      if (meter_.over()) return;
      if (q == op || s_.end(q) <= ready_ || m_.ops[at(q)].job == job_) continue;
      if (s_.start(q) >= end_ && s_.position(q) >= s_.position(op)) break;
      if (look({op, mode, q, true})) return;
    }
    if (mode != s_.mode(op)) look({op, mode, op, false});
  }

  void add_places(int unit) {
    for (int q = s_.last_on(unit); q >= 0 && s_.end(q) > ready_;) {
      places_.push_back(q);
      q = s_.before(q, m_.ops[at(q)].modes[at(s_.mode(q))].unit[0] == unit ? 0 : 1);
    }
  }

  // Whether it can stand there at all; kept in mind if it is over earlier there.
  bool look(const Move& move) {
    const std::int64_t before = s_.recomputed();
    const Second finish = s_.finish(job_);
    const auto value = s_.try_moves({&move, 1}, &limit_);
    meter_.spend(350 + 45 * (s_.recomputed() - before));
    if (!value) return false;
    const Second end = s_.end(move.op);
    const bool good = value->overrun_s <= limit_.overrun_s && s_.finish(job_) <= finish;
    s_.take_back();
    if (good && end < end_) {
      end_ = end;
      move_ = move;
    }
    return good;
  }

  Schedule& s_;
  const Model& m_;
  int job_;
  Meter& meter_;
  Value limit_;
  Second ready_ = 0, end_ = 0;
  std::optional<Move> move_;
  std::vector<int> places_;
};

} // namespace

void insert_early(Schedule& schedule, int job, Meter& meter) {
  Insert insert(schedule, job, meter);
  for (const int op : schedule.model().jobs[at(job)].ops)
    insert.op(op);
}

std::optional<Kept> around(const Schedule& schedule, int job, const Turn& turn, Meter& meter) {
  const Model& m = schedule.model();
  Chance chance(turn.mix);
  struct Key {
    Second by, then;
    int job;
  };
  std::vector<Key> wanted;
  for (const int j : m.job_order) {
    if (j == job && turn.from) continue;
    const JobFacts& facts = m.jobs[at(j)];
    const Second limit = facts.ops.empty() ? never : m.ops[at(facts.ops.back())].end_by;
    Key key{std::min(limit, facts.due), turn.mix == 0 ? schedule.finish(j) : 0, j};
    if (turn.mix > 1) key.by += chance.below(2 * 86'400);
    wanted.push_back(key);
  }
  std::sort(wanted.begin(), wanted.end(), [](const Key& a, const Key& b) {
    return std::tie(a.by, a.then, a.job) < std::tie(b.by, b.then, b.job);
  });
  Board board(m);
  std::vector<char> in(m.jobs.size(), 0);
  const auto add = [&](auto&& self, int j) -> bool { // after those that it waits for
    if (in[at(j)] != 0) return true;
    in[at(j)] = 1;
    for (const std::size_t other : m.problem->jobs[at(j)].after)
      if (!self(self, static_cast<int>(other))) return false;
    const auto& ops = m.jobs[at(j)].ops;
    std::vector<Second> least(ops.size(), -never);
    if (j == job && turn.from && !least.empty()) least.front() = *turn.from;
    return board.add_ops(ops, least);
  };
  bool good = !turn.from || add(add, job);
  for (std::size_t i = 0; good && i < wanted.size(); ++i)
    good = add(add, wanted[i].job);
  meter.spend(60 * board.placed());
  Schedule out(m);
  if (!good || !out.assign(board.order(), board.modes())) return std::nullopt;
  return kept(out);
}

} // namespace nutward::agenda
