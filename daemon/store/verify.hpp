// The two halves of Sqlite::verify. Each takes a connection inside a transaction, and reads all of the file
// once: side by side they take as long as one.
#pragma once

#include "store/connection.hpp"
#include "store/sqlite.hpp"

#include <vector>

namespace nutward::store {

// SQLite's own checks: pages, indexes, keys.
std::vector<Finding> verify_file(Connection& connection);
// The journal's chain, and what follows from the movements.
std::vector<Finding> verify_contents(Connection& connection);

} // namespace nutward::store
