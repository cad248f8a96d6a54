#include "cutting/basis.hpp"

#include <algorithm>

namespace nutward::cutting {

Basis::Basis(const Problem& p, std::span<const std::size_t> order, std::span<const std::size_t> singles)
    : states_(order.size(), State::left) {
  for (const std::size_t s : order)
    sizes_.push_back(size_of(p, s).nm);
  Cover cover(p, order, singles, Rounding::up);
  for (std::size_t i = order.size(); i-- > 0;) {
    if (cover.take(i))
      states_[i] = State::taken;
    else
      left_ += sizes_[i];
  }
  Reach pieces = reach(p, order, singles, Rounding::up);
  lacks_ = std::move(pieces.ends);
  before_ = std::move(pieces.begins);
  int taken = 0;
  for (std::size_t i = 0; i < order.size(); ++i) {
    before_[i] += taken;
    if (states_[i] == State::taken) ++taken;
    lacks_[i] += taken;
  }
}

void Basis::count(std::size_t position, int change) {
  for (std::size_t i = position; i < lacks_.size(); ++i)
    lacks_[i] += change;
  for (std::size_t i = position + 1; i < before_.size(); ++i)
    before_[i] += change;
}

// A stretch is tight if what its last lacks is what its first has before it; never more.
Basis::Stretch Basis::smallest_tight(std::size_t position) const {
  Stretch out{position, position, false};
  for (std::size_t i = position + 1; i < lacks_.size(); ++i)
    if (lacks_[i] > lacks_[out.to]) out.to = i;
  for (std::size_t i = position; i-- > 0;)
    if (before_[i] < before_[out.from]) out.from = i;
  out.tight = lacks_[out.to] >= before_[out.from];
  return out;
}

void Basis::restore(std::size_t position) {
  const Stretch in_the_way = smallest_tight(position);
  states_[position] = State::taken;
  if (in_the_way.tight) {
    std::size_t lightest = in_the_way.from;
    while (states_[lightest] != State::taken)
      ++lightest;
    states_[lightest] = State::left;
    left_ += sizes_[lightest];
    if (lightest == position) return;
    count(lightest, -1);
  }
  count(position, 1);
}

void Basis::remove(std::size_t position) {
  const State before = states_[position];
  states_[position] = State::gone;
  if (before == State::left) left_ -= sizes_[position];
  if (before != State::taken) return;
  count(position, -1);
  take_best();
}

void Basis::take_best() {
  std::vector<int> least(before_.size());
  int sum = before_.front();
  for (std::size_t i = 0; i < before_.size(); ++i)
    least[i] = sum = std::min(sum, before_[i]);
  int most = lacks_.back();
  for (std::size_t i = before_.size(); i-- > 0;) {
    most = std::max(most, lacks_[i]);
    if (states_[i] != State::left || most >= least[i]) continue;
    states_[i] = State::taken;
    left_ -= sizes_[i];
    count(i, 1);
    return;
  }
}

std::vector<std::int64_t> Basis::savings() const {
  const std::size_t n = sizes_.size();
  std::vector<std::int64_t> out(n, 0);
  std::vector<std::size_t> first(n), next(n + 1); // of the smallest tight stretch; the next without a saving
  std::size_t at = 0;
  for (std::size_t i = 0; i < n; ++i) {
    if (before_[i] <= before_[at]) at = i;
    first[i] = at;
  }
  for (std::size_t i = 0; i <= n; ++i)
    next[i] = i;
  const auto skip = [&](std::size_t i) {
    while (next[i] != i)
      i = next[i] = next[next[i]];
    return i;
  };
  at = n - 1;
  for (std::size_t i = n; i-- > 0;) { // longest first: the best for all that its stretch holds
    if (lacks_[i] >= lacks_[at]) at = i;
    if (states_[i] != State::left) continue;
    for (std::size_t k = skip(first[i]); k <= at; k = skip(k)) {
      out[k] = states_[k] == State::gone ? 0 : sizes_[i];
      next[k] = k + 1;
    }
    out[i] = std::max(out[i], sizes_[i]);
  }
  return out;
}

} // namespace nutward::cutting
