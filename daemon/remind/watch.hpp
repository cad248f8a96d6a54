// What falls due, found and told. One Alarm sleeps until the next thing is due; then a sweep writes what has
// fallen due into the outbox (in its own commit, once each), hands the outbox's due entries to the Deliverer,
// and settles what came of the attempts before. After each change of the shop the sweep looks again. Nothing
// is polled.
//
// Told are: recheck.due (at the first open minute at or after a recheck is due), recheck.overdue (at the end
// of the next open day), press.due (one open day before the latest press time), wire.low (at the first
// open minute of the day by which to order, and again some days later), wire.well (once nobody need order it
// any more). What a command tells by itself goes the same way: press.beyond (a load above the rating that
// was confirmed as what really happened).
#pragma once

#include "remind/alarm.hpp"
#include "remind/deliver.hpp"
#include "shop/run.hpp"

#include <atomic>
#include <functional>
#include <mutex>
#include <set>
#include <string>
#include <vector>

namespace nutward::remind {

struct WatchOptions {
  std::string source = "/nutward";       // CloudEvents' source
  Policy policy;                         // which addresses may be called
  std::function<void(std::string)> note; // a line for the log; any thread
};

class Watch {
public:
  // Takes the store's change listener. The store, clock and rooms outlive the Watch; whoever writes to the
  // store from other threads is gone before it. Starts with a sweep.
  Watch(shop::Store& store, const shop::Clock& clock, shop::Rooms& rooms, WatchOptions options);
  ~Watch(); // attempts under way are broken off, and made again by the next Watch

  void look();                                     // sweeps soon; any thread
  std::uint64_t sweeps() const { return sweeps_; } // how many there were, for tests

private:
  struct Ended {
    shop::OutboxEntry entry;
    Outcome outcome;
  };
  void sweep();
  std::optional<units::Instant> told_and_sent(units::Instant now); // when to sweep next
  std::optional<units::Instant> tell(units::Instant now);          // what is due; when the next is
  void settle(shop::Tx& tx, const Ended& ended, units::Instant now, std::vector<std::string>& notes);
  void send(units::Instant now);
  void start(const shop::OutboxEntry& entry, const shop::Receiver& receiver, units::Instant now);
  void note(const std::string& line) const;

  shop::Store& store_;
  const shop::Clock& clock_;
  shop::Rooms& rooms_;
  WatchOptions options_;
  std::mutex mutex_;
  std::vector<Ended> ended_;                       // guarded by mutex_
  std::set<std::int64_t> under_way_;               // guarded by mutex_: entries started and not settled yet
  std::atomic<bool> again_{false}, closing_{true}; // closing: a sweep returns at once
  bool holding_ = false;                           // only a sweep's: it was said that the clock is not set
  std::atomic<std::uint64_t> sweeps_{0};
  std::mutex sweeping_; // held while a sweep runs: the destructor waits for it
  Alarm alarm_;         // calls sweep(), which uses deliverer_, so the destructor stops sweeps first
  Deliverer deliverer_; // last: what it has under way calls look() until it is gone
};

} // namespace nutward::remind
