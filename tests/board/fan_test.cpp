// Fanned boards. Lengths of leaning slots are worked out here once more by a way of its own: a dense polyline
// on the surface, twice, and Richardson's extrapolation of the two (a polyline's error falls with the square
// of its step).
#include "board/board.hpp"
#include "support/catch.hpp"
#include "support/show.hpp"

#include <cmath>
#include <functional>
#include <random>

using namespace nutward;
using namespace nutward::units::literals;
using board::Board;
using units::Length;

namespace {

// Parallel edges 40 mm apart, 640 and 600 mm, square at the octave.
Board plain_fan(Length inset) {
  Board b;
  b.scale = 640_mm;
  b.slots = 24;
  b.nut_width = b.far_width = 40_mm;
  b.fan = board::Fan{600_mm, 12, inset};
  return b;
}

Board tapered_fan() {
  Board b;
  b.scale = 686_mm;
  b.slots = 24;
  b.nut_width = 44_mm;
  b.far_width = 58_mm;
  b.far_at = 500_mm;
  b.surface = board::Compound{254_mm, 406_mm, 500_mm};
  b.fan = board::Fan{648_mm, 7, 3_mm};
  return b;
}

double bisect(double low, double high, const std::function<double(double)>& f) {
  for (int i = 0; i < 200; ++i) {
    const double middle = (low + high) / 2;
    (f(middle) * f(low) > 0 ? low : high) = middle;
  }
  return low;
}

// What DESIGN 4.2 says of a fan, in the plainest steps, for widths measured at distances.
struct ByHand {
  double bass, treble, square, inset, nut, slope, divisions;
  double nut_radius, flattening; // no radius: 0
  double offset = 0;

  explicit ByHand(const Board& b)
      : bass(b.scale.mm()), treble(b.fan->treble_scale.mm()), square(b.fan->square_at),
        inset(b.fan->string_inset.mm()), nut(b.nut_width.mm()),
        slope((b.far_width - b.nut_width).mm() / std::get<Length>(b.far_at).mm()), divisions(b.divisions),
        nut_radius(0), flattening(0) {
    if (const auto* c = std::get_if<board::Cylinder>(&b.surface)) nut_radius = c->radius.mm();
    if (const auto* c = std::get_if<board::Compound>(&b.surface)) {
      nut_radius = c->nut_radius.mm();
      flattening = (c->far_radius - c->nut_radius).mm() / std::get<Length>(c->far_at).mm();
    }
    offset = bisect(-100, 1000, [&](double at) {
      offset = at;
      return crossing(0);
    });
  }
  double octave_share(double n) const { return 1 - std::pow(0.5, n / divisions); }
  double bass_x(double n) const { return offset + bass * (octave_share(n) - octave_share(square)); }
  double treble_x(double n) const { return offset + treble * (octave_share(n) - octave_share(square)); }
  double half(double x) const { return (nut + slope * x) / 2; }
  // The slot's x at a y, by the two points on the outer strings.
  double line(double n, double y) const {
    const double x0 = bass_x(n), y0 = inset - half(x0), x1 = treble_x(n), y1 = half(x1) - inset;
    return x0 + (x1 - x0) * (y - y0) / (y1 - y0);
  }
  double crossing(double n) const { return line(n, 0); }
  double edge(double n, int side) const { // |y| where the slot meets that edge
    return bisect(0, 200, [&](double y) { return y - half(line(n, side * y)); });
  }
  double z(double x, double y) const {
    const double r = nut_radius + flattening * x;
    return nut_radius == 0 ? 0 : std::sqrt(r * r - y * y) - r;
  }
  double polyline(double n, int steps) const {
    const double low = -edge(n, -1), high = edge(n, 1);
    double sum = 0;
    for (int i = 0; i < steps; ++i) {
      const double y0 = low + (high - low) * i / steps, y1 = low + (high - low) * (i + 1) / steps;
      const double x0 = line(n, y0), x1 = line(n, y1);
      sum += std::hypot(x1 - x0, y1 - y0, z(x1, y1) - z(x0, y0));
    }
    return sum;
  }
  double length(double n) const {
    const double coarse = polyline(n, 500), fine = polyline(n, 1000);
    return fine + (fine - coarse) / 3;
  }
};

std::string field_refused(const Board& b) {
  try {
    board::check(b);
  } catch (const board::BadBoard& bad) {
    return bad.field;
  }
  return "none";
}

} // namespace

