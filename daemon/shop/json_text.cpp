#include "shop/json_text.hpp"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>

namespace nutward::shop {

void JsonText::begin_value() {
  if (comma_) out_ += ',';
  comma_ = true;
}

void JsonText::open(char bracket) {
  begin_value();
  out_ += bracket;
  comma_ = false;
}

void JsonText::close(char bracket) {
  out_ += bracket;
  comma_ = true;
}

void JsonText::name(std::string_view name) {
  begin_value();
  write(name);
  out_ += ':';
  comma_ = false;
}

void JsonText::null() {
  begin_value();
  out_ += "null";
}

void JsonText::boolean(bool value) {
  begin_value();
  out_ += value ? "true" : "false";
}

void JsonText::whole(std::int64_t value) {
  begin_value();
  std::array<char, 24> room{};
  out_.append(room.data(), std::to_chars(room.data(), room.data() + room.size(), value).ptr);
}

void JsonText::real(double value) {
  if (!std::isfinite(value)) return null();
  begin_value();
  std::array<char, 32> room{}; // the shortest text that reads back as this double has at most 24 characters
  const char* end = std::to_chars(room.data(), room.data() + room.size(), value).ptr;
  const std::string_view digits(room.data(), static_cast<std::size_t>(end - room.data()));
  out_ += digits;
  if (digits.find_first_of(".e") == std::string_view::npos) out_ += ".0";
}

void JsonText::text(std::string_view value) {
  begin_value();
  write(value);
}

void JsonText::write(std::string_view text) {
  const bool plain = std::all_of(text.begin(), text.end(),
                                 [](char c) { return c >= 0x20 && c <= 0x7e && c != '"' && c != '\\'; });
  if (plain) {
    out_ += '"';
    out_ += text;
    out_ += '"';
  } else {
    out_ += quoted(text);
  }
}

} // namespace nutward::shop
