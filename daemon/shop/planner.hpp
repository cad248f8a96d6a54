// Works out plans in the background and stores them (Backroom::keep), so that no answer waits for one and a
// restart reshuffles nothing. It knows nothing of what is planned: each kind of plan says which subjects the
// shop has, what a plan of one follows from, and how it is worked out.
//
// A plan stands for the digest of its input, not for the shop's revision: what does not change the input
// leaves the plan as it is. One thread looks after it; while nothing changes it sleeps without a timer. Plans
// that age by time say when: whoever has an alarm sets it to that, and calls changed() when it goes off.
#pragma once

#include "shop/run.hpp"
#include "shop/store.hpp"

#include <condition_variable>
#include <cstdint>
#include <functional>
#include <mutex>
#include <optional>
#include <set>
#include <stop_token>
#include <string>
#include <string_view>
#include <thread>
#include <vector>

namespace nutward::shop {

// What a plan of one subject follows from, as it stood in a snapshot.
struct PlanInput {
  std::string digest; // 64 hex digits; equal inputs have equal ones
  // Empty: there is nothing to plan. Otherwise the body of a plan, off the snapshot and on a thread of its
  // own: from the last one that is stored (of whatever digest; nullopt: none), in haste or as well as it is
  // worth, and soon back after a stop.
  std::function<std::string(const std::optional<StoredPlan>& last, bool haste, const std::stop_token& stop)>
      work_out;
};

struct PlanKind {
  std::string_view name;                                          // StoredPlan::kind
  std::function<std::vector<std::int64_t>(const View&)> subjects; // those that may have anything to plan
  std::function<PlanInput(std::int64_t subject, const View&)> input;
  // When it will have to look again although nothing changes; nullopt: never. Empty: likewise.
  std::function<std::optional<Instant>(const View&)> ages{};
  // Each change is first answered by a plan made in haste, from the last one, and only then by a good one.
  // false: the last good one stands meanwhile, and haste is for what has no plan at all.
  bool follows = false;
};

class Planner {
public:
  // Begins with whatever is not stored, or stored for a shop that has changed since. The store and the clock
  // outlive it. `note`: a line for the log, from its own thread.
  Planner(Store& store, const Clock& clock, std::vector<PlanKind> kinds,
          std::function<void(const std::string&)> note = {});
  ~Planner(); // breaks off what is under way: it is begun anew by the next Planner

  // The shop has changed; any thread, soon back. Many at once are looked at once.
  void changed();

  // Called after each sweep, on its own thread, with when the first plan will have aged; nullopt: none ever.
  // Replaces what was given before, whose call, where one is under way, is over when this returns.
  void wake_by(std::function<void(std::optional<Instant>)> set_alarm);

  struct Worked {
    std::uint64_t sweeps = 0;   // times that it looked at the shop
    std::uint64_t stored = 0;   // plans that it has stored
    std::uint64_t given_up = 0; // that it broke off because the shop had changed
  };
  Worked worked() const;
  void wait_until_done(); // until what has changed so far has its plan; for tests and the demo

private:
  void run();
  void sweep();
  void say_when();
  void attempt(const PlanKind& kind, const std::function<void()>& body) const;
  void look_after(const PlanKind& kind, std::int64_t subject, bool haste);
  struct Made {
    std::string body;
    bool given_up = false;
  };
  Made worked_out(const PlanKind& kind, std::int64_t subject, const PlanInput& input,
                  const std::optional<StoredPlan>& last, bool haste, std::uint64_t seen);
  std::string digest_now(const PlanKind& kind, std::int64_t subject);

  Store& store_;
  const Clock& clock_;
  std::vector<PlanKind> kinds_;
  std::function<void(const std::string&)> note_;
  mutable std::mutex lock_; // guards all below but those of the thread's own
  std::condition_variable wake_, idle_;
  std::uint64_t changes_ = 1, looked_at_ = 0; // changes heard of; those before the last sweep that is done
  bool stopping_ = false;
  Worked worked_;
  std::mutex alarm_lock_; // held while set_alarm_ is called
  std::function<void(std::optional<Instant>)> set_alarm_;
  std::set<std::pair<std::string_view, std::int64_t>>
      broken_off_;     // the thread's own: the next time to the end
  std::thread thread_; // last: it uses all the others
};

} // namespace nutward::shop
