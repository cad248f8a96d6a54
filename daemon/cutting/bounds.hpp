// Quick bounds on the sticks that a packing must open.
#pragma once

#include "cutting/pack.hpp"

namespace nutward::cutting {

// The sticks that frets whose sizes add up to at least `sizes` need: the longest first, after all coils and
// blanks.
std::int64_t sticks_by_sum(const Task& task, std::int64_t sizes);
// The wire that is taken for them if so many sticks are opened.
std::int64_t taken_by_sum(const Task& task, std::int64_t sizes, std::int64_t sticks);

// Where all wire is sticks alike and `sticks` of them leave no rest that could be kept: all that they are
// long. Else 0.
std::int64_t all_taken(const Task& task, std::int64_t sizes, std::int64_t sticks);

// The least number of rooms of one size for these lots: the best of dual feasible functions. Those of
// Martello and Toth (L2: Discrete Appl. Math. 28 (1990) 59) and of Fekete and Schepers (u^(k), and u^(k)
// after L2's: Math. Program. 91 (2001) 11). Sizes at most the room.
std::int64_t bound_by_functions(const std::vector<Lot>& lots, std::int64_t room);

} // namespace nutward::cutting
