// An answer as lines for a terminal. Pure. Whatever the daemon sent is escaped here: stored text cannot drive
// a terminal.
#pragma once

#include "cli/answer.hpp"

#include <string>
#include <string_view>

namespace nutward::cli {

struct Manner {
  bool color = false;
  bool quiet = false;    // the text and the cautions alone
  std::string pick_hint; // the line under numbered choices
};

// The text first, then the reason in one line, the table, the cautions, the choices.
std::string render(const Answer& answer, const Manner& manner);

// A problem: what was wrong, where, what would do. Falls back from `text` to `detail` to `title`.
std::string render_problem(const Answer& problem, const Manner& manner);

// Escaped line by line, so that line feeds stay; one at the very end is left out.
std::string printable(std::string_view text);

} // namespace nutward::cli
