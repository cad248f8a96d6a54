#include "pieces/place.hpp"

#include <algorithm>
#include <limits>
#include <tuple>

namespace nutward::pieces {

namespace {

// The two shortest raw lengths that would make a fret for an open slot: for each slot the first, or for the
// slot that has the first itself the second, is the shortest for another.
class Shortest {
public:
  Shortest(const PieceFacts& piece, std::span<const OpenSlot> open, const FitSettings& s) {
    for (const OpenSlot& slot : open) {
      if (piece.crown_height && slot.crown_height &&
          units::abs(*piece.crown_height - *slot.crown_height) > s.crown_tolerance)
        continue;
      const Length raw = board::shortest_raw(slot.need, s);
      if (!first_ || raw < *first_) {
        second_ = first_;
        first_ = raw;
        owner_ = &slot;
      } else if (!second_ || raw < *second_) {
        second_ = raw;
      }
    }
  }
  std::optional<Length> besides(const OpenSlot& slot) const { return &slot == owner_ ? second_ : first_; }

private:
  std::optional<Length> first_, second_;
  const OpenSlot* owner_ = nullptr;
};

auto order(const PieceFacts& piece, const Placing& p) {
  const bool other_lot = p.slot.lot && *p.slot.lot != piece.lot;
  const std::int64_t due = p.slot.due ? p.slot.due->s : std::numeric_limits<std::int64_t>::max();
  return std::tuple(p.verdict.outcome, p.verdict.trim, p.verdict.off_target, p.verdict.ends_to_dress,
                    p.verdict.tang_to_nip > Length{}, other_lot, due, p.slot.job, p.slot.slot);
}

} // namespace

std::vector<Placing> places(const PieceFacts& piece, std::span<const OpenSlot> open,
                            const FitSettings& settings, bool wasteful) {
  const Shortest shortest(piece, open, settings);
  std::vector<Placing> found;
  for (const OpenSlot& slot : open) {
    const Wanted wanted{slot.need, slot.crown_height, shortest.besides(slot), slot.lot};
    const Verdict verdict = judge(piece, wanted, settings);
    const bool offered = verdict.outcome == Outcome::fits || verdict.outcome == Outcome::borderline ||
                         (wasteful && verdict.outcome == Outcome::wasteful);
    if (offered) found.push_back({slot, verdict});
  }
  std::sort(found.begin(), found.end(),
            [&](const Placing& a, const Placing& b) { return order(piece, a) < order(piece, b); });
  return found;
}

} // namespace nutward::pieces
