// What an answer's numbers lean on: settings of the shop, whose defaults are common practice. Said when
// somebody asks why.
#pragma once

#include "shop/store.hpp"

#include <span>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace nutward::shop {

// The settings that a row leans on, by the row's name; none for most.
std::span<const std::string_view> leans_on(std::string_view row);

// Every setting that some row leans on, with its value now.
std::vector<std::pair<std::string, std::string>> leaned_on(const View& view);

// "It leans on the shop's settings: setback 0.25 mm, …"; "" for a row that leans on none. `settings`: as
// leaned_on gives them.
std::string words_of_leaning(std::string_view row,
                             std::span<const std::pair<std::string, std::string>> settings);

} // namespace nutward::shop
