// Who may do what, over both doors: every route of the table, with every row behind it, asked over real
// sockets by every role. A route that nobody here knows how to call fails.
#include "serve/door_support.hpp"
#include "serve/served.hpp"
#include "serve/token.hpp"

using namespace nutward::test;
using namespace door_support;
using serve::Routes;

namespace {

constexpr Role roles[]{Role::look, Role::bench, Role::lead};

// One way to call a route: the rest of its path, a body, and the role that what is behind it wants.
struct Way {
  std::string rest, body;
  Role least = Role::look;
};

// Whatever is wrong with the body itself comes after the role.
std::vector<Way> ways(const Routes::Route& route) {
  std::vector<Way> out;
  const auto is = [&route](const char* method, const char* path) {
    return route.method == method && route.path == path;
  };
  if (is("GET", "/v1/ask/")) {
    for (const Question* q : questions())
      out.push_back({std::string(q->name), "", q->least});
  } else if (is("POST", "/v1/do/")) {
    for (const Command* c : commands())
      out.push_back({std::string(c->name), "{}", c->least});
  } else if (is("POST", "/v1/do")) {
    for (const Command* c : commands())
      out.push_back({"", R"({"calls": [{"do": ")" + std::string(c->name) + "\"}]}", c->least});
  } else if (is("POST", "/v1/say")) {
    out.push_back({"", R"({"text": "stock"})"});
  } else if (is("GET", "/v1/health") || is("GET", "/v1/tokens")) {
    out.push_back({});
  } else if (is("POST", "/v1/tokens")) {
    out.push_back({"", "{}"});
  } else if (is("DELETE", "/v1/tokens/")) {
    out.push_back({"nobody", ""});
  }
  return out;
}

std::string request(const Routes::Route& route, const Way& way, const std::string& fields) {
  return std::string(route.method) + " " + std::string(route.path) + way.rest + " HTTP/1.1\r\n" + fields +
         "Content-Type: application/json\r\nContent-Length: " + std::to_string(way.body.size()) + "\r\n\r\n" +
         way.body;
}

} // namespace

TEST_CASE("the role matrix: every route and every row, by every role, over both doors") {
  Served served;
  TempDir dir;
  serve::DoorOptions options;
  options.socket = dir / "s";
  options.http = "127.0.0.1:0";
  RunningDoor door(options, [&served](const serve::Request& asked, const serve::Reply& reply) {
    served.routes.handle(asked, reply);
  });
  RawClient here(dir / "s");
  RawClient there = RawClient::over_tcp((*door).http());
  const auto self = served.people.user(::getuid());
  std::size_t asked = 0;
  for (const Role role : roles) {
    // Over the Unix socket the person has the role, over TCP the token has it and the person leads.
    served.set_role(self.actor, Role::lead);
    const std::string token = served.people.grant("of " + std::to_string(asked), role, "", self).secret;
    const std::string bears = "Host: " + (*door).http() + "\r\nAuthorization: Bearer " + token + "\r\n";
    for (const Routes::Route& route : Routes::table()) {
      INFO(route.method << " " << route.path);
      const auto all = ways(route);
      REQUIRE_FALSE(all.empty()); // a new route: say above how it is called
      for (const Way& way : all) {
        INFO(way.rest << " " << way.body);
        const Role least = std::max(route.least, way.least);
        served.set_role(self.actor, role);
        here.send(request(route, way, "Host: shop\r\n"));
        CHECK((status_of(here.response()) == "403") == (role < least));
        served.set_role(self.actor, Role::lead);
        there.send(request(route, way, bears));
        CHECK((status_of(there.response()) == "403") == (role < least || route.unix_only));
        ++asked;
      }
    }
  }
  CHECK(asked > 3 * (questions().size() + 2 * commands().size()));
}

TEST_CASE("who may only look changes nothing, whatever the command") {
  for (const Command* c : commands()) {
    INFO(c->name);
    CHECK(c->least >= Role::bench);
  }
  for (const Routes::Route& route : Routes::table()) {
    INFO(route.path);
    if (route.method != "GET" && route.path != "/v1/say") CHECK(route.least >= Role::bench);
  }
}
