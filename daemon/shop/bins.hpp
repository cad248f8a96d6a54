// The bins of the tin: nobody numbers short frets, so pieces lie by wire and range of length.
#pragma once

#include "shop/setup.hpp"

#include <string>
#include <vector>

namespace nutward::shop {

// "50 to 55 mm": the lengths of the bin with this index.
std::string range_of(std::int64_t bin, Length step, const Setup& setup);

// Where pieces of a wire go, as the tin stands now.
class Places {
public:
  Places(std::int64_t wire, const View& view, const Setup& setup);

  // The place of the bin for this length, or else of the bin nearest to it (of two the shorter's), of those
  // in which a piece has a place; the setting `ends_place` where no piece of the wire has one.
  std::string of(Length length) const;

private:
  Length step_;
  std::string ends_place_;
  std::vector<Bin> bins_;
};

} // namespace nutward::shop
