// The answer to `level`.
#pragma once

#include "shop/level_advice_words.hpp"

#include <optional>
#include <string>
#include <vector>

namespace nutward::shop {

struct LevelAsked {
  const Job& job;
  const View& view;
  const Setup& set;
  std::optional<level::Line> line{}; // only this one
  std::optional<int> slot{};         // what is known of this fret, and what to do about it
  std::string only{}; // "next": the reading to take; "call": may it be called level; "" everything
  bool all = false;   // the whole table: readings, spans still to read
};

// Throws Problem as lines_of(), and where no fret stands in the slot. Cautions of what it advises are in it.
Answer answer_of(const LevelAsked& asked);
std::vector<Give> level_gives();
// What "it rocks" is of, where the answer asks for a reading: its span and line, into what is spoken of next.
void carry_asked(Call& about, const Answer& asks);

} // namespace nutward::shop
