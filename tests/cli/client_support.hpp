// Runs the real client, as a shell or a terminal would.
#pragma once

#include <cerrno>
#include <csignal>
#include <cstdlib>
#include <fcntl.h>
#include <poll.h>
#include <pty.h>
#include <stdexcept>
#include <string>
#include <sys/wait.h>
#include <unistd.h>
#include <vector>

namespace client_support {

using Words = std::vector<std::string>;

struct Ran {
  int code = -1;
  std::string out, err;
};

struct How {
  std::string input;                   // standard input; not used on a terminal without it
  Words environment{"TERM=xterm"};     // the whole environment
  uid_t user = static_cast<uid_t>(-1); // run as this user (needs root)
  std::string out_file;                // where standard output goes, instead of being caught
};

inline std::vector<char*> pointers(Words& words) {
  std::vector<char*> out;
  for (auto& word : words)
    out.push_back(word.data());
  out.push_back(nullptr);
  return out;
}

// In the child: becomes the client. The program is opened first, since another user may not reach its folder.
[[noreturn]] inline void become_client(Words arguments, How how) {
  arguments.insert(arguments.begin(), "nutward");
  const int program = ::open(NUTWARD_CLIENT, O_RDONLY | O_CLOEXEC);
  if (how.user != static_cast<uid_t>(-1) && ::setuid(how.user) != 0) ::_exit(126);
  ::fexecve(program, pointers(arguments).data(), pointers(how.environment).data());
  ::_exit(127);
}

inline int exit_code(pid_t child) {
  int status = 0;
  ::waitpid(child, &status, 0);
  return WIFEXITED(status) ? WEXITSTATUS(status) : 128 + WTERMSIG(status);
}

// With pipes for all three streams.
inline Ran run(const Words& arguments, const How& how = {}) {
  int in[2], out[2], err[2];
  if (::pipe2(in, O_CLOEXEC) != 0 || ::pipe2(out, O_CLOEXEC) != 0 || ::pipe2(err, O_CLOEXEC) != 0)
    throw std::runtime_error("no pipe");
  const pid_t child = ::fork();
  if (child == 0) {
    const int file = how.out_file.empty() ? out[1] : ::open(how.out_file.c_str(), O_WRONLY);
    ::dup2(in[0], 0);
    ::dup2(file, 1);
    ::dup2(err[1], 2);
    become_client(arguments, how);
  }
  ::close(in[0]);
  ::close(out[1]);
  ::close(err[1]);
  const auto before = ::signal(SIGPIPE, SIG_IGN); // a client may end before it has read its input
  if (::write(in[1], how.input.data(), how.input.size()) < 0 && errno != EPIPE)
    throw std::runtime_error("no input taken");
  ::signal(SIGPIPE, before);
  ::close(in[1]);
  Ran ran;
  pollfd wait[2] = {{out[0], POLLIN, 0}, {err[0], POLLIN, 0}};
  for (int open = 2; open > 0;) {
    ::poll(wait, 2, -1);
    for (int i = 0; i < 2; ++i) {
      if (wait[i].fd < 0 || wait[i].revents == 0) continue;
      char room[4096];
      const auto got = ::read(wait[i].fd, room, sizeof room);
      if (got > 0) {
        (i == 0 ? ran.out : ran.err).append(room, static_cast<std::size_t>(got));
        continue;
      }
      ::close(wait[i].fd);
      wait[i].fd = -1;
      --open;
    }
  }
  ran.code = exit_code(child);
  return ran;
}

// A container or chroot without /dev/pts has no pseudo-terminals; what needs one cannot be tried there.
inline bool has_terminals() {
  const int terminal = ::posix_openpt(O_RDWR | O_NOCTTY);
  if (terminal < 0) return false;
  const bool usable = ::grantpt(terminal) == 0 && ::unlockpt(terminal) == 0;
  char name[64];
  const bool there = usable && ::ptsname_r(terminal, name, sizeof name) == 0 && ::access(name, R_OK) == 0;
  ::close(terminal);
  return there;
}

// On a terminal: all three streams are one pseudo-terminal, whose output is in `out` (lines end in CR LF
// there).
inline Ran run_on_terminal(const Words& arguments, const How& how = {}) {
  int terminal = -1;
  const pid_t child = ::forkpty(&terminal, nullptr, nullptr, nullptr);
  if (child == 0) become_client(arguments, how);
  if (::write(terminal, how.input.data(), how.input.size()) < 0) throw std::runtime_error("no input taken");
  Ran ran;
  char room[4096];
  for (ssize_t got = 0; (got = ::read(terminal, room, sizeof room)) > 0;)
    ran.out.append(room, static_cast<std::size_t>(got));
  ::close(terminal);
  ran.code = exit_code(child);
  return ran;
}

} // namespace client_support
