// The cut plans of the wires, for the planner.
#pragma once

#include "shop/planner.hpp"

namespace nutward::shop {

inline constexpr std::string_view cut_planning = "cuts"; // StoredPlan::kind; the subject is the wire

PlanKind cut_plans();

} // namespace nutward::shop
