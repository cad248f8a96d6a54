// Whether two values say the same.
#pragma once

#include "shop/value.hpp"

namespace nutward::shop {

// Alike all through: == of two lists or records asks only whether they are one and the same.
bool same(const Value& a, const Value& b);

} // namespace nutward::shop
