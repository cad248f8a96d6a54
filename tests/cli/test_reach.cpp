// Finding the daemon, not finding it, and losing it; and what the command line itself refuses.
#include "cli/client_support.hpp"
#include "serve/door_support.hpp"
#include "support/catch.hpp"

#include <fstream>

using namespace client_support;
using door_support::RunningDoor;
using door_support::TempDir;
namespace serve = nutward::serve;

namespace {

serve::DoorOptions in(const std::string& home) {
  serve::DoorOptions out;
  out.socket = home + "/nutward.sock";
  return out;
}

void say_yes(const serve::Request&, const serve::Reply& reply) {
  reply({200, "application/json", R"({"kind":"fit","text":"Yes."})", {}});
}

// Takes one connection, reads what comes first, says `words` and hangs up.
class Stranger {
public:
  Stranger(const std::string& path, std::string words)
      : fd_(::socket(AF_UNIX, SOCK_STREAM | SOCK_CLOEXEC, 0)) {
    sockaddr_un address{};
    address.sun_family = AF_UNIX;
    path.copy(address.sun_path, sizeof(address.sun_path) - 1);
    REQUIRE(::bind(fd_, reinterpret_cast<const sockaddr*>(&address), sizeof address) == 0);
    REQUIRE(::listen(fd_, 1) == 0);
    thread_ = std::thread([fd = fd_, said = std::move(words)] {
      const int client = ::accept(fd, nullptr, nullptr);
      char room[4096];
      if (::recv(client, room, sizeof room, 0) > 0) ::send(client, said.data(), said.size(), MSG_NOSIGNAL);
      ::close(client);
    });
  }
  ~Stranger() {
    thread_.join();
    ::close(fd_);
  }
  Stranger(const Stranger&) = delete;
  Stranger& operator=(const Stranger&) = delete;

private:
  int fd_;
  std::thread thread_;
};

} // namespace

TEST_CASE("without a daemon it says so, and what starts one") {
  TempDir dir;
  const auto home = dir.path.string();
  auto ran = run({"--home", home, "x"});
  CHECK(ran.err == "nutward: No daemon is reachable in " + home +
                       " (No such file or directory).\nThis starts it: nutwardd --home " + home + "\n");
  CHECK(ran.code == 69);
  CHECK(run({"--home", "/a b/\x1b[2J", "x"}).err ==
        "nutward: No daemon is reachable in '/a b/\\x1b[2J' (No such file or directory).\n"
        "This starts it: nutwardd --home '/a b/\\x1b[2J'\n");
  CHECK(run({"--home", "/" + std::string(200, 'x'), "x"}).code == 69);
  { serve::Door(in(home), say_yes).open(); }
  { // a socket that a dead daemon left
    const int fd = ::socket(AF_UNIX, SOCK_STREAM, 0);
    sockaddr_un address{};
    address.sun_family = AF_UNIX;
    (home + "/nutward.sock").copy(address.sun_path, sizeof(address.sun_path) - 1);
    REQUIRE(::bind(fd, reinterpret_cast<const sockaddr*>(&address), sizeof address) == 0);
    ::close(fd);
  }
  ran = run({"--home", home, "x"});
  CHECK(ran.err.find("(Connection refused)") != std::string::npos);
  CHECK(ran.code == 69);
}

TEST_CASE("the home is found where it is said to be") {
  TempDir dir;
  std::filesystem::create_directories(dir / "state/nutward");
  std::filesystem::create_directories(dir / "me/.local/state/nutward");
  const auto reached = [](const Words& environment) {
    How how;
    how.environment = environment;
    return run({"x"}, how).code;
  };
  const Words all{"NUTWARD_HOME=" + (dir / "direct"), "XDG_STATE_HOME=" + (dir / "state"),
                  "HOME=" + (dir / "me")};
  {
    RunningDoor door(in(dir / "state/nutward"), say_yes);
    CHECK(reached({all[1], all[2]}) == 0);
    CHECK(reached(all) == 69); // $NUTWARD_HOME was meant, whatever else there is
    CHECK(reached({"XDG_STATE_HOME=relative", all[2]}) == 69);
  }
  {
    RunningDoor door(in(dir / "me/.local/state/nutward"), say_yes);
    CHECK(reached({all[2]}) == 0);
    CHECK(reached({"XDG_STATE_HOME=relative", all[2]}) == 0);
    CHECK(reached({"NUTWARD_HOME=", "XDG_STATE_HOME=", all[2]}) == 0);
  }
  RunningDoor door(in(dir.path.string()), say_yes);
  CHECK(reached({"NUTWARD_HOME=" + dir.path.string() + "/"}) == 0);
}

