// A hundred small shops with hours and lags, against a general solver that knows no schedules: a mixed
// integer program with a variable for each task, choice of units and start, solved by GLPK's glpsol.
#include "agenda/cases.hpp"

#include "support/catch.hpp"

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <map>
#include <sstream>
#include <unistd.h>

using namespace nutward::agenda;

namespace {

constexpr int horizon = 40;
// Levels of the value as one number: finish times stay below the first, the worst job's lateness below the
// second.
constexpr std::int64_t worst_counts = 400, late_counts = 400 * 130;

struct Start {
  std::string name; // of its variable
  int start = 0, end = 0;
  std::vector<std::size_t> units;
};

bool open(const Unit& unit, int hour) {
  for (const Window& w : unit.open)
    if (w.from.s <= hour && hour < w.to.s) return true;
  return false;
}

// Hour by hour, as plan.hpp says it.
int end_of(const Problem& p, const Task& task, const std::vector<std::size_t>& units, int start) {
  auto work = static_cast<int>(task.work.count());
  if (work == 0 || units.empty()) return start + work;
  int pause = 0;
  for (int h = start; h < horizon; ++h) {
    bool all = true;
    for (const std::size_t u : units)
      all = all && open(p.units[u], h);
    if (all) {
      pause = 0;
      if (--work == 0) return h + 1;
    } else if (h == start || ++pause > task.longest_pause.count()) {
      return -1;
    }
  }
  return -1;
}

std::int64_t limit(const Problem& p, const Task& task, int end) {
  const std::int64_t t = end + task.most_lag->count();
  std::int64_t out = t;
  if (task.to_day_limit)
    for (const DayLimit& row : p.day_limits)
      if (row.from.s <= t) out = std::max(t, row.limit.s);
  return out;
}

class Program {
public:
  explicit Program(const Problem& p) : p_(p) {
    for (std::size_t j = 0; j < p.jobs.size(); ++j)
      for (std::size_t t = 0; t < p.jobs[j].tasks.size(); ++t)
        starts_[{j, t}] = starts_of(j, t);
    for (const auto& [key, starts] : starts_)
      task(key.first, key.second, starts);
    units();
    for (std::size_t j = 0; j < p.jobs.size(); ++j)
      job(j);
  }

  std::string text() const {
    return "Minimize\n obj: " + objective_.str() + "\nSubject To\n" + rows_.str() + "Binaries\n" +
           binaries_.str() + "End\n";
  }

private:
  std::vector<Start> starts_of(std::size_t j, std::size_t t) {
    const Job& job = p_.jobs[j];
    const Task& task = job.tasks[t];
    std::vector<std::vector<std::size_t>> choices;
    if (task.needs.empty()) choices.emplace_back();
    if (task.needs.size() == 1)
      for (const std::size_t u : task.needs[0])
        choices.push_back({u});
    if (task.needs.size() == 2)
      for (const std::size_t u : task.needs[0])
        for (const std::size_t v : task.needs[1])
          choices.push_back({u, v});
    const std::int64_t first =
        std::max({std::int64_t{0}, job.release.s, task.not_before ? task.not_before->s : 0});
    std::vector<Start> out;
    for (std::size_t k = 0; k < choices.size(); ++k)
      for (int s = static_cast<int>(first); s <= horizon; ++s)
        if (const int end = end_of(p_, task, choices[k], s); end >= 0 && end <= horizon)
          out.push_back({"x_" + std::to_string(j) + "_" + std::to_string(t) + "_" + std::to_string(k) + "_" +
                             std::to_string(s),
                         s, end, choices[k]});
    return out;
  }

  // Sum of a number for each start of a task, with a sign.
  template <class F>
  std::string sum(std::size_t j, std::size_t t, int sign, F&& number) const {
    std::string out;
    for (const Start& s : starts_.at({j, t}))
      if (const std::int64_t n = number(s) * sign; n != 0)
        out += (n < 0 ? " - " : " + ") + std::to_string(std::abs(n)) + " " + s.name + "\n";
    return out;
  }
  static std::int64_t start(const Start& s) { return s.start; }
  static std::int64_t end(const Start& s) { return s.end; }
  void row(const std::string& left, const char* relation, std::int64_t right) {
    rows_ << (left.empty() ? " 0 one" : left) << relation << right << "\n";
  }

