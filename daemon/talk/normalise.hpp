// A sentence as tokens: folded to lower case, numbers in words as digits, typographic marks as plain ones.
// Each token keeps the bytes of the original that it stands for, so that names and notes come out as they
// were typed.
#pragma once

#include <cstddef>
#include <optional>
#include <stdexcept>
#include <string>
#include <string_view>
#include <vector>

namespace nutward::talk {

inline constexpr std::size_t most_bytes = 4000; // of a sentence

// The text cannot be a sentence: too long, not UTF-8, control characters. what(): a whole sentence for a
// person.
struct BadText : std::runtime_error {
  BadText(const std::string& what, std::string remedy)
      : std::runtime_error(what), would_do(std::move(remedy)) {}
  std::string would_do;
};

struct Token {
  enum class Kind { word, number, symbol, quoted };
  Kind kind = Kind::word;
  std::string word;     // folded, as said: "three", "3rd", ","; of a quoted one the text inside, not folded
  std::string number{}; // in digits, as units/read takes it: "22", "2 1/16"; empty for what is no number
  std::optional<int> ordinal{};             // "third", "3rd"
  std::size_t begin = 0, end = 0;           // bytes of the original
  std::size_t flat_begin = 0, flat_end = 0; // bytes of Sentence::flat
  bool glued = false;                       // nothing stood between it and the token before

  bool is(std::string_view w) const { return kind != Kind::quoted && word == w; }
  bool is_number() const { return !number.empty(); }
};

struct Sentence {
  std::string original;
  std::string flat; // the tokens as one text, for units::scan_length and its like
  std::vector<Token> tokens;
  bool asks = false; // ended in a question mark

  std::string_view said(std::size_t from, std::size_t to) const; // the original text of tokens from..to-1
};

// Throws BadText. An empty text gives no tokens.
Sentence normalise(std::string_view text);
// Lower case, each letter with its accents as one character, as far as Unicode has them, and nothing that has
// no shape; a text with invalid bytes keeps them, and its accents as they are.
std::string fold(std::string_view text);

// Part of normalise: joins words that are one number ("twenty two", "two and one sixteenth") into one token.
void join_numbers(std::vector<Token>& tokens);
// "3rd", "third", "twenty second" (one word of it): its number.
std::optional<int> ordinal_word(std::string_view word);

} // namespace nutward::talk
