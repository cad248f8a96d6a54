#include "agenda/timeline.hpp"

#include <algorithm>

namespace nutward::agenda {

Timeline::Timeline(std::span<const Window> openings, std::span<const char> joined, Second from, Second until)
    : until_(until) {
  Second before = 0;
  for (std::size_t i = 0; i < openings.size(); ++i) {
    const Second a = std::max(openings[i].from.s, from), b = std::min(openings[i].to.s, until);
    if (a >= b) continue;
    const std::size_t k = openings_.size();
    const bool on = k > 0 && joined[i] != 0;
    openings_.push_back(
        {a, b, before, on ? openings_[k - 1].run_from : before, 0, on ? openings_[k - 1].run_first : k, 0});
    before += b - a;
  }
  closed_ = openings_.empty();
  if (closed_) return;
  const std::size_t n = openings_.size();
  for (std::size_t i = n; i-- > 0;) {
    Opening& o = openings_[i];
    const bool last = i + 1 == n || openings_[i + 1].run_first == i + 1;
    o.run_to = last ? o.before + (o.to - o.from) : openings_[i + 1].run_to;
    o.next_run = last ? i + 1 : openings_[i + 1].next_run;
  }
  base_ = openings_.front().from;
  const Second length = openings_.back().to - base_;
  while ((length >> shift_) > static_cast<Second>(4 * n + 16))
    ++shift_;
  bucket_.resize(static_cast<std::size_t>(length >> shift_) + 1);
  std::size_t i = 0;
  for (std::size_t b = 0; b < bucket_.size(); ++b) {
    while (i < n && openings_[i].to <= base_ + (static_cast<Second>(b) << shift_))
      ++i;
    bucket_[b] = static_cast<std::uint32_t>(i);
  }
}

std::size_t Timeline::first_ending_after(Second t) const {
  if (t < base_) return 0;
  const auto b = static_cast<std::size_t>((t - base_) >> shift_);
  if (b >= bucket_.size()) return openings_.size();
  std::size_t i = bucket_[b];
  while (i < openings_.size() && openings_[i].to <= t)
    ++i;
  return i;
}

Stretch Timeline::place(Second ready, Second work) const {
  if (work == 0 || elapsed()) return ready + work <= until_ ? Stretch{ready, ready + work} : Stretch{};
  for (std::size_t i = first_ending_after(ready); i < openings_.size(); i = openings_[i].next_run) {
    const Opening& o = openings_[i];
    const Second start = std::max(ready, o.from);
    const Second over = o.before + (start - o.from) + work;
    if (over > o.run_to) continue;
    std::size_t k = i;
    while (openings_[k].before + (openings_[k].to - openings_[k].from) < over)
      ++k;
    return {start, openings_[k].from + (over - openings_[k].before)};
  }
  return {};
}

Second Timeline::latest(Second end, Second work) const {
  end = std::min(end, until_);
  if (work == 0 || elapsed()) return end - work;
  std::size_t i = first_ending_after(end - 1); // the first that ends at or after `end`
  if (i == openings_.size() || openings_[i].from >= end) {
    if (i == 0) return -never;
    --i;
  }
  for (;;) {
    const Opening& o = openings_[i];
    const Second start = o.before + (std::min(end, o.to) - o.from) - work;
    if (start >= o.run_from) {
      std::size_t k = i;
      while (openings_[k].before > start)
        --k;
      return openings_[k].from + (start - openings_[k].before);
    }
    if (o.run_first == 0) return -never;
    i = o.run_first - 1;
  }
}

Second Timeline::start_to_end_at(Second end, Second work) const {
  const Second start = latest(end, work);
  if (start <= -never) return start;
  return place(start, work).end == end ? start : start + 1;
}

Second Timeline::room(Second t) const {
  if (elapsed()) return never;
  const std::size_t i = first_ending_after(t);
  if (i == openings_.size()) return 0;
  return openings_[i].run_to - openings_[i].before - std::max<Second>(0, t - openings_[i].from);
}

Second Timeline::open_before(Second t) const {
  if (elapsed()) return t;
  const std::size_t i = first_ending_after(t);
  if (i == openings_.size()) return closed_ ? 0 : openings_.back().run_to;
  return openings_[i].before + std::max<Second>(0, t - openings_[i].from);
}

Second Timeline::first_at(Second open) const {
  if (elapsed()) return open;
  if (open <= 0) return -never;
  const auto it = std::partition_point(openings_.begin(), openings_.end(),
                                       [&](const Opening& o) { return o.before + (o.to - o.from) < open; });
  return it == openings_.end() ? never : it->from + (open - it->before);
}

Second Timeline::last_at(Second open) const {
  if (elapsed()) return open;
  if (open < 0) return -never;
  const auto it = std::partition_point(openings_.begin(), openings_.end(),
                                       [&](const Opening& o) { return o.before + (o.to - o.from) <= open; });
  return it == openings_.end() ? never : it->from + (open - it->before);
}

} // namespace nutward::agenda
