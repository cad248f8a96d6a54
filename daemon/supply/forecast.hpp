// Forecast: how much of a wire new work will take, from what it took week by week. A shop refrets now and
// then, so that most weeks take none of a wire and some take much: the sizes of what was taken and the
// intervals between are smoothed apart (J. D. Croston, "Forecasting and stock control for intermittent
// demands", Operational Research Quarterly 23 (1972) 289), and the quotient, which alone would be too high,
// is cut (A. A. Syntetos and J. E. Boylan, International Journal of Forecasting 21 (2005) 303).
#pragma once

#include "supply/bad_supply.hpp"

#include <optional>
#include <span>

namespace nutward::supply {

inline constexpr double usual_smoothing = 0.1; // from memory: what is usual for lumpy demand

// All in the unit of what was given, an interval in its periods.
struct Lumpy {
  double size = 0;       // smoothed, of the periods that took something
  double interval = 0;   // smoothed, from one of these to the next; the first is counted from the beginning
  std::size_t taken = 0; // in how many periods something was taken
  double croston() const { return size / interval; }
  double smoothing = usual_smoothing;
  // What a period takes on the mean, after Syntetos and Boylan: (1 − α/2) · size/interval.
  double a_period() const { return (1 - smoothing / 2) * croston(); }
};

// `periods`: what each took, the oldest first, none negative. Both smoothed values begin with the first one
// seen. nullopt where nothing was taken at all. BadSupply for a negative one, or α not over 0 and at most 1.
std::optional<Lumpy> lumpy(std::span<const double> periods, double smoothing = usual_smoothing);

// How much a period takes, and how far it strays from that.
struct Demand {
  double mean = 0;
  double deviation = 0;    // standard, of one period
  std::size_t periods = 0; // that it is known from; 0: a guess
};

// The mean by lumpy(), the deviation about it over all periods, √(Σ(x−mean)²/(n−1)), or with one period the
// mean itself. Where there are fewer than `enough` periods, `guess` counts as the rest of them: a shop that
// is new is neither without demand nor sure of it.
Demand demand(std::span<const double> periods, const Demand& guess, std::size_t enough = 8,
              double smoothing = usual_smoothing);

// The same of a shorter period, `parts` of which make one, each apart from the others (7 for days of weeks):
// the mean is divided by it, the deviation by its root.
Demand of_part(const Demand& demand, int parts);

} // namespace nutward::supply
