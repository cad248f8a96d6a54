// The conversation of `nutward` alone on a terminal.
#pragma once

#include "cli/ask.hpp"

namespace nutward::cli {

// Prompts for sentences until Ctrl-D. A sentence that the daemon's absence kept from being answered is asked
// again with its own key once the daemon is back, so it is done at most once; Ctrl-C gives that up. `quiet`:
// no greeting. Returns 0, or 77 where the socket may not be opened.
int converse(Asker& asker, bool quiet);

} // namespace nutward::cli
