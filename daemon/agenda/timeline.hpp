// Open time laid out for speed: prefix sums over the openings that several units have together, and an index
// of buckets, so that placing some work takes a few steps however far ahead it is.
//
// Instants are whole seconds since 1970 (units::Instant::s), as everywhere inside the solver.
#pragma once

#include "agenda/plan.hpp"

#include <span>

namespace nutward::agenda {

using Second = std::int64_t;
inline constexpr Second never = Second{1} << 50; // later than any instant of a problem; -never is earlier

struct Stretch {
  Second start = never, end = never;
  friend bool operator==(const Stretch&, const Stretch&) = default;
};

class Timeline {
public:
  // Time that simply passes, up to `until`.
  explicit Timeline(Second until) : until_(until) {}
  // Rising, none overlapping, cut to [from, until]. `joined[i]` tells whether work may go on in openings[i]
  // that began before it, in openings[i - 1]; joined[0] does not count.
  Timeline(std::span<const Window> openings, std::span<const char> joined, Second from, Second until);

  // The earliest stretch that begins at or after `ready` and in which `work` is done; {never, never} if there
  // is none. It begins in open time and ends with it. No work takes no time, whether open or not.
  Stretch place(Second ready, Second work) const;
  // The latest start from which `work` is over by `end`; -never if there is none.
  Second latest(Second end, Second work) const;
  // The earliest start (as a lower limit for place) whose end is not before `end`.
  Second start_to_end_at(Second end, Second work) const;

  // The most work that can begin at t, which is open, and be done without a pause that is too long; never
  // where time simply passes.
  Second room(Second t) const;

  // Open seconds before t, from the first opening on; its inverses, which differ over closed time: the
  // earliest and the latest instant before which so much is open.
  Second open_before(Second t) const;
  Second first_at(Second open) const;
  Second last_at(Second open) const;
  bool elapsed() const { return openings_.empty() && !closed_; }

private:
  struct Opening {
    Second from, to;
    Second before; // open seconds before it
    Second run_from,
        run_to; // open seconds before its run (openings that work may go on through), and up to its end
    std::size_t run_first, next_run; // indices
  };
  std::size_t first_ending_after(Second t) const;

  std::vector<Opening> openings_;
  std::vector<std::uint32_t> bucket_; // of each 2^shift_ seconds: the first opening that ends after its begin
  Second base_ = 0, until_ = 0;
  int shift_ = 0;
  bool closed_ = false; // has no opening at all
};

} // namespace nutward::agenda
