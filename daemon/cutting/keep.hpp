// Packing so that many sticks leave a rest to be kept.
#pragma once

#include "cutting/pack.hpp"

namespace nutward::cutting {

// A stick that leaves a rest takes what its frets take, and keeps a flat end; one that is used up takes its
// whole length. So the room that a packing leaves is best left in rests just long enough to be kept, as many
// as it allows, with the other sticks full. `packing` if no better one is found.
Packing keep_more(const Task& task, Packing packing, Chance& chance, Meter& meter);

} // namespace nutward::cutting
