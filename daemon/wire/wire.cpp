#include "wire/wire.hpp"

#include <fmt/core.h>

namespace nutward::wire {

namespace {

using namespace units::literals;

void check_range(const char* field, const char* name, const std::optional<Length>& value, Length low,
                 Length high) {
  if (!value || (*value >= low && *value <= high)) return;
  throw BadProfile(field, fmt::format("A {} of {:.10g} mm cannot be right.", name, value->mm()),
                   fmt::format("From {:.10g} to {:.10g} mm would do.", low.mm(), high.mm()));
}

} // namespace

void check(const Profile& p) {
  check_range("crown_width", "crown width", p.crown_width, 0.5_mm, 6_mm);
  check_range("crown_height", "crown height", p.crown_height, 0.2_mm, 4_mm);
  check_range("tang_depth", "tang depth", p.tang_depth, 0.5_mm, 6_mm);
  check_range("tang_thickness", "tang thickness", p.tang_thickness, 0.2_mm, 2_mm);
  check_range("barb_width", "width over the barbs", p.barb_width, 0.2_mm, 3_mm);
  if (p.crown_height && p.crown_width && *p.crown_height > *p.crown_width) {
    throw BadProfile("crown_height", "The crown would be higher than it is wide.",
                     fmt::format("At most its width, {:.10g} mm, would do.", p.crown_width->mm()));
  }
  if (p.crown_width && p.tang_thickness && *p.crown_width <= *p.tang_thickness) {
    throw BadProfile("crown_width", "The crown would be no wider than the tang is thick.",
                     fmt::format("More than {:.10g} mm would do.", p.tang_thickness->mm()));
  }
  if (p.barb_width && p.tang_thickness && *p.barb_width < *p.tang_thickness) {
    throw BadProfile("barb_width", "The barbs would be narrower than the tang that carries them.",
                     fmt::format("At least {:.10g} mm would do.", p.tang_thickness->mm()));
  }
}

} // namespace nutward::wire
