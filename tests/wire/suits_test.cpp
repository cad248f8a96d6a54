// Does a wire suit a board? Expected figures by hand; the limits are common practice, no source.
#include "support/catch.hpp"
#include "support/show.hpp"
#include "wire/suits.hpp"

using namespace nutward;
using namespace nutward::units::literals;
using units::Length;
using wire::Grip;

namespace {

const wire::Profile medium{2.4_mm, 1.2_mm, 1.6_mm, 0.5_mm, 0.75_mm};

std::vector<wire::SawnSlot> slots(int many, Length width, std::optional<Length> radius) {
  std::vector<wire::SawnSlot> out;
  for (int n = 1; n <= many; ++n)
    out.push_back({n, width, radius});
  return out;
}

Grip grip(Length slot_width, bool ebony = false) {
  return *wire::suits(medium, {slot_width, {}, true, ebony}, slots(1, 50_mm, {})).grip;
}

} // namespace

TEST_CASE("the grip goes from loose to tight by what the barbs are wider than the slot") {
  CHECK(grip(0.76_mm) == Grip::loose); // −0.01
  CHECK(grip(0.651_mm) == Grip::loose);
  CHECK(grip(0.65_mm) == Grip::rather_loose); // 0.10
  CHECK(grip(0.601_mm) == Grip::rather_loose);
  CHECK(grip(0.6_mm) == Grip::suits);  // 0.15
  CHECK(grip(0.45_mm) == Grip::suits); // 0.30
  CHECK(grip(0.449_mm) == Grip::snug);
  CHECK(grip(0.4_mm) == Grip::snug); // 0.35
  CHECK(grip(0.399_mm) == Grip::tight);
}

TEST_CASE("ebony wants 0.05 less of everything") {
  CHECK(grip(0.701_mm, true) == Grip::loose);
  CHECK(grip(0.7_mm, true) == Grip::rather_loose); // 0.05
  CHECK(grip(0.65_mm, true) == Grip::suits);       // 0.10
  CHECK(grip(0.5_mm, true) == Grip::suits);        // 0.25
  CHECK(grip(0.499_mm, true) == Grip::snug);
  CHECK(grip(0.449_mm, true) == Grip::tight); // 0.301
}

TEST_CASE("a tang thicker than the slot does not go in") {
  const auto s = wire::suits(medium, {0.48_mm, {}, true, false}, slots(1, 50_mm, {}));
  CHECK(s.tang_room == Length{-20'000});
  CHECK(s.grip == Grip::suits);
  CHECK_FALSE(s.good());
  CHECK(wire::suits(medium, {0.5_mm, {}, true, false}, slots(1, 50_mm, {})).good());
}

TEST_CASE("a flat-bottomed slot under a radiused board is least deep at its edge") {
  // R 184.15 mm, 42 mm wide: sagitta 184.15 − √(184.15² − 21²) = 1.2013118385 mm.
  const auto flat = wire::suits(medium, {{}, 3_mm, true, false}, slots(1, 42_mm, 184.15_mm)).slots.at(0);
  CHECK(flat.edge_depth == Length{1'798'688});
  CHECK(flat.below_tang == Length{198'688});
  CHECK_FALSE(flat.deep_enough);
  const auto follows = wire::suits(medium, {{}, 3_mm, false, false}, slots(1, 42_mm, 184.15_mm)).slots.at(0);
  CHECK(follows.edge_depth == 3_mm);
  CHECK(follows.deep_enough);
  CHECK(wire::suits(medium, {{}, 3_mm, true, false}, slots(1, 42_mm, {})).slots.at(0).edge_depth == 3_mm);
}

TEST_CASE("a slot must be 0.3 mm deeper than the tang, to the nanometre") {
  CHECK(wire::suits(medium, {{}, 1.9_mm, true, false}, slots(1, 50_mm, {})).slots[0].deep_enough);
  CHECK_FALSE(
      wire::suits(medium, {{}, Length{1'899'999}, true, false}, slots(1, 50_mm, {})).slots[0].deep_enough);
}

TEST_CASE("twenty tangs that each suit may bow a neck back together") {
  const wire::Sawn sawn{0.5_mm, {}, true, false}; // 0.25 each
  const auto twenty = wire::suits(medium, sawn, slots(20, 50_mm, {}));
  CHECK(twenty.wedge_sum == 5_mm);
  CHECK_FALSE(twenty.bows_back);
  const auto more = wire::suits(medium, sawn, slots(21, 50_mm, {}));
  CHECK(more.grip == Grip::suits);
  CHECK(more.bows_back);
  CHECK_FALSE(more.good());
  // In ebony 0.20 each is as much: 20 × 0.20 is not over it, 21 × 0.20 is.
  CHECK_FALSE(wire::suits(medium, {0.55_mm, {}, true, true}, slots(20, 50_mm, {})).bows_back);
  CHECK(wire::suits(medium, {0.55_mm, {}, true, true}, slots(21, 50_mm, {})).bows_back);
  // A tang that falls in wedges nothing.
  CHECK(wire::suits(medium, {0.8_mm, {}, true, false}, slots(40, 50_mm, {})).wedge_sum == 0_mm);
}

TEST_CASE("wire is bent 10 to 20 % tighter than the board") {
  const auto s = wire::suits(medium, {}, slots(2, 50_mm, 300_mm));
  CHECK(s.bend_from == 240_mm);
  CHECK(s.bend_to == 270_mm);
  CHECK(s.slots.at(1).bend_from == 240_mm);
  CHECK_FALSE(wire::suits(medium, {}, slots(2, 50_mm, {})).bend_from);
}

TEST_CASE("a compound board has one bend for all its slots only where its radii lie close enough") {
  const auto near = wire::suits(medium, {}, {{1, 43_mm, 250_mm}, {20, 55_mm, 280_mm}});
  CHECK(near.bend_from == 224_mm); // 0.8 · 280
  CHECK(near.bend_to == 225_mm);   // 0.9 · 250
  const auto far = wire::suits(medium, {}, {{1, 43_mm, 250_mm}, {20, 55_mm, 400_mm}});
  CHECK_FALSE(far.bend_from);
  CHECK(far.slots.at(1).bend_to == 360_mm);
}

TEST_CASE("what was not measured is not judged, and is not called good for sure") {
  const auto s = wire::suits({}, {}, slots(3, 50_mm, 300_mm));
  CHECK_FALSE(s.grip);
  CHECK_FALSE(s.slots[0].below_tang);
  CHECK(s.good());
  CHECK_FALSE(s.sure());
  CHECK(wire::suits(medium, {0.55_mm, 3_mm, true, false}, slots(3, 50_mm, {})).sure());
}

TEST_CASE("a slot measured in the wrong unit is refused by what is wrong") {
  for (const auto& [sawn, field] : {std::pair{wire::Sawn{6_mm, {}, true, false}, "slot_width"},
                                    std::pair{wire::Sawn{{}, 0.02_mm, true, false}, "slot_depth"},
                                    std::pair{wire::Sawn{{}, 25_mm, true, false}, "slot_depth"}}) {
    try {
      wire::suits(medium, sawn, {});
      FAIL("taken");
    } catch (const wire::BadProfile& bad) {
      CHECK(bad.field == field);
      CHECK_FALSE(bad.would_do.empty());
    }
  }
}

TEST_CASE("the bender's flat ends make no fret") {
  CHECK(wire::bent_length(300_mm) == 276_mm);
  CHECK(wire::bent_length(20_mm) == 0_mm);
}
