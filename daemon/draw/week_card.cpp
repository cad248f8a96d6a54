#include "draw/week_card.hpp"

#include <algorithm>

namespace nutward::draw {

namespace {

using units::millimetre;

constexpr Length names{30'000'000}, room{150'000'000}; // of a day's strip
constexpr Length row_high{7'000'000}, box_high{4'000'000}, day_head{7'000'000}, day_foot{7'000'000};
constexpr Length type{2'500'000}, small{2'200'000};
constexpr int hour = 60;

struct Scale {
  int from = 8 * hour, to = 18 * hour; // minutes, whole hours
  Length x(int minute) const {
    const int m = std::clamp(minute, from, to);
    return names + Length{room.nm * (m - from) / (to - from)};
  }
};

constexpr int long_day = 16 * hour; // what is open for longer is open for somebody; nobody works all of it

// From the first opening to the last closing. Where the shop is open nearly all day what is done then counts
// alone: one such day would press the work of all the others together.
Scale scale_of(const WeekCard& card) {
  int from = 24 * hour, to = 0;
  const auto take = [&](int a, int b) { from = std::min(from, a), to = std::max(to, b); };
  for (const WeekDay& d : card.days) {
    for (const WeekDay::Open& o : d.open)
      if (o.to - o.from <= long_day) take(o.from, o.to);
    for (const WeekItem& i : d.items)
      take(i.from, i.to);
  }
  if (from >= to) return {};
  return {from / hour * hour, (to + hour - 1) / hour * hour};
}

void draw_hours(Svg& svg, const Scale& scale, Length y) {
  const int step = (scale.to - scale.from) / hour > 12 ? 2 : 1;
  for (int h = scale.from / hour; h * hour <= scale.to; h += step) {
    const Length x = scale.x(h * hour);
    svg.line({x, y - millimetre}, {x, y}, Length{200'000});
    svg.text_centred({x, y + 3 * millimetre}, std::to_string(h), {small});
  }
}

void draw_closed(Svg& svg, const WeekDay& day, const Scale& scale, Length top, Length height) {
  int at = scale.from;
  const auto grey = [&](int until) {
    const Length x = scale.x(at), wide = scale.x(until) - x;
    if (wide > Length{}) svg.rect({x, top, wide, height}, Fill::grey, Edge::none);
  };
  for (const WeekDay::Open& o : day.open) {
    grey(o.from);
    at = std::max(at, o.to);
  }
  grey(scale.to);
}

// Labels of boxes that are too narrow for them go above, one beside the other as far as there is room.
void draw_row(Svg& svg, const std::vector<WeekItem>& items, const Scale& scale, Length top) {
  Length free{};
  for (const WeekItem& i : items) {
    const Length x = scale.x(i.from), wide = std::max(scale.x(i.to) - x, Length{400'000});
    const Length y = top + row_high - box_high - Length{300'000};
    svg.rect({x, y, wide, box_high}, Fill::white, i.fixed ? Edge::solid : Edge::dashed);
    const Length text = width_of(i.label, type);
    if (text + millimetre <= wide) {
      svg.text_centred({x + Length{wide.nm / 2}, y + 3 * millimetre}, i.label, {type, i.fixed});
    } else if (x >= free) {
      svg.text({x, y - Length{400'000}}, i.label, {small});
      free = x + width_of(i.label, small) + Length{500'000};
    }
  }
}

void draw_day(Svg& svg, const WeekCard& card, const WeekDay& day, const Scale& scale, Length top) {
  svg.begin(day.title);
  svg.text({{}, top + 5 * millimetre}, day.title, {Length{3'500'000}, true});
  const Length first = top + day_head;
  const Length height = static_cast<std::int64_t>(card.rows.size()) * row_high;
  draw_closed(svg, day, scale, first, height);
  for (std::size_t r = 0; r < card.rows.size(); ++r) {
    const Length y = first + static_cast<std::int64_t>(r) * row_high;
    for (const std::string& name : wrapped(card.rows[r], type, names - 2 * millimetre, 1))
      svg.text({{}, y + 5 * millimetre}, name, {type});
    svg.line({{}, y + row_high}, {names + room, y + row_high}, Length{100'000});
    std::vector<WeekItem> items;
    for (const WeekItem& i : day.items)
      if (i.row == r) items.push_back(i);
    std::sort(items.begin(), items.end(),
              [](const WeekItem& a, const WeekItem& b) { return a.from < b.from; });
    draw_row(svg, items, scale, y);
  }
  draw_hours(svg, scale, first + height + millimetre);
  svg.end();
}

// Rows that one sheet has room for; a day with more goes on below.
std::vector<WeekCard> in_parts(const WeekCard& card) {
  const Length all = room_on_sheet(card.heading) - day_head - day_foot;
  const auto most = static_cast<std::size_t>(std::max<std::int64_t>(1, all.nm / row_high.nm));
  std::vector<WeekCard> out;
  for (std::size_t at = 0; at < card.rows.size(); at += most) {
    WeekCard& part = out.emplace_back();
    const std::size_t end = std::min(card.rows.size(), at + most);
    part.rows.assign(card.rows.begin() + static_cast<std::ptrdiff_t>(at),
                     card.rows.begin() + static_cast<std::ptrdiff_t>(end));
    for (const WeekDay& d : card.days) {
      WeekDay& day = part.days.emplace_back(WeekDay{d.title, d.open, {}});
      for (WeekItem i : d.items) {
        if (i.row < at || i.row >= end) continue;
        i.row -= at;
        day.items.push_back(std::move(i));
      }
    }
  }
  return out;
}

} // namespace

std::string picture_of(const WeekCard& card) {
  const Scale scale = scale_of(card);
  std::vector<Block> blocks;
  for (const WeekCard& part : in_parts(card)) {
    for (std::size_t d = 0; d < part.days.size(); ++d) {
      const Length height = day_head + static_cast<std::int64_t>(part.rows.size()) * row_high + day_foot;
      blocks.push_back({height, [part, d, scale](Svg& svg, Length top) {
                          draw_day(svg, part, part.days[d], scale, top);
                        }});
    }
  }
  return on_sheets(card.heading, blocks);
}

} // namespace nutward::draw
