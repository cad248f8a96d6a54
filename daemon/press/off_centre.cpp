#include "press/off_centre.hpp"

#include <algorithm>
#include <cmath>

namespace nutward::press {

namespace {

Zone zone_of(double share, double at_end) {
  constexpr double digits = 1e-9; // at the edge of a zone is within it
  if (share <= 0) return Zone::lifted;
  if (at_end <= green_times + digits) return Zone::green;
  return at_end <= amber_times + digits ? Zone::amber : Zone::over;
}

// Equal frets in a row; at the kern's edge rounding may leave a hair under nothing.
std::optional<std::vector<double>> parts_at(const std::vector<double>& places, double at) {
  std::vector<Support> row;
  row.reserve(places.size());
  for (double x : places)
    row.push_back({x, 0, 1});
  const Range inside = kern(places);
  if (at < inside.from || at > inside.to) return contact_parts(row, {at, 0});
  auto parts = plane_parts(row, {at, 0});
  if (parts) {
    for (double& p : *parts)
      p = std::max(p, 0.0);
  }
  return parts;
}

} // namespace

std::optional<Shares> shares(const Work& work, const Equipment& e, int lo, int hi, Force load, Off off) {
  const Group g = group_of(work, lo, hi);
  const auto places = places_of(work, g);
  const auto parts = parts_at(places, (load_place(work, g) + off.along).mm());
  if (!parts) return std::nullopt;
  const auto n = static_cast<double>(places.size());
  Shares out;
  out.worst = 0;
  std::size_t at = 0;
  for (std::size_t i = g.first; i <= g.last; ++i) {
    const Crown& c = work.crowns[i];
    if (!c.seated) continue;
    const auto side = strip(c.across.mm(), off.sideways.mm());
    if (!side) return std::nullopt;
    const double part = (*parts)[at++], times = part * n;
    FretLoad fret{c.slot, load * part, times, times * side->most, 0, Zone::green};
    fret.n_per_mm = fret.share.n / c.length.mm() * side->most;
    fret.zone = zone_of(part, fret.at_end);
    out.worst = std::max(out.worst, fret.at_end);
    out.zone = std::max(out.zone, fret.zone);
    out.frets.push_back(fret);
  }
  out.cut = on_gauge(load * (1 / std::max(1.0, out.worst)), e);
  return out;
}

Favour favour(const Work& work, const Equipment& e, int lo, int hi, Force load) {
  const Group g = group_of(work, lo, hi);
  double shortest = work.crowns[g.first].across.mm();
  for (std::size_t i = g.first; i <= g.last; ++i) {
    if (work.crowns[i].seated) shortest = std::min(shortest, work.crowns[i].across.mm());
  }
  const double most = shortest / 6 * (amber_times - 1);
  return {{static_cast<std::int64_t>(std::floor(most * 1e6))}, on_gauge(load * (1 / amber_times), e)};
}

} // namespace nutward::press
