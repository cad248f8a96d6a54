// The one file of the daemon that sees Beast.
#include "serve/session.hpp"

#include "serve/deadline.hpp"
#include "serve/framing.hpp"
#include "serve/gate.hpp"

#include <algorithm>
#include <atomic>
#include <boost/asio/buffer.hpp>
#include <boost/asio/redirect_error.hpp>
#include <boost/asio/steady_timer.hpp>
#include <boost/asio/use_awaitable.hpp>
#include <boost/asio/write.hpp>
#include <boost/beast/core/flat_buffer.hpp>
#include <boost/beast/http.hpp>
#include <ctime>

namespace nutward::serve {
namespace {

namespace beast = boost::beast;
namespace http = boost::beast::http;
using beast::error_code;
using Message = http::response<http::string_body>;
using std::chrono::steady_clock;

// Room for a head at its limit and a little of what follows it; chunk headers have to fit too.
constexpr std::size_t buffer_room = 8 * 1024;
constexpr std::size_t chunk_extension_limit = 1024;
constexpr std::size_t drain_limit = 1024 * 1024;
constexpr std::chrono::seconds drain_within{1};

// Where the session waits for the answer. Belongs to the door's thread.
struct Awaited {
  explicit Awaited(const asio::any_io_executor& executor) : wake(executor, steady_clock::time_point::max()) {}
  std::optional<Response> response;
  asio::steady_timer wake;
};

// What the copies of one Reply share. Holds the session weakly: a Reply that outlives the door must not keep
// a coroutine, and with it a socket, beyond the io_context they belong to.
class ReplyState {
public:
  ReplyState(std::shared_ptr<Mailbox> mailbox, std::weak_ptr<Awaited> awaited)
      : mailbox_(std::move(mailbox)), awaited_(std::move(awaited)) {}
  ReplyState(const ReplyState&) = delete;
  ReplyState& operator=(const ReplyState&) = delete;
  ~ReplyState() {
    try {
      give(problem(500, "The request was dropped without an answer."));
    } catch (...) { // out of memory: the client's own time-out has to do
    }
  }

  void give(Response response) {
    if (used_.exchange(true)) return;
    auto shared = std::make_shared<Response>(std::move(response));
    mailbox_->post([awaited = awaited_, shared] {
      const auto waiting = awaited.lock();
      if (!waiting) return;
      waiting->response = std::move(*shared);
      waiting->wake.cancel();
    });
  }

private:
  std::shared_ptr<Mailbox> mailbox_;
  std::weak_ptr<Awaited> awaited_;
  std::atomic<bool> used_{false};
};

std::string http_date() {
  const std::time_t now = std::time(nullptr);
  std::tm parts{};
  ::gmtime_r(&now, &parts);
  char text[32];
  return {text, std::strftime(text, sizeof text, "%a, %d %b %Y %H:%M:%S GMT", &parts)};
}

bool is_clean(std::string_view text) {
  return std::none_of(text.begin(), text.end(), [](char c) { return (c >= 0 && c < 0x20) || c == 0x7f; });
}

bool is_sendable(const Response& response) {
  const auto clean = [](const auto& field) {
    return !field.first.empty() && is_clean(field.first) && is_clean(field.second);
  };
  return response.status >= 200 && response.status <= 599 && is_clean(response.content_type) &&
         std::all_of(response.headers.begin(), response.headers.end(), clean);
}

struct Manner {
  unsigned version = 11;
  bool keep_alive = false;
  bool head_only = false;
};

Message message_of(Response response, Manner manner) {
  if (!is_sendable(response)) response = problem(500, "The answer could not be sent.");
  Message out;
  out.version(manner.version);
  out.result(static_cast<unsigned>(response.status));
  out.reason(title_of(response.status));
  out.set(http::field::date, http_date());
  out.set(http::field::cache_control, "no-store");
  out.set("X-Content-Type-Options", "nosniff");
  if (!response.content_type.empty()) out.set(http::field::content_type, response.content_type);
  for (const auto& [name, value] : response.headers) {
    const bool replaces =
        beast::iequals(name, "Cache-Control") || beast::iequals(name, "X-Content-Type-Options");
    replaces ? out.set(name, value) : out.insert(name, value);
  }
  out.keep_alive(manner.keep_alive);
  const bool no_body = response.status == 204 || response.status == 304;
  if (!no_body) out.content_length(response.body.size());
  if (!no_body && !manner.head_only) out.body() = std::move(response.body);
  return out;
}

class Session {
public:
  Session(Socket socket, Peer peer, Hall& hall) : socket_(std::move(socket)), peer_(peer), hall_(hall) {}
  ~Session() { deadline_->leave(); }
  Session(const Session&) = delete;
  Session& operator=(const Session&) = delete;

  asio::awaitable<void> serve() {
    manner_.keep_alive = true;
    while (manner_.keep_alive && !hall_.closing) {
      auto request = co_await next_request();
      if (!request) co_return;
      auto answer = co_await answer_to(std::move(*request));
      if (!answer || !co_await send(std::move(*answer))) co_return;
    }
    co_await hang_up();
  }

