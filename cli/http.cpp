// The one file of the client that sees Beast. Blocking system calls under it: an event loop would be set up
// for a single exchange, and its blocking calls take no time-out.
#include "cli/http.hpp"

#include "cli/interrupt.hpp"

#include <algorithm>
#include <arpa/inet.h>
#include <array>
#include <boost/beast/core/buffers_range.hpp>
#include <boost/beast/core/flat_buffer.hpp>
#include <boost/beast/http.hpp>
#include <cerrno>
#include <cstring>
#include <netinet/in.h>
#include <sys/socket.h>
#include <sys/uio.h>
#include <sys/un.h>
#include <unistd.h>

namespace nutward::cli {
namespace {

namespace beast = boost::beast;
namespace http = boost::beast::http;
using boost::system::error_code;

constexpr timeval long_patience{30, 0}, short_patience{2, 0};
constexpr std::uint64_t answer_limit = 8 * 1024 * 1024;

error_code last_error() {
  return {errno, boost::system::system_category()};
}

struct Address {
  sockaddr_storage bytes{};
  socklen_t size = 0; // 0: the path is too long
};

Address address_of(const Where& where) {
  Address out;
  if (!where.tcp()) {
    auto& at = reinterpret_cast<sockaddr_un&>(out.bytes);
    at.sun_family = AF_UNIX;
    if (where.socket.size() < sizeof at.sun_path) out.size = sizeof at;
    std::memcpy(at.sun_path, where.socket.data(), std::min(where.socket.size(), sizeof at.sun_path - 1));
  } else if (where.host.find(':') != std::string::npos) {
    auto& at = reinterpret_cast<sockaddr_in6&>(out.bytes);
    at.sin6_family = AF_INET6;
    at.sin6_port = htons(where.port);
    ::inet_pton(AF_INET6, where.host.c_str(), &at.sin6_addr);
    out.size = sizeof at;
  } else {
    auto& at = reinterpret_cast<sockaddr_in&>(out.bytes);
    at.sin_family = AF_INET;
    at.sin_port = htons(where.port);
    ::inet_pton(AF_INET, where.host.c_str(), &at.sin_addr);
    out.size = sizeof at;
  }
  return out;
}

// What Beast asks of a stream, on a plain descriptor. A time-out of the socket comes out as EAGAIN.
class Stream {
public:
  Stream(const Where& where, const timeval& patience) {
    const auto [address, size] = address_of(where);
    if (size == 0) fail(ENAMETOOLONG);
    fd_ = ::socket(address.ss_family, SOCK_STREAM | SOCK_CLOEXEC, 0);
    if (fd_ < 0) fail(errno);
    ::setsockopt(fd_, SOL_SOCKET, SO_SNDTIMEO, &patience, sizeof patience);
    ::setsockopt(fd_, SOL_SOCKET, SO_RCVTIMEO, &patience, sizeof patience);
    if (::connect(fd_, reinterpret_cast<const sockaddr*>(&address), size) != 0) fail(errno);
  }
  ~Stream() {
    if (fd_ >= 0) ::close(fd_);
  }
  Stream(const Stream&) = delete;
  Stream& operator=(const Stream&) = delete;

