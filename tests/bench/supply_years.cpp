#include "bench/supply_years.hpp"

#include "supply/outlook.hpp"

#include <algorithm>
#include <cmath>
#include <deque>
#include <random>
#include <vector>

#include <fmt/core.h>

namespace nutward::bench {

namespace {

using namespace supply;

constexpr int year = 364, weeks_a_year = 52;
constexpr double refret_mm = 1243, stick_mm = 610;

// What happens to one shop, whatever it orders: invented, in the range of a small bench.
struct World {
  struct Work {
    int taken_in = 0, cut = 0; // days
    double mm = 0;
  };
  std::vector<Work> work; // by the day of cutting
  std::vector<int> leads; // days that the next order really takes
  int pack = 0;           // sticks
  double said = 0;        // days that the supplier says
};

World world_of(int seed) {
  std::mt19937 random(static_cast<unsigned>(1000 + seed));
  const auto uniform = [&](double a, double b) { return std::uniform_real_distribution<>(a, b)(random); };
  World out;
  const double a_week = uniform(0.3, 2.0); // refrets of this wire
  const double wait = uniform(4, 12);
  for (int day = 0; day < 2 * year; ++day) {
    if (day % 7 >= 5) continue;
    for (int n = std::poisson_distribution<>(a_week / 5)(random); n > 0; --n) {
      const bool whole = random() % 5 != 0; // one in five is some slots only
      const double mm = whole ? uniform(0.8, 1.25) * refret_mm : uniform(0.1, 0.4) * refret_mm;
      const int cut = day + std::max(1, static_cast<int>(std::lround(wait * uniform(0.5, 1.5))));
      out.work.push_back({day, cut + (cut % 7 >= 5 ? 2 : 0), mm});
    }
  }
  std::stable_sort(out.work.begin(), out.work.end(),
                   [](const World::Work& a, const World::Work& b) { return a.cut < b.cut; });
  const double lead = uniform(5, 14);
  out.said = std::round(lead * uniform(0.7, 1.1));
  std::gamma_distribution<> took(12, lead / 12); // a deviation of 29 % of it
  for (int i = 0; i < 400; ++i)
    out.leads.push_back(std::max(1, static_cast<int>(std::lround(took(random)))));
  out.pack = 4 + static_cast<int>(random() % 7);
  return out;
}

struct Fared {
  int weeks_out = 0; // of the second year, in which something waited for wire
  double stock = 0;  // mm, the mean of its evenings
  int orders = 0;
};

struct Due {
  int day = 0;
  double mm = 0;
};

// Stock, orders and the queue of one shop, day by day. `policy` says what to order in the evening, in mm.
template <class Policy>
Fared years(const World& world, double first_stock, Policy&& policy) {
  Fared out;
  double stock = first_stock;
  std::deque<Due> coming;
  std::vector<World::Work> waiting;
  std::size_t next = 0, placed = 0;
  bool out_this_week = false;
  for (int day = 0; day < 2 * year; ++day) {
    while (!coming.empty() && coming.front().day <= day)
      stock += coming.front().mm, coming.pop_front();
    for (; next < world.work.size() && world.work[next].cut <= day; ++next)
      waiting.push_back(world.work[next]);
    std::erase_if(waiting, [&](const World::Work& w) {
      if (w.mm > stock) return false;
      stock -= w.mm;
      policy.drawn(day, w.mm);
      return true;
    });
    out_this_week = out_this_week || !waiting.empty();
    if (day >= year) out.stock += stock / year;
    if (day % 7 == 6) {
      if (day >= year && out_this_week) ++out.weeks_out;
      out_this_week = false;
    }
    if (day % 7 != 0 && day % 7 != 2 && day % 7 != 4)
      continue; // orders go out on Mondays, Wednesdays, Fridays
    const double order = policy.order(day, stock, coming, waiting);
    if (order <= 0) continue;
    const int lead = world.leads[placed++ % world.leads.size()];
    const auto later =
        std::find_if(coming.begin(), coming.end(), [&](const Due& d) { return d.day > day + lead; });
    coming.insert(later, {day + lead, order});
    policy.ordered(day, lead);
    if (day >= year) ++out.orders;
  }
  return out;
}

double in_packs(double mm, const World& world) {
  const double pack = world.pack * stick_mm;
  return std::ceil(mm / pack - 1e-9) * pack;
}

constexpr double further = 3 * refret_mm;
constexpr int review = 2;

// What the question `supply` goes by, in the shop's defaults.
class ByOutlook {
public:
  ByOutlook(const World& world, double service) : world_(world), service_(service) {}
  void drawn(int day, double mm) {
    weeks_.resize(static_cast<std::size_t>(day / 7) + 1);
    weeks_[static_cast<std::size_t>(day / 7)] += mm;
  }
  void ordered(int day, int lead) { arrive_.push_back({day + lead, static_cast<double>(lead)}); }
  double order(int day, double stock, const std::deque<Due>& coming,
               const std::vector<World::Work>& waiting) const {
    Wanted w;
    const Day today{day};
    w.on_hand = units::from_mm(stock);
    for (const World::Work& x : waiting)
      w.needs.push_back({today, units::from_mm(x.mm)});
    for (const World::Work& x : world_.work)
      if (x.taken_in <= day && x.cut > day) w.needs.push_back({Day{x.cut}, units::from_mm(x.mm)});
    std::vector<double> took;
    for (const Due& a : arrive_)
      if (a.day <= day) took.push_back(a.mm);
    w.lead = lead(took, world_.said);
    for (const Due& d : coming) // when it really comes nobody knows: as long as orders take, or tomorrow
      w.arrives.push_back({std::max(Day{ordered_on(d) + static_cast<int>(std::ceil(w.lead.mean))}, today + 1),
                           units::from_mm(d.mm)});
    auto past = weeks_;
    past.resize(static_cast<std::size_t>(day / 7)); // whole weeks
    w.new_work = of_part(demand(past, {0.25 * refret_mm, 0.5 * refret_mm, 0}), 7);
    w.new_work_from = today + wait(day);
    w.review = review;
    w.service = service_;
    w.further = units::from_mm(further);
    w.terms.pack = units::from_mm(world_.pack * stick_mm);
    const auto o = outlook(w, today);
    return o.order_by == today ? o.order.mm() : 0;
  }

private:
  int ordered_on(const Due& coming) const {
    const auto at =
        std::find_if(arrive_.begin(), arrive_.end(), [&](const Due& a) { return a.day == coming.day; });
    return at == arrive_.end() ? coming.day : at->day - static_cast<int>(at->mm);
  }
  int wait(int day) const { // the median of the last 30 jobs that were cut
    std::vector<int> days;
    for (const World::Work& x : world_.work)
      if (x.cut <= day) days.push_back(x.cut - x.taken_in);
    if (days.size() < 5) return 1;
    if (days.size() > 30) days.erase(days.begin(), days.end() - 30);
    std::nth_element(days.begin(), days.begin() + std::ssize(days) / 2, days.end());
    return days[days.size() / 2];
  }

