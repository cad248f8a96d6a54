// All lines of the journal in their order, each with what stands beside it, read in one pass over each table.
#pragma once

#include "shop/store.hpp"
#include "store/chain.hpp"
#include "store/connection.hpp"

#include <limits>

namespace nutward::store {

class JournalWalk {
public:
  // `connection` is inside a transaction, and outlives the walk.
  explicit JournalWalk(Connection& connection);
  bool next(); // false: that was the last line

  const shop::Line& line() const { return line_; } // with what it touched
  const Beside& beside() const { return beside_; }
  // Whether journal_about has the instant that the line has.
  bool dated_alike() const { return dated_alike_; }

private:
  // Rows by line, ascending; those of no line are passed over (their keys tell on them).
  struct Rows {
    Query query;
    std::int64_t line = 0; // of the row it stands on
    void step();
    bool at(std::int64_t line); // true: it stands on a row of that line
    static constexpr std::int64_t none = std::numeric_limits<std::int64_t>::max();
  };

  Query lines_;
  Rows touched_, about_, movements_;
  shop::Line line_;
  Beside beside_;
  bool dated_alike_ = true;
};

} // namespace nutward::store
