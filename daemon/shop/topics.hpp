// What help can be asked about besides the rows' own names: kinds of thing, each with its rows, and any word
// that a row is said with.
#pragma once

#include "shop/row.hpp"

#include <span>
#include <string_view>
#include <vector>

namespace nutward::shop {

struct Topic {
  std::string_view name;              // one word
  std::vector<std::string_view> also; // other words for it
  std::string_view what;              // "the tin: pieces that are left of frets and sticks"
  std::vector<std::string_view> rows; // questions, then commands
};

// Every row of the two lists is in exactly one of them.
std::span<const Topic> topics();
const Topic* topic_called(std::string_view word); // in lower case; nullptr where there is none

// The rows that the words say most about, the nearest first, at most `most`: by their names, what they are,
// how they are said. Empty where no row knows any of the words.
std::vector<const Row*> rows_about(std::string_view words, std::size_t most);

} // namespace nutward::shop
