#include "store/home.hpp"

#include "shop/answer.hpp"

#include <array>
#include <cerrno>
#include <charconv>
#include <string>
#include <system_error>

#include <fcntl.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>

namespace nutward::store {

using shop::Fault;
using shop::Problem;
namespace fs = std::filesystem;

namespace {

Problem cannot(const fs::path& path, const char* what, int error) {
  return {error == ENOSPC ? Fault::no_room : Fault::broken,
          "The shop's home cannot be used: " + path.string() + " could not be " + what + " (" +
              std::generic_category().message(error) + ").",
          "/home", "Give a folder that this user may write in, on a disk with room."};
}

void make_folder(const fs::path& home) {
  std::error_code error;
  if (fs::is_directory(home, error)) return;
  const fs::path above = home.parent_path();
  error.clear(); // says that home is missing, which is no fault
  if (!above.empty()) fs::create_directories(above, error);
  if (error) throw cannot(above, "made", error.value());
  if (::mkdir(home.c_str(), 0700) != 0 && errno != EEXIST) throw cannot(home, "made", errno);
  if (!fs::is_directory(home, error)) throw cannot(home, "used as a folder", ENOTDIR);
}

std::string holder(int fd) {
  std::array<char, 32> text{};
  const ssize_t n = ::pread(fd, text.data(), text.size(), 0);
  long pid = 0;
  if (n <= 0 || std::from_chars(text.data(), text.data() + n, pid).ec != std::errc{} || pid <= 0)
    return "another process";
  return "process " + std::to_string(pid);
}

} // namespace

HomeLock::HomeLock(const fs::path& home) {
  make_folder(home);
  const fs::path file = home / "nutward.lock";
  fd_ = ::open(file.c_str(), O_RDWR | O_CREAT | O_CLOEXEC, 0600);
  if (fd_ < 0) throw cannot(file, "opened for writing", errno);
  if (::flock(fd_, LOCK_EX | LOCK_NB) != 0) {
    const int error = errno;
    const std::string who = holder(fd_);
    ::close(fd_);
    if (error != EWOULDBLOCK) throw cannot(file, "locked", error);
    throw Problem(Fault::state, "The shop in " + home.string() + " is already open: " + who + " has it.",
                  "/home", "Ask that one, stop it first, or give another home.");
  }
  // The number is for people only; the lock is what counts, so a disk too full for it does not matter here.
  const std::string pid = std::to_string(::getpid()) + "\n";
  if (::ftruncate(fd_, 0) != 0 || ::pwrite(fd_, pid.data(), pid.size(), 0) < 0) return;
}

HomeLock::~HomeLock() {
  if (fd_ >= 0) ::close(fd_);
}

void sync(const fs::path& path) {
  const int fd = ::open(path.c_str(), O_RDONLY | O_CLOEXEC);
  if (fd < 0) throw cannot(path, "opened", errno);
  const int error = ::fsync(fd) == 0 ? 0 : errno;
  ::close(fd);
  if (error != 0) throw cannot(path, "synced", error);
}

void make_file(const fs::path& file) {
  const int fd = ::open(file.c_str(), O_RDWR | O_CREAT | O_CLOEXEC, 0600);
  if (fd < 0) throw cannot(file, "opened for writing", errno);
  ::close(fd);
  sync(file.parent_path());
}

} // namespace nutward::store
