// The TCP address that clients of this machine connect to. Plain system calls, no network library.
#pragma once

#include "serve/door.hpp"

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace nutward::serve {

struct Loopback {
  std::string host;       // as the kernel writes it: "127.0.0.1", "::1"
  bool six = false;       // IPv6
  std::uint16_t port = 0; // 0: whichever is free
};

// "127.0.0.1:8765", "localhost:0", "[::1]:8765". localhost is 127.0.0.1: no name is looked up. Throws
// DoorError for what is none of these, and for an address that other machines can reach: tokens would cross
// the network as plain text.
Loopback read_loopback(std::string_view text);

// "127.0.0.1:8765", "[::1]:8765"
std::string written(const Loopback& at);

// Binds and listens; `at.port` becomes the port there is. Returns the descriptor, close-on-exec, which the
// caller owns. Throws DoorError.
int listen_at(Loopback& at);

// What a Host field may say to be meant for this address, in lower case: its number and localhost, with the
// port (and without it where it is 80).
std::vector<std::string> hosts_of(const Loopback& at);

} // namespace nutward::serve
