// Suits: does a wire suit the slots of a board, slot by slot and over the whole board, and what is it bent
// to?
//
// Every limit is common practice at the bench, from memory, without a published source.
#pragma once

#include "wire/wire.hpp"

#include <optional>
#include <vector>

namespace nutward::wire {

struct SuitSettings {
  Length loose{100'000};       // less interference than this is loose
  Length from{150'000};        // from here on it suits
  Length to{300'000};          // up to here, inclusive
  Length tight{350'000};       // more than this is tight
  Length ebony_less{50'000};   // all four are lower by this in ebony, which splits
  Length below_tang{300'000};  // room that a tang needs below it
  Length bow_sum{5'000'000};   // the wedges of a whole board: twenty tangs of 0.25 mm bow a neck back
  Length flat_end{12'000'000}; // the bender leaves this much of each end of a stick flat
  double bend_least = 0.10;    // bend tighter than the board by this share of its radius
  double bend_most = 0.20;     // up to this one

  friend bool operator==(const SuitSettings&, const SuitSettings&) = default;
};

// One slot as it was sawn. All values over 0; `board_width` is under twice the radius. Both are those along
// the slot, as far as a tang reaches; on a square slot without bindings they are the board's.
struct SawnSlot {
  int n = 0;
  Length board_width;
  std::optional<Length> radius; // of the board there; nullopt: flat
};

// What was measured on the board. Each nullopt: not measured, and what hangs on it is not judged.
struct Sawn {
  std::optional<Length> width; // of the slots: 0.2 to 3 mm
  std::optional<Length> depth; // of the slots in the middle of the board: 0.5 to 10 mm
  bool flat_bottomed = true;   // the bottom is straight, so that the slot is shallower at the edges
  bool ebony = false;
};

enum class Grip { loose, rather_loose, suits, snug, tight };

// Figures for one slot.
struct SlotSuits {
  int n = 0;
  std::optional<Length> edge_depth; // where the slot is least deep
  std::optional<Length> below_tang; // edge depth − tang depth; negative: the tang bottoms
  bool deep_enough = true;          // true where it is not known
  std::optional<Length> bend_from,
      bend_to; // radii to bend the wire to, tightest first; none: leave it straight
};

struct Suits {
  std::optional<Length> interference; // barb width − slot width; negative: it falls in
  std::optional<Grip> grip;
  std::optional<Length> tang_room; // slot width − tang thickness; negative: the tang does not go in
  std::vector<SlotSuits> slots;    // as given
  std::optional<Length> wedge_sum; // interference over all slots; 0 where it is negative
  bool bows_back = false; // the sum is over the limit (lower in ebony by the same share of each slot)
  // A range that is right for every slot; none where the radii differ too much for one bend, or are flat.
  std::optional<Length> bend_from, bend_to;

  // Nothing that is known speaks against it.
  bool good() const;
  // Everything that decides is known.
  bool sure() const;
};

// Interference = barb width − slot width. The edge of a flat-bottomed slot is less deep than the middle by
// the board's sagitta there, R − √(R² − (w/2)²). Throws BadProfile (field slot_width or slot_depth) for a
// measurement out of its range; `slots` may be empty.
Suits suits(const Profile& profile, const Sawn& sawn, const std::vector<SawnSlot>& slots,
            const SuitSettings& settings = {});

// What a stick gives: the length between the flat ends; 0 where there is none.
Length bent_length(Length stick, const SuitSettings& settings = {});

// How far the middle of an arc stands above its ends: R − √(R² − (w/2)²).
Length sagitta(Length width, Length radius);

} // namespace nutward::wire
