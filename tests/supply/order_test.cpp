#include "supply/order.hpp"
#include "support/catch.hpp"
#include "support/show.hpp"

#include <boost/math/distributions/normal.hpp>
#include <vector>

using namespace nutward::supply;
using namespace nutward::units::literals;

TEST_CASE("service factors are those of the standard tables") {
  CHECK(service_factor(0.9) == Approx(1.2815515655).epsilon(1e-10));
  CHECK(service_factor(0.95) == Approx(1.6448536270).epsilon(1e-10));
  CHECK(service_factor(0.975) == Approx(1.9599639845).epsilon(1e-10));
  CHECK(service_factor(0.98) == Approx(2.0537489106).epsilon(1e-10));
  CHECK(service_factor(0.99) == Approx(2.3263478740).epsilon(1e-10));
  CHECK(service_factor(0.999) == Approx(3.0902323062).epsilon(1e-10));
  for (const double bad : {0.5, 0.2, 1.0, 1.5, std::nan("")})
    CHECK_THROWS_AS(service_factor(bad), BadSupply);
}

TEST_CASE("reorder points are those of worked examples in textbooks") {
  // W. J. Stevenson, Operations Management, 14th edition (2021), chapter 12, example 8: a lead-time demand of
  // 50 t with a deviation of 5 t, at a risk of 3 %, for which the table gives 1.88.
  CHECK(service_factor(0.97) == Approx(1.88).epsilon(1e-3));
  CHECK(safety_stock(1.88, {50, 5, 1}, {1, 0, 1}) == Approx(9.40));
  CHECK(reorder_point(1.88, {50, 5, 1}, {1, 0, 1}) == Approx(59.40));
  // J. Heizer and B. Render, Operations Management, chapter 12, from memory: demand varies; the lead does;
  // both do.
  CHECK(reorder_point(1.28, {15, 5, 1}, {2, 0, 1}) == Approx(39.05).epsilon(1e-4));
  CHECK(reorder_point(2.055, {10, 0, 1}, {6, 1, 1}) == Approx(80.55));
  CHECK(reorder_point(1.65, {150, 16, 1}, {5, 1, 1}) == Approx(1004.4).epsilon(1e-4));
}

TEST_CASE("economic quantities are those of a worked example in a textbook") {
  // Heizer and Render, Operations Management, example 12.3.
  CHECK(economic_quantity(1000, 10, 0.5) == Approx(200));
  CHECK(economic_quantity(1200, 10, 0.5) == Approx(219.089).epsilon(1e-5));
  CHECK_THROWS_AS(economic_quantity(0, 10, 0.5), BadSupply);
  CHECK_THROWS_AS(economic_quantity(1000, 10, 0), BadSupply);
}

TEST_CASE("a lead time begins as the supplier says, and becomes what it was") {
  const auto said = lead({}, 8);
  CHECK(said.mean == 8);
  CHECK(said.deviation == 2); // said_spread
  CHECK(said.seen == 0);
  // (2·8 + 12 + 14)/4 = 10.5; deviations squared 2·(2² + 2.5²) + 1.5² + 3.5² = 35, a fourth of it 8.75.
  const auto two = lead(std::vector<double>{12, 14}, 8);
  CHECK(two.mean == Approx(10.5));
  CHECK(two.deviation == Approx(2.9580398915));
  CHECK(two.seen == 2);
  const auto many = lead(std::vector<double>(200, 13.0), 8);
  CHECK(many.mean == Approx(13).epsilon(0.01));
  CHECK(many.deviation < 0.6);
}

TEST_CASE("a lead of no time is possible, one of a year just so, more is refused") {
  CHECK(lead({}, 0).mean == 0);
  CHECK(lead({}, 0).deviation == 0);
  CHECK(lead({}, 366).mean == 366);
  CHECK_THROWS_AS(lead({}, 367), BadSupply);
  CHECK_THROWS_AS(lead({}, -1), BadSupply);
  CHECK_THROWS_AS(lead(std::vector<double>{3, -2}, 5), BadSupply);
}

TEST_CASE("an order is in whole packs and not under the minimum") {
  CHECK(rounded_up(0_mm, {600_mm, 6000_mm}) == 0_mm);
  CHECK(rounded_up(-5_mm, {600_mm, 6000_mm}) == 0_mm);
  CHECK(rounded_up(1_mm, {600_mm, 0_mm}) == 600_mm);
  CHECK(rounded_up(600_mm, {600_mm, 0_mm}) == 600_mm);
  CHECK(rounded_up(601_mm, {600_mm, 0_mm}) == 1200_mm);
  CHECK(rounded_up(1_mm, {700_mm, 6000_mm}) == 6300_mm);
  CHECK(rounded_up(1_mm, {0_mm, 6000_mm}) == 6000_mm);
  CHECK(rounded_up(7001_mm, {0_mm, 6000_mm}) == 7001_mm);
}
