// The command line of `nutward`.
#pragma once

#include <optional>
#include <string>

namespace nutward::cli {

struct Options {
  std::string home;         // as given; empty: to be found (home.hpp)
  std::string http;         // URL as given; empty: not over TCP, unless the environment says so (where.hpp)
  std::string token_file;   // as given
  std::string conversation; // as given, or one for this terminal session
  bool own_conversation = false; // it was given
  std::string key;               // Idempotency-Key as given; empty: a new one for each sentence
  std::string picture;  // the file to draw the answer into, "-" for standard output; empty: not drawn
  std::string sentence; // the words with one space between them; empty: they come from standard input
  bool csv = false;     // the answer's list as CSV
  bool json = false, quiet = false, no_input = false, no_color = false;
};

struct CommandLine {
  Options options;
  std::optional<int> exit; // set: print `text` (on stderr if it is not 0) and leave with this code
  std::string text;
};

// Reads the command line; never prints and never throws for what a person typed. Options may stand between
// the words of the sentence; `-0.5` is a word, and so is everything after `--`.
CommandLine read_command_line(int argc, const char* const* argv);

} // namespace nutward::cli
