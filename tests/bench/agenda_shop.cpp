#include "bench/agenda_shop.hpp"

#include "agenda/windows.hpp"

#include <random>

namespace nutward::bench {

namespace {

using agenda::Instant;
using agenda::seconds;
using agenda::Task;

constexpr std::int64_t hour = 3600, day = 24 * hour;
constexpr std::int64_t monday = 20'000 * day + 4 * day; // 1970-01-01 was a Thursday; local time is UTC here

std::vector<agenda::Window> weekly(int days) {
  std::vector<agenda::Window> out;
  for (int d = 0; d < days; ++d) {
    if (d % 7 >= 5) continue;
    const std::int64_t midnight = monday + d * day;
    out.push_back({Instant{midnight + 9 * hour}, Instant{midnight + 13 * hour}});
    out.push_back({Instant{midnight + 14 * hour}, Instant{midnight + 18 * hour}});
  }
  return out;
}

Task task(int minutes, int frets, std::vector<std::vector<std::size_t>> needs) {
  Task t;
  t.work = seconds{(minutes * frets / 22 + 4) / 5 * 300};
  t.needs = std::move(needs);
  return t;
}

} // namespace

agenda::Problem queue(const Shop& shop) {
  const auto& [jobs, people, seed, due] = shop;
  std::mt19937 random(seed);
  const auto below = [&](int n) { return static_cast<int>(random() % static_cast<std::uint32_t>(n)); };
  const int days = 60 + jobs; // more than one job a day
  agenda::Problem p;
  p.from = Instant{monday + 9 * hour};
  p.until = Instant{monday + days * day};
  const std::vector<agenda::Window> open = weekly(days);
  for (std::size_t i = 0; i + 1 < open.size(); i += 2) {
    const std::int64_t midnight = open[i].from.s - 9 * hour;
    const std::int64_t next = i + 2 < open.size() ? open[i + 3].to.s : p.until.s;
    const bool friday = i + 2 < open.size() && open[i + 2].from.s - open[i].from.s > day;
    p.day_limits.push_back({Instant{midnight}, Instant{next}});
    if (friday) p.day_limits.push_back({Instant{midnight + day}, Instant{next}});
  }
  p.units.resize(7 + static_cast<std::size_t>(people)); // the press, five sanders, the jig, people
  for (auto& unit : p.units)
    unit.open = open;
  const std::vector<std::size_t> press{0}, sander{1, 2, 3, 4, 5}, jig{6};
  for (int j = 0; j < jobs; ++j) {
    const int frets = 12 + below(13);
    const std::vector<std::size_t> builder{7 + static_cast<std::size_t>(below(people))};
    agenda::Job job;
    job.tasks = {task(45, frets, {builder}), task(75, 22, {sander, builder}),
                 task(20, frets, {builder}), task(45, frets, {sander, builder}),
                 task(30, frets, {builder}), task(60, frets, {press, builder}),
                 task(15, frets, {builder}), task(25, 22, {jig, builder})};
    job.tasks[5].longest_pause = seconds{4 * hour};
    job.tasks[6].least_lag = seconds{16 * hour};
    job.tasks[6].most_lag = seconds{24 * hour};
    job.tasks[6].to_day_limit = true;
    if (j % 3 == 0) {
      for (std::size_t t = 0; t < 5; ++t)
        job.tasks[t].fixed = agenda::Fixed{p.from - seconds{day}, p.from - seconds{day}, {}};
    }
    job.weight = 1 + below(3);
    const int days_of_work = 2 + jobs / 9; // the press does about nine a day, five days a week
    const int span = 1 + static_cast<int>(due * days_of_work * 7 / 5);
    job.due = Instant{monday + (2 + below(span)) * day + 18 * hour};
    p.jobs.push_back(std::move(job));
  }
  return p;
}

} // namespace nutward::bench
