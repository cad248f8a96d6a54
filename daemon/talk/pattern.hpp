// Phrase patterns: literal words, {parameter}, {parameter=value}, [optional], [one|other|none], (one|the
// other), <one|other> for any of these in any order, nesting.
//
//   "[please] use {piece} (in|for) slot {slot} [of {job}]"
//
// {parameter!}: as behind the parameter's own name, so that a bare number is the id of a thing;
// {parameter#}: an id and nothing else; of a length, one with its unit; of a price, one with its currency or
// cents; of a count, a number ("a" is none); of a supplier, one whom the shop knows; of a place, one that is
// known by its noun.
// {*kind}: a job, person, wire or machine, a day, a slot or a count that is said but is none of the row's
// business. {parameter=value} takes no words: it says what the argument is where the pattern matched;
// {parameter=it}: the one that the conversation knows. A pattern that is wrong (unknown parameter, unbalanced
// brackets, nothing between them) throws std::invalid_argument when it is compiled.
#pragma once

#include "shop/row.hpp"
#include "talk/lexicon.hpp"

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace nutward::talk {

struct Step {
  enum class Op : std::uint8_t { word, take, pass, set, fork, jump, accept };
  Op op = Op::accept;
  // take: right behind the parameter's own name, so a bare number is an id; set: it points
  bool plain = false;
  std::uint16_t way = 0; // take, pass: how the parameter is read (Lexicon::add_way)
  // word: its number; take, set: the parameter's index (b: 1 for an id alone; which of Phrase::values); pass:
  // the kind; fork: both ways; jump: where to
  int a = 0, b = 0;
  WordMask begins{}; // the words that can come next
};

// Of these words one must be said, or the phrase is not.
using OneOf = std::vector<int>;

struct Phrase {
  const shop::Row* row = nullptr;
  bool command = false;
  bool canonical = false; // the generated form
  std::string text;       // the pattern
  std::vector<Step> steps;
  std::vector<int> first; // the known words that it can begin with
  bool open = false;      // it can begin with a parameter
  std::size_t at = 0;     // which of its book
  std::vector<OneOf> needs{};
  WordMask first_words{};         // `first`, roughly
  std::vector<int> first_takes{}; // the steps that take a parameter with which it can begin
  bool may_be_empty = false;
  std::vector<shop::Value> values{}; // that its steps set
};

Phrase compile(const shop::Row& row, bool command, std::string_view pattern, Lexicon& lexicon);
// `name param value, param value`: the generated form of every row.
Phrase canonical(const shop::Row& row, bool command, Lexicon& lexicon);
// `use it, slot 3`, `job 12`, `define wire tall, stick 610 mm`: the first parameter without its name, where
// it is a thing that says what it is, or the name of a new one.
bool has_short_form(const shop::Row& row, bool command);
Phrase short_form(const shop::Row& row, bool command, Lexicon& lexicon);
// The same without the name, for what follows "and …" or "same for …".
Phrase replacement(const shop::Row& row, bool command, Lexicon& lexicon);

// A name of a row or parameter as the words that are said: "new-job" is "new", "job".
std::vector<std::string> words_of(std::string_view name);

} // namespace nutward::talk
