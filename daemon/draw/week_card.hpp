// A week of the agenda: day by day, each machine and person with what is planned on it, to the hour.
#pragma once

#include "draw/sheet.hpp"

#include <cstddef>
#include <string>
#include <vector>

namespace nutward::draw {

// Minutes count from the day's 00:00 as the clock on the wall shows it.
struct WeekItem {
  std::size_t row = 0; // in WeekCard::rows
  int from = 0, to = 0;
  std::string label;  // "5": its job
  bool fixed = false; // begun or booked
};

struct WeekDay {
  std::string title; // "Thu 26 Nov"
  struct Open {
    int from = 0, to = 0;
  };
  std::vector<Open> open; // of the shop, in order
  std::vector<WeekItem> items;
};

struct WeekCard {
  Heading heading;
  std::vector<std::string> rows; // "the press", "Ines"
  std::vector<WeekDay> days;     // each with at least one opening or item
};

// Every day has the same scale, which ends with the hours that any of them needs. Closed time is grey, what
// is begun or booked has a solid edge, what is planned a dashed one. A label that does not go into its box
// stands above it.
std::string picture_of(const WeekCard& card);

} // namespace nutward::draw
