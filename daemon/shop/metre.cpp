#include "shop/metre.hpp"

#include "shop/answer.hpp"
#include "units/print.hpp"

#include <fmt/format.h>

namespace nutward::shop {

std::optional<Metre> metre_by_profile(const Wire& w) {
  const wire::Density* table = w.density ? nullptr : wire::density_of(w.material);
  const auto density = w.density ? w.density : table ? std::optional{table->g_per_cm3} : std::nullopt;
  const auto linear = wire::by_profile(w.profile, density);
  if (!linear) return std::nullopt;
  return Metre{*linear, fmt::format("by its profile and {:g} g/cm³{}", *density,
                                    table ? fmt::format(" ({}: {})", table->name, table->source) : "")};
}

std::optional<Metre> metre_of(const Wire& w) {
  if (w.linear_g_m) {
    return Metre{{*w.linear_g_m, w.linear_error.value_or(wire::profile_error)}, "by weighing a known length"};
  }
  return metre_by_profile(w);
}

std::string about_metres(Length error) {
  constexpr std::int64_t cm = 10'000'000;
  return units::print(Length{(error.nm + cm - 1) / cm * cm}, units::LengthUnit::m);
}

std::string rounded_metres(Length length) {
  constexpr std::int64_t cm = 10'000'000;
  const std::int64_t half = length.nm < 0 ? -cm / 2 : cm / 2;
  return units::print(Length{(length.nm + half) / cm * cm}, units::LengthUnit::m);
}

Metre known_metre(const Wire& w) {
  if (auto k = metre_of(w)) return *k;
  throw Problem(
      Fault::state, fmt::format("I do not know what a metre of {} weighs.", w.name), "wire",
      fmt::format("Weigh a known length of it and say for example: 610 mm of {} weighs 14.6 g.", w.name));
}

} // namespace nutward::shop
