// Profile: the cross-section of a fret wire, as far as it is known.
#pragma once

#include "units/length.hpp"

#include <optional>
#include <stdexcept>
#include <string>
#include <utility>

namespace nutward::wire {

using units::Length;

// nullopt: not known. The ranges are wide and from memory: they catch a wrong unit, not a rare wire.
struct Profile {
  std::optional<Length> crown_width;    // 0.5 to 6 mm, and wider than the tang is thick
  std::optional<Length> crown_height;   // 0.2 to 4 mm, and at most the crown's width
  std::optional<Length> tang_depth;     // 0.5 to 6 mm
  std::optional<Length> tang_thickness; // 0.2 to 2 mm
  std::optional<Length> barb_width;     // over the barbs: 0.2 to 3 mm, and at least the tang's thickness

  friend bool operator==(const Profile&, const Profile&) = default;
};

struct BadProfile : std::runtime_error {
  BadProfile(std::string which, const std::string& what, std::string remedy)
      : std::runtime_error(what), field(std::move(which)), would_do(std::move(remedy)) {}
  std::string field; // the member's name in Profile
  std::string would_do;
};

// Throws BadProfile for the first value out of its range, or that contradicts another.
void check(const Profile& profile);

} // namespace nutward::wire
