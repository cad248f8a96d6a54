// The file that the owner's token is shown in.
#include "serve/people.hpp"
#include "serve/token.hpp"

#include <fmt/format.h>

#include <array>
#include <cerrno>
#include <cstring>
#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

namespace nutward::serve {

using shop::Fault;
using shop::Problem;

namespace {

class Descriptor {
public:
  explicit Descriptor(int fd) : fd_(fd) {}
  ~Descriptor() {
    if (fd_ >= 0) ::close(fd_);
  }
  Descriptor(const Descriptor&) = delete;
  Descriptor& operator=(const Descriptor&) = delete;
  int get() const { return fd_; }

private:
  int fd_;
};

[[noreturn]] void refuse(const std::filesystem::path& file, const std::string& why, const char* would_do) {
  throw Problem(Fault::state, fmt::format("The token's file {} {}.", file.string(), why), "", would_do);
}

[[noreturn]] void fail(const std::filesystem::path& file) {
  const int error = errno;
  refuse(file, fmt::format("cannot be used: {}", std::strerror(error)),
         "The daemon must be able to read and write it; it is made anew where it is missing.");
}

// What stands in the file; nullopt: there is none.
std::optional<std::string> held(const std::filesystem::path& file) {
  const Descriptor in(::open(file.c_str(), O_RDONLY | O_CLOEXEC | O_NOFOLLOW | O_NONBLOCK));
  if (in.get() < 0) {
    if (errno == ENOENT) return std::nullopt;
    fail(file);
  }
  struct stat found {};
  if (::fstat(in.get(), &found) != 0) fail(file);
  if (!S_ISREG(found.st_mode))
    refuse(file, "is no plain file", "Move it away; a new one is made at the next start.");
  if (found.st_uid != ::geteuid())
    refuse(file, "belongs to somebody else", "Move it away; a new one is made at the next start.");
  if ((found.st_mode & 077) != 0)
    refuse(file, fmt::format("may be read by others (its mode is {:04o})", found.st_mode & 07777U),
           "Remove it, so that a new token is made at the next start: the old one may be known.");
  std::array<char, 128> room{};
  const auto size = ::read(in.get(), room.data(), room.size());
  if (size < 0) fail(file);
  std::string out(room.data(), static_cast<std::size_t>(size));
  while (out.ends_with('\n'))
    out.pop_back();
  if (!is_token(out))
    refuse(file, "holds something that is no token", "Move it away; a new one is made at the next start.");
  return out;
}

// Gone with its scope unless it was put in its place: it holds the secret.
class Beside {
public:
  explicit Beside(const std::filesystem::path& file) : file_(file), name_(file.string() + ".new") {
    ::unlink(name_.c_str()); // of a start that was cut off
  }
  ~Beside() {
    if (!in_place_) ::unlink(name_.c_str());
  }
  Beside(const Beside&) = delete;
  Beside& operator=(const Beside&) = delete;
  const char* name() const { return name_.c_str(); }
  bool put_in_place() { return in_place_ = ::rename(name_.c_str(), file_.c_str()) == 0; }

private:
  const std::filesystem::path& file_;
  std::string name_;
  bool in_place_ = false;
};

// A write that was cut short says why only when it goes on.
bool write_all(int fd, std::string_view bytes) {
  while (!bytes.empty()) {
    const auto size = ::write(fd, bytes.data(), bytes.size());
    if (size < 0 && errno == EINTR) continue;
    if (size == 0) errno = EIO;
    if (size <= 0) return false;
    bytes.remove_prefix(static_cast<std::size_t>(size));
  }
  return true;
}

// Whole or not at all, and never readable to others.
void write(const std::filesystem::path& file, const std::string& secret) {
  Beside beside(file);
  {
    const Descriptor out(::open(beside.name(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC | O_NOFOLLOW, 0600));
    if (out.get() < 0 || ::fchmod(out.get(), 0600) != 0 || !write_all(out.get(), secret + "\n") ||
        ::fsync(out.get()) != 0)
      fail(file);
  }
  if (!beside.put_in_place()) fail(file);
  const Descriptor folder(::open(file.parent_path().c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC));
  if (folder.get() >= 0) ::fsync(folder.get());
}

} // namespace

shop::Caller People::owner_of(const std::filesystem::path& file) {
  try {
    return user(options_.owner);
  } catch (const Problem& retired) {
    if (retired.fault != Fault::not_allowed) throw;
    throw Problem(
        retired.fault, fmt::format("No token can be in {}: {}", file.string(), retired.text), "",
        fmt::format("Start without --http, and have somebody who leads the shop say who uid {} is now.",
                    options_.owner));
  }
}

bool People::keep_token_file(const std::filesystem::path& file) {
  const auto there = held(file);
  const shop::Caller owner = owner_of(file);
  const auto opens_for = there ? bearer("Bearer " + *there) : std::nullopt;
  if (opens_for && opens_for->actor == owner.actor && opens_for->role == owner.role) return false;
  shop::Actor actor;
  actor.id = owner.actor;
  actor.name = owner.name;
  const Granted made = fresh(std::string(token_file), shop::Role::lead, actor, owner.actor);
  // The file first: cut off here, it holds a token that opens nothing, and the next start makes another.
  write(file, made.secret);
  store_.write([&](shop::Tx& tx) {
    for (const shop::Token& t : tx.tokens().good()) {
      if (t.name == token_file) tx.backroom().withdraw(t.id, clock_.now(), owner.actor);
    }
    tx.backroom().grant(made.token);
  });
  return true;
}

} // namespace nutward::serve
