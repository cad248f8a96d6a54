// The week as a card: draw/week_card with the words of the answer.
#include "draw/week_card.hpp"
#include "shop/agenda_next.hpp"

#include <map>

namespace nutward::shop {

namespace {

bool same(const AgendaUnit& a, const AgendaUnit& b) {
  return a.machine == b.machine && a.number == b.number && a.person == b.person;
}

int minute_of(Instant t, Day day, const hours::Zone& zone) {
  const hours::LocalTime local = zone.local(t);
  if (local.day < day) return 0;
  return local.day > day ? 24 * 60 : local.s / 60;
}

class Drawer {
public:
  Drawer(const std::vector<AgendaItem>& items, const AgendaPlan& agenda, const View& view,
         const Moment& moment)
      : items_(items), view_(view), moment_(moment) {
    for (std::size_t u = 0; u < agenda.what.units.size(); ++u)
      if (!agenda.what.problem.units[u].shared && is_used(agenda.what.units[u]))
        units_.push_back(agenda.what.units[u]);
  }

  draw::WeekCard card(Day first, int days) const {
    draw::WeekCard out;
    for (const AgendaUnit& u : units_)
      out.rows.push_back(sentence(name_of(u, view_)));
    for (Day d = first; d < first + days; d = d + 1) {
      draw::WeekDay day = of_day(d);
      if (!day.open.empty() || !day.items.empty()) out.days.push_back(std::move(day));
    }
    return out;
  }

private:
  bool is_used(const AgendaUnit& unit) const {
    return std::any_of(items_.begin(), items_.end(),
                       [&](const AgendaItem& i) { return same(i.machine, unit) || same(i.person, unit); });
  }

  draw::WeekDay of_day(Day d) const {
    draw::WeekDay out;
    out.title = hours::human(d);
    for (const auto& [from, to] : hours::spans(moment_.calendar, moment_.zone, d))
      out.open.push_back({minute_of(from, d, moment_.zone), minute_of(to, d, moment_.zone)});
    const Instant begin = moment_.zone.instant(d, 0), end = moment_.zone.instant(d, 86400);
    for (const AgendaItem& i : items_) {
      if (i.end <= begin || i.start >= end) continue;
      add(out, i, i.machine, d);
      add(out, i, i.person, d);
    }
    return out;
  }

  // Its part of the day within the opening hours; what lies in closed time altogether stays as it is.
  void add(draw::WeekDay& day, const AgendaItem& i, const AgendaUnit& unit, Day d) const {
    if (unit.machine == 0 && unit.person == 0) return;
    for (std::size_t r = 0; r < units_.size(); ++r) {
      if (!same(units_[r], unit)) continue;
      const int from = minute_of(i.start, d, moment_.zone), to = minute_of(i.end, d, moment_.zone);
      const std::string label = i.job == 0 ? "-" : std::to_string(i.job);
      bool any = false;
      for (const auto& [open, close] : day.open) {
        const int a = std::max(from, open), b = std::min(to, close);
        if (a >= b) continue;
        day.items.push_back({r, a, b, label, i.fixed});
        any = true;
      }
      if (!any && i.fixed) day.items.push_back({r, from, std::max(to, from + 1), label, i.fixed});
    }
  }

  const std::vector<AgendaItem>& items_;
  const View& view_;
  const Moment& moment_;
  std::vector<AgendaUnit> units_;
};

} // namespace

Picture week_picture(const std::vector<AgendaItem>& items, const AgendaPlan& agenda, const DaysShown& shown,
                     const Answer& answer, const View& view, const Moment& moment) {
  draw::WeekCard card = Drawer(items, agenda, view, moment).card(shown.first, shown.days);
  card.heading.title = shown.days == 1 ? "The agenda of " + hours::human(shown.first)
                                       : fmt::format("The agenda from {} to {}", hours::human(shown.first),
                                                     hours::human(shown.first + (shown.days - 1)));
  card.heading.description = answer.text;
  card.heading.lines = {
      answer.text, "Numbers are jobs. A solid edge: begun or booked; a dashed one: planned. Grey: closed."};
  for (const Hazard h : answer.cautions)
    card.heading.cautions.push_back("Caution: " + std::string(caution(h)));
  const std::string title = card.heading.title;
  return {title, [card = std::move(card)] { return draw::picture_of(card); }};
}

} // namespace nutward::shop
