#include "shop/machines.hpp"

#include "shop/bench.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <set>

namespace nutward::shop {

namespace {

std::string lower(std::string_view text) {
  std::string out{text};
  for (char& c : out)
    c = static_cast<char>(c >= 'A' && c <= 'Z' ? c - 'A' + 'a' : c);
  return out;
}

} // namespace

std::string plural_of(const std::string& name) {
  for (std::string_view end : {"s", "x", "ch", "sh"}) {
    if (name.ends_with(end)) return name + "es";
  }
  return name + "s";
}

std::optional<Machine> machine_at(std::int64_t id, const View& view) {
  for (const Machine& m : view.machines().all()) {
    if (m.id == id) return m;
  }
  return std::nullopt;
}

Machine machine_of(const Args& args, const View& view, std::string_view param) {
  if (auto m = machine_at(args.id(param), view)) return *m;
  throw Problem(Fault::value, "There is no such machine.", std::string(param),
                "Ask for 'machines' to see them.");
}

std::optional<Machine> machine_called(std::string_view name, const View& view) {
  for (const Machine& m : view.machines().all()) {
    if (lower(m.name) == lower(name)) return m;
  }
  return std::nullopt;
}

std::string named(const Machine& m, int number) {
  if (number > 0) return fmt::format("{} {}", m.name, number);
  if (m.count == 1) return "the " + m.name;
  return m.count == 0 ? "the " + plural_of(m.name) : fmt::format("all {} {}", m.count, plural_of(m.name));
}

void check_number(const Machine& m, int number, std::string_view where) {
  if (number >= 1 && (m.count == 0 || number <= m.count)) return;
  throw Problem(Fault::value, fmt::format("There is no {} {}.", m.name, number), std::string(where),
                m.count == 1 ? fmt::format("There is one {}.", m.name)
                             : fmt::format("There are {} {}.", m.count, plural_of(m.name)));
}

// As the schema makes them.
std::int64_t machine_for(agenda::Machine kind) {
  switch (kind) {
  case agenda::Machine::press:
    return 1;
  case agenda::Machine::sander:
    return 2;
  case agenda::Machine::bench:
    return 3;
  }
  return 3;
}

std::optional<Machine> machine_for(agenda::StageKind stage, const View& view) {
  const agenda::StageRow& row = agenda::row(stage);
  for (const StageRule& r : view.machines().rules()) {
    if (r.stage == row.word && r.machine) return machine_at(*r.machine, view);
  }
  return machine_at(machine_for(row.machine), view);
}

Down down(const Machine& m, Instant from, Instant to, const View& view) {
  Down out;
  std::set<int> numbers;
  for (const Outage& o : view.machines().outages(from)) {
    if (o.machine != m.id || o.from >= to) continue;
    out.because.push_back(o);
    if (o.number == 0)
      out.all = true;
    else
      numbers.insert(o.number);
  }
  out.numbers.assign(numbers.begin(), numbers.end());
  if (m.count > 0 && static_cast<int>(out.numbers.size()) >= m.count) out.all = true;
  return out;
}

Down down(const Machine& m, Instant at, const View& view) {
  return down(m, at, at + std::chrono::seconds(1), view);
}

std::optional<int> left_of(const Machine& m, const Down& d) {
  if (d.all) return 0;
  if (m.count == 0) return std::nullopt;
  return m.count - static_cast<int>(d.numbers.size());
}

std::string words_of(const Outage& o, const hours::Zone& zone) {
  return "out of service" + (o.to ? " until " + zone.human(*o.to) : "");
}

std::string from_to(Instant from, Instant to, const hours::Zone& zone) {
  const hours::LocalTime a = zone.local(from), b = zone.local(to);
  const bool midnight = b.s == 0 && b.day == a.day + 1;
  if (a.day == b.day || midnight) {
    return fmt::format("{}, {} to {}", hours::human(a.day), hours::human_time(a.s),
                       hours::human_time(midnight ? 86400 : b.s));
  }
  return fmt::format("{} to {}", zone.human(from), zone.human(to));
}

} // namespace nutward::shop
