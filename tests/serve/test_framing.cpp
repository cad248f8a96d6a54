// Requests that two parsers could read differently. The rules are those of RFC 9112 (sections 2.2, 3, 5,
// 6, 7.1) and RFC 9110 (7.2 Host, 8.6 Content-Length, 10.1.1 Expect); the cases are our own.
#include "serve/door_support.hpp"
#include "support/catch.hpp"

#include <atomic>

using namespace door_support;

namespace {

struct Case {
  const char* status; // the one answer; "none" if the client is just hung up on
  std::string bytes;
};

const std::string h = "Host: b\r\n";
const std::string get1 = "GET / HTTP/1.1\r\n";
const std::string post1 = "POST / HTTP/1.1\r\n";
const std::string chunked = "Transfer-Encoding: chunked\r\n";

const std::vector<Case>& refused() {
  using namespace std::string_literals;
  static const std::vector<Case> cases{
      // the request line
      {"400", "GET /\r\n" + h + "\r\n"},
      {"400", "GET  / HTTP/1.1\r\n" + h + "\r\n"},
      {"400", "GET / HTTP/1.1 \r\n" + h + "\r\n"},
      {"400", "GET\t/ HTTP/1.1\r\n" + h + "\r\n"},
      {"400", "GET / x HTTP/1.1\r\n" + h + "\r\n"},
      {"400", "G(T / HTTP/1.1\r\n" + h + "\r\n"},
      {"400", " GET / HTTP/1.1\r\n" + h + "\r\n"},
      {"400", "GET http://b/ HTTP/1.1\r\n" + h + "\r\n"},
      {"400", "CONNECT b:80 HTTP/1.1\r\n" + h + "\r\n"},
      {"400", "OPTIONS * HTTP/1.1\r\n" + h + "\r\n"},
      {"400", "GET /#part HTTP/1.1\r\n" + h + "\r\n"},
      {"400", "GET /\xc3\xa9 HTTP/1.1\r\n" + h + "\r\n"},
      {"400", "GET / http/1.1\r\n" + h + "\r\n"},
      {"400", "GET / HTTP/1.10\r\n" + h + "\r\n"},
      {"505", "GET / HTTP/2.0\r\n" + h + "\r\n"},
      {"505", "GET / HTTP/1.2\r\n" + h + "\r\n"},
      {"400", "\r\n\r\n" + get1 + h + "\r\n"},
      {"400", "\x16\x03\x01\x02"s}, // the start of a TLS handshake
      // line ends and control characters
      {"400", "GET / HTTP/1.1\nHost: b\n\n"},
      {"400", get1 + "Host: b\n\r\n"},
      {"400", get1 + h + "X: a\rY: b\r\n\r\n"},
      {"400", get1 + h + "X: a\0b\r\n\r\n"s},
      {"400", get1 + h + "X: a\x7f\r\n\r\n"},
      // fields
      {"400", get1 + h + "X: a\r\n b\r\n\r\n"},
      {"400", get1 + " X: a\r\n" + h + "\r\n"},
      {"400", get1 + h + "X : a\r\n\r\n"},
      {"400", get1 + h + ": a\r\n\r\n"},
      {"400", get1 + h + "X\r\n\r\n"},
      {"400", get1 + h + "X(: a\r\n\r\n"},
      {"400", post1 + h + "Content-Type: a/b\r\nContent-Type: c/d\r\nContent-Length: 0\r\n\r\n"},
      {"400", post1 + h + "Idempotency-Key: \"a\"\r\nIdempotency-Key: \"b\"\r\nContent-Length: 0\r\n\r\n"},
      // Host
      {"400", get1 + "\r\n"},
      {"400", get1 + h + h + "\r\n"},
      {"400", get1 + h + "hOST: c\r\n\r\n"},
      {"400", get1 + "Host: a b\r\n\r\n"},
      {"400", get1 + "Host: a/b\r\n\r\n"},
      {"400", get1 + "Host: u@b\r\n\r\n"},
      // how long the body is
      {"411", post1 + h + "\r\n"},
      {"411", "PUT / HTTP/1.1\r\n" + h + "\r\n"},
      {"411", "PATCH / HTTP/1.0\r\n\r\n"},
      {"400", post1 + h + "Content-Length: 3\r\nContent-Length: 3\r\n\r\nabc"},
      {"400", post1 + h + "Content-Length: 3\r\ncontent-length: 4\r\n\r\nabcd"},
      {"400", post1 + h + "Content-Length: 3, 3\r\n\r\nabc"},
      {"400", post1 + h + "Content-Length: +3\r\n\r\nabc"},
      {"400", post1 + h + "Content-Length: -3\r\n\r\nabc"},
      {"400", post1 + h + "Content-Length: 0x3\r\n\r\nabc"},
      {"400", post1 + h + "Content-Length: 3 3\r\n\r\nabc"},
      {"400", post1 + h + "Content-Length:\r\n\r\n"},
      {"413", post1 + h + "Content-Length: 18446744073709551619\r\n\r\nabc"}, // 2^64 + 3
      {"413", post1 + h + "Content-Length: 9223372036854775808\r\n\r\n"},     // 2^63
      // transfer codings
      {"400", post1 + h + chunked + "Content-Length: 3\r\n\r\n0\r\n\r\n"},
      {"400", post1 + h + "Content-Length: 3\r\n" + chunked + "\r\n0\r\n\r\n"},
      {"400", post1 + h + chunked + chunked + "\r\n0\r\n\r\n"},
      {"400", "POST / HTTP/1.0\r\n" + chunked + "\r\n0\r\n\r\n"},
      {"501", post1 + h + "Transfer-Encoding: gzip, chunked\r\n\r\n0\r\n\r\n"},
      {"501", post1 + h + "Transfer-Encoding: chunked, chunked\r\n\r\n0\r\n\r\n"},
      {"501", post1 + h + "Transfer-Encoding: xchunked\r\n\r\n0\r\n\r\n"},
      {"501", post1 + h + "Transfer-Encoding: identity\r\n\r\nabc"},
      {"501", post1 + h + "Transfer-Encoding: chunked;q=1\r\n\r\n0\r\n\r\n"},
      {"501", post1 + h + "Transfer-Encoding: \"chunked\"\r\n\r\n0\r\n\r\n"},
      {"501", get1 + h + "Transfer-Encoding:\r\n\r\n"},
      {"400", post1 + h + "Transfer-Encoding : chunked\r\n\r\n0\r\n\r\n"},
      // chunks
      {"400", post1 + h + chunked + "\r\nx\r\nabc\r\n0\r\n\r\n"},
      {"400", post1 + h + chunked + "\r\n-3\r\nabc\r\n0\r\n\r\n"},
      {"400", post1 + h + chunked + "\r\n0x3\r\nabc\r\n0\r\n\r\n"},
      {"400", post1 + h + chunked + "\r\n3\r\nabcd\r\n0\r\n\r\n"},
      {"400", post1 + h + chunked + "\r\n\r\n3\r\nabc\r\n0\r\n\r\n"},
      {"400", post1 + h + chunked + "\r\n11111111111111111\r\nabc\r\n0\r\n\r\n"},
      {"400", post1 + h + chunked + "\r\n3;" + std::string(1100, 'e') + "\r\nabc\r\n0\r\n\r\n"},
      // expectations
      {"417", post1 + h + "Expect: 200-ok\r\nContent-Length: 0\r\n\r\n"},
  };
  return cases;
}

struct Asked {
  TempDir dir;
  std::atomic<int> count{0};
  RunningDoor door;
  Asked()
      : door(options(dir), [this](serve::Request request, const serve::Reply& reply) {
          ++count;
          echo(std::move(request), reply);
        }) {}
  static serve::DoorOptions options(const TempDir& dir) {
    serve::DoorOptions out;
    out.socket = dir / "s";
    return out;
  }
};

const std::string smuggled = "GET /smuggled HTTP/1.1\r\nHost: b\r\n\r\n";

} // namespace

