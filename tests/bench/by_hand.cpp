#include "bench/by_hand.hpp"

#include <sqlite3.h>

#include <algorithm>
#include <stdexcept>
#include <string>

namespace nutward::bench {

namespace {

#define FACTS "SELECT id, kind, length_nm, raw_ends, crown_height_nm, lot, added_at, tang_nm FROM piece "
#define FREE                                                                                                 \
  "WHERE in_tin = 1 AND withdrawn = 0 AND job IS NULL AND count = 1 AND length_nm IS NOT NULL AND "          \
  "kind <> 'pulled_fret' AND wire = ?1 AND raw_ends = ?2 "

sqlite3_stmt* prepared(sqlite3* db, const char* sql) {
  sqlite3_stmt* q = nullptr;
  if (sqlite3_prepare_v3(db, sql, -1, SQLITE_PREPARE_PERSISTENT, &q, nullptr) != SQLITE_OK)
    throw std::runtime_error(std::string(sqlite3_errmsg(db)) + ": " + sql);
  return q;
}

} // namespace

ByHand::ByHand(const std::filesystem::path& file) {
  if (sqlite3_open_v2(file.c_str(), &db_, SQLITE_OPEN_READWRITE | SQLITE_OPEN_NOMUTEX, nullptr) != SQLITE_OK)
    throw std::runtime_error("the tin cannot be opened");
  up_ = prepared(db_, FACTS "INDEXED BY piece_up " FREE
                            "AND length_nm BETWEEN ?3 AND ?4 ORDER BY length_nm, added_at, id LIMIT ?5");
  down_ =
      prepared(db_, FACTS "INDEXED BY piece_down " FREE
                          "AND length_nm BETWEEN ?3 AND ?4 ORDER BY length_nm DESC, added_at, id LIMIT ?5");
  rest_ =
      prepared(db_, FACTS "INDEXED BY piece_up " FREE
                          "AND length_nm = ?3 AND (added_at, id) > (?4, ?6) ORDER BY added_at, id LIMIT ?5");
  held_ = prepared(
      db_, FACTS
      "INDEXED BY piece_held WHERE job = ?1 AND (slot IS NULL OR slot = ?2) AND wire = ?3 AND in_tin = 1 AND "
      "withdrawn = 0 AND count = 1 AND length_nm IS NOT NULL");
  sqlite3_exec(db_, "BEGIN", nullptr, nullptr, nullptr);
}

ByHand::~ByHand() {
  for (sqlite3_stmt* q : {up_, down_, rest_, held_})
    sqlite3_finalize(q);
  sqlite3_close(db_);
}

std::int64_t ByHand::read(sqlite3_stmt* q) {
  std::int64_t ids = 0;
  rows_ = 0;
  while (sqlite3_step(q) == SQLITE_ROW) {
    ids += sqlite3_column_int64(q, 0);
    seen_ = seen_ + *sqlite3_column_text(q, 1) + sqlite3_column_int64(q, 2) % 1024 +
            sqlite3_column_int(q, 3) + sqlite3_column_int64(q, 4) % 1024 + sqlite3_column_int64(q, 5) % 1024 +
            sqlite3_column_int64(q, 6) % 1024 + sqlite3_column_int64(q, 7) % 1024;
    ++rows_;
  }
  sqlite3_reset(q);
  return ids;
}

std::int64_t ByHand::run(const Probes& probes) {
  sqlite3_bind_int64(held_, 1, probes.job);
  sqlite3_bind_int(held_, 2, probes.slot);
  sqlite3_bind_int64(held_, 3, probes.wire);
  seen_ = seen_ + read(held_) % 1024;
  std::int64_t ids = 0;
  const auto go = [&](sqlite3_stmt* q, const Probe& p, std::int64_t x, std::int64_t y, std::int64_t most) {
    sqlite3_bind_int64(q, 1, probes.wire);
    sqlite3_bind_int(q, 2, p.walk.raw_ends);
    sqlite3_bind_int64(q, 3, x);
    sqlite3_bind_int64(q, 4, y);
    sqlite3_bind_int64(q, 5, most);
    ids += read(q);
  };
  for (const Probe& p : probes.pages) {
    std::int64_t low = p.walk.shortest.nm, high = p.walk.longest.nm,
                 most = static_cast<std::int64_t>(p.at_most);
    if (p.after) {
      sqlite3_bind_int64(rest_, 6, p.after->id);
      go(rest_, p, p.after->length.nm, p.after->added.s, most);
      most -= rows_;
      (p.walk.upward ? low : high) = p.after->length.nm + (p.walk.upward ? 1 : -1);
    }
    if (most > 0 && low <= high) go(p.walk.upward ? up_ : down_, p, low, high, most);
  }
  return ids;
}

} // namespace nutward::bench
