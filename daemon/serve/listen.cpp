#include "serve/listen.hpp"

#include <cerrno>
#include <charconv>
#include <cstring>
#include <grp.h>
#include <sys/socket.h>
#include <sys/stat.h>
#include <sys/un.h>
#include <system_error>
#include <unistd.h>
#include <vector>

namespace nutward::serve {
namespace {

struct Descriptor {
  int fd;
  explicit Descriptor(int value) : fd(value) {}
  ~Descriptor() {
    if (fd >= 0) ::close(fd);
  }
  Descriptor(const Descriptor&) = delete;
  Descriptor& operator=(const Descriptor&) = delete;
  int release() { return std::exchange(fd, -1); }
};

std::string folder_of(const std::string& path) {
  const auto slash = path.rfind('/');
  if (slash == std::string::npos) return ".";
  return slash == 0 ? "/" : path.substr(0, slash);
}

[[noreturn]] void refuse(const std::string& path, int error) {
  const auto why = std::system_category().message(error);
  const auto folder = folder_of(path);
  const std::string what = "The socket " + path + " cannot be made: " + why + ".";
  switch (error) {
  case ENOENT:
  case ENOTDIR:
    throw DoorError(what, "Make the directory " + folder + " first, or choose another home with --home.");
  case EACCES:
  case EPERM:
  case EROFS:
    throw DoorError(what, "The daemon must be able to write in " + folder +
                              ": change its owner or mode, or choose another home with --home.");
  case ENOSPC:
  case EDQUOT:
    throw DoorError(what, "Make room on the disk that holds " + folder + ".");
  default:
    throw DoorError(what, "Look at the directory " + folder + ", or choose another home with --home.");
  }
}

sockaddr_un address_of(const std::string& path) {
  sockaddr_un out{};
  out.sun_family = AF_UNIX;
  constexpr std::size_t most = sizeof(out.sun_path) - 1;
  if (path.empty() || path.find('\0') != std::string::npos)
    throw DoorError("The socket has no usable path.", "Give the home with --home.");
  if (path.size() > most)
    throw DoorError("The socket's path " + path + " has " + std::to_string(path.size()) +
                        " bytes, and the system takes at most " + std::to_string(most) + ".",
                    "Choose a home with a shorter path, or reach it through a short symbolic link.");
  std::memcpy(out.sun_path, path.data(), path.size());
  return out;
}

void remove_stale(const std::string& path) {
  struct stat found {};
  if (::lstat(path.c_str(), &found) != 0) {
    if (errno == ENOENT) return;
    refuse(path, errno);
  }
  if (!S_ISSOCK(found.st_mode))
    throw DoorError("The socket " + path +
                        " cannot be made: something that is not a socket is there already.",
                    "Move it away, or choose another home with --home.");
  if (::unlink(path.c_str()) != 0 && errno != ENOENT) refuse(path, errno);
}

gid_t group_number(const std::string& name) {
  gid_t number = 0;
  const auto [end, error] = std::from_chars(name.data(), name.data() + name.size(), number);
  if (error == std::errc{} && end == name.data() + name.size()) return number;
  group entry{};
  group* found = nullptr;
  std::vector<char> room(1024);
  int result = 0;
  while ((result = ::getgrnam_r(name.c_str(), &entry, room.data(), room.size(), &found)) == ERANGE &&
         room.size() < (std::size_t{1} << 20))
    room.resize(room.size() * 2);
  if (result != 0 || found == nullptr)
    throw DoorError("There is no group \"" + name + "\" on this system.",
                    "Create it (groupadd), or name the group that shares the bench.");
  return found->gr_gid;
}

void give_to_group(const DoorOptions& options) {
  if (options.group.empty()) return;
  if (::chown(options.socket.c_str(), static_cast<uid_t>(-1), group_number(options.group)) != 0)
    throw DoorError("The socket " + options.socket + " cannot be given to the group " + options.group + ": " +
                        std::system_category().message(errno) + ".",
                    "The daemon's user must be a member of that group.");
}

} // namespace

Listening listen_at(const DoorOptions& options) {
  const auto address = address_of(options.socket);
  remove_stale(options.socket);
  Descriptor made(::socket(AF_UNIX, SOCK_STREAM | SOCK_CLOEXEC, 0));
  if (made.fd < 0) refuse(options.socket, errno);
  // Linux makes the file with the mode of the socket itself, so it is never open to others, whatever the
  // umask.
  if (::fchmod(made.fd, 0600) != 0) refuse(options.socket, errno);
  if (::bind(made.fd, reinterpret_cast<const sockaddr*>(&address), sizeof address) != 0)
    refuse(options.socket, errno);
  struct stat file {};
  try {
    give_to_group(options);
    if (::chmod(options.socket.c_str(), static_cast<mode_t>(options.mode)) != 0)
      refuse(options.socket, errno);
    if (::listen(made.fd, 128) != 0 || ::lstat(options.socket.c_str(), &file) != 0)
      refuse(options.socket, errno);
  } catch (...) {
    ::unlink(options.socket.c_str());
    throw;
  }
  return {made.release(), file.st_dev, file.st_ino};
}

void unlink_socket(const std::string& path, const Listening& own) noexcept {
  struct stat found {};
  if (::lstat(path.c_str(), &found) == 0 && found.st_dev == own.device && found.st_ino == own.inode)
    ::unlink(path.c_str());
}

} // namespace nutward::serve
