// bench-agenda FILE [--seconds S] [--json]: a job-shop problem by the agenda's solver.
//
// Prints the last end (the makespan), the lower bound, whether it is proved, seconds. Ends with 1 if the file
// cannot be read, with 2 for wrong usage. The clock is here; the solver counts steps and is stopped by a
// token.
#include "agenda/check.hpp"
#include "bench/file_options.hpp"
#include "bench/jobshop.hpp"
#include "bench/stop_after.hpp"

#include <filesystem>

#include <fmt/core.h>

namespace nutward::bench {

namespace {

constexpr const char* usage =
    "Usage: bench-agenda FILE [--seconds S] [--json]\n"
    "  FILE       a job-shop problem: \"jobs machines\", then for each job a line of\n"
    "             \"machine time\" pairs, machines counted from 0; # begins a comment\n"
    "  --seconds  0.01 to 3600; 10 if not given\n"
    "  --json     one JSON object\n";

void run(const FileOptions& options) {
  const JobShop shop = read_job_shop(options.file);
  const agenda::Problem problem = as_agenda(shop);
  const StopAfter deadline(options.seconds);
  const auto from = std::chrono::steady_clock::now();
  const agenda::Plan plan = agenda::plan(problem, {INT64_MAX / 2000, deadline.token()});
  const double seconds = std::chrono::duration<double>(std::chrono::steady_clock::now() - from).count();
  for (const std::string& wrong : agenda::check(problem, plan))
    throw std::runtime_error("the plan is wrong: " + wrong);
  const std::string name = std::filesystem::path(options.file).filename().string();
  if (options.json)
    fmt::print("{{\"problem\":\"{}\",\"jobs\":{},\"machines\":{},\"makespan\":{},\"bound\":{},\"proved\":{},"
               "\"seconds\":{:.4f}}}\n",
               name, shop.jobs.size(), shop.machines, plan.value.last_s, plan.bound.last_s, plan.proved,
               seconds);
  else
    fmt::print("{:<16} {:>5} jobs {:>4} machines  makespan {:>8}  bound {:>8}  {:<10} {:9.4f} s\n", name,
               shop.jobs.size(), shop.machines, plan.value.last_s, plan.bound.last_s,
               plan.proved ? "proved" : "not proved", seconds);
}

} // namespace

} // namespace nutward::bench

int main(int argc, char** argv) {
  using namespace nutward::bench;
  FileOptions options;
  if (!read_options(argc, argv, options)) {
    fmt::print(stderr, "{}", usage);
    return 2;
  }
  try {
    run(options);
    return 0;
  } catch (const std::exception& e) {
    fmt::print(stderr, "bench-agenda: {}\n", e.what());
  }
  return 1;
}
