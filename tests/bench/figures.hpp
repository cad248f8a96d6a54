// What the benchmarks share: timing, percentiles, and how a figure is printed.
#pragma once

#include <algorithm>
#include <chrono>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <stdexcept>
#include <string>
#include <string_view>
#include <vector>

#include <fmt/core.h>

namespace nutward::bench {

// Microseconds of many runs of one thing.
class Times {
public:
  template <class F>
  void take(F&& f) {
    const auto from = std::chrono::steady_clock::now();
    f();
    add(std::chrono::duration<double, std::micro>(std::chrono::steady_clock::now() - from).count());
  }
  void add(double us) { us_.push_back(us); }
  // q from 0 to 1; of at least one run.
  double at(double q) const {
    std::vector<double> sorted = us_;
    const auto n = static_cast<std::size_t>(q * static_cast<double>(sorted.size() - 1));
    std::nth_element(sorted.begin(), sorted.begin() + static_cast<std::ptrdiff_t>(n), sorted.end());
    return sorted[n];
  }
  double median() const { return at(0.5); }
  std::size_t count() const { return us_.size(); }
  const std::vector<double>& all() const { return us_; }

private:
  std::vector<double> us_;
};

inline void print_times(std::string_view what, const Times& t) {
  fmt::print("  {:<58} p50 {:9.1f} us   p99 {:9.1f} us   ({} runs)\n", what, t.median(), t.at(0.99),
             t.count());
}

// A ratio of medians against its baseline. It is only printed: time fails nobody.
inline void print_ratio(std::string_view what, const Times& measured, const Times& baseline, double target) {
  const double ratio = measured.median() / baseline.median();
  fmt::print("{}: {:.2f} x, target at most {} x: {}\n", what, ratio, target,
             ratio <= target ? "met" : "MISSED");
}

// What the process has used at most; 0 where the system does not say.
inline long most_memory_mb() {
  std::ifstream in("/proc/self/status");
  for (std::string line; std::getline(in, line);)
    if (line.starts_with("VmHWM:")) return std::atol(line.c_str() + 6) / 1024;
  return 0;
}

inline bool full_size(int argc, char** argv) {
  return argc > 1 && std::string_view(argv[argc - 1]) == "full";
}

// A benchmark's main: what it throws is said under its name.
inline int run_as(const char* name, int argc, char** argv, int (*run)(bool full)) {
  try {
    return run(full_size(argc, argv));
  } catch (const std::exception& e) {
    fmt::print(stderr, "{}: {}\n", name, e.what());
  }
  return 1;
}

class Folder {
public:
  Folder() {
    std::string name =
        (std::filesystem::temp_directory_path() / ("nutward-bench-" + std::string(6, 'X'))).string();
    if (::mkdtemp(name.data()) == nullptr) throw std::runtime_error("no folder for the benchmark");
    path_ = name;
  }
  ~Folder() {
    std::error_code ignored;
    std::filesystem::remove_all(path_, ignored);
  }
  Folder(const Folder&) = delete;
  Folder& operator=(const Folder&) = delete;
  const std::filesystem::path& path() const { return path_; }

private:
  std::filesystem::path path_;
};

} // namespace nutward::bench
