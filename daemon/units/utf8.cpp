#include "units/utf8.hpp"

namespace nutward::units {
namespace {

struct Lead {
  std::size_t bytes;
  char32_t bits;  // what the lead byte contributes
  char32_t least; // the smallest character that needs so many bytes; below it the form is overlong
};

Lead lead_of(unsigned char b) {
  if (b < 0x80) return {1, b, 0};
  if (b >= 0xc2 && b <= 0xdf) return {2, b & 0x1fu, 0x80};
  if (b >= 0xe0 && b <= 0xef) return {3, b & 0x0fu, 0x800};
  if (b >= 0xf0 && b <= 0xf4) return {4, b & 0x07u, 0x10000};
  return {0, 0, 0};
}

} // namespace

Utf8Char utf8_at(std::string_view text, std::size_t at) {
  if (at >= text.size()) return {};
  const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[at + i]); };
  const Utf8Char bad{byte(0), 1, false};
  const Lead lead = lead_of(byte(0));
  if (lead.bytes == 0 || lead.bytes > text.size() - at) return bad;
  char32_t code = lead.bits;
  for (std::size_t i = 1; i < lead.bytes; ++i) {
    if ((byte(i) & 0xc0u) != 0x80u) return bad;
    code = code << 6 | (byte(i) & 0x3fu);
  }
  const bool surrogate = code >= 0xd800 && code <= 0xdfff;
  if (code < lead.least || code > 0x10ffff || surrogate) return bad;
  return {code, lead.bytes, true};
}

} // namespace nutward::units
