// Table wire_week, which follows from the movements.
#pragma once

#include "store/connection.hpp"
#include "units/instant.hpp"

#include <string_view>

namespace nutward::store {

// Adds what a movement drew, or took back; of a line that happened then, once it is joined to the movement.
void add_drawn(Connection& connection, std::int64_t movement, units::Instant happened);

// SQL that gives (where, what) for every wire whose weeks do not follow from its movements.
std::string_view wrong_drawn();

} // namespace nutward::store
