#include "shop/bins.hpp"

#include "units/print.hpp"

namespace nutward::shop {

std::string range_of(std::int64_t bin, Length step, const Setup& set) {
  return units::print_plain(bin * step, set.unit) + " to " + units::print_plain((bin + 1) * step, set.unit) +
         (set.unit == units::LengthUnit::mm ? " mm" : " in");
}

Places::Places(std::int64_t wire, const View& view, const Setup& setup)
    : step_(setup.bin_step), ends_place_(setup.ends_place), bins_(view.tin().bins(wire, setup.bin_step)) {}

std::string Places::of(Length length) const {
  const std::int64_t index = length.nm / step_.nm;
  const Bin* nearest = nullptr;
  const auto away = [&](const Bin& b) { return b.index < index ? index - b.index : b.index - index; };
  for (const Bin& bin : bins_)
    if (!bin.place.empty() && (nearest == nullptr || away(bin) < away(*nearest))) nearest = &bin;
  return nearest == nullptr ? ends_place_ : nearest->place;
}

} // namespace nutward::shop
