// Matching: which phrases take the whole sentence, and what their parameters then are. Words may be left over
// only if they are fillers. Work is bounded by a number of steps, not by time.
#pragma once

#include "talk/pattern.hpp"
#include "talk/recognise.hpp"

#include <vector>

namespace nutward::talk {

class Phrasebook;

struct Match {
  const Phrase* phrase = nullptr;
  std::vector<std::pair<int, Said>> args; // the parameter's index and what was said for it
  int distance = 0;                       // typing mistakes
  int worst = 0;                          // those of the word that has most
  int loose = 0;                          // tokens taken as they are
  int skipped = 0;                        // fillers left out, and words in the other number
  int literals = 0;                       // words of the pattern that were there
  std::size_t begin = 0, end = 0;         // of match_part: the tokens that it took

  bool pointing() const;
};

// An id, or a list of nothing but ids.
bool is_id(const shop::Value& v);
// The same value, lists and records by what is in them.
bool same_value(const shop::Value& a, const shop::Value& b);

// How near a match is to what was said: less is nearer.
bool nearer(const Match& a, const Match& b);

enum class Spelling { exact, mistyped };

// All matches of one phrase that begin at token `from`; at most 40.
std::vector<Match> match(const Phrase& phrase, std::size_t from, Spelling spelling, const Reader& in);
// The same, but taking only a part of what stands from token `from` to `to`.
std::vector<Match> match_part(const Phrase& phrase, std::size_t from, std::size_t to, Spelling spelling,
                              const Reader& in);
// All matches of all phrases that take the sentence from token `from` on, nearest first.
std::vector<Match> match_all(const Phrasebook& book, Spelling spelling, const Reader& in,
                             std::size_t from = 0);
// Where the sentence begins behind "I", "we have" and the like; 0 where it has none.
std::size_t behind_subject(const Reader& in);
bool skippable(std::size_t i, const Reader& in);

} // namespace nutward::talk
