// What the door does with requests that are well framed, slow, large, many or lost.
#include "serve/door_support.hpp"
#include "support/catch.hpp"

#include <atomic>
#include <mutex>

using namespace door_support;
using namespace std::chrono_literals;

namespace {

std::string post(const std::string& body) {
  return "POST /p HTTP/1.1\r\nHost: bench\r\nContent-Length: " + std::to_string(body.size()) + "\r\n\r\n" +
         body;
}

} // namespace

TEST_CASE("a request is handed over in its parts") {
  TempDir dir;
  serve::Request seen;
  RunningDoor door(at(dir / "s"), [&seen](serve::Request request, const serve::Reply& reply) {
    seen = request;
    reply({});
  });
  RawClient client(dir / "s");
  client.send("POST /v1/say?x=%20y&z HTTP/1.1\r\nhost: bench\r\nContent-Type: application/json\r\n"
              "IDEMPOTENCY-KEY: \"k 1\"\r\nAccept: a/b\r\naccept: c/d\r\nContent-Length: 4\r\n\r\nbody");
  CHECK(status_of(client.response()) == "200");
  CHECK(seen.method == "POST");
  CHECK(seen.path == "/v1/say");
  CHECK(seen.query == "x=%20y&z");
  CHECK(seen.content_type == "application/json");
  CHECK(seen.idempotency_key == "\"k 1\"");
  CHECK(seen.accept == "a/b, c/d");
  CHECK(seen.body == "body");
  CHECK(seen.uid == ::getuid());
  CHECK(seen.gid == ::getgid());
  CHECK(seen.via == "unix");
}

TEST_CASE("an answer carries its length and the fields that keep it private") {
  TempDir dir;
  RunningDoor door(at(dir / "s"), [](const serve::Request&, const serve::Reply& reply) {
    reply({201, "text/plain", "hello", {{"X-One", "1"}, {"Cache-Control", "max-age=60"}}});
  });
  RawClient client(dir / "s");
  client.send(get);
  const auto answer = client.response();
  CHECK(answer.rfind("HTTP/1.1 201 Created\r\n", 0) == 0);
  CHECK(count_of(answer, "Content-Length: 5\r\n") == 1);
  CHECK(count_of(answer, "Content-Type: text/plain\r\n") == 1);
  CHECK(count_of(answer, "X-Content-Type-Options: nosniff\r\n") == 1);
  CHECK(count_of(answer, "X-One: 1\r\n") == 1);
  CHECK(count_of(answer, "Cache-Control: max-age=60\r\n") == 1);
  CHECK(count_of(answer, "no-store") == 0);
  CHECK(count_of(answer, "Date: ") == 1);
  CHECK(body_of(answer) == "hello");
}

TEST_CASE("nothing may be cached unless the handler says so") {
  TempDir dir;
  RunningDoor door(at(dir / "s"), echo);
  RawClient client(dir / "s");
  client.send(get);
  CHECK(count_of(client.response(), "Cache-Control: no-store\r\n") == 1);
}

TEST_CASE("requests sent at once on one connection are answered in order") {
  TempDir dir;
  RunningDoor door(at(dir / "s"), echo);
  RawClient client(dir / "s");
  client.send(get + post("one") + post("two") + get);
  CHECK(body_of(client.response()) == "GET /a?b=1 []");
  CHECK(body_of(client.response()) == "POST /p? [one]");
  CHECK(body_of(client.response()) == "POST /p? [two]");
  CHECK(body_of(client.response()) == "GET /a?b=1 []");
}

TEST_CASE("the connection is closed or kept as the client wishes") {
  TempDir dir;
  RunningDoor door(at(dir / "s"), echo);
  SECTION("closed when asked for") {
    RawClient client(dir / "s");
    client.send("GET / HTTP/1.1\r\nHost: b\r\nConnection: close\r\n\r\n" + get);
    const auto all = client.until_closed();
    CHECK(client.closed_by_peer());
    CHECK(count_of(all, "HTTP/1.1 200") == 1);
    CHECK(count_of(all, "Connection: close\r\n") == 1);
  }
  SECTION("closed after HTTP/1.0") {
    RawClient client(dir / "s");
    client.send("GET / HTTP/1.0\r\n\r\n");
    CHECK(count_of(client.until_closed(), "HTTP/1.0 200") == 1);
    CHECK(client.closed_by_peer());
  }
  SECTION("kept after HTTP/1.0 with keep-alive") {
    RawClient client(dir / "s");
    client.send("GET / HTTP/1.0\r\nConnection: keep-alive\r\n\r\n");
    CHECK(count_of(client.response(), "Connection: keep-alive\r\n") == 1);
    client.send(get);
    CHECK(status_of(client.response()) == "200");
  }
}

