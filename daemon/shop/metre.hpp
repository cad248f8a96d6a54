// What a metre of a wire weighs, and from where that is known.
#pragma once

#include "shop/model.hpp"
#include "wire/mass.hpp"

#include <optional>
#include <string>

namespace nutward::shop {

struct Metre {
  wire::Linear linear;
  std::string from; // "by weighing a known length"
};

// By the wire's profile and density alone.
std::optional<Metre> metre_by_profile(const Wire& wire);
// By weighing, or else by the profile; nullopt: nobody knows.
std::optional<Metre> metre_of(const Wire& wire);
// An error as it is said: to the centimetre, upward.
std::string about_metres(Length error);
// What was weighed or worked out and not counted, as it is said: to the nearest centimetre.
std::string rounded_metres(Length length);
// As metre_of; throws Problem{state} at "wire" that says what to weigh.
Metre known_metre(const Wire& wire);

} // namespace nutward::shop