  asio::awaitable<void> turn_away() {
    auto answer = problem(503, "Too many connections are open at once. Try again in a moment.");
    answer.headers.emplace_back("Retry-After", "1");
    manner_.keep_alive = false;
    if (co_await send(std::move(answer))) co_await hang_up();
  }

private:
  using Parser = http::request_parser<http::string_body>;

  // nullopt: the connection is at its end, and a refusal has been sent where one was due.
  asio::awaitable<std::optional<Request>> next_request() {
    std::optional<Fault> fault;
    std::optional<Request> request;
    try {
      if (const auto size = co_await read_head()) request = co_await read_request(*size);
    } catch (const Fault& caught) {
      fault = caught;
    }
    if (fault) {
      manner_ = {11, false, false};
      if (co_await send(problem(fault->status, fault->what()))) co_await hang_up();
    }
    first_ = false;
    co_return request;
  }

  // Reads until a whole head is in the buffer, and says its size. nullopt: the client is gone, or said
  // nothing in time.
  asio::awaitable<std::optional<std::size_t>> read_head() {
    const auto& options = hall_.options;
    bool begun = false;
    bool stray_line_end = true; // one empty line before a request is forgiven (RFC 9112 §2.2)
    std::size_t scanned = 0;
    deadline_->arm(first_ ? options.head_within : options.idle_for);
    for (;;) {
      if (stray_line_end && buffered().size() >= 2) {
        if (buffered().substr(0, 2) == "\r\n") buffer_.consume(2);
        stray_line_end = false;
      }
      if (const bool lone = buffered() == "\r"; !buffered().empty() && !(lone && stray_line_end)) {
        if (!begun && !first_) deadline_->arm(options.head_within);
        begun = true;
        const auto size = end_of_head(buffered(), scanned);
        if (size.value_or(buffered().size()) > options.head_limit)
          throw Fault(431, "The request line and fields are too large: at most " +
                               std::to_string(options.head_limit) + " bytes are taken.");
        if (size) co_return size;
      }
      if (const auto error = co_await read_some(!begun)) {
        if (begun && deadline_->passed()) throw Fault(408, "The request did not come in time.");
        co_return std::nullopt;
      }
    }
  }

  asio::awaitable<error_code> read_some(bool idle) {
    if (idle && hall_.closing) co_return asio::error::operation_aborted;
    if (idle) hall_.idle.insert(&socket_);
    error_code error;
    const auto room = buffer_.prepare(std::min<std::size_t>(4096, buffer_.max_size() - buffer_.size()));
    const auto size =
        co_await socket_.async_read_some(room, asio::redirect_error(asio::use_awaitable, error));
    hall_.idle.erase(&socket_);
    buffer_.commit(size);
    co_return error;
  }

  // nullopt: the client went away within its body.
  asio::awaitable<std::optional<Request>> read_request(std::size_t head_size) {
    const auto framing = read_framing(buffered().substr(0, head_size), hall_.options.body_limit);
    Parser parser;
    // The limits on the head were kept above; the library's own must not come first.
    parser.header_limit(static_cast<std::uint32_t>(hall_.options.head_limit + 1));
    parser.body_limit(hall_.options.body_limit);
    auto check_extension = [](std::uint64_t, beast::string_view extension, error_code& error) {
      if (extension.size() > chunk_extension_limit) error = http::error::bad_chunk_extension;
    };
    parser.on_chunk_header(check_extension);
    error_code error;
    buffer_.consume(parser.put(asio::buffer(buffer_.data(), head_size), error));
    if (error == http::error::need_more) error = {};
    if (error || !parser.is_header_done()) throw Fault(400, "The request is not HTTP that can be read.");
    // Taken before the body is read: fields that trail a chunked body must not change what was asked.
    auto request = describe(parser.get());
    knock(parser.get());
    if (!parser.is_done() && !co_await read_body(parser, framing.wants_continue)) co_return std::nullopt;
    request.body = std::move(parser.get().body());
    co_return request;
  }

  // false: the client went away. The time-out covers the body as a whole.
  asio::awaitable<bool> read_body(Parser& parser, bool wants_continue) {
    error_code error;
    deadline_->arm(hall_.options.body_within);
    if (wants_continue && buffer_.size() == 0) {
      const std::string_view go_on = "HTTP/1.1 100 Continue\r\n\r\n";
      co_await asio::async_write(socket_, asio::buffer(go_on),
                                 asio::redirect_error(asio::use_awaitable, error));
    }
    if (!error)
      co_await http::async_read(socket_, buffer_, parser, asio::redirect_error(asio::use_awaitable, error));
    if (!error) co_return true;
    if (deadline_->passed()) throw Fault(408, "The body did not come in time.");
    if (error == http::error::body_limit)
      throw Fault(413, "The body is too large: at most " + std::to_string(hall_.options.body_limit) +
                           " bytes are taken.");
    if (error.category() == make_error_code(http::error::bad_chunk).category() &&
        error != http::error::partial_message && error != http::error::end_of_stream)
      throw Fault(400, "The chunks of the body cannot be read.");
    co_return false;
  }

