#include "remind/schedule.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace nutward::remind {

namespace {

using namespace std::chrono_literals;
using std::chrono::seconds;

// waits[n]: after the n-th attempt failed. The first attempt is at once.
constexpr std::array<seconds, scheduled_attempts> waits{0s, 5s, 5min, 30min, 2h, 5h, 10h, 14h, 20h, 24h};
constexpr double jitter_share = 0.1;

seconds wait_after(int attempts) {
  return waits[static_cast<std::size_t>(std::min(attempts, scheduled_attempts - 1))];
}

bool overloaded(int status) {
  return status == 429 || status == 502 || status == 503 || status == 504;
}

} // namespace

Next next_attempt(int attempts_made, units::Instant now, const Outcome& outcome, double jitter) {
  if (outcome.ok()) return Delivered{};
  if (outcome.status == 410) return Disable{};

  const int made = std::max(attempts_made, 1);
  seconds wait = wait_after(made);
  if (outcome.retry_after)
    wait = std::max(wait, std::min<seconds>(*outcome.retry_after, longest_wait));
  else if (overloaded(outcome.status))
    wait = wait_after(made + 1);

  const double share = std::isfinite(jitter) ? std::clamp(jitter, 0.0, 1.0) * jitter_share : 0.0;
  wait += seconds{static_cast<std::int64_t>(static_cast<double>(wait.count()) * share)};
  if (made >= scheduled_attempts) return Failing{now + wait};
  return Retry{now + wait};
}

} // namespace nutward::remind
