// A plan in the making: an order of all ops and a mode for each. Every unit serves its ops in that order, and
// each op starts as early as this, its arcs and its timeline let it; most lags push back what they count
// from. For that order there is no better plan, whatever the goal.
//
// A move takes one op to another place or mode. try_move() works out only what changes by it, along the
// order, and stops where nothing changes any more; then keep() or take_back().
#pragma once

#include "agenda/meter.hpp"
#include "agenda/model.hpp"

#include <span>

namespace nutward::agenda {

struct Move {
  int op = -1;
  int mode = 0;
  int to = -1;         // right after (or before) this op, which may be `op` itself: where it is
  bool before = false; // what must stay behind (before) it is taken along
};

class Schedule {
public:
  // Nothing is in the order yet.
  explicit Schedule(const Model& model);

  // An order in which every op comes after those that it depends on, with its modes (by op). False if it
  // cannot be kept before the horizon; the schedule is of no use then. `ops` may be any jobs' whole ops.
  bool assign(std::vector<int> order, std::vector<int> modes);

  // The value after the move; nullopt if it is not possible, or not before the horizon: then nothing changed.
  std::optional<Value> try_move(const Move& move);
  // Several at once, in this order. With a limit it gives up, as if impossible, once it is certain that the
  // value will be above that.
  static constexpr std::size_t most_moves = 12;
  std::optional<Value> try_moves(std::span<const Move> moves, const Value* limit = nullptr);
  void keep();
  void take_back();

  // Everything anew, from the order alone; what try_move() arrives at, too. False as for assign().
  bool evaluate();

  const Value& value() const { return value_; }
  const Model& model() const { return m_; }
  const std::vector<int>& order() const { return order_; }
  const std::vector<int>& modes() const { return mode_; }
  Second start(int op) const { return start_[at(op)]; }
  Second end(int op) const { return end_[at(op)]; }
  int mode(int op) const { return mode_[at(op)]; }
  int position(int op) const { return position_[at(op)]; }
  // The op before (after) it on its i-th unit; -1 if there is none.
  int before(int op, int i) const { return op_of(prev_[node(op, i)]); }
  int after(int op, int i) const { return op_of(next_[node(op, i)]); }
  Second work_of(int op) const; // with its set-up, if it needs it where it stands
  int last_on(int unit) const { return op_of(last_[at(unit)]); } // -1 if there is none
  Second finish(int job) const { return finish_[at(job)]; }
  Second ready(int op) const; // when its arcs, its units and its own limits let it start
  Second pushed(int op) const { return floor_[at(op)]; }  // by a most lag; -never if it is not
  std::int64_t recomputed() const { return recomputed_; } // ops, so far

private:
  struct Was {
    int op;
    Second start, end, floor;
  };
  // What a move changed in the order, to put it back.
  struct Change {
    int op = -1, mode = 0, first = 0;
    std::array<int, 2> prev{-1, -1}, next{-1, -1}; // nodes
    std::vector<int> segment;                      // what stood from `first` on
  };
  static std::size_t at(int i) { return static_cast<std::size_t>(i); }
  static std::size_t node(int op, int i) { return 2 * at(op) + at(i); }
  static int op_of(int node) { return node < 0 ? -1 : node / 2; }
  const Mode& mode_of(int op) const { return m_.ops[at(op)].modes[at(mode_[at(op)])]; }

  // The order and its links (schedule_moves.cpp).
  void link_all();
  void unlink(int op);
  void link(int op);
  void link_after(int me, int unit, int before);
  int node_on(int op, int unit) const;
  bool shift(const Move& move);
  bool forward(int op, int first, int last, int to);
  bool backward(int op, int first, int last, int to);
  void place_segment(int first);
  void put_back(const Change& change);
  bool apply(const Move& move);

  // Times (schedule.cpp).
  void dirty(int op, bool down);
  bool beyond_limit() const;
  void dirty_next(int op, bool down);
  int next_dirty();
  void clear_dirty();
  bool start_fresh();
  bool propagate();
  bool recompute(int op);
  bool push(const Op& op, Second start);
  bool near_push(int op) const;
  void find_pushed();
  void set(int op, Stretch to);
  void log(int op);
  void account(int op, int sign);
  void job_finish(int job);
  void total();
  void restore_times();

  const Model& m_;
  std::vector<int> order_, position_, mode_;
  std::vector<int> prev_, next_, first_, last_; // nodes: 2 * op + which of its units; the ends of each unit
  std::vector<Second> start_, end_, floor_, finish_;
  std::vector<std::int64_t> cost_; // of each job: weighted lateness, or its last end
  std::vector<char> counted_;      // jobs in the order, and those of which all is fixed
  Value value_, value_was_;

  std::vector<std::uint64_t> dirty_, down_; // by position; down_: may become earlier. As long as nothing may,
                                            // the value can only grow
  std::size_t downs_ = 0;                   // bits in down_
  const Value* limit_ = nullptr;
  std::size_t cursor_ = 0;
  std::vector<Was> log_;
  std::vector<std::uint32_t> logged_;
  std::uint32_t trial_ = 0;
  bool logging_ = false;
  bool fresh_ = false;     // everything is worked out anew, and floors are found by pushing
  bool not_alone_ = false; // a most lag binds: what changed does not tell alone, work everything out anew
  std::vector<std::pair<int, int>> pushed_; // pairs of a most lag of which the first waits for the second
  int pushes_ = 0;
  std::int64_t recomputed_ = 0;

  std::array<Change, most_moves> changes_;
  std::size_t depth_ = 0; // moves that are tried
  std::vector<int> ahead_, behind_;
  std::vector<std::uint32_t> mark_;
  std::uint32_t stamp_ = 0;
};

} // namespace nutward::agenda
