// The words that Tab finishes, from the daemon.
#pragma once

#include "cli/where.hpp"
#include "cli/words.hpp"

#include <string>

namespace nutward::cli {

// Asks the questions help, stock and jobs. What cannot be had, and what could drive a terminal, is left out;
// throws nothing for it.
Vocabulary fetch_vocabulary(const Where& where);

} // namespace nutward::cli
