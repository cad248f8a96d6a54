// Reading forces, masses and money. 1 lb = 0.45359237 kg exactly (NIST SP 811, from memory); 1 lbf
// = 4.4482216152605 N.
#include "support/catch.hpp"

#include "refusal.hpp"
#include "units/read.hpp"

#include <cmath>

using namespace nutward::units;

TEST_CASE("A force is read in every unit and spelling") {
  struct Row {
    const char* text;
    double n;
  };
  const auto row = GENERATE(values<Row>({
      {"1 lbf", 4.4482216152605},
      {"400 lb", 1779.2886461042},
      {"400 lbs", 1779.2886461042},
      {"400 pounds", 1779.2886461042},
      {"1 Pound", 4.4482216152605},
      {"35.5 N", 35.5},
      {"35.5N", 35.5},
      {"35.5 newtons", 35.5},
      {"35.5 n", 35.5},
      {"1.8 kN", 1800},
      {"1.8 kn", 1800},
      {"0.1 kN", 100},
      {"1 kg", 9.80665},
      {"2 kgf", 19.6133},
      {"1/2 lb", 2.22411080763025},
      {"-5 N", -5},
      {"1500", 1500},
      {"1 tonne", 9806.65},
      {"1 metric ton", 9806.65},
      {"1 short ton", 8896.443230521},
      {"2 Short  Tons", 17792.886461042},
      {"1 long ton", 9964.01641818352},
      {"400-lb", 1779.2886461042},
      {"400 lb.", 1779.2886461042},
  }));
  INFO(row.text);
  CHECK(read_force(row.text, ForceUnit::n).n == row.n);
}

TEST_CASE("A bare force is in the shop's unit") {
  CHECK(read_force("400", ForceUnit::lbf).n == 1779.2886461042);
  CHECK(read_force("1.8", ForceUnit::kn).n == 1800);
  CHECK(read_force("1", ForceUnit::kgf).n == 9.80665);
}

TEST_CASE("A force of -0 is 0 without a sign") {
  CHECK(std::signbit(read_force("-5", ForceUnit::n).n));
  CHECK_FALSE(std::signbit(read_force("-0", ForceUnit::n).n));
  CHECK_FALSE(std::signbit(read_force("-0.0 kN", ForceUnit::n).n));
}

TEST_CASE("A mass is read in every unit and spelling") {
  struct Row {
    const char* text;
    std::int64_t mg;
  };
  const auto row = GENERATE(values<Row>({
      {"310 g", 310'000},
      {"310g", 310'000},
      {"310 grams", 310'000},
      {"1 gram", 1'000},
      {"310", 310'000},
      {"5 mg", 5},
      {"0.31 kg", 310'000},
      {"1 KG", 1'000'000},
      {"1 lb", 453'592},
      {"100 lb", 45'359'237},
      {"100 pounds", 45'359'237},
      {"1 oz", 28'350},
      {"16 ounces", 453'592},
      {"1600 oz", 45'359'237},
      {"½ lb", 226'796},
      {"1 tonne", 1'000'000'000},
      {"1 short ton", 907'184'740},
      {"1 long ton", 1'016'046'909},
      {"-5 g", -5'000},
      {"0.0005 g", 1},
      {"0.0004 g", 0},
  }));
  INFO(row.text);
  CHECK(read_mass(row.text, MassUnit::g).mg == row.mg);
}

TEST_CASE("A bare mass is in the shop's unit") {
  CHECK(read_mass("2", MassUnit::mg).mg == 2);
  CHECK(read_mass("2", MassUnit::kg).mg == 2'000'000);
  CHECK(read_mass("1600", MassUnit::oz).mg == 45'359'237);
  CHECK(read_mass("100", MassUnit::lb).mg == 45'359'237);
}

TEST_CASE("A ton is asked about: short, long or metric") {
  for (const char* text : {"20 ton", "20 tons", "20 Ton", "20-ton", "20 t"}) {
    INFO(text);
    CHECK(contains(refusal([&] { scan_force(text, ForceUnit::n); }),
                   "short ton (2000 lb), a long ton (2240 lb)"));
    CHECK(contains(refusal([&] { scan_mass(text, MassUnit::g); }),
                   "short ton (2000 lb), a long ton (2240 lb)"));
  }
  CHECK(contains(refusal([&] { read_length("20 ton", LengthUnit::mm); }), "is a unit of force"));
}

TEST_CASE("A unit of another kind is refused, and a word that only looks like one is left alone") {
  CHECK(contains(refusal([&] { read_length("5 kg", LengthUnit::mm); }), "is a unit of force or mass"));
  CHECK(contains(refusal([&] { scan_force("52.4 mm", ForceUnit::n); }), "is a unit of length"));
  CHECK(contains(refusal([&] { scan_force("2 in", ForceUnit::n); }), "is a unit of length"));
  CHECK(contains(refusal([&] { scan_force("2\"", ForceUnit::n); }), "are a length"));
  CHECK(contains(refusal([&] { scan_force("2 oz", ForceUnit::n); }), "is a unit of mass"));
  CHECK(contains(refusal([&] { scan_mass("5 N", MassUnit::g); }), "is a unit of force"));
  CHECK(contains(refusal([&] { scan_mass("5 Mg", MassUnit::g); }), "milligrams or a metric ton"));
  CHECK(contains(refusal([&] { scan_length("5 mil", LengthUnit::mm); }),
                 "thousandths of an inch or millimetres"));
  CHECK(scan_force("400 in slot 3", ForceUnit::lbf)->bytes == 3);
  CHECK(scan_mass("310 in the tin", MassUnit::g)->bytes == 3);
}

TEST_CASE("A load per length or an area is not taken for a load or a length") {
  CHECK(contains(refusal([&] { scan_force("35.5 N/mm", ForceUnit::n); }), "“N/mm” is not a unit of force"));
  CHECK_THROWS_AS(scan_length("2 mm²", LengthUnit::mm), BadQuantity);
  CHECK_THROWS_AS(scan_length("2 mm^2", LengthUnit::mm), BadQuantity);
  CHECK_FALSE(scan_length("2mm2", LengthUnit::mm).has_value());
}

TEST_CASE("Money is read to the hundredth and no finer") {
  CHECK(read_money("12.50").minor == 1'250);
  CHECK(read_money("12").minor == 1'200);
  CHECK(read_money("12.5").minor == 1'250);
  CHECK(read_money("12.500").minor == 1'250);
  CHECK(read_money("-0.05").minor == -5);
  CHECK(read_money("-0").minor == 0);
  CHECK(read_money("10000000000000").minor == 1'000'000'000'000'000);
  for (const char* text : {"", "12.505", "1,250", "12,50", "€12", "12 €", "12 EUR", "1/2", "12 1/2", "1e3",
                           "12.", "nan", "10000000000000.01", "9223372036854775808"}) {
    INFO(text);
    CHECK_THROWS_AS(read_money(text), BadQuantity);
  }
}
