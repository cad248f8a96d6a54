// Which name somebody may have meant who said another one.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace nutward::shop {

// "Is it the sander? ", of the name that is nearest, where at most two letters are other ones; else "".
std::string nearly(std::string_view said, const std::vector<std::string>& all);

} // namespace nutward::shop
