#include "shop/nearly.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <utility>

namespace nutward::shop {

namespace {

std::string lower(std::string_view text) {
  std::string out{text};
  for (char& c : out)
    c = static_cast<char>(c >= 'A' && c <= 'Z' ? c - 'A' + 'a' : c);
  return out;
}

// Steps of one letter from one word to the other: changed, left out or put in.
std::size_t apart(std::string_view a, std::string_view b) {
  std::vector<std::size_t> row(b.size() + 1);
  for (std::size_t j = 0; j <= b.size(); ++j)
    row[j] = j;
  for (std::size_t i = 1; i <= a.size(); ++i) {
    std::size_t before = std::exchange(row[0], i);
    for (std::size_t j = 1; j <= b.size(); ++j) {
      const std::size_t same = before + (a[i - 1] == b[j - 1] ? 0 : 1);
      before = std::exchange(row[j], std::min({same, row[j] + 1, row[j - 1] + 1}));
    }
  }
  return row.back();
}

} // namespace

std::string nearly(std::string_view said, const std::vector<std::string>& all) {
  std::string out;
  std::size_t best = 3;
  for (const std::string& name : all) {
    const std::size_t d = apart(lower(said.substr(0, 60)), lower(name));
    if (d < best) best = d, out = fmt::format("Is it the {}? ", name);
  }
  return out;
}

} // namespace nutward::shop