TEST_CASE("HEAD gets the length of the body and no body") {
  TempDir dir;
  RunningDoor door(at(dir / "s"), echo);
  RawClient client(dir / "s");
  client.send("HEAD /a HTTP/1.1\r\nHost: b\r\nConnection: close\r\n\r\n");
  const auto answer = client.until_closed();
  CHECK(count_of(answer, "Content-Length: 11\r\n") == 1); // "HEAD /a? []"
  CHECK(body_of(answer).empty());
}

TEST_CASE("a chunked body is put together, and fields that trail it change nothing") {
  TempDir dir;
  std::string key = "unset";
  RunningDoor door(at(dir / "s"), [&key](serve::Request request, const serve::Reply& reply) {
    key = request.idempotency_key;
    echo(std::move(request), reply);
  });
  RawClient client(dir / "s");
  client.send("POST /p HTTP/1.1\r\nHost: b\r\nTransfer-Encoding: chunked\r\n\r\n"
              "3\r\nabc\r\n2;note=1\r\nde\r\n0\r\nIdempotency-Key: \"late\"\r\n\r\n");
  CHECK(body_of(client.response()) == "POST /p? [abcde]");
  CHECK(key.empty());
  client.send(get);
  CHECK(status_of(client.response()) == "200");
}

TEST_CASE("a client that waits to be told to go on is told") {
  TempDir dir;
  RunningDoor door(at(dir / "s"), echo);
  RawClient client(dir / "s");
  client.send("POST /p HTTP/1.1\r\nHost: b\r\nExpect: 100-continue\r\nContent-Length: 2\r\n\r\n");
  CHECK(client.response() == "HTTP/1.1 100 Continue\r\n\r\n");
  client.send("ok");
  CHECK(body_of(client.response()) == "POST /p? [ok]");
}

TEST_CASE("a reply may come later and from another thread") {
  TempDir dir;
  std::mutex mutex;
  std::vector<std::thread> threads;
  {
    RunningDoor door(at(dir / "s"), [&](serve::Request request, serve::Reply reply) {
      const std::lock_guard lock(mutex);
      threads.emplace_back([request = std::move(request), reply = std::move(reply)]() mutable {
        std::this_thread::sleep_for(2ms);
        echo(std::move(request), reply);
        reply({500, "", "a second reply counts for nothing", {}});
      });
    });
    std::vector<std::unique_ptr<RawClient>> clients;
    for (int i = 0; i < 16; ++i)
      clients.push_back(std::make_unique<RawClient>(dir / "s"));
    for (int round = 0; round < 4; ++round) {
      for (auto& client : clients)
        client->send(post(std::to_string(round)));
      for (auto& client : clients)
        CHECK(body_of(client->response()) == "POST /p? [" + std::to_string(round) + "]");
    }
  }
  for (auto& thread : threads)
    thread.join();
}

TEST_CASE("a reply that outlives the door does nothing") {
  TempDir dir;
  serve::Reply kept;
  std::atomic<bool> asked{false};
  auto options = at(dir / "s");
  options.grace = 20ms;
  {
    RunningDoor door(options, [&](const serve::Request&, serve::Reply reply) {
      kept = std::move(reply);
      asked = true;
    });
    RawClient client(dir / "s");
    client.send(get);
    while (!asked)
      std::this_thread::sleep_for(1ms);
    door.stop();
    CHECK(client.response(10ms).empty());
  }
  kept({});
}

TEST_CASE("a request that the handler loses or breaks is answered with 500") {
  TempDir dir;
  std::string noted;
  auto options = at(dir / "s");
  options.note = [&noted](const std::string& line) { noted = line; };
  RunningDoor door(options, [](const serve::Request& request, const serve::Reply& reply) {
    if (request.path == "/throw") throw std::runtime_error("the spring broke");
    if (request.path == "/odd") throw 7;
    if (request.path == "/field") reply({200, "", "", {{"X-A", "1\r\nX-B: 2"}}});
    if (request.path == "/status") reply({42, "", "", {}});
  });
  for (const std::string path : {"/throw", "/odd", "/lost", "/field", "/status"}) {
    RawClient client(dir / "s");
    client.send("GET " + path + " HTTP/1.1\r\nHost: b\r\n\r\n");
    const auto answer = client.response();
    INFO(path);
    CHECK(status_of(answer) == "500");
    CHECK(count_of(answer, "Content-Type: application/problem+json\r\n") == 1);
    CHECK(count_of(answer, "X-B") == 0);
    CHECK(count_of(answer, "spring") == 0); // what went wrong inside is for the log
    if (path == "/throw") CHECK(noted == "A request failed: the spring broke");
    client.send(get); // the connection goes on
    CHECK(status_of(client.response()) == "500");
  }
}

