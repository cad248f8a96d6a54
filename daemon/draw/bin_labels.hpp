// Labels for the bins of the tin, to be cut out along their lines: 60 mm × 30 mm each.
#pragma once

#include "draw/sheet.hpp"

namespace nutward::draw {

struct BinLabel {
  std::string wire;  // "medium"
  std::string range; // "50 to 55 mm"
  std::string count; // "12 pieces"
  std::string place; // "drawer 2"; may be empty
};

struct LabelSheet {
  Heading heading;
  std::vector<BinLabel> labels;
};

std::string picture_of(const LabelSheet& sheet);

} // namespace nutward::draw
