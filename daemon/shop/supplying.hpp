// How the shop stands with its wires: what is on hand, what the queue takes of it and when (shop/wire_need),
// what new work is expected to take by what the ledger says of the past, what is on order, and by when to
// order how much (supply/outlook).
#pragma once

#include "shop/supply_settings.hpp"
#include "shop/wire_need.hpp"
#include "supply/outlook.hpp"

#include <optional>
#include <string>
#include <vector>

namespace nutward::shop {

inline constexpr int sight_days = 7;   // an order that is due within these is spoken of as one to place
inline constexpr int most_weeks = 261; // five years of history
inline constexpr int forgotten_weeks =
    52; // nothing is expected of a wire that nobody used or wanted for so long
inline constexpr std::size_t enough_weeks = 8; // with fewer a guess counts as the rest of them

// What a wire was taken for, week by week.
struct WireHistory {
  std::vector<double> weeks; // mm, the oldest first; whole weeks from its first one on, at most most_weeks
  int drawn_in = 0;          // in how many of them any was
  int since = 0;             // weeks after the last of these
};

// Something that is on order.
struct Arrival {
  std::int64_t purchase = 0;
  Day day; // that it is expected on: as promised; tomorrow where it should have come by now
  Length length;
  bool promised = false; // else by how long the supplier takes
  bool overdue = false;  // it should have come by now
};

// Where it is bought, and how.
struct Buying {
  std::int64_t supplier = 0; // 0: nobody knows
  std::string supplier_name; // "" where nobody knows
  supply::Lead lead;         // days
  enum class Says { setting, supplier, orders } lead_from = Says::setting;
  supply::Terms terms;
  bool bought = false;                      // some of it has been delivered
  std::optional<Form> form;                 // of the newest delivery
  Length each;                              // a stick or coil of it; 0: not known
  std::optional<std::int64_t> pack_of{};    // sticks or coils in a pack, where the supplier says it so
  std::optional<units::Money> last_price{}; // of last_length, the newest delivery with a price
  Length last_length;
};

struct WireSupply {
  Wire wire;
  Length on_hand, held, on_order;
  PerRefret each; // of one refret
  std::vector<WireNeed> needs;
  std::vector<Arrival> arrivals; // by day
  WireHistory history;
  supply::Demand a_week;  // of new work, mm
  bool guessed = false;   // new work is a guess, or part of one
  bool known = false;     // somebody has bought, used or wanted it: else nothing is expected
  bool forgotten = false; // it was used, but not for over a year: likewise
  Buying buying;
  supply::Wanted wanted;
  supply::Outlook outlook;
  std::vector<std::int64_t> delayed; // jobs that would wait for an order placed today, each once
  std::optional<units::Money> price; // of the order, at the last price
  std::optional<Length> economic;    // economic quantity, where the shop says what holding and ordering cost
  bool settled = true;               // its cut plan is the best that the background has found

  Length needed() const { return on_hand - outlook.free; }
  double refrets_left() const;  // of what is free; 0 where nothing is
  bool order_due(Day by) const; // an order is to be placed by then
  bool by_a_guess() const;      // nothing but a guess at new work says so
};

// What all wires have in common, in one snapshot. References outlive it.
class Supplying {
public:
  Supplying(const View& view, const hours::Calendar& calendar, const hours::Zone& zone, Instant now);
  Supplying(const Supplying&) = delete;
  Supplying& operator=(const Supplying&) = delete;
  // Goes on from a stored cut plan, where the shop has changed since, in so many steps.
  WireSupply of(const Wire& wire, std::int64_t steps) const;
  std::vector<WireSupply> of_all() const; // by name; in the time of one answer

  const Setup& setup() const { return setup_; }
  const SupplySettings& settings() const { return settings_; }
  Day today() const { return today_; }
  int wait_days() const { return wait_days_; } // from taking a job in to cutting its frets

private:
  WireHistory history_of(const Wire& wire) const;
  const View& view_;
  const hours::Zone& zone_;
  Instant now_;
  Setup setup_;
  SupplySettings settings_;
  Day today_;
  CutDays days_;
  int wait_days_ = 1;
};

// The one file that knows of orders.
Buying buying_of(const Wire& wire, const SupplySettings& settings, const View& view, const hours::Zone& zone);
std::vector<Arrival> arrivals_of(const Wire& wire, const Buying& buying, Day today, const View& view,
                                 const hours::Zone& zone);

} // namespace nutward::shop
