// `nutward --picture FILE`: the answer drawn into a file, whole or not at all.
#include "cli/client_support.hpp"
#include "serve/door_support.hpp"
#include "support/catch.hpp"

#include <fstream>
#include <mutex>
#include <sstream>

#include <sys/stat.h>

using namespace client_support;
using door_support::RunningDoor;
using door_support::TempDir;
namespace serve = nutward::serve;

namespace {

struct Shop {
  TempDir dir;
  std::mutex mutex;
  serve::Response next{200, "image/svg+xml", "<svg/>\n", {}};
  serve::Request asked;
  RunningDoor door{options(dir), [this](const serve::Request& request, const serve::Reply& reply) {
                     const std::lock_guard lock(mutex);
                     asked = request;
                     reply(next);
                   }};

  static serve::DoorOptions options(const TempDir& dir) {
    serve::DoorOptions out;
    out.socket = dir / "nutward.sock";
    return out;
  }
  Ran ask(Words words) const {
    words.insert(words.begin(), {"--home", dir.path.string()});
    return run(words);
  }
};

std::string in_file(const std::string& path) {
  std::ifstream file(path);
  std::ostringstream out;
  out << file.rdbuf();
  return out.str();
}

} // namespace

TEST_CASE("the picture goes into the file, and nothing to standard output") {
  Shop shop;
  const std::string file = shop.dir / "cuts.svg";
  const Ran ran = shop.ask({"--picture", file, "labels", "for", "medium"});
  CHECK(ran.code == 0);
  CHECK(ran.out.empty());
  CHECK(ran.err == "Drawn in " + file + ".\n");
  CHECK(in_file(file) == "<svg/>\n");
  CHECK(shop.asked.accept == "image/svg+xml, application/problem+json");
  CHECK(shop.ask({"--quiet", "--picture", file, "labels"}).err.empty());
}

TEST_CASE("- is standard output") {
  Shop shop;
  const Ran ran = shop.ask({"labels", "--picture", "-"});
  CHECK(ran.code == 0);
  CHECK(ran.out == "<svg/>\n");
  CHECK(ran.err.empty());
}

TEST_CASE("a file that is there is replaced, with its mode, and through a link") {
  Shop shop;
  const std::string file = shop.dir / "cuts.svg", link = shop.dir / "link.svg";
  std::ofstream(file) << "old and longer than the new one";
  CHECK(::chmod(file.c_str(), 0640) == 0);
  CHECK(::symlink(file.c_str(), link.c_str()) == 0);
  CHECK(shop.ask({"--picture", link, "labels"}).code == 0);
  CHECK(in_file(file) == "<svg/>\n");
  struct stat found {};
  CHECK(::lstat(link.c_str(), &found) == 0);
  CHECK(S_ISLNK(found.st_mode));
  CHECK(::stat(file.c_str(), &found) == 0);
  CHECK((found.st_mode & 07777) == 0640);
}

TEST_CASE("where there is no picture the file that was there stays, and the reason is said") {
  Shop shop;
  shop.next = {406,
               "application/problem+json",
               R"({"title":"Not Acceptable","status":406,"detail":"That answer has no picture."})",
               {}};
  const std::string file = shop.dir / "cuts.svg";
  std::ofstream(file) << "old";
  const Ran ran = shop.ask({"--picture", file, "stock"});
  CHECK(ran.code == 1);
  CHECK_THAT(ran.err, ContainsSubstring("That answer has no picture."));
  CHECK(in_file(file) == "old");
  shop.next = {200, "application/json", R"({"kind":"stock","text":"x"})", {}};
  CHECK(shop.ask({"--picture", file, "stock"}).code == 75);
  CHECK(in_file(file) == "old");
}

TEST_CASE("a folder that is not there, and a full device, are named and leave nothing behind") {
  Shop shop;
  const Ran nowhere = shop.ask({"--picture", shop.dir / "no/where.svg", "labels"});
  CHECK(nowhere.code == 75);
  CHECK_THAT(nowhere.err, ContainsSubstring("could not be written: No such file or directory"));
  const Ran full = shop.ask({"--picture", "/dev/full", "labels"});
  CHECK(full.code == 75);
  CHECK_THAT(full.err, ContainsSubstring("No space left on device"));
}

TEST_CASE("--picture wants one sentence, and is no JSON") {
  Shop shop;
  CHECK(shop.ask({"--picture", "x.svg"}).code == 2);
  CHECK(shop.ask({"--picture", "x.svg", "--json", "labels"}).code == 2);
  CHECK(shop.ask({"labels", "--picture"}).code == 2);
}
