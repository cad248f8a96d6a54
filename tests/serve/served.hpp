// The routes on a real shop, asked without a socket, and looks into what they answer.
#pragma once

#include "serve/routes.hpp"

#include "hours/load_zone.hpp"
#include "shop/codec.hpp"
#include "shop/lists.hpp"
#include "store/shop_in_a_folder.hpp"
#include "support/catch.hpp"
#include "units/read.hpp"

#include <future>

namespace nutward::test {

using serve::Request;
using serve::Response;

inline constexpr std::uint32_t owner = 1000, colleague = 1001, visitor = 1002;

struct SetClock : shop::Clock {
  units::Instant now() const override { return units::read_instant("2026-03-25T10:00:00Z"); }
};

struct Served {
  Served() {
    made.sqlite->write([](Tx& tx) {
      tx.put(Actor{0, "visitor", 0, "", {visitor}});
      tx.backroom().take_changes();
    });
  }

  Response send(Request r) {
    std::promise<Response> promise;
    auto reply = promise.get_future();
    routes.handle(r, [&](Response response) { promise.set_value(std::move(response)); });
    return reply.get();
  }
  Response get(const std::string& path, const std::string& query = "", std::uint32_t uid = owner) {
    Request r;
    r.method = "GET", r.path = path, r.query = query, r.uid = uid, r.via = "unix";
    return send(r);
  }
  static Request post_of(const std::string& path, const std::string& body, std::uint32_t uid = owner) {
    Request r;
    r.method = "POST", r.path = path, r.body = body, r.uid = uid, r.via = "unix";
    r.content_type = "application/json";
    return r;
  }
  Response post(const std::string& path, const std::string& body = "{}", std::uint32_t uid = owner) {
    return send(post_of(path, body, uid));
  }
  void set_role(std::int64_t actor, Role role) {
    for (Actor a : actors()) {
      if (a.id != actor || a.role == static_cast<int>(role)) continue;
      a.role = static_cast<int>(role);
      made.sqlite->write([&](Tx& tx) {
        tx.put(a);
        tx.backroom().take_changes();
      });
    }
  }
  std::vector<Actor> actors() {
    return seen(*made.sqlite, [](const View& v) { return v.house().actors(); });
  }
  std::int64_t revision() {
    return seen(*made.sqlite, [](const View& v) { return v.revision(); });
  }

  Made made;
  SetClock clock;
  Rooms rooms{hours::load_zone};
  Executor executor{*made.sqlite, clock, rooms};
  talk::Talk talk{executor, *made.sqlite, clock, rooms};
  serve::People people{*made.sqlite, clock, {owner, [](std::uint32_t uid) {
                                               return uid == owner ? std::string("mara") : std::string();
                                             }}};
  serve::Routes routes{talk, executor, *made.sqlite, people, "0.1.0"};
};

inline const Value& field(const Value& v, std::string_view name) {
  const auto* node = std::get_if<std::shared_ptr<const Node>>(&v);
  const Value* found = node == nullptr ? nullptr : (*node)->find(name);
  if (found == nullptr) throw std::runtime_error("no " + std::string(name) + " in " + to_json(v));
  return *found;
}
inline std::string word(const Response& r, std::string_view name) {
  return std::get<std::string>(field(read_json(r.body), name));
}
inline std::string header(const Response& r, std::string_view name) {
  for (const auto& [n, v] : r.headers) {
    if (n == name) return v;
  }
  return "";
}

// The members that RFC 9457 names, and ours beside them.
inline void check_problem(const Response& r, int status) {
  CHECK(r.status == status);
  CHECK(r.content_type == "application/problem+json");
  const Value body = read_json(r.body);
  CHECK(std::get<std::string>(field(body, "type")) == "about:blank");
  CHECK_FALSE(std::get<std::string>(field(body, "title")).empty());
  CHECK(std::get<std::int64_t>(field(body, "status")) == status);
  CHECK_FALSE(std::get<std::string>(field(body, "detail")).empty());
}

} // namespace nutward::test