TEST_CASE("what is badly framed gets one answer and is closed, with nothing after it read") {
  Asked asked;
  for (const auto& each : refused()) {
    INFO(each.bytes);
    RawClient client(asked.dir / "s");
    client.send(each.bytes + smuggled);
    client.finish_sending();
    const auto all = client.until_closed();
    CHECK(client.closed_by_peer());
    CHECK(status_of(all) == each.status);
    CHECK(count_of(all, "\r\nDate: ") == 1);
    CHECK(count_of(all, "Connection: close\r\n") == 1);
    CHECK(count_of(all, "Content-Type: application/problem+json\r\n") == 1);
    CHECK(count_of(body_of(all), std::string("\"status\":") + each.status) == 1);
  }
  CHECK(asked.count == 0);
}

TEST_CASE("what is badly framed stays so wherever the bytes are split") {
  Asked asked;
  std::size_t splits = 0;
  for (const auto& each : refused()) {
    if (each.bytes.size() > 200) continue;
    for (std::size_t at = 1; at < each.bytes.size(); ++at, ++splits) {
      RawClient client(asked.dir / "s");
      client.send(each.bytes.substr(0, at));
      client.wait_until_read();
      client.send(each.bytes.substr(at) + smuggled);
      client.finish_sending();
      const auto all = client.until_closed();
      if (status_of(all) == each.status && count_of(all, "\r\nDate: ") == 1) continue;
      INFO(each.bytes << " split at " << at << " got " << all);
      CHECK(status_of(all) == each.status);
      CHECK(count_of(all, "\r\nDate: ") == 1);
    }
  }
  CHECK(asked.count == 0);
  CHECK(splits > 2500);
}

