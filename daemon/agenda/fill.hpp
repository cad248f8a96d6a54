// An order of jobs that leaves the unit to keep busy no idle ends of days.
#pragma once

#include "agenda/model.hpp"

namespace nutward::agenda {

// What may not pause overnight leaves the rest of a day idle that it does not fit into. Day by day (run by
// run), of the next jobs by due date those are taken whose work on the unit fills it best, of equally good
// ones the earliest due. Jobs that the unit does not have to serve stand where they are due. `by_due` as
// by_due_date().
std::vector<int> filling_days(const Model& model, const std::vector<int>& by_due);

} // namespace nutward::agenda
