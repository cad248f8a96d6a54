// Percent-encoding (RFC 3986, 2.1), undone in one pass.
#pragma once

#include <string>
#include <string_view>

namespace nutward::serve {

struct Unescaped {
  std::string text;  // a percent sign without two hex digits stands as it was
  bool whole = true; // no such sign
};
// Once, not again: "%2541" is "%41".
Unescaped unescape(std::string_view text, bool plus_is_space);

} // namespace nutward::serve
