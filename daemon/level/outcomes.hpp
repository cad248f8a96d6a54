// Outcomes: what a reading not taken yet could show under each explanation. For the sources of this folder.
#pragma once

#include "level/diagnose.hpp"
#include "level/explain.hpp"

#include <array>
#include <memory>
#include <optional>
#include <vector>

namespace nutward::level {

struct Outcome {
  bool rocks = false, steady = false; // which of them could be; at least one
};

// For the first `most` explanations of a finding, with the readings it was found from.
class Outcomes {
public:
  Outcomes(const std::vector<Reading>& readings, const Lines& lines, const LineFinding& finding,
           std::size_t most, Length epsilon);
  std::size_t size() const { return cases_.size(); }
  // An edge over the frets i..j (places on the line) under explanation e: exactly which outcomes some amounts
  // allow (both, where all amounts are between "not more than ε" and "more"). Points that are known show most
  // of it; a linear program the rest. Quickest if asked span by span.
  Outcome of(std::size_t e, std::size_t i, std::size_t j);

private:
  struct Case {
    Set set;
    std::vector<std::vector<double>> heights; // of all frets, for amounts that the readings allow
    std::size_t first = 0, last = 0;          // of the frets that are off; first > last: none is
    bool bowed = false;
  };
  double proudest(const std::vector<double>& heights, std::size_t i, std::size_t j) const;
  std::vector<double> heights_of(const Set& set, const std::vector<double>& amounts) const;
  void learn(Case& one, const std::vector<double>& amounts);
  bool possible(Case& one, std::size_t i, std::size_t j, Felt felt);

  // What is known and one reading more; of the span asked for last.
  struct Added {
    ClaimsOf claims;
    std::optional<Feasible> feasible{};
    std::size_t i = 0, j = 0;
  };

  const Lines& lines_;
  Line line_;
  Length epsilon_;
  ClaimsOf known_;
  std::vector<double> bow_;
  std::vector<Case> cases_;
  std::array<std::unique_ptr<Added>, 2> added_; // steady, rocks
};

} // namespace nutward::level
