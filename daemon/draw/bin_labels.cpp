#include "draw/bin_labels.hpp"

#include <algorithm>

namespace nutward::draw {

namespace {

using units::millimetre;

constexpr Length wide{60'000'000}, high{30'000'000}, across{63'000'000}, down{32'000'000};
constexpr std::size_t in_a_row = 3;

void draw_label(Svg& svg, const BinLabel& label, Point at) {
  svg.begin(label.wire + ", " + label.range);
  svg.rect({at.x, at.y, wide, high}, Fill::white, Edge::dashed);
  const Length inside = wide - 6 * millimetre;
  const auto centred = [&](Length y, const std::string& text, Type type) {
    for (const std::string& line : wrapped(text, type.size, inside, 1))
      svg.text_centred({at.x + Length{wide.nm / 2}, at.y + y}, line, type);
  };
  centred(7 * millimetre, label.wire, {Length{4'000'000}, true});
  svg.line({at.x + 3 * millimetre, at.y + 9 * millimetre},
           {at.x + wide - 3 * millimetre, at.y + 9 * millimetre}, Length{300'000});
  centred(17 * millimetre, label.range, {Length{5'000'000}, true});
  centred(23 * millimetre, label.count, {Length{3'000'000}});
  centred(28 * millimetre, label.place, {Length{3'000'000}});
  svg.end();
}

} // namespace

std::string picture_of(const LabelSheet& sheet) {
  std::vector<Block> blocks;
  for (std::size_t i = 0; i < sheet.labels.size(); i += in_a_row) {
    const std::vector<BinLabel> row(
        sheet.labels.begin() + static_cast<std::ptrdiff_t>(i),
        sheet.labels.begin() + static_cast<std::ptrdiff_t>(std::min(i + in_a_row, sheet.labels.size())));
    blocks.push_back({down, [row](Svg& svg, Length top) {
                        Length x{500'000};
                        for (const BinLabel& label : row) {
                          draw_label(svg, label, {x, top});
                          x += across;
                        }
                      }});
  }
  return on_sheets(sheet.heading, blocks);
}

} // namespace nutward::draw
