// The words that the patterns know, as numbers, and which of them a typed word may be. Whatever is looked for
// in every sentence is found by a hash; a mistyped word is compared only with the words that it can be.
#pragma once

#include "talk/normalise.hpp"

#include <boost/container/small_vector.hpp>
#include <boost/unordered/unordered_flat_map.hpp>

#include <array>
#include <cstdint>
#include <deque>
#include <string>
#include <string_view>
#include <vector>

namespace nutward::talk {

// A known word that a token is, or may be with `distance` typing mistakes.
struct Near {
  int id = 0;
  int distance = 0;
  bool plural = false; // the same word in the other number
};

// Words that may be left out of a sentence or stand in it without a pattern's naming them: articles,
// prepositions, commas. Never a negation, never "or".
bool is_filler(const Token& token);
// Common words, and the trade's, that are right as they stand: they are never taken for a misspelt other
// word.
bool is_english(std::string_view word);

// What a token may be: first what it is, then what it may be meant to be, by the words' numbers.
using NearWords = boost::container::small_vector<Near, 4>;

// Some of the known words, roughly: whoever is in it is found in it, and few others are. Its last bit is no
// word's: `all` meets even what has no words, if that has the bit.
struct WordMask {
  std::uint64_t bits = 0;

  static constexpr WordMask all() { return {~std::uint64_t{0}}; }
  static constexpr WordMask of(int id) { return {std::uint64_t{1} << (id % 63)}; }
  static constexpr WordMask none() { return {std::uint64_t{1} << 63}; }
  constexpr WordMask operator|(WordMask other) const { return {bits | other.bits}; }
  constexpr bool meets(WordMask other) const { return (bits & other.bits) != 0; }
};

class Lexicon {
public:
  Lexicon() = default;
  Lexicon(const Lexicon&) = delete;
  Lexicon& operator=(const Lexicon&) = delete;
  int add(std::string_view word);        // its number; the same for the same word
  int find(std::string_view word) const; // -1 where it is not known
  const std::string& word(int id) const { return words_[static_cast<std::size_t>(id)]; }
  std::size_t size() const { return words_.size(); }
  // What the token is (distance 0, singular and plural alike), or, for a word that nobody knows, what it may
  // be meant to be. Numbers and quotations are what they are.
  NearWords near(const Token& token) const;

  // The ways in which parameters are read, as numbers like the words: the same for the same key
  // (talk/recognise.hpp, read_as).
  int add_way(const std::string& key);
  std::size_t ways() const { return ways_.size(); }

private:
  // What is known of a word without looking at it: see `letters_of` in the .cpp.
  struct Known {
    std::uint64_t letters = 0;
    std::size_t size = 0;
    int id = 0;
  };
  void find_plurals(std::string_view word, NearWords& out) const;
  void find_mistyped(std::string_view word, NearWords& out) const;

  std::deque<std::string> words_; // never moved: the keys below are views of them
  boost::unordered_flat_map<std::string_view, int> ids_;
  std::array<std::vector<Known>, 256> by_first_;                          // by the first byte
  boost::unordered_flat_map<std::string_view, std::vector<int>> by_rest_; // by all but the first byte
  boost::unordered_flat_map<std::string, int> ways_;
};

} // namespace nutward::talk
