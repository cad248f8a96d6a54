#pragma once

#include "store/connection.hpp"
#include "store/sqlite.hpp"

#include <vector>

namespace nutward::store {

// See Sqlite::verify. The connection is inside a transaction.
std::vector<Finding> verify(Connection& connection);

} // namespace nutward::store
