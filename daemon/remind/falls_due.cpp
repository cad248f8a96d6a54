#include "remind/falls_due.hpp"

#include "shop/bench.hpp"
#include "units/print.hpp"

#include <fmt/format.h>

#include <algorithm>

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

void add_wires(std::vector<Due>& out, const View& view, const Setup& set, units::Instant now) {
  for (Wire wire : view.wires().all()) {
    if (!wire.reorder_at || wire.low_told_at) continue;
    const units::Length on_hand = view.wires().on_hand(wire.id);
    if (on_hand >= *wire.reorder_at) continue;
    using units::LengthUnit;
    const auto each = per_refret(wire.id, view, set);
    const std::string text =
        fmt::format("{} is low: {} on hand, {:.1f} refrets of {} each; its reorder level is {}.", wire.name,
                    units::print(on_hand, LengthUnit::m),
                    static_cast<double>(on_hand.nm) / static_cast<double>(each.length.nm),
                    units::print(each.length, LengthUnit::m), units::print(*wire.reorder_at, LengthUnit::m));
    out.push_back({now,
                   {"wire.low", text,
                    record({{"wire", Ref{Thing::wire, wire.id}},
                            {"name", wire.name},
                            {"on_hand", on_hand},
                            {"level", *wire.reorder_at}})},
                   fmt::format("wire {} low {}", wire.id, view.journal().newest()),
                   [wire, now](Tx& tx) mutable {
                     wire.low_told_at = now;
                     tx.put(wire);
                   }});
  }
}

} // namespace

std::vector<Due> falls_due(const View& view, const hours::Calendar& calendar, const hours::Zone& zone,
                           units::Instant now) {
  const Setup set = setup(view);
  std::vector<Due> out;
  add_rechecks(out, view, calendar, zone);
  add_presses(out, view, set, calendar, zone);
  add_wires(out, view, set, now);
  return out;
}

} // namespace nutward::remind
