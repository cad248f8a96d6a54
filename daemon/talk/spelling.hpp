// Typing mistakes: one letter wrong, missing, too many, or two neighbours swapped, each counts one (Damerau,
// 1964, in the form where no part is changed twice).
#pragma once

#include <cstddef>
#include <string_view>

namespace nutward::talk {

// The distance in bytes of folded text, or most + 1 where it is more than `most`.
int distance(std::string_view a, std::string_view b, int most);

// How far a typed word may be from a known one of that many letters: 0 up to three, 1 for four, 2 up to
// eight, 3 beyond.
constexpr int tolerance(std::size_t letters) {
  return letters <= 3 ? 0 : letters == 4 ? 1 : letters <= 8 ? 2 : 3;
}

// `typed` as `known` with typing mistakes: the distance, or -1. Two or more mistakes must leave the first
// letter right.
int mistyped(std::string_view typed, std::string_view known);

// The same word but for the number it stands in: "slots" and "slot".
bool same_but_plural(std::string_view a, std::string_view b);

} // namespace nutward::talk
