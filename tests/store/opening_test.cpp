// Opening a shop, and what may stand in the way of it.
#include "shop_in_a_folder.hpp"
#include "store/migrate.hpp"
#include "support/catch.hpp"

#include <SQLiteCpp/SQLiteCpp.h>

#include <fstream>
#include <map>
#include <sstream>

#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

using namespace nutward;
using namespace nutward::test;
namespace fs = std::filesystem;

namespace {

std::map<std::string, std::string> contents(const fs::path& folder) {
  std::map<std::string, std::string> out;
  for (const auto& entry : fs::directory_iterator(folder)) {
    if (entry.path().filename() == "nutward.lock") continue; // holds the number of the last process
    std::stringstream bytes;
    bytes << std::ifstream(entry.path(), std::ios::binary).rdbuf();
    out[entry.path().filename().string()] = bytes.str();
  }
  return out;
}

Problem refusal(const fs::path& home) {
  try {
    store::open_sqlite({home});
  } catch (const Problem& problem) {
    return problem;
  }
  FAIL("it was opened");
  std::abort();
}

} // namespace

TEST_CASE("a new home is made for its owner alone, and what was written is there when it is opened again") {
  Folder folder;
  const fs::path home = folder.path() / "above" / "shop";
  {
    auto sqlite = store::open_sqlite({home});
    CHECK(sqlite->write([](Tx& tx) { tx.put(a_wire()); }) == 1);
  }
  CHECK((fs::status(home).permissions() & fs::perms::all) == fs::perms::owner_all);
  CHECK((fs::status(home / "shop.db").permissions() & fs::perms::all) ==
        (fs::perms::owner_read | fs::perms::owner_write));
  auto sqlite = store::open_sqlite({home});
  CHECK(seen(*sqlite, [](const View& v) { return v.wires().all().size(); }) == 1);
  CHECK(seen(*sqlite, [](const View& v) { return v.revision(); }) == 1);
}

// A home given as one name, relative to where the daemon was started, was refused: that the folder was
// missing was taken for a failure to make the one above it, which such a name does not have.
TEST_CASE("a new home may be one name in the folder that one is in") {
  Folder folder;
  const fs::path before = fs::current_path();
  fs::current_path(folder.path());
  const bool opened = store::open_sqlite({"shop"}) != nullptr;
  fs::current_path(before);
  CHECK(opened);
  CHECK(fs::exists(folder.path() / "shop" / "shop.db"));
}

TEST_CASE("the database is in WAL mode, is stamped as a shop's, and has every table STRICT") {
  Made made;
  SQLite::Database db(made.file().string(), SQLite::OPEN_READONLY);
  CHECK(db.execAndGet("PRAGMA journal_mode").getString() == "wal");
  CHECK(db.execAndGet("PRAGMA application_id").getInt() == 0x4e545744);
  CHECK(db.execAndGet("PRAGMA user_version").getInt() == 1);
  CHECK(db.execAndGet(
              "SELECT count(*) FROM pragma_table_list WHERE schema = 'main' AND name NOT LIKE 'sqlite_%' AND "
              "type = 'table' AND strict = 0")
            .getInt() == 0);
}

TEST_CASE("a second daemon on the same home is refused and told who has it") {
  Made made;
  const Problem problem = refusal(made.home());
  CHECK(problem.fault == Fault::state);
  CHECK(problem.text.find("process " + std::to_string(::getpid())) != std::string::npos);
  made.sqlite.reset();
  CHECK(store::open_sqlite({made.home()}));
}

TEST_CASE("a newer database is refused with not one byte touched, also where only its log says so") {
  Made made;
  made.store.write([](Tx& tx) { tx.put(a_wire()); });
  made.sqlite.reset();
  SQLite::Database db(made.file().string(), SQLite::OPEN_READWRITE);
  const fs::path copy = made.folder->path() / "copy";
  SECTION("in the file") {
    db.exec("PRAGMA journal_mode = DELETE; PRAGMA user_version = 2");
    fs::copy(made.home(), copy);
  }
  SECTION("in the log, as left by a daemon that was killed") {
    db.exec("PRAGMA wal_autocheckpoint = 0; PRAGMA user_version = 2");
    fs::copy(made.home(), copy); // with the log, while it is open
    REQUIRE(fs::file_size(copy / "shop.db-wal") > 0);
    fs::remove(copy / "shop.db-shm");
  }
  const auto before = contents(copy);
  const Problem problem = refusal(copy);
  CHECK(problem.fault == Fault::state);
  CHECK(problem.text.find("newer version") != std::string::npos);
  CHECK(contents(copy) == before);
}

