#include "remind/schedule.hpp"
#include "support/catch.hpp"

#include <cmath>

using namespace nutward::remind;
using nutward::units::Instant;
using std::chrono::seconds;

namespace {

constexpr Instant noon{1'797'076'800}; // 2026-12-12T12:00:00Z

Outcome answered(int status, std::optional<seconds> retry_after = std::nullopt) {
  Outcome o;
  o.status = status;
  o.retry_after = retry_after;
  return o;
}

std::int64_t wait(int attempts, const Outcome& outcome, double jitter = 0.0) {
  const Next next = next_attempt(attempts, noon, outcome, jitter);
  if (const auto* failing = std::get_if<Failing>(&next)) return (failing->at - noon).count();
  return (std::get<Retry>(next).at - noon).count();
}

template <class T>
bool is(const Next& next) {
  return std::holds_alternative<T>(next);
}

} // namespace

TEST_CASE("The waits are those of Standard Webhooks 1.0.0") {
  // Standard Webhooks 1.0.0, "deliverability and reliability": 5 s, 5 min, 30 min, 2 h, 5 h, 10 h, 14 h, 20
  // h, 24 h
  const std::int64_t waits[] = {5, 300, 1800, 7200, 18000, 36000, 50400, 72000, 86400};
  for (int made = 1; made <= 9; ++made) {
    INFO(made);
    CHECK(wait(made, Outcome{}) == waits[made - 1]);
    CHECK(is<Retry>(next_attempt(made, noon, Outcome{}, 0.5)));
  }
}

TEST_CASE("After the tenth failure the receiver counts as failing and is tried daily for good") {
  for (const int made : {10, 11, 500, 2'000'000'000}) {
    INFO(made);
    CHECK(is<Failing>(next_attempt(made, noon, Outcome{}, 0.0)));
    CHECK(wait(made, Outcome{}) == 86400);
  }
  CHECK(is<Delivered>(next_attempt(11, noon, answered(200), 0.0)));
}

TEST_CASE("Only 2xx is success, and 410 disables") {
  for (const int status : {200, 201, 202, 204, 299})
    CHECK(is<Delivered>(next_attempt(1, noon, answered(status), 0.0)));
  for (const int status :
       {0, 100, 199, 300, 301, 302, 307, 308, 400, 401, 404, 409, 411, 429, 500, 503, 599, 999}) {
    INFO(status);
    CHECK(is<Retry>(next_attempt(1, noon, answered(status), 0.0)));
  }
  CHECK(is<Disable>(next_attempt(1, noon, answered(410), 0.0)));
  CHECK(is<Disable>(next_attempt(40, noon, answered(410), 0.0)));
}

TEST_CASE("Jitter only ever adds, at most a tenth") {
  CHECK(wait(2, Outcome{}, 0.5) == 315);
  CHECK(wait(9, Outcome{}, 0.999) == 95031);
  CHECK(wait(9, Outcome{}, 7.0) == 95040);
  CHECK(wait(9, Outcome{}, -3.0) == 86400);
  CHECK(wait(9, Outcome{}, std::nan("")) == 86400);
}

TEST_CASE("Retry-After puts an attempt off, never brings it forward, and is followed for a day at most") {
  CHECK(wait(1, answered(503, seconds{120})) == 120);
  CHECK(wait(1, answered(500, seconds{120})) == 120);
  CHECK(wait(2, answered(503, seconds{1})) == 300);
  CHECK(wait(1, answered(503, seconds{1'000'000'000})) == 86400);
  CHECK(wait(1, answered(503, seconds{std::numeric_limits<std::int64_t>::max()})) == 86400);
  CHECK(wait(1, answered(503, seconds{-5})) == 5);
}

TEST_CASE("An overloaded receiver gets the longer wait after the next") {
  for (const int status : {429, 502, 503, 504}) {
    INFO(status);
    CHECK(wait(1, answered(status)) == 300);
    CHECK(wait(8, answered(status)) == 86400);
    CHECK(wait(9, answered(status)) == 86400);
    CHECK(wait(12, answered(status)) == 86400);
  }
  CHECK(wait(1, answered(500)) == 5);
}
