// One piece and one slot, with the default settings and numbers worked out by hand.
// Rounded, arc 52: least 50.9, target 51.5, most 52, cut 52.5. Filed: least 52.5, target and cut 56.
#include "pieces/fit.hpp"
#include "support/catch.hpp"
#include "support/show.hpp"

using namespace nutward;
using namespace nutward::units::literals;
using pieces::Outcome;
using units::Length;

namespace {

pieces::PieceFacts piece(Length length, int raw_ends) {
  pieces::PieceFacts p;
  p.id = 1;
  p.length = length;
  p.raw_ends = raw_ends;
  return p;
}

pieces::Wanted rounded() {
  return {board::need(52_mm, board::EndStyle::rounded, {}), {}, {}, {}};
}
pieces::Wanted filed() {
  return {board::need(52_mm, board::EndStyle::filed, {}), {}, {}, {}};
}

} // namespace

TEST_CASE("a dressed piece within the need goes in untouched") {
  const auto v = pieces::judge(piece(51.4_mm, 0), rounded(), {});
  CHECK(v.outcome == Outcome::fits);
  CHECK(v.untouched);
  CHECK(v.finish == 51.4_mm);
  CHECK(v.trim == 0_mm);
  CHECK(v.off_target == 0.1_mm);
  CHECK(v.ends_to_dress == 0);
  CHECK_FALSE(v.perhaps_dress_one);
}

TEST_CASE(
    "a dressed piece just under the most goes in untouched, with the advice to look whether it stands out") {
  const auto v = pieces::judge(piece(51.95_mm, 0), rounded(), {});
  CHECK(v.outcome == Outcome::fits);
  CHECK(v.untouched);
  CHECK(v.perhaps_dress_one);
  CHECK(v.trim == 0_mm);
}

TEST_CASE("a dressed piece over the most loses one end's dressing and is finished to the target") {
  const auto v = pieces::judge(piece(54_mm, 0), rounded(), {});
  CHECK(v.outcome == Outcome::fits);
  CHECK_FALSE(v.untouched);
  CHECK(v.ends_to_dress == 1);
  CHECK(v.finish == 51.5_mm);
  CHECK(v.trim == 2.5_mm);
  CHECK(v.nip == 2_mm);
}

TEST_CASE("a raw piece loses the dressing loss at each raw end before it counts") {
  const auto one = pieces::judge(piece(51.7_mm, 1), rounded(), {});
  CHECK(one.outcome == Outcome::fits);
  CHECK(one.finish == 51.2_mm);
  CHECK(one.trim == 0.5_mm);
  CHECK(one.nip == 0_mm);
  CHECK(one.ends_to_dress == 1);
  const auto two = pieces::judge(piece(51.7_mm, 2), rounded(), {});
  CHECK(two.outcome == Outcome::too_short);
  CHECK(two.short_by == 0.2_mm);
  CHECK(two.ends_to_dress == 2);
}

TEST_CASE("a piece within a tenth of the least on either side is borderline, beyond it sure or too short") {
  CHECK(pieces::judge(piece(50.799999_mm, 0), rounded(), {}).outcome == Outcome::too_short);
  CHECK(pieces::judge(piece(50.8_mm, 0), rounded(), {}).outcome == Outcome::borderline);
  CHECK(pieces::judge(piece(51_mm, 0), rounded(), {}).outcome == Outcome::borderline);
  CHECK(pieces::judge(piece(51.000001_mm, 0), rounded(), {}).outcome == Outcome::fits);
  CHECK(pieces::judge(piece(51.8_mm, 2), rounded(), {}).outcome == Outcome::borderline);
  CHECK(pieces::judge(piece(52.000001_mm, 2), rounded(), {}).outcome == Outcome::fits);
  CHECK(pieces::judge(piece(52.4_mm, 0), filed(), {}).outcome == Outcome::borderline);
  CHECK(pieces::judge(piece(52.399999_mm, 0), filed(), {}).outcome == Outcome::too_short);
}

TEST_CASE("where dressing costs more than the play, a piece at the most is borderline and one beyond it is "
          "too short") {
  board::FitSettings s;
  s.dressing_loss = 1.5_mm; // most − 1.5 is under the least: dressing cannot cure what is too long
  const pieces::Wanted wanted{board::need(52_mm, board::EndStyle::rounded, s), {}, {}, {}};
  CHECK(pieces::judge(piece(51.85_mm, 0), wanted, s).outcome == Outcome::fits);
  CHECK(pieces::judge(piece(51.95_mm, 0), wanted, s).outcome == Outcome::borderline);
  const auto over = pieces::judge(piece(52.05_mm, 0), wanted, s);
  CHECK(over.outcome == Outcome::borderline);
  CHECK(over.untouched);
  CHECK(pieces::judge(piece(52.2_mm, 0), wanted, s).outcome == Outcome::too_short);
  CHECK(pieces::judge(piece(52.35_mm, 0), wanted, s).outcome == Outcome::borderline);
  CHECK(pieces::judge(piece(52.6_mm, 0), wanted, s).outcome == Outcome::fits);
}

TEST_CASE(
    "for filed ends a piece short of the cut is taken with less overhang, a longer one is nipped to it") {
  const auto shorter = pieces::judge(piece(54_mm, 2), filed(), {});
  CHECK(shorter.outcome == Outcome::fits);
  CHECK(shorter.less_overhang);
  CHECK(shorter.untouched);
  CHECK(shorter.finish == 54_mm);
  CHECK(shorter.off_target == 2_mm);
  CHECK(shorter.ends_to_dress == 0);
  const auto longer = pieces::judge(piece(57.5_mm, 0), filed(), {});
  CHECK_FALSE(longer.less_overhang);
  CHECK_FALSE(longer.untouched);
  CHECK(longer.finish == 56_mm);
  CHECK(longer.trim == 1.5_mm);
  CHECK(longer.nip == 1.5_mm);
}

