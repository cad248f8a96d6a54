#include "bench/jobshop.hpp"

#include <charconv>
#include <fstream>
#include <sstream>
#include <stdexcept>

#include <fmt/core.h>

namespace nutward::bench {

namespace {

constexpr std::int64_t most_jobs = 2000, most_machines = 200, most_time = 1'000'000;

// One line that holds something, at a time.
class Lines {
public:
  Lines(std::string_view text, const std::string& name) : rest_(text), name_(name) {}

  bool next() {
    while (!rest_.empty()) {
      const std::size_t end = std::min(rest_.find('\n'), rest_.size());
      line_ = rest_.substr(0, end);
      rest_.remove_prefix(std::min(end + 1, rest_.size()));
      ++number_;
      const std::size_t first = line_.find_first_not_of(" \t\r");
      if (first != std::string_view::npos && line_[first] != '#') return true;
    }
    return false;
  }

  std::int64_t number(const char* what, std::int64_t from, std::int64_t to) {
    const std::size_t first = std::min(line_.find_first_not_of(" \t\r"), line_.size());
    line_.remove_prefix(first);
    const std::size_t length = std::min(line_.find_first_of(" \t\r"), line_.size());
    const std::string_view word = line_.substr(0, length);
    std::int64_t out = 0;
    const auto [end, error] = std::from_chars(word.data(), word.data() + word.size(), out);
    if (error != std::errc{} || end != word.data() + word.size() || out < from || out > to)
      fail(fmt::format("wanted {}, a whole number from {} to {}, found {}", what, from, to,
                       word.empty() ? "the end of the line" : std::string(word)));
    line_.remove_prefix(length);
    return out;
  }
  void ended() const {
    if (line_.find_first_not_of(" \t\r") != std::string_view::npos)
      fail(fmt::format("wanted the end of the line, found \"{}\"", std::string(line_)));
  }
  [[noreturn]] void fail(const std::string& what) const {
    throw std::runtime_error(fmt::format("{}, line {}: {}.", name_, number_, what));
  }

private:
  std::string_view rest_, line_;
  std::string name_;
  int number_ = 0;
};

} // namespace

JobShop parse_job_shop(std::string_view text, const std::string& name) {
  Lines lines(text, name);
  if (!lines.next()) lines.fail("wanted the numbers of jobs and machines, found the end of the file");
  JobShop out;
  const auto jobs = static_cast<std::size_t>(lines.number("the number of jobs", 1, most_jobs));
  out.machines = static_cast<std::size_t>(lines.number("the number of machines", 1, most_machines));
  lines.ended();
  for (std::size_t j = 0; j < jobs; ++j) {
    if (!lines.next()) lines.fail(fmt::format("wanted {} jobs, found the end of the file after {}", jobs, j));
    auto& steps = out.jobs.emplace_back();
    for (std::size_t m = 0; m < out.machines; ++m) {
      JobShop::Step step;
      step.machine =
          static_cast<std::size_t>(lines.number("a machine", 0, static_cast<std::int64_t>(out.machines) - 1));
      step.time = lines.number("a time", 0, most_time);
      steps.push_back(step);
    }
    lines.ended();
  }
  if (lines.next()) lines.fail(fmt::format("wanted the end of the file after {} jobs, found more", jobs));
  return out;
}

JobShop read_job_shop(const std::string& path) {
  std::ifstream in(path);
  std::ostringstream text;
  if (!in || !(text << in.rdbuf()))
    throw std::runtime_error(fmt::format("{}: cannot be read; give a file with a job-shop problem.", path));
  return parse_job_shop(text.str(), path);
}

agenda::Problem as_agenda(const JobShop& shop) {
  using agenda::Instant;
  agenda::Problem out;
  out.goal = agenda::Goal::last_end;
  out.until = Instant{1};
  for (const auto& steps : shop.jobs) {
    auto& job = out.jobs.emplace_back();
    for (const auto& step : steps) {
      auto& task = job.tasks.emplace_back();
      task.work = agenda::seconds{step.time};
      task.needs = {{step.machine}};
      out.until = out.until + task.work; // one after the other takes no longer
    }
  }
  out.units.resize(shop.machines);
  for (auto& unit : out.units)
    unit.open = {{out.from, out.until}};
  return out;
}

} // namespace nutward::bench
