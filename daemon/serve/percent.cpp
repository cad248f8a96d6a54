#include "serve/percent.hpp"

namespace nutward::serve {
namespace {

int hex(char c) {
  if (c >= '0' && c <= '9') return c - '0';
  if (c >= 'a' && c <= 'f') return c - 'a' + 10;
  if (c >= 'A' && c <= 'F') return c - 'A' + 10;
  return -1;
}

} // namespace

Unescaped unescape(std::string_view text, bool plus_is_space) {
  Unescaped out;
  out.text.reserve(text.size());
  for (std::size_t i = 0; i < text.size(); ++i) {
    const bool room = text[i] == '%' && i + 2 < text.size();
    const int high = room ? hex(text[i + 1]) : -1, low = room ? hex(text[i + 2]) : -1;
    if (high >= 0 && low >= 0) {
      out.text += static_cast<char>(high * 16 + low);
      i += 2;
      continue;
    }
    if (text[i] == '%') out.whole = false;
    out.text += text[i] == '+' && plus_is_space ? ' ' : text[i];
  }
  return out;
}

} // namespace nutward::serve
