// Bad framing over both doors: one answer, closed, never a second request, wherever the bytes are split.
#include "serve/framing_cases.hpp"

#include "serve/door_support.hpp"
#include "support/catch.hpp"

#include <atomic>
#include <future>
#include <set>

using namespace door_support;

namespace {

enum class Over { unix_socket, tcp };

struct Asked {
  TempDir dir;
  std::atomic<int> count{0};
  RunningDoor door;
  Over over;
  explicit Asked(Over over_)
      : door(options(dir),
             [this](serve::Request request, const serve::Reply& reply) {
               ++count;
               echo(std::move(request), reply);
             }),
        over(over_) {}
  static serve::DoorOptions options(const TempDir& dir) {
    serve::DoorOptions out;
    out.socket = dir / "s";
    out.http = "127.0.0.1:0";
    return out;
  }
  std::string host() { return over == Over::tcp ? (*door).http() : "b"; }
  std::string smuggled() { return "GET /smuggled HTTP/1.1\r\nHost: " + host() + "\r\n\r\n"; }
  RawClient client() {
    return over == Over::tcp ? RawClient::over_tcp((*door).http()) : RawClient(dir / "s");
  }

  // Until the door has taken what was sent, so that what follows arrives by itself. TCP does not tell a
  // sender what was read, only what arrived; so the door's thread goes round often enough to have accepted
  // and read it.
  void let_it_read(RawClient& client) {
    if (over == Over::unix_socket) return client.wait_until_read();
    for (int round = 0; round < 3; ++round) {
      std::promise<void> gone_round;
      (*door).post([&gone_round] { gone_round.set_value(); });
      gone_round.get_future().wait();
    }
  }
};

} // namespace

TEST_CASE("there are 120 cases of bad framing, each its own") {
  std::set<std::string> each;
  for (const auto& c : framing_cases::badly_framed("b"))
    each.insert(c.bytes);
  CHECK(each.size() == framing_cases::badly_framed("b").size());
  CHECK(each.size() >= 120);
}

TEST_CASE("what is badly framed gets one answer and is closed, with nothing after it read") {
  Asked asked(GENERATE(Over::unix_socket, Over::tcp));
  for (const auto& each : framing_cases::badly_framed(asked.host())) {
    INFO(each.bytes);
    RawClient client = asked.client();
    client.send(each.bytes + asked.smuggled());
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
  Asked asked(GENERATE(Over::unix_socket, Over::tcp));
  std::size_t splits = 0;
  for (const auto& each : framing_cases::badly_framed(asked.host())) {
    if (each.bytes.size() > 200) continue;
    for (std::size_t at = 1; at < each.bytes.size(); ++at, ++splits) {
      RawClient client = asked.client();
      client.send(each.bytes.substr(0, at));
      asked.let_it_read(client);
      client.send(each.bytes.substr(at) + asked.smuggled());
      client.finish_sending();
      const auto all = client.until_closed();
      if (status_of(all) == each.status && count_of(all, "\r\nDate: ") == 1) continue;
      INFO(each.bytes << " split at " << at << " got " << all);
      CHECK(status_of(all) == each.status);
      CHECK(count_of(all, "\r\nDate: ") == 1);
    }
  }
  CHECK(asked.count == 0);
  CHECK(splits > 6000);
}

TEST_CASE("what is well framed is understood wherever the bytes are split") {
  Asked asked(GENERATE(Over::unix_socket, Over::tcp));
  for (const auto& [bytes, expected] : framing_cases::well_framed(asked.host())) {
    for (std::size_t at = 1; at <= bytes.size(); ++at) {
      RawClient client = asked.client();
      client.send(bytes.substr(0, at));
      asked.let_it_read(client);
      client.send(bytes.substr(at) + asked.smuggled());
      const auto first = body_of(client.response());
      const auto second = body_of(client.response());
      if (first == expected && second == "GET /smuggled? []") continue;
      INFO(bytes << " split at " << at);
      CHECK(first == expected);
      CHECK(second == "GET /smuggled? []"); // here it is a request of its own
    }
  }
}
