#include "serve/routes.hpp"

#include "serve/accept.hpp"
#include "serve/parts.hpp"
#include "serve/token.hpp"
#include "shop/codec.hpp"
#include "shop/lists.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <optional>

namespace nutward::serve {

using shop::Fault;
using shop::Problem;

namespace {

// The key as it was meant: a quoted structured string (RFC 8941) or bare.
std::string key_of(std::string_view field) {
  if (field.size() >= 2 && field.front() == '"' && field.back() == '"')
    field = field.substr(1, field.size() - 2);
  if (field.size() > 200 ||
      std::any_of(field.begin(), field.end(), [](char c) { return c < 0x20 || c == 0x7f || c == '"'; })) {
    throw Problem(Fault::value, "The Idempotency-Key is not a short printable text.", "Idempotency-Key",
                  "Send a random text of up to 200 characters.");
  }
  return std::string(field);
}

shop::Call call_from_query(std::string_view row, std::string_view query) {
  shop::Call call{std::string(row), {}};
  while (!query.empty()) {
    const auto end = std::min(query.find('&'), query.size());
    const std::string_view pair = query.substr(0, end);
    query.remove_prefix(std::min(end + 1, query.size()));
    if (pair.empty()) continue;
    const auto equals = std::min(pair.find('='), pair.size());
    const std::string name = decoded(pair.substr(0, equals), true);
    const std::string value = equals < pair.size() ? decoded(pair.substr(equals + 1), true) : "true";
    call.args.emplace_back(name, value);
  }
  return call;
}

// RFC 8288: the same question with the cursor of the page that follows.
std::string link_to(std::string_view path, std::string_view query, std::string_view cursor) {
  std::string out = "<" + std::string(path) + "?";
  while (!query.empty()) {
    const auto end = std::min(query.find('&'), query.size());
    const std::string_view pair = query.substr(0, end);
    query.remove_prefix(std::min(end + 1, query.size()));
    if (!pair.empty() && !pair.starts_with("cursor=")) out += std::string(pair) + "&";
  }
  return out + "cursor=" + std::string(cursor) + ">; rel=\"next\"";
}

constexpr std::string_view say_example = R"({"text": "what is due"})";

} // namespace

Routes::Routes(talk::Talk& talk, shop::Executor& executor, shop::Store& store, People& people,
               std::string version)
    : talk_(talk), executor_(executor), store_(store), people_(people), version_(std::move(version)) {}

const std::vector<Routes::Route>& Routes::table() {
  static const std::vector<Route> routes{
      {"POST", "/v1/say", shop::Role::look, &Routes::say},
      {"GET", "/v1/ask/", shop::Role::look, &Routes::ask},
      {"POST", "/v1/do/", shop::Role::bench, &Routes::one},
      {"POST", "/v1/do", shop::Role::bench, &Routes::several},
      {"GET", "/v1/health", shop::Role::look, &Routes::health},
      {"GET", "/v1/tokens", shop::Role::lead, &Routes::tokens, true},
      {"POST", "/v1/tokens", shop::Role::lead, &Routes::grant, true},
      {"DELETE", "/v1/tokens/", shop::Role::lead, &Routes::withdraw, true},
  };
  return routes;
}

namespace {

// What of the path a route leaves to its own reading; nullopt: another route's path.
std::optional<std::string_view> rest_of(std::string_view path, std::string_view route) {
  if (!route.ends_with('/')) return path == route ? std::optional(std::string_view{}) : std::nullopt;
  if (!path.starts_with(route) || path.size() == route.size()) return std::nullopt;
  path.remove_prefix(route.size());
  return path.find('/') == std::string_view::npos ? std::optional(path) : std::nullopt;
}

void allow_too(std::string& allow, std::string_view method) {
  allow += (allow.empty() ? "" : ", ") + std::string(method) + (method == "GET" ? ", HEAD" : "");
}

Response who_is_that(const Request& request) {
  Response out = problem(401, request.authorization.empty()
                                  ? "Over TCP a token is wanted, as Authorization: Bearer; the owner's is in "
                                    "http.token of the shop's home."
                                  : "That is no token that is good here: it is mistyped, or withdrawn.");
  out.headers.emplace_back("WWW-Authenticate", request.authorization.empty()
                                                   ? R"(Bearer realm="nutward")"
                                                   : R"(Bearer realm="nutward", error="invalid_token")");
  return out;
}

void check_role(const Routes::Route& route, const shop::Caller& who, bool tcp) {
  if (who.role < route.least)
    throw Problem(Fault::not_allowed,
                  route.least == shop::Role::lead ? fmt::format("{} does not lead the shop.", who.name)
                                                  : fmt::format("{} may only look.", who.name),
                  "", "Ask somebody who leads the shop.");
  if (route.unix_only && tcp)
    throw Problem(Fault::not_allowed, "That is to be had over the Unix socket only.", "",
                  "Ask for it on the machine itself: nutward.sock in the shop's home.");
}

bool holds_token_within(const shop::Value& value) {
  if (const auto* text = std::get_if<std::string>(&value)) return holds_token(*text);
  const auto* node = std::get_if<std::shared_ptr<const shop::Node>>(&value);
  if (node == nullptr) return false;
  return std::any_of((*node)->items.begin(), (*node)->items.end(), holds_token_within) ||
         std::any_of((*node)->fields.begin(), (*node)->fields.end(), [](const auto& field) {
           return holds_token(field.first) || holds_token_within(field.second);
         });
}

// JSON can write any letter as \u and its number. What is no JSON is for the route to refuse.
bool holds_escaped_token(std::string_view body) {
  if (body.find('\\') == std::string_view::npos) return false;
  try {
    return holds_token_within(shop::read_json(body));
  } catch (const Problem&) {
    return false;
  }
}

// The journal, the memory of answers and the log keep what is asked.
void check_no_token(const Request& request) {
  if (address_holds_token(request.path) || address_holds_token(request.query) ||
      address_holds_token(request.idempotency_key) || holds_token(request.body) ||
      holds_escaped_token(request.body))
    throw Problem(Fault::value, "A token stands in what was asked, and what is asked is kept.", "",
                  "Send it as Authorization: Bearer only, and have this one withdrawn if it was real.");
}

} // namespace

void Routes::handle(const Request& request, const Reply& reply) {
  try {
    const bool tcp = request.via != "unix";
    const auto who = tcp ? people_.bearer(request.authorization) : people_.user(request.uid);
    if (!who) return reply(who_is_that(request));
    dispatch(request, *who, tcp, reply);
  } catch (const Problem& p) {
    reply(refused(p));
  }
}

void Routes::dispatch(const Request& request, const shop::Caller& who, bool tcp, const Reply& reply) {
  check_no_token(request);
  const std::string_view method = request.method == "HEAD" ? "GET" : std::string_view(request.method);
  std::string allow;
  for (const Route& route : table()) {
    const auto rest = rest_of(request.path, route.path);
    if (!rest) continue;
    if (method != route.method) {
      allow_too(allow, route.method);
      continue;
    }
    check_role(route, who, tcp);
    (this->*route.take)(request, who, decoded(*rest, false), reply);
    return;
  }
  if (allow.empty()) {
    reply(problem(404, "There is nothing at that address; GET /v1/health, POST /v1/say and the questions "
                       "under /v1/ask/ are."));
    return;
  }
  Response no = problem(405, "That address takes " + allow + " only.");
  no.headers.emplace_back("Allow", allow);
  reply(no);
}

void Routes::say(const Request& request, const shop::Caller& who, std::string_view, const Reply& reply) {
  if (auto no = wrong_type(request)) return reply(*no);
  const shop::Value body = read_body(request, "text conversation", say_example);
  const std::string text = text_field(body, "text", true, say_example);
  const std::string conversation = text_field(body, "conversation", false, say_example);
  if (conversation.size() > 100)
    throw Problem(Fault::value, "The conversation's name is over 100 bytes.", "conversation",
                  "Use a shorter one.");
  const Rather wish = rather(request.accept);
  talk_.say(
      text, conversation, who, key_of(request.idempotency_key),
      [reply, conversation, wish](const talk::Reply& said) {
        if (said.no_question)
          return reply(not_drawn("That would change something, and was not done: only a question is drawn."));
        if (wish != Rather::json && said.answer.picture) return reply(drawn(*said.answer.picture));
        if (wish == Rather::picture_only)
          return reply(not_drawn(said.answer.kind == "refused" || said.answer.kind == "unclear"
                                     ? said.answer.text
                                     : "That answer has no picture."));
        reply(json(200, said.again.empty() ? shop::to_json(said.answer, conversation) : said.again));
      },
      wish == Rather::picture_only);
}

void Routes::ask(const Request& request, const shop::Caller& who, std::string_view question,
                 const Reply& reply) {
  if (shop::question(question) == nullptr)
    return reply(problem(
        404, fmt::format("There is no question '{}'; GET /v1/ask/help lists them.", question.substr(0, 60))));
  const shop::Answer answer = executor_.ask(call_from_query(question, request.query), who);
  const Rather wish = rather(request.accept);
  if (wish != Rather::json && answer.picture) return reply(drawn(*answer.picture));
  if (wish == Rather::picture_only)
    return reply(not_drawn(fmt::format("That answer of '{}' has no picture.", question)));
  Response found = json(200, shop::to_json(answer));
  found.headers.emplace_back("Vary", "Accept");
  if (!answer.next.empty())
    found.headers.emplace_back("Link", link_to(request.path, request.query, answer.next));
  reply(found);
}

void Routes::one(const Request& request, const shop::Caller& who, std::string_view command,
                 const Reply& reply) {
  if (shop::command(command) == nullptr)
    return reply(problem(
        404, fmt::format("There is no command '{}'; GET /v1/ask/help lists them.", command.substr(0, 60))));
  if (auto no = wrong_type(request)) return reply(*no);
  submit(request, who, {shop::read_call(command, request.body)}, reply);
}

void Routes::several(const Request& request, const shop::Caller& who, std::string_view, const Reply& reply) {
  if (auto no = wrong_type(request)) return reply(*no);
  submit(request, who, shop::read_calls(request.body), reply);
}

void Routes::submit(const Request& request, const shop::Caller& who, std::vector<shop::Call> calls,
                    const Reply& reply) {
  shop::Order order;
  order.calls = std::move(calls);
  order.who = who;
  order.key = key_of(request.idempotency_key);
  order.digest = digest_of(request.path + "\n" + request.body);
  order.confirmed = request.query == "yes=true";
  executor_.submit(std::move(order), [reply](const shop::Outcome& outcome) {
    if (outcome.problem)
      reply(refused(*outcome.problem));
    else
      reply(json(200, outcome.again.empty() ? shop::to_json(*outcome.answer) : outcome.again));
  });
}

void Routes::health(const Request&, const shop::Caller&, std::string_view, const Reply& reply) {
  std::int64_t revision = 0;
  store_.read([&](const shop::View& view) { revision = view.revision(); });
  reply(json(200, shop::to_json(shop::record(
                      {{"status", std::string("ok")}, {"version", version_}, {"revision", revision}}))));
}

} // namespace nutward::serve
