// Who may knock: Host (RFC 9110, 7.2 and 15.5.20), Origin (RFC 6454) and Sec-Fetch-Site (W3C Fetch Metadata),
// and tokens in URLs (RFC 6750, 5.3), over real sockets.
#include "serve/door_support.hpp"
#include "support/catch.hpp"

#include <atomic>

using namespace door_support;

namespace {

struct Open {
  TempDir dir;
  std::atomic<int> asked{0};
  RunningDoor door;
  Open()
      : door(options(dir), [this](serve::Request request, const serve::Reply& reply) {
          ++asked;
          echo(std::move(request), reply);
        }) {}
  static serve::DoorOptions options(const TempDir& dir) {
    serve::DoorOptions out;
    out.socket = dir / "s";
    out.http = "127.0.0.1:0";
    return out;
  }
  std::string at() { return (*door).http(); }
  std::string port() { return at().substr(at().find(':')); }
  RawClient over(bool tcp) { return tcp ? RawClient::over_tcp(at()) : RawClient(dir / "s"); }

  // The status of the one answer to a GET with these fields.
  std::string status(bool tcp, const std::string& fields, const std::string& target = "/a",
                     const std::string& version = "1.1") {
    RawClient client = over(tcp);
    client.send("GET " + target + " HTTP/" + version + "\r\n" + fields + "Connection: close\r\n\r\n");
    const auto all = client.until_closed();
    CHECK(client.closed_by_peer());
    CHECK(count_of(all, "\r\nDate: ") == 1);
    if (status_of(all) != "200") CHECK(count_of(all, "Content-Type: application/problem+json\r\n") == 1);
    CHECK(count_of(all, "Access-Control-") == 0); // no page from elsewhere is ever let in
    return status_of(all);
  }
};

} // namespace

TEST_CASE("over TCP the Host must be this door's, exactly") {
  Open open;
  for (const std::string& host : {open.at(), "localhost" + open.port(), "LocalHost" + open.port()}) {
    INFO(host);
    CHECK(open.status(true, "Host: " + host + "\r\n") == "200");
  }
  const int before = open.asked;
  for (const std::string& host : std::vector<std::string>{
           std::string("localhost"), std::string("127.0.0.1"), std::string(), "localhost." + open.port(),
           "127.0.0.2" + open.port(), "127.1" + open.port(), "[::1]" + open.port(), "localhost:1",
           "evil.example" + open.port(), "localhost" + open.port() + "0", "x.localhost" + open.port(),
           open.at() + ".evil.example", "localhost:0" + open.port().substr(1)}) {
    INFO(host);
    CHECK(open.status(true, "Host: " + host + "\r\n") == "421");
  }
  CHECK(open.status(true, "", "/a", "1.0") == "421"); // HTTP/1.0 may leave it out, this door does not
  CHECK(open.asked == before);
  CHECK(open.status(false, "Host: shop\r\n") == "200"); // no name leads to a Unix socket
  CHECK(open.status(false, "Host:\r\n") == "200");
}

TEST_CASE("a page from elsewhere has no effect, whatever it sends") {
  Open open;
  for (const bool tcp : {true, false}) {
    const std::string host = "Host: " + open.at() + "\r\n";
    const int before = open.asked;
    for (const std::string& origin :
         {std::string("http://evil.example"), std::string("null"), std::string(), "https://" + open.at(),
          "http://localhost" + open.port(), "http://" + open.at() + "/",
          "http://" + open.at() + ".evil.example", std::string("http://127.0.0.1"), open.at()}) {
      INFO(origin << (tcp ? " over TCP" : " over the Unix socket"));
      CHECK(open.status(tcp, host + "Origin: " + origin + "\r\n") == "403");
    }
    for (const std::string site : {"cross-site", "same-site", "", "anything", "none, same-origin"}) {
      INFO(site);
      CHECK(open.status(tcp, host + "Sec-Fetch-Site: " + site + "\r\n") == "403");
    }
    CHECK(open.status(tcp, host + "Origin: http://" + open.at() + "\r\nOrigin: http://evil.example\r\n") ==
          "400");
    CHECK(open.status(tcp, host + "Sec-Fetch-Site: none\r\nSec-Fetch-Site: cross-site\r\n") == "400");
    CHECK(open.asked == before);
    CHECK(open.status(tcp, host + "Origin: http://" + open.at() + "\r\nSec-Fetch-Site: same-origin\r\n") ==
          "200");
    CHECK(open.status(tcp, host + "Sec-Fetch-Site: none\r\n") == "200");
  }
}

TEST_CASE("what a browser sends before a foreign page's request is refused too") {
  Open open;
  RawClient client = open.over(true);
  client.send("OPTIONS /v1/say HTTP/1.1\r\nHost: " + open.at() +
              "\r\nOrigin: http://evil.example\r\nAccess-Control-Request-Method: POST\r\n"
              "Access-Control-Request-Headers: authorization,content-type\r\n\r\n");
  const auto all = client.until_closed();
  CHECK(status_of(all) == "403");
  CHECK(count_of(all, "Access-Control-") == 0);
  CHECK(open.asked == 0);
}

TEST_CASE("a foreign page's body is not even read") {
  Open open;
  RawClient client = open.over(true);
  client.send("POST /v1/say HTTP/1.1\r\nHost: " + open.at() +
              "\r\nOrigin: http://evil.example\r\nContent-Length: 200000\r\n\r\n");
  CHECK(status_of(client.until_closed()) == "403");
}

TEST_CASE("a token in a URL is refused, and not repeated") {
  Open open;
  const std::string host = "Host: " + open.at() + "\r\n";
  const std::string secret = "nwt_" + std::string(32, '0') + std::string(32, 'f');
  std::string encoded;
  for (const char c : secret)
    encoded += c == 'w' ? "%77" : std::string(1, c);
  for (const bool tcp : {true, false}) {
    for (const std::string& target : std::vector<std::string>{
             "/v1/health?token=" + secret, "/" + secret, "/v1/ask/" + secret, "/v1/ask/stock?wire=" + secret,
             "/v1/health?x=1&Access_Token=abc", "/v1/health?token", "/v1/health?authorization=Bearer%20abc",
             "/v1/health?x=" + encoded, "/v1/health?x=" + secret.substr(0, 30)}) {
      INFO(target);
      RawClient client = open.over(tcp);
      client.send("GET " + target + " HTTP/1.1\r\n" + host + "\r\n");
      const auto all = client.until_closed();
      CHECK(status_of(all) == "400");
      CHECK(count_of(all, "nwt_") == 0);
    }
  }
  CHECK(open.asked == 0);
  CHECK(open.status(true, host, "/v1/ask/stock?wire=nwt_1&tokens=2") == "200");
}

TEST_CASE("a target of nothing but percent signs is looked at twice at most, and gets through") {
  Open open;
  const std::string host = "Host: " + open.at() + "\r\n";
  std::string deep = "/v1/health?x=%"; // 2,600 times encoded
  while (deep.size() < 7900)
    deep += "25";
  CHECK(open.status(true, host, deep) == "200");
  CHECK(open.status(true, host, deep + "6ewt_" + std::string(64, 'f')) ==
        "200"); // nothing here decodes so often
  const std::string rest = "wt_" + std::string(64, 'f');
  CHECK(open.status(true, host, "/v1/health?x=%6e" + rest) == "400");
  CHECK(open.status(true, host, "/v1/health?x=%256e" + rest) == "400");
  CHECK(open.asked == 2);
}
