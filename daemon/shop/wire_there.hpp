// When the wire for a job's frets is there, of what was ordered and is still to come.
#pragma once

#include "hours/zone.hpp"
#include "shop/setup.hpp"
#include "shop/store.hpp"

#include <map>
#include <optional>

namespace nutward::shop {

// The open jobs take their wire in the order in which they are promised. What is on the shelf and in the tin
// is there for the first of them; from where even all of that falls short, each has to wait for the day on
// which enough of the orders is promised to have come (its beginning, local). What is in the tin counts with
// its whole length, so that nobody is told to wait who may find enough there; but pieces that are held do
// not, nor do the slots that they serve. Orders without a promised day count for nothing, and a day that is
// over has come.
class WireThere {
public:
  WireThere(const View& view, const Setup& setup, const hours::Zone& zone);
  // nullopt: it is there, or nothing is ordered that would be enough.
  std::optional<Instant> there_for(std::int64_t job) const;

private:
  std::map<std::int64_t, Instant> from_;
};

} // namespace nutward::shop
