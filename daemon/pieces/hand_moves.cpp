// A shift as moves of the hand. Every fret that moves goes from one slot to another, so the moves form
// chains, which begin at a slot whose fret went to the tin (or that had none) and end at one that is filled
// from elsewhere, and rings, in which one fret is laid aside first.
#include "pieces/shift.hpp"

#include <algorithm>
#include <map>

namespace nutward::pieces {

namespace {

class Bench {
public:
  Bench(const Shift& shift, std::span<const LaidFret> frets) : shift_(shift), frets_(frets) {
    for (const Filling& f : shift.fillings) {
      filling_[f.slot] = &f;
      if (f.from == From::other_slot) leaves_[frets[f.index].slot] = f.slot;
    }
  }

  std::vector<HandMove> run() {
    for (const std::size_t fret : shift_.to_tin)
      out_.push_back({frets_[fret].seated ? Hand::pull : Hand::to_tin, frets_[fret].slot, -1, fret});
    for (const auto& [slot, filling] : filling_) {
      if (filling->from == From::other_slot && !leaves_.contains(slot)) follow(slot);
    }
    while (!leaves_.empty())
      turn_ring(leaves_.begin()->first);
    for (const auto& [slot, filling] : filling_)
      fill(slot, *filling);
    return std::move(out_);
  }

private:
  // `slot` is empty: lays in what comes from another slot, then goes on there, until the chain ends.
  void follow(int slot) {
    while (filling_.at(slot)->from == From::other_slot) {
      const std::size_t fret = filling_.at(slot)->index;
      const int from = frets_[fret].slot;
      if (!leaves_.contains(from)) return; // the ring has come round: that fret lies aside
      out_.push_back({Hand::move, from, slot, fret});
      leaves_.erase(from);
      slot = from;
    }
  }

  void turn_ring(int slot) {
    const int last = leaves_.at(slot);
    const std::size_t fret = filling_.at(last)->index;
    out_.push_back({Hand::aside, slot, -1, fret});
    leaves_.erase(slot);
    follow(slot);
    out_.push_back({Hand::back, slot, last, fret});
  }

  // What comes from elsewhere, and what has to be done to a fret that stays.
  void fill(int slot, const Filling& filling) {
    switch (filling.from) {
    case From::own:
      if (frets_[filling.index].seated) return;
      if (!filling.verdict.untouched) out_.push_back({Hand::finish, slot, -1, filling.index});
      if (filling.centre) out_.push_back({Hand::centre, slot, -1, filling.index});
      return;
    case From::other_slot:
      return;
    case From::tin:
      out_.push_back({Hand::take, -1, slot, filling.index});
      return;
    case From::anew:
      out_.push_back({Hand::make, -1, slot, 0});
      return;
    }
  }

  const Shift& shift_;
  std::span<const LaidFret> frets_;
  std::map<int, const Filling*> filling_;
  std::map<int, int> leaves_; // from a slot to where its fret goes, until it has gone
  std::vector<HandMove> out_;
};

} // namespace

std::vector<HandMove> hand_moves(const Shift& shift, std::span<const LaidFret> frets) {
  return Bench(shift, frets).run();
}

} // namespace nutward::pieces
