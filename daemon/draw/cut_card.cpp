#include "draw/cut_card.hpp"

#include <algorithm>

namespace nutward::draw {

namespace {

using units::millimetre;

constexpr Length left_edge{1'000'000};
constexpr Length room{160'000'000}; // for a bar; beside it a label of its end has its place
constexpr Length tall{8'000'000};   // a bar
constexpr Length title_size{3'200'000}, small{2'800'000}, step{3'600'000}, text_gap{1'500'000};
constexpr Length shortest_rest{18'000'000}; // of what is kept and drawn with a break

struct Laid {
  const Part* part = nullptr;
  Length x, width;
  bool broken = false;
};

// A text that begins at x, `level` lines away from the bar.
struct Label {
  Length x;
  std::string text;
  std::int64_t level = 0;
};

struct Row {
  std::vector<Laid> parts;
  std::vector<Label> above{}, below{};
  std::int64_t levels_above = 0, levels_below = 0;
};

struct Layout {
  int scale = 1;
  std::vector<Row> rows;
};

int scale_of(const Bar& bar) {
  Length whole, longest;
  for (const Part& p : bar.parts) {
    const bool kept = p.kind == PartKind::kept;
    const Length drawn = kept ? std::min(p.length, shortest_rest) : p.length;
    whole += drawn;
    longest = std::max(longest, drawn);
  }
  if (whole <= room) return 1;
  int scale = 2;
  while (Length{longest.nm / scale} > room)
    ++scale;
  return scale;
}

// Parts one after the other, going on in another row where one is full; a cut stays with what is before it.
std::vector<Row> rows_of(const Bar& bar, int scale) {
  std::vector<Row> out(1);
  Length x = left_edge;
  for (const Part& p : bar.parts) {
    const bool kept = p.kind == PartKind::kept;
    Laid one{&p, x, Length{p.length.nm / scale}, false};
    const Length beside = left_edge + room - x;
    const Length wants = kept ? std::min(one.width, shortest_rest) : one.width;
    if (wants > beside && p.kind != PartKind::cut && !out.back().parts.empty()) {
      out.emplace_back();
      x = one.x = left_edge;
    }
    if (kept && one.width > left_edge + room - x) one.width = left_edge + room - x, one.broken = true;
    x += one.width;
    out.back().parts.push_back(one);
  }
  return out;
}

// From the right: each climbs over all that begin within its own width, so that neither texts nor the lines
// down to the bar touch another text.
std::int64_t climb(std::vector<Label>& labels) {
  std::int64_t levels = 0;
  for (std::size_t i = labels.size(); i-- > 0;) {
    const Length end = labels[i].x + width_of(labels[i].text, small) + text_gap;
    for (std::size_t j = i + 1; j < labels.size() && labels[j].x < end; ++j)
      labels[i].level = std::max(labels[i].level, labels[j].level + 1);
    levels = std::max(levels, labels[i].level + 1);
  }
  return levels;
}

bool fits_inside(const Laid& one) {
  return width_of(one.part->label, small) + millimetre <= one.width;
}

void add_labels(Row& row) {
  for (const Laid& one : row.parts) {
    if (!one.part->label.empty() && !fits_inside(one))
      row.above.push_back({one.x + Length{one.width.nm / 2}, one.part->label});
    if (!one.part->mark.empty()) row.below.push_back({one.x + one.width, one.part->mark});
  }
  row.levels_above = climb(row.above);
  row.levels_below = climb(row.below);
}

void draw_part(Svg& svg, const Laid& one, Length y) {
  const Box box{one.x, y, one.width, tall};
  const Length hair{200'000};
  switch (one.part->kind) {
  case PartKind::cut:
    svg.rect({box.x, y - millimetre, std::max(box.width, hair), tall + 2 * millimetre}, Fill::black,
             Edge::none);
    return;
  case PartKind::fret:
    svg.rect(box, one.part->other ? Fill::grey : Fill::white, one.part->other ? Edge::dashed : Edge::solid);
    break;
  case PartKind::flat: // lines along it
    svg.rect(box, Fill::white, Edge::solid);
    for (int i = 1; i < 4; ++i)
      svg.line({box.x, y + i * Length{tall.nm / 4}}, {box.x + box.width, y + i * Length{tall.nm / 4}}, hair);
    break;
  case PartKind::scrap: // crossed out
    svg.rect(box, Fill::white, Edge::dashed);
    svg.line({box.x, y}, {box.x + box.width, y + tall}, hair);
    svg.line({box.x, y + tall}, {box.x + box.width, y}, hair);
    break;
  case PartKind::kept: // a second line above and below
    svg.rect(box, Fill::white, Edge::solid);
    svg.line({box.x, y + millimetre}, {box.x + box.width, y + millimetre}, hair);
    svg.line({box.x, y + tall - millimetre}, {box.x + box.width, y + tall - millimetre}, hair);
    break;
  }
  if (one.broken) {
    const Length x = box.x + box.width - 5 * millimetre;
    svg.rect({x, y - hair, 2 * millimetre, tall + 2 * hair}, Fill::white, Edge::none);
    for (const Length at : {x, x + 2 * millimetre})
      svg.line({at - millimetre, y + tall + millimetre}, {at + millimetre, y - millimetre}, hair);
  }
  if (!one.part->label.empty() && fits_inside(one)) {
    const Length wide = width_of(one.part->label, small);
    const Point at{box.x + Length{(box.width - wide).nm / 2}, y + Length{tall.nm / 2} + millimetre};
    if (one.part->kind != PartKind::fret)
      svg.rect({at.x, at.y - 3 * millimetre, wide, 4 * millimetre}, Fill::white, Edge::none);
    svg.text(at, one.part->label, {small, one.part->kind == PartKind::fret && !one.part->other});
  }
}

constexpr Length row_gap{5'000'000};

Length height_of(const Row& row) {
  return (row.levels_above + row.levels_below) * step + tall + row_gap;
}

void draw_row(Svg& svg, const Row& row, Length top) {
  const Length floor = top + millimetre + row.levels_above * step; // of the labels above
  const Length bar = floor + millimetre;
  for (const bool cuts : {false, true}) // cuts last, over what they part
    for (const Laid& one : row.parts)
      if ((one.part->kind == PartKind::cut) == cuts) draw_part(svg, one, bar);
  for (const Label& l : row.above) {
    const Length base = floor - l.level * step;
    svg.line({l.x, base - step + millimetre}, {l.x, bar + millimetre}, Length{150'000});
    svg.text({l.x + Length{500'000}, base - Length{600'000}}, l.text, {small});
  }
  for (const Label& l : row.below) {
    const Length base = bar + tall + (l.level + 1) * step;
    svg.line({l.x, bar + tall}, {l.x, base}, Length{150'000});
    svg.text({l.x + Length{500'000}, base}, l.text, {small, true});
  }
}

struct Texts {
  std::vector<std::string> title, then;
};

void draw_bar(Svg& svg, const Bar& bar, const std::vector<Row>& rows, const Texts& texts, Length top) {
  svg.begin(bar.title);
  Length y = top;
  for (const std::string& line : texts.title) {
    y += 4 * millimetre;
    svg.text({{}, y}, line, {title_size, true});
  }
  for (const Row& row : rows) {
    draw_row(svg, row, y);
    y += height_of(row);
  }
  for (const std::string& line : texts.then) {
    y += 4 * millimetre;
    svg.text({{}, y}, line, {small});
  }
  svg.end();
}

// A bar over more rows than a sheet holds becomes several blocks; the first has its title, the last what
// follows.
std::vector<Block> blocks_of(const Bar& bar, Length most) {
  const int scale = scale_of(bar);
  std::vector<Row> rows = rows_of(bar, scale);
  for (Row& row : rows)
    add_labels(row);
  Texts texts;
  texts.title =
      wrapped(bar.title + (scale == 1 ? " (true to scale)" : " (1 : " + std::to_string(scale) + ")"),
              title_size, sheet_width, 3);
  for (const std::string& text : bar.then)
    for (std::string& line : wrapped(text, small, sheet_width, 4))
      texts.then.push_back(std::move(line));
  std::vector<Block> out;
  for (std::size_t from = 0; from < rows.size();) {
    std::vector<Row> some;
    Texts own;
    if (from == 0) own.title = texts.title;
    Length height = static_cast<std::int64_t>(own.title.size()) * 4 * millimetre + 3 * millimetre;
    const Length after = static_cast<std::int64_t>(texts.then.size()) * 4 * millimetre;
    while (from < rows.size() && (some.empty() || height + height_of(rows[from]) + after <= most)) {
      height += height_of(rows[from]);
      some.push_back(std::move(rows[from++]));
    }
    if (from == rows.size()) own.then = texts.then, height += after;
    out.push_back({height, [&bar, some, own](Svg& svg, Length top) { draw_bar(svg, bar, some, own, top); }});
  }
  return out;
}

} // namespace

std::string picture_of(const CutCard& card) {
  std::vector<Block> blocks;
  for (const Bar& bar : card.bars)
    for (Block& block : blocks_of(bar, room_on_sheet(card.heading)))
      blocks.push_back(std::move(block));
  return on_sheets(card.heading, blocks);
}

} // namespace nutward::draw
