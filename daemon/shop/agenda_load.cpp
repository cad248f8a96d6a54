// How busy machines and people are, and when they are free.
#include "agenda/windows.hpp"
#include "shop/agenda_next.hpp"
#include "shop/machines.hpp"
#include "shop/work.hpp"

namespace nutward::shop {

namespace {

constexpr std::chrono::minutes least_free{15};
constexpr std::size_t most_stretches = 40;

struct FreeUnit {
  AgendaUnit unit;
  std::vector<agenda::Window> free;
};

bool holds(const AgendaItem& i, const AgendaUnit& unit) {
  return unit.person != 0 ? i.person.person == unit.person
                          : i.machine.machine == unit.machine && i.machine.number == unit.number;
}

std::vector<agenda::Window> free_of(const AgendaUnit& unit, const std::vector<agenda::Window>& open,
                                    const std::vector<AgendaItem>& all, Instant from, Instant to) {
  std::vector<agenda::Window> taken;
  for (const AgendaItem& i : all)
    if (holds(i, unit) && i.end > from && i.start < to) taken.push_back({i.start, i.end});
  std::sort(taken.begin(), taken.end());
  const agenda::Window span{from, to};
  auto out = agenda::without(agenda::both(open, std::span(&span, 1)), taken);
  std::erase_if(out, [](const agenda::Window& w) { return w.to - w.from < least_free; });
  return out;
}

std::string stretch_words(const agenda::Window& w, const Moment& moment) {
  const hours::LocalTime a = moment.zone.local(w.from), b = moment.zone.local(w.to);
  return fmt::format("{}-{}", hours::human_time(a.s), hours::human_time(b.day > a.day ? 86400 : b.s));
}

std::string free_words(const std::vector<agenda::Window>& free, const Moment& moment, std::size_t most) {
  std::string out;
  std::optional<Day> day;
  for (std::size_t i = 0; i < std::min(most, free.size()); ++i) {
    const Day d = moment.zone.local(free[i].from).day;
    out += fmt::format("{}{}{}", i == 0 ? "" : ", ", day == d ? "" : day_words(d, moment) + " ",
                       stretch_words(free[i], moment));
    day = d;
  }
  return out;
}

// Why it is not free at an instant.
std::string why_taken(const AgendaUnit& unit, Instant at, const std::vector<AgendaItem>& all,
                      const View& view, const Moment& moment) {
  for (const AgendaItem& i : all) {
    if (!holds(i, unit) || i.start > at || i.end <= at) continue;
    return fmt::format("{} ({} until {})", to_do_words(i, view), i.fixed ? "begun or booked" : "planned",
                       clock_words(i.end, moment));
  }
  return hours::is_open(moment.calendar, moment.zone, at) ? "it is not there" : "the shop is closed";
}

std::string booking_hint(const WhichFree& which, const Moment& moment) {
  if (!which.machine) return "";
  return fmt::format("What is only planned makes room for a booking: 'book the {} {} 10:00-11:00'.",
                     which.machine->name, day_words(moment.zone.local(which.from).day, moment));
}

void say_free_at(Answer& out, const WhichFree& which, const std::vector<FreeUnit>& units,
                 const std::vector<AgendaItem>& all, const View& view, const Moment& moment) {
  const Instant at = *which.at;
  std::string taken;
  for (const FreeUnit& u : units) {
    if (!u.free.empty() && u.free.front().from <= at) {
      out.text = sentence(fmt::format("{} is free then ({}), until {}.", name_of(u.unit, view),
                                      moment.zone.human(at), clock_words(u.free.front().to, moment)));
      return;
    }
    taken += fmt::format("{}{}: {}", taken.empty() ? "" : "; ", name_of(u.unit, view),
                         why_taken(u.unit, at, all, view, moment));
  }
  out.text = sentence(fmt::format("{} is not free on {}.", taken, moment.zone.human(at)));
  if (units.size() == 1)
    out.text =
        sentence(fmt::format("{} is not free on {}: {}.", name_of(units.front().unit, view),
                             moment.zone.human(at), why_taken(units.front().unit, at, all, view, moment)));
  if (!units.empty() && !units.front().free.empty())
    out.text += fmt::format(" Free that day: {}.", free_words(units.front().free, moment, 3));
}

Table load_table(const Loads& loads, const View& view, const Moment& moment) {
  Table out{{"", "rest of this week"}, {}};
  for (std::size_t w = 1; w + 1 < loads.bounds.size(); ++w)
    out.columns.push_back("from " + day_words(moment.zone.local(loads.bounds[w]).day, moment));
  for (const UnitLoad& u : loads.units) {
    std::vector<std::string> row{name_of(u.unit, view)};
    for (const agenda::Load& load : u.weeks)
      row.push_back(load_words(load));
    out.rows.push_back(std::move(row));
  }
  return out;
}

} // namespace

void say_free(Answer& out, const WhichFree& which, const std::vector<AgendaItem>& all,
              const AgendaPlan& agenda, const View& view, const Moment& moment) {
  std::vector<FreeUnit> units;
  for (std::size_t u = 0; u < agenda.what.units.size(); ++u) {
    const AgendaUnit& unit = agenda.what.units[u];
    const bool asked = which.machine  ? unit.machine == which.machine->id
                       : which.person ? unit.person == which.person->id
                                      : unit.person != 0;
    if (!asked) continue;
    if (agenda.what.problem.units[u].shared) {
      out.text = sentence(fmt::format("{} has room for as many as want it.", name_of(unit, view)));
      return;
    }
    units.push_back({unit, free_of(unit, agenda.what.problem.units[u].open, all, which.from, which.to)});
  }
  out.reason = booking_hint(which, moment);
  if (which.at) {
    say_free_at(out, which, units, all, view, moment);
    return;
  }
  std::string text;
  Table table{{"", "day", "free"}, {}};
  for (const FreeUnit& u : units) {
    text += text.empty() ? "" : "; ";
    text += u.free.empty()
                ? fmt::format("{} is not free {}", name_of(u.unit, view), which.range)
                : fmt::format("{} is free {}", name_of(u.unit, view), free_words(u.free, moment, 3));
    std::optional<Day> day;
    for (const agenda::Window& w : u.free) {
      if (table.rows.size() == most_stretches) break;
      const Day d = moment.zone.local(w.from).day;
      table.rows.push_back(
          {day ? "" : name_of(u.unit, view), day == d ? "" : day_words(d, moment), stretch_words(w, moment)});
      day = d;
    }
  }
  if (units.size() > 3) {
    std::vector<std::string> names;
    for (const FreeUnit& u : units)
      if (!u.free.empty()) names.push_back(name_of(u.unit, view));
    text = names.empty() ? fmt::format("nobody is free {}", which.range)
                         : fmt::format("free {}: {}", which.range, fmt::join(names, ", "));
  }
  out.text = sentence(units.empty() ? "Nothing is there that could be free." : text + ".");
  if (!table.rows.empty()) out.table = std::move(table);
}

void say_load(Answer& out, const std::optional<Machine>& machine, const std::optional<Actor>& person,
              std::size_t week, Loads loads, const AgendaPlan& agenda, const View& view,
              const Moment& moment) {
  std::erase_if(loads.units, [&](const UnitLoad& u) {
    return (machine && u.unit.machine != machine->id) || (person && u.unit.person != person->id);
  });
  std::string busiest;
  int most = -1;
  for (const UnitLoad& u : loads.units) {
    const int p = week < u.weeks.size() ? percent_of(u.weeks[week]) : 0;
    if (p > most) most = p, busiest = name_of(u.unit, view);
  }
  const std::string decides = bottleneck_words(agenda, view, moment);
  out.text = most < 0 ? "Nothing is there that could be busy."
                      : sentence(fmt::format("{} is taken for {} % of {}.", busiest, most,
                                             week == 0 ? "what is left of this week" : "next week"));
  if (!decides.empty()) out.text += " " + decides;
  out.table = load_table(loads, view, moment);
  out.reason = "Work that is planned, begun or booked, of the open hours of each.";
}

} // namespace nutward::shop
