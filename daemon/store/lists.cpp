#include "store/lists.hpp"

#include "store/connection.hpp"

#include <fmt/ranges.h>
#include <sqlite3.h>

#include <charconv>
#include <stdexcept>

namespace nutward::store {

std::string join(const std::vector<int>& numbers) {
  return fmt::format("{}", fmt::join(numbers, ","));
}

std::string join(const std::vector<std::string>& words) {
  for (const std::string& word : words)
    if (word.empty() || word.find(',') != std::string::npos)
      throw std::logic_error("'" + word + "' cannot be kept in a list of words");
  return fmt::format("{}", fmt::join(words, ","));
}

std::vector<std::string> split_words(const std::string& text) {
  std::vector<std::string> out;
  for (std::size_t from = 0; from < text.size();) {
    const std::size_t to = std::min(text.find(',', from), text.size());
    out.push_back(text.substr(from, to - from));
    from = to + 1;
  }
  return out;
}

std::vector<int> split_numbers(const std::string& text) {
  std::vector<int> out;
  for (const std::string& word : split_words(text)) {
    int value = 0;
    const char* end = word.data() + word.size();
    if (const auto [at, error] = std::from_chars(word.data(), end, value); error != std::errc{} || at != end)
      throw problem_for(SQLITE_CORRUPT, "'" + text + "' is no list of slots");
    out.push_back(value);
  }
  return out;
}

} // namespace nutward::store
