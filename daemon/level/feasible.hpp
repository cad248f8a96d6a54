// Feasible: whether the claims of one line can all hold if only some frets (and the bow) are off.
//
// Claims of which one row of several holds are branched on; each branch is a linear program of one unknown
// for each deviation. An answer is never rounding's: "possible" comes with amounts that meet every claim to
// within a nanometre, "not possible" from inequalities that contradict one another.
#pragma once

#include "level/claims.hpp"
#include "level/simplex.hpp"

#include <cstdint>
#include <optional>
#include <span>
#include <vector>

namespace nutward::level {

// A deviation: a fret of the line, or its bow (column claims.bow()), and whether its amount is under 0.
struct Unknown {
  std::uint32_t column = 0;
  bool low = false;
  friend auto operator<=>(const Unknown&, const Unknown&) = default;
};

class Feasible {
public:
  // The claims are kept by reference, and outlive this.
  explicit Feasible(const Claims& claims);

  // Whether some amounts of these, of their signs, none over most_amount and all others 0, meet the claims.
  // `room` over 0: where they do not, helps() tells what could, with at most so many more.
  bool possible(std::span<const Unknown> unknowns, int room = 0);

  // After possible() was true, or extreme() found something: the amounts, with their signs, one for each of
  // the unknowns.
  const std::vector<double>& amounts() const { return amounts_; }
  // After possible() with room was false. Whatever set of `room` more at most makes the claims possible, at
  // least one of it is here: no other unknown adds to what the contradictions (Farkas) of every branch lack,
  // or not enough.
  std::vector<Unknown> helps() const;

  // The smallest (or largest) size of unknowns[which] with which the claims are possible; nullopt: none.
  std::optional<double> extreme(std::span<const Unknown> unknowns, std::size_t which, bool largest);

private:
  struct Column {
    const double* factors = nullptr; // one for each row
    double sign = 1;
  };
  double factor(std::size_t j, std::uint32_t r) const { return columns_[j].sign * columns_[j].factors[r]; }
  const double* by_row(std::size_t column) const { return transposed_.data() + column * rows_; }
  void begin(std::span<const Unknown> unknowns, int room);
  double potential(std::uint32_t r) const;
  bool hopeless();
  void add_row(Simplex& lp, std::uint32_t r) const;
  bool work_off(Simplex& lp, std::uint64_t& used);
  bool settle(Simplex& lp, unsigned depth, std::uint64_t& used);
  bool branch(const Simplex& lp, std::span<const std::uint32_t> some, unsigned depth, std::uint64_t& used);
  std::span<const std::uint32_t> unmet() const;
  std::vector<std::uint32_t> worth_trying(std::span<const std::uint32_t> some);
  bool finish(const Simplex& lp);
  void note_proof(const Simplex& lp, std::uint64_t& used);
  void note_row(std::uint32_t r);
  void note_sum(std::span<const double> sum, double lacking);
  void values_at(const Simplex& lp);

  const Claims& claims_;
  std::size_t rows_ = 0;
  std::vector<double> transposed_;     // factors, column by column
  std::vector<double> least_;          // with the nanometre's slack
  std::vector<std::size_t> by_length_; // the claims `some`, short ones first

  std::vector<Column> columns_;
  std::vector<Unknown> unknowns_;
  std::vector<double> costs_;
  std::vector<std::uint64_t> branch_of_; // of a row that is being tried: the bit of its depth
  std::vector<double> values_, sum_;
  std::vector<double> amounts_, best_amounts_;
  std::vector<char> helps_;
  int room_ = 0;
  std::optional<std::size_t> flipped_; // this unknown is told from most_amount downward
  bool seek_extreme_ = false;
  double best_ = 0;
};

} // namespace nutward::level
