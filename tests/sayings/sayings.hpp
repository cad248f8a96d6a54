// Sentences with the calls that they should come to, and how near the program comes. One JSON object a line:
//
//   {"before":["…"], "say":"…", "rows":["fit"], "args":[{"job":"1","slot":"3"}], "never":["use"]}
//
// rows and args: the calls, in the order said; an argument is a text under its JSON field's name. No rows:
// nothing is to be done, whatever is answered. `either` and `either_args`: any of these will do. `unclear`:
// it must be asked about. `never`: rows that must not be done.
#pragma once

#include "shop/run.hpp"
#include "talk/names.hpp"
#include "talk/phrasebook.hpp"

#include <filesystem>
#include <map>
#include <optional>
#include <random>
#include <set>
#include <string>
#include <utility>
#include <vector>

namespace nutward::sayings {

using TextCall = std::pair<std::string, std::vector<std::pair<std::string, std::string>>>; // row, field, text
using TextCalls = std::vector<TextCall>;

struct Saying {
  int line = 0; // in its file, from 1
  std::vector<std::string> before;
  std::string say;
  std::vector<TextCalls> either; // at least one, perhaps of no calls
  std::set<std::string> never;
  bool unclear = false;
};

// Throws std::runtime_error with the line where one cannot be read.
std::vector<Saying> read_sayings(const std::filesystem::path& file);

enum class Verdict { exact, arguments, unclear, wrong_question, wrong_command };
std::string_view word_for(Verdict verdict);

struct Judged {
  Verdict verdict{};
  std::string came_to; // for a person: what was done or answered
};

// The demo shop at a standing clock (Thursday, 26 November 2026, 10:00 of its zone), a copy of which each
// sentence is said to.
class Speaker {
public:
  Speaker();
  ~Speaker();
  Judged say(const Saying& saying);
  // Words of the shop's things and of the saying's own new names, in which nobody makes a mistake here.
  std::set<std::string> names_in(const Saying& saying) const;
  // Microseconds of the understanding alone, no conversation, nothing asked of the shop.
  double understanding_us(const std::string& text);
  const talk::Phrasebook& book() const;
  const talk::Names& names() const;
  units::Instant now() const;

private:
  struct Impl;
  std::unique_ptr<Impl> impl_;
};

// The sentence with one typing mistake (a letter left out, doubled, another one, two swapped) in one of its
// words of four letters or more that is no number and none of `names`; as it is where there is no such word.
std::string mistyped(const std::string& sentence, const std::set<std::string>& names, std::mt19937& random);

} // namespace nutward::sayings
