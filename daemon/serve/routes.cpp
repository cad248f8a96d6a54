#include "serve/routes.hpp"

#include "shop/codec.hpp"
#include "shop/lists.hpp"

#include <fmt/format.h>
#include <openssl/evp.h>

#include <algorithm>
#include <array>
#include <optional>

namespace nutward::serve {

using shop::Fault;
using shop::Problem;

namespace {

Response json(int status, std::string body) {
  return {status, status < 400 ? "application/json" : "application/problem+json", std::move(body), {}};
}

Response refused(const Problem& p) {
  const int status = shop::status_for(p.fault);
  return json(status, shop::to_json(p, status));
}

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

std::string digest_of(std::string_view path, std::string_view body) {
  const std::string all = std::string(path) + "\n" + std::string(body);
  std::array<unsigned char, EVP_MAX_MD_SIZE> hash{};
  unsigned size = 0;
  if (EVP_Digest(all.data(), all.size(), hash.data(), &size, EVP_sha256(), nullptr) != 1)
    throw Problem(Fault::broken, "SHA-256 is not to be had.", "", "");
  std::string out;
  for (unsigned i = 0; i < size; ++i)
    out += fmt::format("{:02x}", hash.at(i));
  return out;
}

std::optional<Response> wrong_type(const Request& request) {
  std::string type = request.content_type.substr(0, request.content_type.find(';'));
  while (type.ends_with(' ') || type.ends_with('\t'))
    type.pop_back();
  for (char& c : type) { // media types are case-insensitive (RFC 9110, 8.3.1)
    if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
  }
  if (type == "application/json") return std::nullopt;
  return problem(415, "The body must be application/json, and say so in Content-Type.");
}

int hex(char c) {
  if (c >= '0' && c <= '9') return c - '0';
  if (c >= 'a' && c <= 'f') return c - 'a' + 10;
  if (c >= 'A' && c <= 'F') return c - 'A' + 10;
  return -1;
}

std::string decoded(std::string_view text, bool plus_is_space) {
  std::string out;
  for (std::size_t i = 0; i < text.size(); ++i) {
    if (text[i] == '+' && plus_is_space) {
      out += ' ';
    } else if (text[i] == '%') {
      const int high = i + 2 < text.size() ? hex(text[i + 1]) : -1;
      const int low = i + 2 < text.size() ? hex(text[i + 2]) : -1;
      if (high < 0 || low < 0)
        throw Problem(Fault::value, "A percent sign stands without its two hex digits.", "query",
                      "Write a percent sign as %25.");
      out += static_cast<char>(high * 16 + low);
      i += 2;
    } else {
      out += text[i];
    }
  }
  return out;
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

std::string text_field(const shop::Node& body, std::string_view name, bool required) {
  const shop::Value* v = body.find(name);
  if (v == nullptr && !required) return "";
  const auto* s = v == nullptr ? nullptr : std::get_if<std::string>(v);
  if (s == nullptr)
    throw Problem(Fault::value, fmt::format("'{}' must be a text.", name), std::string(name),
                  "Send {\"text\": \"what is due\"}.");
  return *s;
}

} // namespace

Routes::Routes(talk::Talk& talk, shop::Executor& executor, shop::Store& store, RoutesOptions options)
    : talk_(talk), executor_(executor), store_(store), options_(std::move(options)) {}

const std::vector<Routes::Route>& Routes::table() {
  static const std::vector<Route> routes{
      {"POST", "/v1/say", shop::Role::look, &Routes::say},
      {"GET", "/v1/ask/", shop::Role::look, &Routes::ask},
      {"POST", "/v1/do/", shop::Role::bench, &Routes::one},
      {"POST", "/v1/do", shop::Role::bench, &Routes::several},
      {"GET", "/v1/health", shop::Role::look, &Routes::health},
  };
  return routes;
}

void Routes::handle(const Request& request, const Reply& reply) {
  std::string allow;
  for (const Route& route : table()) {
    std::string_view rest;
    if (route.path.ends_with('/')) {
      if (!std::string_view(request.path).starts_with(route.path) || request.path.size() == route.path.size())
        continue;
      rest = std::string_view(request.path).substr(route.path.size());
      if (rest.find('/') != std::string_view::npos) continue;
    } else if (request.path != route.path) {
      continue;
    }
    if (request.method != route.method) {
      allow += (allow.empty() ? "" : ", ") + std::string(route.method);
      continue;
    }
    try {
      const shop::Caller who = caller(request);
      if (who.role < route.least)
        throw Problem(Fault::not_allowed, fmt::format("{} may only look.", who.name), "",
                      "Ask somebody who leads the shop.");
      (this->*route.take)(request, who, decoded(rest, false), reply);
    } catch (const Problem& p) {
      reply(refused(p));
    }
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

shop::Caller Routes::caller(const Request& request) {
  std::optional<shop::Actor> actor;
  store_.read([&](const shop::View& view) { actor = view.house().actor_for_uid(request.uid); });
  if (!actor) {
    store_.write([&](shop::Tx& tx) {
      actor = tx.house().actor_for_uid(request.uid); // somebody else may have been quicker
      if (actor) return;
      shop::Actor fresh;
      fresh.uid = request.uid;
      fresh.role = static_cast<int>(request.uid == options_.owner ? shop::Role::lead : shop::Role::bench);
      fresh.name = options_.user_name != nullptr ? options_.user_name(request.uid) : "";
      if (fresh.name.empty()) fresh.name = fmt::format("user {}", request.uid);
      fresh.id = tx.put(fresh);
      tx.backroom().take_changes(); // nobody's doing: no line of the journal
      actor = fresh;
    });
  }
  return {actor->id, static_cast<shop::Role>(actor->role), actor->name, request.via};
}

void Routes::say(const Request& request, const shop::Caller& who, std::string_view, const Reply& reply) {
  if (auto no = wrong_type(request)) return reply(*no);
  const shop::Value body = shop::read_json(request.body);
  const auto* node = std::get_if<std::shared_ptr<const shop::Node>>(&body);
  if (node == nullptr || (*node)->is_list)
    throw Problem(Fault::value, "The body must be an object.", "/", "Send {\"text\": \"what is due\"}.");
  for (const auto& [name, value] : (*node)->fields) {
    if (name != "text" && name != "conversation")
      throw Problem(Fault::value, "say takes only text and conversation.", name.substr(0, 60),
                    "Leave it out.");
  }
  const std::string text = text_field(**node, "text", true);
  const std::string conversation = text_field(**node, "conversation", false);
  if (conversation.size() > 100)
    throw Problem(Fault::value, "The conversation's name is over 100 bytes.", "conversation",
                  "Use a shorter one.");
  talk_.say(text, conversation, who, key_of(request.idempotency_key),
            [reply, conversation](const talk::Reply& said) {
              reply(json(200, said.again.empty() ? shop::to_json(said.answer, conversation) : said.again));
            });
}

void Routes::ask(const Request& request, const shop::Caller& who, std::string_view question,
                 const Reply& reply) {
  if (shop::question(question) == nullptr)
    return reply(problem(
        404, fmt::format("There is no question '{}'; GET /v1/ask/help lists them.", question.substr(0, 60))));
  reply(json(200, shop::to_json(executor_.ask(call_from_query(question, request.query), who))));
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
  order.digest = digest_of(request.path, request.body);
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
  reply(json(200,
             shop::to_json(shop::record(
                 {{"status", std::string("ok")}, {"version", options_.version}, {"revision", revision}}))));
}

} // namespace nutward::serve
