#include "supply/outlook.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace nutward::supply {

namespace {

void check(const Wanted& w) {
  const auto never_negative = [](Length length, const char* what) {
    if (length < Length{})
      throw BadSupply(std::string(what) + " cannot be less than nothing.", "Check its length.");
  };
  for (const Dated& d : w.needs)
    never_negative(d.length, "What a job needs");
  for (const Dated& d : w.arrives)
    never_negative(d.length, "What arrives");
  never_negative(w.further, "What is bought besides");
  never_negative(w.reorder_at, "A reorder level");
  if (w.review < 0) throw BadSupply("Days between reviews cannot be less than none.", "7 are usual.");
  never_negative(w.terms.pack, "A pack");
  never_negative(w.terms.minimum, "A least order");
}

// What comes less what goes, each day from today on.
std::vector<Length> balances(const Wanted& w, Day today) {
  std::vector<Length> out(horizon_days + 1);
  const auto at = [&](Day day) {
    return static_cast<std::size_t>(std::clamp(day - today, 0, horizon_days + 1));
  };
  for (const Dated& d : w.arrives)
    if (at(d.day) < out.size()) out[at(d.day)] += d.length;
  for (const Dated& d : w.needs)
    if (at(d.day) < out.size()) out[at(d.day)] -= d.length;
  return out;
}

// New work of so many days, with `z` deviations more than its mean.
Length new_work(const Wanted& w, int days, double z) {
  if (days <= 0) return {};
  const double n = days;
  return units::from_mm(std::max(0.0, n * w.new_work.mean + z * std::sqrt(n) * w.new_work.deviation));
}

struct Walk {
  std::vector<Length> certain; // by day, without new work
  const Wanted& w;
  Day today;
  int days_of_work(int day) const { return today + day - w.new_work_from + 1; }
  Length level(int day, double z) const {
    return certain[static_cast<std::size_t>(day)] - new_work(w, days_of_work(day), z);
  }
  std::optional<Day> first_below(Length least, double z) const {
    for (int day = 0; day <= horizon_days; ++day)
      if (level(day, z) < least) return today + day;
    return std::nullopt;
  }
};

std::vector<std::size_t> delayed(const Wanted& w, Day today, int lead) {
  std::vector<std::size_t> by_day(w.needs.size());
  std::iota(by_day.begin(), by_day.end(), std::size_t{0});
  std::stable_sort(by_day.begin(), by_day.end(),
                   [&](std::size_t a, std::size_t b) { return w.needs[a].day < w.needs[b].day; });
  std::vector<std::size_t> out;
  Length taken;
  for (const std::size_t i : by_day) {
    const Day day = std::max(w.needs[i].day, today);
    if (day - today >= lead) break; // the order is there by then
    Length there = w.on_hand - taken;
    for (const Dated& d : w.arrives)
      if (std::max(d.day, today) <= day) there += d.length;
    if (w.needs[i].length > there)
      out.push_back(i);
    else
      taken += w.needs[i].length;
  }
  return out;
}

Length on_order(const Wanted& w) {
  Length sum;
  for (const Dated& d : w.arrives)
    sum += d.length;
  return sum;
}

// `day`: that of the order, from today on.
Length to_order(const Wanted& w, const Walk& walk, Length safety, int day, int lead) {
  const Length until_it_comes = new_work(w, walk.days_of_work(day + lead + w.review - 1), 0);
  const Length by_hand = w.reorder_at + new_work(w, walk.days_of_work(day - 1), 0);
  Length wanted = w.further + std::max(safety + until_it_comes, by_hand);
  for (const Dated& d : w.needs)
    wanted += d.length;
  return rounded_up(wanted - w.on_hand - on_order(w), w.terms);
}

} // namespace

Outlook outlook(const Wanted& w, Day today) {
  check(w);
  const double z = service_factor(w.service);
  Walk walk{balances(w, today), w, today};
  Length level = w.on_hand;
  for (Length& day : walk.certain)
    day = level += day;
  Outlook out;
  out.free = w.on_hand;
  for (const Dated& d : w.needs)
    out.free -= d.length;
  out.path.reserve(walk.certain.size());
  for (int day = 0; day <= horizon_days; ++day)
    out.path.push_back({today + day, walk.level(day, 0)});
  out.runs_out = walk.first_below({}, 0);
  out.low = walk.first_below({}, z);
  out.high = walk.first_below({}, -z);
  const Lead both{w.lead.mean + w.review, w.lead.deviation, w.lead.seen};
  out.safety = units::from_mm(safety_stock(z, w.new_work, both));
  out.reorder_point = units::from_mm(supply::reorder_point(z, w.new_work, both));
  const int lead = static_cast<int>(std::ceil(w.lead.mean));
  const auto below = walk.first_below(out.safety, 0);
  if (below) {
    out.too_late = *below - lead < today;
    out.order_by = std::max(*below - lead, today);
  }
  if (w.on_hand + on_order(w) < w.reorder_at) {
    out.order_by = today;
    out.by_hand = true;
  }
  if (out.order_by) out.order = to_order(w, walk, out.safety, *out.order_by - today, lead);
  out.delayed = delayed(w, today, lead);
  return out;
}

} // namespace nutward::supply
