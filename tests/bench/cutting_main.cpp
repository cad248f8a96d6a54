// bench-cutting FILE [--seconds S] [--json]: bin-packing problems by the cut plan's solver.
//
// Prints for each problem: bins, the lower bound, whether it is proved, seconds. Ends with 1 if a file cannot
// be read, with 2 for wrong usage. The clock is here; the solver counts steps and is stopped by a token.
#include "bench/binpack.hpp"
#include "bench/file_options.hpp"
#include "bench/stop_after.hpp"

#include <fmt/core.h>

namespace nutward::bench {

namespace {

constexpr const char* usage =
    "Usage: bench-cutting FILE [--seconds S] [--json]\n"
    "  FILE       bin-packing problems, in the OR-Library's format or the plain one\n"
    "             (items, capacity, sizes)\n"
    "  --seconds  for each problem, 0.01 to 3600; 10 if not given\n"
    "  --json     one JSON object a line\n";

struct Outcome {
  cutting::Plan plan;
  double seconds = 0;
};

Outcome solve(const BinPacking& problem, double seconds) {
  const cutting::Problem cut = as_cut_plan(problem);
  const StopAfter deadline(seconds);
  const auto from = std::chrono::steady_clock::now();
  Outcome out;
  out.plan = cutting::plan(cut, {INT64_MAX / 2, deadline.token()});
  out.seconds = std::chrono::duration<double>(std::chrono::steady_clock::now() - from).count();
  return out;
}

void print(const BinPacking& problem, const Outcome& o, bool json) {
  const bool proved = o.plan.proved >= cutting::Level::sticks;
  const std::string best = problem.best_known ? std::to_string(*problem.best_known) : json ? "null" : "-";
  if (json)
    fmt::print("{{\"problem\":\"{}\",\"items\":{},\"bins\":{},\"bound\":{},\"proved\":{},\"seconds\":{:.4f},"
               "\"best_known\":{}}}\n",
               problem.name, problem.sizes.size(), o.plan.cost.sticks, o.plan.bound.sticks, proved, o.seconds,
               best);
  else
    fmt::print("{:<24} {:>6} items  {:>5} bins  bound {:>5}  {:<10} {:9.4f} s  file says {}\n", problem.name,
               problem.sizes.size(), o.plan.cost.sticks, o.plan.bound.sticks,
               proved ? "proved" : "not proved", o.seconds, best);
  std::fflush(stdout);
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
    for (const BinPacking& problem : read_bin_packing(options.file))
      print(problem, solve(problem, options.seconds), options.json);
    return 0;
  } catch (const std::exception& e) {
    fmt::print(stderr, "bench-cutting: {}\n", e.what());
  }
  return 1;
}
