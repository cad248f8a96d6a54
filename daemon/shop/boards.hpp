// Boards as the shop takes them in and speaks of them.
#pragma once

#include "shop/bind.hpp"
#include "shop/setup.hpp"

#include <string>
#include <vector>

namespace nutward::shop {

// The parameters of a board, for a row that takes one in.
std::vector<Param> board_params();

// The board of such a row's arguments. Throws Problem{value} at the parameter that cannot be so, with what
// would do: what board::check and board::check_binding refuse, and arguments that do not go together.
board::Board board_of(const Args& args, const Setup& setup);

// "Scale 648.00 mm, equal temperament of 12, radius 400.00 mm, rounded ends."
std::string words_of(const board::Board& board, const Setup& setup);
// "slot 5", "480.00 mm from the nut", "the nut".
std::string words_of(const board::Spot& spot, const Setup& setup);
// One sentence for all widths that lie off the line of the others, with a space before it; "" where none
// does.
std::string width_warning(const board::Board& board, const Setup& setup);
// The same: [{"slot" or "distance_mm", "measured", "line"}].
Value widths_off(const board::Board& board);

} // namespace nutward::shop
