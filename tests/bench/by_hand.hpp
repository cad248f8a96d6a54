// The index probes of a fit as one would write them straight in SQLite's C API: the baseline of the fit
// benchmark.
#pragma once

#include "pieces/fit.hpp"

#include <cstdint>
#include <filesystem>
#include <optional>
#include <vector>

struct sqlite3;
struct sqlite3_stmt;

namespace nutward::bench {

// One page that pieces::best asked the tin for, and what it got.
struct Probe {
  pieces::Walk walk;
  std::optional<pieces::Mark> after;
  std::size_t at_most = 0;
};

// All probes of one question.
struct Probes {
  std::int64_t wire = 0, job = 0;
  int slot = 0;
  std::vector<Probe> pages;
};

// A connection as sqlite3_open gives it, in one read transaction, its statements prepared beforehand.
class ByHand {
public:
  explicit ByHand(const std::filesystem::path& file);
  ~ByHand();
  ByHand(const ByHand&) = delete;
  ByHand& operator=(const ByHand&) = delete;

  // Reads every page (each column of each row), and once the pieces held for the slot. Returns the sum of the
  // ids of the free pieces, and leaves the sum of all else where the compiler must not drop it.
  std::int64_t run(const Probes& probes);

private:
  std::int64_t read(sqlite3_stmt* q);
  sqlite3* db_ = nullptr;
  sqlite3_stmt *up_ = nullptr, *down_ = nullptr, *rest_ = nullptr, *held_ = nullptr;
  std::int64_t rows_ = 0;
  volatile std::int64_t seen_ = 0;
};

} // namespace nutward::bench
