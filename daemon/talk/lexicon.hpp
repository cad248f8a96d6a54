// The words that the patterns know, as numbers, and which of them a typed word may be.
#pragma once

#include "talk/normalise.hpp"

#include <map>
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

class Lexicon {
public:
  int add(std::string_view word);        // its number; the same for the same word
  int find(std::string_view word) const; // -1 where it is not known
  const std::string& word(int id) const { return words_[static_cast<std::size_t>(id)]; }
  std::size_t size() const { return words_.size(); }
  // What the token is (distance 0, singular and plural alike), or, for a word that nobody knows, what it may
  // be meant to be. Numbers and quotations are what they are.
  std::vector<Near> near(const Token& token) const;

private:
  std::map<std::string, int, std::less<>> ids_;
  std::vector<std::string> words_;
};

} // namespace nutward::talk
