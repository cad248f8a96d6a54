// Reading quantities as people write them: `52.4 mm`, `5.24 cm`, `2 1/16 in`, `2-1/16"`, `2.0625"`, `1¾ in`,
// `1'`, `400 lb`, `35.5 N`, `1.8 kN`, `310 g`, `2 oz`. Decimals are read as exact fractions, never through a
// double, and rounded to the unit of the type only when they do not fit it.
//
// All functions are pure and take UTF-8. A scan reads one quantity at the very start of the text (after
// spaces) and says how many bytes it took; a read wants the whole text to be one quantity and throws
// BadQuantity if it is not.
#pragma once

#include "units/force.hpp"
#include "units/instant.hpp"
#include "units/length.hpp"
#include "units/mass.hpp"
#include "units/money.hpp"

#include <cstddef>
#include <optional>
#include <stdexcept>
#include <string>
#include <string_view>

namespace nutward::units {

enum class LengthUnit { mm, cm, m, in, ft };
enum class ForceUnit { n, kn, lbf, kgf };
enum class MassUnit { mg, g, kg, oz, lb };

// What was wrong (a whole sentence for a person), where in the text (byte offset), and what would do.
struct BadQuantity : std::runtime_error {
  BadQuantity(const std::string& what, std::size_t offset, std::string remedy)
      : std::runtime_error(what), at(offset), would_do(std::move(remedy)) {}
  std::size_t at;
  std::string would_do;
};

template <class T>
struct Scanned {
  T value{};
  std::size_t bytes = 0;  // how much of the text it took, from the start
  bool unit_said = false; // false: the shop's unit was assumed
};

// nullopt: the text does not begin with a number. Throws BadQuantity where it begins with one that cannot be
// taken: `1,250` (a thousand or a decimal comma?), a unit of another kind, "ton" (short, long or metric?), a
// value beyond 1e15 nm (1e9 N, 1e15 mg), and an `in` that may be inches or the word (`9 in ebony`). `9 in
// slot 3`, `9 in the tin` and `9 in 24 h` are a bare 9; `2 in of medium`, `2 in, …` and `put 2 in` are
// inches: read_unit.hpp has the whole rule. A bare number is in `bare`. Negative values are taken; callers
// bound them. Feet may have inches (`1' 3 1/2"`), pounds ounces (`2 lb 3 oz`).
std::optional<Scanned<Length>> scan_length(std::string_view text, LengthUnit bare);
std::optional<Scanned<Force>> scan_force(std::string_view text, ForceUnit bare);
std::optional<Scanned<Mass>> scan_mass(std::string_view text, MassUnit bare);

Length read_length(std::string_view text, LengthUnit bare);
Force read_force(std::string_view text, ForceUnit bare);
Mass read_mass(std::string_view text, MassUnit bare);
Money read_money(std::string_view text); // "12.50", "12": two decimals at most, no sign of a currency

// RFC 3339: `2026-12-12T08:30:00Z`, with any offset; a fraction of a second is refused. Throws BadQuantity.
Instant read_instant(std::string_view text);
// ISO 8601 calendar date `2026-12-12`; a date that does not exist is refused.
Day read_day(std::string_view text);

} // namespace nutward::units
