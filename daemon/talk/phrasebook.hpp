// Every way to say every row, compiled once. Immutable, so any number of threads may read it.
#pragma once

#include "shop/lists.hpp"
#include "talk/frame.hpp"

#include <deque>
#include <map>
#include <span>
#include <string_view>
#include <vector>

namespace nutward::talk {

class Phrasebook {
public:
  // Throws std::invalid_argument where a pattern is wrong.
  Phrasebook(std::span<const shop::Question* const> questions,
             std::span<const shop::Command* const> commands);
  Phrasebook(const Phrasebook&) = delete;
  Phrasebook& operator=(const Phrasebook&) = delete;

  const Lexicon& lexicon() const { return lexicon_; }
  const std::deque<Phrase>& phrases() const { return phrases_; }
  const std::deque<Frame>& frames() const { return frames_; }
  // The phrases that may begin with one of these words, and those that may begin with anything; in the lists'
  // order.
  std::vector<const Phrase*> starting(const std::vector<int>& words) const;
  const shop::Row* row(std::string_view name) const; // nullptr where there is none
  bool is_command(const shop::Row& row) const;
  const Phrase& replacement_of(const shop::Row& row) const;
  const std::vector<const shop::Row*>& rows() const { return rows_; }
  // How much a known word says about which row is meant: for the nearest things that can be done.
  const std::vector<const shop::Row*>& rows_with(int word) const;

private:
  void add(const shop::Row& row, bool command);
  void add_frames();
  void index(const Phrase& phrase);

  Lexicon lexicon_;
  std::deque<Phrase> phrases_;
  std::deque<Frame> frames_;
  std::map<int, std::vector<const Phrase*>> by_word_;
  std::vector<const Phrase*> open_;
  std::vector<const shop::Row*> rows_;
  std::map<const shop::Row*, bool> is_command_;
  std::map<const shop::Row*, Phrase> replacements_;
  std::map<int, std::vector<const shop::Row*>> rows_with_;
};

} // namespace nutward::talk