TEST_CASE("a daemon that goes away between two sentences is noticed") {
  TempDir dir;
  serve::Door* self = nullptr;
  RunningDoor door(in(dir.path.string()), [&self](const serve::Request& request, const serve::Reply& reply) {
    self->stop();
    say_yes(request, reply);
  });
  self = &*door;
  How how;
  how.input = "one\ntwo\nthree\n";
  const auto ran = run({"--home", dir.path.string()}, how);
  CHECK(ran.out == "Yes.\n");
  CHECK(ran.err.find("nutward: The daemon has gone away (") == 0);
  CHECK(ran.err.find("This starts it: nutwardd --home " + dir.path.string() + "\n") != std::string::npos);
  CHECK(door_support::count_of(ran.err, "nutward:") == 1);
  CHECK(ran.code == 69);
}

TEST_CASE("a connection that breaks leaves the key to say it again with") {
  TempDir dir;
  Stranger stranger(dir / "nutward.sock", "HTTP/1.1 200 OK\r\nContent-Length: 50\r\n\r\n{\"kind\":");
  const auto ran = run({"--home", dir.path.string(), "--key", "k1", "use", "it"});
  CHECK(ran.err == "nutward: The daemon went away before it answered (the connection ended).\n"
                   "It may have been done. Said again with --key k1 it is done at most once.\n"
                   "This starts it: nutwardd --home " +
                       dir.path.string() + "\n");
  CHECK(ran.code == 69);
}

TEST_CASE("what does not speak HTTP is not taken for the daemon") {
  TempDir dir;
  Stranger stranger(dir / "nutward.sock", "220 ready\r\n");
  const auto ran = run({"--home", dir.path.string(), "x"});
  CHECK(ran.err.find("nutward: What answered does not speak HTTP") == 0);
  CHECK(ran.code == 75);
}

TEST_CASE("who may not open the socket is told so") {
  TempDir dir; // 0700, of whoever runs the tests
  RunningDoor door(in(dir.path.string()), say_yes);
  How how;
  if (::getuid() == 0)
    how.user = 65534;
  else
    std::filesystem::permissions(dir / "nutward.sock", std::filesystem::perms::none);
  const auto ran = run({"--home", dir.path.string(), "x"}, how);
  CHECK(ran.err.find("nutward: You may not speak to the daemon in " + dir.path.string() +
                     " (Permission denied).\n") == 0);
  CHECK(ran.code == 77);
}

TEST_CASE("a wrong command line asks nothing") {
  TempDir dir;
  int asked = 0;
  RunningDoor door(in(dir.path.string()), [&asked](const serve::Request& request, const serve::Reply& reply) {
    ++asked;
    say_yes(request, reply);
  });
  const auto refused = [&dir](Words words) {
    words.insert(words.begin(), {"--home", dir.path.string()});
    const auto ran = run(words);
    CHECK(ran.out.empty());
    return ran.code == 2 ? ran.err.substr(0, ran.err.find('\n')) : "exit " + std::to_string(ran.code);
  };
  CHECK(refused({"--jason", "x"}) ==
        "nutward: There is no option --jason. If it belongs to the sentence, put -- before the sentence.");
  CHECK(refused({"-x", "y"}) ==
        "nutward: There is no option -x. If it belongs to the sentence, put -- before the sentence.");
  CHECK(refused({"--no-input"}) == "nutward: There is no sentence, and --no-input forbids to read one.");
  CHECK(refused({" "}) == "nutward: The sentence is empty.");
  CHECK(refused({"--json", ""}) == "nutward: The sentence is empty.");
  CHECK(refused({}) == "nutward: There is no sentence, neither on the command line nor on standard input.");
  CHECK(refused({"--key", "k"}) == "nutward: --key names one sentence, so it needs one on the command line.");
  CHECK(refused({"--key", "a b", "x"}) ==
        "nutward: A key has at most 200 letters, digits and signs, and no spaces.");
  CHECK(refused({"\xff\xfe"}) ==
        "nutward: The sentence or the conversation's name is not UTF-8, so it was not sent.");
  CHECK(refused({"x", "--key"}).find("nutward: --key: ") == 0);
  CHECK(asked == 0);
}

TEST_CASE("help and version are answers, short and long") {
  const auto brief = run({"-h"});
  const auto full = run({"--help"});
  CHECK(brief.code == 0);
  CHECK(full.code == 0);
  CHECK(brief.err.empty());
  CHECK(brief.out.find("nutward which offcut fits slot 3 of job 12") < brief.out.find("Usage:"));
  CHECK(full.out.find("Examples:") == 0);
  for (const std::string option :
       {"--home", "--conversation", "--key", "--json", "--quiet", "--no-input", "--no-color", "--version"}) {
    CHECK(brief.out.find(option) != std::string::npos);
    CHECK(full.out.find("  " + option) != std::string::npos);
  }
  CHECK(full.out.find("goes on with the first") != std::string::npos); // the conversation of a shell
  CHECK(run({"--version"}).out == "nutward 0.1.0\n");
}
