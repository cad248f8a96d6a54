// Whose history a line of the journal belongs to.
#pragma once

#include "shop/value.hpp"

#include <set>

namespace nutward::store {

// A job, a piece or a wire; of a job also one slot. Where a slot is named, the job as a whole stands beside
// it.
struct About {
  shop::Ref ref;
  int slot = whole;

  static constexpr int whole = -1;
  friend constexpr auto operator<=>(const About&, const About&) = default;
};

// Adds what a thing belongs to, by its image (see images.hpp; no value adds only the thing itself).
void add_about(shop::Ref ref, const shop::Value& image, std::set<About>& out);
void add_slot(std::int64_t job, int slot, std::set<About>& out);

} // namespace nutward::store
