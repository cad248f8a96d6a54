#include "remind/deliver.hpp"
#include "support/catch.hpp"
#include "support/deliveries.hpp"

#include <cstdlib>
#include <thread>

using namespace nutward::remind;
using namespace nutward::test;

TEST_CASE("A message arrives signed, with the headers of Standard Webhooks, byte for byte") {
  Receiver receiver(secret_text);
  Deliverer deliverer;
  Deliveries sent(deliverer);
  Attempt attempt = message(receiver.url("/good"));
  attempt.body = R"({"text":"1¾ in of 'wire' — job 12"})";
  const Outcome outcome = sent.one(attempt);
  CHECK(outcome.status == 204);
  CHECK(outcome.error.empty());
  CHECK(outcome.took.count() >= 0);

  const auto got = nlohmann::json::parse(receiver.line());
  CHECK(got["verified"] == nullptr);
  CHECK(got["body"] == attempt.body);
  CHECK(got["headers"]["webhook-id"] == "msg_1");
  CHECK(got["headers"]["webhook-timestamp"] == std::to_string(attempt.at.s));
  CHECK(got["headers"]["content-type"] == "application/json");
  CHECK(got["headers"]["user-agent"].get<std::string>().starts_with("nutward/"));
  CHECK_FALSE(got["headers"].contains("accept-encoding")); // nothing to unpack, so no bomb
}

TEST_CASE("Signed with an old and a new secret, a receiver that knows only one of them verifies") {
  Receiver receiver(secret_text);
  Deliverer deliverer;
  Deliveries sent(deliverer);
  Attempt attempt = message(receiver.url("/good"));
  attempt.secrets.insert(attempt.secrets.begin(), Secret::make());
  sent.one(attempt);
  CHECK(nlohmann::json::parse(receiver.line())["verified"] == nullptr);
  attempt.secrets = {Secret::make()};
  sent.one(attempt);
  CHECK(nlohmann::json::parse(receiver.line())["verified"] == "no signature matches");
}

TEST_CASE("The status is reported as it was, and Retry-After with it") {
  Receiver receiver(secret_text);
  Deliverer deliverer;
  Deliveries sent(deliverer);
  for (const int status : {200, 202, 400, 404, 410, 429, 500, 503})
    CHECK(sent.one(message(receiver.url("/status/" + std::to_string(status)))).status == status);
  const Outcome busy = sent.one(message(receiver.url("/status/503/120")));
  CHECK(busy.status == 503);
  CHECK(busy.retry_after == std::chrono::seconds(120));
  CHECK(sent.one(message(receiver.url("/status/503/soon"))).retry_after == std::nullopt);
  const Outcome until =
      sent.one(message(receiver.url("/status/503/Fri,%2031%20Dec%202100%2023:59:59%20GMT")));
  // A libcurl as new as Debian 13's gives six hours at the most.
  CHECK(until.retry_after >= std::chrono::hours(6));
}

TEST_CASE("A redirect is an answer and nothing is sent on") {
  Receiver receiver(secret_text);
  Deliverer deliverer;
  Deliveries sent(deliverer);
  for (const char* status : {"302", "307", "308"}) {
    const Outcome outcome = sent.one(message(receiver.url(std::string("/redirect-") + status)));
    CHECK(outcome.status == std::stoi(status));
    CHECK_FALSE(outcome.ok());
    CHECK(nlohmann::json::parse(receiver.line())["path"] == std::string("/redirect-") + status);
  }
  CHECK(receiver.line(std::chrono::milliseconds(300)).empty());
}

TEST_CASE("Proxies of the environment are not used") {
  Receiver receiver(secret_text);
  for (const char* name : {"http_proxy", "HTTP_PROXY", "all_proxy", "ALL_PROXY"})
    setenv(name, "http://127.0.0.1:9", 1);
  Deliverer deliverer;
  Deliveries sent(deliverer);
  CHECK(sent.one(message(receiver.url("/good"))).status == 204);
  for (const char* name : {"http_proxy", "HTTP_PROXY", "all_proxy", "ALL_PROXY"})
    unsetenv(name);
}

TEST_CASE("However loopback is spelled, the policy judges the address and no connection is made") {
  Receiver receiver(secret_text);
  Policy closed;
  closed.loopback = false;
  Deliverer deliverer(closed);
  Deliveries sent(deliverer);
  const std::string end = ":" + std::to_string(receiver.port()) + "/good";
  const std::vector<std::string> hosts{"127.0.0.1",  "127.1",     "2130706433",        "0x7f000001",
                                       "0177.0.0.1", "localhost", "[::ffff:127.0.0.1]"};
  for (const std::string& host : hosts) {
    INFO(host);
    const Outcome outcome = sent.one(message("http://" + host + end));
    CHECK(outcome.status == 0);
    CHECK_THAT(outcome.error, ContainsSubstring("may not be called: it is loopback."));
  }
  CHECK(receiver.line(std::chrono::milliseconds(300)).empty());

  deliverer.set_policy(Policy{});
  for (const std::string& host : hosts) {
    INFO(host);
    CHECK(sent.one(message("http://" + host + end)).status == 204);
  }
}

