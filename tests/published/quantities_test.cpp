// Lengths, masses and loads as people say them, against the program `units` (Debian package units) with its
// own database of units: what the sentence layer takes a text for, and what units makes of it as it wants it
// written.
#include "judges.hpp"

#include <fmt/format.h>

#include <cmath>
#include <random>

using namespace nutward;
using namespace nutward::published;

namespace {

struct Quantity {
  std::string said, units_has; // "2 1/16 in", "(2+1|16) inch"
};

// What a unit is called, and what units calls it where that is another word.
struct UnitWord {
  const char* said;
  const char* units_has = "";
};
constexpr std::array length_words{
    UnitWord{"mm"},          UnitWord{"millimetre"},  UnitWord{"millimetres"}, UnitWord{"millimeter"},
    UnitWord{"millimeters"}, UnitWord{"cm"},          UnitWord{"centimetre"},  UnitWord{"centimetres"},
    UnitWord{"centimeter"},  UnitWord{"centimeters"}, UnitWord{"m"},           UnitWord{"metre"},
    UnitWord{"metres"},      UnitWord{"meter"},       UnitWord{"meters"},      UnitWord{"in"},
    UnitWord{"inch"},        UnitWord{"inches"},      UnitWord{"ft"},          UnitWord{"foot"},
    UnitWord{"feet"},        UnitWord{"thou"},        UnitWord{"um"},          UnitWord{"µm"},
    UnitWord{"micron"},      UnitWord{"microns"},     UnitWord{"\"", "inch"},  UnitWord{"″", "inch"},
    UnitWord{"'", "foot"}};
constexpr std::array mass_words{
    UnitWord{"mg"},     UnitWord{"milligram"},  UnitWord{"milligrams"}, UnitWord{"g"},
    UnitWord{"gram"},   UnitWord{"grams"},      UnitWord{"gramme"},     UnitWord{"grammes"},
    UnitWord{"kg"},     UnitWord{"kgs"},        UnitWord{"kilogram"},   UnitWord{"kilograms"},
    UnitWord{"oz"},     UnitWord{"ounce"},      UnitWord{"ounces"},     UnitWord{"lb"},
    UnitWord{"lbs"},    UnitWord{"pound"},      UnitWord{"pounds"},     UnitWord{"tonne"},
    UnitWord{"tonnes"}, UnitWord{"kilos", "kg"}};
// To units a pound and a tonne are masses: as loads they are multiplied by its `force`, the standard gravity.
constexpr std::array load_words{
    UnitWord{"N"},
    UnitWord{"newton"},
    UnitWord{"newtons"},
    UnitWord{"kN"},
    UnitWord{"kn", "kN"},
    UnitWord{"kilonewton"},
    UnitWord{"kilonewtons"},
    UnitWord{"lbf"},
    UnitWord{"kgf"},
    UnitWord{"lb", "lb force"},
    UnitWord{"lbs", "lbs force"},
    UnitWord{"pound", "pound force"},
    UnitWord{"pounds", "pounds force"},
    UnitWord{"tonnes", "tonnes force"},
    UnitWord{"metric tons", "metricton force"},
    UnitWord{"short ton", "shortton force"},
    UnitWord{"long tons", "longton force"},
};

// Decimals with every word, with a space before it and without.
template <class Words>
void add_decimals(std::vector<Quantity>& out, const Words& words, int most_digits, std::mt19937& random) {
  for (const UnitWord& word : words) {
    const std::string theirs = *word.units_has == '\0' ? word.said : word.units_has;
    const bool mark = static_cast<unsigned char>(*word.said) < 'A' || std::string_view(word.said) == "″";
    for (int digits = 0; digits <= most_digits; ++digits) {
      const auto n = std::uniform_int_distribution{1, 9'999}(random);
      const double v = n / std::pow(10, digits);
      const std::string number = fmt::format("{:.{}f}", v, digits);
      if (!mark)
        out.push_back({fmt::format("{} {}", number, word.said), fmt::format("{} {}", number, theirs)});
      out.push_back({fmt::format("{}{}", number, word.said), fmt::format("{} {}", number, theirs)});
    }
  }
}

constexpr std::array ways_to_say_inch{"in", "inch", "inches", "\"", "″"};

void add_fractions(std::vector<Quantity>& out, std::mt19937& random) {
  const auto any = [&](int low, int high) { return std::uniform_int_distribution{low, high}(random); };
  for (int k = 0; k < 120; ++k) {
    const int bottom = 2 << any(0, 5), top = any(1, bottom - 1), whole = any(1, 60);
    const char* inch = ways_to_say_inch[static_cast<std::size_t>(any(0, 4))];
    const std::string space = *inch == 'i' ? " " : "";
    const std::string theirs = fmt::format("({}+{}|{}) inch", whole, top, bottom);
    out.push_back({fmt::format("{} {}/{}{}{}", whole, top, bottom, space, inch), theirs});
    out.push_back({fmt::format("{}-{}/{}{}{}", whole, top, bottom, space, inch), theirs});
    out.push_back(
        {fmt::format("{}/{}{}{}", top, bottom, space, inch), fmt::format("{}|{} inch", top, bottom)});
    out.push_back({fmt::format("{} ft {} {}/{} in", any(2, 9), whole % 12, top, bottom), ""});
    out.back().units_has =
        fmt::format("{} ft + ({}+{}|{}) inch", out.back().said.front(), whole % 12, top, bottom);
  }
  for (int k = 0; k < 20; ++k) {
    const int feet = any(1, 9), inches = any(1, 11);
    const std::string theirs = fmt::format("{} ft + {} inch", feet, inches);
    for (const char* form : {"{} ft {} in", "{} feet {} inches", "{}' {}\"", "{}'{}\"", "{} ft {}\""})
      out.push_back({fmt::format(fmt::runtime(form), feet, inches), theirs});
  }
  for (const char* whole : {"", "1", "12"}) {
    const auto one = [&](const char* sign, const char* theirs) {
      out.push_back(
          {fmt::format("{}{} in", whole, sign), fmt::format("({}+{}) inch", *whole ? whole : "0", theirs)});
    };
    one("½", "1|2"), one("¼", "1|4"), one("¾", "3|4"), one("⅛", "1|8"), one("⅜", "3|8"), one("⅝", "5|8");
    one("⅞", "7|8"), one("⅓", "1|3"), one("⅔", "2|3");
  }
}

// In words, as no program but ours reads them; what they are to units is written beside them.
const std::vector<Quantity> spoken{
    {"half an inch", "1|2 inch"},
    {"a half inch", "1|2 inch"},
    {"half inch", "1|2 inch"},
    {"one half inch", "1|2 inch"},
    {"a quarter inch", "1|4 inch"},
    {"a quarter of an inch", "1|4 inch"},
    {"three quarters of an inch", "3|4 inch"},
    {"three eighths of an inch", "3|8 inch"},
    {"seven sixteenths inch", "7|16 inch"},
    {"three thirty-seconds of an inch", "3|32 inch"},
    {"five thirty seconds inch", "5|32 inch"},
    {"nine sixty-fourths of an inch", "9|64 inch"},
    {"one sixty fourth of an inch", "1|64 inch"},
    {"a thirty-second of an inch", "1|32 inch"},
    {"two and one sixteenth inches", "(2+1|16) inch"},
    {"two and a half inches", "2.5 inch"},
    {"twenty-two and three eighths inches", "(22+3|8) inch"},
    {"five and a half cm", "5.5 cm"},
    {"5 1/2 cm", "5.5 cm"},
    {"fifty two point four mm", "52.4 mm"},
    {"one hundred and five mm", "105 mm"},
    {"two inches", "2 inch"},
    {"an inch", "1 inch"},
    {"an inch and a half", "1.5 inch"},
    {"one and a half inches", "1.5 inch"},
    {"a foot", "1 ft"},
    {"two feet", "2 ft"},
    {"half a foot", "0.5 ft"},
    {"ten thou", "10 thou"},
    {"half a mm", "0.5 mm"},
    {"half a millimetre", "0.5 mm"},
    {"a millimetre", "1 mm"},
    {"a quarter of a millimetre", "0.25 mm"},
    {"three tenths of a millimetre", "0.3 mm"},
    {"4 tenths of a mm", "0.4 mm"},
    {"5 sixteenths of an inch", "5|16 inch"},
    {"five hundredths of a millimetre", "0.05 mm"},
    {"four thousandths of an inch", "4 thou"},
    {"an inch and three quarters", "1.75 inch"},
    {"two inches and a half", "2.5 inch"},
    {"two thousand five hundred mm", "2500 mm"},
    {"a hundred and five mm", "105 mm"},
};
const std::vector<Quantity> spoken_masses{
    {"half a pound", "0.5 lb"},
    {"a pound", "1 lb"},
    {"a pound and a half", "1.5 lb"},
    {"two and a half ounces", "2.5 oz"},
    {"half a kilo", "0.5 kg"},
    {"a quarter pound", "0.25 lb"},
    {"1 1/2 lb", "1.5 lb"},
    {"2 lb 3 oz", "2 lb + 3 oz"},
    {"3 pounds 2 1/2 ounces", "3 lb + 2.5 oz"},
    {"1 lb 9oz", "1 lb + 9 oz"},
    {"three hundred and eighty grams", "380 g"},
    {"a kilo", "1 kg"},
    {"an ounce", "1 oz"},
};
const std::vector<Quantity> spoken_loads{
    {"two thousand pounds", "2000 lbf"},
    {"a thousand pounds", "1000 lbf"},
    {"eight kilonewtons", "8 kN"},
    {"half a kilonewton", "0.5 kN"},
    {"8.5 kN", "8.5 kN"},
    {"two and a half kn", "2.5 kN"},
    {"fifteen hundred pounds", "1500 lbf"},
    {"two thousand five hundred lb", "2500 lbf"},
};

double value_of(const shop::Value& value) {
  if (const auto* length = std::get_if<units::Length>(&value)) return static_cast<double>(length->nm);
  if (const auto* mass = std::get_if<units::Mass>(&value)) return static_cast<double>(mass->mg);
  const auto* force = std::get_if<units::Force>(&value);
  return force == nullptr ? std::nan("") : force->n;
}

// `step`: what the type is rounded to; 0: to what a double holds.
void compare(const std::vector<Quantity>& all, const char* unit, shop::Kind kind, double step) {
  std::vector<std::string> asked;
  asked.reserve(all.size());
  for (const Quantity& q : all)
    asked.push_back(q.units_has + "\n" + unit);
  const std::vector<std::string> theirs = answers("units -t -q -o %.17g", asked);
  OneValue shop;
  const shop::Param param{"it", kind, false, false, "what it is"};
  for (std::size_t k = 0; k < all.size(); ++k) {
    INFO("'" << all[k].said << "' is to units " << all[k].units_has << ", " << theirs[k] << " " << unit);
    const double value = std::stod(theirs[k]), ours = value_of(shop.read(param, all[k].said));
    CHECK(std::fabs(ours - value) <= step / 2 + 1e-13 * std::fabs(value));
  }
}

} // namespace

TEST_CASE("lengths as said are what the program units says") {
  if (!installed("units", "lengths as they are said")) return;
  std::mt19937 random(20261126);
  std::vector<Quantity> all = spoken;
  add_decimals(all, length_words, 3, random);
  add_fractions(all, random);
  REQUIRE(all.size() > 500);
  compare(all, "nm", shop::Kind::length, 1);
}

TEST_CASE("masses as said are what the program units says") {
  if (!installed("units", "masses as they are said")) return;
  std::mt19937 random(20261127);
  std::vector<Quantity> all = spoken_masses;
  add_decimals(all, mass_words, 3, random);
  compare(all, "mg", shop::Kind::mass, 1);
}

TEST_CASE("loads as said are what the program units says") {
  if (!installed("units", "loads as they are said")) return;
  std::mt19937 random(20261128);
  std::vector<Quantity> all = spoken_loads;
  add_decimals(all, load_words, 2, random);
  compare(all, "N", shop::Kind::load, 0);
}
