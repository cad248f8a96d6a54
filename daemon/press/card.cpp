#include "press/card.hpp"

#include <algorithm>

namespace nutward::press {

namespace {

constexpr std::ptrdiff_t shown_beside = 2;

std::vector<const Crown*> seated(const Work& work) {
  std::vector<const Crown*> out;
  for (const Crown& c : work.crowns) {
    if (c.seated) out.push_back(&c);
  }
  return out;
}

} // namespace

Card card(const board::Board& board, const Work& work, const Bar& bar, const Pass& pass) {
  Card out;
  out.crown_width = work.crown_width;
  out.bar.from = pass.bar_at - Length{bar.length.nm / 2};
  out.bar.to = out.bar.from + bar.length;
  out.bar_width = bar.width;
  out.load_at = {pass.load_at.mm(), 0};
  out.room = pass.room;
  out.first = pass.first;
  out.load = pass.load;
  out.average = pass.average;
  out.limited = pass.limited;

  const auto all = seated(work);
  const auto first = std::find_if(all.begin(), all.end(), [&](const Crown* c) { return c->slot >= pass.lo; });
  const auto last = std::find_if(first, all.end(), [&](const Crown* c) { return c->slot > pass.hi; });
  const auto from = first - std::min(first - all.begin(), shown_beside);
  const auto to = last + std::min(all.end() - last, shown_beside);
  for (auto it = from; it != to; ++it) {
    const board::SlotEnds ends = board::slot_ends(board, (*it)->slot);
    const bool under = it >= first && it < last;
    out.frets.push_back({(*it)->slot, ends.bass, ends.treble, under, under ? pass.average : Force{}});
  }
  return out;
}

} // namespace nutward::press
