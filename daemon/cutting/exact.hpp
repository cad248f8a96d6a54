// Plans for a dozen slots, exactly: best in every objective, proved by having looked at all of them.
#pragma once

#include "cutting/meter.hpp"
#include "cutting/serve.hpp"

#include <optional>
#include <span>
#include <vector>

namespace nutward::cutting {

// Sources that are alike; the first `count` of `sources` may be used.
struct Group {
  std::vector<Source> sources;
};

inline constexpr std::size_t most_exact_slots = 12;

// The best cuttings for these slots, at most most_exact_slots of them, from these sources. nullopt where it
// would take more than `most_steps`, or than the meter has left; what it takes is spent.
//
// A state is the set of slots served so far; source after source extends it by every set of slots that the
// source can serve. Alike sources are tried until one more changes nothing.
std::optional<std::vector<Cutting>> plan_exactly(const Problem& problem, std::span<const std::size_t> slots,
                                                 std::span<const Group> groups, std::int64_t most_steps,
                                                 Meter& meter);

// Groups of sources alike in all that serve() looks at, in the order of their first ones. Of stock `count`
// is the number that is left of it, by its index.
std::vector<Group> alike(const Problem& problem, std::span<const std::size_t> pieces,
                         std::span<const int> stock_left);

} // namespace nutward::cutting
