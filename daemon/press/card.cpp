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

// The frets from lo to hi, all of them under the bar, and their neighbours.
std::vector<CardFret> frets_of(const board::Board& board, const Work& work, int lo, int hi) {
  std::vector<CardFret> out;
  const auto all = seated(work);
  const auto first = std::find_if(all.begin(), all.end(), [&](const Crown* c) { return c->slot >= lo; });
  const auto last = std::find_if(first, all.end(), [&](const Crown* c) { return c->slot > hi; });
  const auto from = first - std::min(first - all.begin(), shown_beside);
  const auto to = last + std::min(all.end() - last, shown_beside);
  for (auto it = from; it != to; ++it) {
    const board::SlotEnds ends = board::slot_ends(board, (*it)->slot);
    out.push_back({(*it)->slot, ends.bass, ends.treble, it >= first && it < last, Force{}, Zone::green});
  }
  return out;
}

Card with_bar(const Work& work, const Bar& bar, Length bar_at) {
  Card out;
  out.crown_width = work.crown_width;
  out.bar.from = bar_at - Length{bar.length.nm / 2};
  out.bar.to = out.bar.from + bar.length;
  out.bar_width = bar.width;
  return out;
}

} // namespace

Card card(const board::Board& board, const Work& work, const Bar& bar, const Pass& pass) {
  Card out = with_bar(work, bar, pass.bar_at);
  out.load_at = {pass.load_at.mm(), 0};
  out.room = pass.room;
  out.first = pass.first;
  out.load = pass.load;
  out.limited = pass.limited;
  out.frets = frets_of(board, work, pass.lo, pass.hi);
  for (CardFret& f : out.frets) {
    if (f.under) f.share = pass.average;
  }
  return out;
}

namespace {

Card moved(Card out, const Off& off, const Shares& shares) {
  out.meant_at = out.load_at;
  out.load_at = {out.load_at.x_mm + off.along.mm(), off.sideways.mm()};
  for (CardFret& f : out.frets) {
    for (const FretLoad& share : shares.frets) {
      if (share.slot != f.slot) continue;
      f.share = share.share;
      f.zone = share.zone;
    }
  }
  return out;
}

} // namespace

Card card(const board::Board& board, const Work& work, const Bar& bar, const OneFret& fret) {
  Card out = with_bar(work, bar, fret.bar_at);
  out.load_at = {fret.load_at.mm(), 0};
  out.first = fret.first;
  out.load = fret.load;
  out.limited = fret.limited;
  out.frets = frets_of(board, work, fret.under.front(), fret.under.back());
  for (CardFret& f : out.frets) {
    if (f.slot == fret.slot) f.share = fret.load;
  }
  return out;
}

Card card(const board::Board& board, const Work& work, const Bar& bar, const Pass& pass, const Off& off,
          const Shares& shares) {
  return moved(card(board, work, bar, pass), off, shares);
}

Card card(const board::Board& board, const Work& work, const Bar& bar, const OneFret& fret, const Off& off,
          const Shares& shares) {
  return moved(card(board, work, bar, fret), off, shares);
}

} // namespace nutward::press
