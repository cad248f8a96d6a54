#include "cutting/cover.hpp"

#include "cutting/singles.hpp"

#include <algorithm>

namespace nutward::cutting {

namespace {

constexpr int far = 1 << 29;

// Whatever the raw ends, what some of them allow, or what all do: from what a piece must be worth, to what it
// may be long, which dressing does not change.
Interval of_all_ends(const Problem& p, std::size_t slot, bool dressed, Rounding rounding) {
  Interval out{};
  for (const int raw : {0, 1, 2}) {
    Interval one = interval(p, slot, raw, dressed);
    if (dressed) one.to += raw * p.settings.dressing_loss;
    if (raw == 0)
      out = one;
    else if (rounding == Rounding::down)
      out = {std::min(out.from, one.from), std::max(out.to, one.to)};
    else
      out = {std::max(out.from, one.from), std::min(out.to, one.to)};
  }
  return out;
}

// Neither bound falls along the order.
void straighten(std::vector<Interval>& in, Rounding rounding) {
  const bool wider = rounding == Rounding::down;
  for (std::size_t i = 1; i < in.size(); ++i) {
    Interval &lower = in[in.size() - 1 - i], &upper = in[in.size() - i];
    if (wider) {
      in[i].to = std::max(in[i].to, in[i - 1].to);
      lower.from = std::min(lower.from, upper.from);
    } else {
      lower.to = std::min(lower.to, upper.to);
      in[i].from = std::max(in[i].from, in[i - 1].from);
    }
  }
}

} // namespace

Reach reach(const Problem& p, std::span<const std::size_t> order, std::span<const std::size_t> singles,
            Rounding rounding) {
  const bool dressed = any_rounded(p, order);
  std::vector<Interval> in;
  for (const std::size_t s : order)
    in.push_back(of_all_ends(p, s, dressed, rounding));
  straighten(in, rounding);
  std::vector<Length> worths, lengths;
  for (const std::size_t i : singles) {
    worths.push_back(worth(p, i, dressed));
    lengths.push_back(worth(p, i, false));
  }
  std::sort(worths.begin(), worths.end());
  std::sort(lengths.begin(), lengths.end());
  Reach out;
  for (const Interval& one : in) {
    out.ends.push_back(
        -static_cast<int>(std::upper_bound(lengths.begin(), lengths.end(), one.to) - lengths.begin()));
    out.begins.push_back(
        -static_cast<int>(std::lower_bound(worths.begin(), worths.end(), one.from) - worths.begin()));
  }
  return out;
}

Cover::Cover(const Problem& p, std::span<const std::size_t> order, std::span<const std::size_t> singles,
             Rounding rounding)
    : reach_(reach(p, order, singles, rounding)) {
  while (leaves_ < order.size())
    leaves_ *= 2;
  clear();
}

void Cover::clear() {
  nodes_.assign(2 * leaves_, {-far, far, 0, 0});
  for (std::size_t i = 0; i < reach_.ends.size(); ++i) {
    nodes_[leaves_ + i].most = reach_.ends[i];
    nodes_[leaves_ + i].least = reach_.begins[i];
  }
  for (std::size_t k = leaves_; --k > 0;) {
    nodes_[k].most = std::max(nodes_[2 * k].most, nodes_[2 * k + 1].most);
    nodes_[k].least = std::min(nodes_[2 * k].least, nodes_[2 * k + 1].least);
  }
}

// One more from this position to the end.
void Cover::raise(std::size_t from, bool most) {
  std::size_t k = leaves_ + from;
  const auto add = [&](std::size_t at) {
    Node& n = nodes_[at];
    if (most) {
      ++n.most;
      ++n.added_most;
    } else {
      ++n.least;
      ++n.added_least;
    }
  };
  add(k);
  for (; k > 1; k /= 2) {
    if (k % 2 == 0) add(k + 1); // all to the right
    Node& up = nodes_[k / 2];
    const Node &left = nodes_[k / 2 * 2], &right = nodes_[k / 2 * 2 + 1];
    up.most = std::max(left.most, right.most) + up.added_most;
    up.least = std::min(left.least, right.least) + up.added_least;
  }
}

int Cover::most_from(std::size_t position) const {
  std::size_t k = leaves_ + position;
  int out = nodes_[k].most;
  for (; k > 1; k /= 2) {
    if (k % 2 == 0) out = std::max(out, nodes_[k + 1].most);
    out += nodes_[k / 2].added_most;
  }
  return out;
}

int Cover::least_upto(std::size_t position) const {
  std::size_t k = leaves_ + position;
  int out = nodes_[k].least;
  for (; k > 1; k /= 2) {
    if (k % 2 == 1) out = std::min(out, nodes_[k - 1].least);
    out += nodes_[k / 2].added_least;
  }
  return out;
}

bool Cover::take(std::size_t position) {
  if (most_from(position) >= least_upto(position)) return false;
  raise(position, true);
  if (position + 1 < reach_.ends.size()) raise(position + 1, false);
  return true;
}

} // namespace nutward::cutting
