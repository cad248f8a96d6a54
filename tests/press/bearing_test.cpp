// Loads on supports: published values, equilibrium, and the supports that cannot pull against every choice of
// those that bear.
#include "press/bearing.hpp"

#include "support/catch.hpp"

#include <algorithm>
#include <cmath>
#include <random>

using namespace nutward::press;

namespace {

using Parts = std::vector<double>;

// What of force and moments is left over, of arms as long as the supports' spread.
double unbalanced(const std::vector<Support>& supports, const Parts& parts, Place load) {
  double force = -1, x = 0, y = 0, size = 1e-12;
  for (std::size_t i = 0; i < supports.size(); ++i) {
    force += parts[i];
    x += parts[i] * (supports[i].x - load.x);
    y += parts[i] * (supports[i].y - load.y);
    size = std::max({size, std::abs(supports[i].x - load.x), std::abs(supports[i].y - load.y)});
  }
  return std::max({std::abs(force), std::abs(x) / size, std::abs(y) / size});
}

std::vector<Support> evenly(int n, double over) {
  std::vector<Support> out;
  for (int i = 0; i < n; ++i)
    out.push_back({over * i / (n - 1), 0, 1});
  return out;
}

std::vector<double> places(const std::vector<Support>& row) {
  std::vector<double> out;
  for (const Support& s : row)
    out.push_back(s.x);
  return out;
}

// The least Σ part²/stiffness among all parts ≥ 0 that balance, by trying every set that may bear. Supports
// of a set bear on the plane of plane_parts(), which is checked on its own above.
std::optional<Parts> by_every_set(const std::vector<Support>& supports, Place load) {
  std::optional<Parts> best;
  double least = 1e300;
  for (unsigned set = 1; set < 1U << supports.size(); ++set) {
    std::vector<Support> some;
    std::vector<std::size_t> which;
    for (std::size_t i = 0; i < supports.size(); ++i) {
      if ((set >> i & 1U) == 0) continue;
      some.push_back(supports[i]);
      which.push_back(i);
    }
    const auto parts = plane_parts(some, load);
    if (!parts || *std::min_element(parts->begin(), parts->end()) < -1e-12) continue;
    double energy = 0;
    for (std::size_t i = 0; i < some.size(); ++i)
      energy += (*parts)[i] * (*parts)[i] / some[i].stiffness;
    if (energy >= least) continue;
    least = energy;
    best = Parts(supports.size(), 0.0);
    for (std::size_t i = 0; i < some.size(); ++i)
      (*best)[which[i]] = (*parts)[i];
  }
  return best;
}

double furthest(const Parts& a, const Parts& b) {
  double out = 0;
  for (std::size_t i = 0; i < a.size(); ++i)
    out = std::max(out, std::abs(a[i] - b[i]));
  return out;
}

} // namespace

// A posted pile-cap example (Eng-Tips), four piles at the corners of 6 × 4 ft under 100 t.
TEST_CASE("four supports take 54.17, 29.17, 20.83 and -4.17 t of 100 t at (2, 1) ft") {
  const std::vector<Support> caps{{3, 2}, {3, -2}, {-3, 2}, {-3, -2}};
  const auto parts = plane_parts(caps, {2, 1});
  REQUIRE(parts);
  CHECK((*parts)[0] * 100 == Approx(54.17).epsilon(0).margin(0.005));
  CHECK((*parts)[1] * 100 == Approx(29.17).epsilon(0).margin(0.005));
  CHECK((*parts)[2] * 100 == Approx(20.83).epsilon(0).margin(0.005));
  CHECK((*parts)[3] * 100 == Approx(-4.17).epsilon(0).margin(0.005));
  // Worked out: the one that would pull lifts off, and the three left are determinate. Moments about the
  // first two's line: 6·R3 = 100·(3 − 2); about the first's and third's: 4·R2 = 100·(2 − 1).
  const auto real = contact_parts(caps, {2, 1});
  REQUIRE(real);
  CHECK((*real)[2] * 100 == Approx(100.0 / 6));
  CHECK((*real)[1] * 100 == Approx(25.0));
  CHECK((*real)[0] * 100 == Approx(100 - 25 - 100.0 / 6));
  CHECK((*real)[3] == 0);
}

