// When a connection's time is up. Internal to serve/.
#pragma once

#include "serve/session.hpp"

#include <boost/asio/steady_timer.hpp>
#include <chrono>
#include <memory>
#include <optional>

namespace nutward::serve {

// The time-out of one connection. Beast's own stream closes the socket when time is up, and no 408 could be
// sent then; this one ends what is being read (or, once told, written) and leaves the rest open. A later end
// does not touch the timer that is running already, so a busy connection sets one every few seconds, not
// several for each request.
class Deadline : public std::enable_shared_from_this<Deadline> {
public:
  explicit Deadline(Socket& socket) : socket_(&socket), timer_(socket.get_executor()) {}

  void arm(std::chrono::milliseconds within, Socket::shutdown_type ends = Socket::shutdown_receive) {
    at_ = std::chrono::steady_clock::now() + within;
    ends_ = ends;
    if (!waiting_ || timer_.expiry() > *at_) wait();
  }
  void disarm() { at_.reset(); }
  void leave() { // the socket goes away; nothing is to wake for it
    socket_ = nullptr;
    timer_.cancel();
  }
  bool passed() const { return passed_; }

private:
  void wait() {
    waiting_ = true;
    timer_.expires_at(*at_); // gives up the wait before this one
    timer_.async_wait([weak = weak_from_this(), turn = ++turn_](boost::system::error_code cancelled) {
      const auto self = weak.lock();
      if (!cancelled && self && self->turn_ == turn) self->look();
    });
  }
  void look() {
    waiting_ = false;
    if (socket_ == nullptr || !at_) return;
    if (std::chrono::steady_clock::now() < *at_) return wait();
    passed_ = true;
    boost::system::error_code ignored;
    socket_->shutdown(ends_, ignored);
  }

  Socket* socket_;
  asio::steady_timer timer_;
  std::optional<std::chrono::steady_clock::time_point> at_; // nullopt: nothing is waited for
  Socket::shutdown_type ends_ = Socket::shutdown_receive;
  unsigned turn_ = 0;
  bool waiting_ = false;
  bool passed_ = false;
};

} // namespace nutward::serve
