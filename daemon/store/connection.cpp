#include "store/connection.hpp"

#include <SQLiteCpp/Exception.h>
#include <sqlite3.h>

#include <algorithm>
#include <cerrno>

namespace nutward::store {

using shop::Fault;
using shop::Problem;

namespace {

constexpr int wait_ms = 5000;

SQLite::Database opened(const std::string& file) {
  try {
    return SQLite::Database(file, SQLITE_OPEN_READWRITE | SQLITE_OPEN_NOMUTEX, wait_ms);
  } catch (const SQLite::Exception& e) {
    throw problem_for(e.getErrorCode(), e.what());
  }
}

} // namespace

Problem problem_for(int code, const std::string& message) {
  switch (code & 0xff) {
  case SQLITE_FULL:
    return {Fault::no_room, "There is no room left on the shop's disk, so nothing was written.", "/",
            "Make room and say it again; questions are still answered."};
  case SQLITE_BUSY:
  case SQLITE_LOCKED:
    return {Fault::busy, "The shop's database is busy.", "/", "Try again in a moment."};
  default:
    return {Fault::broken, "The shop's database could not do it: " + message + ".", "/",
            "Look at the disk and at the database file, and start again."};
  }
}

Query::~Query() {
  connection_.give_back(sql_, std::move(statement_));
}

bool Query::next() {
  const int code = statement_->tryExecuteStep();
  if (code == SQLITE_ROW) return true;
  if (code != SQLITE_DONE) connection_.refuse(code, statement_->getErrorMsg());
  return false;
}

void Query::run() {
  while (next()) {
  }
}

void Query::refuse(const SQLite::Exception& e) {
  connection_.refuse(e.getErrorCode(), e.what());
}

std::size_t Query::index_of(std::string_view text, std::span<const std::string_view> words) const {
  const auto at = std::find(words.begin(), words.end(), text);
  if (at == words.end())
    connection_.refuse(SQLITE_CORRUPT, "the word '" + std::string(text) + "' stands where it has no meaning");
  return static_cast<std::size_t>(at - words.begin());
}

Connection::Connection(const std::string& file, Use use) : db_(opened(file)), use_(use) {
  sqlite3_db_config(db_.getHandle(), SQLITE_DBCONFIG_DEFENSIVE, 1, nullptr);
  sqlite3_db_config(db_.getHandle(), SQLITE_DBCONFIG_TRUSTED_SCHEMA, 0, nullptr);
  exec("PRAGMA foreign_keys = ON; PRAGMA cell_size_check = ON; PRAGMA synchronous = FULL");
  if (use == Use::reading) exec("PRAGMA query_only = ON; PRAGMA wal_autocheckpoint = 0");
}

Connection::~Connection() {
  rollback();
}

Query Connection::query(std::string_view sql) {
  if (lost_) throw *lost_;
  auto at = idle_.find(sql);
  if (at != idle_.end() && at->second) return {*this, sql, std::move(at->second)};
  try {
    return {*this, sql, std::make_unique<SQLite::Statement>(db_, std::string(sql))};
  } catch (const SQLite::Exception& e) {
    refuse(e.getErrorCode(), e.what());
  }
}

void Connection::give_back(std::string_view sql, std::unique_ptr<SQLite::Statement> statement) noexcept {
  if (!statement) return;
  statement->tryReset();
  try {
    idle_[sql] = std::move(statement);
  } catch (...) { // no memory to keep it: it is prepared anew the next time
  }
}

void Connection::exec(const char* sql) {
  if (lost_) throw *lost_;
  if (const int code = db_.tryExec(sql); code != SQLITE_OK) refuse(code, db_.getErrorMsg());
}

bool Connection::in_transaction() const {
  return sqlite3_get_autocommit(db_.getHandle()) == 0;
}

void Connection::begin() {
  lost_.reset();
  exec(use_ == Use::writing ? "BEGIN IMMEDIATE" : "BEGIN DEFERRED");
  begun_ = true;
}

void Connection::commit() {
  try {
    exec("COMMIT");
    begun_ = false;
  } catch (...) {
    rollback();
    throw;
  }
}

void Connection::rollback() noexcept {
  begun_ = false;
  if (in_transaction()) db_.tryExec("ROLLBACK");
}

void Connection::refuse(int code, const std::string& message) {
  // The index of the log is a file too: SQLite says no more of it than that it could not be written.
  if ((code & 0xff) == SQLITE_IOERR && sqlite3_system_errno(db_.getHandle()) == ENOSPC) code = SQLITE_FULL;
  Problem problem = problem_for(code, message);
  if (begun_ && !in_transaction()) lost_ = problem;
  throw problem;
}

} // namespace nutward::store