// Worked out from the formula: s(n+1)/(6(n−1)).
TEST_CASE("the kern of n even supports over s reaches 0.2778 s of four, 0.25 s of five, 0.2333 s of six") {
  const std::vector<std::pair<int, double>> column{{4, 0.2778}, {5, 0.25}, {6, 0.2333}};
  for (const auto& [n, reach] : column) {
    const double s = 100;
    const auto row = evenly(n, s);
    const Range k = kern(places(row));
    CHECK((k.to - s / 2) / s == Approx(reach).epsilon(0).margin(5e-5));
    CHECK((k.to - s / 2) / s == Approx((n + 1) / (6.0 * (n - 1))));
    CHECK(s / 2 - k.from == Approx(k.to - s / 2));
    // There, and not at the middle third's s/6, the furthest one takes nothing; beyond it would pull.
    CHECK(std::abs(plane_parts(row, {k.to, 0})->front()) < 1e-12);
    CHECK(plane_parts(row, {s / 2 + s / 6, 0})->front() > 0.01);
    CHECK(plane_parts(row, {k.to + 1, 0})->front() < 0);
  }
}

// The middle-third rule: any foundation text, from memory.
TEST_CASE("a strip under a load at L/6 bears nothing at one end and twice the mean at the other") {
  const auto edge = strip(60, 10);
  REQUIRE(edge);
  CHECK(edge->most == Approx(2));
  CHECK(edge->least == Approx(0).margin(1e-12));
  CHECK(strip(60, 5)->most == Approx(1.5)); // L/12
  CHECK(strip(60, -5)->least == Approx(0.5));
  CHECK(strip(60, 0)->most == 1);
}

TEST_CASE("beyond the middle third a strip bears on a triangle that stands under the load") {
  const auto s = strip(60, 20);
  REQUIRE(s);
  CHECK(s->contact == Approx(30)); // its centre of gravity is a third of it, 10 mm, from the end: 30 − 20
  CHECK(s->most * s->contact / 2 == Approx(60));
  CHECK(s->least == 0);
  CHECK_FALSE(strip(60, 30));
  CHECK_FALSE(strip(60, -31));
}

TEST_CASE("many supports along a line come to bear as the strip does, in and beyond the middle third") {
  std::vector<Support> row;
  constexpr int n = 2000;
  for (int i = 0; i < n; ++i)
    row.push_back({60.0 * (i + 0.5) / n, 0, 1});
  for (double off : {0.0, 5.0, 10.0, 15.0, 20.0, 25.0}) {
    const auto parts = contact_parts(row, {30 + off, 0});
    REQUIRE(parts);
    CHECK(parts->back() * n == Approx(strip(60, off)->most).epsilon(0.01));
  }
}

TEST_CASE("force and moments of 10,000 random groups balance to a billionth") {
  std::mt19937_64 random(6);
  std::uniform_real_distribution<double> unit(0, 1);
  int uneven = 0, lifted = 0, tipped = 0;
  for (int round = 0; round < 10'000; ++round) {
    const int n = std::uniform_int_distribution<int>(2, 8)(random);
    const bool plane = round % 3 == 0;
    std::vector<Support> supports;
    double x = 600 * unit(random);
    for (int i = 0; i < n; ++i) {
      x += 8 + 30 * unit(random);
      supports.push_back({x, plane ? 60 * unit(random) - 30 : 0, round % 2 == 0 ? 1 : 0.2 + unit(random)});
    }
    const double from = supports.front().x, to = supports.back().x;
    const Place load{from + (to - from) * (1.1 * unit(random) - 0.05), plane ? 40 * unit(random) - 20 : 0};
    const auto formula = plane_parts(supports, load);
    if (formula || !plane) {
      REQUIRE(formula);
      REQUIRE(unbalanced(supports, *formula, load) < 1e-9);
    }
    const auto real = contact_parts(supports, load);
    if (!real) {
      ++tipped;
      if (!plane) REQUIRE((load.x < from || load.x > to));
      continue;
    }
    if (!plane) REQUIRE((load.x >= from && load.x <= to));
    REQUIRE(unbalanced(supports, *real, load) < 1e-9);
    const double least = *std::min_element(real->begin(), real->end());
    REQUIRE(least >= 0);
    if (formula && *std::min_element(formula->begin(), formula->end()) > 0)
      REQUIRE(furthest(*formula, *real) < 1e-9);
    else
      ++lifted;
    uneven += n != 2;
  }
  CHECK(uneven > 1000); // all of it has been tried
  CHECK(lifted > 1000);
  CHECK(tipped > 100);
}

