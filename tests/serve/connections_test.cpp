// How many connections there are, who may hold them, and that none is held for nothing.
#include "serve/door_support.hpp"
#include "support/catch.hpp"

using namespace door_support;
using namespace std::chrono_literals;

TEST_CASE("connections over the limit get 503, and room comes back") {
  TempDir dir;
  auto options = at(dir / "s");
  options.connections = 6;
  options.kept = 2; // all clients here are one user, so four fit
  RunningDoor door(options, echo);
  std::vector<std::unique_ptr<RawClient>> held;
  for (int i = 0; i < 4; ++i) {
    held.push_back(std::make_unique<RawClient>(dir / "s"));
    held.back()->send(get);
    CHECK(status_of(held.back()->response()) == "200");
  }
  {
    RawClient client(dir / "s");
    client.send(get);
    const auto answer = client.until_closed();
    CHECK(status_of(answer) == "503");
    CHECK(count_of(answer, "Retry-After: 1\r\n") == 1);
    CHECK(count_of(answer, "application/problem+json") == 1);
  }
  held.pop_back();
  std::string status;
  for (int i = 0; i < 100 && status != "200"; ++i) {
    RawClient client(dir / "s");
    client.send(get);
    status = status_of(client.response());
  }
  CHECK(status == "200");
}

TEST_CASE("with TCP on, one user who takes both doors leaves room for the next") {
  TempDir dir;
  auto options = at(dir / "s");
  options.http = "127.0.0.1:0";
  options.connections = 9;
  options.http_connections = 4;
  options.kept = 2;
  RunningDoor door(options, echo);
  std::vector<RawClient> held;
  const auto taken = [&](RawClient client) {
    client.send("GET / HTTP/1.1\r\nHost: " + (*door).http() + "\r\n\r\n");
    const bool served = status_of(client.response()) == "200";
    if (served) held.push_back(std::move(client));
    return served;
  };
  std::size_t over_tcp = 0, over_unix = 0;
  while (over_tcp < 9 && taken(RawClient::over_tcp((*door).http())))
    ++over_tcp;
  while (over_unix < 9 && taken(RawClient(dir / "s")))
    ++over_unix;
  CHECK(over_tcp == 4);
  CHECK(over_unix == 3); // of nine, two are left for other users
}

TEST_CASE("what is kept for others must be there beside TCP") {
  TempDir dir;
  auto options = at(dir / "s");
  options.connections = 6;
  options.kept = 2;
  options.http_connections = 4;
  CHECK_NOTHROW(serve::Door(options, echo)); // without TCP its share is nobody's
  options.http = "127.0.0.1:0";
  CHECK_THROWS_AS(serve::Door(options, echo), serve::DoorError);
  options.http_connections = 3;
  CHECK_NOTHROW(serve::Door(options, echo));
}

TEST_CASE("whoever bears no good token is hung up on, and holds nothing") {
  TempDir dir;
  RunningDoor door(at(dir / "s"), [](const serve::Request&, const serve::Reply& reply) {
    reply(serve::problem(401, "Over TCP a token is wanted."));
  });
  RawClient client(dir / "s");
  client.send(get);
  const auto answer = client.until_closed(2s); // far less than the 30 s between two requests
  CHECK(status_of(answer) == "401");
  CHECK(count_of(answer, "Connection: close\r\n") == 1);
  CHECK(client.closed_by_peer());
}
