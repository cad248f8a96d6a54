#include "level/explain.hpp"

#include <algorithm>

namespace nutward::level {

std::vector<Set> smallest_sets(Feasible& feasible, int most_off) {
  std::vector<Set> tried{{}};
  for (int size = 0;; ++size) {
    std::vector<Set> found, larger;
    for (const Set& set : tried) {
      // Once one of this size is found, none larger is wanted.
      const int room = found.empty() ? most_off - size : 0;
      if (feasible.possible(set, room)) {
        found.push_back(set);
        continue;
      }
      if (room == 0) continue;
      for (const Unknown& more : feasible.helps()) {
        Set with = set;
        with.insert(std::lower_bound(with.begin(), with.end(), more), more);
        larger.push_back(std::move(with));
      }
    }
    if (!found.empty() || size == most_off) return found;
    std::sort(larger.begin(), larger.end());
    larger.erase(std::unique(larger.begin(), larger.end()), larger.end());
    tried = std::move(larger);
  }
}

} // namespace nutward::level
