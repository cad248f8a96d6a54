#include "remind/falls_due.hpp"

#include "shop/supply_words.hpp"
#include "units/print.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace nutward::remind {

namespace {

using namespace shop;

Value slots_value(const std::vector<int>& slots) {
  std::vector<Value> out;
  out.reserve(slots.size());
  for (int slot : slots)
    out.emplace_back(std::int64_t{slot});
  return list(std::move(out));
}

std::string frets(const std::vector<int>& slots) {
  return (slots.size() == 1 ? "fret " : "frets ") + ranges(slots);
}

void add_rechecks(std::vector<Due>& out, const View& view, const hours::Calendar& calendar,
                  const hours::Zone& zone) {
  for (const Recheck& r : view.jobs().waiting()) {
    const auto clock = agenda::window_clock(r.from, r.due, calendar, zone);
    const Job job = *view.jobs().find(r.job);
    const Value data = record({{"job", Ref{Thing::job, job.id}},
                               {"slots", slots_value(r.slots)},
                               {"pressed", r.pressed},
                               {"from", r.from},
                               {"due", r.due},
                               {"overdue", clock.overdue}});
    if (!r.told) {
      const std::string text = fmt::format(
          "Look again at {} of {}: pressed {}, the recheck is due {}. Frets may spring back; it is overdue "
          "after {}.",
          frets(r.slots), named(job), zone.human(r.pressed), zone.human(r.due), zone.human(clock.overdue));
      out.push_back({clock.remind,
                     {"recheck.due", text, data},
                     fmt::format("recheck {} due {}", r.id, r.due.s),
                     [r = Recheck(r)](Tx& tx) mutable {
                       r.told = true;
                       tx.put(r);
                     }});
    } else if (!r.overdue_told) {
      const std::string text = fmt::format("The recheck of {} of {} is overdue: it was due {}.",
                                           frets(r.slots), named(job), zone.human(r.due));
      out.push_back({clock.overdue,
                     {"recheck.overdue", text, data},
                     fmt::format("recheck {} overdue {}", r.id, r.due.s),
                     [r = Recheck(r)](Tx& tx) mutable {
                       r.overdue_told = true;
                       tx.put(r);
                     }});
    }
  }
}

void add_presses(std::vector<Due>& out, const View& view, const Setup& set, const hours::Calendar& calendar,
                 const hours::Zone& zone) {
  for (Job job : view.jobs().open()) {
    if (!job.due || job.press_told == job.due) continue;
    const auto by = press_by(job, view, set, calendar, zone);
    if (!by) continue;
    const std::string text = fmt::format("Press {} by {} at the latest, to have it ready {}.", named(job),
                                         zone.human(by->latest), zone.human(*job.due));
    // A job taken in after that falls due as it comes in: the reminder is not late.
    out.push_back({std::max(by->remind, job.taken_in),
                   {"press.due", text,
                    record({{"job", Ref{Thing::job, job.id}}, {"latest_at", by->latest}, {"due", *job.due}})},
                   fmt::format("job {} press {}", job.id, job.due->s),
                   [job](Tx& tx) mutable {
                     job.press_told = job.due;
                     tx.put(job);
                   }});
  }
}

// The first open minute from then on; then, where nothing opens.
units::Instant first_open(units::Instant t, const hours::Calendar& calendar, const hours::Zone& zone) {
  return hours::next_open(calendar, zone, t).value_or(t);
}

Due low(const WireSupply& s, units::Instant at, const Moment& moment) {
  const Wire wire = s.wire;
  const std::string text = sentence(fmt::format(
      "order {} of {} {}: {}{}.", quantity_words(s), wire.name, by_words(s, moment), left_where_words(s),
      s.outlook.by_hand
          ? fmt::format(", and its reorder level is {}", units::print(*wire.reorder_at, units::LengthUnit::m))
          : fmt::format(", and an order takes about {}", plural(std::llround(s.buying.lead.mean), "day"))));
  return {at,
          {"wire.low", text,
           record({{"wire", Ref{Thing::wire, wire.id}},
                   {"name", wire.name},
                   {"on_hand", s.on_hand},
                   {"order_by_on", units::print(*s.outlook.order_by)},
                   {"order", s.outlook.order},
                   {"again", wire.low_told_at.has_value()},
                   {"level_mm", opt(wire.reorder_at)}})},
          fmt::format("wire {} low {}", wire.id, at.s),
          [wire, now = moment.now](Tx& tx) {
            Wire told = *tx.wires().find(wire.id);
            told.low_told_at = now;
            tx.put(told);
          }};
}

Due well(const WireSupply& s, units::Instant now) {
  const Wire wire = s.wire;
  const std::string more = s.on_order > Length{}
                               ? fmt::format("{} is on order", units::print(s.on_order, units::LengthUnit::m))
                               : fmt::format("{} is there", units::print(s.on_hand, units::LengthUnit::m));
  return {now,
          {"wire.well", sentence(fmt::format("{} need not be ordered any more: {}.", wire.name, more)),
           record({{"wire", Ref{Thing::wire, wire.id}},
                   {"name", wire.name},
                   {"on_hand", s.on_hand},
                   {"on_order", s.on_order}})},
          fmt::format("wire {} well {}", wire.id, wire.low_told_at->s),
          [wire](Tx& tx) {
            Wire told = *tx.wires().find(wire.id);
            told.low_told_at.reset();
            tx.put(told);
          }};
}

// On the day by which to order, and again while nobody does. A guess alone tells nobody anything. What has
// been told is over once nothing is due within a week: not when the day moves on by one.
void add_wires(std::vector<Due>& out, const View& view, const hours::Calendar& calendar,
               const hours::Zone& zone, units::Instant now) {
  const Supplying all(view, calendar, zone, now);
  const Moment moment{now, now, zone, calendar, {}};
  for (const WireSupply& s : all.of_all()) {
    const bool due = !s.by_a_guess() && s.order_due(all.today() + supply::horizon_days);
    const auto& told = s.wire.low_told_at;
    if (told && (!due || *s.outlook.order_by > all.today() + sight_days)) {
      out.push_back(well(s, now));
      continue;
    }
    if (!due) continue;
    units::Instant from = now;
    if (*s.outlook.order_by > all.today()) from = zone.instant(*s.outlook.order_by, 0);
    if (told) from = std::max(from, zone.instant(zone.local(*told).day + all.settings().again_days, 0));
    out.push_back(low(s, first_open(from, calendar, zone), moment));
  }
}

} // namespace

std::vector<Due> falls_due(const View& view, const hours::Calendar& calendar, const hours::Zone& zone,
                           units::Instant now) {
  const Setup set = setup(view);
  std::vector<Due> out;
  add_rechecks(out, view, calendar, zone);
  add_presses(out, view, set, calendar, zone);
  add_wires(out, view, calendar, zone, now);
  return out;
}

} // namespace nutward::remind
