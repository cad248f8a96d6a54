#include "cutting/draft.hpp"

#include <algorithm>

namespace nutward::cutting {

void use_up(Supply& supply, const Cutting& cutting) {
  if (cutting.source.from == From::stock) {
    --supply.stock[cutting.source.index];
    return;
  }
  const auto at = std::find(supply.pieces.begin(), supply.pieces.end(), cutting.source.index);
  if (at != supply.pieces.end()) supply.pieces.erase(at);
}

Price price_of(const Problem& problem, const std::vector<Cutting>& cuttings) {
  Price sum;
  for (const Cutting& c : cuttings) {
    const auto served = serve(problem, c);
    if (served) sum = sum + served->price;
  }
  return sum;
}

Cost cost_of(const Problem& problem, const Draft& draft, const std::vector<int>& ranks) {
  Cost out;
  out.unserved.assign(ranks.size(), 0);
  for (const std::size_t s : draft.unserved)
    ++out.unserved[static_cast<std::size_t>(
        std::lower_bound(ranks.begin(), ranks.end(), problem.slots[s].due) - ranks.begin())];
  const Price price = price_of(problem, draft.cuttings);
  out.sticks = static_cast<int>(price.sticks);
  out.taken = Length{price.taken};
  out.scrap = Length{price.scrap};
  out.cuts = price.cuts;
  return out;
}

} // namespace nutward::cutting
