// Damage to the file of a shop is noticed (PROMISES A6): bits flipped, the end cut off, pages swapped,
// zeroed or put back as they were. SQLite has no sums over its pages; the journal's chain is what tells.
#include "bench.hpp"
#include "support/catch.hpp"

#include <SQLiteCpp/SQLiteCpp.h>
#include <fmt/format.h>

#include <algorithm>
#include <cstdlib>
#include <fstream>
#include <random>
#include <sstream>

using namespace nutward;
using namespace nutward::test;
namespace fs = std::filesystem;

namespace {

std::string bytes_of(const fs::path& file) {
  std::stringstream out;
  out << std::ifstream(file, std::ios::binary).rdbuf();
  return out.str();
}

// A shop's file after some weeks; and as it was in the middle of them.
struct Weeks {
  std::string early, late;

  Weeks() {
    Shop shop;
    for (int week = 0; week < 10; ++week) {
      if (week == 5) early = settled(shop);
      work(shop, week);
    }
    late = settled(shop);
  }

private:
  static void work(Shop& shop, int week) {
    const std::int64_t piece = 3 * week + 1;
    shop.clock.s += 7 * 86'400;
    shop.does("receive", R"({"wire": 1, "count": 2, "supplier": "Lindwurm"})");
    shop.does("add", R"({"wire": 1, "length_mm": [51.5, 60, 130], "ends": "raw", "place": "drawer 2"})");
    shop.does("new-job", R"({"wire": 1, "scale_mm": 600, "frets": 4, "nut_width_mm": 52, "far_width_mm": 52,
                             "owner": "Vida", "instrument": "test board"})");
    const std::int64_t job = week + 3;
    shop.does("hold", fmt::format(R"({{"piece": {}, "job": {}, "slot": 2}})", piece + 1, job));
    shop.does("use", fmt::format(R"({{"piece": {}, "job": {}, "slot": 2}})", piece + 1, job));
    shop.does("undo");
    shop.does("finished", fmt::format(R"({{"job": {}, "stage": "pull"}})", job));
    shop.does("pressed", fmt::format(R"({{"job": {}, "slots": "1, 3-4"}})", job), true);
    shop.does("count", R"({"wire": 1, "sticks": 11})");
  }
  static std::string settled(Shop& shop) {
    SQLite::Database(shop.made.file().string(), SQLite::OPEN_READWRITE)
        .exec("PRAGMA wal_checkpoint(TRUNCATE)");
    return bytes_of(shop.made.file());
  }
};

// Everything that the journal's chain covers, read by SQLite alone from the tables themselves; "unreadable"
// where that fails.
std::string journalled(const fs::path& file) {
  try {
    SQLite::Database db(file.string(), SQLite::OPEN_READWRITE); // with its log, if it has one
    std::string out;
    for (const char* table : {"journal", "journal_touch", "journal_about", "journal_movement", "movement"}) {
      SQLite::Statement rows(db, fmt::format("SELECT * FROM {} NOT INDEXED", table));
      while (rows.executeStep()) {
        for (int i = 0; i < rows.getColumnCount(); ++i)
          out += rows.getColumn(i).getString() + "|";
        out += "\n";
      }
      out += "----\n";
    }
    return out;
  } catch (const std::exception&) {
    return "unreadable";
  }
}

class Damage {
public:
  Damage(const Weeks& weeks, std::uint64_t seed) : weeks_(weeks), random_(seed) {}

