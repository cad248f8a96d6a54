#include "remind/alarm.hpp"
#include "support/catch.hpp"

#include <atomic>
#include <condition_variable>
#include <memory>
#include <thread>
#include <vector>

using namespace nutward::remind;
using namespace std::chrono_literals;
using nutward::units::Instant;
using Steady = std::chrono::steady_clock;

namespace {

Instant now() {
  return {
      std::chrono::floor<std::chrono::seconds>(std::chrono::system_clock::now()).time_since_epoch().count()};
}

// Counts what the alarm's thread reports, and waits for it.
class Bell {
public:
  void ring() {
    std::lock_guard lock(mutex_);
    at_.push_back(now());
    changed_.notify_all();
  }
  bool rang(std::size_t times, std::chrono::milliseconds patience = 4s) {
    std::unique_lock lock(mutex_);
    return changed_.wait_for(lock, patience, [&] { return at_.size() >= times; });
  }
  std::vector<Instant> at() {
    std::lock_guard lock(mutex_);
    return at_;
  }

private:
  std::mutex mutex_;
  std::condition_variable changed_;
  std::vector<Instant> at_;
};

} // namespace

TEST_CASE("An alarm fires once, not before its instant and within a second after it") {
  Bell bell;
  Alarm alarm([&] { bell.ring(); });
  const Instant at = now() + 2s;
  alarm.set(at);
  REQUIRE(bell.rang(1));
  CHECK(bell.at()[0] >= at);
  CHECK(bell.at()[0] <= at + 1s);
  CHECK_FALSE(bell.rang(2, 300ms));
}

TEST_CASE("A past instant fires at once, however long past") {
  Bell bell;
  Alarm alarm([&] { bell.ring(); });
  std::size_t times = 0;
  for (const Instant past :
       {now(), now() - 1h, Instant{0}, Instant{-1}, Instant{std::numeric_limits<std::int64_t>::min()}}) {
    const auto start = Steady::now();
    alarm.set(past);
    REQUIRE(bell.rang(++times));
    CHECK(Steady::now() - start < 500ms);
  }
}

TEST_CASE("An earlier instant replaces a later one, and a later one an earlier") {
  Bell bell;
  Alarm alarm([&] { bell.ring(); });
  alarm.set(Instant{4'102'444'800}); // 2100-01-01
  const Instant soon = now() + 1s;
  alarm.set(soon);
  REQUIRE(bell.rang(1));
  CHECK(bell.at()[0] >= soon);
  alarm.set(now() + 1s);
  alarm.set(Instant{4'102'444'800});
  CHECK_FALSE(bell.rang(2, 2200ms));
}

TEST_CASE("Set to nothing, to the year 2100 or to the end of time, an alarm sleeps without waking") {
  Bell bell;
  Alarm alarm([&] { bell.ring(); });
  std::this_thread::sleep_for(50ms); // the thread is in its sleep
  const auto before = alarm.wakeups();
  for (const std::optional<Instant> at :
       {std::optional<Instant>{}, std::optional<Instant>{Instant{4'102'444'800}},
        std::optional<Instant>{Instant{std::numeric_limits<std::int64_t>::max()}}}) {
    alarm.set(at);
    std::this_thread::sleep_for(700ms);
  }
  CHECK(alarm.wakeups() == before);
  CHECK(bell.at().empty());
  alarm.set(now());
  CHECK(bell.rang(1));
}

TEST_CASE("An alarm may be set from its own fire, and each deadline fires in order") {
  Bell bell;
  const Instant start = now();
  std::vector<Instant> left{start + 3s, start + 2s, start + 1s};
  std::unique_ptr<Alarm> alarm;
  std::atomic<bool> ready{false};
  alarm = std::make_unique<Alarm>([&] {
    while (!ready)
      std::this_thread::yield();
    bell.ring();
    left.pop_back();
    if (!left.empty()) alarm->set(left.back());
  });
  ready = true;
  alarm->set(start + 1s);
  REQUIRE(bell.rang(3, 6s));
  for (std::size_t i = 0; i < 3; ++i)
    CHECK(bell.at()[i] >= start + std::chrono::seconds(i + 1));
  alarm.reset();
  CHECK(left.empty());
}

TEST_CASE("A clock that jumps forward fires what it passed, one that jumps back fires nothing early") {
  Bell bell;
  std::atomic<std::int64_t> offset{0};
  Alarm alarm([&] { bell.ring(); }, {}, [&] { return now() + std::chrono::seconds(offset); });
  alarm.set(now() + 24h);
  alarm.look_again();
  CHECK_FALSE(bell.rang(1, 200ms));
  offset = 86'400 + 5;
  alarm.look_again();
  REQUIRE(bell.rang(1, 500ms));

  offset = 0;
  alarm.set(now() + 1s);
  offset = -1'000'000'000; // decades back, before the timer runs out
  CHECK_FALSE(bell.rang(2, 2500ms));
  const auto settled = alarm.wakeups();
  std::this_thread::sleep_for(500ms);
  CHECK(alarm.wakeups() == settled); // it sleeps for decades now and does not spin
  offset = 0;
  alarm.look_again();
  CHECK(bell.rang(2, 1s));
}

TEST_CASE("Alarms set from several threads and taken down at any moment neither hang nor fire afterwards") {
  for (int round = 0; round < 20; ++round) {
    std::atomic<bool> gone{false}, late{false};
    {
      Alarm alarm([&] { late = late || gone; });
      std::vector<std::thread> threads;
      for (int t = 0; t < 4; ++t)
        threads.emplace_back([&, t] {
          for (int i = 0; i < 50; ++i)
            alarm.set(i % 3 == t % 3 ? std::optional<Instant>{now()} : std::nullopt);
        });
      for (auto& t : threads)
        t.join();
    }
    gone = true;
    CHECK_FALSE(late);
  }
}
