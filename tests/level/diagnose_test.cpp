// Diagnoses that the trade knows. Common practice, no source, unless said otherwise.
#include "level/support.hpp"

using namespace bench;

TEST_CASE("6 to 8 rocking is 7 high, 6 low or 8 low, and 4 to 6 steady all but rules out 6") {
  const Lines lines = nutward::level::lines(a_board(22));
  const auto one = diagnose(std::vector{rocks(6, 8)}, lines);
  CHECK(one.on(Line::middle).finding == Finding::frets);
  CHECK(text(one.on(Line::middle)) == "7 high | 6 low | 8 low");
  CHECK(one.on(Line::middle).agreed.empty());
  REQUIRE(one.on(Line::middle).one_of.size() == 1);
  CHECK(text(one.on(Line::middle).one_of[0]) == "6 low, 7 high, 8 low");
  CHECK(one.on(Line::bass).finding == Finding::unread);

  const auto two = diagnose(std::vector{rocks(6, 8), steady(4, 6)}, lines);
  CHECK(text(two.on(Line::middle)) == "7 high | 8 low");
  const auto three = diagnose(std::vector{rocks(6, 8), steady(4, 6), steady(8, 10)}, lines);
  CHECK(text(three.on(Line::middle)) == "7 high | 8 low (barely)");
}

TEST_CASE("12 to 14 rocking is 13 high, or 12 or 14 low, wherever the board ends") {
  for (const int slots : {14, 20, 24}) {
    const Lines lines = nutward::level::lines(a_board(slots));
    const auto found = diagnose(std::vector{rocks(12, 14)}, lines);
    CHECK(text(found.on(Line::middle)) ==
          (slots == 14 ? "13 high | 14 low | 12 low" : "13 high | 12 low | 14 low"));
  }
}
