#include "shop/supplying.hpp"

#include <algorithm>
#include <cmath>

namespace nutward::shop {

namespace {

constexpr std::size_t jobs_looked_at = 30, enough_jobs = 5;

// From taking in a job to cutting its frets, as it was of late: the median. Work that nobody has taken in yet
// takes no wire before that. A day where too few are known.
int usual_wait(const View& view, const hours::Zone& zone) {
  std::vector<int> days;
  for (const Job& job : view.jobs().recent(jobs_looked_at)) {
    for (const Stage& stage : view.jobs().stages(job.id)) {
      if (stage.kind != "cut" || !stage.finished) continue;
      days.push_back(std::max(0, zone.local(*stage.finished).day - zone.local(job.taken_in).day));
      break;
    }
  }
  if (days.size() < enough_jobs) return 1;
  const auto middle = days.begin() + static_cast<std::ptrdiff_t>(days.size() / 2);
  std::nth_element(days.begin(), middle, days.end());
  return std::max(1, *middle);
}

std::vector<std::int64_t> jobs_of(const std::vector<WireNeed>& needs, const std::vector<std::size_t>& at) {
  std::vector<std::int64_t> out;
  out.reserve(at.size());
  for (const std::size_t i : at)
    out.push_back(needs[i].job);
  std::sort(out.begin(), out.end());
  return out;
}

supply::Wanted wanted_of(const WireSupply& s, const SupplySettings& settings, Day new_work_from) {
  supply::Wanted w;
  w.on_hand = s.on_hand;
  w.needs.reserve(s.needs.size());
  for (const WireNeed& n : s.needs)
    w.needs.push_back({n.cut.day, n.length});
  w.arrives.reserve(s.arrivals.size());
  for (const Arrival& a : s.arrivals)
    w.arrives.push_back({a.day, a.length});
  w.new_work = supply::of_part(s.a_week, 7);
  w.new_work_from = new_work_from;
  w.lead = s.buying.lead;
  w.review = settings.review_days;
  w.service = settings.service;
  w.further = units::from_mm(s.known && !s.forgotten ? settings.further * s.each.length.mm() : 0);
  w.reorder_at = s.wire.reorder_at.value_or(Length{});
  w.terms = s.buying.terms;
  return w;
}

} // namespace

double WireSupply::refrets_left() const {
  if (each.length.nm == 0) return 0;
  return std::max(0.0, static_cast<double>(outlook.free.nm) / static_cast<double>(each.length.nm));
}

bool WireSupply::order_due(Day by) const {
  return outlook.order_by && *outlook.order_by <= by && outlook.order > Length{};
}

bool WireSupply::by_a_guess() const {
  return !outlook.by_hand && history.drawn_in == 0 && needs.empty();
}

Supplying::Supplying(const View& view, const hours::Calendar& calendar, const hours::Zone& zone, Instant now)
    : view_(view), zone_(zone), now_(now), setup_(shop::setup(view)), settings_(supply_settings(view)),
      today_(zone.local(now).day), days_(view, setup_, calendar, zone, now),
      wait_days_(usual_wait(view, zone)) {}

WireHistory Supplying::history_of(const Wire& wire) const {
  WireHistory out;
  const auto moved = view_.wires().moved(wire.id);
  if (!moved) return out;
  const std::int32_t now = week_of(now_), first = std::max(week_of(moved->first), now - most_weeks);
  out.weeks.resize(static_cast<std::size_t>(std::max(0, now - first))); // this week is not over
  for (const Drawn& d : view_.wires().drawn(wire.id, first)) {
    if (d.week >= now || d.length <= Length{}) continue;
    out.weeks[static_cast<std::size_t>(d.week - first)] = d.length.mm();
    ++out.drawn_in;
    out.since = now - 1 - d.week;
  }
  return out;
}

WireSupply Supplying::of(const Wire& wire, std::int64_t steps) const {
  WireSupply out;
  out.wire = wire;
  out.on_hand = view_.wires().on_hand(wire.id);
  out.held = set_aside(wire.id, view_, setup_);
  out.each = per_refret(wire.id, view_, setup_);
  const WirePlan plan = plan_of(whole_wire(wire, view_, setup_), view_, setup_, steps);
  out.settled = plan.settled;
  out.needs = needs_of(plan, days_);
  out.history = history_of(wire);
  out.buying = buying_of(wire, settings_, view_, zone_);
  out.arrivals = arrivals_of(wire, out.buying, today_, view_, zone_);
  out.known = out.on_hand != Length{} || out.buying.bought || out.history.drawn_in > 0 ||
              !out.needs.empty() || !out.arrivals.empty();
  out.forgotten = out.history.drawn_in > 0 && out.history.since > forgotten_weeks && out.needs.empty();
  // Refrets of a new shop come one by one: the variance of a week is what is expected of it.
  const double refret = out.each.length.mm(), guess = out.known ? settings_.guess : 0;
  if (!out.forgotten)
    out.a_week =
        supply::demand(out.history.weeks, {guess * refret, std::sqrt(guess) * refret, 0}, enough_weeks);
  out.guessed = out.known && !out.forgotten && out.history.weeks.size() < enough_weeks;

  for (const Arrival& arrival : out.arrivals)
    out.on_order += arrival.length;
  out.wanted = wanted_of(out, settings_, today_ + wait_days_);
  out.outlook = supply::outlook(out.wanted, today_);
  out.delayed = jobs_of(out.needs, out.outlook.delayed);
  const Buying& b = out.buying;
  if (b.last_price && out.outlook.order > Length{})
    out.price = units::share(*b.last_price, out.outlook.order, b.last_length);
  if (settings_.holding && settings_.order && b.last_price && b.last_price->minor > 0 &&
      out.a_week.mean > 0) {
    const double a_mm = static_cast<double>(b.last_price->minor) / b.last_length.mm();
    out.economic = units::from_mm(supply::economic_quantity(out.a_week.mean * 365.25 / 7,
                                                            static_cast<double>(settings_.order->minor),
                                                            *settings_.holding * a_mm));
  }
  return out;
}

std::vector<WireSupply> Supplying::of_all() const {
  const auto wires = view_.wires().all();
  const std::int64_t steps = steps_of_an_answer / std::max<std::int64_t>(1, std::ssize(wires));
  std::vector<WireSupply> out;
  out.reserve(wires.size());
  for (const Wire& wire : wires)
    out.push_back(of(wire, steps));
  return out;
}

} // namespace nutward::shop
