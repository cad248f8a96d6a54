// The sentences said on this person's terminals, for the next conversation. One a line, the oldest first.
#pragma once

#include <string>
#include <vector>

namespace nutward::cli {

// $XDG_STATE_HOME/nutward/history (an absolute one: XDG Base Directory Specification), else
// ~/.local/state/nutward/history; empty if there is neither.
std::string history_file();

// Whether a sentence may be kept: one that begins with a space is meant not to be, as in shells; one with a
// token in it was typed by mistake.
bool may_be_kept(const std::string& sentence);

class History {
public:
  // Reads the last 1,000 sentences. The file, and folders missing on the way to it, are made for their owner
  // alone (0600, 0700); a file that others may read is closed to them. A file that is no plain file is left
  // alone. Never throws: without a file nothing is kept, and `trouble` says why.
  explicit History(const std::string& file);
  ~History();
  History(const History&) = delete;
  History& operator=(const History&) = delete;

  const std::vector<std::string>& sentences() const { return sentences_; }
  const std::string& trouble() const { return trouble_; }

  // Keeps a sentence unless it begins with a space or repeats the last one. Appends in one write, so that
  // several terminals can share the file. Returns whether it was kept.
  bool keep(const std::string& sentence);

private:
  void read_all();
  int descriptor_ = -1;
  std::vector<std::string> sentences_;
  std::string trouble_;
};

} // namespace nutward::cli