  // The late file with one thing wrong with it; `what` says which.
  std::string next(std::string& what) {
    std::string out = weeks_.late;
    const std::size_t pages = out.size() / page;
    switch (below(8)) {
    case 0: {
      // Never to nothing, which is not noticed: an empty file is taken for a shop that was about to be made.
      const std::size_t length = below(2) == 0 ? page * (1 + below(pages - 1)) : 1 + below(out.size() - 1);
      what = fmt::format("cut off at {}", length);
      out.resize(length);
      return out;
    }
    case 1: {
      const std::size_t one = below(pages), other = below(pages);
      what = fmt::format("pages {} and {} swapped", one, other);
      std::swap_ranges(at(out, one), at(out, one + 1), at(out, other));
      return out;
    }
    case 2: {
      const std::size_t sector = below(out.size() / 512);
      what = fmt::format("sector {} zeroed", sector);
      std::fill_n(out.begin() + static_cast<std::ptrdiff_t>(sector * 512), 512, '\0');
      return out;
    }
    case 3: {
      const std::size_t old = below(weeks_.early.size() / page);
      what = fmt::format("page {} as it was weeks before", old);
      out.replace(old * page, page, weeks_.early, old * page, page);
      return out;
    }
    default: {
      const std::size_t where = below(out.size());
      const int bit = static_cast<int>(below(8));
      what = fmt::format("bit {} of byte {} flipped", bit, where);
      out[where] = static_cast<char>(static_cast<unsigned char>(out[where]) ^ (1U << bit));
      return out;
    }
    }
  }

private:
  static constexpr std::size_t page = 4096;
  std::size_t below(std::size_t n) { return static_cast<std::size_t>(random_() % n); }
  static std::string::iterator at(std::string& s, std::size_t page_number) {
    return s.begin() + static_cast<std::ptrdiff_t>(page_number * page);
  }
  const Weeks& weeks_;
  std::mt19937_64 random_;
};

// What verify says of the file, or opening it; empty where nothing was noticed.
std::string noticed(const fs::path& home) {
  try {
    const auto store = store::open_sqlite({home});
    std::string out;
    for (const auto& finding : store->verify())
      out += finding.where + ": " + finding.what + "\n";
    return out;
  } catch (const Problem& problem) {
    return problem.text;
  }
}

// Questions to a damaged shop may be refused; the program must stay.
void use(const fs::path& home) {
  try {
    const auto store = store::open_sqlite({home});
    SetClock clock;
    Rooms rooms(hours::load_zone);
    Executor executor(*store, clock, rooms);
    const Caller who{1, Role::lead, "Mara", "test"};
    for (const char* row : {"history", "jobs", "stock", "due", "balance"}) {
      try {
        executor.ask({row, {}}, who);
      } catch (const std::exception&) {
      }
    }
    Order order{
        {{"count", {{"wire", std::int64_t{1}}, {"sticks", std::int64_t{3}}}}}, who, "", "", "", {}, true};
    executor.run(order);
  } catch (const Problem&) {
  }
}

std::uint64_t count_of(const char* variable, std::uint64_t otherwise) {
  const char* text = std::getenv(variable);
  return text == nullptr ? otherwise : std::strtoull(text, nullptr, 10);
}

} // namespace

// NUTWARD_DAMAGES says how many, NUTWARD_SEED from where on.
TEST_CASE("damage to what is journalled is noticed, and crashes nothing", "[damage]") {
  const Weeks weeks;
  const Folder folder;
  const fs::path home = folder.path() / "shop", file = home / "shop.db";
  const auto make = [&](const std::string& bytes) {
    fs::remove_all(home);
    fs::create_directory(home);
    std::ofstream(file, std::ios::binary) << bytes;
  };
  make(weeks.late);
  const std::string sound = journalled(file);
  REQUIRE(sound != "unreadable");
  REQUIRE(std::count(sound.begin(), sound.end(), '\n') > 500);
  REQUIRE(noticed(home).empty());

  const std::uint64_t count = count_of("NUTWARD_DAMAGES", 100), seed = count_of("NUTWARD_SEED", 6);
  Damage damage(weeks, seed);
  std::uint64_t same = 0, hit = 0, told = 0, elsewhere_told = 0;
  std::string missed;
  for (std::uint64_t i = 0; i < count; ++i) {
    std::string what;
    const std::string bytes = damage.next(what);
    same += bytes == weeks.late ? 1 : 0;
    make(bytes);
    const std::string now = journalled(file);
    make(bytes); // as it was, whatever reading has made of it
    const bool noticed_it = !noticed(home).empty();
    if (now != sound) {
      ++hit;
      told += noticed_it ? 1 : 0;
      if (!noticed_it) missed += what + "\n";
    } else {
      elsewhere_told += noticed_it ? 1 : 0;
    }
    make(bytes);
    use(home);
  }
  const std::string sum = fmt::format(
      "{} damages ({} changed nothing): {} to journalled data, {} of them noticed; {} of the others", count,
      same, hit, told, elsewhere_told);
  if (std::getenv("NUTWARD_DAMAGES") != nullptr) WARN(sum);
  INFO(missed);
  CHECK(hit > count / 8);
  CHECK(static_cast<double>(told) >= 0.999 * static_cast<double>(hit));
}
