// Does a plan keep to its problem? Written apart from the solver and without any of its code, second by
// second as the words of plan.hpp say it; slow, for tests and for whoever doubts.
#pragma once

#include "agenda/plan.hpp"

#include <string>

namespace nutward::agenda {

// What is wrong with it, a sentence each; empty if nothing is. Jobs are judged that are planned; that those
// that are not could not be is not looked at, nor that the plan is a good one.
std::vector<std::string> check(const Problem& problem, const Plan& plan);

} // namespace nutward::agenda
