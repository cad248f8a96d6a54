// Fractions of an inch against the program `units` (Debian package units), which knows them from its own
// tables.
#include "support/catch.hpp"

#include "units/read.hpp"

#include <fmt/format.h>

#include <cmath>
#include <cstdio>
#include <memory>
#include <string>

using namespace nutward::units;

namespace {

// What `command` prints first; nothing if it fails.
std::string first_line(const std::string& command) {
  struct Close {
    void operator()(std::FILE* f) const { pclose(f); }
  };
  const std::unique_ptr<std::FILE, Close> pipe{popen(command.c_str(), "r")};
  char line[256];
  if (!pipe || !std::fgets(line, sizeof line, pipe.get())) return {};
  std::string out{line};
  while (!out.empty() && out.back() == '\n')
    out.pop_back();
  return out;
}

std::string units_says(const std::string& from, const std::string& to) {
  return first_line(fmt::format("units -t -o %.17g '{}' '{}' 2>/dev/null", from, to));
}

} // namespace

TEST_CASE("Every sixty-fourth of an inch is what the program units says") {
  if (units_says("1 inch", "mm").empty()) {
    WARN("The program units is not installed: fractions of an inch were not compared with it.");
    return;
  }
  for (int n = 1; n <= 64; ++n) {
    const auto text = fmt::format("{}/64 in", n);
    INFO(text);
    const double theirs = std::stod(units_says(fmt::format("{}|64 inch", n), "nm"));
    CHECK(std::fabs(theirs - static_cast<double>(read_length(text, LengthUnit::mm).nm)) < 1e-6);
    CHECK(read_length(text, LengthUnit::mm).nm == n * 396'875);
  }
}

TEST_CASE("Forces and masses are what the program units says") {
  if (units_says("1 lb", "mg").empty()) {
    WARN("The program units is not installed: forces and masses were not compared with it.");
    return;
  }
  struct Row {
    const char *ours, *theirs;
  };
  for (const Row r :
       {Row{"1 lbf", "1 lbf"}, Row{"400 lb", "400 lbf"}, Row{"1 kgf", "1 kgf"}, Row{"1.8 kN", "1.8 kN"},
        Row{"1 short ton", "2000 lbf"}, Row{"1 long ton", "2240 lbf"}, Row{"1 tonne", "1000 kgf"}}) {
    INFO(r.ours);
    CHECK(read_force(r.ours, ForceUnit::n).n == Approx(std::stod(units_says(r.theirs, "N"))).epsilon(1e-14));
  }
  for (const Row r :
       {Row{"1 lb", "1 lb"}, Row{"3 oz", "3 oz"}, Row{"2.5 g", "2.5 g"}, Row{"1 long ton", "2240 lb"},
        Row{"1 short ton", "2000 lb"}, Row{"1 tonne", "1000 kg"}}) {
    INFO(r.ours);
    const auto mg = static_cast<double>(read_mass(r.ours, MassUnit::g).mg);
    CHECK(std::fabs(mg - std::stod(units_says(r.theirs, "mg"))) <= 0.5);
  }
}
