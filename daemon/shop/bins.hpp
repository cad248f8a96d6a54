// The bins of the tin: nobody numbers short frets, so pieces lie by wire and range of length.
#pragma once

#include "shop/setup.hpp"

#include <string>

namespace nutward::shop {

// "50 to 55 mm": the lengths of the bin with this index.
std::string range_of(std::int64_t bin, Length step, const Setup& setup);

// Where a piece of this length goes: the place of the bin for it, where one of its pieces has a place, else
// the setting `ends_place`.
std::string place_for(std::int64_t wire, Length length, const View& view, const Setup& setup);

} // namespace nutward::shop
