#include "supply/forecast.hpp"
#include "support/catch.hpp"

#include <vector>

using namespace nutward::supply;

namespace {

// R. J. Hyndman and G. Athanasopoulos, Forecasting: Principles and Practice, 2nd edition, section 12.2
// (productC).
const std::vector<double> product_c{0, 2, 0, 1, 0, 11, 0, 0, 0, 0, 2, 0, 6, 3, 0, 0, 0, 0,
                                    0, 7, 0, 0, 0, 0,  0, 0, 0, 3, 1, 0, 0, 1, 0, 1, 0, 0};

// Croston's method a second time, from the lists of sizes and intervals rather than walking the series.
double by_lists(const std::vector<double>& series, double alpha) {
  std::vector<double> sizes, gaps;
  int last = -1;
  for (int i = 0; i < static_cast<int>(series.size()); ++i) {
    const double x = series[static_cast<std::size_t>(i)];
    if (x <= 0) continue;
    sizes.push_back(x);
    gaps.push_back(i - last);
    last = i;
  }
  const auto smoothed = [&](const std::vector<double>& v) {
    double weight = 1, sum = 0; // the weights of a geometric series, the newest first
    for (std::size_t i = v.size(); i-- > 1; weight *= 1 - alpha)
      sum += weight * alpha * v[i];
    return sum + weight * v[0];
  };
  return smoothed(sizes) / smoothed(gaps);
}

} // namespace

TEST_CASE("a published lumpy series has the published forecast") {
  const auto f = lumpy(product_c, 0.1);
  REQUIRE(f);
  CHECK(f->taken == 11);
  // Worked out by the convention of R's package forecast: both start at the first observation.
  CHECK(f->size == Approx(2.7502538401).epsilon(1e-10));
  CHECK(f->interval == Approx(2.7932800700).epsilon(1e-10));
  CHECK(f->croston() == Approx(0.9845965214).epsilon(1e-10));
  CHECK(f->a_period() == Approx(0.9353666953).epsilon(1e-10));
}

TEST_CASE("a forecast is that of the lists of sizes and intervals, for any smoothing") {
  for (const double alpha : {0.05, 0.1, 0.2, 0.5, 1.0})
    CHECK(lumpy(product_c, alpha)->croston() == Approx(by_lists(product_c, alpha)).epsilon(1e-12));
}

TEST_CASE("what is taken every period is forecast as it is, but for the cut") {
  const std::vector<double> even(20, 3.0);
  CHECK(lumpy(even)->croston() == Approx(3));
  CHECK(lumpy(even)->a_period() == Approx(2.85));
  CHECK_FALSE(lumpy(std::vector<double>(20, 0.0)));
  CHECK_FALSE(lumpy({}));
}

TEST_CASE("a forecast of less than nothing, or with a smoothing that is none, is refused") {
  CHECK_THROWS_AS(lumpy(std::vector<double>{1, -1}), BadSupply);
  CHECK_THROWS_AS(lumpy(std::vector<double>{1, std::nan("")}), BadSupply);
  CHECK_THROWS_AS(lumpy(product_c, 0), BadSupply);
  CHECK_THROWS_AS(lumpy(product_c, 1.5), BadSupply);
}

TEST_CASE("a new shop is guessed at, and by and by it is known") {
  const Demand guess{100, 80, 0};
  CHECK(demand({}, guess).mean == 100);
  CHECK(demand({}, guess).deviation == 80);
  CHECK(demand({}, guess).periods == 0);
  const std::vector<double> four(4, 20.0), eight(8, 20.0);
  CHECK(demand(four, guess).mean == Approx((19 + 100) / 2.0)); // half of what is enough; 19 = 20 · 0.95
  CHECK(demand(four, guess).periods == 4);
  CHECK(demand(eight, guess).mean == Approx(19));
  // All of them are 1 from the mean: √(8 · 1/7).
  CHECK(demand(eight, guess).deviation == Approx(1.0690449676));
  CHECK(demand(std::vector<double>(8, 0.0), guess).mean == 0);
}

TEST_CASE("a week's demand divided into days adds up to it again") {
  const Demand day = of_part({70, 26.457513110645905, 9}, 7);
  CHECK(day.mean == Approx(10));
  CHECK(day.deviation == Approx(10)); // variances add: √(7 · 10²)
  CHECK(day.periods == 9);
}
