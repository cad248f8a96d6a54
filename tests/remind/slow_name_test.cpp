// Symptom: one receiver whose name server does not answer held up every delivery, and the daemon's end.
// Cause: giving up on a name, libcurl waits for the thread that still looks it up, on the thread that serves
// all transfers. Cure: CURLOPT_QUICK_EXIT in remind/transfer.cpp, which lets that thread end by itself.
#include "remind/deliver.hpp"
#include "support/catch.hpp"
#include "support/deliveries.hpp"

#include <dlfcn.h>
#include <netdb.h>

#include <cstring>
#include <thread>

using namespace nutward::remind;
using namespace nutward::test;
using namespace std::chrono_literals;
using Steady = std::chrono::steady_clock;

// Stands before the C library's for the whole program: one name takes its time, as one with a dead name
// server does.
extern "C" int getaddrinfo(const char* name, const char* service, const addrinfo* hints, addrinfo** list) {
  if (name != nullptr && std::strcmp(name, "slow.invalid") == 0) {
    std::this_thread::sleep_for(6s);
    return EAI_AGAIN;
  }
  static const auto real = reinterpret_cast<decltype(&getaddrinfo)>(dlsym(RTLD_NEXT, "getaddrinfo"));
  return real(name, service, hints, list);
}

TEST_CASE(
    "A name server that does not answer holds up neither other receivers nor the end of the deliverer") {
  Receiver good(secret_text);
  Limits limits;
  limits.timeout = 500ms;
  auto deliverer = std::make_unique<Deliverer>(Policy{}, limits);
  Deliveries slow(*deliverer), sent(*deliverer);
  const auto start = Steady::now();
  slow.start(message("http://slow.invalid/"));
  REQUIRE(slow.wait(1, 3s));
  CHECK(slow.outcomes()[0].error == "The receiver was not done within 500 ms.");
  CHECK(sent.one(message(good.url("/good"))).status == 204);
  CHECK(Steady::now() - start < 2s);

  slow.start(message("http://slow.invalid/"));
  std::this_thread::sleep_for(100ms); // the look-up is under way
  const auto end = Steady::now();
  deliverer.reset();
  CHECK(Steady::now() - end < 300ms);
}
