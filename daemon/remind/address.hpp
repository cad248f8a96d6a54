// Which addresses may be called. Receivers stand in the workshop's own network, so an owner says which
// private networks are meant; everything else that is not public stays closed, so that the name of a receiver
// cannot be used to reach machines behind the daemon. Judged is the address a name came out as, never the
// text of the URL: 127.1, 2130706433, 0x7f000001 and ::ffff:127.0.0.1 are all loopback. Pure.
//
//   never            unspecified, link-local (169.254.0.0/16 with the clouds' metadata service, fe80::/10),
//   multicast,
//                    broadcast and reserved; no setting opens these
//   loopback         allowed by default, over http and https
//   listed networks  allowed, over http and https
//   public           allowed over https only
//   all else         private, shared, documentation, benchmarking, tunnels …: refused unless listed
// An IPv6 address that carries an IPv4 one (mapped, NAT64 64:ff9b::/96, 6to4) is judged as that IPv4 address.
#pragma once

#include <sys/socket.h>

#include <array>
#include <cstdint>
#include <stdexcept>
#include <string>
#include <string_view>
#include <vector>

namespace nutward::remind {

// An IPv4 address (four bytes used) or an IPv6 one, in network order.
struct Address {
  bool v6 = false;
  std::array<std::uint8_t, 16> bytes{};
  friend bool operator==(const Address&, const Address&) = default;
};

struct Network {
  Address base;
  int bits = 0; // 0..32 or 0..128
  bool holds(const Address& a) const;
};

// what(): which entry is wrong and how; would_do: an example that works.
struct BadNetwork : std::runtime_error {
  BadNetwork(const std::string& what, std::string remedy)
      : std::runtime_error(what), would_do(std::move(remedy)) {}
  std::string would_do;
};

// "192.168.0.0/16, 10.1.2.3 fd00::/8": separated by commas or blanks; without a slash it is that one address.
// A base with bits beyond its prefix (192.168.1.7/16) is refused, since one of the two numbers is a slip.
// Empty text: empty list.
std::vector<Network> parse_networks(std::string_view text);

struct Policy {
  bool loopback = true;
  bool public_over_https = true;
  std::vector<Network> listed; // the owner's setting
};

enum class Scheme { http, https };

struct Verdict {
  bool allowed = false;
  std::string why; // refused: a whole sentence, with what would do
};

Verdict allowed(const sockaddr* address, socklen_t size, Scheme scheme, const Policy& policy);
Verdict allowed(const Address& address, Scheme scheme, const Policy& policy);

std::string print(const Address& address);

} // namespace nutward::remind
