// The client over TCP: where it asks, what token it bears, and what it refuses to do with one.
#include "cli/client_support.hpp"
#include "serve/door_support.hpp"
#include "support/catch.hpp"

#include <fstream>
#include <sys/stat.h>

using namespace client_support;
using door_support::RunningDoor;
using door_support::TempDir;
namespace serve = nutward::serve;

namespace {

const std::string secret = "nwt_" + std::string(32, '1') + std::string(32, 'e');

// A door that says by which way it was asked, and whether with the token.
struct Shop {
  TempDir dir;
  RunningDoor door;
  Shop() : door(options(dir), say_how) { keep("http.token", secret + "\n"); }
  static serve::DoorOptions options(const TempDir& dir) {
    serve::DoorOptions out;
    out.socket = dir / "nutward.sock";
    out.http = "127.0.0.1:0";
    return out;
  }
  static void say_how(const serve::Request& request, const serve::Reply& reply) {
    const bool good = request.authorization == "Bearer " + secret;
    reply({200,
           "application/json",
           R"({"kind":"fit","text":"Asked over )" + request.via + (good ? " with the token" : "") + ".\"}",
           {}});
  }
  std::string url() { return "http://" + (*door).http(); }
  std::string home() { return dir.path.string(); }
  std::string keep(const char* name, const std::string& text, mode_t mode = 0600) {
    const auto file = dir / name;
    std::ofstream(file) << text;
    ::chmod(file.c_str(), mode);
    return file;
  }
};

const char* with_token = "Asked over tcp with the token.\n";

Ran with(const Words& environment, const Words& arguments, const std::string& input = "") {
  How how;
  how.environment = environment;
  how.input = input;
  return run(arguments, how);
}

} // namespace

TEST_CASE("over TCP the token comes from a file, from standard input, or from the home") {
  Shop shop;
  const auto file = shop.keep("my token", secret);
  CHECK(run({"--http", shop.url(), "--token-file", file, "x"}).out == with_token);
  CHECK(run({"--http", shop.url() + "/", "--home", shop.home(), "x"}).out == with_token);
  CHECK(with({}, {"--http", shop.url(), "--token-file", "-", "x"}, secret + "\nmore\n").out == with_token);
  CHECK(with({"NUTWARD_HTTP=" + shop.url(), "NUTWARD_TOKEN_FILE=" + file}, {"x"}).out == with_token);
  CHECK(with({"NUTWARD_HTTP=" + shop.url(), "NUTWARD_HOME=" + shop.home()}, {"x"}).out == with_token);
  const auto localhost = "http://localhost" + shop.url().substr(shop.url().rfind(':'));
  CHECK(run({"--http", localhost, "--token-file", file, "x"}).out == with_token);
  CHECK(with({}, {"--http", shop.url(), "--token-file", file}, "one\ntwo\n").out ==
        std::string(with_token) + with_token);
}

TEST_CASE("who names a home asks over its socket, whatever the environment says") {
  Shop shop;
  CHECK(with({"NUTWARD_HTTP=http://127.0.0.1:1"}, {"--home", shop.home(), "x"}).out == "Asked over unix.\n");
}

TEST_CASE("a token on the command line is refused, unsent and unrepeated") {
  Shop shop;
  for (const Words& arguments :
       {Words{"--http", shop.url(), "--token-file", secret, "x"}, Words{"--home", shop.home(), "use", secret},
        Words{"--http", "http://" + secret + "@127.0.0.1:80", "x"}, Words{"--token", secret, "x"},
        Words{"--home", shop.home(), "--key=" + secret, "x"}}) {
    const auto ran = run(arguments);
    CHECK(ran.code == 2);
    CHECK(ran.out.empty());
    CHECK(ran.err.find("A token stands on the command line") != std::string::npos);
    CHECK(ran.err.find("--token-file") != std::string::npos);
    CHECK(ran.err.find("nwt_") == std::string::npos);
  }
}

TEST_CASE("a URL that could carry a token away, or in it, is refused") {
  Shop shop;
  const auto file = shop.keep("t", secret);
  // 192.0.2.0/24 and 2001:db8::/32 are for documentation (RFC 5737, RFC 3849).
  for (const char* url :
       {"https://127.0.0.1:80", "127.0.0.1:80", "http://192.0.2.7:80", "http://bench.example:80",
        "http://[2001:db8::1]:80", "http://[::ffff:127.0.0.1]:80", "http://0.0.0.0:80", "http://127.1:80",
        "http://[::1:80", "http://127.0.0.1:", "http://127.0.0.1:0", "http://127.0.0.1:65536",
        "http://127.0.0.1:80x", "http://127.0.0.1:80/v1", "http://", "http://me@127.0.0.1:80",
        "http://127.0.0.1:80/?token=x"}) {
    INFO(url);
    const auto ran = run({"--http", url, "--token-file", file, "x"});
    CHECK(ran.code == 2);
    CHECK(ran.err.find("nutward: The URL ") == 0);
    CHECK(ran.err.find("http://127.0.0.1:8765") != std::string::npos);
  }
}

TEST_CASE("a token's file that is missing, open to all, or holds none is refused with what would do") {
  Shop shop;
  const auto refusal = [&](const std::string& file, const std::string& input = "") {
    const auto ran = with({}, {"--http", shop.url(), "--token-file", file, "x"}, input);
    CHECK(ran.out.empty());
    CHECK(ran.err.find("nwt_1") == std::string::npos);
    CHECK(ran.code == 2);
    return ran.err;
  };
  CHECK(refusal(shop.home() + "/none").find("cannot be read: No such file or directory") !=
        std::string::npos);
  CHECK(refusal(shop.keep("open", secret, 0644)).find("may be read by everybody") != std::string::npos);
  CHECK(refusal(shop.keep("empty", "")).find("holds no token in its first line") != std::string::npos);
  CHECK(refusal(shop.keep("other", "a key of another program")).find("holds no token") != std::string::npos);
  CHECK(refusal(shop.keep("late", "\n" + secret)).find("holds no token") != std::string::npos);
  CHECK(refusal("-").find("Standard input holds no token") != std::string::npos);
  const auto both = with({}, {"--http", shop.url(), "--token-file", "-"}, secret + "\nx\n");
  CHECK(both.code == 2);
  CHECK(both.err.find("cannot hold both the token and the sentences") != std::string::npos);
}

TEST_CASE("without a daemon there it says where, and what starts one") {
  TempDir dir;
  std::string url;
  {
    Shop shop;
    url = shop.url();
  }
  std::ofstream(dir / "http.token") << secret;
  ::chmod((dir / "http.token").c_str(), 0600);
  const auto ran = run({"--http", url, "--home", dir.path.string(), "x"});
  CHECK(ran.code == 69);
  CHECK(ran.err == "nutward: No daemon is reachable at " + url +
                       " (Connection refused).\nThis starts it: nutwardd --home " + dir.path.string() +
                       " --http " + url.substr(7) + "\n");
}
