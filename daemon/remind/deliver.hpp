// Sending messages to receivers over HTTP. One thread and libcurl's multi interface carry all attempts at
// once, so that a slow receiver delays nobody else. While nothing is under way the thread sleeps without
// waking. One attempt: POST, HTTP/1.1, on a connection of its own, signed; over in 15 s whatever the receiver
// does; no redirect is followed, no proxy used, no environment variable asked; of the answer at most 64 KiB
// is read, and once its headers are complete its status counts, however the rest goes on. Addresses:
// remind/address.hpp, judged on the socket itself.
#pragma once

#include "remind/address.hpp"
#include "remind/schedule.hpp"
#include "remind/sign.hpp"
#include "units/instant.hpp"

#include <chrono>
#include <cstddef>
#include <cstdint>
#include <functional>
#include <memory>
#include <stdexcept>
#include <string>
#include <vector>

namespace nutward::remind {

struct Attempt {
  std::string id;                                // webhook-id: the same on every attempt; printable ASCII
  std::string url;                               // http or https
  std::string body;                              // sent as it is
  std::string content_type = "application/json"; // event.hpp: content_type(shape)
  std::vector<Secret> secrets;                   // signed with each; two while one is being replaced
  units::Instant at;                             // webhook-timestamp: now, not when the thing fell due
};

// A URL that no attempt is made on. what(): a whole sentence; would_do: what to write instead.
struct BadUrl : std::runtime_error {
  BadUrl(const std::string& what, std::string remedy)
      : std::runtime_error(what), would_do(std::move(remedy)) {}
  std::string would_do;
};

// Throws BadUrl: longer than 2,000 bytes, not a URL, without a host, or neither http nor https. Looks nothing
// up: whether the address may be called shows only when it is.
Scheme check_url(const std::string& url);

struct Limits {
  std::chrono::milliseconds timeout{15'000}; // an attempt, from name look-up to the end of the answer
  std::size_t reply_bytes = 64 * 1024;       // headers and body together
  std::size_t in_flight = 256;               // attempts at once; more wait in the order they came
  std::string ca_file;                       // PEM of the authorities trusted for https; empty: the system's
};

class Deliverer {
public:
  // Runs on the deliverer's thread, exactly once for each start(), unless the deliverer is destroyed first:
  // then the attempt is broken off and nobody is told, as after a crash. May call start(); must not throw
  // (that ends the process), must not block for long, must not destroy the deliverer.
  using Done = std::function<void(const Outcome&)>;

  // Throws std::runtime_error if libcurl cannot be set up.
  explicit Deliverer(Policy policy = {}, Limits limits = {});
  ~Deliverer(); // breaks off what is under way; returns within a moment

  // From any thread; returns at once. What cannot be sent (BadUrl, an id with a line break …) is told through
  // done, too.
  void start(Attempt attempt, Done done);
  void set_policy(Policy policy); // from any thread; holds for attempts started after it

  std::uint64_t wakeups() const; // how often the thread woke up, for tests and metrics

private:
  struct Engine;
  std::unique_ptr<Engine> engine_;
};

} // namespace nutward::remind
