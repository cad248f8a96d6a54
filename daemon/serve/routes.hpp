// What requests mean: the routes, who may take them, and the two lists behind them. No network here: a
// Request comes in, a Response goes out, so all of it is tested without a socket.
#pragma once

#include "serve/door.hpp"
#include "serve/people.hpp"
#include "shop/run.hpp"
#include "talk/talk.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace nutward::serve {

class Routes {
public:
  // All references outlive the Routes.
  Routes(talk::Talk& talk, shop::Executor& executor, shop::Store& store, People& people, std::string version);

  // Finds the caller (401 over TCP without a good token), then the route (404, 405), checks the role (403),
  // and replies at once or from the executor's thread. HEAD is taken where GET is. Everything that goes wrong
  // is replied as application/problem+json.
  void handle(const Request& request, const Reply& reply);

  struct Route {
    std::string_view method, path; // a path that ends in '/' takes one more segment
    shop::Role least;              // the row's own role comes on top
    void (Routes::*take)(const Request&, const shop::Caller&, std::string_view rest, const Reply&);
    bool unix_only = false;
  };
  static const std::vector<Route>& table();

private:
  void say(const Request&, const shop::Caller&, std::string_view, const Reply&);
  void ask(const Request&, const shop::Caller&, std::string_view question, const Reply&);
  void one(const Request&, const shop::Caller&, std::string_view command, const Reply&);
  void several(const Request&, const shop::Caller&, std::string_view, const Reply&);
  void health(const Request&, const shop::Caller&, std::string_view, const Reply&);
  void tokens(const Request&, const shop::Caller&, std::string_view, const Reply&);
  void grant(const Request&, const shop::Caller&, std::string_view, const Reply&);
  void withdraw(const Request&, const shop::Caller&, std::string_view name, const Reply&);
  void dispatch(const Request&, const shop::Caller&, bool tcp, const Reply&);
  void submit(const Request&, const shop::Caller&, std::vector<shop::Call> calls, const Reply&);

  talk::Talk& talk_;
  shop::Executor& executor_;
  shop::Store& store_;
  People& people_;
  std::string version_;
};

} // namespace nutward::serve
