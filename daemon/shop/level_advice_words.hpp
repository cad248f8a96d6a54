// What to do next at the bench, in words: what, why in one sentence, with the loads and cautions that go with
// it.
#pragma once

#include "shop/level_words.hpp"
#include "shop/levelling.hpp"
#include "shop/rows.hpp"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace nutward::shop {

std::vector<std::string_view> step_codes();    // "ask_neck" …, in the order of level::Step
std::vector<std::string_view> because_codes(); // "neck_first" …, in the order of level::Because

struct ToldAdvice {
  std::string_view step, because; // codes
  std::optional<int> slot{};      // of the fret that it is about
  std::string what;               // whole sentences
  std::string why;                // one sentence
  std::vector<Hazard> cautions{};
  std::optional<PressedAgain> press{}; // of press_again
};

struct Telling {
  const Job& job;
  const Levelling& levelling;
  const PressAgainWith& press;
  const Setup& setup;
};
ToldAdvice told(const level::Advice& advice, const Telling& telling);

std::optional<int> slot_of(const level::Step& step);

} // namespace nutward::shop
