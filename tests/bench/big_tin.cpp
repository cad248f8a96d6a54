#include "bench/big_tin.hpp"

#include <fmt/core.h>
#include <sqlite3.h>

#include <random>
#include <stdexcept>

namespace nutward::bench {

namespace {

using namespace units::literals;

void run(sqlite3* db, const std::string& sql) {
  if (sqlite3_exec(db, sql.c_str(), nullptr, nullptr, nullptr) != SQLITE_OK)
    throw std::runtime_error(sqlite3_errmsg(db));
}

shop::Wire a_wire(int n) {
  shop::Wire w;
  w.name = fmt::format("wire {}", n);
  w.material = "nickel silver";
  w.profile.crown_width = 2.4_mm;
  w.profile.crown_height = 1.2_mm;
  w.stick = 610_mm;
  return w;
}

shop::Job a_job(int n, std::int64_t wire) {
  shop::Job j;
  j.instrument = fmt::format("instrument {}", n);
  j.board.scale = 580_mm + n * 12_mm;
  j.board.slots = 22;
  j.board.nut_width = 34_mm + n * 1_mm;
  j.board.far_width = 45_mm + n * 1_mm;
  j.board.surface = n % 3 == 0 ? board::Surface{board::Flat{}} : board::Surface{board::Cylinder{300_mm}};
  j.board.ends = n % 4 == 3 ? board::EndStyle::filed : board::EndStyle::rounded;
  for (int slot = 1; slot <= 22; ++slot)
    j.slots.push_back(slot);
  j.wire = wire;
  j.taken_in = {1'700'000'000};
  return j;
}

// The shop around the tin, by the store's own means.
std::vector<shop::Job> furnish(store::Sqlite& store) {
  std::vector<shop::Job> jobs;
  store.write([&](shop::Tx& tx) {
    for (int n = 1; n <= 4; ++n) {
      const std::int64_t wire = tx.put(a_wire(n));
      shop::Lot lot;
      lot.wire = wire;
      lot.each = 610_mm;
      lot.crown_height = 1.21_mm;
      lot.received = {1'690'000'000};
      tx.put(lot);
      for (int k = 0; k < 3; ++k) {
        shop::Job job = a_job(static_cast<int>(jobs.size()), wire);
        job.id = tx.put(job);
        jobs.push_back(std::move(job));
      }
    }
    for (std::int64_t day = 1; day <= 5; ++day)
      tx.put(shop::Weekday{day, "09:00-12:30 13:30-18:00"});
  });
  return jobs;
}

std::vector<std::string> take_away_indexes(sqlite3* db) {
  std::vector<std::string> made;
  std::vector<std::string> names;
  sqlite3_stmt* q = nullptr;
  sqlite3_prepare_v2(
      db,
      "SELECT name, sql FROM sqlite_schema WHERE type = 'index' AND tbl_name = 'piece' AND sql IS NOT NULL",
      -1, &q, nullptr);
  while (sqlite3_step(q) == SQLITE_ROW) {
    names.emplace_back(reinterpret_cast<const char*>(sqlite3_column_text(q, 0)));
    made.emplace_back(reinterpret_cast<const char*>(sqlite3_column_text(q, 1)));
  }
  sqlite3_finalize(q);
  for (const std::string& name : names)
    run(db, "DROP INDEX " + name);
  return made;
}

constexpr const char* add_piece = "INSERT INTO piece (wire, lot, kind, length_nm, measured, end_left, "
                                  "end_right, raw_ends, crown_height_nm, count, "
                                  "place, job, added_at, in_tin) VALUES (?1, ?2, ?3, ?4, 'straight', ?5, ?6, "
                                  "?7, ?8, 1, 'drawer', ?9, ?10, 1)";

void bind_piece(sqlite3_stmt* q, std::mt19937_64& random, bool held) {
  const auto below = [&](std::uint64_t n) { return static_cast<std::int64_t>(random() % n); };
  const std::int64_t wire = 1 + below(4);
  const bool of_lot = below(2) == 0, stick_end = below(4) == 0, pulled = below(50) == 0;
  const std::int64_t hundredths = stick_end ? 7000 + below(23000) : 2800 + below(4700);
  const std::int64_t raw = below(3);
  sqlite3_bind_int64(q, 1, wire);
  of_lot ? sqlite3_bind_int64(q, 2, wire) : sqlite3_bind_null(q, 2);
  sqlite3_bind_text(q, 3, pulled ? "pulled_fret" : stick_end ? "stick_end" : "short_fret", -1, SQLITE_STATIC);
  sqlite3_bind_int64(q, 4, hundredths * 10'000);
  sqlite3_bind_text(q, 5, raw > 0 ? "raw" : "dressed", -1, SQLITE_STATIC);
  sqlite3_bind_text(q, 6, raw > 1 ? "raw" : "dressed", -1, SQLITE_STATIC);
  sqlite3_bind_int64(q, 7, raw);
  of_lot ? sqlite3_bind_int64(q, 8, (1.21_mm).nm) : sqlite3_bind_null(q, 8);
  held ? sqlite3_bind_int64(q, 9, (wire - 1) * 3 + 1 + below(3)) : sqlite3_bind_null(q, 9);
  sqlite3_bind_int64(q, 10, 1'690'000'000 + below(10'000'000));
}

void fill(sqlite3* db, std::int64_t pieces) {
  run(db, "PRAGMA synchronous = OFF; PRAGMA cache_size = -200000; BEGIN IMMEDIATE");
  const std::vector<std::string> indexes = take_away_indexes(db);
  sqlite3_stmt* q = nullptr;
  if (sqlite3_prepare_v2(db, add_piece, -1, &q, nullptr) != SQLITE_OK)
    throw std::runtime_error(sqlite3_errmsg(db));
  std::mt19937_64 random(20);
  for (std::int64_t i = 0; i < pieces; ++i) {
    bind_piece(q, random, i < 48);
    if (sqlite3_step(q) != SQLITE_DONE) throw std::runtime_error(sqlite3_errmsg(db));
    sqlite3_reset(q);
  }
  sqlite3_finalize(q);
  for (const std::string& sql : indexes)
    run(db, sql);
  run(db, "COMMIT; PRAGMA wal_checkpoint(TRUNCATE)");
}

} // namespace

std::vector<Asked> BigTin::random_slots(std::size_t count) const {
  std::mt19937_64 random(count);
  std::vector<Asked> out;
  while (out.size() < count) {
    const shop::Job& job = jobs[random() % jobs.size()];
    out.push_back({job.id, job.slots[random() % job.slots.size()]});
  }
  return out;
}

BigTin make_big_tin(const std::filesystem::path& home, std::int64_t pieces) {
  BigTin out;
  out.file = home / "shop.db";
  out.store = store::open_sqlite({home});
  out.jobs = furnish(*out.store);
  sqlite3* db = nullptr;
  if (sqlite3_open(out.file.c_str(), &db) != SQLITE_OK) throw std::runtime_error("the tin cannot be opened");
  try {
    fill(db, pieces);
  } catch (...) {
    sqlite3_close(db);
    throw;
  }
  sqlite3_close(db);
  return out;
}

} // namespace nutward::bench
