// What the commands that make frets share.
#pragma once

#include "shop/rows.hpp"

namespace nutward::shop::command_rows {

std::optional<Fret> fret_in(const Job& job, int slot, const View& view);
// Replaces the fret of the slot, if it had one.
void put_fret(Tx& tx, const Job& job, int slot, FretState state, std::optional<Length> length,
              std::optional<std::int64_t> piece);
// Throws Problem{state} where the slot has its fret already.
void refuse_taken(const Job& job, int slot, const View& view);
// Throws Problem{state} where the piece is of another wire, held for something else, or not measured.
void refuse_other(const Piece& piece, const Job& job, int slot, const View& view, const Setup& setup);
// Likewise where its crown is known and differs from that of the job's lot.
void refuse_crown(const Piece& piece, const Job& job, const View& view, const Setup& setup);

} // namespace nutward::shop::command_rows
