// How a door opens, rests and closes: the socket's file, stopping, posted work.
#include "serve/door_support.hpp"
#include "support/catch.hpp"

#include <atomic>
#include <csignal>
#include <fstream>
#include <sys/stat.h>

using namespace door_support;
using namespace std::chrono_literals;

namespace {

unsigned mode_of(const std::string& path) {
  struct stat found {};
  REQUIRE(::lstat(path.c_str(), &found) == 0);
  return found.st_mode & 07777U;
}

} // namespace

TEST_CASE("stop lets a request in progress be answered") {
  TempDir dir;
  std::atomic<bool> asked{false};
  serve::Reply kept;
  RunningDoor door(at(dir / "s"), [&](const serve::Request&, serve::Reply reply) {
    kept = std::move(reply);
    asked = true;
  });
  RawClient idle(dir / "s");
  RawClient client(dir / "s");
  client.send(get);
  while (!asked)
    std::this_thread::sleep_for(1ms);
  (*door).stop();
  CHECK(idle.until_closed().empty());
  CHECK(idle.closed_by_peer());
  kept({200, "", "done", {}});
  const auto answer = client.response();
  CHECK(body_of(answer) == "done");
  CHECK(count_of(answer, "Connection: close\r\n") == 1);
  client.close();
  door.stop();
  CHECK_THROWS(RawClient(dir / "s"));
}

TEST_CASE("posted work runs on the door's thread, and what it throws is noted") {
  TempDir dir;
  std::atomic<int> ran{0};
  std::string noted;
  auto options = at(dir / "s");
  options.note = [&](const std::string& line) {
    noted = line;
    ++ran;
  };
  RunningDoor door(options, echo);
  std::thread::id inside;
  (*door).post([&] {
    inside = std::this_thread::get_id();
    ++ran;
  });
  (*door).post([] { throw std::runtime_error("slipped"); });
  while (ran < 2)
    std::this_thread::sleep_for(1ms);
  CHECK(inside != std::this_thread::get_id());
  CHECK(noted == "Posted work failed: slipped");
}

TEST_CASE("a door that nobody is connected to does not wake") {
  TempDir dir;
  RunningDoor door(at(dir / "s"), echo);
  {
    RawClient client(dir / "s");
    client.send(get);
    CHECK(status_of(client.response()) == "200");
  }
  const auto switches = [&door] {
    std::ifstream status("/proc/self/task/" + std::to_string(door.thread_id()) + "/status");
    std::string word;
    long count = -1;
    while (status >> word)
      if (word == "voluntary_ctxt_switches:") status >> count;
    return count;
  };
  std::this_thread::sleep_for(300ms); // the door notices that the client has gone
  const auto before = switches();
  REQUIRE(before > 0);
  std::this_thread::sleep_for(1500ms);
  CHECK(switches() == before);
}

TEST_CASE("descriptors return when clients go, served or turned away") {
  TempDir dir;
  RunningDoor door(at(dir / "s"), echo);
  const auto open_now = [] {
    const auto all = std::filesystem::directory_iterator("/proc/self/fd");
    return std::distance(begin(all), end(all));
  };
  const auto before = open_now();
  {
    std::vector<std::unique_ptr<RawClient>> slow;
    for (int i = 0; i < 200; ++i) {
      slow.push_back(std::make_unique<RawClient>(dir / "s"));
      slow.back()->send("GET / HTTP");
    }
    CHECK(open_now() >= before + 200 + 56); // of one user's, 56 are served
  }
  auto after = open_now();
  for (int i = 0; i < 200 && after > before; ++i) {
    std::this_thread::sleep_for(10ms);
    after = open_now();
  }
  CHECK(after == before);
  RawClient client(dir / "s");
  client.send(get);
  CHECK(status_of(client.response()) == "200");
}

TEST_CASE("SIGTERM stops the door where it is asked to watch for it") {
  TempDir dir;
  auto options = at(dir / "s");
  options.stop_on_signals = true;
  serve::Door door(options, echo);
  door.open();
  std::thread thread([&door] { door.run(); });
  ::kill(::getpid(), SIGTERM);
  thread.join();
  CHECK_THROWS(RawClient(dir / "s"));
}

TEST_CASE("the socket has the mode and group asked for, whatever the umask") {
  TempDir dir;
  const auto before = ::umask(0);
  SECTION("0600") {
    RunningDoor door(at(dir / "s"), echo);
    CHECK(mode_of(dir / "s") == 0600);
  }
  SECTION("0660 with a group") {
    ::umask(0077);
    auto options = at(dir / "s");
    options.mode = 0660;
    options.group = std::to_string(::getgid());
    RunningDoor door(options, echo);
    CHECK(mode_of(dir / "s") == 0660);
  }
  ::umask(before);
}

TEST_CASE("a socket left by a dead daemon needs no hand, and a stopped one leaves none") {
  TempDir dir;
  const auto path = dir / "s";
  {
    const int fd = ::socket(AF_UNIX, SOCK_STREAM, 0);
    sockaddr_un address{};
    address.sun_family = AF_UNIX;
    path.copy(address.sun_path, sizeof(address.sun_path) - 1);
    REQUIRE(::bind(fd, reinterpret_cast<const sockaddr*>(&address), sizeof address) == 0);
    ::close(fd);
  }
  {
    RunningDoor door(at(path), echo);
    RawClient client(path);
    client.send(get);
    CHECK(status_of(client.response()) == "200");
  }
  CHECK_FALSE(std::filesystem::exists(path));
}

TEST_CASE("a socket that cannot be made says why and what would do") {
  TempDir dir;
  const auto refusal = [](serve::DoorOptions options) {
    try {
      serve::Door(std::move(options), echo).open();
    } catch (const serve::DoorError& error) {
      CHECK_FALSE(error.would_do.empty());
      return std::string(error.what());
    }
    return std::string("made");
  };
  CHECK(refusal(at(dir / "none/s")) ==
        "The socket " + (dir / "none/s") + " cannot be made: No such file or directory.");
  std::ofstream(dir / "file") << "kept";
  CHECK(refusal(at(dir / "file")) ==
        "The socket " + (dir / "file") + " cannot be made: something that is not a socket is there already.");
  CHECK(std::filesystem::file_size(dir / "file") == 4);

  const auto longest = "/" + std::string(106, 'x');
  CHECK(refusal(at(longest + "x")).find("has 108 bytes, and the system takes at most 107.") !=
        std::string::npos);
  CHECK(refusal(at((dir / "d/") + std::string(60, 'x'))).find("No such file") != std::string::npos);

  auto options = at(dir / "s");
  options.mode = 0660;
  options.group = "no-such-group-here";
  CHECK(refusal(options) == "There is no group \"no-such-group-here\" on this system.");
  CHECK_FALSE(std::filesystem::exists(dir / "s"));
  options.mode = 0666;
  CHECK(refusal(options) == "The socket's mode is neither 0600 nor 0660.");
  if (::getuid() != 0) {
    std::filesystem::permissions(dir.path,
                                 std::filesystem::perms::owner_read | std::filesystem::perms::owner_exec);
    CHECK(refusal(at(dir / "s")).find("Permission denied") != std::string::npos);
    std::filesystem::permissions(dir.path, std::filesystem::perms::owner_all);
  }
}
