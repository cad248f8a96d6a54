// A shop's queue for the cut plan, drawn at random, and what a person would do with it by hand.
#pragma once

#include "cutting/plan.hpp"

#include <cstdint>

namespace nutward::bench {

struct ShopSize {
  int jobs = 100;
  int sticks = 40; // of 610 mm, one in eight of 300 mm
  int pieces = 2000;
  int frets = 22; // of a job
};

// Jobs with boards of their own, so that hardly two frets are of one length; the tin holds short frets (17 of
// 20) and stick ends, measured to a tenth of a millimetre; each job is due on a day of its own.
// Frets of 43 to 58 mm by tenths, cut to just that, from sticks of 610 mm and five of 300 mm without flat
// ends, and short frets of the same lengths; a nip loses 1 mm.
cutting::Problem plain_shop(int frets, int pieces, std::uint32_t seed);

cutting::Problem random_shop(const ShopSize& size, std::uint32_t seed);

// Best fit decreasing: the longest slot first, into what it leaves the least of: a piece, or an opened stick;
// a new stick where nothing serves it.
cutting::Cost best_fit_decreasing(const cutting::Problem& problem);

} // namespace nutward::bench
