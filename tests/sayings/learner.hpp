// Learning which words speak for which row (talk/evidence.hpp), from sentences whose call is known.
#pragma once

#include "sayings/sayings.hpp"
#include "talk/evidence.hpp"
#include "talk/phrasebook.hpp"

namespace nutward::sayings {

// One sentence to learn from: what the model sees of it, and its row; "-" where nothing is asked or ordered.
struct Lesson {
  talk::Atoms atoms;
  bool asks = false;
  std::string row;
  double weight = 1;
  std::set<std::string> words{}; // as they were said
};

// Of a sentence said in the demo shop; nullopt where it says more than one call, or leans on what was said
// before.
std::optional<Lesson> lesson_of(const Saying& saying, const talk::Phrasebook& book, const talk::Names& names);
// Some ways to say each row by its own phrases.
std::vector<Lesson> lessons_of(const talk::Phrasebook& book, int ways);
// Stochastic gradient descent on the softmax's cross entropy, in a fixed order of lessons: the same lessons
// give the same table. See talk::Evidence for what the table is.
std::string learn(const std::vector<Lesson>& lessons);

} // namespace nutward::sayings
