// One alarm on the wall clock. It sleeps in poll(2) without a time-out, on a timer of the kernel: no wake-up
// happens before the instant comes, the clock is stepped, or the alarm is taken down. Suspend is covered: the
// wall clock goes on meanwhile, and a timer that ran out in between goes off on waking up.
#pragma once

#include "units/instant.hpp"

#include <atomic>
#include <chrono>
#include <cstdint>
#include <functional>
#include <mutex>
#include <optional>
#include <thread>

namespace nutward::remind {

// An open file descriptor, closed with its owner.
class Descriptor {
public:
  explicit Descriptor(int fd) : fd_(fd) {}
  Descriptor(const Descriptor&) = delete;
  Descriptor& operator=(const Descriptor&) = delete;
  ~Descriptor();
  int get() const { return fd_; }

private:
  int fd_;
};

class Alarm {
public:
  using Clock = std::function<units::Instant()>;

  // fire() and stepped() run on the alarm's own thread, one at a time, without any lock held: they may call
  // set(). They must not throw (that ends the process) and must not destroy the alarm.
  //   fire:    the instant set last has come; the alarm is then unset until set() is called again
  //   stepped: the wall clock was stepped by about this much (positive: forward), told before any fire() it
  //   causes.
  //            What jumped is measured against the boot-time clock, which also counts suspend.
  // wall: which clock instants are of; the system's by default. Another one must run at the same rate; where
  // it is made to jump, look_again() tells the alarm. Throws std::system_error if the system gives no timer.
  explicit Alarm(std::function<void()> fire, std::function<void(std::chrono::seconds)> stepped = {},
                 Clock wall = {});
  ~Alarm(); // waits for a fire() in progress, not for the instant

  // From any thread; replaces what was set before. An instant that has passed fires at once; nullopt sleeps
  // for good. Fires once for each set(), at or after the instant by the wall clock and never before it.
  void set(std::optional<units::Instant> at);
  void look_again(); // compares with the clock again, as after a step

  std::uint64_t wakeups() const { return wakeups_; } // how often the thread woke up, for tests and metrics

private:
  void run();
  bool rang(); // reads both descriptors; true: the clock was stepped
  void arm();  // with mutex_ held
  units::Instant now() const;
  std::chrono::seconds jumped();

  const std::function<void()> fire_;
  const std::function<void(std::chrono::seconds)> stepped_;
  const Clock wall_;
  Descriptor timer_, nudge_;
  std::mutex mutex_;
  std::optional<units::Instant> at_; // guarded by mutex_
  std::chrono::nanoseconds offset_;  // wall clock minus boot-time clock; only the thread's after construction
  std::atomic<bool> stopping_{false}, missed_step_{false};
  std::atomic<std::uint64_t> wakeups_{0};
  std::thread thread_; // last: everything above is there when it starts
};

} // namespace nutward::remind
