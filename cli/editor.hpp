// A line typed on a terminal: with a line editor where there is one, else as the terminal itself edits it.
#pragma once

#include "cli/words.hpp"

#include <functional>
#include <memory>
#include <string>

namespace nutward::cli {

// An Interruptible (interrupt.hpp) lives as long as an Editor is used.
enum class Typed { line, cleared, end }; // cleared: Ctrl-C; end: Ctrl-D, or the terminal is gone

class Editor {
public:
  virtual ~Editor() = default;
  // Prompts on standard error and reads one line without its end.
  virtual Typed read(std::string& line) = 0;
  // Puts a line where the arrow keys find it.
  virtual void recall(const std::string& line) = 0;
};

using Finish = std::function<Completion(std::string_view before)>;

// Loads libedit. nullptr: it is not installed, or cannot edit on this terminal. `finish` is called at Tab and
// may throw nothing.
std::unique_ptr<Editor> open_libedit(Finish finish);

// The terminal's own line; sends no control sequences.
std::unique_ptr<Editor> open_plain_editor();

} // namespace nutward::cli