  template <class Buffers>
  std::size_t read_some(const Buffers& buffers, error_code& error) {
    for (const boost::asio::mutable_buffer each : beast::buffers_range_ref(buffers)) {
      if (each.size() == 0) continue;
      const auto got = again([&] { return ::recv(fd_, each.data(), each.size(), 0); });
      error = got < 0 ? last_error() : got == 0 ? error_code(http::error::end_of_stream) : error_code();
      return got > 0 ? static_cast<std::size_t>(got) : 0;
    }
    error = {};
    return 0;
  }
  template <class Buffers>
  std::size_t write_some(const Buffers& buffers, error_code& error) {
    std::array<iovec, 16> parts{}; // a request is a dozen small pieces: one call, one wake-up of the daemon
    msghdr message{};
    message.msg_iov = parts.data();
    for (const boost::asio::const_buffer each : beast::buffers_range_ref(buffers)) {
      if (message.msg_iovlen == parts.size()) break;
      parts[message.msg_iovlen++] = {const_cast<void*>(each.data()), each.size()};
    }
    const auto sent = again([&] { return ::sendmsg(fd_, &message, MSG_NOSIGNAL); });
    error = sent < 0 ? last_error() : error_code();
    return sent > 0 ? static_cast<std::size_t>(sent) : 0;
  }
  // Beast's notion of a stream has the throwing forms too, and does not call them.
  template <class Buffers>
  std::size_t read_some(const Buffers& buffers) {
    error_code error;
    const auto size = read_some(buffers, error);
    return error ? throw boost::system::system_error(error) : size;
  }
  template <class Buffers>
  std::size_t write_some(const Buffers& buffers) {
    error_code error;
    const auto size = write_some(buffers, error);
    return error ? throw boost::system::system_error(error) : size;
  }

private:
  template <class Call>
  static ssize_t again(Call call) {
    ssize_t result = 0;
    do
      result = call();
    while (result < 0 && errno == EINTR && !interrupted());
    return result;
  }
  [[noreturn]] void fail(int error) {
    if (fd_ >= 0) ::close(std::exchange(fd_, -1));
    const auto why = error == EACCES || error == EPERM ? NoAnswer::forbidden
                     : error == EAGAIN                 ? NoAnswer::busy
                     : error == EINTR                  ? NoAnswer::given_up
                                                       : NoAnswer::nobody;
    throw NoAnswer(why, std::strerror(error));
  }
  int fd_ = -1;
};

std::string quoted(const std::string& key) {
  std::string out = "\"";
  for (const char c : key) {
    if (c == '"' || c == '\\') out += '\\';
    out += c;
  }
  return out + '"';
}

bool timed_out(const error_code& error) {
  return error == boost::system::errc::resource_unavailable_try_again;
}

using Request = http::request<http::string_body>;

constexpr const char* json_types = "application/json, application/problem+json";

Posted exchange(Stream& stream, Request& request, const Where& where) {
  request.set(http::field::host, where.tcp() ? where.address() : "localhost");
  if (where.tcp()) request.set(http::field::authorization, "Bearer " + where.token);
  request.keep_alive(false);
  request.prepare_payload();
  error_code error;
  http::write(stream, request, error);
  if (error == boost::system::errc::interrupted) throw NoAnswer(NoAnswer::given_up, "interrupted");
  if (timed_out(error)) throw NoAnswer(NoAnswer::late, "it takes no more");
  // Another failure to write is no end yet: a daemon that refuses early has answered before it hangs up.
  http::response_parser<http::string_body> parser;
  parser.body_limit(answer_limit);
  beast::flat_buffer buffer;
  http::read(stream, buffer, parser, error);
  if (error == boost::system::errc::interrupted) throw NoAnswer(NoAnswer::given_up, "interrupted");
  if (timed_out(error)) throw NoAnswer(NoAnswer::late, "it is silent for 30 seconds");
  const bool by_system = error && error.category() == boost::system::system_category();
  if (by_system || error == http::error::end_of_stream || error == http::error::partial_message)
    throw NoAnswer(NoAnswer::lost, "the connection ended");
  if (error) throw NoAnswer(NoAnswer::garbled, error.message());
  const std::string type(parser.get()[http::field::content_type]);
  return {static_cast<int>(parser.get().result_int()), std::move(parser.get().body()),
          type.substr(0, type.find(';'))};
}

} // namespace

Posted post(const Where& where, const std::string& target, const std::string& json, const std::string& key,
            bool picture) {
  Stream stream(where, long_patience);
  Request request(http::verb::post, target, 11, json);
  request.set(http::field::content_type, "application/json");
  request.set("Idempotency-Key", quoted(key));
  request.set(http::field::accept, picture ? "image/svg+xml, application/problem+json" : json_types);
  return exchange(stream, request, where);
}

Posted get(const Where& where, const std::string& target) {
  Stream stream(where, short_patience);
  Request request(http::verb::get, target, 11);
  request.set(http::field::accept, json_types);
  return exchange(stream, request, where);
}

bool listens(const Where& where) {
  try {
    const Stream stream(where, short_patience);
    return true;
  } catch (const NoAnswer&) {
    return false;
  }
}

} // namespace nutward::cli
