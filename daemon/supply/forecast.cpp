#include "supply/forecast.hpp"

#include <cmath>

namespace nutward::supply {

std::optional<Lumpy> lumpy(std::span<const double> periods, double smoothing) {
  if (!(smoothing > 0 && smoothing <= 1))
    throw BadSupply("A forecast was asked for with a smoothing that is not over 0 and at most 1.",
                    "0.1 is usual.");
  Lumpy out;
  out.smoothing = smoothing;
  std::size_t since = 0;
  for (const double x : periods) {
    ++since;
    if (!(x >= 0) || !std::isfinite(x))
      throw BadSupply("A period cannot have taken less than nothing.",
                      "Give what was used, without returns.");
    if (x == 0) continue;
    const auto gap = static_cast<double>(since);
    const bool first = out.taken++ == 0;
    out.size = first ? x : out.size + smoothing * (x - out.size);
    out.interval = first ? gap : out.interval + smoothing * (gap - out.interval);
    since = 0;
  }
  return out.taken == 0 ? std::nullopt : std::optional(out);
}

Demand demand(std::span<const double> periods, const Demand& guess, std::size_t enough, double smoothing) {
  const auto seen = lumpy(periods, smoothing);
  Demand own{seen ? seen->a_period() : 0, 0, periods.size()};
  if (periods.empty()) return {guess.mean, guess.deviation, 0};
  double squares = 0;
  for (const double x : periods)
    squares += (x - own.mean) * (x - own.mean);
  own.deviation =
      periods.size() == 1 ? own.mean : std::sqrt(squares / static_cast<double>(periods.size() - 1));
  if (periods.size() >= enough) return own;
  const double w = static_cast<double>(periods.size()) / static_cast<double>(enough);
  own.mean = w * own.mean + (1 - w) * guess.mean;
  own.deviation = std::sqrt(w * own.deviation * own.deviation + (1 - w) * guess.deviation * guess.deviation);
  return own;
}

Demand of_part(const Demand& demand, int parts) {
  return {demand.mean / parts, demand.deviation / std::sqrt(static_cast<double>(parts)), demand.periods};
}

} // namespace nutward::supply
