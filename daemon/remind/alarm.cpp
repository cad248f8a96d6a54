#include "remind/alarm.hpp"

#include "remind/quiet_thread.hpp"

#include <poll.h>
#include <sys/eventfd.h>
#include <sys/timerfd.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>
#include <ctime>
#include <system_error>
#include <utility>

namespace nutward::remind {

namespace {

using namespace std::chrono;

// Later than this (2255) is out of the kernel's range; nothing is due then.
constexpr std::int64_t last_second = 9'000'000'000;

int checked(int fd, const char* what) {
  if (fd < 0) throw std::system_error(errno, std::generic_category(), what);
  return fd;
}

nanoseconds read_clock(clockid_t clock) {
  timespec t{};
  clock_gettime(clock, &t);
  return seconds{t.tv_sec} + nanoseconds{t.tv_nsec};
}

nanoseconds wall_minus_boot() {
  return read_clock(CLOCK_REALTIME) - read_clock(CLOCK_BOOTTIME);
}

units::Instant system_now() {
  return {floor<seconds>(read_clock(CLOCK_REALTIME)).count()};
}

} // namespace

Descriptor::~Descriptor() {
  close(fd_);
}

Alarm::Alarm(std::function<void()> fire, std::function<void(seconds)> stepped, Clock wall)
    : fire_(std::move(fire)), stepped_(std::move(stepped)), wall_(std::move(wall)),
      timer_(checked(timerfd_create(CLOCK_REALTIME, TFD_NONBLOCK | TFD_CLOEXEC), "No timer for reminders")),
      nudge_(checked(eventfd(0, EFD_NONBLOCK | EFD_CLOEXEC), "No event for reminders")),
      offset_(wall_minus_boot()) {
  {
    std::lock_guard lock(mutex_);
    arm();
  }
  thread_ = quiet_thread([this] { run(); });
}

Alarm::~Alarm() {
  stopping_ = true;
  eventfd_write(nudge_.get(), 1);
  thread_.join();
}

void Alarm::set(std::optional<units::Instant> at) {
  std::lock_guard lock(mutex_);
  at_ = at;
  arm(); // from here, so that the thread sleeps on if nothing is due
}

void Alarm::look_again() {
  eventfd_write(nudge_.get(), 1);
}

units::Instant Alarm::now() const {
  return wall_ ? wall_() : system_now();
}

void Alarm::arm() {
  // A timer is armed even when nothing is set: it is what tells of a stepped clock.
  std::int64_t second = at_ ? std::clamp(at_->s, -last_second, last_second) : last_second;
  if (at_ && wall_) second += system_now().s - wall_().s + 1; // + 1: the fractions cut off may add up to it
  itimerspec when{};
  when.it_value.tv_sec = std::clamp<std::int64_t>(second, 1, last_second); // 0 would disarm it
  if (timerfd_settime(timer_.get(), TFD_TIMER_ABSTIME | TFD_TIMER_CANCEL_ON_SET, &when, nullptr) == 0) return;
  if (errno != ECANCELED)
    throw std::system_error(errno, std::generic_category(), "The reminder's timer was refused");
  // Armed all the same, but the clock was stepped before this call, and read(2) will not tell of it any more.
  missed_step_ = true;
  eventfd_write(nudge_.get(), 1);
}

bool Alarm::rang() {
  eventfd_t nudges = 0;
  eventfd_read(nudge_.get(), &nudges);
  std::uint64_t expirations = 0;
  const bool cancelled = read(timer_.get(), &expirations, sizeof expirations) < 0 && errno == ECANCELED;
  return missed_step_.exchange(false) || cancelled;
}

seconds Alarm::jumped() {
  const nanoseconds offset = wall_minus_boot();
  return round<seconds>(offset - std::exchange(offset_, offset));
}

void Alarm::run() {
  pollfd fds[] = {{timer_.get(), POLLIN, 0}, {nudge_.get(), POLLIN, 0}};
  while (true) {
    poll(fds, 2, -1);
    ++wakeups_;
    if (stopping_) return;
    if (rang()) {
      const seconds by = jumped();
      if (stepped_) stepped_(by);
    }
    bool due = false;
    {
      std::lock_guard lock(mutex_);
      due = at_ && now() >= *at_;
      if (due) at_.reset();
      arm();
    }
    if (due) fire_();
  }
}

} // namespace nutward::remind
