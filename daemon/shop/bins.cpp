#include "shop/bins.hpp"

#include "units/print.hpp"

namespace nutward::shop {

std::string range_of(std::int64_t bin, Length step, const Setup& set) {
  return units::print_plain(bin * step, set.unit) + " to " + units::print_plain((bin + 1) * step, set.unit) +
         (set.unit == units::LengthUnit::mm ? " mm" : " in");
}

std::string place_for(std::int64_t wire, Length length, const View& view, const Setup& set) {
  const std::int64_t index = length.nm / set.bin_step.nm;
  for (const Bin& bin : view.tin().bins(wire, set.bin_step))
    if (bin.index == index && !bin.place.empty()) return bin.place;
  return set.ends_place;
}

} // namespace nutward::shop
