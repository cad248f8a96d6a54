// Reading lengths. 1 in = 25.4 mm and 1/64 in = 0.396875 mm exactly: NIST SP 811, from memory.
#include "support/catch.hpp"

#include "refusal.hpp"
#include "units/print.hpp"
#include "units/read.hpp"

#include <random>

using namespace nutward::units;

namespace {
std::int64_t nm(std::string_view text) {
  return read_length(text, LengthUnit::mm).nm;
}
} // namespace

TEST_CASE("A length is read in every unit and spelling") {
  struct Row {
    const char* text;
    std::int64_t nm;
  };
  const auto row = GENERATE(values<Row>({
      {"52.4 mm", 52'400'000},
      {"52.4mm", 52'400'000},
      {"52.4 MM", 52'400'000},
      {"52.4 Millimetres", 52'400'000},
      {"1 millimeter", 1'000'000},
      {"1 millimetre", 1'000'000},
      {"3 millimeters", 3'000'000},
      {"5.24 cm", 52'400'000},
      {"1.25 m", 1'250'000'000},
      {"2 metres", 2'000'000'000},
      {"2 meter", 2'000'000'000},
      {"1 in", 25'400'000},
      {"1 inch", 25'400'000},
      {"2 inches", 50'800'000},
      {"2 INCHES", 50'800'000},
      {"1\"", 25'400'000},
      {"1″", 25'400'000},
      {"1”", 25'400'000},
      {"1''", 25'400'000},
      {"1′′", 25'400'000},
      {"1 ft", 304'800'000},
      {"1 foot", 304'800'000},
      {"2 feet", 609'600'000},
      {"1'", 304'800'000},
      {"1′", 304'800'000},
      {"1’", 304'800'000},
      {"1' 3\"", 381'000'000},
      {"1'3\"", 381'000'000},
      {"1 ft 3 in", 381'000'000},
      {"1'-3 1/2\"", 393'700'000},
      {"-1' 3\"", -381'000'000},
      {"2 1/16 in", 52'387'500},
      {"2-1/16\"", 52'387'500},
      {"2.0625\"", 52'387'500},
      {"2 1⁄16 in", 52'387'500},
      {"1¾ in", 44'450'000},
      {"1¾", 1'750'000},
      {"1 ¾\"", 44'450'000},
      {"¾ in", 19'050'000},
      {"¾\"", 19'050'000},
      {"1/64 in", 396'875},
      {"-2 1/16 in", -52'387'500},
      {"-¾\"", -19'050'000},
      {"⅛ in", 3'175'000},
      {"5/4 in", 31'750'000},
      {"2 in.", 50'800'000},
      {"6-inch", 152'400'000},
      {"6-in", 152'400'000},
      {"8 thou", 203'200},
      {"50 µm", 50'000},
      {"50 μm", 50'000},
      {"50 um", 50'000},
      {"50 microns", 50'000},
      {"  52.4  mm  ", 52'400'000},
      {"52.4\u00a0mm", 52'400'000},
      {"52.4\u202fmm", 52'400'000},
      {"52.4", 52'400'000},
      {"052.40", 52'400'000},
      {".5", 500'000},
      {"+5", 5'000'000},
      {"-5", -5'000'000},
      {"−5 mm", -5'000'000},
      {"0.1 mm", 100'000},
      {"0.000001", 1},
      {"0.0000005", 1},
      {"0.00000049", 0},
      {"-0.0000005", -1},
      {"1/3 in", 8'466'667},
      {"2/3 in", 16'933'333},
  }));
  INFO(row.text);
  CHECK(nm(row.text) == row.nm);
}

TEST_CASE("A bare number is in the shop's unit, and the scan says that none was said") {
  CHECK(read_length("2.5", LengthUnit::cm).nm == 25'000'000);
  CHECK(read_length("2.5", LengthUnit::m).nm == 2'500'000'000);
  CHECK(read_length("2 1/16", LengthUnit::in).nm == 52'387'500);
  CHECK(read_length("2", LengthUnit::ft).nm == 609'600'000);
  CHECK_FALSE(scan_length("52.4 of medium", LengthUnit::mm)->unit_said);
  CHECK(scan_length("52.4 mm of medium", LengthUnit::mm)->unit_said);
}

TEST_CASE("A scan takes the quantity and leaves the rest of the sentence") {
  struct Row {
    const char* text;
    const char* taken;
    std::int64_t nm;
    bool said;
  };
  const auto row = GENERATE(values<Row>({
      {"52.4 of medium", "52.4", 52'400'000, false},
      {"  52.4 mm of medium", "  52.4 mm", 52'400'000, true},
      {"9 in slot 3", "9", 9'000'000, false},
      {"9 in the tin", "9", 9'000'000, false},
      {"9 in job 4", "9", 9'000'000, false},
      {"9 in a box", "9", 9'000'000, false},
      {"9 in two days", "9", 9'000'000, false},
      {"9 in 24 h", "9", 9'000'000, false},
      {"52.4 in Slot 3", "52.4", 52'400'000, false},
      {"2 in of medium", "2 in", 50'800'000, true},
      {"2 in. of medium", "2 in.", 50'800'000, true},
      {"2 in. Then slot 4", "2 in", 50'800'000, true},
      {"2 in, and slot 4", "2 in", 50'800'000, true},
      {"2 in?", "2 in", 50'800'000, true},
      {"2 in x 3 in", "2 in", 50'800'000, true},
      {"12 in radius", "12 in", 304'800'000, true},
      {"25 1/2 in scale", "25 1/2 in", 647'700'000, true},
      {"2in the tin", "2in", 50'800'000, true},
      {"6-in bar in the press", "6-in", 152'400'000, true},
      {"2 inches in slot 3", "2 inches", 50'800'000, true},
      {"2\" in slot 3", "2\"", 50'800'000, true},
      {"1' 3\" of wire", "1' 3\"", 381'000'000, true},
      {"1 ft of wire", "1 ft", 304'800'000, true},
      {"1.5 ft 3 in of it", "1.5 ft", 457'200'000, true},
      {"1 ft 310 g", "1 ft", 304'800'000, true},
      {"9's", "9", 9'000'000, false},
      {"8-10", "8", 8'000'000, false},
      {"50x43", "50", 50'000'000, false},
      {"3x 52.4", "3", 3'000'000, false},
      {"52.4, 50.1", "52.4", 52'400'000, false},
      {"52.4.", "52.4", 52'400'000, false},
      {"9 n of it", "9", 9'000'000, false},
      {"3 G strings", "3", 3'000'000, false},
      {"2 short frets", "2", 2'000'000, false},
  }));
  INFO(row.text);
  const auto got = scan_length(row.text, LengthUnit::mm);
  REQUIRE(got);
  CHECK(std::string_view(row.text).substr(0, got->bytes) == row.taken);
  CHECK(got->value.nm == row.nm);
  CHECK(got->unit_said == row.said);
}

TEST_CASE("An `in` that may be either is asked about, unless both readings agree") {
  for (const char* text : {"9 in ebony", "1 3/4 in the tin", "1¾ in slot 3", "2 in \"A\""}) {
    INFO(text);
    CHECK_THROWS_AS(scan_length(text, LengthUnit::mm), BadQuantity);
    CHECK_NOTHROW(scan_length(text, LengthUnit::in));
  }
  const auto in_inches = scan_length("1 3/4 in the tin", LengthUnit::in);
  CHECK(in_inches->value.nm == 44'450'000);
  CHECK(in_inches->bytes == 5);
}

TEST_CASE("Text that begins with no number is no length") {
  for (const char* text : {"", "   ", "slot 9", "nan", "inf", "-inf", "- 5", "--5", ".", "in 3", "12th",
                           "24h", "9b", "mm", "٣"}) {
    INFO(text);
    CHECK_FALSE(scan_length(text, LengthUnit::mm).has_value());
    CHECK_THROWS_AS(read_length(text, LengthUnit::mm), BadQuantity);
  }
}

TEST_CASE("A refusal says what was wrong, where, and what would do") {
  try {
    read_length("1,250", LengthUnit::mm);
    FAIL("1,250 was taken");
  } catch (const BadQuantity& e) {
    CHECK(std::string(e.what()) ==
          "“1,250” may be 1.250 with a decimal comma, 1250 with its thousands marked, or two numbers.");
    CHECK(e.at == 1);
    CHECK(e.would_do ==
          "Use a point for decimals and no mark for thousands, and a blank after a comma between numbers.");
  }
  try {
    read_length("310 g", LengthUnit::mm);
    FAIL("grams were taken");
  } catch (const BadQuantity& e) {
    CHECK(std::string(e.what()) == "“g” is a unit of mass, and a length is wanted here.");
    CHECK(e.at == 4);
    CHECK(e.would_do == "Give a length such as 52.4 mm or 2 1/16 in.");
  }
  try {
    read_length("52.4 \x1b[2J", LengthUnit::mm);
    FAIL("an escape sequence was taken");
  } catch (const BadQuantity& e) {
    CHECK(std::string(e.what()).find('\x1b') == std::string::npos);
    CHECK(e.at == 5);
  }
}

TEST_CASE("Marks between digits are asked about, never guessed") {
  CHECK(refusal([] { read_length("52,4", LengthUnit::mm); }) ==
        "“52,4” may be 52.4 with a decimal comma or two numbers.");
  CHECK(contains(refusal([] { scan_length("1'250 mm", LengthUnit::mm); }), "may be feet and inches"));
  CHECK(contains(refusal([] { scan_length("1\u202f250 mm", LengthUnit::mm); }), "or two numbers"));
  CHECK(refusal([] { scan_length("9 in ebony", LengthUnit::mm); }) ==
        "It is not clear whether “in” means inches in “in ebony”.");
}

TEST_CASE("A length to the nanometre survives printing and reading") {
  std::mt19937_64 random{20261212};
  for (int i = 0; i < 20'000; ++i) {
    const int bits = static_cast<int>(random() % 50);
    std::int64_t value = static_cast<std::int64_t>(random() >> (63 - bits));
    if (value > 1'000'000'000'000'000) continue;
    if (random() % 2) value = -value;
    const auto text = print_exact_mm(Length{value});
    INFO(text);
    REQUIRE(read_length(text, LengthUnit::mm).nm == value);
    REQUIRE(read_length(text + " mm", LengthUnit::in).nm == value);
  }
}

TEST_CASE("A printed fraction of an inch is read as what it stands for") {
  for (std::int64_t steps = -300; steps <= 300; ++steps) {
    const auto text = print_fraction(Length{steps * 396'875});
    INFO(text);
    REQUIRE(read_length(text, LengthUnit::mm).nm == steps * 396'875);
  }
}
