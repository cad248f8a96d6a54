// Slots by size in coarse units, prices that are straight lines between a few sizes, and what a room is worth
// at such prices.
#pragma once

#include "cutting/cover.hpp"
#include "cutting/meter.hpp"
#include "cutting/serve.hpp"

#include <span>
#include <utility>
#include <vector>

namespace nutward::cutting {

// Frets of one size. Rounded down all is as the easiest of them has it, rounded up as the hardest.
struct Grade {
  std::int64_t size = 0; // units
  int count = 0;
  // nm of wire that the last of several takes of a piece: whose last end is raw, whose both are.
  std::int64_t last[2] = {0, 0};
  std::int64_t from = 0,
               to = 0;  // nm: what a piece is worth (singles.hpp) that makes one alone
  std::int64_t cut = 0; // nm
};

class Grades {
public:
  // `longest`: the longest room, in nm; it gets about so many units. `knots` ≥ 2.
  Grades(const Problem& problem, std::span<const std::size_t> slots, std::int64_t longest, int units,
         std::size_t knots, Rounding rounding);

  std::int64_t unit = 1; // nm
  std::vector<Grade> all;
  std::vector<std::size_t> order; // the slots, shortest first
  std::vector<std::size_t> of;    // grade, by position in `order`
  bool dressed = false;           // any_rounded()

  std::size_t knots() const { return knots_.size(); }
  // The size of a knot, in nm, and a position in `order` that has it.
  std::int64_t size_at(std::size_t knot) const { return all[of[knots_[knot]]].size * unit; }
  std::size_t position_at(std::size_t knot) const { return knots_[knot]; }
  // A fret's price from those at the knots, and how it counts at each of them.
  double price(const std::vector<double>& at_knots, std::size_t grade) const;
  void spread(std::size_t grade, double times, std::vector<double>& at_knots) const;

private:
  void add(const Problem& problem, std::size_t slot, Rounding rounding);
  void place_knots(std::size_t n);

  std::vector<std::size_t> knots_;                      // positions in `order`
  std::vector<std::pair<std::size_t, double>> between_; // by grade: a knot, and its share against the next
};

// The greatest value of frets in a room, for every room at once, where there are as many of each grade as one
// likes.
class Fillings {
public:
  Fillings(const Grades& grades, std::int64_t longest) : grades_(grades) {
    best_.resize(static_cast<std::size_t>(longest / grades.unit) + 1);
    chosen_.resize(best_.size());
  }
  // values ≥ 0, by grade.
  void solve(const std::vector<std::int64_t>& values, Meter& meter);
  // Rooms in units, from 0 to the longest.
  std::int64_t longest() const { return static_cast<std::int64_t>(best_.size()) - 1; }
  std::int64_t value(std::int64_t room) const { return best_[static_cast<std::size_t>(room)]; }
  // Grades that have it, once for each fret.
  void append(std::int64_t room, std::vector<std::size_t>& out) const;

private:
  static constexpr int none = -1, as_with_less = -2;
  const Grades& grades_;
  std::vector<std::int64_t> best_;
  std::vector<int> chosen_; // the grade that was added last, or one of the above
};

// What a long piece is worth at most, and the grades that it is cut into, the last fret's first; none where
// it is worth nothing. The last of several may be shorter. One alone must be near enough to the piece's
// length, or leave a rest to keep. `values`: those that `fillings` were solved for.
struct EndFilling {
  std::int64_t value = 0;
  std::vector<std::size_t> grades;
};
EndFilling fill_end(const Problem& problem, std::size_t piece, const Grades& grades, const Fillings& fillings,
                    const std::vector<std::int64_t>& values);

} // namespace nutward::cutting
