// Sentences to the daemon, answers to the terminal.
#pragma once

#include "cli/http.hpp"
#include "cli/options.hpp"
#include "cli/where.hpp"

#include <string>

namespace nutward::cli {

class Asker {
public:
  Asker(Options options, Where where);

  // Says one sentence and prints what comes back. Returns the exit code for it (exits.hpp).
  int ask(const std::string& sentence);

  // The same, for who wants to ask again with the same key. Throws NoAnswer instead of explaining.
  int say(const std::string& sentence, const std::string& key);

  // Says on standard error why there was no answer, and what would do. Returns the exit code for it.
  int explain(const NoAnswer& error, const std::string& key) const;

  // From now on sentences follow each other, so that a choice is picked by its number alone.
  void begin_a_row() { in_a_row_ = true; }

  const Where& where() const { return where_; }

  // Whether the last sentence was not let in at all; else "not allowed" was said of that sentence alone.
  bool shut_out() const { return shut_out_; }

  // Asks every line of standard input. Returns 0 if all were answered, else the first other code; ends at
  // once when the daemon is not reachable or the socket may not be opened.
  int ask_lines();

private:
  int show(int status, const std::string& body);
  int draw(const Posted& answered);
  std::string pick_hint() const;

  Options options_;
  Where where_;
  bool in_a_row_ = false;  // several sentences follow each other
  bool connected_ = false; // an earlier sentence was answered
  bool shut_out_ = false;  // the last sentence did not come in at all
};

// A key that no other sentence has: 128 random bits.
std::string new_key();

// The line that starts the daemon that is asked there, fit to be printed and to be pasted.
std::string starting_line(const Where& where);

// Whether a line holds no word.
bool is_blank(const std::string& line);

} // namespace nutward::cli
