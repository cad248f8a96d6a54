// A real receiver of webhooks in a process of its own (tests/support/receiver.py or deploy/receiver.py).
// NUTWARD_PYTHON and NUTWARD_SOURCE are compile definitions of the test (tests/remind/tests.cmake shows how).
#pragma once

#include <sys/types.h>

#include <chrono>
#include <filesystem>
#include <string>
#include <vector>

namespace nutward::test {

// A folder that is gone with its owner.
class TemporaryFolder {
public:
  TemporaryFolder();
  TemporaryFolder(const TemporaryFolder&) = delete;
  TemporaryFolder& operator=(const TemporaryFolder&) = delete;
  ~TemporaryFolder();
  const std::filesystem::path& path() const { return path_; }
  std::filesystem::path file(const std::string& name, const std::string& content) const; // writes it

private:
  std::filesystem::path path_;
};

// A child process whose stdin and stdout are pipes. Its end: stdin closed, then SIGTERM, then SIGKILL after 2
// s.
class Process {
public:
  explicit Process(const std::vector<std::string>& arguments); // arguments[0]: the program, looked up in PATH
  Process(const Process&) = delete;
  Process& operator=(const Process&) = delete;
  ~Process();
  std::string
  line(std::chrono::milliseconds patience); // the next line, without its end; empty if none came in time
  void write(const std::string& text);      // to its stdin, which is closed after it
  int terminate();                          // SIGTERM; the exit status, or 128 + the signal that ended it
  int wait();                               // the same without SIGTERM

private:
  void close_stdin();
  pid_t pid_ = -1;
  int in_ = -1, out_ = -1;
  std::string read_; // came, not yet handed out
};

// A certificate that signs itself, for an IPv4 address, valid for a day; both as PEM.
struct Certificate {
  std::string certificate, key;
};
Certificate make_certificate(const std::string& address);

class Receiver {
public:
  // secrets: as whsec_…, one a line. more: certificate and key, for https.
  explicit Receiver(const std::string& secrets, const std::vector<std::string>& more = {});
  std::string url(const std::string& path) const; // "/good" -> http(s)://127.0.0.1:PORT/good
  int port() const { return port_; }
  std::string line(std::chrono::milliseconds patience = std::chrono::seconds(5)) {
    return process_.line(patience);
  }

private:
  TemporaryFolder folder_;
  bool tls_;
  Process process_;
  int port_ = 0;
};

} // namespace nutward::test
