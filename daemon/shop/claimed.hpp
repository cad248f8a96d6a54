// What is claimed before anything is planned: pieces that are held, and new wire that is set aside. Parts of
// to_cut().
#pragma once

#include "shop/to_cut.hpp"

namespace nutward::shop {

// What is held for an open job of the wire goes into the problem's pieces, and what serves open slots into
// `held`. A piece under `shortest` is named only where it is held for a slot.
void add_held(ToCut& out, bool one_job, Length shortest, const View& view);

// Takes the new wire that other jobs than `job` have set aside out of the problem's stock.
void leave_set_aside(ToCut& out, const Job& job, const View& view, const Setup& setup);

// Its frets go through the bender.
bool bent(const Job& job);

} // namespace nutward::shop
