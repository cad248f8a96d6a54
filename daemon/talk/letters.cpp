#include "talk/letters.hpp"

#include <array>
#include <cstdlib>
#include <memory>

#include <utf8proc.h>

namespace nutward::talk {
namespace {

utf8proc_category_t category(char32_t c) {
  return utf8proc_category(static_cast<utf8proc_int32_t>(c));
}

bool is_space(utf8proc_category_t c) {
  return c == UTF8PROC_CATEGORY_ZS || c == UTF8PROC_CATEGORY_ZL || c == UTF8PROC_CATEGORY_ZP;
}

struct Vulgar {
  char32_t c;
  std::string_view text;
};
constexpr std::array vulgars{Vulgar{0xbc, "1/4"},   Vulgar{0xbd, "1/2"},   Vulgar{0xbe, "3/4"},
                             Vulgar{0x2153, "1/3"}, Vulgar{0x2154, "2/3"}, Vulgar{0x215b, "1/8"},
                             Vulgar{0x215c, "3/8"}, Vulgar{0x215d, "5/8"}, Vulgar{0x215e, "7/8"}};

} // namespace

void put(std::string& out, char32_t c) {
  if (c < 0x80) {
    out += static_cast<char>(c);
    return;
  }
  std::array<utf8proc_uint8_t, 4> bytes{};
  const auto n = utf8proc_encode_char(static_cast<utf8proc_int32_t>(c), bytes.data());
  for (std::size_t k = 0; k < static_cast<std::size_t>(n); ++k)
    out += static_cast<char>(bytes[k]);
}

char32_t lower(char32_t c) {
  if (c < 0x80) return c >= 'A' && c <= 'Z' ? c + 32 : c;
  return static_cast<char32_t>(utf8proc_tolower(static_cast<utf8proc_int32_t>(c)));
}

char32_t plain(char32_t c) {
  switch (c) {
  case 0x2018:
  case 0x2019:
  case 0x2032:
  case 0x02bc:
  case 0x00b4:
  case '`':
    return '\'';
  case 0x2212:
    return '-';
  case 0x2044:
  case 0x2215:
    return '/';
  case '\t':
  case '\n':
  case '\r':
    return ' ';
  default:
    break;
  }
  if (c < 0x80) return c;
  const auto kind = category(c);
  return kind == UTF8PROC_CATEGORY_PD ? U'-' : is_space(kind) ? U' ' : c;
}

bool is_letter(char32_t c) {
  if (c < 0x80) return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
  if (plain(c) != c || !vulgar(c).empty()) return false;
  const auto kind = category(c);
  return kind <= UTF8PROC_CATEGORY_NO; // from CN on: what is newer than utf8proc may be a letter
}

bool is_hidden(char32_t c) {
  return c >= 0x80 && category(c) == UTF8PROC_CATEGORY_CF;
}

std::string_view vulgar(char32_t c) {
  if (c < 0x80) return "";
  for (const Vulgar& v : vulgars) {
    if (v.c == c) return v.text;
  }
  return "";
}

std::string composed(std::string text) {
  // Below U+0300 nothing is put together, and nothing has another form.
  bool may_be = false;
  for (const char c : text)
    may_be = may_be || static_cast<unsigned char>(c) >= 0xcc;
  if (!may_be) return text;
  utf8proc_uint8_t* out = nullptr;
  const auto bytes = utf8proc_map(reinterpret_cast<const utf8proc_uint8_t*>(text.data()),
                                  static_cast<utf8proc_ssize_t>(text.size()), &out,
                                  static_cast<utf8proc_option_t>(UTF8PROC_STABLE | UTF8PROC_COMPOSE));
  const std::unique_ptr<utf8proc_uint8_t, void (*)(void*)> owned{out, std::free};
  if (bytes >= 0) text.assign(reinterpret_cast<const char*>(out), static_cast<std::size_t>(bytes));
  return text; // not UTF-8: as it is
}

} // namespace nutward::talk
