// What a shop takes to be usual when it reads its frets: how finely a hand feels, how rare a fault is, what
// may be called level. From its settings, as the bench's code wants it (level/diagnose.hpp, level/next.hpp).
#pragma once

#include "level/next.hpp"
#include "shop/setup.hpp"

#include <optional>
#include <string>
#include <string_view>

namespace nutward::shop {

struct LevelSettings {
  Length hand, quick_hand; // ε of a reading, and of a quick one
  level::Limits limits;
  level::Plan plan;
};
LevelSettings level_settings(const View& view);

// How a setting of them is kept; nullopt where `name` is none of them. Throws Problem{value}.
std::optional<std::string> check_level_setting(std::string_view name, std::string_view text);

// What may be called level is at least so many times what a hand feels: a low fret shows with about half its
// amount only.
inline constexpr double called_of_hand = 2.5;
// Throws Problem{value} at `where` for settings that do not go together. To be called after a change of one.
void check_level_settings(const View& view, std::string where);

} // namespace nutward::shop
