// Sentences to the daemon, answers to the terminal.
#pragma once

#include "cli/http.hpp"
#include "cli/options.hpp"

#include <string>

namespace nutward::cli {

class Asker {
public:
  explicit Asker(Options options);

  // Says one sentence and prints what comes back. Returns the exit code for it (exits.hpp).
  int ask(const std::string& sentence);

  // Asks every line of standard input. Returns 0 if all were answered, else the first other code; ends at
  // once when the daemon is not reachable or the socket may not be opened.
  int ask_lines();

private:
  int answer(const std::string& sentence, const std::string& key);
  int explain(const NoAnswer& error, const std::string& key) const;
  int show(int status, const std::string& body);
  std::string pick_hint() const;

  Options options_;
  std::string home_;
  bool in_a_row_ = false;  // several sentences from standard input
  bool connected_ = false; // an earlier sentence was answered
};

} // namespace nutward::cli
