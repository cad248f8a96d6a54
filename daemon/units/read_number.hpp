// Numbers as people write them, before any unit: `52.4`, `.5`, `2 1/16`, `2-1/16`, `1¾`, `¾`, `-5`. For the
// readers in this folder; others want read.hpp.
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace nutward::units {

__extension__ typedef __int128 Wide; // -Wpedantic knows no 128-bit integer otherwise

// The value is (whole + num/den), negated if `negative`; exact. 0 <= whole < 10^15, 0 <= num < den <= 10^18.
struct Number {
  bool negative = false;
  std::int64_t whole = 0;
  std::int64_t num = 0;
  std::int64_t den = 1;
  bool fraction = false; // written with a fraction (`3/4`, `1¾`), as inches are
  bool decimals = false; // written with a decimal point
  std::size_t end = 0;   // the first byte behind it
};

// The number that begins at byte `at`, after spaces. nullopt: there is none. Throws BadQuantity for one that
// cannot be taken: a comma or apostrophe between digits, an exponent, hexadecimal, two decimal points, a
// denominator of 0, a mixed number whose fraction is 1 or more, 16 or more digits before the point or 19
// behind it.
std::optional<Number> scan_number(std::string_view text, std::size_t at);

// The first byte at or after `at` that is no space (blank, tab, no-break, thin or narrow space).
std::size_t skip_spaces(std::string_view text, std::size_t at);

// Whether the character belongs to a word: letters and digits of any script, and `_`.
bool is_word(char32_t c);
constexpr bool is_digit(char32_t c) {
  return c >= '0' && c <= '9';
}

// The word that begins at byte `at`, which may be empty.
std::string_view word_at(std::string_view text, std::size_t at);
std::string lower_ascii(std::string_view text);

// “text” for a message: escaped, and cut at 40 bytes.
std::string quoted(std::string_view text);

// Throws BadQuantity.
[[noreturn]] void refuse(const std::string& what, std::size_t at, std::string would_do);

} // namespace nutward::units
