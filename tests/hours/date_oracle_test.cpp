// GNU date with TZ set reads the same tz database with other code: an oracle from outside.
#include "hours/load_zone.hpp"

#include "support/catch.hpp"

#include <cstdio>
#include <memory>
#include <random>
#include <sstream>

using namespace nutward::hours;
using nutward::units::Instant;

namespace {

constexpr const char* zones[] = {
    "America/New_York", "America/Sao_Paulo",   "America/St_Johns", "America/Nuuk",
    "America/Santiago", "Africa/Casablanca",   "Asia/Jerusalem",   "Asia/Kathmandu",
    "Asia/Kolkata",     "Europe/Berlin",       "Europe/Dublin",    "Europe/London",
    "Pacific/Apia",     "Australia/Lord_Howe", "Pacific/Auckland", "Pacific/Chatham"};

std::vector<std::string> lines_of(const std::string& command) {
  const std::unique_ptr<FILE, int (*)(FILE*)> pipe(popen(command.c_str(), "r"), pclose);
  REQUIRE(pipe);
  std::vector<std::string> out;
  char line[256];
  while (fgets(line, sizeof line, pipe.get()) != nullptr)
    out.emplace_back(line, std::string_view(line).find('\n'));
  return out;
}

std::string date_with(const char* zone, const std::string& input, const char* format) {
  return "printf '" + input + "' | LC_ALL=C TZ=" + zone + " date -f - '" + format + "'";
}

} // namespace

TEST_CASE("GNU date prints the same local time and offset for random instants from 1973 to 2100") {
  std::mt19937_64 random(20260308);
  // From 1973: before, Liberia and others had offsets that are no whole minutes.
  std::uniform_int_distribution<std::int64_t> any(94'694'400, 4'133'980'799);
  for (const char* name : zones) {
    const auto zone = load_zone(name);
    std::vector<Instant> at;
    std::ostringstream input;
    for (int i = 0; i < 20; ++i)
      at.push_back({any(random)});
    // And both sides of changes: where errors live.
    for (std::size_t i = 1; i < zone->transitions().size(); i += 1 + zone->transitions().size() / 10) {
      const auto from = zone->transitions()[i].from;
      if (from.s > 94'694'400) {
        at.push_back(from);
        at.push_back({from.s - 1});
      }
    }
    for (const auto t : at)
      input << '@' << t.s << "\\n";
    const auto lines = lines_of(date_with(name, input.str(), "+%Y-%m-%dT%H:%M:%S%:z"));
    REQUIRE(lines.size() == at.size());
    for (std::size_t i = 0; i < at.size(); ++i) {
      INFO(name << " @" << at[i].s);
      CHECK(zone->rfc3339(at[i]) == lines[i]);
    }
  }
}

TEST_CASE("GNU date finds the same instant for random local times by day") {
  std::mt19937_64 random(20261101);
  std::uniform_int_distribution<std::int32_t> day(1'200, 47'000);
  std::uniform_int_distribution<std::int32_t> second(5 * 3'600, 21 * 3'600); // where no clock is ever changed
  for (const char* name : zones) {
    const auto zone = load_zone(name);
    std::vector<LocalTime> at;
    std::ostringstream input;
    for (int i = 0; i < 20; ++i) {
      at.push_back({nutward::units::Day{day(random)}, second(random)});
      const auto d = at.back().day.ymd();
      input << static_cast<int>(d.year()) << '-' << static_cast<unsigned>(d.month()) << '-'
            << static_cast<unsigned>(d.day()) << ' ' << at.back().s / 3600 << ':' << at.back().s / 60 % 60
            << ':' << at.back().s % 60 << "\\n";
    }
    const auto lines = lines_of(date_with(name, input.str(), "+%s"));
    REQUIRE(lines.size() == at.size());
    for (std::size_t i = 0; i < at.size(); ++i) {
      INFO(name << " day " << at[i].day.days << " second " << at[i].s);
      CHECK(std::to_string(zone->instant(at[i].day, at[i].s).s) == lines[i]);
    }
  }
}
