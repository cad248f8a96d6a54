// How much the words of a sentence speak for each row: a linear model over single words and pairs of
// neighbours, learnt from sentences whose call is known (tests/sayings) and from the rows' own phrases. It
// says only which row is likely, never what is done: that is laid out by frames (talk/frame.hpp), which must
// account for the words.
//
// The model is multinomial logistic regression ("softmax"; Bishop, Pattern Recognition and Machine Learning,
// 2006, section 4.3.4), its weights in hundredths. It is made by `build/learn-sayings` and compiled in.
#pragma once

#include "shop/row.hpp"
#include "talk/recognise.hpp"

#include <boost/container_hash/hash.hpp>
#include <boost/unordered/unordered_flat_map.hpp>
#include <boost/unordered/unordered_flat_set.hpp>

#include <cstdint>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace nutward::talk {

// What a sentence is to the model: its words without their endings; numbers, names and days by their kind
// ("#n", "@job"); words with their ending behind "==": "press==ed", "tin==".
using Atoms = std::vector<std::string>;
Atoms atoms_of(const Reader& in, std::size_t from, std::size_t to);
// A word without the ending that says only when or how many: "pressed" and "pressing" as "press".
std::string stem_of(std::string_view word);
// "press==ed".
std::string atom_of(std::string_view word);
// What is weighed: each atom, each pair of neighbours, how it begins and whether it asks.
std::vector<std::string> traits_of(const Atoms& atoms, bool asks);

// A row and how likely it is among all, 0 to 1. A null row: nothing is asked or ordered ("I might use it").
struct Likely {
  const shop::Row* row = nullptr;
  double share = 0;
};

class Evidence {
public:
  // The table's first line names its rows; each other line is a trait with its rows and weights. Rows that
  // are not among `rows` count for nothing. Throws std::invalid_argument where a line is wrong.
  Evidence(std::string_view table, std::span<const shop::Row* const> rows, Lexicon& lexicon);

  // Of tokens from..to-1, likeliest first, but for those ten thousand times less likely; empty where the
  // table is.
  std::vector<Likely> rank(const Reader& in, std::size_t from, std::size_t to) const;
  // Of the whole sentence; reckoned once.
  const std::vector<Likely>& rank(const Reader& in) const;
  // Whether the word was seen with this row, or with so many that it tells rows apart by nothing.
  bool knows(std::string_view word, const shop::Row& row) const;
  // Whether it was heard with this row more than with others.
  bool speaks_for(std::string_view word, const shop::Row& row) const {
    return weight_of(stem_of(word), row) > 0;
  }
  // Whether so many rows are said with it that it is no name.
  bool common(std::string_view word) const { return common_.contains(stem_of(word)); }
  // Whether it speaks for this row clearly: "not" for letting a piece go that is not needed.
  bool tells(std::string_view word, const shop::Row& row, int least = 60) const;
  // And for no other row about as much: "uid" may map one or take it away.
  bool tells_alone(std::string_view word, const shop::Row& row, int least) const;

private:
  int weight_of(const std::string& stem, const shop::Row& row) const;

  struct Weight {
    std::uint16_t row;
    std::int16_t hundredths;
  };
  struct Trait {
    std::uint32_t from = 0, to = 0; // of `weights_`
  };
  struct Hash {
    using is_transparent = void;
    std::size_t operator()(std::string_view s) const { return boost::hash<std::string_view>{}(s); }
  };
  std::vector<const shop::Row*> rows_; // the table's; nullptr for nothing, and for a row that there is not
  std::vector<bool> absent_;
  std::span<const Weight> weights(std::string_view trait) const; // none where it was never seen
  boost::unordered_flat_map<std::string, Trait, Hash, std::equal_to<>> traits_;
  std::vector<Weight> weights_;
  boost::unordered_flat_set<std::string, Hash, std::equal_to<>> common_; // words that many rows are said with
};

// The table that is compiled in.
std::string_view learnt_table();

} // namespace nutward::talk
