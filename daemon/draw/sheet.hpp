// Sheets that print true to scale on A4 and on Letter, inside the margins of either: 190 mm × 250 mm each,
// one below the other. Every sheet says what it is, carries its cautions, and has a line to check the scale
// by.
#pragma once

#include "draw/svg.hpp"

#include <functional>
#include <string>
#include <vector>

namespace nutward::draw {

inline constexpr Length sheet_width{190'000'000};
inline constexpr Length sheet_height{250'000'000};

struct Heading {
  std::string title;                 // "Cut list for job 8", shown on every sheet
  std::string description;           // for a screen reader
  std::vector<std::string> lines;    // what is to be known before beginning; on the first sheet
  std::vector<std::string> cautions; // on every sheet
};

// Something that is never broken over two sheets.
struct Block {
  Length height; // at most `room_on_sheet`
  std::function<void(Svg&, Length top)> draw;
};

// What a sheet has for blocks beside its heading; the first has `heading.lines` less.
Length room_on_sheet(const Heading& heading);

std::string on_sheets(const Heading& heading, const std::vector<Block>& blocks);

} // namespace nutward::draw
