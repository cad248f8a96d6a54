#include "cutting/knapsack.hpp"

#include <algorithm>
#include <utility>

namespace nutward::cutting {

Knapsack::Knapsack(std::vector<std::int64_t> sizes, const std::vector<int>& counts, std::int64_t most)
    : sizes_(std::move(sizes)), best_(static_cast<std::size_t>(most) + 1) {
  for (std::size_t i = 0; i < sizes_.size(); ++i) {
    auto left = static_cast<int>(std::min<std::int64_t>(counts[i], most / sizes_[i]));
    for (int times = 1; left > 0; times *= 2) {
      copies_.push_back({i, std::min(times, left)});
      left -= times;
    }
  }
  chosen_.resize(copies_.size() * best_.size());
}

void Knapsack::solve(const std::vector<std::int64_t>& values, Meter& meter) {
  std::fill(best_.begin(), best_.end(), 0);
  std::fill(chosen_.begin(), chosen_.end(), std::uint8_t{0});
  for (std::size_t k = 0; k < copies_.size(); ++k) {
    const Copy& copy = copies_[k];
    const std::int64_t value = values[copy.item] * copy.times;
    if (value <= 0) continue;
    const auto size = static_cast<std::size_t>(sizes_[copy.item] * copy.times);
    std::uint8_t* const chosen = &chosen_[k * best_.size()];
    for (std::size_t room = best_.size(); room-- > size;) {
      const std::int64_t with = best_[room - size] + value;
      if (with <= best_[room]) continue;
      best_[room] = with;
      chosen[room] = 1;
    }
  }
  meter.spend(static_cast<std::int64_t>(chosen_.size()));
}

std::vector<int> Knapsack::set(std::int64_t room) const {
  std::vector<int> out(sizes_.size());
  auto left = static_cast<std::size_t>(room);
  for (std::size_t k = copies_.size(); k-- > 0;) {
    if (chosen_[k * best_.size() + left] == 0) continue;
    out[copies_[k].item] += copies_[k].times;
    left -= static_cast<std::size_t>(sizes_[copies_[k].item] * copies_[k].times);
  }
  return out;
}

} // namespace nutward::cutting
