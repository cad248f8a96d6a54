#include "draw/pass_card.hpp"

#include "units/print.hpp"

#include <algorithm>
#include <string>

namespace nutward::draw {

namespace {

using units::millimetre;

constexpr Length room{180'000'000}, side{5'000'000}, thin{300'000};
constexpr Length type_size{3'500'000}, over{14'000'000}, below{36'000'000};

struct Extent {
  Length left, right, top, bottom;
};

Extent extent_of(const PassCard& card) {
  Extent e{card.bar.x, card.bar.x + card.bar.width, card.bar.y, card.bar.y + card.bar.height};
  for (const PassFret& f : card.frets) {
    e.left = std::min({e.left, f.bass.x, f.treble.x});
    e.right = std::max({e.right, f.bass.x, f.treble.x});
    e.top = std::min({e.top, f.bass.y, f.treble.y});
    e.bottom = std::max({e.bottom, f.bass.y, f.treble.y});
  }
  return e;
}

// From plan to sheet.
class Onto {
public:
  Onto(const Extent& e, std::int64_t shrink, Length top) : e_(e), shrink_(shrink), top_(top) {}
  Length len(Length v) const { return {v.nm / shrink_}; }
  Length x(Length v) const { return side + len(v - e_.left); }
  Length y(Length v) const { return top_ + len(v - e_.top); }
  Point at(Point p) const { return {x(p.x), y(p.y)}; }

private:
  const Extent& e_;
  std::int64_t shrink_;
  Length top_;
};

void draw_frets(Svg& svg, const PassCard& card, const Onto& onto, Length bottom) {
  const Length crown = std::max(onto.len(card.crown_width), thin);
  std::int64_t row = 0; // shares of frets that stand close go one below the other
  for (const PassFret& f : card.frets) {
    svg.begin("fret " + f.label);
    svg.line(onto.at(f.bass), onto.at(f.treble), f.under ? crown : thin);
    const Length x = onto.x(f.treble.x);
    svg.text_centred({x, bottom + 5 * millimetre}, f.label, {type_size, f.under});
    const std::string said = f.share + (f.share.empty() || f.note.empty() ? "" : " ") + f.note;
    svg.text_centred({x, bottom + (10 + 4 * row) * millimetre}, said, {Length{3'000'000}, !f.note.empty()});
    row = f.under ? (row + 1) % 3 : 0;
    svg.end();
  }
}

// Where a text of this width begins, so that it is over `x` as far as the sheet allows.
Length within(Length x, Length width) {
  return std::max(side, std::min(x - Length{width.nm / 2}, side + room - width));
}

void draw_room(Svg& svg, const Onto& onto, const std::pair<Length, Length>& stretch, Length bottom) {
  const Length y = bottom + 22 * millimetre;
  const Length from = onto.x(stretch.first), to = onto.x(stretch.second);
  svg.begin("where it may stand");
  svg.line({from, y}, {to, y}, Length{800'000});
  svg.text_centred({Length{(from.nm + to.nm) / 2}, y + 5 * millimetre}, "the load may stand here",
                   {Length{3'000'000}});
  svg.end();
}

void draw_load(Svg& svg, const PassCard& card, const Onto& onto, Length top, Length bottom) {
  constexpr Length arm{3'000'000};
  const Point p = onto.at(card.load);
  svg.begin("the load");
  svg.rect({p.x - arm, p.y - arm, 2 * arm, 2 * arm}, Fill::white, Edge::solid);
  svg.line({p.x - arm, p.y}, {p.x + arm, p.y}, thin);
  svg.line({p.x, p.y - arm}, {p.x, p.y + arm}, thin);
  svg.text({within(p.x, width_of(card.load_label, type_size)), top - 8 * millimetre}, card.load_label,
           {type_size, true});
  svg.line({p.x, top - 7 * millimetre}, {p.x, p.y - arm}, thin);
  svg.end();
  if (card.meant) {
    const Point m = onto.at(*card.meant);
    svg.begin("where the load should stand");
    svg.rect({m.x - arm, m.y - arm, 2 * arm, 2 * arm}, Fill::none, Edge::dashed);
    svg.end();
  }
  if (card.may_stand) draw_room(svg, onto, *card.may_stand, bottom);
}

} // namespace

std::string picture_of(const PassCard& card) {
  const Extent e = extent_of(card);
  PassCard drawn = card;
  const Length high_room = room_on_sheet(card.heading) - over - below;
  std::int64_t shrink = 1;
  while (shrink < 20 && (Length{(e.right - e.left).nm / shrink} > room ||
                         Length{(e.bottom - e.top).nm / shrink} > high_room - 30 * millimetre))
    ++shrink;
  if (shrink > 1) drawn.heading.lines.push_back("Drawn 1 : " + std::to_string(shrink) + ".");
  const Length height = Length{(e.bottom - e.top).nm / shrink} + over + below;
  const Block block{height, [drawn, e, shrink](Svg& svg, Length top) {
                      const Onto onto(e, shrink, top + over);
                      const Length bottom = onto.y(e.bottom);
                      svg.begin(drawn.bar_label);
                      svg.rect({onto.x(drawn.bar.x), onto.y(drawn.bar.y), onto.len(drawn.bar.width),
                                onto.len(drawn.bar.height)},
                               Fill::none, Edge::dashed);
                      svg.text({side, bottom + 34 * millimetre}, drawn.bar_label, {Length{3'000'000}});
                      svg.end();
                      draw_frets(svg, drawn, onto, bottom);
                      draw_load(svg, drawn, onto, top + over, bottom);
                    }};
  return on_sheets(drawn.heading, {block});
}

} // namespace nutward::draw
