#include "draw/stock_card.hpp"

#include "units/print.hpp"

#include <algorithm>

namespace nutward::draw {

namespace {

using units::millimetre;

constexpr Length left{18'000'000}, wide{165'000'000}, high{42'000'000};
constexpr Length head{9'000'000}, foot{6'000'000}, line_high{4'000'000}, below{5'000'000};
constexpr Length type{2'500'000}, small{2'200'000}, label_high{3'000'000};
constexpr Length thin{150'000}, thick{500'000};

class Chart {
public:
  Chart(Svg& svg, const StockCard& card, const StockWire& wire, Length top)
      : svg_(svg), card_(card), wire_(wire), top_(top) {
    const auto take = [&](Length v) { least_ = std::min(least_, v), most_ = std::max(most_, v); };
    take(wire.safety);
    for (const auto* path : {&wire.path, &wire.ordered})
      for (const StockPoint& p : *path)
        if (p.day <= card.days) take(p.level);
    if (most_ == least_) most_ = least_ + 1000 * millimetre;
  }

  void draw() {
    svg_.begin(wire_.title);
    svg_.text({{}, top_ + 5 * millimetre}, wire_.title, {Length{3'500'000}, true});
    if (wire_.safety > Length{})
      svg_.rect({left, y(wire_.safety), wide, y({}) - y(wire_.safety)}, Fill::grey, Edge::none);
    frame();
    steps(wire_.path, thick);
    dashes(wire_.ordered);
    marks();
    svg_.end();
  }

private:
  Length x(int day) const {
    return left + Length{wide.nm * std::clamp(day, 0, card_.days) / std::max(1, card_.days)};
  }
  Length y(Length level) const {
    const double share = static_cast<double>((level - least_).nm) / static_cast<double>((most_ - least_).nm);
    return top_ + head + high - Length{static_cast<std::int64_t>(share * static_cast<double>(high.nm))};
  }

  // To the centimetre.
  void label(Length level) {
    constexpr std::int64_t cm = 10'000'000;
    const Length shown{(level.nm + (level.nm < 0 ? -cm : cm) / 2) / cm * cm};
    const std::string text = units::print(shown, units::LengthUnit::m);
    svg_.text({left - width_of(text, small) - millimetre, y(level) + Length{800'000}}, text, {small});
    svg_.line({left, y(level)}, {left + wide, y(level)}, thin);
  }

  void frame() {
    label(most_);
    if (y(least_) - y(most_) > label_high) label(least_);
    const bool room = y(least_) - y({}) > label_high && y({}) - y(most_) > label_high;
    if (room)
      label({}); // where 0 is neither the least nor the most
    else
      svg_.line({left, y({})}, {left + wide, y({})}, thin);
    svg_.line({left, top_ + head}, {left, top_ + head + high}, thin);
    for (std::size_t i = 0; i < card_.ticks.size(); ++i) {
      const Length at = x(static_cast<int>(i) * card_.ticks_every);
      svg_.line({at, top_ + head + high}, {at, top_ + head + high + millimetre}, thin);
      svg_.text({at, top_ + head + high + 4 * millimetre}, card_.ticks[i], {small});
    }
  }

  // Level all day long, down or up at its end.
  void steps(const std::vector<StockPoint>& path, Length width) {
    for (std::size_t i = 0; i + 1 < path.size() && path[i + 1].day <= card_.days; ++i) {
      const Length next = x(path[i + 1].day), level = y(path[i].level);
      svg_.line({x(path[i].day), level}, {next, level}, width);
      if (y(path[i + 1].level) != level) svg_.line({next, level}, {next, y(path[i + 1].level)}, width);
    }
  }

  void dashes(const std::vector<StockPoint>& path) {
    constexpr Length dash{1'200'000};
    for (std::size_t i = 0; i + 1 < path.size() && path[i + 1].day <= card_.days; ++i) {
      const Length from = x(path[i].day), to = x(path[i + 1].day), level = y(path[i].level);
      const bool drawn = ((from - left).nm / dash.nm) % 2 == 0;
      if (drawn) svg_.line({from, level}, {to, level}, thick);
    }
  }

  void marks() {
    Length at = top_ + head + high + foot;
    for (std::size_t i = 0; i < wire_.marks.size(); ++i) {
      const StockMark& m = wire_.marks[i];
      const std::string number = std::to_string(i + 1);
      if (m.day <= card_.days) {
        svg_.line({x(m.day), top_ + head}, {x(m.day), top_ + head + high}, Length{250'000});
        // each a line lower, so that those of one day do not lie over each other
        const Length down = static_cast<std::int64_t>(i % 12 + 1) * 3 * millimetre;
        svg_.text({x(m.day) + Length{500'000}, top_ + head + down}, number, {type, true});
      }
      at = at + line_high;
      svg_.text({left, at}, number + ": " + m.label, {type});
    }
  }

  Svg& svg_;
  const StockCard& card_;
  const StockWire& wire_;
  Length top_;
  Length least_{}, most_{};
};

} // namespace

std::string picture_of(const StockCard& card) {
  std::vector<Block> blocks;
  blocks.reserve(card.wires.size());
  for (const StockWire& wire : card.wires) {
    const Length height =
        head + high + foot + static_cast<std::int64_t>(wire.marks.size()) * line_high + below;
    blocks.push_back({height, [&card, &wire](Svg& svg, Length top) { Chart(svg, card, wire, top).draw(); }});
  }
  return on_sheets(card.heading, blocks);
}

} // namespace nutward::draw
