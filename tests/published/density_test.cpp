// Densities of wire alloys against published ones, and the length of a kilogram.
#include "support/catch.hpp"
#include "wire/mass.hpp"

#include <map>
#include <string_view>

using namespace nutward;

TEST_CASE("the alloys of fret wire have their published densities") {
  const std::map<std::string_view, double> published{
      {"C77000", 8.70}, // Olin data sheet
      {"C75200", 8.73}, // Copper Development Association, from memory
      {"C26000", 8.53}, // Olin data sheet
      {"C51000", 8.86}, // Olin data sheet
      {"304", 7.9},     // EN 10088-3, 1.4301
      {"316", 8.0},     // EN 10088-3, 1.4401
  };
  CHECK(wire::densities().size() == published.size());
  for (const auto& [alloy, g_per_cm3] : published) {
    INFO(alloy);
    const wire::Density* d = wire::density_of(alloy);
    REQUIRE(d != nullptr);
    CHECK(d->name == alloy);
    CHECK(d->g_per_cm3 == g_per_cm3);
    CHECK_FALSE(d->source.empty());
  }
}

TEST_CASE("a kilogram at 8.73 g/cm³ and 2 mm² is 57.2737686 m long") {
  // Worked out: 1 000 000 mg / (8.73 mg/mm³ · 2 mm²).
  CHECK(wire::length_of(units::Mass{1'000'000}, 8.73, 2.0).nm == 57'273'768'614);
  CHECK(wire::mass_of(units::Length{57'273'768'614}, 8.73, 2.0).mg == 1'000'000);
}
