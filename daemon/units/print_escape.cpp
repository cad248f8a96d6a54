#include "units/print.hpp"
#include "units/utf8.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <iterator>

namespace nutward::units {
namespace {

struct Range {
  char32_t first, last;
};

// Characters that steer a terminal, turn the reading order, or take no room and so hide something (Unicode
// 15, from memory).
constexpr std::array unsafe{
    Range{0x00, 0x1f},       // C0
    Range{0x7f, 0x9f},       // DEL, C1
    Range{0xad, 0xad},       // soft hyphen
    Range{0x34f, 0x34f},     // grapheme joiner
    Range{0x61c, 0x61c},     // Arabic letter mark
    Range{0x115f, 0x1160},   // fillers of Hangul
    Range{0x17b4, 0x17b5},   // inherent vowels of Khmer
    Range{0x180b, 0x180f},   // Mongolian selectors and separator
    Range{0x200b, 0x200f},   // zero-width space, joiners, direction marks
    Range{0x2028, 0x202e},   // line and paragraph separator, embeddings, overrides
    Range{0x2060, 0x206f},   // word joiner, invisible operators, isolates, deprecated formats
    Range{0x3164, 0x3164},   // filler of Hangul
    Range{0xfe00, 0xfe0f},   // variation selectors
    Range{0xfeff, 0xfeff},   // byte order mark
    Range{0xffa0, 0xffa0},   // filler of Hangul
    Range{0xfff9, 0xfffb},   // interlinear annotation
    Range{0xe0000, 0xe0fff}, // tags, more variation selectors
};

bool is_unsafe(char32_t c) {
  return std::any_of(unsafe.begin(), unsafe.end(), [&](Range r) { return c >= r.first && c <= r.last; });
}

} // namespace

std::string escape_for_print(std::string_view text) {
  std::string out;
  out.reserve(text.size());
  for (std::size_t at = 0; at < text.size();) {
    const auto c = utf8_at(text, at);
    const auto code = static_cast<std::uint32_t>(c.code);
    if (!c.ok || (c.bytes == 1 && is_unsafe(c.code)))
      fmt::format_to(std::back_inserter(out), "\\x{:02x}", code);
    else if (!is_unsafe(c.code))
      out.append(text, at, c.bytes);
    else if (code <= 0xffff)
      fmt::format_to(std::back_inserter(out), "\\u{:04x}", code);
    else
      fmt::format_to(std::back_inserter(out), "\\U{:08x}", code);
    at += c.bytes;
  }
  return out;
}

} // namespace nutward::units
