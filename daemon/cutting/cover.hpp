// Which slots single pieces can serve together.
#pragma once

#include "cutting/serve.hpp"

#include <span>
#include <vector>

namespace nutward::cutting {

// Slots by position in an order, the shortest first. By Hall: a set of them can be served if no stretch of
// the order has more of the set than there are pieces in its intervals: long enough for its first slot by
// what they are worth, short enough for its last by their length, which dressing does not change. Intervals
// are made wider (rounding down: the answer is never no where it could be yes) or narrower (up: hardly ever
// yes where it could not, but for crowns and tangs) until neither bound falls along the order.
enum class Rounding { down = 0, up = 1 }; // of what is needed: down for bounds, up for what must go in

// By position: minus the single pieces up to its interval's end, and minus those before its start.
struct Reach {
  std::vector<int> ends, begins;
};
Reach reach(const Problem& problem, std::span<const std::size_t> order, std::span<const std::size_t> singles,
            Rounding rounding);

class Cover {
public:
  // `order`: shortest first.
  Cover(const Problem& problem, std::span<const std::size_t> order, std::span<const std::size_t> singles,
        Rounding rounding);

  // Takes the slot at this position if it can be served together with those taken before; in some dozen
  // operations times the logarithm of their number.
  bool take(std::size_t position);
  void clear();

private:
  // Of a range of positions: the most that a stretch ending in it lacks, and the least that one beginning in
  // it has before it; both still without what was added to the whole of a wider range.
  struct Node {
    int most = 0, least = 0, added_most = 0, added_least = 0;
  };
  void build();
  void raise(std::size_t from, bool most);
  int most_from(std::size_t position) const;
  int least_upto(std::size_t position) const;

  std::size_t leaves_ = 1;
  Reach reach_;
  std::vector<Node> nodes_;
};

} // namespace nutward::cutting
