// A shop with a large tin, written straight into the store's tables so that it is there in seconds. All of it
// is invented, and the same on every run.
#pragma once

#include "store/sqlite.hpp"

#include <cstdint>
#include <filesystem>
#include <memory>
#include <vector>

namespace nutward::bench {

struct Asked {
  std::int64_t job = 0;
  int slot = 0;
};

struct BigTin {
  std::unique_ptr<store::Sqlite> store;
  std::filesystem::path file;
  std::vector<shop::Job> jobs; // open, all slots without a fret

  // Slots of its jobs at random, the same for the same `count`.
  std::vector<Asked> random_slots(std::size_t count) const;
};

// Four wires, twelve jobs (three a wire), and `pieces` pieces over the four wires: three short frets of 28 to
// 75 mm to one stick end of 70 to 300 mm, measured to 0.01 mm, their ends raw, dressed or one of each, half
// of them of a known lot, one in fifty pulled. The first 48 are held, about four for each job. `home` must
// not exist.
BigTin make_big_tin(const std::filesystem::path& home, std::int64_t pieces);

} // namespace nutward::bench
