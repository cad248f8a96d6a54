// A call as its canonical sentence: `fit job 12, slot 3`. talk understands it as the
// very same call.
#pragma once

#include "shop/row.hpp"

#include <functional>
#include <string>

namespace nutward::shop {

std::string render(const Row& row, const Call& call);
// The same with each value as `in_words` has it, for a person to read.
using InWords = std::function<std::string(const Param& param, const Value& value)>;
std::string render(const Row& row, const Call& call, const InWords& in_words);
// Of a row in the shop's lists; a row that is not there is rendered by the types of its values.
std::string render(const Call& call);
// One value, as it stands behind its parameter's name.
std::string render(const Param& param, const Value& value);

} // namespace nutward::shop
