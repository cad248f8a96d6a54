// What was said, as SHA-256 in hex, so that a key that comes again with other words is noticed.
#pragma once

#include <string>
#include <string_view>

namespace nutward::talk {

std::string digest(std::string_view text, std::string_view conversation);

} // namespace nutward::talk
