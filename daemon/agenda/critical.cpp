#include "agenda/critical.hpp"

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

void trace(const Schedule& s, int job, Chance& chance, std::vector<Link>& path) {
  path.clear();
  const auto& ops = s.model().jobs[static_cast<std::size_t>(job)].ops;
  for (int op = ops.empty() ? -1 : ops.back(); op >= 0;) {
    const Link by = holder(s, op, chance);
    path.push_back({op, by.unit});
    op = by.op;
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
