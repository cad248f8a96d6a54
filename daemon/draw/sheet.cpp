#include "draw/sheet.hpp"

#include <algorithm>

namespace nutward::draw {

namespace {

using units::millimetre;

constexpr Length title_size{4'500'000}, small{2'800'000}, between_lines{4'000'000};
constexpr Length foot{9'000'000};   // of a sheet, with the line that shows the scale
constexpr Length shown{50'000'000}; // that line

// What stands above the blocks of one sheet.
struct Head {
  std::vector<std::string> title, lines, cautions;
  Length height() const {
    return static_cast<std::int64_t>(title.size()) * Length{6'000'000} +
           static_cast<std::int64_t>(lines.size() + cautions.size()) * between_lines +
           (cautions.empty() ? Length{} : 3 * millimetre) + 3 * millimetre;
  }
};

Head head_of(const Heading& h, bool first) {
  Head out;
  out.title = wrapped(h.title, title_size, sheet_width - 30 * millimetre, 2);
  for (const std::string& text : h.cautions)
    for (std::string& line : wrapped(text, small, sheet_width - 12 * millimetre, 3))
      out.cautions.push_back(std::move(line));
  if (!first) return out;
  for (const std::string& text : h.lines)
    for (std::string& line : wrapped(text, small, sheet_width, 6))
      out.lines.push_back(std::move(line));
  return out;
}

void draw_head(Svg& svg, const Head& head, Length top, const std::string& number) {
  Length y = top;
  for (const std::string& line : head.title) {
    y += 5 * millimetre;
    svg.text({{}, y}, line, {title_size, true});
    y += millimetre;
  }
  const Length wide = width_of(number, small);
  svg.text({sheet_width - wide, top + 5 * millimetre}, number, {small});
  for (const std::string& line : head.lines) {
    y += between_lines;
    svg.text({{}, y}, line, {small});
  }
  if (head.cautions.empty()) return;
  // A frame and a mark, so that it is seen without colour.
  y += 2 * millimetre;
  const Length tall = static_cast<std::int64_t>(head.cautions.size()) * between_lines + millimetre;
  svg.rect({Length{200'000}, y, sheet_width - Length{400'000}, tall}, Fill::white, Edge::solid);
  svg.rect({Length{200'000}, y, 6 * millimetre, tall}, Fill::black, Edge::none);
  for (const std::string& line : head.cautions) {
    y += between_lines;
    svg.text({9 * millimetre, y - Length{400'000}}, line, {small, true});
  }
}

void draw_foot(Svg& svg, Length bottom) {
  const Length y = bottom - 3 * millimetre;
  svg.line({{}, y}, {shown, y}, Length{300'000});
  svg.line({{}, y - millimetre}, {{}, y + millimetre}, Length{300'000});
  svg.line({shown, y - millimetre}, {shown, y + millimetre}, Length{300'000});
  svg.text({shown + 2 * millimetre, y + millimetre}, "printed true to scale, this line is 50 mm long",
           {small});
}

} // namespace

Length room_on_sheet(const Heading& heading) {
  return sheet_height - foot - head_of(heading, false).height();
}

std::string on_sheets(const Heading& heading, const std::vector<Block>& blocks) {
  const Head first = head_of(heading, true), rest = head_of(heading, false);
  struct Sheet {
    std::vector<const Block*> blocks;
    Length used;
  };
  std::vector<Sheet> sheets{{{}, first.height()}};
  for (const Block& block : blocks) {
    // The first sheet is left to its heading where a block needs a whole one.
    if (sheets.back().used + block.height + foot > sheet_height) sheets.push_back({{}, rest.height()});
    sheets.back().blocks.push_back(&block);
    sheets.back().used += block.height;
  }
  const auto count = static_cast<std::int64_t>(sheets.size());
  const Length last = std::min(sheets.back().used + foot, sheet_height);
  Svg svg(sheet_width, (count - 1) * sheet_height + last, heading.title, heading.description);
  for (std::int64_t i = 0; i < count; ++i) {
    const Sheet& sheet = sheets[static_cast<std::size_t>(i)];
    const std::string number = "sheet " + std::to_string(i + 1) + " of " + std::to_string(count);
    const Length top = i * sheet_height;
    const Head& head = i == 0 ? first : rest;
    svg.begin(number);
    draw_head(svg, head, top, number);
    Length y = top + head.height();
    for (const Block* block : sheet.blocks) {
      block->draw(svg, y);
      y += block->height;
    }
    draw_foot(svg, i + 1 == count ? top + last : top + sheet_height);
    svg.end();
  }
  return std::move(svg).done();
}

} // namespace nutward::draw
