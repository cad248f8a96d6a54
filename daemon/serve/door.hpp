// The door: HTTP/1.1 over a Unix socket and, where asked for, a loopback TCP address. It frames requests,
// bounds them, says who is asking, and writes answers; what a request means is the handler's business. One
// thread serves every connection, one coroutine each.
//
// Nothing is armed while nobody is connected, and while a connection waits only its own time-out is.
#pragma once

#include <chrono>
#include <cstddef>
#include <cstdint>
#include <functional>
#include <memory>
#include <stdexcept>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace nutward::serve {

struct Request {
  std::string method;          // as sent, "GET": methods are case-sensitive
  std::string path;            // from the first '/', still percent-encoded, without the query
  std::string query;           // after the first '?', still percent-encoded; empty if there is none
  std::string content_type;    // these three are empty where the header was not sent
  std::string idempotency_key; // the field's value as sent, quotes included
  std::string accept;          // several fields are joined by ", "
  std::string authorization;   // may hold a token: for no log
  std::string body;            // complete, chunks put together
  std::uint32_t uid = 0; // of the process that connected over the Unix socket, as the kernel says; 0 over TCP
  std::uint32_t gid = 0;
  std::string via; // "unix" or "tcp"
};

// Content-Length, Date, Connection, Cache-Control: no-store and X-Content-Type-Options: nosniff are added; a
// field of the same name in `headers` takes the place of the last two. A 401 ends the connection: who bears
// no good token shall not hold one. Names and values with control characters become a 500.
struct Response {
  int status = 200;
  std::string content_type; // empty: the field is not sent
  std::string body;         // not sent for HEAD, 204 and 304
  std::vector<std::pair<std::string, std::string>> headers;
};

// Takes the answer of one request. May be called from any thread, at once or later; the first call counts and
// further ones do nothing. When every copy is gone without a call, the client gets a 500. After the Door is
// gone it does nothing.
using Reply = std::function<void(Response)>;

// Called on the door's thread, so it must not block. What it throws becomes a 500 (unless it has replied).
using Handle = std::function<void(Request, Reply)>;

// RFC 9457: {"type":"about:blank","title","status","detail"} as application/problem+json. `detail` is a whole
// sentence.
Response problem(int status, std::string_view detail);
// The standard phrase for a status ("Not Found"), "Error" where it has none.
std::string_view title_of(int status);

struct DoorOptions {
  std::string socket;   // where to listen; the system takes at most 107 bytes
  unsigned mode = 0600; // 0600 or 0660
  std::string group;    // name or number of the group that may connect with 0660; empty: left as it is

  std::size_t head_limit = 8 * 1024;   // request line and fields, in bytes: 431 beyond
  std::size_t body_limit = 256 * 1024; // bytes after chunks are put together: 413 beyond
  std::size_t connections = 64;        // at once: 503 beyond
  // Of these, how many one user can never take from all others. Over the Unix socket one may have
  // `connections` less these, and with `http` less http_connections too: whose those are, nobody knows.
  std::size_t kept = 8;

  std::string http;                  // "127.0.0.1:8765": listens there too (loopback.hpp); empty: it does not
  std::size_t http_connections = 32; // of `connections`, at most these come over TCP

  std::chrono::milliseconds head_within{
      5000}; // from the first byte of a request (or from connecting) to its body
  std::chrono::milliseconds body_within{
      15000};                                // to the end of the body; also for the client to take the answer
  std::chrono::milliseconds idle_for{30000}; // between two requests on one connection
  std::chrono::milliseconds grace{2000};     // how long stop() waits for requests that are being answered

  bool stop_on_signals = false; // SIGINT and SIGTERM call stop()
  std::function<void(std::string)>
      note; // a line for the log: what a handler threw. Called on the door's thread
};

// what() says what was wrong and where, in a whole sentence; `would_do` says what would help.
struct DoorError : std::runtime_error {
  DoorError(const std::string& what, std::string remedy)
      : std::runtime_error(what), would_do(std::move(remedy)) {}
  std::string would_do;
};

class Door {
public:
  // Throws DoorError for a mode other than 0600 and 0660, for kept >= connections, with `http` for
  // kept + http_connections >= connections, and for an `http` that is no loopback address.
  Door(DoorOptions options, Handle handle);
  // Forgets connections still open and removes the socket. run() must have returned.
  ~Door();
  Door(const Door&) = delete;
  Door& operator=(const Door&) = delete;

  // Listens; from here on clients can connect and wait. Call once. A socket left by a dead daemon is removed:
  // the caller holds the home's lock, so nobody alive serves it. Throws DoorError (path too long, something
  // else in its place, directory missing or not writable, unknown group, port taken) and then leaves nothing
  // behind.
  void open();

  // Where it listens over TCP, once open: "127.0.0.1:8765", with the port that there is; empty where it does
  // not.
  const std::string& http() const;

  // Serves until stop(). Blocks; call once, after open().
  void run();

  // Takes no new connections, lets requests in progress be answered within `grace`, then makes run() return.
  // Any thread, also before run(). Not from a signal handler: use stop_on_signals.
  void stop();

  // Runs `work` on the door's thread, at once if already on it. Any thread. What it throws goes to `note`.
  // Does nothing once run() has returned.
  void post(std::function<void()> work);

private:
  struct Core;
  std::unique_ptr<Core> core_;
};

} // namespace nutward::serve
