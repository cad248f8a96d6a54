// The shop's folder: made where it is missing, and held by one daemon at a time.
#pragma once

#include <filesystem>

namespace nutward::store {

// Holds the lock from construction to destruction; the system lets go of it however the process ends.
class HomeLock {
public:
  // Makes the folder (0700) where it is missing, then takes the lock in it. Throws shop::Problem: state where
  // another process holds it, saying which; broken where the folder cannot be made or written.
  explicit HomeLock(const std::filesystem::path& home);
  ~HomeLock();
  HomeLock(const HomeLock&) = delete;
  HomeLock& operator=(const HomeLock&) = delete;

private:
  int fd_ = -1;
};

// Makes an empty file for its owner alone where there is none, and makes its name durable. Throws
// shop::Problem.
void make_file(const std::filesystem::path& file);
// fsync of a file or a folder. Throws shop::Problem.
void sync(const std::filesystem::path& path);

} // namespace nutward::store