TEST_CASE("between parallel edges a leaning slot is the diagonal of what it spans") {
  const Board b = plain_fan(0_mm);
  // At the nut the sides' distances from the octave are 320 and 300: 20 apart over 40 of width. √(40² + 20²).
  CHECK(board::arc_length(b, 0).mm() == Approx(44.721360).epsilon(0).margin(1e-6));
  CHECK(board::slot_ends(b, 0).bass.x_mm == Approx(-10).epsilon(0).margin(1e-9));
  CHECK(board::slot_ends(b, 0).treble.x_mm == Approx(10).epsilon(0).margin(1e-9));
  CHECK(board::position(b, 0) == 0_mm);
  CHECK(board::position(b, 12) == 310_mm);
  CHECK(board::arc_length(b, 12) == 40_mm);
  // Two octaves up: 310 + 160 and 310 + 150, 10 apart. √(40² + 10²).
  CHECK(board::position(b, 24) == 465_mm);
  CHECK(board::arc_length(b, 24).mm() == Approx(41.231056).epsilon(0).margin(1e-6));
}

TEST_CASE("with the strings inside the edges a slot leans more, and is run out to the edges") {
  const Board b = plain_fan(5_mm);
  // 20 apart over the 30 between the strings: 40·√(1 + (2/3)²), with its ends 40/3 from the centreline's
  // crossing.
  CHECK(board::arc_length(b, 0).mm() == Approx(48.074017).epsilon(0).margin(1e-6));
  CHECK(board::slot_ends(b, 0).bass.x_mm == Approx(-13.333333).epsilon(0).margin(1e-6));
  CHECK(board::slot_ends(b, 0).bass.y_mm == Approx(-20).epsilon(0).margin(1e-9));
  CHECK(board::slot_ends(b, 0).treble.x_mm == Approx(13.333333).epsilon(0).margin(1e-6));
}

TEST_CASE("the slots of a fan are told from the nut along each outer string") {
  const auto all = board::slots(plain_fan(3_mm));
  REQUIRE(all.size() == 24);
  CHECK(all[11].bass_position == 320_mm);
  CHECK(all[11].treble_position == 300_mm);
  CHECK(all[23].bass_position == 480_mm);
  CHECK(all[23].treble_position == 450_mm);
}

TEST_CASE("a leaning slot's length is that of a dense polyline on the surface, to a tenth of a micrometre") {
  const Board compound = tapered_fan();
  Board cylinder = compound, flat = compound;
  cylinder.surface = board::Cylinder{305_mm};
  flat.surface = board::Flat{};
  for (const Board& b : {compound, cylinder, flat}) {
    const ByHand other(b);
    for (int n = 0; n <= 24; ++n) {
      CHECK(board::position(b, n).mm() == Approx(other.crossing(n)).epsilon(0).margin(1e-6));
      CHECK(board::arc_length(b, n).mm() == Approx(other.length(n)).epsilon(0).margin(1e-4));
    }
  }
  // The fan is worth the work: the nut's slot is 2.4 mm longer than the nut is wide.
  CHECK(board::arc_length(flat, 0) > 46.3_mm);
}

TEST_CASE("on 300 random fans the length agrees with the polyline to a micrometre") {
  std::mt19937_64 random(26);
  const auto between = [&](double low, double high) {
    return units::from_mm(std::uniform_real_distribution<double>(low, high)(random));
  };
  int tried = 0;
  while (tried < 300) {
    Board b = tapered_fan();
    b.scale = between(500, 900);
    b.slots = std::uniform_int_distribution<int>(1, 27)(random);
    b.nut_width = between(30, 60);
    b.far_width = b.nut_width + between(0, 15);
    b.far_at = between(200, 490);
    b.surface = board::Compound{between(60, 500), between(60, 500), between(200, 490)};
    if (tried % 3 == 0) b.surface = board::Cylinder{between(60, 500)};
    b.fan = board::Fan{between(450, b.scale.mm()), std::uniform_int_distribution<int>(0, b.slots)(random),
                       between(0, 6)};
    if (field_refused(b) != "none") continue;
    ++tried;
    const ByHand other(b);
    const int n = std::uniform_int_distribution<int>(0, b.slots)(random);
    const double difference = board::arc_length(b, n).mm() - other.length(n);
    if (!(std::abs(difference) <= 1e-3)) FAIL_CHECK("fan " << tried << " slot " << n << ": " << difference);
  }
  CHECK(tried == 300);
}

