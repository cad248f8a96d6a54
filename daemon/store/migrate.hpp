// Numbered migrations: schema/sqlite/NNNN-name.sql, built into the program, each run in one transaction that
// also sets the version (PRAGMA user_version).
#pragma once

#include "store/connection.hpp"

#include <filesystem>
#include <span>
#include <string_view>

namespace nutward::store {

struct Migration {
  int version = 0;
  std::string_view sql;
};

// All that this program knows, from 1 up without a gap.
std::span<const Migration> migrations();

// "NTWD": tells a shop's database from any other SQLite file.
inline constexpr int application_id = 0x4e545744;

// The version of the database in `file`: 0 where there is no file, or an empty one, or one whose first
// migration never finished. Changes not one byte of the file or of its log. The lock on the home must be
// held. Throws shop::Problem{state} where it is no shop's database, or is newer than `newest`.
int version_of(const std::filesystem::path& file, int newest);

// Brings the database from its version up to the last of `steps`. One that is not new is first copied beside
// the file, to FILE.before-VERSION. Throws shop::Problem; the database is then at the last migration that
// finished.
void migrate(Connection& writer, const std::filesystem::path& file, std::span<const Migration> steps);

} // namespace nutward::store
