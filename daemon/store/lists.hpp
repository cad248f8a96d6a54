// Short lists within one column: "1,2,3" and "recheck.due,wire.low".
#pragma once

#include "board/board.hpp"
#include "press/crowns.hpp"

#include <string>
#include <vector>

namespace nutward::store {

std::string join(const std::vector<int>& numbers);
std::vector<int> split_numbers(const std::string& text); // throws shop::Problem{broken}
std::string join(const std::vector<std::int64_t>& ids);
std::vector<std::int64_t> split_ids(const std::string& text); // throws shop::Problem{broken}
// The words hold no comma; std::logic_error otherwise.
std::string join(const std::vector<std::string>& words);
std::vector<std::string> split_words(const std::string& text);
// In nanometres: "36370000,70699000". These two throw shop::Problem{broken} as well.
std::string join(const std::vector<units::Length>& lengths);
std::vector<units::Length> split_lengths(const std::string& text);
// Where and how wide: "slot 5:46100000,480000000:56200000".
std::string join(const std::vector<board::MeasuredWidth>& widths);
std::vector<board::MeasuredWidth> split_widths(const std::string& text);
// From where to where, in nanometres: "350000000:372000000".
std::string join(const std::vector<press::Stretch>& stretches);
std::vector<press::Stretch> split_stretches(const std::string& text);

} // namespace nutward::store
