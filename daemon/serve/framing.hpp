// Where one request ends and the next begins (RFC 9112), checked on the bytes as they came, before the HTTP
// library reads them. Whatever two parsers could read differently is refused, so that a request can never
// hide inside another. Pure functions.
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <stdexcept>
#include <string>
#include <string_view>

namespace nutward::serve {

// A request that is refused by the door: the status to answer, and what() as the problem's detail. The
// connection is closed after it, since nobody knows where the next request would begin.
struct Fault : std::runtime_error {
  Fault(int code, const std::string& detail) : std::runtime_error(detail), status(code) {}
  int status;
};

// How many bytes the request line and the fields take, with the empty line after them; nullopt: not complete
// yet. `from` is where the last call stopped (0 at first) and is moved on. Throws Fault 400 as soon as the
// bytes cannot become a request: control characters, a line end that is not CR LF, a first byte that begins
// no method.
std::optional<std::size_t> end_of_head(std::string_view bytes, std::size_t& from);

struct Framing {
  bool chunked = false;
  std::optional<std::uint64_t> length; // Content-Length, at most the limit
  bool wants_continue = false;         // Expect: 100-continue
};

// Reads a complete head (as end_of_head measured it). Throws Fault: 400 for bad framing, 411 for a POST, PUT
// or PATCH that says no length, 413 for a length over `body_limit`, 417 for an unknown expectation, 501 for a
// transfer coding other than chunked, 505 for a version other than 1.0 and 1.1.
Framing read_framing(std::string_view head, std::size_t body_limit);

} // namespace nutward::serve