// Moments by hand, of the rigid-bar formula of DESIGN 4.6.
TEST_CASE("the parts in a row are those of the rigid-bar formula") {
  const std::vector<double> x{10, 31, 50, 67, 82};
  std::vector<Support> row;
  for (double v : x)
    row.push_back({v, 0, 1});
  const double mean = 48, at = 53, spread = 38 * 38 + 17 * 17 + 2 * 2 + 19 * 19 + 34 * 34;
  const auto parts = plane_parts(row, {at, 0});
  for (std::size_t i = 0; i < x.size(); ++i)
    CHECK((*parts)[i] == Approx(0.2 + (at - mean) * (x[i] - mean) / spread));
  const Range green = within_times(x, 1.25);
  CHECK(plane_parts(row, {green.to, 0})->back() == Approx(0.25));
  CHECK(plane_parts(row, {green.from, 0})->front() == Approx(0.25));
}

TEST_CASE("no range of the load reaches beyond the kern, whatever a fret might take") {
  const std::vector<double> skewed{0, 1, 2, 3, 4, 40};
  const Range k = kern(skewed), amber = within_times(skewed, 1.5), wide = within_times(skewed, 100);
  CHECK(wide == k);
  CHECK(amber.from >= k.from);
  CHECK(amber.to <= k.to);
  CHECK(amber.from == k.from); // the five near ones would bear more, but the far one lifts first
  CHECK(kern(std::vector<double>{7}) == Range{7, 7});
}

TEST_CASE("supports that cannot pull bear as the best of every set of them that balances") {
  std::mt19937_64 random(11);
  std::uniform_real_distribution<double> unit(0, 1);
  int lifted = 0, tipped = 0;
  for (int round = 0; round < 1500; ++round) {
    const int n = std::uniform_int_distribution<int>(1, 7)(random);
    std::vector<Support> supports;
    for (int i = 0; i < n; ++i) {
      // Every third round on a small grid, so that supports and loads stand on one line, or on one another.
      const bool grid = round % 3 == 0;
      const auto at = [&] { return grid ? std::floor(4 * unit(random)) : 100 * unit(random); };
      supports.push_back({at(), round % 5 == 0 ? 0 : at(), round % 2 == 0 ? 1 : 0.1 + unit(random)});
    }
    const auto& one = supports.front();
    const auto& other = supports.back();
    Place load{(one.x + other.x) / 2 + (round % 4 == 0 ? 0 : 20 * unit(random) - 10), one.y};
    if (round % 4 == 0) load.y = (one.y + other.y) / 2;
    const auto real = contact_parts(supports, load);
    const auto best = by_every_set(supports, load);
    INFO("round " << round << ", " << n << " supports");
    REQUIRE(real.has_value() == best.has_value());
    tipped += real ? 0 : 1;
    if (!real) continue;
    REQUIRE(furthest(*real, *best) < 1e-9);
    lifted += *std::min_element(real->begin(), real->end()) == 0 ? 1 : 0;
  }
  CHECK(lifted > 200);
  CHECK(tipped > 200);
}

TEST_CASE("a load at the last support is all its own, and one beyond it tips the bar") {
  const auto row = evenly(6, 100);
  const auto at_end = contact_parts(row, {100, 0});
  REQUIRE(at_end);
  CHECK(at_end->back() == Approx(1));
  CHECK(*std::max_element(at_end->begin(), at_end->end() - 1) < 1e-12);
  CHECK_FALSE(contact_parts(row, {100.001, 0}));
  CHECK_FALSE(contact_parts(row, {-0.001, 0}));
  CHECK_FALSE(contact_parts(row, {50, 1}));
  CHECK_FALSE(plane_parts(row, {50, 1}));
  CHECK_FALSE(contact_parts({}, {0, 0}));
  CHECK_FALSE(plane_parts({}, {0, 0}));
}

// A line of even stiffness has the moments of two points at ±L/(2·√3) with half of it each.
TEST_CASE("leaning frets under a bar each bear evenly: its slope along the neck is also one across them") {
  std::vector<Support> points;
  const double lean = 0.15, half = 50 / (2 * std::sqrt(3.0));
  for (double x : {0.0, 25.0, 51.0, 78.0, 107.0})
    for (double side : {-1.0, 1.0})
      points.push_back({x + side * lean * half, side * half, 0.5});
  const auto parts = plane_parts(points, {60, 0});
  REQUIRE(parts);
  std::vector<Support> row{{0}, {25}, {51}, {78}, {107}};
  const auto square = plane_parts(row, {60, 0});
  for (std::size_t i = 0; i < 5; ++i) {
    CHECK((*parts)[2 * i] == Approx((*parts)[2 * i + 1]));
    CHECK((*parts)[2 * i] * 2 == Approx((*square)[i]));
  }
}
