// The nutward shift: frets of a job that have been cut, some of them too short for their slots, laid anew so
// that the fewest have to be made. A board narrows toward the nut, so that a fret too short for its slot may
// be right for one further nutward.
#pragma once

#include "pieces/fit.hpp"

#include <span>
#include <stdexcept>
#include <string>
#include <vector>

namespace nutward::pieces {

struct ShiftSlot {
  int slot = 0;
  Wanted wanted; // `another`, of a piece of the tin: as for judge()
};

// A measured fret of the job, and the slot that it lies in.
struct LaidFret {
  int slot = 0;
  PieceFacts facts;       // `id` is not looked at
  bool seated = false;    // may only be left, or remade: pulling it chips the slot
  bool one_sided = false; // its gap is at one edge only: it may only have to be centred
};

// What is made smallest, in this order.
struct ShiftCost {
  int made = 0; // frets to make anew
  int ends_to_dress =
      0;         // again (a raw end of a fret of the job has to be dressed anyhow), or of a piece of the tin
  int moved = 0; // frets that change their slot, and pieces of the tin that get one
  Length wire;   // for those made anew: cut + nip loss each
  Length trim;   // that comes off the frets and pieces used

  friend auto operator<=>(const ShiftCost&, const ShiftCost&) = default;
};

enum class From { own = 0, other_slot = 1, tin = 2, anew = 3 };

// What a slot gets.
struct Filling {
  int slot = 0;
  From from = From::anew;
  std::size_t index = 0; // of the fret (own, other_slot) or the piece of the tin (tin); else 0
  Verdict verdict;       // of that fret or piece in this slot; not for anew
  bool centre = false;   // own, and one-sided: it reaches; centre it
};

struct Shift {
  std::vector<Filling> fillings;   // one for each slot, in the order of `slots`
  std::vector<std::size_t> to_tin; // frets that no slot gets, by their slots
  ShiftCost cost;
  bool proved = false; // checked by its potentials that no other way costs less (see assign.hpp)
};

struct BadShift : std::runtime_error {
  using std::runtime_error::runtime_error;
};

// The best shift, exactly. What a fret may be used for is judge()'s verdict: it stays where it fits, where it
// is borderline ("try it"), and where it is seated and not plainly too short; it moves, and a piece of the
// tin comes, only where it surely fits and loses no more than the trim limit. Pulled frets of the tin are
// used if given. A fret without a slot in `slots`, two frets in one slot and one slot given twice throw
// BadShift.
Shift shift(std::span<const ShiftSlot> slots, std::span<const LaidFret> frets,
            std::span<const PieceFacts> tin, const FitSettings& settings);

enum class Hand {
  to_tin = 0, // lift the fret of `slot` and put it in the tin
  aside = 1,  // lift the fret of `slot` and lay it aside, for a ring of frets that change places
  move = 2,   // lift the fret of `slot` and lay it in `to`
  back = 3,   // lay the fret that came out of `slot` and was laid aside in `to`
  centre = 4, // the fret stays in `slot`; centre it
  finish = 5, // the fret stays in `slot`, but has to be dressed, trimmed or nipped
  take = 6,   // take piece `index` of the tin for slot `to`
  make = 7,   // make a fret for slot `to`
  pull = 8,   // pull the seated fret of `slot`, which chips the slot; it is too short to stay
};

struct HandMove {
  Hand hand = Hand::make;
  int slot = -1;         // where the fret lies (to_tin … finish, pull); else -1
  int to = -1;           // where it goes (move, back, take, make); else -1
  std::size_t index = 0; // of the fret (to_tin … finish, pull) or the piece (take); else 0
};

// The same as moves of the hand, in an order that works: nothing is laid into a slot that is still taken.
// What stays untouched is not named. What the fret of a slot is laid for is that slot's filling.
std::vector<HandMove> hand_moves(const Shift& shift, std::span<const LaidFret> frets);

enum class Say {
  drop_in = 0, // into its own slot, as it is
  centre = 1,  // it reaches: centre it
  finish = 2,  // into its own slot, once dressed, trimmed or nipped
  try_it = 3,  // within the caliper's error of a limit
  move = 4,    // to another slot
  remake = 5,
};

struct OneVerdict {
  Say say = Say::remake;
  int slot = 0;    // where it goes: its own, or the one to move it to; its own for remake
  Verdict verdict; // there
};

// "Mine is 50.1, is that all right for 9?", for one fret by itself: whether its own slot takes it, else the
// slot of `slots` that loses least, by judge(). A seated fret is not moved. Its own slot must be in `slots`
// (BadShift).
OneVerdict verdict_on(const LaidFret& fret, std::span<const ShiftSlot> slots, const FitSettings& settings);

} // namespace nutward::pieces
