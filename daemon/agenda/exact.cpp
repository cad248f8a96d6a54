#include "agenda/exact.hpp"

#include <algorithm>
#include <bit>
#include <cmath>

namespace nutward::agenda {

namespace {

std::size_t at(int i) {
  return static_cast<std::size_t>(i);
}

class Branch {
public:
  Branch(const Model& m, Kept& best, Meter& meter) : m_(m), p_(m), best_(best), meter_(meter), schedule_(m) {}

  bool run() { return dive(p_.root()) && !meter_.over(); }

private:
  // False if the meter is over before all is looked at.
  bool dive(Node node) {
    for (;;) {
      if (!meter_.spend(2000)) return false;
      if (!p_.propagate(node, best_.value, meter_)) return true;
      if (const int op = open_mode(node); op >= 0) return by_mode(node, op);
      const auto pair = open_pair(node);
      if (!pair) {
        leaf(node);
        return true;
      }
      Node other = node;
      if (p_.decide(node, pair->first, pair->second) && !dive(std::move(node))) return false;
      if (!p_.decide(other, pair->second, pair->first)) return true;
      node = std::move(other);
    }
  }

  // Of the ops that several units could do the one that may begin first.
  int open_mode(const Node& n) const {
    int out = -1;
    for (const int op : p_.ops())
      if (p_.count(n, op) > 1 && (out < 0 || n.start[at(op)] < n.start[at(out)])) out = op;
    return out;
  }

  bool by_mode(const Node& n, int op) {
    std::vector<int> modes = p_.modes(n, op);
    const Op& o = m_.ops[at(op)];
    std::stable_sort(modes.begin(), modes.end(), [&](int a, int b) {
      return m_.timeline(o, a).place(n.start[at(op)], o.work).end <
             m_.timeline(o, b).place(n.start[at(op)], o.work).end;
    });
    for (const int k : modes) {
      Node next = n;
      p_.take_mode(next, op, k);
      // What it can do follows from its mode now: times are worked out anew.
      const Stretch s = m_.timeline(o, k).place(next.start[at(op)], o.work);
      if (s.end > next.latest_end[at(op)]) continue;
      next.start[at(op)] = s.start;
      next.end[at(op)] = std::max(next.end[at(op)], s.end);
      next.latest_start[at(op)] = m_.timeline(o, k).latest(next.latest_end[at(op)], o.work);
      if (next.start[at(op)] > next.latest_start[at(op)]) continue;
      if (!dive(std::move(next))) return false;
    }
    return true;
  }

  // The pair with the least room, the roomier way first (Smith and Cheng 1993, from memory).
  std::optional<std::pair<int, int>> open_pair(const Node& n) {
    std::optional<std::pair<int, int>> out;
    double least = 0;
    for (const auto& list : p_.of_unit(n))
      for (std::size_t i = 0; i < list.size(); ++i)
        for (std::size_t k = i + 1; k < list.size(); ++k) {
          const int a = list[i], b = list[k];
          if (!p_.undecided(n, a, b)) continue;
          const auto room = [&](int x, int y) {
            return static_cast<double>(std::max<Second>(0, n.latest_start[at(y)] - n.end[at(x)])) + 1;
          };
          const double ab = room(a, b), ba = room(b, a);
          const double weighed = std::min(ab, ba) / std::sqrt(std::min(ab, ba) / std::max(ab, ba));
          if (out && weighed >= least) continue;
          least = weighed;
          out = ab >= ba ? std::pair(a, b) : std::pair(b, a);
        }
    return out;
  }

  void leaf(const Node& n) {
    std::vector<int> order = p_.ops();
    const std::size_t words = n.before.size() / m_.ops.size();
    std::vector<int> depth(m_.ops.size(), 0);
    for (const int op : order)
      for (std::size_t w = 0; w < words; ++w)
        depth[at(op)] += std::popcount(n.before[at(op) * words + w]);
    std::stable_sort(order.begin(), order.end(), [&](int a, int b) { return depth[at(a)] < depth[at(b)]; });
    std::vector<int> modes = best_.modes;
    for (const int op : order)
      modes[at(op)] = p_.modes(n, op).front();
    meter_.spend(100 * static_cast<std::int64_t>(order.size()));
    if (schedule_.assign(std::move(order), std::move(modes)) && schedule_.value() < best_.value)
      best_ = kept(schedule_);
  }

  const Model& m_;
  Propagator p_;
  Kept& best_;
  Meter& meter_;
  Schedule schedule_;
};

} // namespace

bool branch_and_bound(const Model& model, Kept& best, Meter& meter) {
  return Branch(model, best, meter).run();
}

Value lower_bound(const Model& m, const Value& value, Meter& meter) {
  Propagator p(m);
  Node root = p.root();
  if (!p.propagate(root, std::nullopt, meter)) return value;
  Value least = std::min(p.least(root), value);
  if (least.overrun_s < value.overrun_s) return least;
  // The least lateness (or last end) that propagation cannot refute.
  const bool by_end = m.goal == Goal::last_end;
  const auto part = [&](Value& v) -> std::int64_t& { return by_end ? v.last_s : v.late_s; };
  std::int64_t low = part(least);
  Value v = value;
  for (std::int64_t high = part(v); low < high && !meter.over();) {
    const std::int64_t middle = low + (high - low) / 2;
    Value better; // than this: what has at most `middle`
    better.overrun_s = value.overrun_s;
    part(better) = middle + 1;
    Node node = root;
    if (p.propagate(node, better, meter))
      high = middle;
    else
      low = middle + 1;
  }
  if (low > part(least)) {
    least = {};
    least.overrun_s = value.overrun_s;
    part(least) = low;
    least.worst_s = by_end ? 0 : std::min(value.worst_s, p.least(root).worst_s);
    least.busy = p.least(root).busy;
    least.finish_s = p.least(root).finish_s;
  }
  if (meter.over() || part(least) < part(v)) return std::min(least, value);
  return std::min(least, value);
}

} // namespace nutward::agenda
