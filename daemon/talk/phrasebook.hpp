// Every way to say every row, compiled once. Immutable, so any number of threads may read it.
#pragma once

#include "shop/lists.hpp"
#include "talk/evidence.hpp"
#include "talk/frame.hpp"

#include <bit>
#include <cstdint>
#include <deque>
#include <map>
#include <memory>
#include <span>
#include <string_view>
#include <vector>

namespace nutward::talk {

// Words by their numbers, of which there are fewer than `size`.
class WordSet {
public:
  explicit WordSet(std::size_t size) : bits_((size + 63) / 64) {}
  void add(int id) { bits_[static_cast<std::size_t>(id) / 64] |= std::uint64_t{1} << (id % 64); }
  bool has(int id) const { return (bits_[static_cast<std::size_t>(id) / 64] >> (id % 64) & 1) != 0; }
  template <class F>
  void each(F&& f) const {
    for (std::size_t k = 0; k < bits_.size(); ++k)
      for (std::uint64_t rest = bits_[k]; rest != 0; rest &= rest - 1)
        f(static_cast<int>(k * 64) + std::countr_zero(rest));
  }

private:
  boost::container::small_vector<std::uint64_t, 32> bits_;
};

class Phrasebook {
public:
  // Throws std::invalid_argument where a pattern is wrong.
  Phrasebook(std::span<const shop::Question* const> questions, std::span<const shop::Command* const> commands,
             std::string_view evidence = learnt_table());
  Phrasebook(const Phrasebook&) = delete;
  Phrasebook& operator=(const Phrasebook&) = delete;

  const Lexicon& lexicon() const { return lexicon_; }
  const std::deque<Phrase>& phrases() const { return phrases_; }
  const std::deque<Frame>& frames() const { return frames_; }
  // The row's frames, the wide one last.
  const std::vector<const Frame*>& frames_of(const shop::Row& row) const;
  const Evidence& evidence() const { return *evidence_; }
  // The phrases that may begin with one of these words, and those that may begin with anything; in the lists'
  // order.
  std::vector<const Phrase*> starting(const std::vector<int>& words) const;
  // Of these, those that a sentence of such words can be: what each needs is said.
  std::vector<const Phrase*> starting(const std::vector<int>& words, const WordSet& said) const;
  const shop::Row* row(std::string_view name) const; // nullptr where there is none
  bool is_command(const shop::Row& row) const;
  const Phrase& replacement_of(const shop::Row& row) const;
  const std::vector<const shop::Row*>& rows() const { return rows_; }
  // The rows that a phrase or a frame knows the word for. How much it says about which row is meant follows
  // from how many they are: for the nearest things that can be done.
  const std::vector<const shop::Row*>& rows_with(int word) const;

private:
  void add(const shop::Row& row, bool command);
  void add_frames();
  void add_wide(const shop::Row& row, const std::vector<FrameText>& texts);
  void index(const Phrase& phrase);
  void index_needs();
  void note_words(const std::vector<Step>& steps, const shop::Row& row);

  Lexicon lexicon_;
  std::deque<Phrase> phrases_;
  std::deque<Frame> frames_, wide_;
  boost::unordered_flat_map<const shop::Row*, std::vector<const Frame*>> frames_of_;
  std::unique_ptr<Evidence> evidence_;
  std::map<int, std::vector<const Phrase*>> by_word_;
  // Each phrase by those words of which it needs one that fewest phrases need; and those that need none.
  std::vector<std::vector<const Phrase*>> by_need_;
  std::vector<const Phrase*> needing_none_;
  std::vector<const Phrase*> open_;
  std::vector<const shop::Row*> rows_;
  boost::unordered_flat_map<const shop::Row*, bool> is_command_;
  std::map<const shop::Row*, Phrase> replacements_;
  std::map<int, std::vector<const shop::Row*>> rows_with_;
};

} // namespace nutward::talk
