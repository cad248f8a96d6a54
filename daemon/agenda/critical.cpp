#include "agenda/critical.hpp"

#include <algorithm>

namespace nutward::agenda {

namespace {

// The op that lets `op` start last, and on which unit; of several any.
Link holder(const Schedule& s, int op, Chance& chance) {
  const Op& o = s.model().ops[static_cast<std::size_t>(op)];
  Second most = std::max(o.ready, s.pushed(op));
  Link out;
  std::uint32_t ties = 1;
  const auto look = [&](int before, Second until, int unit) {
    if (until < most || (until == most && chance.below(++ties) != 0)) return;
    if (until > most) ties = 1;
    most = until;
    out = {before, unit};
  };
  for (const Arc& a : o.in)
    if (s.position(a.op) >= 0) look(a.op, s.end(a.op) + a.lag, -1);
  const Mode& mode = o.modes[static_cast<std::size_t>(s.mode(op))];
  for (int i = 0; i < 2; ++i)
    if (const int before = s.before(op, i); before >= 0)
      look(before, s.end(before), mode.unit[static_cast<std::size_t>(i)]);
  return out;
}

} // namespace

void trace(const Schedule& s, int op, Chance& chance, std::vector<Link>& path) {
  path.clear();
  while (op >= 0) {
    const Link by = holder(s, op, chance);
    path.push_back({op, by.unit});
    op = by.op;
  }
}

namespace {

Second lag_between(const Op& op, int before) {
  Second lag = 0;
  for (const Arc& a : op.in)
    if (a.op == before) lag = std::max(lag, a.lag);
  return lag;
}

// Before the first op, from where `op` stands on, that starts no earlier than `ready`.
std::optional<Move> later(const Schedule& s, int op, Second ready) {
  const auto& order = s.order();
  auto p = static_cast<std::size_t>(s.position(op));
  while (p + 1 < order.size() && s.start(order[p + 1]) < ready)
    ++p;
  if (order[p] == op) return std::nullopt;
  return Move{op, s.mode(op), order[p], false};
}

} // namespace

void add_with_followers(const Schedule& s, const Move& move, std::vector<Move>& moves) {
  const Model& m = s.model();
  const Op& o = m.ops[static_cast<std::size_t>(move.op)];
  const Second length = s.end(move.op) - s.start(move.op); // about what it will be
  const auto first = static_cast<std::ptrdiff_t>(moves.size());
  moves.push_back(move);
  if (s.position(move.to) > s.position(move.op)) {
    Second end = (move.before ? s.start(move.to) : s.end(move.to)) + length;
    const auto& ops = m.jobs[static_cast<std::size_t>(o.job)].ops;
    for (int next = move.op + 1; next <= ops.back() && moves.size() < Schedule::most_moves; ++next) {
      const Second ready = end + lag_between(m.ops[static_cast<std::size_t>(next)], next - 1);
      if (s.start(next) >= ready) break;
      if (const auto behind = later(s, next, ready)) moves.push_back(*behind);
      end = ready + (s.end(next) - s.start(next));
    }
    std::reverse(moves.begin() + first, moves.end()); // the last one makes room first
    return;
  }
  if (!o.bounds || move.to == move.op) return;
  for (const int next : o.out) {
    const Op& follower = m.ops[static_cast<std::size_t>(next)];
    if (follower.most.source != move.op || moves.size() >= Schedule::most_moves) continue;
    const Second ready = s.start(move.to) + length + lag_between(follower, move.op);
    int p = s.position(next);
    while (p - 1 > s.position(move.to) && s.start(s.order()[static_cast<std::size_t>(p - 1)]) >= ready)
      --p;
    const int to = s.order()[static_cast<std::size_t>(p)];
    if (to != next) moves.push_back({next, s.mode(next), to, true});
    return;
  }
}

void find_blocks(const std::vector<Link>& path, std::vector<Block>& blocks) {
  blocks.clear();
  for (std::size_t i = 0; i < path.size();) {
    std::size_t last = i;
    while (last + 1 < path.size() && path[last].unit >= 0 && path[last].unit == path[i].unit)
      ++last;
    if (last > i) blocks.push_back({i, last});
    i = last > i ? last : i + 1;
  }
}

} // namespace nutward::agenda
