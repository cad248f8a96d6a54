// Outlook: how long a wire lasts, by when to order and how much: what is on hand and on order against what
// the queue is known to need and what new work is expected to take.
#pragma once

#include "supply/order.hpp"
#include "units/instant.hpp"

#include <optional>
#include <vector>

namespace nutward::supply {

using units::Day;

struct Dated {
  Day day; // a need: the day it is cut; an arrival: the day it is there. Before today counts as today
  Length length;
};

struct Wanted {
  Length on_hand;             // by the ledger; may be negative where a late entry is still missing
  std::vector<Dated> needs;   // what the queue is known to take, in any order
  std::vector<Dated> arrives; // what is on order, the days it was promised for
  Demand new_work;            // mm a day that jobs not yet taken in are expected to take
  Day new_work_from;          // from this day on: a job taken in today is not cut today
  Lead lead;                  // days from order to arrival
  int review = 0;             // days that may pass before somebody looks again; 0 or more
  double service = 0.98;
  Length further;    // wire for so much new work is bought besides
  Length reorder_at; // a level set by hand: with less on hand and on order, an order is due at once; 0: none
  Terms terms;
};

struct Point {
  Day day;
  Length level; // at its end, without any new order; may be negative
};

struct Outlook {
  Length free;                  // on hand less what the queue needs; negative: it does not suffice
  std::vector<Point> path;      // today, then each day up to the horizon
  std::optional<Day> runs_out;  // the first day that wants more than there is; nullopt: none in sight
  std::optional<Day> low, high; // the same if new work takes z deviations more, or less
  Length safety;                // safety_stock() over lead and review
  Length reorder_point;         // of the new work, over both; the queue's needs stand apart from it
  std::optional<Day> order_by;  // the last day on which an order still arrives before stock falls below
                                // `safety`; never before today. nullopt: none in sight
  bool too_late = false;        // that day has passed: an order today arrives after stock fell below
  bool by_hand = false;         // there is less than reorder_at, for which alone it is due today
  // What to order then, in packs: what the queue takes, new work until a lead and a review later, `safety`
  // and `further`, less what is there and on order; at least up to `reorder_at`. 0 where nothing is wanted in
  // sight.
  Length order;
  std::vector<std::size_t> delayed; // needs that wait for an order placed today, if `needs` come first and
                                    // the earlier ones before the later
};

inline constexpr int horizon_days = 366;

// O(needs + arrivals + horizon). BadSupply for negative lengths of needs, arrivals, further, pack or minimum,
// a negative review, and as service_factor().
Outlook outlook(const Wanted& wanted, Day today);

} // namespace nutward::supply
