#include "shop/same.hpp"

#include <algorithm>

namespace nutward::shop {

bool same(const Value& a, const Value& b) {
  const auto* one = std::get_if<std::shared_ptr<const Node>>(&a);
  const auto* other = std::get_if<std::shared_ptr<const Node>>(&b);
  if (one == nullptr || other == nullptr || *one == *other) return a == b;
  const Node &x = **one, &y = **other;
  const auto alike = [](const auto& f, const auto& g) { return f.first == g.first && same(f.second, g.second); };
  return x.is_list == y.is_list &&
         std::equal(x.items.begin(), x.items.end(), y.items.begin(), y.items.end(), same) &&
         std::equal(x.fields.begin(), x.fields.end(), y.fields.begin(), y.fields.end(), alike);
}

} // namespace nutward::shop
