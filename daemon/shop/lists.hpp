// The two lists. To add a question or a command: one file in questions/ or commands/ that defines it, one
// line here and one in lists.cpp. Names reach the wire and the journal: never change or reuse one.
#pragma once

#include "shop/row.hpp"

#include <span>
#include <string_view>

namespace nutward::shop {

std::span<const Question* const> questions();    // in the order of help
std::span<const Command* const> commands();      // those that can be said and called; undo among them
const Question* question(std::string_view name); // nullptr where there is none
const Command* command(std::string_view name);

} // namespace nutward::shop
