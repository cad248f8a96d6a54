// The canonical sentences of the shop's calls, under talk's own name; and calls as a person reads them.
#pragma once

#include "shop/render.hpp"
#include "talk/names.hpp"

namespace nutward::talk {

using shop::render;

// Things by their names and times as the shop's clock has them, where the canonical sentence has ids and UTC:
// "look again job 5, again 2026-11-26 15:00", "wire medium". A job by its number.
std::string told(const shop::Row& row, const shop::Call& call, const Names& names);
std::string told(const shop::Param& param, const shop::Value& value, const Names& names);

} // namespace nutward::talk
