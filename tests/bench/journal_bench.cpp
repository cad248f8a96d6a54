// A long journal, and histories out of it, against the same rows by hand and against a reading of all lines.
//
//   bench_journal HOME [full]      makes HOME with 1,000,000 lines; otherwise 2,000
#include "bench/figures.hpp"
#include "bench/long_journal.hpp"
#include "hours/load_zone.hpp"
#include "shop/run.hpp"
#include "store/sqlite.hpp"

#include <sqlite3.h>

namespace nutward::bench {

namespace {

struct FixedClock : shop::Clock {
  units::Instant now() const override { return {1'900'000'000}; }
};

// One statement on a connection of its own, in SQLite's C API; gives how many rows it read.
class ByHand {
public:
  ByHand(const std::filesystem::path& file, const char* sql) {
    if (sqlite3_open_v2(file.c_str(), &db_, SQLITE_OPEN_READWRITE, nullptr) != SQLITE_OK ||
        sqlite3_prepare_v2(db_, sql, -1, &q_, nullptr) != SQLITE_OK)
      throw std::runtime_error(sqlite3_errmsg(db_));
  }
  ~ByHand() {
    sqlite3_finalize(q_);
    sqlite3_close(db_);
  }
  ByHand(const ByHand&) = delete;
  ByHand& operator=(const ByHand&) = delete;

  std::size_t run(std::int64_t id) {
    sqlite3_reset(q_);
    if (sqlite3_bind_parameter_count(q_) > 0) sqlite3_bind_int64(q_, 1, id);
    std::size_t rows = 0;
    while (sqlite3_step(q_) == SQLITE_ROW) {
      for (int column = 0; column < sqlite3_column_count(q_); ++column)
        bytes_ = bytes_ + sqlite3_column_bytes(q_, column);
      ++rows;
    }
    return rows;
  }

private:
  sqlite3* db_ = nullptr;
  sqlite3_stmt* q_ = nullptr;
  volatile std::int64_t bytes_ = 0;
};

constexpr const char* rows_of_a_job =
    "SELECT j.* FROM journal_about a JOIN journal j ON j.id = a.line WHERE a.thing = 'job' AND a.id = ?1 AND "
    "a.slot = -1 ORDER BY a.happened_at DESC, a.line DESC LIMIT 21";
constexpr const char* all_movements =
    "SELECT SUM(m.length_nm) FROM movement m JOIN journal_movement jm ON jm.movement = m.id "
    "JOIN journal j ON j.id = jm.line WHERE m.wire = 1 AND j.happened_at < 1501538400 GROUP BY m.to_place";
constexpr const char* all_lines = "SELECT said, answer FROM journal";

void ask(shop::Executor& executor, const char* param, shop::Value value) {
  const shop::Caller who{1, shop::Role::lead, "Mara", "bench"};
  const shop::Answer a = executor.ask({"history", {{param, std::move(value)}}}, who);
  if (a.next.empty()) throw std::runtime_error(std::string("a history by ") + param + " has no second page");
}

int run(const std::filesystem::path& home, bool full) {
  const LongJournal made = make_long_journal(home, full ? 1'000'000 : 2'000);
  fmt::print("A journal of {} lines, {} MB, written in {} s\n", made.lines,
             std::filesystem::file_size(home / "shop.db") / 1'000'000, made.seconds);
  const auto store = store::open_sqlite({home});
  const FixedClock clock;
  shop::Rooms rooms(hours::load_zone);
  shop::Executor executor(*store, clock, rooms);
  ByHand rows(home / "shop.db", rows_of_a_job), scan(home / "shop.db", all_lines);
  ByHand moved(home / "shop.db", all_movements);
  Times by_hand, job, person, wire, whole, saved, movements;
  for (int i = 0; i < (full ? 300 : 20); ++i) {
    const std::int64_t id = 1 + std::int64_t{i} * 7919 % made.jobs; // here and there
    by_hand.take([&] {
      if (rows.run(id) != 21) throw std::runtime_error("by hand a job has other lines");
    });
    job.take([&] { ask(executor, "job", shop::Ref{shop::Thing::job, id}); });
    person.take([&] { ask(executor, "person", std::string("Mara")); });
    wire.take([&] { ask(executor, "wire", std::string("medium")); });
  }
  // The first 17 days hold some 3,600 frets, as many as a year of a shop.
  std::int64_t frets = 0;
  for (int i = 0; i < 20; ++i) {
    movements.take([&] { moved.run(0); });
    saved.take([&] {
      const shop::Answer a =
          executor.ask({"saved", {{"month", std::string("july")}, {"year", std::int64_t{2017}}}},
                       {1, shop::Role::lead, "Mara", "bench"});
      const auto& data = std::get<std::shared_ptr<const shop::Node>>(a.data);
      frets = std::get<std::int64_t>(*data->find("frets"));
    });
  }
  for (int i = 0; i < 3; ++i)
    whole.take([&] {
      if (scan.run(0) != static_cast<std::size_t>(made.lines))
        throw std::runtime_error("a reading of all lines missed some");
    });
  print_times("the rows of a job's page by hand in SQLite's C API", by_hand);
  print_times("the whole question, history of a job (target 10 ms)", job);
  print_times("history of the person who said all of it", person);
  print_times("history of the wire that all of it is about", wire);
  print_times("a reading of all lines", whole);
  print_times(fmt::format("what the tin saved with {} frets", frets).c_str(), saved);
  print_times("sums over the movements by the time of their lines, by hand", movements);
  print_ratio("what the tin saved over those sums", saved, movements, 2);
  print_ratio("history of a job over its rows by hand", job, by_hand, 10);
  print_ratio("history of a job over a reading of all lines", job, whole, 0.01);
  print_ratio("history of a person over that of a job", person, job, 2);
  print_ratio("history of a wire over that of a job", wire, job, 2);
  return 0;
}

} // namespace

} // namespace nutward::bench

int main(int argc, char** argv) {
  try {
    if (argc < 2) throw std::runtime_error("say where the shop is to be made");
    return nutward::bench::run(argv[1], nutward::bench::full_size(argc, argv));
  } catch (const std::exception& e) {
    fmt::print(stderr, "bench_journal: {}\n", e.what());
  }
  return 1;
}
