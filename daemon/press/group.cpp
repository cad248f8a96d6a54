#include "press/group.hpp"

#include <algorithm>
#include <cmath>
#include <fmt/core.h>

namespace nutward::press {

namespace {

constexpr Length tighter_sole{25'000'000}; // than the board, at most
constexpr Length radius_digits{1'000};     // a compound radius is worked out; so much is no difference
constexpr double pressed_flat_mm = 0.02;   // a gap that a sole closes by itself

// 2·√(2·t/(1/Rb − 1/Rs)), of a sole that is wider than the board or flat.
double contact_mm(double board, const std::optional<Length>& sole) {
  const double curve = 1 / board - (sole ? 1 / sole->mm() : 0);
  return 2 * std::sqrt(2 * pressed_flat_mm / curve);
}

double middle_gap_mm(double across, const std::optional<Length>& board, double sole) {
  return across * across / 8 * (1 / sole - (board ? 1 / board->mm() : 0));
}

// What stands beside the group, on either side; none: nullptr.
const Crown* seated_before(const Work& work, std::size_t first) {
  while (first > 0) {
    if (work.crowns[--first].seated) return &work.crowns[first];
  }
  return nullptr;
}
const Crown* seated_after(const Work& work, std::size_t last) {
  while (++last < work.crowns.size()) {
    if (work.crowns[last].seated) return &work.crowns[last];
  }
  return nullptr;
}

std::optional<Reason> ends_hindrance(const Work& work, const Equipment& e, const Bar& bar, Group g) {
  const Length low = work.crowns[g.first].nutmost, high = work.crowns[g.last].bodymost;
  const Crown* before = seated_before(work, g.first);
  const Crown* after = seated_after(work, g.last);
  // How long a bar may be for what stands at its nutward and its bodyward end. Places are doubled, so that
  // the bar's middle is a whole number of nanometres.
  constexpr Length any{INT64_MAX};
  const Length middle = low + high, off = 2 * e.end_clear;
  const Length by_nut = work.nut_in_place ? middle - off : any;
  const Length by_before = before == nullptr ? any : middle - (2 * before->bodymost + work.crown_width) - off;
  const Length by_after = after == nullptr ? any : 2 * after->nutmost - work.crown_width - middle - off;
  const Length longest = std::min({by_nut, by_before, by_after});
  if (bar.length <= longest) return std::nullopt;

  const Length shortest = high - low + work.crown_width;
  const auto clear = [&](Length room) { return Length{(room - bar.length).nm / 2} + e.end_clear; };
  if (bar.length > by_before) return EndOnCrown{before->slot, clear(by_before), shortest, longest};
  if (bar.length > by_after) return EndOnCrown{after->slot, clear(by_after), shortest, longest};
  return OnNut{clear(by_nut), shortest, longest};
}

std::size_t index_of(const Work& work, int slot) {
  for (std::size_t i = 0; i < work.crowns.size(); ++i) {
    if (work.crowns[i].slot == slot && work.crowns[i].seated) return i;
  }
  throw BadWork(fmt::format("There is no fret in slot {}.", slot), "Say slots that have a fret.");
}

} // namespace

Group group_of(const Work& work, int lo, int hi) {
  if (lo > hi) {
    throw BadWork(fmt::format("Frets {} to {} are the wrong way round.", lo, hi),
                  fmt::format("Frets {} to {} would do.", hi, lo));
  }
  return {index_of(work, lo), index_of(work, hi)};
}

std::vector<int> slots_of(const Work& work, Group g) {
  std::vector<int> out;
  for (std::size_t i = g.first; i <= g.last; ++i) {
    if (work.crowns[i].seated) out.push_back(work.crowns[i].slot);
  }
  return out;
}

std::vector<double> places_of(const Work& work, Group g) {
  std::vector<double> out;
  for (std::size_t i = g.first; i <= g.last; ++i) {
    if (work.crowns[i].seated) out.push_back(work.crowns[i].at.mm());
  }
  return out;
}

Length bar_place(const Work& work, Group g) {
  return {(work.crowns[g.first].nutmost + work.crowns[g.last].bodymost).nm / 2};
}

Length load_place(const Work& work, Group g) {
  double sum = 0;
  const auto places = places_of(work, g);
  for (double x : places)
    sum += x;
  return units::from_mm(sum / static_cast<double>(places.size()));
}

Force line_load_of(const Work& work, const Equipment& e, Group g) {
  double length = 0;
  for (std::size_t i = g.first; i <= g.last; ++i) {
    if (work.crowns[i].seated) length += work.crowns[i].length.mm();
  }
  return {length * e.line_load * (work.soft_wood ? e.soft_wood : 1)};
}

std::vector<Reason> whole_refusals(const Work& work, const Equipment& e, const Bar& bar) {
  std::vector<Reason> out;
  if (!e.in_service) out.emplace_back(OutOfService{});
  if (!e.press_rating) out.emplace_back(NoPlate{});
  if (!work.bed.cradled) out.emplace_back(NotCradled{});
  if (!work.bed.head_clear) out.emplace_back(HeadNotClear{});
  if (!work.bed.nothing_bridges) out.emplace_back(NeckBridged{});
  if (!work.bed.glue_set) out.emplace_back(FreshGlue{});
  if (bar.length > work.board_end) out.emplace_back(LongerThanBoard{bar.length, work.board_end});
  if (bar.narrow && e.narrow_ladder.empty()) out.emplace_back(NoLadder{});
  return out;
}

std::optional<Reason> sole_hindrance(const Crown& c, const Bar& bar) {
  const Length fret = 2 * c.half_width;
  if (bar.width <= fret) return TooNarrow{bar.width, fret, c.slot};
  WrongSole wrong{c.slot, bar.sole_radius, c.radius, {}, {}};
  if (!c.radius && !bar.sole_radius) return std::nullopt;
  if (c.radius && (!bar.sole_radius || *bar.sole_radius > *c.radius + radius_digits)) {
    wrong.bears_on = units::from_mm(std::min(c.across.mm(), contact_mm(c.radius->mm(), bar.sole_radius)));
    return wrong;
  }
  if (c.radius && *bar.sole_radius + tighter_sole + radius_digits >= *c.radius) return std::nullopt;
  wrong.gap = units::from_mm(middle_gap_mm(c.across.mm(), c.radius, bar.sole_radius->mm()));
  return wrong;
}

std::optional<Reason> bed_hindrance(const Work& work, Group g) {
  const Bed& bed = work.bed;
  const Length low = work.crowns[g.first].nutmost, high = work.crowns[g.last].bodymost;
  const int last = work.crowns[g.last].slot;
  if (bed.body_from && high > *bed.body_from) return OverBody{last, *bed.body_from};
  if (bed.bare_from && high > *bed.bare_from) return Unsupported{last, *bed.bare_from};
  for (const Stretch& hollow : bed.voids) {
    if (hollow.from <= high && hollow.to >= low) return OverVoid{hollow};
  }
  return std::nullopt;
}

std::optional<Reason> hindrance(const Work& work, const Equipment& e, const Bar& bar, Group g) {
  int frets = 0;
  for (std::size_t i = g.first; i <= g.last; ++i) {
    const Crown& c = work.crowns[i];
    if (!c.seated) continue;
    if (!c.to_press) return OtherFret{c.slot};
    ++frets;
  }
  if (frets > e.most_frets) return OverCap{frets, e.most_frets};
  const Length span = work.crowns[g.last].bodymost - work.crowns[g.first].nutmost + work.crown_width;
  if (span > bar.length) return TooLong{span, bar.length};
  if (auto why = bed_hindrance(work, g)) return why;
  for (std::size_t i = g.first; i <= g.last; ++i) {
    if (!work.crowns[i].seated) continue;
    if (auto why = sole_hindrance(work.crowns[i], bar)) return why;
  }
  if (frets == 1 && !bar.narrow) return Tips{work.crowns[g.first].slot};
  if (auto why = ends_hindrance(work, e, bar, g)) return why;
  const Length bar_at = bar_place(work, g);
  if (e.reach && bar_at > *e.reach) return BeyondReach{bar_at, *e.reach};
  return std::nullopt;
}

} // namespace nutward::press
