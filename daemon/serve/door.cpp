#include "serve/door.hpp"

#include "serve/listen.hpp"
#include "serve/loopback.hpp"
#include "serve/session.hpp"

#include <boost/asio/basic_socket_acceptor.hpp>
#include <boost/asio/co_spawn.hpp>
#include <boost/asio/detached.hpp>
#include <boost/asio/post.hpp>
#include <boost/asio/redirect_error.hpp>
#include <boost/asio/signal_set.hpp>
#include <boost/asio/steady_timer.hpp>
#include <boost/asio/use_awaitable.hpp>
#include <csignal>
#include <map>
#include <netinet/in.h>
#include <netinet/tcp.h>
#include <optional>
#include <sys/socket.h>

namespace nutward::serve {

using boost::system::error_code;

void Mailbox::post(std::function<void()> work) {
  {
    const std::lock_guard lock(mutex_);
    if (io_ == nullptr) return;
    if (!io_->get_executor().running_in_this_thread()) {
      asio::post(*io_, std::move(work));
      return;
    }
  }
  work(); // on the door's thread, where the door cannot go away meanwhile
}

void Mailbox::close() {
  const std::lock_guard lock(mutex_);
  io_ = nullptr;
}

namespace {

struct Entrance {
  Entrance(asio::io_context& io, bool over_tcp) : acceptor(io), rest(io), tcp(over_tcp) {}
  asio::basic_socket_acceptor<asio::generic::stream_protocol> acceptor;
  asio::steady_timer rest; // after a failed accept
  bool tcp;
};

} // namespace

struct Door::Core {
  Core(DoorOptions options, Handle handle)
      : mailbox(std::make_shared<Mailbox>(io)),
        hall{std::move(options), std::move(handle), mailbox, {}, false, {}} {}

  asio::io_context io{1};
  std::shared_ptr<Mailbox> mailbox;
  Hall hall;
  Entrance unix_socket{io, false}, tcp{io, true};
  asio::signal_set signals{io};
  asio::steady_timer pause{io}; // for the grace of stop()
  std::optional<Listening> own;
  std::map<std::uint32_t, std::size_t> by_uid;
  std::string http; // where it listens over TCP
  struct Count {
    std::size_t all = 0, tcp = 0;
  } serving, refusing;

  void note(const std::string& line) const {
    if (hall.options.note) hall.options.note(line);
  }

  asio::awaitable<void> accept_all(Entrance& entrance) {
    while (!hall.closing) {
      error_code error;
      auto accepted =
          co_await entrance.acceptor.async_accept(asio::redirect_error(asio::use_awaitable, error));
      if (hall.closing) break;
      if (!error) {
        entrance.tcp ? admit_over_tcp(std::move(accepted)) : admit(std::move(accepted));
        continue;
      }
      if (error == asio::error::connection_aborted) continue;
      // Out of descriptors or memory: trying again at once would only spin.
      note("A connection could not be accepted: " + error.message() + ".");
      entrance.rest.expires_after(std::chrono::milliseconds(200));
      co_await entrance.rest.async_wait(asio::redirect_error(asio::use_awaitable, error));
    }
  }

  // Over TCP nobody's uid is known: whoever it is may have that whole share too.
  std::size_t most_of_one_user() const {
    const auto& options = hall.options;
    return options.connections - options.kept - (options.http.empty() ? 0 : options.http_connections);
  }

  void admit(Socket socket) {
    ucred who{};
    socklen_t size = sizeof who;
    if (::getsockopt(socket.native_handle(), SOL_SOCKET, SO_PEERCRED, &who, &size) != 0) return;
    const auto& options = hall.options;
    auto& of_user = by_uid[who.uid];
    if (serving.all >= options.connections || of_user >= most_of_one_user()) {
      if (of_user == 0) by_uid.erase(who.uid);
      refuse(std::move(socket), false);
      return;
    }
    ++serving.all;
    ++of_user;
    start(serve_peer(std::move(socket), Peer{false, who.uid, who.gid}, hall), [this, uid = who.uid] {
      --serving.all;
      if (--by_uid[uid] == 0) by_uid.erase(uid);
    });
  }

  void admit_over_tcp(Socket socket) {
    const int on = 1; // an answer is written at once, and must not wait for an acknowledgement
    ::setsockopt(socket.native_handle(), IPPROTO_TCP, TCP_NODELAY, &on, sizeof on);
    if (serving.all >= hall.options.connections || serving.tcp >= hall.options.http_connections) {
      refuse(std::move(socket), true);
      return;
    }
    ++serving.all;
    ++serving.tcp;
    start(serve_peer(std::move(socket), Peer{true, 0, 0}, hall), [this] {
      --serving.all;
      --serving.tcp;
    });
  }

