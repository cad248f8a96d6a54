// Mass: how much wire is how heavy. By its profile and density, or better by weighing a known length of it.
#pragma once

#include "units/mass.hpp"
#include "wire/wire.hpp"

#include <optional>
#include <span>
#include <string_view>

namespace nutward::wire {

using units::Mass;

struct Density {
  std::string_view name;  // of the alloy
  std::string_view trade; // what a bench calls it, words separated by ", "; may be empty
  double g_per_cm3 = 0;   // which is mg/mm³
  std::string_view source;
};

std::span<const Density> densities();
// The alloy that a wire's material names, by its number or the bench's word, whatever the case; nullptr where
// it names none. The longest word found decides, so that "316 stainless" is 316.
const Density* density_of(std::string_view material);

// Area of a circular segment of that chord and height (any geometry text: ½·R²·(φ − sin φ)). 0 < height ≤
// width.
double segment_area_mm2(Length chord, Length height);
// Crown as a circular segment, tang as a rectangle; nullopt where one of the four is not known. Barbs and the
// bead under the crown are left out, so that it is good to about profile_error.
std::optional<double> area_mm2(const Profile& profile);

// L = m/(ρ·area) and back. `g_per_cm3` and `area` over 0. Rounded to the nanometre and the milligram.
Length length_of(Mass mass, double g_per_cm3, double area);
Mass mass_of(Length length, double g_per_cm3, double area);

// What a metre weighs, and how well that is known: the true value is within ± error, as a share of it.
struct Linear {
  double g_per_m = 0;
  double error = 0;
};

inline constexpr double profile_error = 0.05; // from memory: measuring a crown with a caliper does no better
inline constexpr Length ruler{500'000};       // a known length is known to this

// By the profile; nullopt where area or density is not known.
std::optional<Linear> by_profile(const Profile& profile, std::optional<double> g_per_cm3);
// By weighing a known length: the errors of the ruler and of the scale (`division`) add as squares. Both over
// 0, and the mass over the division. Throws BadProfile{"mass"} where the scale is too coarse to tell (an
// error over a quarter), or what a metre weighs lies outside 2 to 100 g.
Linear calibrated(Length length, Mass mass, Mass division);

struct Weighed {
  Length length;
  Length error; // ±
};
// What net mass is how long. Net over 0.
Weighed weighed(Mass net, const Linear& linear, Mass division);

} // namespace nutward::wire
