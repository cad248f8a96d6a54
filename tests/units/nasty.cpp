// The nasty numbers of every numeric field: each is either taken as exactly what it says, or clearly refused.
#include "support/catch.hpp"

#include "units/read.hpp"

#include <cmath>
#include <iterator>
#include <random>
#include <string>

using namespace nutward::units;

TEST_CASE("Nasty numbers are refused with a sentence and a remedy by every reader") {
  const std::string text = GENERATE(
      as<std::string>{}, "", " ", "\t", "\n", "NaN", "nan", "-nan", "nan(0x1)", "inf", "-inf", "+inf",
      "Infinity", "1e308", "1e309", "-1e308", "1E5", "1e-5", "1e+5", "2.5e3", "0x1F", "0X1f", "0x1p-3",
      "0b101", "0o17", "1_000", "1'000", "1,250", "52,4", "1,250.5", "1.250,5", "1,2,3", "1.2.3", "1..2",
      "1.", "-.", ".", "-", "+", "--5", "+-5", "5-", "- 5", "1 250", "1\u00a0250", "1\u202f250",
      "9223372036854775807", "9223372036854775808", "-9223372036854775808", "-9223372036854775809",
      "18446744073709551615", "18446744073709551616", "340282366920938463463374607431768211456",
      "1000000000000000", "999999999999999", "2147483648000000", "0.1234567890123456789", "1/0", "0/0",
      "1 1/0", "1/0/0", "1/2/2026", "1 5/4", "1 1/1", "1/-2", "1/2.5", "10000000000/2", "1/99999999999", "½½",
      "1½2", "¾5", "٣", "１２", "²", "Ⅻ", "12th", "52.4 foo", "52.4mn", "5%", "5°", "$5", "#5", "(5)", "5;6",
      "5\n6", "null", "true", "[5]", "{}", "\"5\"", "five", "\xff", "5\xff", "5\u200b", "\u202e5", "5\u0007",
      std::string("5\0", 2), std::string("\0", 1), std::string(5'000, '9'), "0." + std::string(5'000, '7'));
  INFO(text.substr(0, 60));
  const auto refused = [&](auto read) {
    try {
      read();
      return false;
    } catch (const BadQuantity& e) {
      const std::string what = e.what();
      CHECK(what.size() > 10);
      CHECK(what.size() < 400);
      CHECK(what.back() == '.');
      CHECK(e.would_do.size() > 10);
      CHECK(e.at <= text.size());
      return true;
    }
  };
  CHECK(refused([&] { read_length(text, LengthUnit::m); }));
  CHECK(refused([&] { read_force(text, ForceUnit::kgf); }));
  CHECK(refused([&] { read_mass(text, MassUnit::kg); }));
  // A fifteen-digit amount is within the range of money in no currency's minor unit, so it is refused here
  // too.
  CHECK(refused([&] { read_money(text); }));
}

TEST_CASE("Numbers that only look nasty are taken for what they are") {
  CHECK(read_length("-0", LengthUnit::mm).nm == 0);
  CHECK(read_length("-0.0", LengthUnit::mm).nm == 0);
  CHECK(read_length("+0", LengthUnit::mm).nm == 0);
  CHECK(read_length("0000000000000000000000005", LengthUnit::mm).nm == 5'000'000);
  CHECK(read_length("0.5000000000000000000000000", LengthUnit::mm).nm == 500'000);
  CHECK(read_length("0.000000000000000001", LengthUnit::mm).nm == 0);
  CHECK(read_length("0.30000000000000004", LengthUnit::mm).nm == 300'000);
  CHECK(read_length("0/5", LengthUnit::mm).nm == 0);
  CHECK(read_length("007/008", LengthUnit::mm).nm == 875'000);
  CHECK(read_length("-1/1", LengthUnit::mm).nm == -1'000'000);
}

TEST_CASE("The range of a quantity ends where it says") {
  CHECK(read_length("1000000000", LengthUnit::mm).nm == 1'000'000'000'000'000);
  CHECK(read_length("-1000000", LengthUnit::m).nm == -1'000'000'000'000'000);
  CHECK_THROWS_AS(read_length("1000000000.000001", LengthUnit::mm), BadQuantity);
  CHECK_THROWS_AS(read_length("-1000000.1", LengthUnit::m), BadQuantity);
  CHECK_THROWS_AS(read_length("3280839' 11\"", LengthUnit::m), BadQuantity);
  CHECK(read_length("3280839' 10\"", LengthUnit::m).nm == 999'999'981'200'000);
  CHECK(read_force("1000000 kN", ForceUnit::n).n == 1e9);
  CHECK_THROWS_AS(read_force("1000000.1 kN", ForceUnit::n), BadQuantity);
  CHECK(read_mass("1000000000", MassUnit::kg).mg == 1'000'000'000'000'000);
  CHECK_THROWS_AS(read_mass("1000000000.1", MassUnit::kg), BadQuantity);
}

TEST_CASE("Whatever is scanned, the scan stays inside the text and the range") {
  const char* const parts[] = {
      "1",    "9",  "64", "0",  ".",  ",",  "/",   "-",     "+", " ",    "'",    "\"",     "in",
      "in ",  "mm", "ft", "lb", "kN", "oz", "ton", "x",     "e", "¾",    "″",    "′",      "\u00a0",
      "slot", "of", "m",  "g",  "N",  "t",  "mg",  "short", "²", "\xff", "\xe2", "\u2044", "999999999999999",
      "the"};
  std::mt19937 random{2026};
  int taken = 0;
  for (int round = 0; round < 100'000; ++round) {
    std::string text;
    for (auto left = 1 + random() % 8; left > 0; --left)
      text += parts[random() % std::size(parts)];
    INFO(text);
    const auto look = [&](auto scan, auto fits) {
      try {
        if (const auto got = scan()) {
          ++taken;
          if (got->bytes == 0 || got->bytes > text.size() || !fits(got->value))
            FAIL("took " << got->bytes << " bytes of " << text);
        }
      } catch (const BadQuantity& e) {
        if (e.at > text.size()) FAIL("blamed byte " << e.at << " of " << text);
      }
    };
    look([&] { return scan_length(text, LengthUnit::mm); },
         [](Length v) { return abs(v) <= Length{1'000'000'000'000'000}; });
    look([&] { return scan_force(text, ForceUnit::lbf); }, [](Force v) { return std::fabs(v.n) <= 1e9; });
    look([&] { return scan_mass(text, MassUnit::oz); },
         [](Mass v) { return v.mg <= 1'000'000'000'000'000 && v.mg >= -1'000'000'000'000'000; });
  }
  CHECK(taken > 20'000);
}
