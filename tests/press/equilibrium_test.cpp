// What the answers say of shares, on whole boards: the frets of a group bear all of the load, where it
// stands.
#include "press/bench.hpp"

#include <cmath>
#include <random>

using namespace nutward;
using namespace nutward::press;
using namespace nutward::press::tests;

TEST_CASE("on 10,000 random groups of random boards force and moment balance to a billionth") {
  std::mt19937_64 random(27);
  const auto from = [&](double a, double b) { return std::uniform_real_distribution<double>(a, b)(random); };
  const Equipment e = shop();
  int beyond = 0, tipped = 0;
  for (int round = 0; round < 10'000; ++round) {
    board::Board b;
    b.scale = units::from_mm(from(330, 860));
    b.slots = std::uniform_int_distribution<int>(10, 24)(random);
    b.nut_width = units::from_mm(from(35, 45));
    b.far_width = units::from_mm(from(45, 60));
    b.surface =
        round % 2 == 0 ? board::Surface{board::Flat{}} : board::Cylinder{units::from_mm(from(180, 500))};
    Work work = work_on(b, 2.4_mm);
    const int lo = std::uniform_int_distribution<int>(1, b.slots - 1)(random);
    const int hi = std::min(b.slots, lo + std::uniform_int_distribution<int>(1, 6)(random));
    for (Crown& c : work.crowns)
      c.seated = c.slot == lo || c.slot == hi || from(0, 1) < 0.8;
    const Group g = group_of(work, lo, hi);
    const auto places = places_of(work, g);
    const Force load{from(500, 13'000)};
    const Off off{units::from_mm(from(-0.55, 0.55) * (places.back() - places.front())), {}};
    const double stands = (load_place(work, g) + off.along).mm();
    const auto s = shares(work, e, lo, hi, load, off);
    if (!s) {
      ++tipped;
      REQUIRE((stands < places.front() || stands > places.back()));
      continue;
    }
    REQUIRE(s->frets.size() == places.size());
    double force = -load.n, moment = 0;
    for (std::size_t i = 0; i < places.size(); ++i) {
      force += s->frets[i].share.n;
      moment += s->frets[i].share.n * (places[i] - stands);
      REQUIRE(s->frets[i].share.n >= 0);
    }
    REQUIRE(std::abs(force) < 1e-9 * load.n);
    REQUIRE(std::abs(moment) < 1e-9 * load.n * (places.back() - places.front()));
    beyond += s->zone == Zone::lifted ? 1 : 0;
  }
  CHECK(beyond > 1000); // supports that lifted off have been tried too
  CHECK(tipped > 100);
}
