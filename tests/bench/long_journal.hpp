// A shop that has worked for years: a journal of any length, each line of which a command has written. All of
// it is invented, and the same on every run.
#pragma once

#include <cstdint>
#include <filesystem>

namespace nutward::bench {

struct LongJournal {
  std::int64_t lines = 0;
  std::int64_t jobs = 0;    // done, all of them; their ids count up from 1
  std::int64_t seconds = 0; // that it took to write
};

// At least `lines` lines (a job's worth more), about a hundred a job: taken in, its slots filled one by one
// from the tin (added, held, let go, used, now and then taken back), dressed, seated, pressed, done. `home`
// must not exist.
LongJournal make_long_journal(const std::filesystem::path& home, std::int64_t lines);

} // namespace nutward::bench
