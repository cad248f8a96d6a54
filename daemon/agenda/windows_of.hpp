// Between when and when each op can lie in a plan that is better than the best known, and what follows from
// that: constraint propagation for the exact search and for bounds.
//
// A plan is better only if each job ends early enough (its part of the value, all others at their least); ops
// before it then have a latest end each, and two ops of one unit that cannot go one way must go the other.
// Edge finding (Carlier and Pinson 1989; in the form of Baptiste, Le Pape and Nuijten, Constraint-Based
// Scheduling, 2001, from memory) looks at many ops of a unit at once. It counts in the unit's own open time:
// whatever its hours, an op takes at least its work of that, so that what holds for a machine that never
// closes holds.
#pragma once

#include "agenda/schedule.hpp"

#include <bit>

namespace nutward::agenda {

struct Node {
  std::vector<Second> start, end; // of each op: earliest
  std::vector<Second> latest_start, latest_end;
  std::vector<std::uint64_t> before, after; // of each op a row of bits: those that come before (after) it
  std::vector<std::uint64_t> modes;         // likewise: those that are left
};

class Propagator {
public:
  // Of all planned jobs.
  explicit Propagator(const Model& model);

  Node root() const;
  // Narrows the node to plans that are better than `best` (nullopt: any). False if there is none in it.
  bool propagate(Node& node, const std::optional<Value>& best, Meter& meter);
  // Both as decisions in a node, before propagate(). False if it contradicts what is decided.
  bool decide(Node& node, int first, int second) const;
  void take_mode(Node& node, int op, int mode) const;
  std::vector<int> modes(const Node& node, int op) const; // that are left
  int count(const Node& node, int op) const;

  // No plan in the node costs less.
  Value least(const Node& node) const;
  // Whether the two share a unit for certain, and neither is known to come first.
  bool undecided(const Node& node, int a, int b) const;
  const std::vector<int>& ops() const { return ops_; }
  // The ops that use it for certain.
  const std::vector<std::vector<int>>& of_unit(const Node& node);

private:
  // Of each mode that is left; ends when f says false.
  template <class F>
  bool each_mode(const Node& n, int op, F&& f) const {
    for (std::size_t w = 0; w < mode_words_; ++w)
      for (std::uint64_t bits = n.modes[at(op) * mode_words_ + w]; bits != 0; bits &= bits - 1)
        if (!f(static_cast<int>(w * 64 + static_cast<std::size_t>(std::countr_zero(bits))))) return false;
    return true;
  }
  static std::size_t at(int i) { return static_cast<std::size_t>(i); }
  bool is_before(const Node& n, int a, int b) const {
    return (n.before[at(b) * words_ + at(a) / 64] >> (at(a) % 64) & 1) != 0;
  }
  bool set_start(Node& node, int op, Second least);
  bool set_end(Node& node, int op, Second most);
  bool fit(Node& node, int op);
  bool set_deadlines(Node& node, const Value& best);
  bool forward(Node& node);
  bool backward(Node& node);
  bool pairs(Node& node);
  bool edges(Node& node);
  bool certain(const Node& node, int op, int unit) const;

  const Model& m_;
  std::vector<int> ops_;
  std::vector<char> planned_; // ops of planned jobs
  std::size_t words_ = 0, mode_words_ = 1;
  bool changed_ = false;
  std::vector<std::vector<int>> of_unit_;
  Meter* meter_ = nullptr;
};

} // namespace nutward::agenda
