// Slot positions against the published numbers of equal temperament, and the inch.
#include "board/board.hpp"
#include "support/catch.hpp"
#include "support/show.hpp"
#include "units/length.hpp"

#include <algorithm>
#include <array>
#include <cmath>

using namespace nutward;
using namespace nutward::units::literals;

namespace {

board::Board long_neck(units::Length scale) {
  board::Board b;
  b.scale = scale;
  b.slots = 36;
  b.nut_width = 43_mm;
  b.far_width = 52_mm;
  return b;
}

// What is left of the string beyond slot n; its pitch is the open string's times scale/rest.
double ratio(const board::Board& b, int n) {
  return b.scale.mm() / (b.scale.mm() - board::position(b, n).mm());
}

} // namespace

TEST_CASE("the octave is at half the scale, two octaves at three quarters, three at seven eighths") {
  const auto b = long_neck(648_mm); // worked out: 2^(-12/12), 2^(-24/12), 2^(-36/12)
  CHECK(board::position(b, 12) == 324_mm);
  CHECK(board::position(b, 24) == 486_mm);
  CHECK(board::position(b, 36) == 567_mm);
}

TEST_CASE("the first slot is at scale / 17.817153745") {
  // The luthier's constant, 1/(1 − 2^(−1/12)); published rounded to 17.817 (from memory), digits worked out.
  CHECK(board::position(long_neck(648_mm), 1).mm() == Approx(648 / 17.817153745).epsilon(0).margin(1e-6));
  CHECK(board::position(long_neck(2000_mm), 1).mm() == Approx(2000 / 17.817153745).epsilon(0).margin(1e-6));
  CHECK(board::position(long_neck(100_mm), 1).mm() == Approx(100 / 17.817153745).epsilon(0).margin(1e-6));
}

TEST_CASE("the slots give the published ratios of equal temperament") {
  // Ratios 2^(i/12) to six decimals, as in published tables of equal temperament.
  constexpr std::array table{1.059463, 1.122462, 1.189207, 1.259921, 1.334840, 1.414214,
                             1.498307, 1.587401, 1.681793, 1.781797, 1.887749, 2.0};
  const auto b = long_neck(648_mm);
  for (int n = 1; n <= 12; ++n) {
    CHECK(ratio(b, n) == Approx(table[static_cast<std::size_t>(n - 1)]).epsilon(0).margin(6e-7));
  }
}

TEST_CASE("a string tuned to middle C sounds the published notes up to B") {
  // From A = 440 (ISO 16), in Hz to three decimals, as in published note tables.
  constexpr std::array notes{277.183, 293.665, 311.127, 329.628, 349.228, 369.994,
                             391.995, 415.305, 440.000, 466.164, 493.883};
  const auto b = long_neck(648_mm);
  for (int n = 1; n <= 11; ++n) {
    CHECK(261.6256 * ratio(b, n) == Approx(notes[static_cast<std::size_t>(n - 1)]).epsilon(0).margin(1e-3));
  }
}

TEST_CASE("octaves of 19, 31 and 53 steps give their published fifths") {
  // 694.737, 696.774 and 701.887 cents, as in published tables of equal divisions (from memory; 1200·k/d).
  struct Row {
    int divisions, steps;
    double cents;
  };
  for (const Row& row : {Row{19, 11, 694.737}, Row{31, 18, 696.774}, Row{53, 31, 701.887}}) {
    auto b = long_neck(648_mm);
    b.divisions = row.divisions;
    CHECK(1200 * std::log2(ratio(b, row.steps)) == Approx(row.cents).epsilon(0).margin(1e-3));
  }
}

TEST_CASE("positions as measured on a diatonic board sound Ptolemy's intense diatonic") {
  // 9/8, 5/4, 4/3, 3/2, 5/3, 15/8, 2 (Ptolemy, Harmonics; from memory): the string that remains is the
  // inverse. Of 720 mm it is 640, 576, 540, 480, 432, 384, 360.
  auto b = long_neck(720_mm);
  b.slots = 7;
  b.far_at = 7;
  b.positions = {80_mm, 144_mm, 180_mm, 240_mm, 288_mm, 336_mm, 360_mm};
  const std::array ratios{9.0 / 8, 5.0 / 4, 4.0 / 3, 3.0 / 2, 5.0 / 3, 15.0 / 8, 2.0};
  CHECK_NOTHROW(board::check(b));
  for (int n = 1; n <= 7; ++n)
    CHECK(ratio(b, n) == Approx(ratios[static_cast<std::size_t>(n - 1)]).epsilon(0).margin(1e-12));
}

TEST_CASE("the construction of 1743 lies within 2.63 cents below and 1.93 above the slots") {
  // Stråhle's (17 − 5x)/(17 + 7x), x = i/12: string length that remains (Barbour 1957, from memory). Its
  // errors at the twelve slots, worked out: most at slot 9 and slot 2.
  const auto b = long_neck(648_mm);
  double flattest = 0, sharpest = 0;
  for (int n = 1; n <= 12; ++n) {
    const double x = n / 12.0;
    const double error = 1200 * std::log2((17 + 7 * x) / (17 - 5 * x) / ratio(b, n));
    flattest = std::min(flattest, error);
    sharpest = std::max(sharpest, error);
  }
  CHECK(flattest == Approx(-2.6244).epsilon(0).margin(1e-4));
  CHECK(sharpest == Approx(1.9258).epsilon(0).margin(1e-4));
}

TEST_CASE("an inch is 25.4 mm and a sixty-fourth of it is 396 875 nm, exactly") {
  // NIST SP 811, from memory.
  CHECK(units::inch == 25.4_mm);
  CHECK(units::inch.nm % 64 == 0);
  CHECK(units::inch.nm / 64 == 396'875);
  CHECK(board::position(long_neck(units::Length{units::inch.nm * 51 / 2}), 12) ==
        323.85_mm); // 25 1/2 in, halved
}
