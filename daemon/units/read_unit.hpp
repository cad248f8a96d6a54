// The unit behind a number. For the readers in this folder; others want read.hpp.
#pragma once

#include "units/read_number.hpp"

#include <cstddef>
#include <cstdint>
#include <string_view>

namespace nutward::units {

enum class Kind { length, force, mass };

// One of a unit is num/den nanometres, newtons or milligrams; exact.
struct Scale {
  std::int64_t num = 1;
  std::int64_t den = 1;

  friend constexpr bool operator==(Scale, Scale) = default;
};

inline constexpr Scale inch_scale{25'400'000};
inline constexpr Scale foot_scale{304'800'000};

struct Unit {
  enum class Found {
    none,   // no unit stands there: the shop's is meant
    unit,   // a unit of the kind that is wanted
    strange // letters glued to the number that are no unit (`12th`, `24h`): not a quantity at all
  };
  Found found = Found::none;
  Scale scale{};
  std::size_t end = 0; // the first byte behind it; where none was found, behind the number
};

// The unit behind `n`, which was scanned from `text`. `bare` is what a number without one means.
// Throws BadQuantity for a unit of another kind, a ton, `Mg`, a unit over or to the power of something, and
// an `in` that may or may not be inches.
//
// When is `in` inches, and when the word? Inches: glued to the number or joined by a hyphen (`2in`, `2-in
// bar`); at the end of the text; before punctuation; before a word that goes on about a size (of, from, by,
// at, and, x, wide, long, radius, scale, bar …). The word: before a place, an article, a number or a word for
// one, or a time (`9 in slot 3`, `9 in the tin`, `9 in 24 h`). Anything else is asked about, and so is a
// fraction before a place (`1 3/4 in the tin`), unless the shop's unit is the inch and both readings are the
// same.
Unit scan_unit(std::string_view text, const Number& n, Kind kind, Scale bare);

// What a bare number's unit is called in a message: "a length", and what to write instead.
std::string_view name_of(Kind kind);
std::string_view example_of(Kind kind);

} // namespace nutward::units
