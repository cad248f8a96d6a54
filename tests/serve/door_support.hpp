// A real door on a real socket in a directory of its own, and a client that sends bytes exactly as told.
#pragma once

#include "serve/door.hpp"

#include <arpa/inet.h>
#include <chrono>
#include <cstdlib>
#include <filesystem>
#include <linux/sockios.h>
#include <memory>
#include <netinet/in.h>
#include <netinet/tcp.h>
#include <poll.h>
#include <stdexcept>
#include <string>
#include <sys/ioctl.h>
#include <sys/socket.h>
#include <sys/un.h>
#include <thread>
#include <unistd.h>
#include <utility>
#include <vector>

namespace door_support {

namespace serve = nutward::serve;

struct TempDir {
  std::filesystem::path path;
  TempDir() {
    std::string pattern =
        (std::filesystem::temp_directory_path() / "nutward-").string() + std::string(6, 'X');
    if (::mkdtemp(pattern.data()) == nullptr) throw std::runtime_error("no temporary directory");
    path = pattern;
  }
  ~TempDir() {
    std::error_code ignored;
    std::filesystem::remove_all(path, ignored);
  }
  TempDir(const TempDir&) = delete;
  TempDir& operator=(const TempDir&) = delete;
  std::string operator/(const char* name) const { return (path / name).string(); }
};

// Serves from its own thread until it goes out of scope.
class RunningDoor {
public:
  RunningDoor(serve::DoorOptions options, serve::Handle handle)
      : door_(std::move(options), std::move(handle)) {
    door_.open();
    thread_ = std::thread([this] {
      tid_ = ::gettid();
      door_.run();
    });
  }
  ~RunningDoor() { stop(); }
  RunningDoor(const RunningDoor&) = delete;
  RunningDoor& operator=(const RunningDoor&) = delete;
  void stop() {
    if (!thread_.joinable()) return;
    door_.stop();
    thread_.join();
  }
  serve::Door& operator*() { return door_; }
  pid_t thread_id() const { return tid_; } // known once the door has served something

private:
  serve::Door door_;
  pid_t tid_ = 0;
  std::thread thread_;
};

class RawClient {
public:
  explicit RawClient(const std::string& path) : fd_(::socket(AF_UNIX, SOCK_STREAM | SOCK_CLOEXEC, 0)) {
    sockaddr_un address{};
    address.sun_family = AF_UNIX;
    path.copy(address.sun_path, sizeof(address.sun_path) - 1);
    if (::connect(fd_, reinterpret_cast<const sockaddr*>(&address), sizeof address) != 0)
      throw std::runtime_error("cannot connect to " + path);
  }
  // at: "127.0.0.1:8765"
  static RawClient over_tcp(const std::string& at) {
    RawClient out;
    out.fd_ = ::socket(AF_INET, SOCK_STREAM | SOCK_CLOEXEC, 0);
    sockaddr_in address{};
    address.sin_family = AF_INET;
    const auto colon = at.find(':');
    ::inet_pton(AF_INET, at.substr(0, colon).c_str(), &address.sin_addr);
    address.sin_port = htons(static_cast<std::uint16_t>(std::stoi(at.substr(colon + 1))));
    if (::connect(out.fd_, reinterpret_cast<const sockaddr*>(&address), sizeof address) != 0)
      throw std::runtime_error("cannot connect to " + at);
    const int on = 1;
    ::setsockopt(out.fd_, IPPROTO_TCP, TCP_NODELAY, &on, sizeof on);
    return out;
  }
  RawClient(RawClient&& other) noexcept
      : fd_(std::exchange(other.fd_, -1)), closed_(other.closed_), held_(std::move(other.held_)) {}
  ~RawClient() { close(); }
  RawClient(const RawClient&) = delete;
  RawClient& operator=(const RawClient&) = delete;
  void close() {
    if (fd_ >= 0) ::close(fd_);
    fd_ = -1;
  }

  // What could not be sent because the other side hung up is left out.
  void send(std::string_view bytes) {
    while (!bytes.empty()) {
      const auto sent = ::send(fd_, bytes.data(), bytes.size(), MSG_NOSIGNAL);
      if (sent <= 0) return;
      bytes.remove_prefix(static_cast<std::size_t>(sent));
    }
  }
  // Until the door has taken what was sent, so that what follows arrives by itself.
  void wait_until_read() {
    for (int unread = 1, round = 0; unread > 0 && round < 100000; ++round) {
      if (::ioctl(fd_, SIOCOUTQ, &unread) != 0) throw std::runtime_error("cannot see what was read");
      if (unread > 0) std::this_thread::yield();
    }
  }
  void finish_sending() { ::shutdown(fd_, SHUT_WR); }

  // One response by its Content-Length; what follows it stays for the next call. Shorter at the end of the
  // stream or after `within`.
  std::string response(std::chrono::milliseconds within = std::chrono::seconds(5)) {
    while (true) {
      const auto head = held_.find("\r\n\r\n");
      if (head != std::string::npos) {
        const auto at = held_.find("Content-Length: ");
        const std::size_t length = at < head ? std::strtoul(held_.c_str() + at + 16, nullptr, 10) : 0;
        if (held_.size() >= head + 4 + length) {
          auto out = held_.substr(0, head + 4 + length);
          held_.erase(0, out.size());
          return out;
        }
      }
      if (!receive(within)) return std::exchange(held_, {});
    }
  }

  // Everything until the other side hangs up; empty optional parts are kept simple: "" if nothing came.
  std::string until_closed(std::chrono::milliseconds within = std::chrono::seconds(5)) {
    while (receive(within)) {
    }
    return std::exchange(held_, {});
  }
  bool closed_by_peer() const { return closed_; }

private:
  RawClient() = default;
  bool receive(std::chrono::milliseconds within) {
    pollfd wait{fd_, POLLIN, 0};
    if (::poll(&wait, 1, static_cast<int>(within.count())) <= 0) return false;
    char room[4096];
    const auto got = ::recv(fd_, room, sizeof room, 0);
    if (got <= 0) {
      closed_ = true;
      return false;
    }
    held_.append(room, static_cast<std::size_t>(got));
    return true;
  }
  int fd_ = -1;
  bool closed_ = false;
  std::string held_;
};

inline std::string status_of(const std::string& response) {
  return response.size() < 12 ? "none" : response.substr(9, 3);
}
inline std::string body_of(const std::string& response) {
  const auto head = response.find("\r\n\r\n");
  return head == std::string::npos ? "" : response.substr(head + 4);
}
inline std::size_t count_of(const std::string& text, const std::string& part) {
  std::size_t count = 0;
  for (auto at = text.find(part); at != std::string::npos; at = text.find(part, at + 1))
    ++count;
  return count;
}

// Says back what it was asked, so that a test sees how the door read the request.
inline void echo(serve::Request request, const serve::Reply& reply) {
  serve::Response out;
  out.content_type = "text/plain";
  out.body = request.method + " " + request.path + "?" + request.query + " [" + request.body + "]";
  reply(std::move(out));
}

// A door on a Unix socket alone, with everything else as it is by default.
inline serve::DoorOptions at(const std::string& path) {
  serve::DoorOptions out;
  out.socket = path;
  return out;
}

inline const std::string get = "GET /a?b=1 HTTP/1.1\r\nHost: bench\r\n\r\n";

} // namespace door_support