TEST_CASE("Addresses that no receiver has are refused without a packet") {
  Deliverer deliverer;
  Deliveries sent(deliverer);
  for (const char* url :
       {"http://169.254.169.254/latest", "http://0.0.0.0:1/", "http://[fe80::1]/", "https://10.0.0.1/",
        "http://192.168.1.20/", "http://8.8.8.8/", "http://255.255.255.255/"}) {
    INFO(url);
    const Outcome outcome = sent.one(message(url));
    CHECK_THAT(outcome.error, ContainsSubstring("may not be called"));
    CHECK(outcome.took.count() < 1000);
  }
}

TEST_CASE("What cannot be sent is told to the caller, not thrown away") {
  Deliverer deliverer;
  Deliveries sent(deliverer);
  for (const char* url :
       {"", "shop.example/hook", "ftp://127.0.0.1/", "file:///etc/passwd", "gopher://127.0.0.1/", "http://",
        "http://127.0.0.1:99999/", "http://127.0.0.1/\r\nX: 1"}) {
    INFO(url);
    CHECK_THROWS_AS(check_url(url), BadUrl);
    const Outcome outcome = sent.one(message(url));
    CHECK(outcome.status == 0);
    CHECK_FALSE(outcome.error.empty());
  }
  CHECK(check_url("https://shop.example/hook") == Scheme::https);
  CHECK_THROWS_AS(check_url("http://127.0.0.1/" + std::string(2000, 'a')), BadUrl);

  Attempt broken = message("http://127.0.0.1:9/");
  broken.id = "msg\r\nX-Other: 1";
  CHECK(sent.one(broken).error ==
        "The header webhook-id would be empty or hold characters that no header may.");
  broken = message("http://127.0.0.1:9/");
  broken.secrets.clear();
  CHECK(sent.one(broken).error == "A message without a secret cannot be signed; give the receiver one.");
}

TEST_CASE("A receiver that is not there is an error, at once") {
  Deliverer deliverer;
  Deliveries sent(deliverer);
  const Outcome outcome = sent.one(message("http://127.0.0.1:1/"));
  CHECK(outcome.status == 0);
  CHECK_THAT(outcome.error, Catch::Matchers::StartsWith("The attempt failed: Failed to connect"));
}

TEST_CASE("More attempts than may be under way at once wait their turn, and all are told") {
  Receiver receiver(secret_text);
  Limits limits;
  limits.in_flight = 3;
  Deliverer deliverer({}, limits);
  Deliveries sent(deliverer);
  for (int i = 0; i < 60; ++i)
    sent.start(message(receiver.url("/good")));
  sent.start(message("nonsense"));
  REQUIRE(sent.wait(61, std::chrono::seconds(20)));
  int good = 0;
  for (const Outcome& outcome : sent.outcomes())
    good += outcome.status == 204;
  CHECK(good == 60);
}

TEST_CASE("With nothing under way the deliverer does not wake, and wakes again when asked") {
  Receiver receiver(secret_text);
  Deliverer deliverer;
  Deliveries sent(deliverer);
  CHECK(sent.one(message(receiver.url("/good"))).status == 204);
  std::this_thread::sleep_for(std::chrono::milliseconds(100));
  const auto before = deliverer.wakeups();
  std::this_thread::sleep_for(std::chrono::milliseconds(2500));
  CHECK(deliverer.wakeups() == before);
  CHECK(sent.one(message(receiver.url("/good"))).status == 204);
  CHECK(deliverer.wakeups() > before);
}

TEST_CASE("Taken down while receivers hang, the deliverer is gone within half a second and tells nobody") {
  Receiver receiver(secret_text);
  std::atomic<int> told{0};
  auto deliverer = std::make_unique<Deliverer>();
  for (int i = 0; i < 10; ++i)
    deliverer->start(message(receiver.url("/silent")), [&](const Outcome&) { ++told; });
  for (int i = 0; i < 10; ++i)
    REQUIRE_FALSE(receiver.line().empty()); // all are under way
  const auto start = std::chrono::steady_clock::now();
  deliverer.reset();
  CHECK(std::chrono::steady_clock::now() - start < std::chrono::milliseconds(500));
  CHECK(told == 0);
}

TEST_CASE("An attempt may be started from the end of another") {
  Receiver receiver(secret_text);
  Deliverer deliverer;
  Deliveries sent(deliverer);
  deliverer.start(message(receiver.url("/status/500")),
                  [&](const Outcome&) { sent.start(message(receiver.url("/good"))); });
  REQUIRE(sent.wait(1, std::chrono::seconds(5)));
  CHECK(sent.outcomes()[0].status == 204);
}

TEST_CASE("A delivery is verified by the npm package standardwebhooks", "[.npm]") {
  Receiver receiver(secret_text);
  Deliverer deliverer;
  Deliveries sent(deliverer);
  CHECK(sent.one(message(receiver.url("/good"))).status == 204);
  const std::string line = receiver.line();
  const char* node = std::getenv("NUTWARD_NODE");
  REQUIRE(node != nullptr);
  const auto verdict = [&](const std::string& secret, const std::string& input) {
    Process verify({node, NUTWARD_SOURCE "/tests/support/verify_webhook.mjs", secret});
    verify.write(input);
    return verify.wait();
  };
  CHECK(verdict(secret_text, line) == 0);
  CHECK(verdict(Secret::make().text(), line) == 1); // the check itself can fail
}
