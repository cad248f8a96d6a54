// Each job as if nothing else were to be done: what cannot be done at all, and from when on it can.
#pragma once

#include "agenda/model.hpp"

namespace nutward::agenda {

// Jobs that have no place even alone are planned no more, nor those that wait for them; a most lag that hours
// and closures never let be kept is left aside; both are said in faults. Sets JobFacts::alone, and says which
// jobs are late whatever is done. `order` as Model::job_order.
void drop_what_cannot_be(Model& model, const std::vector<int>& order);

} // namespace nutward::agenda
