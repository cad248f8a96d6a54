// A sentence over an open Unix-socket connection, against a fixed reply from the same server: same request,
// same connection, a handler that answers with a constant.
//
//   bench_sentence [full]      full: 4,000 of each; otherwise 40
#include "bench/figures.hpp"
#include "hours/load_zone.hpp"
#include "serve/door_support.hpp"
#include "serve/routes.hpp"
#include "shop/demo.hpp"
#include "store/sqlite.hpp"
#include "talk/talk.hpp"

#include <array>
#include <future>

namespace nutward::bench {

namespace {

struct SystemClock : shop::Clock {
  units::Instant now() const override {
    return {
        std::chrono::duration_cast<std::chrono::seconds>(std::chrono::system_clock::now().time_since_epoch())
            .count()};
  }
};

// The daemon's parts, put together as main.cpp does, on the demo shop.
struct Served {
  Folder folder;
  std::unique_ptr<store::Sqlite> store = store::open_sqlite({folder.path() / "shop"});
  SystemClock clock;
  shop::Rooms rooms{hours::load_zone};
  shop::Executor executor{*store, clock, rooms};
  talk::Talk talk{executor, *store, clock, rooms};
  serve::People people{*store, clock, {getuid(), nullptr}};
  serve::Routes routes{talk, executor, *store, people, "0"};

  Served() {
    shop::load_demo(*store, [&](const std::string& sentence, const shop::Caller& who) {
      std::promise<talk::Reply> promise;
      talk.say(sentence, "", who, "", [&](talk::Reply reply) { promise.set_value(std::move(reply)); });
      return promise.get_future().get().answer;
    });
  }
  std::string socket() const { return (folder.path() / "s").string(); }
  void handle(const serve::Request& request, const serve::Reply& reply) {
    if (request.path == "/fixed")
      reply({200, "application/json", R"({"kind":"fixed","text":"A fixed reply."})", {}});
    else
      routes.handle(request, reply);
  }
};

std::string post(const char* path, const std::string& sentence) {
  const std::string body = R"({"text":")" + sentence + R"(","conversation":"bench"})";
  return fmt::format(
      "POST {} HTTP/1.1\r\nHost: nutward\r\nContent-Type: application/json\r\nContent-Length: {}\r\n\r\n{}",
      path, body.size(), body);
}

constexpr std::array sentences{"what fits slot 3 of job 1", "where would a 51.3 mm piece go", "what is due",
                               "stock", "how much medium do we have"};

int run(bool full) {
  Served served;
  serve::DoorOptions options;
  options.socket = served.socket();
  const door_support::RunningDoor door(
      options,
      [&](const serve::Request& request, const serve::Reply& reply) { served.handle(request, reply); });
  door_support::RawClient client(served.socket());
  const auto ask = [&](const std::string& request) {
    client.send(request);
    return client.response();
  };
  std::array<Times, sentences.size()> said;
  Times fixed;
  const int runs = full ? 4000 : 40;
  for (int i = 0; i < runs; ++i) {
    for (std::size_t s = 0; s < sentences.size(); ++s) {
      const std::string fixed_request = post("/fixed", sentences[s]), request = post("/v1/say", sentences[s]);
      std::string answer;
      fixed.take([&] { answer = ask(fixed_request); });
      if (door_support::status_of(answer) != "200") throw std::runtime_error("no fixed reply: " + answer);
      said[s].take([&] { answer = ask(request); });
      if (door_support::status_of(answer) != "200" ||
          answer.find(R"("kind":"unclear")") != std::string::npos ||
          answer.find(R"("kind":"refused")") != std::string::npos)
        throw std::runtime_error(std::string("\"") + sentences[s] + "\" was not answered: " + answer);
    }
  }
  fmt::print("Over an open Unix-socket connection to the demo shop\n");
  print_times("a fixed reply", fixed);
  for (std::size_t s = 0; s < sentences.size(); ++s)
    print_times(fmt::format("\"{}\"", sentences[s]), said[s]);
  for (std::size_t s = 0; s < sentences.size(); ++s)
    print_ratio(fmt::format("\"{}\" over a fixed reply", sentences[s]), said[s], fixed, 3);
  return 0;
}

} // namespace

} // namespace nutward::bench

int main(int argc, char** argv) {
  return nutward::bench::run_as("bench_sentence", argc, argv, nutward::bench::run);
}
