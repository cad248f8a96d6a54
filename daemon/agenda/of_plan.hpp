// A plan that was made earlier, as a schedule again.
#pragma once

#include "agenda/plan.hpp"
#include "agenda/schedule.hpp"

namespace nutward::agenda {

// Puts where the plan has each task into Task::was.
void remember(Problem& problem, const Plan& plan);

// The order and units of the plan, in a model of its problem; jobs that the plan has not placed are planned
// no more. Times follow from the order, and are no later than the plan's. nullopt if it is no plan of that
// model.
std::optional<Schedule> schedule_of(Model& model, const Plan& plan);

} // namespace nutward::agenda
