// Receivers that do everything a receiver can do wrong. PROMISES B2: a bad receiver harms nobody else.
#include "remind/deliver.hpp"
#include "support/catch.hpp"
#include "support/deliveries.hpp"

#include <fstream>
#include <thread>

using namespace nutward::remind;
using namespace nutward::test;
using namespace std::chrono_literals;
using Steady = std::chrono::steady_clock;

namespace {

struct Expected {
  const char* path;
  int status; // as it must be reported; 0: no answer that counts
};

// Where the headers came whole, the status counts whatever follows.
constexpr Expected hostile[] = {
    {"silent", 0},
    {"close", 0},
    {"reset", 0},
    {"garbage", 0},
    {"no-status-line", 0},
    {"trickled-headers", 0},
    {"endless-headers", 0},
    {"endless-header-line", 0},
    {"endless-status-line", 0},
    {"endless-continue", 0},
    {"continue-then-silent", 0},
    {"redirect-302", 302},
    {"redirect-307", 307},
    {"redirect-308", 308},
    {"endless-body", 200},
    {"endless-error-body", 500},
    {"trickled-body", 200},
    {"longer-than-sent", 200},
    {"huge-length", 200},
    {"length-not-a-number", 0},
    {"bad-chunk", 200},
    {"endless-chunks", 200},
};

long resident_kib() {
  std::ifstream status("/proc/self/status");
  for (std::string line; std::getline(status, line);)
    if (line.starts_with("VmRSS:")) return std::stol(line.substr(6));
  return 0;
}

Limits short_limits() {
  Limits limits;
  limits.timeout = 3s;
  return limits;
}

} // namespace

TEST_CASE("Unless told otherwise an attempt has 15 s, and 64 KiB of an answer are read") {
  CHECK(Limits{}.timeout == 15s);
  CHECK(Limits{}.reply_bytes == 65536);
}

TEST_CASE("Each misbehaviour ends within the time-out and is reported for what it was") {
  Receiver receiver(secret_text);
  Deliverer deliverer({}, short_limits());
  std::vector<std::unique_ptr<Deliveries>> sent;
  for (const Expected& e : hostile) {
    sent.push_back(std::make_unique<Deliveries>(deliverer));
    sent.back()->start(message(receiver.url(std::string("/") + e.path)));
  }
  for (std::size_t i = 0; i < std::size(hostile); ++i) {
    INFO(hostile[i].path);
    REQUIRE(sent[i]->wait(1, 8s));
    const Outcome outcome = sent[i]->outcomes()[0];
    INFO(outcome.error);
    CHECK(outcome.status == hostile[i].status);
    CHECK(outcome.took < 4s);
    const bool redirect = outcome.status / 100 == 3;
    CHECK(outcome.error.empty() == redirect);
  }
}

TEST_CASE("While forty-four hostile receivers hang, a good one gets each message within two seconds and "
          "memory is flat") {
  Receiver bad(secret_text), good(secret_text);
  Deliverer deliverer({}, short_limits());
  Deliveries warm(deliverer), hung(deliverer), sent(deliverer);
  REQUIRE(warm.one(message(good.url("/good"))).status == 204);
  REQUIRE_FALSE(good.line().empty());
  const long before = resident_kib();
  for (int round = 0; round < 2; ++round)
    for (const Expected& e : hostile)
      hung.start(message(bad.url(std::string("/") + e.path)));

  for (int i = 0; i < 5; ++i) {
    const auto start = Steady::now();
    CHECK(sent.one(message(good.url("/good"))).status == 204);
    CHECK_FALSE(good.line(2s).empty());
    CHECK(Steady::now() - start < 2s);
    std::this_thread::sleep_for(200ms);
  }
  CHECK(hung.outcomes().size() < 44); // some still hang: the good one was served meanwhile
  REQUIRE(hung.wait(44, 10s));
  CHECK(resident_kib() - before < 16 * 1024);
}

TEST_CASE("A certificate that nobody vouches for is no receiver, over https") {
  const TemporaryFolder folder;
  const Certificate made = make_certificate("127.0.0.1");
  const std::string certificate = folder.file("certificate.pem", made.certificate).string();
  const std::string key = folder.file("key.pem", made.key).string();
  Receiver receiver(secret_text, {certificate, key});
  {
    Deliverer deliverer;
    Deliveries sent(deliverer);
    const Outcome outcome = sent.one(message(receiver.url("/good")));
    CHECK(outcome.status == 0);
    CHECK_THAT(outcome.error, ContainsSubstring("certificate"));
  }
  Limits limits;
  limits.ca_file = certificate;
  Deliverer deliverer({}, limits);
  Deliveries sent(deliverer);
  const Outcome trusted = sent.one(message(receiver.url("/good")));
  INFO(trusted.error);
  CHECK(trusted.status == 204);
  // The same certificate under another name of the same machine.
  CHECK(sent.one(message("https://127.0.0.2:" + std::to_string(receiver.port()) + "/good")).status == 0);
}
