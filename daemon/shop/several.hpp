// Several pieces of the tin, meant by one length and how many.
#pragma once

#include "shop/rows.hpp"

#include <optional>
#include <vector>

namespace nutward::shop {

namespace takes {
// The parameters that several_meant() reads, to begin a row's `takes` with.
std::vector<Param> several(std::vector<Param> then);
} // namespace takes

// Whose held pieces may be meant: those for the job as a whole, and for any of these slots.
struct HeldFor {
  std::int64_t job = 0;
  std::vector<int> slots;
};

// By `pieces` (ids); else by `length`, `wire` and `count`: pieces of one wire within 0.5 mm of the length
// that nobody holds (but `held`), exactly that length before others. As many as said, any of equal ones,
// the oldest; all of them where no count was said. Of unequal ones more than said: throws Problem{ambiguous}
// whose choices are the same call with the pieces named. Throws Problem{value} where there are fewer, with
// how many there are. `wire`: where none was said. Shortest first.
std::vector<Piece> several_meant(const Args& args, std::optional<std::int64_t> wire,
                                 const std::optional<HeldFor>& held, const View& view);

} // namespace nutward::shop
