#include "cli/picture.hpp"

#include <cerrno>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

namespace nutward::cli {
namespace {

bool put_all(int file, const std::string& text) {
  std::size_t at = 0;
  while (at < text.size()) {
    const ssize_t n = ::write(file, text.data() + at, text.size() - at);
    if (n < 0 && errno == EINTR) continue;
    if (n < 0) return false;
    at += static_cast<std::size_t>(n);
  }
  return true;
}

std::string last_error() {
  return std::strerror(errno);
}

std::optional<std::string> write_as_it_is(int file, const std::string& svg) {
  if (file < 0) return last_error();
  std::optional<std::string> why;
  if (!put_all(file, svg)) why = last_error();
  if (file != STDOUT_FILENO && ::close(file) != 0 && !why) why = last_error();
  return why;
}

// What open() would give a new file.
mode_t usual_mode() {
  const mode_t mask = ::umask(0);
  ::umask(mask);
  return 0666 & ~mask;
}

} // namespace

std::optional<std::string> write_picture(const std::string& path, const std::string& svg) {
  if (path == "-") return write_as_it_is(STDOUT_FILENO, svg);
  struct stat there {};
  const bool exists = ::stat(path.c_str(), &there) == 0;
  if (exists && !S_ISREG(there.st_mode))
    return write_as_it_is(::open(path.c_str(), O_WRONLY | O_CLOEXEC), svg);
  std::string target = path;
  if (exists) { // a link goes on pointing to it
    if (char* whole = ::realpath(path.c_str(), nullptr)) target = whole, std::free(whole);
    if (::access(path.c_str(), W_OK) != 0) return last_error();
  }
  std::string beside = target + ".XXXXXX";
  const int file = ::mkstemp(beside.data());
  if (file < 0) return last_error();
  const mode_t mode = exists ? (there.st_mode & 07777) : usual_mode();
  std::optional<std::string> why;
  if (!put_all(file, svg) || ::fchmod(file, mode) != 0) why = last_error();
  if (::close(file) != 0 && !why) why = last_error();
  if (!why && ::rename(beside.c_str(), target.c_str()) != 0) why = last_error();
  if (why) ::unlink(beside.c_str());
  return why;
}

} // namespace nutward::cli
