// When a message is tried again. Pure: the time and the jitter come from the caller.
// Schedule (Standard Webhooks 1.0.0): at once, then 5 s, 5 min, 30 min, 2 h, 5 h, 10 h, 14 h, 20 h and 24 h
// after the failure before, each up to a tenth later so that many messages do not return together. After the
// tenth failure the receiver counts as failing and a person must be told, but the message stays and is tried
// once a day: a receiver that is down for days gets it later, never not at all.
#pragma once

#include "units/instant.hpp"

#include <chrono>
#include <optional>
#include <string>
#include <variant>

namespace nutward::remind {

// How one attempt ended.
struct Outcome {
  int status = 0;                                  // HTTP status; 0: none came, and `error` says why
  std::string error;                               // a whole sentence; may stand beside a status
  std::optional<std::chrono::seconds> retry_after; // as the receiver asked, > 0
  std::chrono::milliseconds took{0};
  bool ok() const { return status >= 200 && status <= 299; } // only these are success, a redirect is not
};

struct Delivered {};
struct Retry {
  units::Instant at;
};
struct Failing { // the schedule is used up; still tried at `at`
  units::Instant at;
};
struct Disable {}; // 410 Gone: the receiver wants nothing any more
using Next = std::variant<Delivered, Retry, Failing, Disable>;

inline constexpr int scheduled_attempts = 10;
inline constexpr std::chrono::hours longest_wait{24}; // also the most that Retry-After is followed

// attempts_made counts this one (≥ 1; less counts as 1); jitter in [0, 1), outside it is clamped.
// Retry-After never brings an attempt forward, only back. 429, 502, 503 and 504 without it take the step
// after the next: the receiver is overloaded, not wrong.
Next next_attempt(int attempts_made, units::Instant now, const Outcome& outcome, double jitter);

} // namespace nutward::remind
