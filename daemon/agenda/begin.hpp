// Where a plan begins.
#pragma once

#include "agenda/list.hpp"

namespace nutward::agenda {

// The order and modes of a list schedule by due date. Jobs that have no place before the horizon are planned
// no more (JobFacts::planned, Model::job_order), and it is said in faults.
Board begin_by_due_date(Model& model, Meter& meter);

// Everything in the order in which the last plan had it and on the same units; what has none in it right
// after the task before it, whole new jobs where they find room without moving anything. nullopt if there is
// nothing of a last plan, or it cannot be continued before the horizon.
std::optional<Schedule> continue_last(const Model& model, Meter& meter);

} // namespace nutward::agenda
