// Finding a place for one slot more, where others make way.
#pragma once

#include "cutting/draft.hpp"

namespace nutward::cutting {

// Serves a slot that the draft has neither in its cuttings nor among the unserved, as cheaply as it can: by
// an unused piece, beside what something is cut for, or from new wire; or in another slot's place, which then
// goes on looking, and so on. The cheapest such chain that is found is made; one that takes no new wire ends
// the search. Where there is none, the slot joins the unserved, or one that is due later and would make way
// for it. `supply`: all there is, with what the draft uses.
void exchange(const Problem& problem, const Supply& supply, std::size_t slot, Draft& draft, Meter& meter);

} // namespace nutward::cutting