  Request describe(const Parser::value_type& message) {
    manner_ = {message.version(), message.keep_alive(), message.method() == http::verb::head};
    const std::string_view target{message.target().data(), message.target().size()};
    const auto mark = std::min(target.find('?'), target.size());
    Request out;
    out.method = std::string(message.method_string());
    out.path = target.substr(0, mark);
    if (mark < target.size()) out.query = target.substr(mark + 1);
    out.content_type = std::string(message[http::field::content_type]);
    out.idempotency_key = std::string(message["Idempotency-Key"]);
    for (auto [field, end] = message.equal_range(http::field::accept); field != end; ++field)
      out.accept.append(out.accept.empty() ? "" : ", ").append(field->value());
    out.authorization = std::string(message[http::field::authorization]);
    out.uid = peer_.uid;
    out.gid = peer_.gid;
    out.via = peer_.tcp ? "tcp" : "unix";
    return out;
  }

  void knock(const Parser::value_type& message) const {
    const auto value = [&message](beast::string_view name) -> std::optional<std::string_view> {
      const auto field = message.find(name);
      if (field == message.end()) return std::nullopt;
      return std::string_view{field->value().data(), field->value().size()};
    };
    static const std::vector<std::string> any;
    check_knock({{message.target().data(), message.target().size()},
                 value("Host").value_or(""),
                 value("Origin"),
                 value("Sec-Fetch-Site")},
                peer_.tcp ? hall_.hosts : any);
  }

  // nullopt: the door closes before the answer came.
  asio::awaitable<std::optional<Response>> answer_to(Request request) {
    const auto awaited = std::make_shared<Awaited>(socket_.get_executor());
    deadline_->disarm();
    call_handler(std::move(request), awaited);
    while (!awaited->response) {
      error_code woken;
      co_await awaited->wake.async_wait(asio::redirect_error(asio::use_awaitable, woken));
      if (!woken) awaited->wake.expires_at(steady_clock::time_point::max());
    }
    co_return std::move(awaited->response);
  }

  void call_handler(Request request, const std::shared_ptr<Awaited>& awaited) {
    const auto state = std::make_shared<ReplyState>(hall_.mailbox, awaited);
    const auto fail = [&](const std::string& what) {
      if (hall_.options.note) hall_.options.note("A request failed: " + what);
      state->give(problem(500, "Something went wrong inside the daemon. Its log says more."));
    };
    try {
      hall_.handle(std::move(request), [state](Response response) { state->give(std::move(response)); });
    } catch (const std::exception& caught) {
      fail(caught.what());
    } catch (...) {
      fail("something that is no exception was thrown.");
    }
  }

  asio::awaitable<bool> send(Response response) {
    manner_.keep_alive = manner_.keep_alive && !hall_.closing && response.status != 401;
    const auto message = message_of(std::move(response), manner_);
    error_code error;
    deadline_->arm(hall_.options.body_within, Socket::shutdown_both);
    co_await http::async_write(socket_, message, asio::redirect_error(asio::use_awaitable, error));
    co_return !error;
  }

  // A socket closed with unread bytes in it resets the connection, and the answer may be lost with it.
  asio::awaitable<void> hang_up() {
    error_code error;
    socket_.shutdown(Socket::shutdown_send, error);
    deadline_->arm(drain_within);
    std::size_t drained = 0;
    buffer_.clear();
    while (!error && drained < drain_limit) {
      drained += co_await socket_.async_read_some(buffer_.prepare(4096),
                                                  asio::redirect_error(asio::use_awaitable, error));
    }
  }

  std::string_view buffered() const {
    return {static_cast<const char*>(buffer_.data().data()), buffer_.size()};
  }

  Socket socket_;
  Peer peer_;
  Hall& hall_;
  std::shared_ptr<Deadline> deadline_ = std::make_shared<Deadline>(socket_);
  Manner manner_;
  bool first_ = true; // no request has come on this connection yet
  beast::flat_buffer buffer_{hall_.options.head_limit + buffer_room};
};

} // namespace

std::string_view title_of(int status) {
  if (http::int_to_status(static_cast<unsigned>(status)) == http::status::unknown) return "Error";
  const auto phrase = http::obsolete_reason(http::int_to_status(static_cast<unsigned>(status)));
  return {phrase.data(), phrase.size()};
}

asio::awaitable<void> serve_peer(Socket socket, Peer peer, Hall& hall) {
  Session session(std::move(socket), peer, hall);
  co_await session.serve();
}

asio::awaitable<void> turn_away(Socket socket, Hall& hall) {
  Session session(std::move(socket), {}, hall);
  co_await session.turn_away();
}

} // namespace nutward::serve
