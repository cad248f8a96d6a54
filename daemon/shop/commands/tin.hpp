// What the commands that put pieces into the tin share.
#pragma once

#include "shop/rows.hpp"

namespace nutward::shop::command_rows {

pieces::Kind kind_of(const Args& args); // by the parameter `kind`; a short fret where it was not said
void set_ends(Piece& piece,
              std::string_view ends); // "raw", "one_raw", "dressed"; others leave them as they are
// From outside into the tin, as many as its count; gives its id.
std::int64_t put_in(Tx& tx, const Piece& piece);
// So many of a handful leave the tin, since they are put in by their lengths.
void take_out_unmeasured(Tx& tx, const Piece& handful, std::int64_t many);

// The whole piece, or all of a handful, goes from the tin to scrap; throws Problem{state} where it is held.
void scrap_whole(Tx& tx, const Piece& piece, const std::string& why, const Setup& setup);

} // namespace nutward::shop::command_rows
