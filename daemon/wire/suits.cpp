#include "wire/suits.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <cmath>

namespace nutward::wire {

namespace {

using namespace units::literals;

void check_range(const char* field, const char* name, const std::optional<Length>& value, Length low,
                 Length high) {
  if (!value || (*value >= low && *value <= high)) return;
  throw BadProfile(field, fmt::format("A {} of {:.10g} mm cannot be right.", name, value->mm()),
                   fmt::format("From {:.10g} to {:.10g} mm would do.", low.mm(), high.mm()));
}

Grip grip_of(Length interference, Length easier, const SuitSettings& s) {
  const Length i = interference + easier;
  if (i < s.loose) return Grip::loose;
  if (i < s.from) return Grip::rather_loose;
  if (i <= s.to) return Grip::suits;
  return i <= s.tight ? Grip::snug : Grip::tight;
}

Length share(Length whole, double part) {
  return units::from_mm(whole.mm() * part);
}

SlotSuits judge(const SawnSlot& slot, const Profile& p, const Sawn& sawn, const SuitSettings& s) {
  SlotSuits out;
  out.n = slot.n;
  if (sawn.depth) {
    out.edge_depth = *sawn.depth;
    if (slot.radius && sawn.flat_bottomed) *out.edge_depth -= sagitta(slot.board_width, *slot.radius);
    if (p.tang_depth) {
      out.below_tang = *out.edge_depth - *p.tang_depth;
      out.deep_enough = *out.below_tang >= s.below_tang;
    }
  }
  if (slot.radius) {
    out.bend_from = share(*slot.radius, 1 - s.bend_most);
    out.bend_to = share(*slot.radius, 1 - s.bend_least);
  }
  return out;
}

// One bend for all slots, if there is one.
void common_bend(Suits& out) {
  for (const SlotSuits& slot : out.slots) {
    if (!slot.bend_from) return out.bend_from.reset(), out.bend_to.reset();
    out.bend_from = std::max(out.bend_from.value_or(*slot.bend_from), *slot.bend_from);
    out.bend_to = std::min(out.bend_to.value_or(*slot.bend_to), *slot.bend_to);
  }
  if (out.bend_from && *out.bend_from > *out.bend_to) out.bend_from.reset(), out.bend_to.reset();
}

} // namespace

Length sagitta(Length width, Length radius) {
  const double half = width.mm() / 2, r = radius.mm();
  return units::from_mm(r - std::sqrt(r * r - half * half));
}

Length bent_length(Length stick, const SuitSettings& settings) {
  return std::max(Length{}, stick - 2 * settings.flat_end);
}

bool Suits::good() const {
  return (!grip || *grip == Grip::suits) && (!tang_room || *tang_room >= Length{}) && !bows_back &&
         std::all_of(slots.begin(), slots.end(), [](const SlotSuits& s) { return s.deep_enough; });
}

bool Suits::sure() const {
  return grip && tang_room &&
         std::all_of(slots.begin(), slots.end(), [](const SlotSuits& s) { return s.below_tang.has_value(); });
}

Suits suits(const Profile& p, const Sawn& sawn, const std::vector<SawnSlot>& slots, const SuitSettings& s) {
  check_range("slot_width", "slot width", sawn.width, 0.2_mm, 3_mm);
  check_range("slot_depth", "slot depth", sawn.depth, 0.5_mm, 10_mm);
  const Length easier = sawn.ebony ? s.ebony_less : Length{};
  Suits out;
  if (sawn.width && p.barb_width) {
    out.interference = *p.barb_width - *sawn.width;
    out.grip = grip_of(*out.interference, easier, s);
    const auto many = static_cast<std::int64_t>(slots.size());
    out.wedge_sum = std::max(Length{}, *out.interference) * many;
    out.bows_back = *out.wedge_sum > Length{} && *out.wedge_sum + easier * many > s.bow_sum;
  }
  if (sawn.width && p.tang_thickness) out.tang_room = *sawn.width - *p.tang_thickness;
  for (const SawnSlot& slot : slots)
    out.slots.push_back(judge(slot, p, sawn, s));
  common_bend(out);
  return out;
}

} // namespace nutward::wire
