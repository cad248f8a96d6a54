// What the shop presses with, from its settings and bars, as the bench's code wants it (press/equipment.hpp).
#pragma once

#include "press/equipment.hpp"
#include "shop/setup.hpp"

#include <optional>
#include <string>
#include <string_view>

namespace nutward::shop {

// The loads of a narrow bar's ladder are said for a fret of this length.
inline constexpr Length ladder_fret{50'000'000};

// How a setting of the press is kept; nullopt where `name` is none of them. Throws Problem{value}.
std::optional<std::string> check_press_setting(std::string_view name, std::string_view text,
                                               units::ForceUnit bare);

// Whether the press may be used is no setting: what tells a load asks setup_at() for the setup.
press::Equipment equipment(const View& view, const Setup& setup);
// Throws Problem{value} at `where` for settings or bars that do not go together, such as a limit above the
// plate. To be called after a change of either.
void check_equipment(const View& view, std::string where);

// The bar of that name, whatever its capitals; nullopt where there is none.
std::optional<Bar> bar_called(std::string_view name, const View& view);
// The same of a parameter; throws Problem{value} that says which there are.
Bar bar_of(std::string_view name, std::string_view where, const View& view);

// Of the four that must have been said of a job's neck, those that have not: "head clear, glue set".
std::string still_to_say(const Job& job);

// "2000 kg": "2000"; nullopt for any other unit.
std::optional<std::string> number_of_kilograms(std::string_view text);

} // namespace nutward::shop