  // Beyond the limits not even with a refusal: descriptors are bounded too.
  void refuse(Socket socket, bool over_tcp) {
    const auto& options = hall.options;
    if (refusing.all >= options.connections || (over_tcp && refusing.tcp >= options.http_connections)) return;
    ++refusing.all;
    if (over_tcp) ++refusing.tcp;
    start(turn_away(std::move(socket), hall), [this, over_tcp] {
      --refusing.all;
      if (over_tcp) --refusing.tcp;
    });
  }

  template <class Done>
  void start(asio::awaitable<void> session, Done done) {
    asio::co_spawn(io, std::move(session), [this, done](const std::exception_ptr& failed) {
      done();
      if (failed) note_exception(failed, "A connection was given up: ");
      if (hall.closing && serving.all == 0 && refusing.all == 0) pause.cancel();
    });
  }

  void note_exception(const std::exception_ptr& failed, const std::string& about) const {
    try {
      std::rethrow_exception(failed);
    } catch (const std::exception& caught) {
      note(about + caught.what());
    } catch (...) {
      note(about + "something that is no exception was thrown.");
    }
  }

  void close_up() {
    if (hall.closing) return;
    hall.closing = true;
    error_code ignored;
    for (auto* entrance : {&unix_socket, &tcp}) {
      entrance->acceptor.close(ignored);
      entrance->rest.cancel();
    }
    signals.cancel(ignored);
    for (auto* socket : hall.idle)
      socket->cancel(ignored);
    pause.cancel();
    if (serving.all == 0 && refusing.all == 0) return; // nothing is left to do, so run() returns by itself
    pause.expires_after(hall.options.grace);
    pause.async_wait([this](error_code cancelled) {
      if (!cancelled) io.stop();
    });
  }
};

Door::Door(DoorOptions options, Handle handle) {
  if (options.mode != 0600 && options.mode != 0660)
    throw DoorError("The socket's mode is neither 0600 nor 0660.",
                    "Use 0600 for one user, 0660 for a group.");
  if (options.kept >= options.connections)
    throw DoorError("All connections are kept free, so nobody could connect.", "Keep fewer than there are.");
  if (!options.http.empty() && options.http_connections >= options.connections - options.kept)
    throw DoorError("All connections that are not kept free may be taken over TCP, and the Unix socket would "
                    "have none.",
                    "Allow fewer of them.");
  if (!options.http.empty()) read_loopback(options.http);
  core_ = std::make_unique<Core>(std::move(options), std::move(handle));
}

Door::~Door() {
  core_->mailbox->close();
  if (core_->own) unlink_socket(core_->hall.options.socket, *core_->own);
}

void Door::open() {
  auto& hall = core_->hall;
  if (!hall.options.http
           .empty()) { // first: another program may have the port, and then there is no socket yet
    Loopback at = read_loopback(hall.options.http);
    const int made = listen_at(at);
    core_->tcp.acceptor.assign({at.six ? AF_INET6 : AF_INET, 0}, made);
    core_->http = written(at);
    hall.hosts = hosts_of(at);
  }
  core_->own = listen_at(hall.options);
  core_->unix_socket.acceptor.assign({AF_UNIX, 0}, core_->own->descriptor);
  if (hall.options.stop_on_signals) {
    core_->signals.add(SIGINT);
    core_->signals.add(SIGTERM);
    core_->signals.async_wait([core = core_.get()](error_code cancelled, int) {
      if (!cancelled) core->close_up();
    });
  }
  asio::co_spawn(core_->io, core_->accept_all(core_->unix_socket), asio::detached);
  if (!core_->http.empty()) asio::co_spawn(core_->io, core_->accept_all(core_->tcp), asio::detached);
}

const std::string& Door::http() const {
  return core_->http;
}

void Door::run() {
  core_->io.run();
  core_->mailbox->close();
}

void Door::stop() {
  core_->mailbox->post([core = core_.get()] { core->close_up(); });
}

void Door::post(std::function<void()> work) {
  core_->mailbox->post([core = core_.get(), work = std::move(work)] {
    try {
      work();
    } catch (...) {
      core->note_exception(std::current_exception(), "Posted work failed: ");
    }
  });
}

} // namespace nutward::serve
