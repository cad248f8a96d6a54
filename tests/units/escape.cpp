// What is printed cannot steer a terminal, turn the reading order or hide. UTF-8 as RFC 3629 defines it, from
// memory.
#include "support/catch.hpp"

#include "units/print.hpp"
#include "units/utf8.hpp"

#include <fmt/format.h>

#include <random>

using namespace nutward::units;

TEST_CASE("Ordinary text is left alone") {
  for (const char* text :
       {"", "52.4 mm", "2 1/16\"", "back\\slash", "1¾ ″", "Grüße", "日本", "🎸", "ﬁ", "\uFFFD", "\u00a0"}) {
    INFO(text);
    CHECK(escape_for_print(text) == text);
  }
}

TEST_CASE("Every control of C0 and DEL is escaped as a byte") {
  for (unsigned c = 0; c < 0x20; ++c)
    CHECK(escape_for_print(std::string(1, static_cast<char>(c))) == fmt::format("\\x{:02x}", c));
  CHECK(escape_for_print("\x7f") == "\\x7f");
  CHECK(escape_for_print("a\x1b[2Jb") == "a\\x1b[2Jb");
  CHECK(escape_for_print("a\nb") == "a\\x0ab");
  CHECK(escape_for_print(std::string_view("a\0b", 3)) == "a\\x00b");
}

TEST_CASE("Every control of C1 is escaped as a character") {
  for (unsigned c = 0x80; c < 0xa0; ++c)
    CHECK(escape_for_print(std::string{'\xc2', static_cast<char>(c)}) == fmt::format("\\u{:04x}", c));
}

TEST_CASE("Characters that turn the order or take no room are escaped") {
  struct Row {
    const char* text;
    const char* shown;
  };
  const auto row = GENERATE(values<Row>({
      {"\u061c", "\\u061c"}, {"\u200e", "\\u200e"},         {"\u200f", "\\u200f"},
      {"\u202a", "\\u202a"}, {"\u202b", "\\u202b"},         {"\u202c", "\\u202c"},
      {"\u202d", "\\u202d"}, {"\u202e", "\\u202e"},         {"\u2066", "\\u2066"},
      {"\u2067", "\\u2067"}, {"\u2068", "\\u2068"},         {"\u2069", "\\u2069"},
      {"\u200b", "\\u200b"}, {"\u200c", "\\u200c"},         {"\u200d", "\\u200d"},
      {"\u2060", "\\u2060"}, {"\ufeff", "\\ufeff"},         {"\u00ad", "\\u00ad"},
      {"\u2028", "\\u2028"}, {"\u2029", "\\u2029"},         {"\u180e", "\\u180e"},
      {"\ufe0f", "\\ufe0f"}, {"\U000e0041", "\\U000e0041"}, {"\U000e0100", "\\U000e0100"},
  }));
  CHECK(escape_for_print(row.text) == row.shown);
}

TEST_CASE("Bytes that are not UTF-8 are escaped one by one") {
  CHECK(escape_for_print("\xff") == "\\xff");
  CHECK(escape_for_print("\x80") == "\\x80");
  CHECK(escape_for_print("\xc0\xaf") == "\\xc0\\xaf");                   // overlong, two bytes
  CHECK(escape_for_print("\xc1\xbf") == "\\xc1\\xbf");                   // overlong, two bytes
  CHECK(escape_for_print("\xe0\x80\xaf") == "\\xe0\\x80\\xaf");          // overlong, three bytes
  CHECK(escape_for_print("\xf0\x80\x80\xaf") == "\\xf0\\x80\\x80\\xaf"); // overlong, four bytes
  CHECK(escape_for_print("\xed\xa0\x80") == "\\xed\\xa0\\x80");          // a surrogate
  CHECK(escape_for_print("\xed\xbf\xbf") == "\\xed\\xbf\\xbf");          // a surrogate
  CHECK(escape_for_print("\xf4\x90\x80\x80") == "\\xf4\\x90\\x80\\x80"); // beyond U+10FFFF
  CHECK(escape_for_print("\xf5\x80\x80\x80") == "\\xf5\\x80\\x80\\x80"); // beyond U+10FFFF
  CHECK(escape_for_print("\xe2\x82") == "\\xe2\\x82");                   // cut off at the end
  CHECK(escape_for_print("\xe2\x82"
                         "a") == "\\xe2\\x82"
                                 "a");                          // cut off by a letter
  CHECK(escape_for_print("\xf0\x9f\x8e") == "\\xf0\\x9f\\x8e"); // cut off at the end
  CHECK(escape_for_print("\xc3\xc3\xa9") == "\\xc3é");          // a good one behind a bad one
}

TEST_CASE("The borders of UTF-8 are drawn where RFC 3629 draws them") {
  CHECK(utf8_at("\xc2\x80", 0).code == 0x80);
  CHECK(utf8_at("\xdf\xbf", 0).code == 0x7ff);
  CHECK(utf8_at("\xe0\xa0\x80", 0).code == 0x800);
  CHECK(utf8_at("\xed\x9f\xbf", 0).code == 0xd7ff);
  CHECK(utf8_at("\xee\x80\x80", 0).code == 0xe000);
  CHECK(utf8_at("\xf0\x90\x80\x80", 0).code == 0x10000);
  CHECK(utf8_at("\xf4\x8f\xbf\xbf", 0).code == 0x10ffff);
  CHECK(utf8_at("a", 1).bytes == 0);
  CHECK(utf8_at("a", 99).bytes == 0);
}

TEST_CASE("Whatever comes in, what comes out is UTF-8 without controls and at most six times as long") {
  std::mt19937 random{7};
  for (int round = 0; round < 20'000; ++round) {
    std::string text(random() % 12, '\0');
    for (char& c : text)
      c = static_cast<char>(random() % 3 == 0 ? 0x20 + random() % 0x60 : random() % 256);
    const auto shown = escape_for_print(text);
    REQUIRE(shown.size() <= 6 * text.size());
    REQUIRE(escape_for_print(shown) == shown); // nothing is left to escape
  }
}
