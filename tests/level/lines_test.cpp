// Where a straightedge lies, and the hump that the board itself has there.
#include "level/support.hpp"

using namespace bench;

TEST_CASE("the middle line runs over the slots' own places, and is flat") {
  const board::Board b = a_board(22, board::Cylinder{Length{254'000'000}});
  const Lines all = lines(b);
  REQUIRE(all.size() == 22);
  for (int n = 1; n <= 22; ++n) {
    const Crown& crown = all.on(Line::middle)[static_cast<std::size_t>(n - 1)];
    CHECK(crown.slot == n);
    CHECK(crown.x == Approx(board::position(b, n).mm()));
    CHECK(crown.y == Approx(0).margin(1e-9));
    CHECK(crown.z == Approx(0).margin(1e-12));
  }
}

TEST_CASE("the edge lines run 3 mm inside the edges") {
  const board::Board b = a_board(22);
  const Lines all = lines(b);
  for (const int n : {1, 12, 22}) {
    const double half = board::width_at(b, n).mm() / 2;
    CHECK(all.on(Line::bass)[static_cast<std::size_t>(n - 1)].y == Approx(3 - half).margin(1e-5));
    CHECK(all.on(Line::treble)[static_cast<std::size_t>(n - 1)].y == Approx(half - 3).margin(1e-5));
  }
}

// Worked out: y runs straight, z = √(R² − y²) − R, so that between two frets z stands above its chord by
// s(1 − s)(Δy)²/2R at the share s of the way, in the first order.
TEST_CASE("over a cylinder an edge line is humped by (Δy)²/8R in its middle, and a rock of that size is "
          "nobody's fault") {
  const board::Board b = a_board(22, board::Cylinder{Length{184'000'000}});
  const Lines all = lines(b);
  const auto& at = all.on(Line::treble);
  const double dy = at[21].y - at[0].y;
  const double s = (at[8].x - at[0].x) / (at[21].x - at[0].x);
  CHECK(hump(all, Line::treble, 0, 8, 21) == Approx(s * (1 - s) * dy * dy / 2 / 184).epsilon(0.03));
  CHECK(hump(all, Line::bass, 0, 8, 21) == Approx(hump(all, Line::treble, 0, 8, 21)));
  CHECK(hump(all, Line::treble, 0, 8, 21) > 0.02); // a hand feels it
  CHECK(hump(all, Line::middle, 0, 8, 21) == Approx(0).margin(1e-12));
  const auto found = diagnose(std::vector{rocks(1, 22, Line::treble), rocks(1, 22)}, all);
  CHECK(found.on(Line::treble).finding == Finding::level);
  CHECK(found.on(Line::middle).finding == Finding::bow);
  const auto flat = diagnose(std::vector{rocks(1, 22, Line::treble)}, lines(a_board(22)));
  CHECK(flat.on(Line::treble).finding == Finding::bow);
}

// A cone whose radius opens with its width (R/w the same all along) has straight lines for edges.
TEST_CASE("over a cone that opens as the board does an edge line has no hump") {
  board::Board b = a_board(22);
  const Length far = board::position(b, 22);
  b.far_at = 22;
  // 3 mm inside the edge is straight on a cone only where the cone opens as that line does.
  const double nut = b.nut_width.mm() - 6, last = b.far_width.mm() - 6;
  b.surface = board::Compound{Length{200'000'000}, nutward::units::from_mm(200 * last / nut), far};
  const Lines all = lines(b);
  CHECK(hump(all, Line::bass, 0, 10, 21) == Approx(0).margin(1e-5));
}

TEST_CASE("on a fanned board an edge line crosses its slots where they lean to") {
  board::Board b = a_board(22);
  b.fan = board::Fan{Length{620'000'000}, 7, Length{3'000'000}};
  const Lines all = lines(b);
  // The outer strings run 3 mm inside the edges too, and a slot lies on them by each side's own scale.
  const auto slots = board::slots(b);
  const double between = (slots[21].bass_position - slots[0].bass_position).mm();
  const auto& bass = all.on(Line::bass);
  CHECK(std::hypot(bass[21].x - bass[0].x, 0) == Approx(between).margin(0.05));
  CHECK(bass[0].x < all.on(Line::treble)[0].x);
  CHECK(bass[21].x > all.on(Line::treble)[21].x);
}

TEST_CASE("frets that are not in the board are passed over, and fewer than three refused") {
  const board::Board b = a_board(22);
  const Lines some = lines(b, std::vector{3, 4, 7, 9});
  CHECK(some.size() == 4);
  CHECK(some.find(7) == 2);
  CHECK_FALSE(some.find(5));
  CHECK(text(diagnose(std::vector{rocks(4, 9)}, some).on(Line::middle)) ==
        "bow high | 7 high | 9 low | 4 low");
  CHECK_THROWS_AS(lines(b, std::vector{3, 4}), BadReading);
  CHECK_THROWS_AS(lines(b, std::vector{3, 5, 4}), BadReading);
  CHECK_THROWS_AS(lines(b, std::vector{3, 5, 23}), board::BadBoard);
  board::Board zero = b;
  zero.zero_fret = true;
  CHECK(lines(zero).on(Line::bass)[0].slot == 0);
}
