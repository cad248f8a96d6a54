// Several calls of one sentence that tell of the same: whether they can stand beside one another.
#pragma once

#include "talk/understand.hpp"

namespace nutward::talk {

// Not the same again with something more: that would be a detail of it, and no other call.
bool differs(const shop::Call& a, const shop::Call& b);
// Two of them set the same in two ways, or say the opposite of one another.
bool opposed(const std::vector<shop::Call>& calls);
// What to ask where the same is told in two numbers, or where what counts is told twice: 10 sticks and 10
// sticks may be 20. What else is told twice is dropped ("no more saturdays, we're shut on saturdays").
std::optional<Understood> said_again(Understood& out, const Surroundings& at);

} // namespace nutward::talk
