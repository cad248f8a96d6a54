// The heaviest slots that single pieces can serve together, kept as slots come and go.
//
// Such sets are independent sets of a matroid (cover.hpp): a slot that goes is replaced by the heaviest that
// can be served instead, and one that comes takes the place of the lightest that is in its way. Both are
// found from the stretches that are tight (as many taken as there are pieces): what can be served instead of
// a slot is what only tight stretches that hold it keep out. A slot's weight is its size.
#pragma once

#include "cutting/cover.hpp"

#include <cstdint>
#include <span>
#include <vector>

namespace nutward::cutting {

class Basis {
public:
  // `order`: shortest first. All slots are there at first.
  Basis(const Problem& problem, std::span<const std::size_t> order, std::span<const std::size_t> singles);

  // A slot, by position, goes elsewhere or comes back; in some operations for each slot.
  void remove(std::size_t position);
  void restore(std::size_t position);

  bool is_there(std::size_t position) const { return states_[position] != State::gone; }
  bool is_taken(std::size_t position) const { return states_[position] == State::taken; }
  std::int64_t left() const { return left_; } // nm: the sizes of all that no single piece serves
  // What each slot would save of left() if it went elsewhere; 0 for those that are gone.
  std::vector<std::int64_t> savings() const;

private:
  enum class State : char { left, taken, gone };
  struct Stretch {
    std::size_t from = 0, to = 0;
    bool tight = false;
  };
  Stretch smallest_tight(std::size_t position) const;
  void count(std::size_t position, int change);
  void take_best();

  std::vector<std::int64_t> sizes_;
  std::vector<State> states_;
  std::vector<int> lacks_;  // taken up to here, less the pieces up to the end of its interval
  std::vector<int> before_; // taken before it, less the pieces before its interval
  std::int64_t left_ = 0;
};

} // namespace nutward::cutting