TEST_CASE("a file that is no database, or not a shop's, is refused untouched") {
  Folder folder;
  fs::create_directory(folder.path() / "home");
  const fs::path file = folder.path() / "home" / "shop.db";
  SECTION("text") {
    std::ofstream(file)
        << "Dear diary, this is longer than the header of a database, which is a hundred bytes, you know.";
  }
  SECTION("another program's") {
    SQLite::Database db(file.string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
    db.exec("CREATE TABLE song (name TEXT)");
  }
  const auto before = contents(file.parent_path());
  CHECK(refusal(file.parent_path()).fault == Fault::state);
  CHECK(contents(file.parent_path()) == before);
}

TEST_CASE("a start that was killed before its first migration finished is taken up again") {
  Folder folder;
  fs::create_directory(folder.path() / "home");
  const fs::path file = folder.path() / "home" / "shop.db";
  SECTION("an empty file") {
    std::ofstream(file).flush();
  }
  SECTION("a database without a table") {
    SQLite::Database db(file.string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
    db.exec("PRAGMA journal_mode = WAL; BEGIN; CREATE TABLE half (done INTEGER); ROLLBACK");
  }
  CHECK(store::open_sqlite({folder.path() / "home"})->write([](Tx& tx) { tx.put(a_wire()); }) == 1);
}

TEST_CASE("a home that cannot be made or written is refused with what would do") {
  Folder folder;
  std::ofstream(folder.path() / "file") << "in the way";
  const Problem problem = refusal(folder.path() / "file" / "shop");
  CHECK(problem.fault == Fault::broken);
  CHECK(problem.text.find("cannot be used") != std::string::npos);
  CHECK(refusal(folder.path() / "file").fault == Fault::broken);
  CHECK_FALSE(problem.would_do.empty());

  // A folder that may only be read: tried by a child that is not root, since root may write anywhere.
  const fs::path read_only = folder.path() / "read-only";
  fs::create_directory(read_only);
  fs::permissions(folder.path(), fs::perms::owner_all | fs::perms::others_read | fs::perms::others_exec);
  fs::permissions(read_only, fs::perms::owner_read | fs::perms::owner_exec | fs::perms::others_read |
                                 fs::perms::others_exec);
  const pid_t child = ::fork();
  REQUIRE(child >= 0);
  if (child == 0) {
    if (::getuid() == 0 && ::setuid(65534) != 0) ::_exit(2);
    try {
      store::open_sqlite({read_only});
      ::_exit(1);
    } catch (const Problem& refused) {
      ::_exit(refused.fault == Fault::broken ? 0 : 3);
    }
  }
  int status = 0;
  ::waitpid(child, &status, 0);
  CHECK(WIFEXITED(status));
  CHECK(WEXITSTATUS(status) == 0);
  CHECK(fs::is_empty(read_only));
  fs::permissions(read_only, fs::perms::owner_all);
}

TEST_CASE("migrating copies the old database aside first, and a migration that fails leaves the version "
          "before it") {
  Made made;
  made.store.write([](Tx& tx) { tx.put(a_wire()); });
  made.sqlite.reset();
  const auto known = store::migrations();
  REQUIRE(known.size() == 1);
  const std::vector<store::Migration> steps{
      known[0],
      {2, "ALTER TABLE wire ADD COLUMN colour TEXT; UPDATE wire SET colour = 'red'"},
      {3, "CREATE TABLE third (id INTEGER) STRICT; SELECT nothing FROM nowhere"}};
  {
    store::Connection writer(made.file().string(), store::Connection::Use::writing);
    CHECK_THROWS_AS(store::migrate(writer, made.file(), steps), Problem);
  }
  SQLite::Database now(made.file().string(), SQLite::OPEN_READONLY);
  CHECK(now.execAndGet("PRAGMA user_version").getInt() == 2);
  CHECK(now.execAndGet("SELECT colour FROM wire").getString() == "red");
  CHECK_FALSE(now.tableExists("third"));
  SQLite::Database before(made.file().string() + ".before-1", SQLite::OPEN_READONLY);
  CHECK(before.execAndGet("PRAGMA user_version").getInt() == 1);
  CHECK(before.execAndGet("SELECT name FROM wire").getString() == "medium");
}
