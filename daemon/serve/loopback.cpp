#include "serve/loopback.hpp"

#include <algorithm>
#include <arpa/inet.h>
#include <array>
#include <cerrno>
#include <charconv>
#include <cstring>
#include <netinet/in.h>
#include <sys/socket.h>
#include <system_error>
#include <unistd.h>

namespace nutward::serve {
namespace {

constexpr const char* shape =
    "Give it as 127.0.0.1:8765, localhost:8765 or [::1]:8765; port 0 takes a free one.";

// The text is repeated in an error, which may go into a log: no more of it than a person needs.
[[noreturn]] void refuse(std::string_view text, const std::string& why) {
  throw DoorError("--http " + std::string(text.substr(0, 60)) + ": " + why, shape);
}

std::uint16_t read_port(std::string_view text, std::string_view digits) {
  unsigned port = 0;
  const auto [end, error] = std::from_chars(digits.data(), digits.data() + digits.size(), port);
  if (error != std::errc{} || end != digits.data() + digits.size() || port > 65535)
    refuse(text, "the port must be a number from 0 to 65535.");
  return static_cast<std::uint16_t>(port);
}

// The number as the kernel writes it; false: it is none.
template <class Address>
bool same_number(int family, std::string& host, Address& out) {
  if (::inet_pton(family, host.c_str(), &out) != 1) return false;
  std::array<char, INET6_ADDRSTRLEN> room{};
  host = ::inet_ntop(family, &out, room.data(), room.size());
  return true;
}

bool is_loopback(std::string& host, bool six) {
  if (six) {
    in6_addr address{};
    return same_number(AF_INET6, host, address) && IN6_IS_ADDR_LOOPBACK(&address);
  }
  in_addr address{};
  return same_number(AF_INET, host, address) && (ntohl(address.s_addr) >> 24) == 127;
}

bool is_number(const std::string& host, bool six) {
  in6_addr address{};
  return ::inet_pton(six ? AF_INET6 : AF_INET, host.c_str(), &address) == 1;
}

[[noreturn]] void refuse_listening(const Loopback& at, int error) {
  const std::string what =
      "The address " + written(at) + " cannot be listened at: " + std::system_category().message(error) + ".";
  if (error == EADDRINUSE) throw DoorError(what, "Choose another port, or 0 for one that is free.");
  if (error == EACCES) throw DoorError(what, "Choose a port from 1024 on, or 0 for one that is free.");
  throw DoorError(what, "Choose another loopback address, or leave --http out.");
}

int bound(const Loopback& at) {
  const int made = ::socket(at.six ? AF_INET6 : AF_INET, SOCK_STREAM | SOCK_CLOEXEC, 0);
  if (made < 0) return -1;
  const int on = 1;
  ::setsockopt(made, SOL_SOCKET, SO_REUSEADDR, &on, sizeof on); // connections of a daemon before may linger
  sockaddr_in four{};
  sockaddr_in6 six{};
  four.sin_family = AF_INET;
  six.sin6_family = AF_INET6;
  four.sin_port = six.sin6_port = htons(at.port);
  ::inet_pton(AF_INET, at.host.c_str(), &four.sin_addr);
  ::inet_pton(AF_INET6, at.host.c_str(), &six.sin6_addr);
  const int result = at.six ? ::bind(made, reinterpret_cast<const sockaddr*>(&six), sizeof six)
                            : ::bind(made, reinterpret_cast<const sockaddr*>(&four), sizeof four);
  if (result == 0 && ::listen(made, 128) == 0) return made;
  const int error = errno;
  ::close(made);
  errno = error;
  return -1;
}

} // namespace

Loopback read_loopback(std::string_view text) {
  if (text.find("://") != std::string_view::npos) refuse(text, "this is a URL, and a HOST:PORT is wanted.");
  if (text.find_first_of("@/?") != std::string_view::npos)
    throw DoorError("--http takes nothing but HOST:PORT, and never a token.",
                    shape); // not repeated: it may be one
  const auto colon = text.rfind(':');
  if (colon == std::string_view::npos) refuse(text, "the port is missing.");
  Loopback out;
  out.port = read_port(text, text.substr(colon + 1));
  std::string_view host = text.substr(0, colon);
  out.six = host.size() > 2 && host.front() == '[' && host.back() == ']';
  if (out.six) host = host.substr(1, host.size() - 2);
  out.host = host == "localhost" && !out.six ? "127.0.0.1" : std::string(host);
  if (is_loopback(out.host, out.six)) return out;
  if (is_number(out.host, out.six))
    refuse(text, "other machines could reach that address. Only loopback ones are listened at.");
  refuse(text, "that is no loopback address.");
}

std::string written(const Loopback& at) {
  return (at.six ? "[" + at.host + "]" : at.host) + ":" + std::to_string(at.port);
}

int listen_at(Loopback& at) {
  const int made = bound(at);
  if (made < 0) refuse_listening(at, errno);
  sockaddr_storage got{};
  socklen_t size = sizeof got;
  if (::getsockname(made, reinterpret_cast<sockaddr*>(&got), &size) != 0) {
    const int error = errno;
    ::close(made);
    refuse_listening(at, error);
  }
  at.port = ntohs(at.six ? reinterpret_cast<const sockaddr_in6&>(got).sin6_port
                         : reinterpret_cast<const sockaddr_in&>(got).sin_port);
  return made;
}

std::vector<std::string> hosts_of(const Loopback& at) {
  std::vector<std::string> out{written(at), "localhost:" + std::to_string(at.port)};
  if (at.port == 80) {
    out.push_back(out[0].substr(0, out[0].size() - 3));
    out.emplace_back("localhost");
  }
  return out;
}

} // namespace nutward::serve
