// The answer to `level` in figures.
#pragma once

#include "shop/level_asked.hpp"

#include <cstddef>
#include <vector>

namespace nutward::shop {

// `told`: of each advice; `first`: the one that the answer leads with.
Value data_of(const LevelAsked& asked, const Levelling& levelling, const std::vector<ToldAdvice>& told,
              std::size_t first);

} // namespace nutward::shop
