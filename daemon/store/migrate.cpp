#include "store/migrate.hpp"

#include "store/home.hpp"

#include <SQLiteCpp/Backup.h>
#include <SQLiteCpp/Exception.h>
#include <fmt/core.h>
#include <sqlite3.h>

#include <string>

namespace nutward::store {

using shop::Fault;
using shop::Problem;
namespace fs = std::filesystem;

namespace {

struct Stamp {
  int application = 0, version = 0, tables = 0;
};

// Opening a database in WAL mode would make an index file and fold the log into the file when it is closed. A
// heap index (locking_mode EXCLUSIVE, set before the first read) and no checkpoint on closing leave
// everything as it is, but for an empty log where there was none: that one is taken away again.
Stamp look_inside(const fs::path& file) {
  try {
    SQLite::Database db(file.string(), SQLITE_OPEN_READWRITE | SQLITE_OPEN_NOMUTEX);
    sqlite3_db_config(db.getHandle(), SQLITE_DBCONFIG_NO_CKPT_ON_CLOSE, 1, nullptr);
    db.exec("PRAGMA locking_mode = EXCLUSIVE; PRAGMA query_only = ON");
    return {db.execAndGet("PRAGMA application_id").getInt(), db.execAndGet("PRAGMA user_version").getInt(),
            db.execAndGet("SELECT count(*) FROM sqlite_master").getInt()};
  } catch (const SQLite::Exception& e) {
    if (e.getErrorCode() != SQLITE_NOTADB) throw problem_for(e.getErrorCode(), e.what());
    throw Problem(Fault::state, file.string() + " is not a database.", "/home",
                  "Give the home of a shop, or an empty folder for a new one.");
  }
}

Stamp look(const fs::path& file) {
  const fs::path log = file.string() + "-wal";
  std::error_code ignored;
  const bool logged = fs::exists(log, ignored);
  const Stamp out = look_inside(file);
  if (!logged && fs::file_size(log, ignored) == 0) fs::remove(log, ignored);
  return out;
}

int number(Connection& db, std::string_view pragma) {
  Query q = db.query(pragma);
  return q.next() ? q.get<int>() : 0;
}

void copy_aside(Connection& writer, const fs::path& file, int version) {
  const fs::path copy = file.string() + fmt::format(".before-{}", version);
  const fs::path part = copy.string() + ".part";
  std::error_code ignored;
  fs::remove(part, ignored);
  make_file(part);
  try {
    SQLite::Database to(part.string(), SQLITE_OPEN_READWRITE);
    SQLite::Backup backup(to, writer.raw());
    backup.executeStep(-1);
  } catch (const SQLite::Exception& e) {
    throw problem_for(e.getErrorCode(), e.what());
  }
  sync(part);
  std::error_code error;
  fs::rename(part, copy, error);
  if (error)
    throw Problem(Fault::broken, "The copy " + copy.string() + " could not be made: " + error.message() + ".",
                  "/home", "Look at the disk that holds the home.");
  sync(copy.parent_path());
}

void step(Connection& writer, const Migration& to) {
  writer.begin();
  try {
    writer.exec(std::string(to.sql).c_str());
    writer.exec(
        fmt::format("PRAGMA application_id = {}; PRAGMA user_version = {}", application_id, to.version)
            .c_str());
  } catch (...) {
    writer.rollback();
    throw;
  }
  writer.commit();
}

} // namespace

int version_of(const fs::path& file, int newest) {
  std::error_code error;
  const auto size = fs::file_size(file, error);
  if (error || size == 0) return 0;
  const Stamp stamp = look(file);
  if (stamp.application == 0 && stamp.version == 0 && stamp.tables == 0) return 0;
  if (stamp.application != application_id)
    throw Problem(Fault::state, file.string() + " is the database of another program.", "/home",
                  "Give the home of a shop, or an empty folder for a new one.");
  if (stamp.version > newest)
    throw Problem(
        Fault::state,
        fmt::format("{} was written by a newer version of this program (its schema is {}, this program knows "
                    "up to {}); nothing in it was touched.",
                    file.string(), stamp.version, newest),
        "/home", "Install the newer version again, or restore a backup from before it.");
  return stamp.version;
}

void migrate(Connection& writer, const fs::path& file, std::span<const Migration> steps) {
  const int version = number(writer, "PRAGMA user_version");
  if (steps.empty() || version >= steps.back().version) return;
  if (version > 0) copy_aside(writer, file, version);
  for (const Migration& to : steps)
    if (to.version > version) step(writer, to);
}

} // namespace nutward::store
