#include "cli/words.hpp"

#include <algorithm>
#include <numeric>

namespace nutward::cli {
namespace {

char lower(char c) {
  return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
}

// Bytes in which two texts agree, capitals aside; never ends inside a UTF-8 character.
std::size_t agreeing(std::string_view a, std::string_view b) {
  std::size_t at = 0;
  while (at < a.size() && at < b.size() && lower(a[at]) == lower(b[at]))
    ++at;
  while (at > 0 && at < a.size() && (static_cast<unsigned char>(a[at]) & 0xc0) == 0x80)
    --at;
  return at;
}

std::string_view last_word(std::string_view text) {
  return text.substr(text.find_last_of(" \t,") + 1); // npos + 1 is 0
}

bool same(std::string_view a, std::string_view b) {
  return a.size() == b.size() && agreeing(a, b) == a.size();
}

using Lists = std::vector<const std::vector<std::string>*>;

Lists lists_for(std::string_view earlier, bool typing, const Vocabulary& v) {
  while (!earlier.empty() && (earlier.back() == ' ' || earlier.back() == '\t'))
    earlier.remove_suffix(1);
  if (earlier.empty()) return {&v.rows, typing ? &v.openings : nullptr, typing ? &v.names : nullptr};
  const auto previous = last_word(earlier);
  if (same(previous, "help")) return {&v.rows};
  if (same(previous, "job")) return {&v.jobs};
  if (same(previous, "wire") || (same(previous, "of") && !typing)) return {&v.wires};
  if (!typing) return {};
  return {&v.openings, &v.others, &v.wires, &v.names};
}

} // namespace

Completion complete(std::string_view before, const Vocabulary& vocabulary) {
  Completion out;
  const auto word = last_word(before);
  out.typed = word.size();
  const auto earlier = before.substr(0, before.size() - word.size());
  for (const auto* list : lists_for(earlier, !word.empty(), vocabulary))
    for (const auto& candidate : list != nullptr ? *list : std::vector<std::string>{})
      if (candidate.size() >= word.size() && agreeing(word, candidate) == word.size())
        out.candidates.push_back(candidate);
  std::sort(out.candidates.begin(), out.candidates.end());
  out.candidates.erase(std::unique(out.candidates.begin(), out.candidates.end()), out.candidates.end());
  if (out.candidates.empty()) return out;
  out.common = out.candidates.front();
  for (const auto& candidate : out.candidates)
    out.common.resize(agreeing(out.common, candidate));
  return out;
}

void add_example(const std::string& example, Vocabulary& vocabulary) {
  bool first = true;
  for (std::size_t at = 0; at < example.size();) {
    const auto end = std::min(example.find_first_of(" ,;:.?'", at), example.size());
    const auto word = example.substr(at, end - at);
    at = end + 1;
    const bool letters =
        std::all_of(word.begin(), word.end(), [](char c) { return (c >= 'a' && c <= 'z') || c == '-'; });
    if (letters && word.size() >= 2) (first ? vocabulary.openings : vocabulary.others).push_back(word);
    first = false;
  }
}

std::string in_columns(const std::vector<std::string>& words, std::size_t width) {
  const auto width_of = [](const std::string& word) {
    return static_cast<std::size_t>(std::count_if(
        word.begin(), word.end(), [](char c) { return (static_cast<unsigned char>(c) & 0xc0) != 0x80; }));
  };
  const auto widest =
      std::accumulate(words.begin(), words.end(), std::size_t{0},
                      [&](std::size_t most, const auto& word) { return std::max(most, width_of(word)); });
  const auto a_line = std::max<std::size_t>(1, width / (widest + 2));
  std::string out;
  for (std::size_t i = 0; i < words.size(); ++i) {
    const bool last = (i + 1) % a_line == 0 || i + 1 == words.size();
    out += words[i] + (last ? "\n" : std::string(widest + 2 - width_of(words[i]), ' '));
  }
  return out;
}

} // namespace nutward::cli
