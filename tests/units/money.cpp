// Sharing a price: exact, then rounded once to the nearest minor unit, a half away from zero.
#include "units/money.hpp"
#include "support/catch.hpp"

#include <limits>
#include <random>
#include <stdexcept>

using namespace nutward::units;

TEST_CASE("a part of a price is rounded to the nearest minor unit, a half away from zero") {
  CHECK(share({1000}, Length{53}, Length{6000}).minor == 9); // 8.83
  CHECK(share({1}, Length{1}, Length{2}).minor == 1);        // 0.5
  CHECK(share({1}, Length{499}, Length{1000}).minor == 0);   // 0.499
  CHECK(share({5}, Length{1}, Length{2}).minor == 3);        // 2.5
  CHECK(share({-5}, Length{1}, Length{2}).minor == -3);      // -2.5
  CHECK(share({5}, Length{-1}, Length{2}).minor == -3);
  CHECK(share({-5}, Length{-1}, Length{2}).minor == 3);
  CHECK(share({0}, Length{7}, Length{3}).minor == 0);
  CHECK(share({7}, Length{3}, Length{3}).minor == 7);
}

TEST_CASE("no price is too large to be shared, and what cannot be held is refused") {
  constexpr std::int64_t most = std::numeric_limits<std::int64_t>::max();
  CHECK(share({most}, Length{most}, Length{most}).minor == most);
  CHECK(share({most}, Length{most - 1}, Length{most}).minor == most - 1);
  CHECK_THROWS_AS(share({most}, Length{2}, Length{1}), std::overflow_error);
  CHECK_THROWS_AS(share({1}, Length{1}, Length{0}), std::invalid_argument);
  CHECK_THROWS_AS(share({1}, Length{1}, Length{-3}), std::invalid_argument);
}

TEST_CASE("a share is never further than half a minor unit from the exact part") {
  std::mt19937_64 random(7);
  for (int i = 0; i < 10'000; ++i) {
    const auto whole = static_cast<std::int64_t>(random() % 1'000'000),
               part = static_cast<std::int64_t>(random() % 1'000'000);
    const auto of = static_cast<std::int64_t>(1 + random() % 1'000'000);
    const std::int64_t off = share({whole}, Length{part}, Length{of}).minor * of - whole * part;
    CHECK(2 * std::abs(off) <= of);
  }
}
