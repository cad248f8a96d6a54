// The unit that decides how soon all can be done, in a model.
#pragma once

#include "agenda/model.hpp"

namespace nutward::agenda {

// When each op can start at the earliest if its job alone were done; never for ops that are not planned.
std::vector<Second> heads(const Model& model);

// Whether only that unit can do the op, and is kept busy by it.
bool only_by(const Op& op, int unit);

// What a unit must do in any plan.
struct Burden {
  int unit = -1;
  Second work = 0;              // of the planned ops that only it can do
  Second done = -never;         // when it would be through with them if it began now and waited for nothing
  Second earliest_end = -never; // no plan is through with them before: each not before its head
};
// nullopt if there is nothing that only it can do. `heads` as above.
std::optional<Burden> burden(const Model& model, const std::vector<Second>& heads, int unit);

// The unit whose work alone takes it longest (Burden::done the latest; of several the one whose earliest_end
// is, then the first). A unit that only waits, for a booking or for what comes before, is not the one that
// holds the others up, however late its end.
std::optional<Burden> deciding(const Model& model);

} // namespace nutward::agenda
