// UTF-8, one character at a time (RFC 3629). Overlong forms, surrogates, values beyond U+10FFFF and cut-off
// sequences are not UTF-8.
#pragma once

#include <cstddef>
#include <string_view>

namespace nutward::units {

struct Utf8Char {
  char32_t code = 0;
  std::size_t bytes =
      0; // 1 to 4; 0 at the end of the text. A byte that is not UTF-8: `ok` false, code the byte, bytes 1
  bool ok = true;
};

// The character that begins at byte `at`. Pure, never throws; any `at` will do.
Utf8Char utf8_at(std::string_view text, std::size_t at);

} // namespace nutward::units
