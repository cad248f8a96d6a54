#include "remind/address.hpp"

#include <arpa/inet.h>
#include <fmt/format.h>
#include <netinet/in.h>

#include <algorithm>
#include <charconv>
#include <cstring>
#include <optional>
#include <span>

namespace nutward::remind {

namespace {

Address v4(std::span<const std::uint8_t> bytes) {
  Address a;
  std::copy_n(bytes.begin(), 4, a.bytes.begin());
  return a;
}

std::optional<Address> from_text(const std::string& text) {
  Address a;
  if (inet_pton(AF_INET, text.c_str(), a.bytes.data()) == 1) return a;
  a.v6 = true;
  if (inet_pton(AF_INET6, text.c_str(), a.bytes.data()) == 1) return a;
  return std::nullopt;
}

std::optional<Address> from_sockaddr(const sockaddr* address, socklen_t size) {
  // Copied out, never cast: the bytes behind a sockaddr need not be aligned for the longer types.
  if (address->sa_family == AF_INET && size >= sizeof(sockaddr_in)) {
    sockaddr_in in{};
    std::memcpy(&in, address, sizeof in);
    Address a;
    std::memcpy(a.bytes.data(), &in.sin_addr, 4);
    return a;
  }
  if (address->sa_family == AF_INET6 && size >= sizeof(sockaddr_in6)) {
    sockaddr_in6 in{};
    std::memcpy(&in, address, sizeof in);
    Address a{true, {}};
    std::memcpy(a.bytes.data(), &in.sin6_addr, 16);
    return a;
  }
  return std::nullopt;
}

Network network(const char* base, int bits) {
  return {from_text(base).value(), bits};
}

// The IPv4 address that a packet to this IPv6 address ends up at: mapped (RFC 4291), NAT64 (RFC 6052), 6to4
// (RFC 3056).
Address unwrap(const Address& a) {
  static const Network mapped = network("::ffff:0:0", 96), nat64 = network("64:ff9b::", 96),
                       six_to_four = network("2002::", 16);
  if (!a.v6) return a;
  const std::span<const std::uint8_t> bytes(a.bytes);
  if (mapped.holds(a) || nat64.holds(a)) return v4(bytes.subspan(12));
  if (six_to_four.holds(a)) return v4(bytes.subspan(2));
  return a;
}

struct Class {
  Network network;
  const char* name;
};

// The special-purpose address registries of IANA (RFC 6890 and its updates), as far as they are not reachable
// publicly.
const std::vector<Class>& never() {
  static const std::vector<Class> list{
      {network("0.0.0.0", 8), "not an address of any one machine"},
      {network("169.254.0.0", 16), "link-local"},
      {network("224.0.0.0", 4), "multicast"},
      {network("240.0.0.0", 4), "reserved or broadcast"},
      {network("::", 128), "not an address of any one machine"},
      {network("fe80::", 10), "link-local"},
      {network("ff00::", 8), "multicast"},
  };
  return list;
}

const std::vector<Class>& not_public() {
  static const std::vector<Class> list{
      {network("10.0.0.0", 8), "private"},
      {network("100.64.0.0", 10), "shared by a provider"},
      {network("172.16.0.0", 12), "private"},
      {network("192.0.0.0", 24), "special"},
      {network("192.0.2.0", 24), "for documents"},
      {network("192.88.99.0", 24), "a relay"},
      {network("192.168.0.0", 16), "private"},
      {network("198.18.0.0", 15), "for measurements"},
      {network("198.51.100.0", 24), "for documents"},
      {network("203.0.113.0", 24), "for documents"},
  };
  return list;
}

const std::vector<Class>& loopback() {
  static const std::vector<Class> list{{network("127.0.0.0", 8), "loopback"},
                                       {network("::1", 128), "loopback"}};
  return list;
}

// In IPv6 only 2000::/3 is handed out as public; these are the exceptions within it.
const std::vector<Class>& not_public_v6() {
  static const std::vector<Class> list{{network("2001::", 23), "special"},
                                       {network("2001:db8::", 32), "for documents"},
                                       {network("3fff::", 20), "for documents"}};
  return list;
}

const char* find(const std::vector<Class>& list, const Address& a) {
  const auto it = std::find_if(list.begin(), list.end(), [&](const Class& c) { return c.network.holds(a); });
  return it == list.end() ? nullptr : it->name;
}

// Why the address is not a public one; nullptr: it is.
const char* special(const Address& a) {
  static const Network handed_out = network("2000::", 3);
  if (!a.v6) return find(not_public(), a);
  if (!handed_out.holds(a)) return "private or special";
  return find(not_public_v6(), a);
}

Verdict refuse(const Address& a, std::string_view what, std::string_view remedy) {
  return {false, fmt::format("{} may not be called: it is {}. {}", print(a), what, remedy)};
}

} // namespace

bool Network::holds(const Address& a) const {
  if (a.v6 != base.v6) return false;
  for (int i = 0, left = bits; left > 0; ++i, left -= 8) {
    const auto mask = static_cast<std::uint8_t>(left >= 8 ? 0xff : 0xff << (8 - left));
    const auto at = static_cast<std::size_t>(i);
    if ((a.bytes[at] & mask) != (base.bytes[at] & mask)) return false;
  }
  return true;
}

std::string print(const Address& address) {
  char text[INET6_ADDRSTRLEN] = "";
  inet_ntop(address.v6 ? AF_INET6 : AF_INET, address.bytes.data(), text, sizeof text);
  return text;
}

namespace {

Network parse_network(const std::string& entry) {
  constexpr const char* remedy = "Write networks as in 192.168.0.0/16, 10.1.2.3 or fd00::/8.";
  const std::size_t slash = entry.find('/');
  const auto base = from_text(entry.substr(0, slash));
  if (!base)
    throw BadNetwork(fmt::format("\"{}\" does not begin with an IPv4 or IPv6 address.", entry), remedy);
  Network n{*base, base->v6 ? 128 : 32};
  if (slash == std::string::npos) return n;
  const char *first = entry.data() + slash + 1, *last = entry.data() + entry.size();
  int bits = -1;
  const auto [end, error] = std::from_chars(first, last, bits);
  if (first == last || error != std::errc{} || end != last || bits < 0 || bits > n.bits)
    throw BadNetwork(fmt::format("\"{}\" needs a number from 0 to {} after the slash.", entry, n.bits),
                     remedy);
  n.bits = bits;
  for (int i = bits; i < (base->v6 ? 128 : 32); ++i)
    if (base->bytes[static_cast<std::size_t>(i / 8)] & (0x80 >> (i % 8)))
      throw BadNetwork(fmt::format("\"{}\" has bits set beyond its first {}.", entry, bits), remedy);
  return n;
}

} // namespace

std::vector<Network> parse_networks(std::string_view text) {
  constexpr std::string_view between = ", \t\r\n";
  std::vector<Network> list;
  for (std::size_t at = text.find_first_not_of(between); at != std::string_view::npos;) {
    const std::size_t end = std::min(text.find_first_of(between, at), text.size());
    list.push_back(parse_network(std::string(text.substr(at, end - at))));
    at = text.find_first_not_of(between, end);
  }
  return list;
}

Verdict allowed(const Address& said, Scheme scheme, const Policy& policy) {
  const Address a = unwrap(said);
  if (const char* name = find(never(), a))
    return refuse(said, name, "No setting opens it; give another address.");
  const bool listed = std::any_of(policy.listed.begin(), policy.listed.end(),
                                  [&](const Network& n) { return n.holds(a) || n.holds(said); });
  if (listed) return {true, ""};
  if (find(loopback(), a)) {
    if (policy.loopback) return {true, ""};
    return refuse(said, "loopback", "The owner can allow it in the shop's settings.");
  }
  if (const char* name = special(a))
    return refuse(said, name, "The owner can list its network among those that may be called.");
  if (!policy.public_over_https)
    return refuse(said, "public", "The owner can allow public addresses or list this one.");
  if (scheme != Scheme::https)
    return refuse(said, "public and the URL is http", "Use https, or let the owner list its network.");
  return {true, ""};
}

Verdict allowed(const sockaddr* address, socklen_t size, Scheme scheme, const Policy& policy) {
  const auto a = from_sockaddr(address, size);
  if (!a) return {false, "Only IPv4 and IPv6 addresses may be called."};
  return allowed(*a, scheme, policy);
}

} // namespace nutward::remind
