// Which addresses are listened at, and what is refused.
#include "serve/loopback.hpp"

#include "serve/door_support.hpp"
#include "support/catch.hpp"

using namespace door_support;

namespace {

std::string refusal(const std::string& text) {
  try {
    serve::read_loopback(text);
  } catch (const serve::DoorError& error) {
    CHECK_FALSE(error.would_do.empty());
    return error.what();
  }
  return "";
}

} // namespace

TEST_CASE("loopback addresses are taken, by number or as localhost") {
  for (const auto& [text, as] : {std::pair{"127.0.0.1:8765", "127.0.0.1:8765"},
                                 {"localhost:0", "127.0.0.1:0"},
                                 {"127.9.8.7:65535", "127.9.8.7:65535"},
                                 {"[::1]:80", "[::1]:80"},
                                 {"[0:0:0:0:0:0:0:1]:80", "[::1]:80"}}) {
    INFO(text);
    CHECK(serve::written(serve::read_loopback(text)) == as);
  }
}

TEST_CASE("what other machines could reach, and what is no address, is refused with what would do") {
  // 192.0.2.0/24 and 2001:db8::/32 are for documentation (RFC 5737, RFC 3849).
  for (const char* text : {"0.0.0.0:80", "192.0.2.7:80", "128.0.0.1:80", "126.255.255.255:80", "[::]:80",
                           "[2001:db8::1]:80", "[::ffff:127.0.0.1]:80", "[::2]:80"}) {
    INFO(text);
    CHECK(refusal(text) ==
          std::string("--http ") + text +
              ": other machines could reach that address. Only loopback ones are listened at.");
  }
  for (const char* text :
       {"bench.example:80", ":80", "127.1:80", "0x7f000001:80", "2130706433:80", "[localhost]:80",
        "[127.0.0.1]:80", "::1:80", "127.0.0.1 :80", "*:80", "[]:80", "[::1%lo]:80"}) {
    INFO(text);
    CHECK(refusal(text) == std::string("--http ") + text + ": that is no loopback address.");
  }
  for (const char* text : {"127.0.0.1:", "127.0.0.1:65536", "127.0.0.1:-1", "127.0.0.1:+1", "127.0.0.1:http",
                           "127.0.0.1:80 ", "127.0.0.1:99999999999999999999"}) {
    INFO(text);
    CHECK(refusal(text).find("the port must be a number from 0 to 65535") != std::string::npos);
  }
  CHECK(refusal("localhost").find("the port is missing") != std::string::npos);
  CHECK(refusal("").find("the port is missing") != std::string::npos);
  CHECK(refusal("http://127.0.0.1:80").find("this is a URL") != std::string::npos);
}

TEST_CASE("a token given instead of an address is not repeated") {
  const std::string secret = "nwt_" + std::string(64, 'a');
  for (const std::string& text :
       {secret + "@127.0.0.1:80", "127.0.0.1:80/" + secret, "127.0.0.1:80?token=" + secret}) {
    CHECK(refusal(text) == "--http takes nothing but HOST:PORT, and never a token.");
  }
}

TEST_CASE("the Host field may name the number or localhost, with the port") {
  CHECK(serve::hosts_of(serve::read_loopback("127.0.0.1:8765")) ==
        std::vector<std::string>{"127.0.0.1:8765", "localhost:8765"});
  CHECK(serve::hosts_of(serve::read_loopback("[::1]:8765")) ==
        std::vector<std::string>{"[::1]:8765", "localhost:8765"});
  CHECK(serve::hosts_of(serve::read_loopback("127.0.0.1:80")) ==
        std::vector<std::string>{"127.0.0.1:80", "localhost:80", "127.0.0.1", "localhost"});
}

TEST_CASE("a door over TCP says its port, and one whose port is taken leaves no socket behind") {
  TempDir dir;
  serve::DoorOptions options;
  options.socket = dir / "s";
  options.http = "127.0.0.1:0";
  RunningDoor door(options, echo);
  const std::string at = (*door).http();
  CHECK(at.rfind("127.0.0.1:", 0) == 0);
  CHECK(at != "127.0.0.1:0");
  RawClient client = RawClient::over_tcp(at);
  client.send("GET /a HTTP/1.1\r\nHost: " + at + "\r\n\r\n");
  CHECK(body_of(client.response()) == "GET /a? []");

  serve::DoorOptions second;
  second.socket = dir / "t";
  second.http = at;
  serve::Door late(second, echo);
  try {
    late.open();
    FAIL("two doors at one address");
  } catch (const serve::DoorError& error) {
    CHECK(std::string(error.what()) ==
          "The address " + at + " cannot be listened at: Address already in use.");
  }
  CHECK_FALSE(std::filesystem::exists(dir / "t"));
}

TEST_CASE("without --http no TCP port is listened at") {
  TempDir dir;
  serve::DoorOptions options;
  options.socket = dir / "s";
  RunningDoor door(options, echo);
  CHECK((*door).http().empty());
}
