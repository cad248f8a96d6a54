// The Store in one SQLite file, HOME/shop.db (write-ahead log, every commit synced).
//
// One connection writes and checkpoints; every other one only reads, each from one snapshot. The home is
// locked before anything in it is looked at, and until the Store is destroyed.
#pragma once

#include "shop/store.hpp"

#include <filesystem>
#include <memory>
#include <string>
#include <vector>

namespace nutward::store {

struct Options {
  std::filesystem::path home;
  std::int64_t most_pages = 0; // of 4096 bytes that the file may grow to; 0: as the disk allows
};

// Something that verify found wrong.
struct Finding {
  std::string where; // "journal line 12", "piece 7", "database"
  std::string what;  // a whole sentence
};

class Sqlite : public shop::Store {
public:
  // Recomputes the journal's chain and everything that follows from the ledger, and lets SQLite check its
  // file. Reads from one snapshot beside all else; takes time in proportion to the file. Empty where all is
  // well. Thread-safe.
  virtual std::vector<Finding> verify() = 0;
};

// Makes the home (0700) and the database where they are missing, brings an older one up to date (a copy stays
// beside it), and refuses a newer one without touching a byte of it.
//
// Throws shop::Problem. state: another daemon has the home; the database is newer, or not a shop's. broken:
// the home cannot be made or written, or the database cannot be read. no_room: the disk is full.
//
// What the Store adds to shop::Store: a write whose body changed nothing leaves the revision as it is and
// calls nobody. The listener is called without any lock held, so it may read and write; where several threads
// write, revisions may reach it out of order.
std::unique_ptr<Sqlite> open_sqlite(const Options& options);

} // namespace nutward::store
