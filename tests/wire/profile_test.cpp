#include "support/catch.hpp"
#include "wire/wire.hpp"

using namespace nutward;
using namespace nutward::units::literals;

namespace {

// An invented medium wire.
wire::Profile medium() {
  return {2.4_mm, 1.2_mm, 1.6_mm, 0.5_mm, 0.75_mm};
}

std::string field_refused(const wire::Profile& profile) {
  try {
    wire::check(profile);
  } catch (const wire::BadProfile& bad) {
    CHECK_FALSE(bad.would_do.empty());
    return bad.field;
  }
  return "none";
}

} // namespace

TEST_CASE("a wire may be known in full, in part or only by name") {
  CHECK(field_refused(medium()) == "none");
  CHECK(field_refused({}) == "none");
  wire::Profile crown_only;
  crown_only.crown_height = 1.2_mm;
  CHECK(field_refused(crown_only) == "none");
}

TEST_CASE("a wire said in the wrong unit is refused by the value that is wrong") {
  auto p = medium();
  p.crown_width = 24_mm;
  CHECK(field_refused(p) == "crown_width");
  p = medium();
  p.crown_height = -1.2_mm;
  CHECK(field_refused(p) == "crown_height");
  p = medium();
  p.tang_depth = 0.063_mm;
  CHECK(field_refused(p) == "tang_depth");
  p = medium();
  p.tang_thickness = 0_mm;
  CHECK(field_refused(p) == "tang_thickness");
  p = medium();
  p.barb_width = 7.5_mm;
  CHECK(field_refused(p) == "barb_width");
}

TEST_CASE("a wire whose measures contradict each other is refused") {
  auto p = medium();
  p.crown_height = 2.5_mm;
  CHECK(field_refused(p) == "crown_height");
  p = medium();
  p.crown_width = 0.5_mm;
  p.crown_height = 0.4_mm;
  CHECK(field_refused(p) == "crown_width");
  p = medium();
  p.barb_width = 0.49_mm;
  CHECK(field_refused(p) == "barb_width");
}
