#include "serve/framing.hpp"

#include <algorithm>
#include <array>
#include <charconv>

namespace nutward::serve {
namespace {

bool is_digit(char c) {
  return c >= '0' && c <= '9';
}
bool is_alpha(char c) {
  return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
}

// tchar of RFC 9110 §5.6.2
bool is_token_char(char c) {
  return is_digit(c) || is_alpha(c) || std::string_view("!#$%&'*+-.^_`|~").find(c) != std::string_view::npos;
}

bool is_token(std::string_view text) {
  return !text.empty() && std::all_of(text.begin(), text.end(), is_token_char);
}

bool is_control(char c) {
  return (c >= 0 && c < 0x20 && c != '\t') || c == 0x7f;
}

bool same_word(std::string_view a, std::string_view lower) {
  auto equal = [](char x, char y) {
    return (x >= 'A' && x <= 'Z' ? static_cast<char>(x + ('a' - 'A')) : x) == y;
  };
  return a.size() == lower.size() && std::equal(a.begin(), a.end(), lower.begin(), equal);
}

std::string_view trimmed(std::string_view text) {
  const auto first = text.find_first_not_of(" \t");
  if (first == std::string_view::npos) return {};
  return text.substr(first, text.find_last_not_of(" \t") - first + 1);
}

// The fields that may come once only: a second one is how requests are smuggled, or leaves open which one
// counts.
enum Once {
  host,
  content_length,
  transfer_encoding,
  expect,
  content_type,
  idempotency_key,
  authorization,
  origin,
  fetch_site,
  once_count
};
constexpr std::array<std::string_view, once_count> once_names{
    "host",          "content-length", "transfer-encoding", "expect", "content-type", "idempotency-key",
    "authorization", "origin",         "sec-fetch-site"};
using Fields = std::array<std::optional<std::string_view>, once_count>;

struct RequestLine {
  std::string_view method;
  bool http_1_0 = false;
};

RequestLine read_request_line(std::string_view line) {
  const auto first = line.find(' ');
  const auto last = line.rfind(' ');
  if (first == std::string_view::npos || first == last)
    throw Fault(400,
                "The request line must be a method, a target and a version with one space between them.");
  RequestLine out{line.substr(0, first)};
  const auto target = line.substr(first + 1, last - first - 1);
  const auto version = line.substr(last + 1);
  if (!is_token(out.method) || out.method.size() > 32)
    throw Fault(400, "The method is not one word of at most 32 letters.");
  if (target.empty() || target[0] != '/')
    throw Fault(
        400, "The target must begin with '/': neither a whole URL nor an authority nor '*' is served here.");
  const auto printable = [](char c) { return c > 0x20 && c < 0x7f && c != '#'; };
  if (!std::all_of(target.begin(), target.end(), printable))
    throw Fault(400, "The target holds a character that must be percent-encoded.");
  const bool shaped = version.size() == 8 && version.substr(0, 5) == "HTTP/" && is_digit(version[5]) &&
                      version[6] == '.' && is_digit(version[7]);
  if (!shaped) throw Fault(400, "The request line must end in HTTP/1.1.");
  out.http_1_0 = version == "HTTP/1.0";
  if (!out.http_1_0 && version != "HTTP/1.1") throw Fault(505, "Only HTTP/1.1 and HTTP/1.0 are served here.");
  return out;
}

void read_field(std::string_view line, Fields& fields) {
  if (line[0] == ' ' || line[0] == '\t') throw Fault(400, "A field may not be folded over two lines.");
  const auto colon = line.find(':');
  if (colon == std::string_view::npos || !is_token(line.substr(0, colon)))
    throw Fault(400, "A field must be a name, directly followed by a colon, and a value.");
  const auto name = line.substr(0, colon);
  for (std::size_t i = 0; i < once_count; ++i) {
    if (!same_word(name, once_names[i])) continue;
    if (fields[i]) throw Fault(400, "The field " + std::string(once_names[i]) + " may come only once.");
    fields[i] = trimmed(line.substr(colon + 1));
  }
}

void check_host(const Fields& fields, bool http_1_0) {
  if (!fields[host]) {
    if (http_1_0) return;
    throw Fault(400, "An HTTP/1.1 request must have a Host field.");
  }
  const auto fine = [](char c) {
    return is_digit(c) || is_alpha(c) ||
           std::string_view("-._~%!$&'()*+,;=:[]").find(c) != std::string_view::npos;
  };
  if (!std::all_of(fields[host]->begin(), fields[host]->end(), fine))
    throw Fault(400, "The Host field names no host.");
}

std::uint64_t read_length(std::string_view text, std::size_t limit) {
  if (text.empty() || !std::all_of(text.begin(), text.end(), is_digit))
    throw Fault(400, "Content-Length must be one number in digits.");
  std::uint64_t value = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
  if (error != std::errc{} || value > limit)
    throw Fault(413, "The body is too large: at most " + std::to_string(limit) + " bytes are taken.");
  return value;
}

} // namespace

std::optional<std::size_t> end_of_head(std::string_view bytes, std::size_t& from) {
  if (!bytes.empty() && !is_token_char(bytes[0]))
    throw Fault(400, "This does not begin like an HTTP request.");
  for (; from < bytes.size(); ++from) {
    const char c = bytes[from];
    if (c == '\r') {
      if (from + 1 == bytes.size()) return std::nullopt; // looked at again when its LF is here
      if (bytes[from + 1] != '\n') throw Fault(400, "A carriage return must be followed by a line feed.");
    } else if (c == '\n') {
      if (from == 0 || bytes[from - 1] != '\r')
        throw Fault(400, "Lines must end in a carriage return and a line feed.");
      if (from >= 3 && bytes[from - 2] == '\n') return from + 1;
    } else if (is_control(c)) {
      throw Fault(400, "Control characters are not allowed before the body.");
    }
  }
  return std::nullopt;
}

Framing read_framing(std::string_view head, std::size_t body_limit) {
  auto next_line = [&head] {
    const auto line = head.substr(0, head.find("\r\n"));
    head.remove_prefix(std::min(head.size(), line.size() + 2));
    return line;
  };
  const auto start = read_request_line(next_line());
  Fields fields;
  for (auto line = next_line(); !line.empty(); line = next_line())
    read_field(line, fields);
  check_host(fields, start.http_1_0);

  Framing out;
  if (const auto& coding = fields[transfer_encoding]) {
    if (start.http_1_0) throw Fault(400, "HTTP/1.0 knows no Transfer-Encoding.");
    if (fields[content_length])
      throw Fault(400, "Content-Length and Transfer-Encoding may not come together.");
    if (!same_word(*coding, "chunked"))
      throw Fault(501, "The only transfer coding understood here is chunked.");
    out.chunked = true;
  }
  if (fields[content_length]) out.length = read_length(*fields[content_length], body_limit);
  if (fields[expect]) {
    if (!same_word(*fields[expect], "100-continue"))
      throw Fault(417, "The only expectation met here is 100-continue.");
    out.wants_continue = !start.http_1_0;
  }
  const bool has_body = start.method == "POST" || start.method == "PUT" || start.method == "PATCH";
  if (has_body && !out.chunked && !out.length)
    throw Fault(411,
                "A " + std::string(start.method) + " must say its Content-Length (0 if it has no body).");
  return out;
}

} // namespace nutward::serve
