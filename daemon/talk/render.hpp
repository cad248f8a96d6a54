// The canonical sentences of the shop's calls, under talk's own name.
#pragma once

#include "shop/render.hpp"

namespace nutward::talk {

using shop::render;

} // namespace nutward::talk