TEST_CASE("a body over the limit is refused before it is read") {
  TempDir dir;
  auto options = at(dir / "s");
  options.body_limit = 1000;
  RunningDoor door(options, echo);
  SECTION("by its announced length") {
    RawClient client(dir / "s");
    client.send("POST /p HTTP/1.1\r\nHost: b\r\nContent-Length: 1001\r\n\r\n");
    const auto answer = client.until_closed();
    CHECK(status_of(answer) == "413");
    CHECK(body_of(answer) == R"({"type":"about:blank","title":"Payload Too Large","status":413,)"
                             R"("detail":"The body is too large: at most 1000 bytes are taken."})");
    CHECK(client.closed_by_peer());
  }
  SECTION("by its chunks") {
    RawClient client(dir / "s");
    client.send("POST /p HTTP/1.1\r\nHost: b\r\nTransfer-Encoding: chunked\r\n\r\n3e9\r\n" +
                std::string(1001, 'x'));
    CHECK(status_of(client.until_closed()) == "413");
  }
  SECTION("and one at the limit is taken") {
    RawClient client(dir / "s");
    client.send(post(std::string(1000, 'x')));
    CHECK(status_of(client.response()) == "200");
  }
}

TEST_CASE("a body of the default limit comes through whole") {
  TempDir dir;
  RunningDoor door(at(dir / "s"), echo);
  RawClient client(dir / "s");
  client.send(post(std::string(256 * 1024, 'y')));
  CHECK(body_of(client.response()).size() == 256 * 1024 + std::string("POST /p? []").size());
  client.send("POST /p HTTP/1.1\r\nHost: b\r\nContent-Length: 262145\r\n\r\n");
  CHECK(status_of(client.response()) == "413");
}

TEST_CASE("a head over 8 KiB is refused with 431") {
  TempDir dir;
  RunningDoor door(at(dir / "s"), echo);
  const std::string start = "GET / HTTP/1.1\r\nHost: b\r\nX: ";
  RawClient fits(dir / "s");
  fits.send(start + std::string(8192 - start.size() - 4, 'x') + "\r\n\r\n");
  CHECK(status_of(fits.response()) == "200");
  RawClient over(dir / "s");
  over.send(start + std::string(8193 - start.size() - 4, 'x') + "\r\n\r\n");
  CHECK(status_of(over.until_closed()) == "431");
  RawClient endless(dir / "s");
  endless.send(start + std::string(100000, 'x'));
  CHECK(status_of(endless.until_closed()) == "431");
}

TEST_CASE("slow clients get 408, silent ones are hung up on") {
  TempDir dir;
  auto options = at(dir / "s");
  options.head_within = 60ms;
  options.body_within = 60ms;
  options.idle_for = 500ms;
  RunningDoor door(options, echo);
  SECTION("half a head") {
    RawClient client(dir / "s");
    client.send("GET / HT");
    CHECK(status_of(client.until_closed()) == "408");
    CHECK(client.closed_by_peer());
  }
  SECTION("a head that drips is bounded as a whole") {
    RawClient client(dir / "s");
    std::string answer;
    for (int i = 0; i < 100 && answer.empty(); ++i) {
      client.send("G");
      answer = client.response(10ms);
    }
    CHECK(status_of(answer) == "408");
  }
  SECTION("half a body") {
    RawClient client(dir / "s");
    client.send("POST / HTTP/1.1\r\nHost: b\r\nContent-Length: 9\r\n\r\nhalf");
    CHECK(status_of(client.until_closed()) == "408");
  }
  SECTION("nothing at all") {
    RawClient client(dir / "s");
    CHECK(client.until_closed().empty());
    CHECK(client.closed_by_peer());
  }
  SECTION("nothing after a request") {
    RawClient client(dir / "s");
    client.send(get);
    CHECK(status_of(client.response()) == "200");
    CHECK(client.response(200ms).empty());
    CHECK_FALSE(client.closed_by_peer()); // the head's time does not run between requests
    CHECK(client.until_closed().empty());
    CHECK(client.closed_by_peer());
  }
}

TEST_CASE("clients that leave early harm nobody") {
  TempDir dir;
  std::vector<serve::Reply> late;
  std::atomic<int> asked{0};
  RunningDoor door(at(dir / "s"), [&](serve::Request request, const serve::Reply& reply) {
    ++asked;
    if (request.path == "/late") return late.push_back(reply);
    echo(std::move(request), reply);
  });
  for (const std::string part : {"", "GET /", "POST /p HTTP/1.1\r\nHost: b\r\nContent-Length: 9\r\n\r\nhalf",
                                 "POST /p HTTP/1.1\r\nHost: b\r\nTransfer-Encoding: chunked\r\n\r\n3\r\nab",
                                 "GET /late HTTP/1.1\r\nHost: b\r\n\r\n"}) {
    RawClient client(dir / "s");
    client.send(part);
  }
  while (asked < 1)
    std::this_thread::sleep_for(1ms);
  (*door).post([&late] {
    for (auto& reply : late)
      reply({});
  });
  RawClient client(dir / "s");
  client.send(get);
  client.finish_sending(); // half closed: the answer still comes
  CHECK(status_of(client.response()) == "200");
  CHECK(asked == 2); // half a request never reaches the handler
}