TEST_CASE("what is well framed is understood wherever the bytes are split") {
  Asked asked;
  const std::vector<std::pair<std::string, std::string>> cases{
      {get1 + h + "\r\n", "GET /? []"},
      {"\r\n" + get1 + h + "\r\n", "GET /? []"},
      {"GET /a?b HTTP/1.1\r\nHost:\r\n\r\n", "GET /a?b []"},
      {get1 + "Host: [::1]:80\r\n\r\n", "GET /? []"},
      {"BREW /pot HTTP/1.1\r\n" + h + "\r\n", "BREW /pot? []"},
      {post1 + h + "Content-Length: 3\r\n\r\nabc", "POST /? [abc]"},
      {post1 + h + "Content-Length: \t003 \r\n\r\nabc", "POST /? [abc]"},
      {post1 + h + "Content-Length: 0\r\n\r\n", "POST /? []"},
      {"GET / HTTP/1.1\r\n" + h + "Content-Length: 2\r\n\r\nxy", "GET /? [xy]"},
      {post1 + h + "transfer-encoding:CHUNKED\r\n\r\n3\r\nabc\r\nA\r\n0123456789\r\n0\r\n\r\n",
       "POST /? [abc0123456789]"},
      {post1 + h + chunked + "\r\n0\r\n\r\n", "POST /? []"},
      {post1 + h + chunked + "\r\n3;a=\"b;c\"\r\nabc\r\n0\r\nX: y\r\n\r\n", "POST /? [abc]"},
      {get1 + h + "X:\xc3\xa9\tz\r\n\r\n", "GET /? []"},
  };
  for (const auto& [bytes, expected] : cases) {
    for (std::size_t at = 1; at <= bytes.size(); ++at) {
      RawClient client(asked.dir / "s");
      client.send(bytes.substr(0, at));
      client.wait_until_read();
      client.send(bytes.substr(at) + smuggled);
      const auto first = body_of(client.response());
      const auto second = body_of(client.response());
      if (first == expected && second == "GET /smuggled? []") continue;
      INFO(bytes << " split at " << at);
      CHECK(first == expected);
      CHECK(second == "GET /smuggled? []"); // here it is a request of its own
    }
  }
}
