#include "serve/door.hpp"

#include "serve/listen.hpp"
#include "serve/session.hpp"

#include <boost/asio/co_spawn.hpp>
#include <boost/asio/detached.hpp>
#include <boost/asio/local/stream_protocol.hpp>
#include <boost/asio/post.hpp>
#include <boost/asio/redirect_error.hpp>
#include <boost/asio/signal_set.hpp>
#include <boost/asio/steady_timer.hpp>
#include <boost/asio/use_awaitable.hpp>
#include <csignal>
#include <map>
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

struct Door::Core {
  Core(DoorOptions options, Handle handle)
      : mailbox(std::make_shared<Mailbox>(io)), hall{std::move(options),
                                                     std::move(handle),
                                                     mailbox,
                                                     false,
                                                     {}} {}

  asio::io_context io{1};
  std::shared_ptr<Mailbox> mailbox;
  Hall hall;
  asio::local::stream_protocol::acceptor acceptor{io};
  asio::signal_set signals{io};
  asio::steady_timer pause{io}; // after a failed accept, and for the grace of stop()
  std::optional<Listening> own;
  std::map<std::uint32_t, std::size_t> by_uid;
  std::size_t serving = 0, turning_away = 0;

  void note(const std::string& line) const {
    if (hall.options.note) hall.options.note(line);
  }

  asio::awaitable<void> accept_all() {
    while (!hall.closing) {
      error_code error;
      auto accepted = co_await acceptor.async_accept(asio::redirect_error(asio::use_awaitable, error));
      if (hall.closing) break;
      if (!error) {
        admit(std::move(accepted));
        continue;
      }
      if (error == asio::error::connection_aborted) continue;
      // Out of descriptors or memory: trying again at once would only spin.
      note("A connection could not be accepted: " + error.message() + ".");
      pause.expires_after(std::chrono::milliseconds(200));
      co_await pause.async_wait(asio::redirect_error(asio::use_awaitable, error));
    }
  }

  void admit(asio::local::stream_protocol::socket accepted) {
    ucred who{};
    socklen_t size = sizeof who;
    if (::getsockopt(accepted.native_handle(), SOL_SOCKET, SO_PEERCRED, &who, &size) != 0) return;
    const auto& options = hall.options;
    Socket socket(std::move(accepted));
    auto& of_user = by_uid[who.uid];
    if (serving >= options.connections || of_user >= options.connections - options.kept) {
      if (of_user == 0) by_uid.erase(who.uid);
      if (turning_away >= options.connections) return; // not even a refusal: descriptors are bounded too
      ++turning_away;
      start(turn_away(std::move(socket), hall), [this] { --turning_away; });
      return;
    }
    ++serving;
    ++of_user;
    start(serve_peer(std::move(socket), Peer{who.uid, who.gid}, hall), [this, uid = who.uid] {
      --serving;
      if (--by_uid[uid] == 0) by_uid.erase(uid);
    });
  }

  template <class Done>
  void start(asio::awaitable<void> session, Done done) {
    asio::co_spawn(io, std::move(session), [this, done](const std::exception_ptr& failed) {
      done();
      if (failed) note_exception(failed, "A connection was given up: ");
      if (hall.closing && serving == 0 && turning_away == 0) pause.cancel();
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
    acceptor.close(ignored);
    signals.cancel(ignored);
    for (auto* socket : hall.idle)
      socket->cancel(ignored);
    pause.cancel();
    if (serving == 0 && turning_away == 0) return; // nothing is left to do, so run() returns by itself
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
  core_ = std::make_unique<Core>(std::move(options), std::move(handle));
}

Door::~Door() {
  core_->mailbox->close();
  if (core_->own) unlink_socket(core_->hall.options.socket, *core_->own);
}

void Door::open() {
  core_->own = listen_at(core_->hall.options);
  core_->acceptor.assign({}, core_->own->descriptor);
  if (core_->hall.options.stop_on_signals) {
    core_->signals.add(SIGINT);
    core_->signals.add(SIGTERM);
    core_->signals.async_wait([core = core_.get()](error_code cancelled, int) {
      if (!cancelled) core->close_up();
    });
  }
  asio::co_spawn(core_->io, core_->accept_all(), asio::detached);
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
