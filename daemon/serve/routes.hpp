// What requests mean: the routes, who may take them, and the two lists behind them. No network here: a
// Request comes in, a Response goes out, so all of it is tested without a socket.
#pragma once

#include "serve/door.hpp"
#include "shop/run.hpp"
#include "talk/talk.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace nutward::serve {

struct RoutesOptions {
  std::string version;
  std::uint32_t owner = 0; // uid that leads the shop
  // The name of a machine's user, for somebody who asks for the first time; "" where there is none.
  std::string (*user_name)(std::uint32_t uid) = nullptr;
};

class Routes {
public:
  // All references outlive the Routes.
  Routes(talk::Talk& talk, shop::Executor& executor, shop::Store& store, RoutesOptions options);

  // POST /v1/say, GET /v1/ask/{question}, POST /v1/do/{command}, POST /v1/do, GET /v1/health. Replies at
  // once, or from the executor's thread. Everything that goes wrong is replied as application/problem+json.
  void handle(const Request& request, const Reply& reply);

  struct Route {
    std::string_view method, path; // a path that ends in '/' takes one more segment
    shop::Role least;              // the row's own role comes on top
    void (Routes::*take)(const Request&, const shop::Caller&, std::string_view rest, const Reply&);
  };
  static const std::vector<Route>& table();

private:
  void say(const Request&, const shop::Caller&, std::string_view, const Reply&);
  void ask(const Request&, const shop::Caller&, std::string_view question, const Reply&);
  void one(const Request&, const shop::Caller&, std::string_view command, const Reply&);
  void several(const Request&, const shop::Caller&, std::string_view, const Reply&);
  void health(const Request&, const shop::Caller&, std::string_view, const Reply&);
  void submit(const Request&, const shop::Caller&, std::vector<shop::Call> calls, const Reply&);
  shop::Caller caller(const Request& request); // makes an actor of a user who asks for the first time

  talk::Talk& talk_;
  shop::Executor& executor_;
  shop::Store& store_;
  RoutesOptions options_;
};

} // namespace nutward::serve
