#include "cutting/singles.hpp"

#include <algorithm>

namespace nutward::cutting {

bool any_rounded(const Problem& p, std::span<const std::size_t> slots) {
  return std::any_of(slots.begin(), slots.end(),
                     [&](std::size_t s) { return p.slots[s].need.style == board::EndStyle::rounded; });
}

Length worth(const Problem& p, std::size_t piece, bool dressed) {
  const Piece& it = p.pieces[piece];
  const int raw = dressed ? raw_ends(it) : 0;
  return it.facts.length - it.flat_ends * p.flat_end - raw * p.settings.dressing_loss;
}

Interval interval(const Problem& p, std::size_t slot, int raw, bool dressed) {
  const Need& need = p.slots[slot].need;
  const Length loss = dressed ? raw * p.settings.dressing_loss : Length{};
  const Length from = need.least + p.settings.borderline + Length{1};
  if (need.style != board::EndStyle::rounded) return {from - loss, need.cut + p.settings.trim_limit - loss};
  Interval out{from, need.target + p.settings.trim_limit - loss};
  if (raw > 0 || !need.most) return out;
  out.to = std::max(out.to, *need.most);
  // Over `most` a dressed piece loses one end and is limited by `least` alone.
  out.from = std::min(from, std::max(need.least + p.settings.dressing_loss, *need.most + Length{1}));
  return out;
}

std::vector<std::size_t> by_size(const Problem& p, std::span<const std::size_t> slots) {
  std::vector<std::size_t> out(slots.begin(), slots.end());
  std::stable_sort(out.begin(), out.end(),
                   [&](std::size_t a, std::size_t b) { return size_of(p, a) > size_of(p, b); });
  return out;
}

} // namespace nutward::cutting