  const World& world_;
  double service_;
  std::vector<double> weeks_;
  std::vector<Due> arrive_; // mm: the days that it took
};

// A level that is set once, from the first year: `share` of what its mean lead takes and as often as wanted.
// An order brings stock and orders up to the level and `further`.
class ByLevel {
public:
  ByLevel(const World& world, double level) : world_(world), level_(level) {}
  void drawn(int, double) {}
  void ordered(int, int) {}
  double order(int, double stock, const std::deque<Due>& coming, const std::vector<World::Work>&) const {
    double there = stock;
    for (const Due& d : coming)
      there += d.mm;
    return there < level_ ? in_packs(level_ + further - there, world_) : 0;
  }

private:
  const World& world_;
  double level_;
};

// What the first year says: the mean of a week, its deviation, the lead as it was.
double level_of(const World& world, double k) {
  std::vector<double> weeks(weeks_a_year);
  for (const World::Work& w : world.work)
    if (w.cut < year) weeks[static_cast<std::size_t>(w.cut / 7)] += w.mm;
  double sum = 0, squares = 0, leads = 0;
  for (const double x : weeks)
    sum += x;
  const double mean = sum / weeks_a_year;
  for (const double x : weeks)
    squares += (x - mean) * (x - mean);
  for (int i = 0; i < 12; ++i)
    leads += world.leads[static_cast<std::size_t>(i)] / 12.0 / 7;
  return mean * leads + k * std::sqrt(squares / (weeks_a_year - 1) * leads);
}

struct All {
  int weeks_out = 0, orders = 0;
  double stock = 0;
  void add(const Fared& f, int shops) {
    weeks_out += f.weeks_out, orders += f.orders, stock += f.stock / shops;
  }
};

void print(const char* what, const All& all, int shops) {
  fmt::print("  {:<58} {:5.2f} % of weeks short, {:6.2f} m on hand, {:4.1f} orders a year\n", what,
             100.0 * all.weeks_out / (shops * weeks_a_year), all.stock / 1000, 1.0 * all.orders / shops);
}

} // namespace

void simulate(int shops) {
  std::vector<World> worlds;
  worlds.reserve(static_cast<std::size_t>(shops));
  for (int s = 0; s < shops; ++s)
    worlds.push_back(world_of(s));
  const double first = 4 * refret_mm;
  fmt::print("The second year of {} shops:\n", shops);
  All ours;
  for (const double service : {0.9, 0.95, 0.98, 0.99}) {
    All all;
    for (const World& w : worlds)
      all.add(years(w, first, ByOutlook(w, service)), shops);
    print(fmt::format("by the outlook at {:.0f} %", service * 100).c_str(), all, shops);
    if (service == 0.98) ours = all;
  }
  All level;
  double k = -1;
  do {
    k += 0.05, level = {};
    for (const World& w : worlds)
      level.add(years(w, first, ByLevel(w, level_of(w, k))), shops);
  } while (level.weeks_out > ours.weeks_out && k < 8);
  print(fmt::format("the least fixed level that does as well (k {:.2f})", k).c_str(), level, shops);
  const double share = 100.0 * ours.weeks_out / (shops * weeks_a_year);
  fmt::print("weeks short at 98 %: {:.2f} %, target at most 2 %: {}\n", share, share <= 2 ? "met" : "MISSED");
  fmt::print("stock at 98 % over that of the fixed level: {:.2f} x, target under 1 x: {}\n",
             ours.stock / level.stock, ours.stock < level.stock ? "met" : "MISSED");
}

} // namespace nutward::bench
