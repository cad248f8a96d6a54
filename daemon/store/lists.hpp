// Short lists within one column: "1,2,3" and "recheck.due,wire.low".
#pragma once

#include <string>
#include <vector>

namespace nutward::store {

std::string join(const std::vector<int>& numbers);
std::vector<int> split_numbers(const std::string& text); // throws shop::Problem{broken}
// The words hold no comma; std::logic_error otherwise.
std::string join(const std::vector<std::string>& words);
std::vector<std::string> split_words(const std::string& text);

} // namespace nutward::store