  void task(std::size_t j, std::size_t t, const std::vector<Start>& starts) {
    const Task& task = p_.jobs[j].tasks[t];
    for (const Start& s : starts)
      binaries_ << " " << s.name << "\n";
    row(sum(j, t, 1, [](const Start&) { return std::int64_t{1}; }), " = ", 1);
    if (t == 0) {
      for (const std::size_t other : p_.jobs[j].after)
        row(sum(j, t, 1, start) + sum(other, p_.jobs[other].tasks.size() - 1, -1, end), " >= ", 0);
      return;
    }
    row(sum(j, t, 1, start) + sum(j, t - 1, -1, end), " >= ", 0);
    const std::size_t from = task.lags_from.value_or(t - 1);
    row(sum(j, t, 1, start) + sum(j, from, -1, end), " >= ", task.least_lag.count());
    if (task.most_lag)
      row(sum(j, t, 1, start) + sum(j, from, -1, [&](const Start& s) { return limit(p_, task, s.end); }),
          " <= ", 0);
  }

  void units() {
    for (std::size_t u = 0; u < p_.units.size(); ++u)
      for (int h = 0; h < horizon; ++h) {
        std::string left;
        for (const auto& [key, starts] : starts_)
          for (const Start& s : starts)
            if (s.start <= h && h < s.end && std::find(s.units.begin(), s.units.end(), u) != s.units.end())
              left += " + " + s.name + "\n";
        if (!left.empty()) row(left, " <= ", 1);
      }
  }

  void job(std::size_t j) {
    const Job& job = p_.jobs[j];
    const std::size_t last = job.tasks.size() - 1;
    objective_ << sum(j, last, 1, [&](const Start& s) { return job.weight * s.end; });
    if (!job.due) return;
    const std::string late = "late_" + std::to_string(j);
    row(" " + late + "\n" + sum(j, last, -1, end), " >= ", -job.due->s);
    row(" worst - " + std::to_string(job.weight) + " " + late, " >= ", 0);
    objective_ << " + " << late_counts * job.weight << " " << late << "\n";
    if (!worst_told_) objective_ << " + " << worst_counts << " worst\n";
    worst_told_ = true;
  }

  const Problem& p_;
  std::map<std::pair<std::size_t, std::size_t>, std::vector<Start>> starts_;
  std::ostringstream objective_, rows_, binaries_;
  bool worst_told_ = false;
};

// The best value as one number; nullopt if glpsol proves that there is no plan.
std::optional<std::int64_t> by_glpsol(const Problem& p, const std::filesystem::path& folder) {
  std::ofstream(folder / "shop.lp") << Program(p).text();
  const std::string run = "glpsol --lp " + (folder / "shop.lp").string() + " -w " +
                          (folder / "shop.sol").string() + " >/dev/null 2>&1";
  REQUIRE(std::system(run.c_str()) == 0);
  std::ifstream in(folder / "shop.sol");
  for (std::string line; std::getline(in, line);) {
    std::istringstream words(line);
    std::string kind, what, status;
    std::int64_t rows = 0, columns = 0;
    double value = 0;
    words >> kind >> what >> rows >> columns >> status >> value;
    if (kind == "s" && status == "o") return std::llround(value);
  }
  return std::nullopt;
}

} // namespace

TEST_CASE("a hundred small shops with hours and lags are planned as well as by a general solver") {
  if (std::system("command -v glpsol >/dev/null 2>&1") != 0) {
    WARN("SKIPPED: there is no glpsol here (Debian: glpk-utils)");
    return;
  }
  const auto folder =
      std::filesystem::temp_directory_path() / ("nutward-agenda-" + std::to_string(::getpid()));
  std::filesystem::create_directory(folder);
  std::mt19937 random(41);
  int compared = 0;
  while (compared < 100) {
    const Problem p =
        cases::some_shop(random, {.jobs = 3, .tasks = 3, .horizon_h = horizon, .doubles = 3, .fixed = false});
    const Plan found = plan(p, {1'000'000});
    const bool left_aside = std::any_of(found.faults.begin(), found.faults.end(),
                                        [](const Fault& f) { return f.why == Why::most_lag_impossible; });
    if (left_aside || found.value.unplaced > 0) continue;
    ++compared;
    CAPTURE(compared);
    CHECK(found.proved);
    CHECK(found.value.late_s * late_counts + found.value.worst_s * worst_counts + found.value.finish_s ==
          by_glpsol(p, folder));
  }
  std::filesystem::remove_all(folder);
}
