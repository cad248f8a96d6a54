// How a stiff bar bears: which part of a load each support takes. Loads are told as parts of the whole (they
// add up to 1), places in mm; x runs along the neck, y across it. Pure, and free of any fretting.
#pragma once

#include <optional>
#include <span>
#include <vector>

namespace nutward::press {

struct Support {
  double x = 0, y = 0;
  double stiffness = 1; // over 0, against the others
};
struct Place {
  double x = 0, y = 0;
};

// A rigid body on springs that may pull as well as push: of the plane of parts with the load's force and both
// moments the one with the least Σ part²/stiffness. For equal supports whose products of x and y cancel,
//   part = 1/n + ex·x/Σx² + ey·y/Σy², from their centre
// (the pile-cap formula of foundation texts; the rigid-bar formula where all y are 0). A part under 0 would
// have to pull. nullopt where no such plane bears the load: there is no support, or all stand on one line
// (or at one place) and the load does not.
std::optional<std::vector<double>> plane_parts(std::span<const Support> supports, Place load);

// What really happens, since no fret pulls a bar down: those that would have to lift off and take nothing,
// and the others bear on the same plane. Exact: the only parts ≥ 0 that keep force and moments and for which
// some plane is theirs where they are over 0, and nowhere over 0 elsewhere. nullopt where the load stands
// outside all the supports: the bar tips.
std::optional<std::vector<double>> contact_parts(std::span<const Support> supports, Place load);

// For n equal supports in a row at x (rising, at least one): from where to where the load may stand.
struct Range {
  double from = 0, to = 0;
  friend bool operator==(const Range&, const Range&) = default;
};
// No support takes more than `times` (≥ 1) its fair part 1/n; from the rigid-bar formula,
//   |e| ≤ (times − 1)·Σd²/(n·d_far), d from the mean of the row,
// and never beyond the kern. One support: only on it.
Range within_times(std::span<const double> x, double times);
// The kern: every support still takes something; at its edge one takes 0, e = Σd²/(n·d_near). For n evenly
// over s that is s(n+1)/(6(n−1)). Worked out from the formula; it is not the middle third of a strip.
Range kern(std::span<const double> x);

// A rigid strip (a fret across the neck) of `length` over 0 under a load `off` its middle: the largest and
// least load on a mm, as times the mean, and how much of it bears. Up to length/6 both ends are 1 ±
// 6·off/length (the middle-third rule of foundation texts, from memory); beyond, a triangle over 3·(length/2
// − off). nullopt from length/2 on: it tips.
struct Strip {
  double most = 1, least = 1, contact = 0;
};
std::optional<Strip> strip(double length, double off);

} // namespace nutward::press
