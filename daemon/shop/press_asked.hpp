// The answer to `press`.
#pragma once

#include "shop/press_words.hpp"

#include <optional>
#include <string>
#include <vector>

namespace nutward::shop {

struct PressAsked {
  const Job& job;
  const Setup& set;
  const View& view;
  const PressWish& wish;
  std::vector<int> slots;        // empty: the next pass, or all
  std::optional<press::Off> off; // what if the load stood there
  std::string favour;            // "bass", "treble" or ""
  bool all = false;
};

// Throws Problem for slots that are no group, and as press_plan(). Cautions are left to the caller.
Answer answer_of(const PressAsked& asked);
std::vector<Give> press_gives();

} // namespace nutward::shop
