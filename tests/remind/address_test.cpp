#include "remind/address.hpp"
#include "support/catch.hpp"

#include <netdb.h>

#include <memory>
#include <optional>

using namespace nutward::remind;

namespace {

// As libcurl gets it: the name through the system's resolver, with no network asked.
Verdict resolved(const std::string& text, Scheme scheme, const Policy& policy = {}) {
  addrinfo hints{}, *list = nullptr;
  hints.ai_socktype = SOCK_STREAM;
  hints.ai_flags = AI_NUMERICHOST;
  INFO(text);
  REQUIRE(getaddrinfo(text.c_str(), nullptr, &hints, &list) == 0);
  const std::unique_ptr<addrinfo, decltype(&freeaddrinfo)> owner(list, freeaddrinfo);
  return allowed(list->ai_addr, list->ai_addrlen, scheme, policy);
}

bool http(const std::string& text, const Policy& policy = {}) {
  return resolved(text, Scheme::http, policy).allowed;
}
bool https(const std::string& text, const Policy& policy = {}) {
  return resolved(text, Scheme::https, policy).allowed;
}

std::string complaint(const std::string& text) {
  try {
    (void)parse_networks(text);
  } catch (const BadNetwork& e) {
    return e.what();
  }
  return "";
}

} // namespace

TEST_CASE("Loopback is recognised however it is written, by the address that it comes out as") {
  Policy closed;
  closed.loopback = false;
  for (const char* text :
       {"127.0.0.1", "127.1", "2130706433", "0x7f000001", "0x7f.1", "0177.0.0.1", "017700000001",
        "127.255.255.254", "::1", "::ffff:127.0.0.1", "::ffff:7f00:1", "64:ff9b::7f00:1", "2002:7f00:1::"}) {
    INFO(text);
    CHECK(http(text));
    CHECK(https(text));
    CHECK_FALSE(http(text, closed));
    CHECK_FALSE(https(text, closed));
  }
}

TEST_CASE("What no setting opens stays closed, even where the owner lists everything") {
  Policy open;
  open.listed = parse_networks("0.0.0.0/0, ::/0");
  for (const char* text : {"0.0.0.0",
                           "0",
                           "0.1.2.3",
                           "169.254.169.254",
                           "169.254.0.1",
                           "0xa9fea9fe",
                           "2852039166",
                           "224.0.0.1",
                           "239.255.255.255",
                           "255.255.255.255",
                           "240.0.0.1",
                           "::",
                           "fe80::1",
                           "febf::1",
                           "ff02::1",
                           "ff0e::1",
                           "::ffff:169.254.169.254",
                           "::ffff:0.0.0.0",
                           "64:ff9b::a9fe:a9fe",
                           "2002:a9fe:a9fe::"}) {
    INFO(text);
    CHECK_FALSE(https(text));
    CHECK_FALSE(https(text, open));
    CHECK_FALSE(http(text, open));
  }
}

TEST_CASE("Private and special networks are closed until the owner lists them") {
  for (const char* text :
       {"10.0.0.1", "172.16.0.1", "172.31.255.255", "192.168.1.20", "100.64.0.1", "192.0.2.1", "198.18.0.1",
        "198.51.100.1", "203.0.113.1", "fd00::1", "fc00::1", "fec0::1", "2001:db8::1", "2001::1",
        "::ffff:10.0.0.1", "::10.0.0.1", "64:ff9b:1::1", "2002:c0a8:101::"}) {
    INFO(text);
    CHECK_FALSE(https(text));
    CHECK_FALSE(http(text));
  }
  Policy owner;
  owner.listed = parse_networks("192.168.0.0/16 fd12:3456::/32");
  CHECK(http("192.168.1.20", owner));
  CHECK(https("192.168.255.255", owner));
  CHECK(http("::ffff:192.168.1.20", owner));
  CHECK(http("fd12:3456::9", owner));
  CHECK_FALSE(http("192.169.0.1", owner));
  CHECK_FALSE(http("10.0.0.1", owner));
  CHECK_FALSE(http("fd12:3457::9", owner));
}

TEST_CASE("Public addresses are called over https only, unless they are listed or closed") {
  for (const char* text :
       {"8.8.8.8", "172.15.255.255", "172.32.0.1", "100.128.0.1", "2606:4700::1", "::ffff:8.8.8.8"}) {
    INFO(text);
    CHECK(https(text));
    CHECK_FALSE(http(text));
  }
  Policy owner;
  owner.listed = parse_networks("8.8.8.0/24");
  CHECK(http("8.8.8.8", owner));
  owner.public_over_https = false;
  CHECK(https("8.8.8.8", owner));
  CHECK_FALSE(https("8.8.9.8", owner));
}

TEST_CASE("A refusal says which address, why, and what would do") {
  CHECK(resolved("10.0.0.1", Scheme::https).why == "10.0.0.1 may not be called: it is private. The owner can "
                                                   "list its network among those that may be called.");
  CHECK(resolved("8.8.8.8", Scheme::http).why ==
        "8.8.8.8 may not be called: it is public and the URL is http. Use https, "
        "or let the owner list its network.");
  CHECK(resolved("::ffff:169.254.169.254", Scheme::http).why ==
        "::ffff:169.254.169.254 may not be called: it is link-local. No setting opens it; give another "
        "address.");
  sockaddr unix_socket{};
  unix_socket.sa_family = AF_UNIX;
  CHECK(allowed(&unix_socket, sizeof unix_socket, Scheme::http, {}).why ==
        "Only IPv4 and IPv6 addresses may be called.");
  sockaddr cut_short{};
  cut_short.sa_family = AF_INET6;
  CHECK_FALSE(allowed(&cut_short, sizeof cut_short, Scheme::http, {}).allowed);
}

TEST_CASE("A list of networks is read whole or refused with the entry that is wrong") {
  CHECK(parse_networks("").empty());
  CHECK(parse_networks(" , \n").empty());
  const auto list = parse_networks("192.168.0.0/16,10.1.2.3  fd00::/8");
  REQUIRE(list.size() == 3);
  CHECK(list[0].bits == 16);
  CHECK(list[1].bits == 32);
  CHECK(print(list[1].base) == "10.1.2.3");
  CHECK(list[2].bits == 8);
  CHECK(print(list[2].base) == "fd00::");
  CHECK(complaint("192.168.0.0/33") == "\"192.168.0.0/33\" needs a number from 0 to 32 after the slash.");
  CHECK(complaint("192.168.0.0/") == "\"192.168.0.0/\" needs a number from 0 to 32 after the slash.");
  CHECK(complaint("192.168.0.0/-1") == "\"192.168.0.0/-1\" needs a number from 0 to 32 after the slash.");
  CHECK(complaint("fd00::/129") == "\"fd00::/129\" needs a number from 0 to 128 after the slash.");
  CHECK(complaint("10.0.0.0/8x") == "\"10.0.0.0/8x\" needs a number from 0 to 32 after the slash.");
  CHECK(complaint("192.168.1.7/16") == "\"192.168.1.7/16\" has bits set beyond its first 16.");
  CHECK(complaint("10.0.0.0/8, shop.example") ==
        "\"shop.example\" does not begin with an IPv4 or IPv6 address.");
  CHECK(complaint("127.1/8") == "\"127.1/8\" does not begin with an IPv4 or IPv6 address.");
}