TEST_CASE("the square slot of a fan has the length of the closed form, to a micrometre") {
  const Board b = tapered_fan();
  const double x = board::position(b, 7).mm(), w = 44 + 14 * x / 500, r = 254 + 152 * x / 500;
  CHECK(board::width_at(b, 7).mm() == Approx(w).epsilon(0).margin(1e-6));
  CHECK(board::arc_length(b, 7).mm() == Approx(2 * r * std::asin(w / 2 / r)).epsilon(0).margin(1e-3));
  CHECK(board::slot_ends(b, 7).bass.x_mm == board::slot_ends(b, 7).treble.x_mm);
}

TEST_CASE("a fan of two equal scales is the straight board") {
  Board fan = tapered_fan(), straight = fan;
  fan.fan->treble_scale = fan.scale;
  straight.fan.reset();
  for (const board::Spot& far_at : {board::Spot{500_mm}, board::Spot{12}}) {
    fan.far_at = straight.far_at = far_at;
    for (int n = 0; n <= 24; ++n) {
      CHECK(units::abs(board::position(fan, n) - board::position(straight, n)) <= Length{1});
      CHECK(units::abs(board::width_at(fan, n) - board::width_at(straight, n)) <= Length{1});
      CHECK(units::abs(board::arc_length(fan, n) - board::arc_length(straight, n)) <= Length{1});
    }
  }
}

TEST_CASE("a width measured at a slot of a fan lies on the line where that slot crosses the centreline") {
  Board b = tapered_fan();
  b.far_at = 12;
  const double x = board::position(b, 12).mm();
  const auto nut = board::slot_ends(b, 0);
  // The edges are straight through both: half a nut of 44 mm, opening by 14 mm on x, at the nut slot's own
  // ends.
  CHECK(nut.treble.y_mm == Approx((44 + 14 * nut.treble.x_mm / x) / 2).epsilon(0).margin(1e-6));
  CHECK(nut.bass.y_mm == Approx(-(44 + 14 * nut.bass.x_mm / x) / 2).epsilon(0).margin(1e-6));
  CHECK(board::position(b, 0) == 0_mm);
}

TEST_CASE("a fan that cannot be is refused by what is wrong with it, an ordinary one is not") {
  CHECK(field_refused(tapered_fan()) == "none");
  CHECK(field_refused(plain_fan(5_mm)) == "none");
  const auto refused = [](auto change) {
    Board b = tapered_fan();
    change(b);
    return field_refused(b);
  };
  CHECK(refused([](Board& b) { b.fan->treble_scale = 686.001_mm; }) == "treble_scale");
  CHECK(refused([](Board& b) { b.fan->treble_scale = 686_mm; }) == "none");
  CHECK(refused([](Board& b) { b.fan->treble_scale = 99_mm; }) == "treble_scale");
  CHECK(refused([](Board& b) { b.fan->treble_scale = Length{INT64_MIN}; }) == "treble_scale");
  CHECK(refused([](Board& b) { b.fan->treble_scale = 500_mm; }) == "treble_scale"); // leans more than 45°
  CHECK(refused([](Board& b) { b.fan->square_at = 25; }) == "square_at");
  CHECK(refused([](Board& b) { b.fan->square_at = -1; }) == "square_at");
  CHECK(refused([](Board& b) { b.fan->square_at = 24; }) == "none");
  CHECK(refused([](Board& b) { b.fan->string_inset = -0.1_mm; }) == "string_inset");
  CHECK(refused([](Board& b) { b.fan->string_inset = 21.1_mm; }) == "string_inset");
  CHECK(refused([](Board& b) { b.fan->string_inset = Length{INT64_MAX}; }) == "string_inset");
  CHECK(refused([](Board& b) { b.surface = board::Cylinder{23_mm}; }) == "radius");
}

TEST_CASE("what a refused fan is told helps: exchange the scales") {
  Board b = tapered_fan();
  std::swap(b.scale, b.fan->treble_scale);
  try {
    board::check(b);
    FAIL("a treble side longer than the bass was taken");
  } catch (const board::BadBoard& bad) {
    CHECK(std::string(bad.what()) == "A treble scale of 686 mm is longer than the bass side's, 648 mm.");
    CHECK(bad.would_do == "If they were said the wrong way round, exchange them.");
  }
}
