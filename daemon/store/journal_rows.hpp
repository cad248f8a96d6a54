// How the rows of a line are read: by the journal, and by verify, which reads all of them in one go.
#pragma once

#include "shop/store.hpp"
#include "store/connection.hpp"

#include <string>

namespace nutward::store {

#define LINE_COLUMNS                                                                                         \
  "j.id, j.group_id, j.sequence, j.recorded_at, j.happened_at, j.actor, j.via, j.said, j.call, j.answer, "   \
  "j.inverse, j.undoes, j.hash"
#define MOVEMENT_COLUMNS                                                                                     \
  "m.id, m.kind, m.wire, m.lot, m.piece, m.job, m.slot, m.from_place, m.to_place, m.length_nm, m.pieces, "   \
  "m.reverses, m.reason"

inline constexpr int columns_of_a_line = 13;

shop::Line line_of(const Query& q); // a row that begins with LINE_COLUMNS; what it touched is left out
// MOVEMENT_COLUMNS from column `first` on, as chain.hpp has them.
std::string movement_text(const Query& q, int first = 0);

} // namespace nutward::store
