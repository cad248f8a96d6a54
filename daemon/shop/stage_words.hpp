// The stages as they are said: which can be begun and finished, and the forms that a sentence has them in.
#pragma once

#include "agenda/stages.hpp"

#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace nutward::shop {

// The words of the stages that take somebody's time.
std::vector<std::string_view> worked_stages();

enum class SaidAs { doing, to_do }; // "seating", "seat"
// A pattern that sets {stage}: "(pulling {stage=pull}|…)". Without those in `but`.
std::string stage_pattern(SaidAs form, std::initializer_list<std::string_view> but = {});
// "seating", "cleaning the slots".
std::string_view doing(std::string_view stage);

} // namespace nutward::shop
