// One connection of the door. Internal to serve/: the only header with Asio types in it.
#pragma once

#include "serve/door.hpp"

#include <boost/asio/any_io_executor.hpp>
#include <boost/asio/awaitable.hpp>
#include <boost/asio/generic/stream_protocol.hpp>
#include <boost/asio/io_context.hpp>
#include <functional>
#include <memory>
#include <mutex>
#include <unordered_set>

namespace nutward::serve {

namespace asio = boost::asio;
// One socket type for Unix and TCP: every further one would compile the HTTP library again.
using Socket = asio::generic::stream_protocol::socket;

// The way onto the door's thread for those who may outlive the door: closed, it drops what it is given.
class Mailbox {
public:
  explicit Mailbox(asio::io_context& io) : io_(&io) {}
  void post(std::function<void()> work);
  void close();

private:
  std::mutex mutex_;
  asio::io_context* io_;
};

// What all sessions share. Everything but the mailbox belongs to the door's thread.
struct Hall {
  DoorOptions options;
  Handle handle;
  std::shared_ptr<Mailbox> mailbox;
  std::vector<std::string> hosts;   // that a request over TCP may be meant for
  bool closing = false;             // answer what is being answered, then hang up
  std::unordered_set<Socket*> idle; // waiting for a request to begin: these can be cut off
};

struct Peer {
  bool tcp = false;
  std::uint32_t uid = 0, gid = 0; // over the Unix socket
};

// Serves one connection until it ends. Throws only what the program cannot do without (memory).
asio::awaitable<void> serve_peer(Socket socket, Peer peer, Hall& hall);

// Answers 503 without reading, and hangs up.
asio::awaitable<void> turn_away(Socket socket, Hall& hall);

} // namespace nutward::serve
