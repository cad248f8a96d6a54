#include "serve/door.hpp"

#include <string>

namespace nutward::serve {
namespace {

void append_quoted(std::string& out, std::string_view text) {
  constexpr std::string_view hex = "0123456789abcdef";
  out += '"';
  for (const char c : text) {
    const auto byte = static_cast<unsigned char>(c);
    if (c == '"' || c == '\\') {
      out += '\\';
      out += c;
    } else if (byte < 0x20) {
      out += "\\u00";
      out += hex[byte >> 4];
      out += hex[byte & 0xf];
    } else {
      out += c;
    }
  }
  out += '"';
}

} // namespace

Response problem(int status, std::string_view detail) {
  Response out;
  out.status = status;
  out.content_type = "application/problem+json";
  out.body = R"({"type":"about:blank","title":)";
  append_quoted(out.body, title_of(status));
  out.body += ",\"status\":" + std::to_string(status) + ",\"detail\":";
  append_quoted(out.body, detail);
  out.body += '}';
  return out;
}

} // namespace nutward::serve
