#include "support/catch.hpp"

#include "units/print.hpp"

#include <limits>

using namespace nutward::units;

namespace {
constexpr auto least = std::numeric_limits<std::int64_t>::min();
}

TEST_CASE("A length prints to 0.01 mm or 0.001 in") {
  CHECK(print(Length{52'400'000}) == "52.40 mm");
  CHECK(print(Length{52'396'875}) == "52.40 mm");
  CHECK(print(Length{52'394'999}) == "52.39 mm");
  CHECK(print(Length{52'395'000}) == "52.40 mm");
  CHECK(print(Length{-52'395'000}) == "-52.40 mm");
  CHECK(print(Length{0}) == "0.00 mm");
  CHECK(print(Length{-4'999}) == "0.00 mm");
  CHECK(print(Length{52'387'500}, LengthUnit::in) == "2.063 in"); // 2 1/16 in is 2.0625
  CHECK(print(Length{1'250'000'000}, LengthUnit::m) == "1.25 m");
  CHECK(print(Length{1'250'400'000}, LengthUnit::m) == "1.2504 m");
  CHECK(print(Length{52'400'000}, LengthUnit::cm) == "5.24 cm");
  CHECK(print(Length{381'000'000}, LengthUnit::ft) == "1.25 ft");
  CHECK(print(Length{least}) == "-9223372036854.78 mm");
}

TEST_CASE("A plain length has no unit and no trailing zeros") {
  CHECK(print_plain(Length{52'400'000}) == "52.4");
  CHECK(print_plain(Length{52'000'000}) == "52");
  CHECK(print_plain(Length{100'000'000}) == "100");
  CHECK(print_plain(Length{0}) == "0");
  CHECK(print_plain(Length{-500'000}) == "-0.5");
  CHECK(print_plain(Length{52'387'500}, LengthUnit::in) == "2.063");
}

TEST_CASE("An exact length has every digit of the nanometre") {
  CHECK(print_exact_mm(Length{52'396'875}) == "52.396875");
  CHECK(print_exact_mm(Length{52'000'000}) == "52");
  CHECK(print_exact_mm(Length{-1}) == "-0.000001");
  CHECK(print_exact_mm(Length{0}) == "0");
  CHECK(print_exact_mm(Length{least}) == "-9223372036854.775808");
}

TEST_CASE("A fraction of an inch says what it leaves out") {
  CHECK(print_fraction(Length{52'387'500}) == "2 1/16 in");
  CHECK(print_fraction(Length{52'417'500}) == "2 1/16 in (+0.03 mm)");
  CHECK(print_fraction(Length{52'357'500}) == "2 1/16 in (−0.03 mm)");
  CHECK(print_fraction(Length{-52'417'500}) == "-2 1/16 in (−0.03 mm)");
  CHECK(print_fraction(Length{52'387'501}) == "2 1/16 in (+0.000001 mm)");
  CHECK(print_fraction(Length{25'400'000}) == "1 in");
  CHECK(print_fraction(Length{396'875}) == "1/64 in");
  CHECK(print_fraction(Length{19'050'000}) == "3/4 in");
  CHECK(print_fraction(Length{0}) == "0 in");
  CHECK(print_fraction(Length{-100'000}) == "0 in (−0.10 mm)");
  CHECK_NOTHROW(print_fraction(Length{least}));
}

TEST_CASE("A reported force prints all that was said of it") {
  CHECK(print_exact(Force{8000}, ForceUnit::lbf) == "8 kN");
  CHECK(print_exact(Force{1825 * 4.4482216152605}, ForceUnit::lbf) == "1825 lb");
  CHECK(print_exact(Force{6000}, ForceUnit::kn) == "6 kN");
  CHECK(print_exact(Force{35.5}, ForceUnit::n) == "35.5 N");
  CHECK(print_exact(Force{181.5 * 9.80665}, ForceUnit::lbf) == "181.5 kgf");
  CHECK(print_exact(Force{0}, ForceUnit::kn) == "0 kN");
  CHECK_FALSE(print_exact(Force{1234.56789}, ForceUnit::lbf));
}

TEST_CASE("A force prints to the gauge's division") {
  CHECK(print(Force{1779.2886461042}, ForceUnit::n, 10) == "1780 N");
  CHECK(print(Force{1779.2886461042}, ForceUnit::lbf, 5) == "400 lb");
  CHECK(print(Force{1779.2886461042}, ForceUnit::kn, 0.05) == "1.80 kN");
  CHECK(print(Force{1779.2886461042}, ForceUnit::kgf, 0.5) == "181.5 kgf");
  CHECK(print(Force{10.3}, ForceUnit::n, 0.25) == "10.25 N");
  CHECK(print(Force{-0.1}, ForceUnit::n, 1) == "0 N");
  CHECK(print(Force{12.7}, ForceUnit::n, 0) == "13 N");
  CHECK(print(Force{12.7}, ForceUnit::n, std::numeric_limits<double>::quiet_NaN()) == "13 N");
}

TEST_CASE("Mass and money print with their units") {
  CHECK(print(Mass{310'000}) == "310 g");
  CHECK(print(Mass{310'005}) == "310.005 g");
  CHECK(print(Mass{310'000}, MassUnit::kg) == "0.310 kg");
  CHECK(print(Mass{7}, MassUnit::mg) == "7 mg");
  CHECK(print(Mass{45'359'237}, MassUnit::lb) == "100.000 lb");
  CHECK(print(Mass{45'359'237}, MassUnit::oz) == "1600.00 oz");
  CHECK(print(Money{1'250}, "EUR") == "12.50 EUR");
  CHECK(print(Money{-5}, "EUR") == "-0.05 EUR");
  CHECK(print(Money{least}, "EUR") == "-92233720368547758.08 EUR");
}
