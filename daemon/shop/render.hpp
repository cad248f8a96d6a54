// A call as its canonical sentence: `fit job 12, slot 3`. talk understands it as the
// very same call.
#pragma once

#include "shop/row.hpp"

#include <string>

namespace nutward::shop {

std::string render(const Row& row, const Call& call);
// Of a row in the shop's lists; a row that is not there is rendered by the types of its values.
std::string render(const Call& call);
// One value, as it stands behind its parameter's name.
std::string render(const Param& param, const Value& value);

} // namespace nutward::shop
