#include "support/receiver.hpp"

#include <fcntl.h>
#include <poll.h>
#include <signal.h>
#include <spawn.h>
#include <sys/wait.h>
#include <unistd.h>

#include <cstdlib>
#include <fstream>
#include <stdexcept>
#include <thread>

namespace nutward::test {

using namespace std::chrono;

TemporaryFolder::TemporaryFolder() {
  std::string name = (std::filesystem::temp_directory_path() / "nutward-test-XXXXXX").string();
  if (mkdtemp(name.data()) == nullptr) throw std::runtime_error("no temporary folder");
  path_ = name;
}

TemporaryFolder::~TemporaryFolder() {
  std::error_code ignored;
  std::filesystem::remove_all(path_, ignored);
}

std::filesystem::path TemporaryFolder::file(const std::string& name, const std::string& content) const {
  std::ofstream(path_ / name, std::ios::binary) << content;
  return path_ / name;
}

Process::Process(const std::vector<std::string>& arguments) {
  int in[2], out[2];
  if (pipe2(in, O_CLOEXEC) != 0 || pipe2(out, O_CLOEXEC) != 0) throw std::runtime_error("no pipes");
  posix_spawn_file_actions_t actions;
  posix_spawn_file_actions_init(&actions);
  posix_spawn_file_actions_adddup2(&actions, in[0], STDIN_FILENO);
  posix_spawn_file_actions_adddup2(&actions, out[1], STDOUT_FILENO);
  std::vector<char*> argv;
  for (const std::string& a : arguments)
    argv.push_back(const_cast<char*>(a.c_str()));
  argv.push_back(nullptr);
  const int error = posix_spawnp(&pid_, argv[0], &actions, nullptr, argv.data(), environ);
  posix_spawn_file_actions_destroy(&actions);
  close(in[0]);
  close(out[1]);
  in_ = in[1];
  out_ = out[0];
  if (error != 0) throw std::runtime_error("cannot run " + arguments[0]);
}

Process::~Process() {
  close_stdin();
  if (pid_ > 0) {
    kill(pid_, SIGTERM);
    bool gone = false;
    for (int i = 0; i < 200 && !gone; ++i) {
      std::this_thread::sleep_for(10ms);
      gone = waitpid(pid_, nullptr, WNOHANG) != 0;
    }
    if (!gone) {
      kill(pid_, SIGKILL);
      waitpid(pid_, nullptr, 0);
    }
  }
  close(out_);
}

void Process::close_stdin() {
  if (in_ >= 0) close(in_);
  in_ = -1;
}

void Process::write(const std::string& text) {
  std::size_t done = 0;
  while (done < text.size()) {
    const ssize_t n = ::write(in_, text.data() + done, text.size() - done);
    if (n <= 0) throw std::runtime_error("the process reads no more");
    done += static_cast<std::size_t>(n);
  }
  close_stdin();
}

std::string Process::line(milliseconds patience) {
  const auto until = steady_clock::now() + patience;
  while (true) {
    if (const std::size_t end = read_.find('\n'); end != std::string::npos) {
      std::string found = read_.substr(0, end);
      read_.erase(0, end + 1);
      return found;
    }
    const auto left = ceil<milliseconds>(until - steady_clock::now());
    pollfd fd{out_, POLLIN, 0};
    if (left.count() < 0 || poll(&fd, 1, static_cast<int>(left.count())) <= 0) return "";
    char buffer[4096];
    const ssize_t n = read(out_, buffer, sizeof buffer);
    if (n <= 0) return "";
    read_.append(buffer, static_cast<std::size_t>(n));
  }
}

int Process::terminate() {
  kill(pid_, SIGTERM);
  return wait();
}

int Process::wait() {
  int status = 0;
  waitpid(pid_, &status, 0);
  pid_ = -1;
  return WIFEXITED(status) ? WEXITSTATUS(status) : 128 + WTERMSIG(status);
}

namespace {

std::vector<std::string> command(const std::filesystem::path& secrets, const std::vector<std::string>& more) {
  std::vector<std::string> all{NUTWARD_PYTHON, NUTWARD_SOURCE "/tests/support/receiver.py", secrets.string()};
  all.insert(all.end(), more.begin(), more.end());
  return all;
}

} // namespace

Receiver::Receiver(const std::string& secrets, const std::vector<std::string>& more)
    : tls_(!more.empty()), process_(command(folder_.file("secrets", secrets), more)) {
  const std::string ready = process_.line(seconds(20));
  if (!ready.starts_with("listening ")) throw std::runtime_error("the receiver did not start");
  port_ = std::stoi(ready.substr(10));
}

std::string Receiver::url(const std::string& path) const {
  return (tls_ ? "https" : "http") + std::string("://127.0.0.1:") + std::to_string(port_) + path;
}

} // namespace nutward::test
