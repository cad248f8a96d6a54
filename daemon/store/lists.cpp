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

namespace {

template <class Number>
Number number(std::string_view word, const std::string& whole, const char* what) {
  Number value = 0;
  const char* end = word.data() + word.size();
  if (const auto [at, error] = std::from_chars(word.data(), end, value); error != std::errc{} || at != end)
    throw problem_for(SQLITE_CORRUPT, "'" + whole + "' is no list of " + what);
  return value;
}

constexpr std::string_view at_slot = "slot ";

std::string kept(const board::Spot& spot) {
  if (const int* slot = std::get_if<int>(&spot)) return fmt::format("{}{}", at_slot, *slot);
  return std::to_string(std::get<units::Length>(spot).nm);
}

} // namespace

std::vector<int> split_numbers(const std::string& text) {
  std::vector<int> out;
  for (const std::string& word : split_words(text))
    out.push_back(number<int>(word, text, "slots"));
  return out;
}

std::string join(const std::vector<std::int64_t>& ids) {
  return fmt::format("{}", fmt::join(ids, ","));
}

std::vector<std::int64_t> split_ids(const std::string& text) {
  std::vector<std::int64_t> out;
  for (const std::string& word : split_words(text))
    out.push_back(number<std::int64_t>(word, text, "ids"));
  return out;
}

std::string join(const std::vector<units::Length>& lengths) {
  std::vector<std::int64_t> numbers;
  for (const units::Length v : lengths)
    numbers.push_back(v.nm);
  return fmt::format("{}", fmt::join(numbers, ","));
}

std::vector<units::Length> split_lengths(const std::string& text) {
  std::vector<units::Length> out;
  for (const std::string& word : split_words(text))
    out.push_back({number<std::int64_t>(word, text, "lengths")});
  return out;
}

std::string join(const std::vector<board::MeasuredWidth>& widths) {
  std::vector<std::string> words;
  for (const board::MeasuredWidth& w : widths)
    words.push_back(fmt::format("{}:{}", kept(w.at), w.width.nm));
  return join(words);
}

std::vector<board::MeasuredWidth> split_widths(const std::string& text) {
  constexpr const char* what = "widths";
  std::vector<board::MeasuredWidth> out;
  for (const std::string& word : split_words(text)) {
    const std::size_t colon = std::min(word.find(':'), word.size());
    const std::string_view at = std::string_view(word).substr(0, colon);
    const std::string_view width = std::string_view(word).substr(std::min(colon + 1, word.size()));
    board::MeasuredWidth& w = out.emplace_back();
    if (at.starts_with(at_slot))
      w.at = number<int>(at.substr(at_slot.size()), text, what);
    else
      w.at = units::Length{number<std::int64_t>(at, text, what)};
    w.width.nm = number<std::int64_t>(width, text, what);
  }
  return out;
}

std::string join(const std::vector<press::Stretch>& stretches) {
  std::vector<std::string> words;
  for (const press::Stretch& s : stretches)
    words.push_back(fmt::format("{}:{}", s.from.nm, s.to.nm));
  return join(words);
}

std::vector<press::Stretch> split_stretches(const std::string& text) {
  constexpr const char* what = "stretches";
  std::vector<press::Stretch> out;
  for (const std::string& word : split_words(text)) {
    const std::size_t colon = std::min(word.find(':'), word.size());
    const std::string_view from = std::string_view(word).substr(0, colon);
    const std::string_view to = std::string_view(word).substr(std::min(colon + 1, word.size()));
    out.push_back({{number<std::int64_t>(from, text, what)}, {number<std::int64_t>(to, text, what)}});
  }
  return out;
}

} // namespace nutward::store
