// Projected stock as a card: draw/stock_card with the words of the answer.
#include "draw/stock_card.hpp"
#include "shop/agenda_words.hpp"
#include "shop/supply_words.hpp"

#include <cmath>

namespace nutward::shop {

namespace {

constexpr int least_days = 56, most_days = 182, ticks = 7;

// Far enough to see the order come and what follows; whole ticks.
int days_shown(const std::vector<WireSupply>& supplies, Day today) {
  int days = least_days;
  for (const WireSupply& s : supplies) {
    const int lead = static_cast<int>(std::ceil(s.buying.lead.mean));
    if (s.outlook.order_by) days = std::max(days, *s.outlook.order_by - today + 2 * lead);
    if (s.outlook.runs_out) days = std::max(days, *s.outlook.runs_out - today + 14);
    for (const WireNeed& n : s.needs)
      days = std::max(days, n.cut.day - today + 7);
  }
  days = std::min(days, most_days);
  return (days + ticks - 1) / ticks * ticks;
}

draw::StockWire drawn(const WireSupply& s, const Supplying& all, const Moment& moment) {
  const supply::Outlook& o = s.outlook;
  draw::StockWire out;
  out.title = fmt::format("{}: {}", s.wire.name, left_where_words(s));
  out.safety = o.safety;
  for (const supply::Point& p : o.path)
    out.path.push_back({p.day - all.today(), p.level});
  if (o.runs_out)
    out.marks.push_back({*o.runs_out - all.today(), "runs out " + day_words(*o.runs_out, moment)});
  if (s.order_due(all.today() + supply::horizon_days)) {
    const int by = *o.order_by - all.today(), there = by + static_cast<int>(std::ceil(s.buying.lead.mean));
    out.marks.push_back({by, fmt::format("order {} {}", quantity_words(s), by_words(s, moment))});
    out.marks.push_back({there, "that order comes, about " + day_words(all.today() + there, moment)});
    for (const draw::StockPoint& p : out.path)
      if (p.day >= there) out.ordered.push_back({p.day, p.level + o.order});
  }
  for (const Arrival& a : s.arrivals)
    out.marks.push_back(
        {a.day - all.today(), fmt::format("order {} comes {}: {}", a.purchase, day_words(a.day, moment),
                                          units::print(a.length, units::LengthUnit::m))});
  for (std::size_t i = 0; i < s.needs.size() && i < 6; ++i)
    out.marks.push_back(
        {std::max(0, s.needs[i].cut.day - all.today()),
         fmt::format("job {} is cut {}: {}", s.needs[i].job, day_words(s.needs[i].cut.day, moment),
                     units::print(s.needs[i].length, units::LengthUnit::m))});
  return out;
}

} // namespace

Picture stock_picture(const std::vector<WireSupply>& supplies, const Supplying& all, const Answer& answer,
                      const Moment& moment) {
  draw::StockCard card;
  card.days = days_shown(supplies, all.today());
  card.ticks_every = card.days / ticks;
  for (int i = 0; i < ticks; ++i)
    card.ticks.push_back(day_words(all.today() + i * card.ticks_every, moment));
  for (const WireSupply& s : supplies)
    card.wires.push_back(drawn(s, all, moment));
  card.heading.title = supplies.size() == 1 ? "Stock of " + supplies.front().wire.name : "Stock of wire";
  card.heading.description = answer.text;
  card.heading.lines = {answer.text,
                        "Metres in sticks and coils by what is expected: a solid line without a new "
                        "order, a dashed one with it. Grey: kept for safety."};
  const std::string title = card.heading.title;
  return {title, [card = std::move(card)] { return draw::picture_of(card); }};
}

} // namespace nutward::shop
