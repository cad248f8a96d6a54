// `nutward SENTENCE` as a whole process, against `curl --unix-socket` for the same answer from the same
// daemon.
//
//   bench_process NUTWARDD NUTWARD CURL [full]      full: 400 of each; otherwise 5
#include "bench/figures.hpp"

#include <csignal>
#include <fcntl.h>
#include <spawn.h>
#include <sys/socket.h>
#include <sys/un.h>
#include <sys/wait.h>
#include <thread>
#include <unistd.h>

namespace nutward::bench {

namespace {

using Words = std::vector<std::string>;

pid_t start(const Words& words) {
  std::vector<char*> argv;
  for (const std::string& w : words)
    argv.push_back(const_cast<char*>(w.c_str()));
  argv.push_back(nullptr);
  posix_spawn_file_actions_t quiet;
  posix_spawn_file_actions_init(&quiet);
  posix_spawn_file_actions_addopen(&quiet, 1, "/dev/null", O_WRONLY, 0);
  posix_spawn_file_actions_addopen(&quiet, 2, "/dev/null", O_WRONLY, 0);
  pid_t pid = 0;
  const int failed = ::posix_spawn(&pid, argv[0], &quiet, nullptr, argv.data(), environ);
  posix_spawn_file_actions_destroy(&quiet);
  if (failed != 0) throw std::runtime_error("cannot start " + words.front());
  return pid;
}

void whole(const Words& words) {
  int status = 0;
  ::waitpid(start(words), &status, 0);
  if (!WIFEXITED(status) || WEXITSTATUS(status) != 0) throw std::runtime_error(words.front() + " failed");
}

// The real daemon with the demo shop, until the end of the scope.
class Daemon {
public:
  Daemon(const std::string& program, const std::string& home)
      : pid_(start({program, "--home", home, "--demo"})) {
    const std::string socket = home + "/nutward.sock";
    for (int tries = 0; tries < 3000; ++tries) {
      if (connects(socket)) return;
      std::this_thread::sleep_for(std::chrono::milliseconds(10));
    }
    end();
    throw std::runtime_error("The daemon does not answer.");
  }
  ~Daemon() { end(); }
  Daemon(const Daemon&) = delete;
  Daemon& operator=(const Daemon&) = delete;

private:
  static bool connects(const std::string& path) {
    const int fd = ::socket(AF_UNIX, SOCK_STREAM | SOCK_CLOEXEC, 0);
    sockaddr_un address{};
    address.sun_family = AF_UNIX;
    path.copy(address.sun_path, sizeof(address.sun_path) - 1);
    const bool good = ::connect(fd, reinterpret_cast<const sockaddr*>(&address), sizeof address) == 0;
    ::close(fd);
    return good;
  }
  void end() {
    ::kill(pid_, SIGTERM);
    ::waitpid(pid_, nullptr, 0);
  }
  pid_t pid_;
};

int run(char** argv, bool full) {
  const Folder folder;
  const std::string home = (folder.path() / "home").string();
  const Daemon daemon(argv[1], home);
  const std::string sentence = "what fits slot 3 of job 1";
  const Words ours{argv[2], "--home", home, sentence};
  const Words theirs{argv[3],
                     "--silent",
                     "--fail",
                     "--unix-socket",
                     home + "/nutward.sock",
                     "--header",
                     "Content-Type: application/json",
                     "--data",
                     R"({"text":")" + sentence + R"("})",
                     "http://nutward/v1/say"};
  const Words nothing{"/bin/true"};
  Times client, curl, bare;
  for (int i = 0, runs = full ? 400 : 5; i < runs; ++i) {
    client.take([&] { whole(ours); });
    curl.take([&] { whole(theirs); });
    bare.take([&] { whole(nothing); });
  }
  fmt::print("From starting a process to its end\n");
  print_times("nutward SENTENCE", client);
  print_times("curl --unix-socket, the same sentence", curl);
  print_times("/bin/true, which does nothing", bare);
  print_ratio("nutward over curl, whole processes", client, curl, 0.3);
  return 0;
}

} // namespace

} // namespace nutward::bench

int main(int argc, char** argv) {
  try {
    if (argc < 4) throw std::runtime_error("bench_process NUTWARDD NUTWARD CURL [full]");
    return nutward::bench::run(argv, nutward::bench::full_size(argc, argv));
  } catch (const std::exception& e) {
    fmt::print(stderr, "bench_process: {}\n", e.what());
  }
  return 1;
}
