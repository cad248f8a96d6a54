// Bin-packing problems from files, as cut plans: bins are sticks, a nip costs nothing, no rest is of use.
#pragma once

#include "cutting/plan.hpp"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace nutward::bench {

struct BinPacking {
  std::string name;
  std::int64_t capacity = 0;
  std::vector<std::int64_t> sizes;
  std::optional<std::int64_t> best_known;
};

// The OR-Library's format (the number of problems; then for each a name, "capacity items best-known", the
// sizes) or the plain one ("items capacity" and the sizes, of one problem, named after the file). Throws
// std::runtime_error that says what was wrong and on which line.
std::vector<BinPacking> read_bin_packing(const std::string& path);

// One unit is one millimetre.
cutting::Problem as_cut_plan(const BinPacking& problem);

} // namespace nutward::bench