TEST_CASE("a piece is too good if it loses more than the trim limit, unless the rest makes another fret") {
  CHECK(pieces::judge(piece(59.5_mm, 2), rounded(), {}).outcome == Outcome::fits);
  CHECK(pieces::judge(piece(59.500001_mm, 2), rounded(), {}).outcome == Outcome::wasteful);
  auto wanted = rounded();
  wanted.another = 45_mm; // 52.5 for this, 0.5 for the nip, 45 for the other
  CHECK(pieces::judge(piece(97.999999_mm, 2), wanted, {}).outcome == Outcome::wasteful);
  const auto two = pieces::judge(piece(98_mm, 2), wanted, {});
  CHECK(two.outcome == Outcome::fits);
  CHECK(two.leaves == 45_mm);
  CHECK_FALSE(pieces::judge(piece(98_mm, 2), rounded(), {}).leaves.has_value());
}

TEST_CASE("a crown unlike the one wanted is told apart from 0.03 mm on, an unknown one is not") {
  auto wanted = rounded();
  wanted.crown_height = 1.2_mm;
  auto p = piece(51.5_mm, 0);
  CHECK(pieces::judge(p, wanted, {}).outcome == Outcome::fits);
  p.crown_height = 1.23_mm;
  CHECK(pieces::judge(p, wanted, {}).outcome == Outcome::fits);
  p.crown_height = 1.230001_mm;
  CHECK(pieces::judge(p, wanted, {}).outcome == Outcome::crown_differs);
  p.crown_height = 1.169999_mm;
  CHECK(pieces::judge(p, wanted, {}).outcome == Outcome::crown_differs);
  CHECK(pieces::judge(p, rounded(), {}).outcome == Outcome::fits);
}

namespace {

// Arc 52, binding 1.6 and 0.4 of clearance: the tang is 48.
pieces::Wanted bound(board::EndStyle crown = board::EndStyle::rounded) {
  auto wanted = crown == board::EndStyle::rounded ? rounded() : filed();
  wanted.need.tang = 48_mm;
  return wanted;
}

pieces::PieceFacts nipped(Length length, Length tang) {
  auto p = piece(length, 0);
  p.tang = tang;
  return p;
}

} // namespace

TEST_CASE("a piece that was never nipped has as much tang as crown, and loses it in a bound slot") {
  const auto v = pieces::judge(piece(51.4_mm, 0), bound(), {});
  CHECK(v.outcome == Outcome::fits);
  CHECK(v.trim == 0_mm);
  CHECK(v.tang_to_nip == 3.4_mm);
  CHECK_FALSE(v.untouched);
  CHECK(pieces::judge(piece(53_mm, 2), bound(), {}).tang_to_nip == 3.5_mm); // finished to 51.5 first
  CHECK(pieces::judge(piece(60_mm, 2), bound(board::EndStyle::filed), {}).tang_to_nip == 8_mm); // to 56
  CHECK(pieces::judge(piece(51.4_mm, 0), rounded(), {}).tang_to_nip == 0_mm);
}

TEST_CASE("a nipped tang within the caliper's error of the slot's stays, a longer one is nipped to it") {
  CHECK(pieces::judge(nipped(51.4_mm, 48_mm), bound(), {}).untouched);
  CHECK(pieces::judge(nipped(51.4_mm, 48.1_mm), bound(), {}).untouched);
  const auto v = pieces::judge(nipped(51.4_mm, 48.100001_mm), bound(), {});
  CHECK_FALSE(v.untouched);
  CHECK(v.tang_to_nip == Length{100'001});
  CHECK(v.outcome == Outcome::fits);
}

TEST_CASE("a piece whose crown would reach more than 3 mm beyond its tang does not fit a bound slot") {
  // Finished to 51.4 and 51.5 less 6.
  CHECK(pieces::judge(nipped(51.4_mm, 45.4_mm), bound(), {}).outcome == Outcome::fits);
  const auto v = pieces::judge(nipped(51.4_mm, 45.3_mm), bound(), {});
  CHECK(v.outcome == Outcome::tang_short);
  CHECK(v.tang_short_by == 0.1_mm);
  CHECK(pieces::judge(nipped(53_mm, 45.4_mm), bound(), {}).tang_short_by == 0.1_mm);
  // Filed, the crown ends at the edges: 52 less 6.
  CHECK(pieces::judge(nipped(56_mm, 46_mm), bound(board::EndStyle::filed), {}).outcome == Outcome::fits);
  CHECK(pieces::judge(nipped(56_mm, 45.9_mm), bound(board::EndStyle::filed), {}).outcome ==
        Outcome::tang_short);
  CHECK(pieces::judge(nipped(45_mm, 40_mm), bound(), {}).outcome == Outcome::too_short);
}

TEST_CASE("a nipped piece does not fit a slot that is open at the edges, unless its tang reaches them") {
  CHECK(pieces::judge(nipped(51.4_mm, 48_mm), rounded(), {}).outcome == Outcome::tang_short);
  CHECK(pieces::judge(nipped(51.4_mm, 48_mm), rounded(), {}).tang_short_by == 2.9_mm); // of 50.9
  CHECK(pieces::judge(nipped(51.4_mm, 51.2_mm), rounded(), {}).outcome == Outcome::fits);
  CHECK(pieces::judge(nipped(56_mm, 51.9_mm), filed(), {}).outcome == Outcome::tang_short);
  CHECK(pieces::judge(nipped(56_mm, 52_mm), filed(), {}).outcome == Outcome::fits);
}
