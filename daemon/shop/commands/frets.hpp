// What the commands that make frets share.
#pragma once

#include "shop/rows.hpp"

namespace nutward::shop::command_rows {

std::optional<Fret> fret_in(const Job& job, int slot, const View& view);
// Replaces the fret of the slot, if it had one. Unless it came out short, pieces that are held for the slot
// are held for it no more.
void put_fret(Tx& tx, const Job& job, int slot, FretState state, std::optional<Length> length,
              std::optional<std::int64_t> piece);
// A slot that has its fret waits for nothing: what was held for it is free, or held on for its other slots.
void release(Tx& tx, std::int64_t job, int slot);
// In words: does a fret of this length do in its slot?
std::string verdict(Length length, const board::Need& need, const Setup& setup);
// Throws Problem{state} where the slot has its fret already.
void refuse_taken(const Job& job, int slot, const View& view);
// Throws Problem{state} where the piece is of another wire, held for something else, or not measured.
void refuse_other(const Piece& piece, const Job& job, int slot, const View& view, const Setup& setup);
// Likewise where its crown is known and differs from that of the job's lot.
void refuse_crown(const Piece& piece, const Job& job, const View& view, const Setup& setup);

// Keeps the parameters `length`, `measured` and `bend_radius` of a call as what the fret measures, and says
// whether it will do.
Effect keep_measure(const Args& args, const Job& job, int slot, Tx& tx, const Setup& setup);
// Asks for a yes where a fret would be less than half as long as its slot takes, or more than twice: a slot,
// a count or another unit was meant. For Command::wants_yes of rows with `job`, `slot` and `length`.
std::string hardly_its_length(const Args& args, const Moment& moment, const View& view);
// What a fret measures, in its row and in the ledger; a slot that had none has one now.
void record_length(Tx& tx, const Job& job, int slot, Length length);

// The fret of a slot, too short for it, goes into the tin; the slot is open again. `before` is what was known
// of it; `piece` says what is put in the tin, but for its id. Gives the piece as it lies there.
Piece short_into_tin(Tx& tx, Piece piece, const std::optional<Fret>& before, const Job& job, int slot,
                     const Setup& setup);
// Where in the queue a piece goes that came out of a slot: what the cut plan makes of it once it is brought
// up to date, and otherwise the open slot that wastes least of it; not the slot that it came from, nor one
// that a held piece serves. In words: with the job's name and what to do, or that none takes it.
struct NextPlace {
  pieces::Placing placing;
  bool planned = false;
};
std::optional<NextPlace> next_place(const Piece& piece, const Job& job, int slot, const View& view,
                                    const Setup& setup);
std::string words_of(const std::optional<NextPlace>& next, const View& view, const Setup& setup);
// Slots that got a fret of new wire, and what that took with its cuts.
struct CutSlots {
  std::vector<int> slots;
  Length wire;
};
// Of `among`, every open slot that no held piece serves gets a fret cut from sticks and coils. Throws
// Problem{state} where less is on hand.
CutSlots cut_from_stock(Tx& tx, const Job& job, const std::vector<int>& among, const Setup& setup);
// Of `among`, frets that are still as cut lose their dressing and come to the target.
void dress(Tx& tx, const Job& job, const std::vector<int>& among, const Setup& setup);

// A piece that became the fret of a slot.
struct Used {
  pieces::Verdict verdict;
  board::Need need;
  std::string words; // the piece as it was
  std::string rest;  // a sentence about what is left of it, led by a space; "" for none
  std::string plan;  // likewise where the cut plan had it, if elsewhere
};
// Makes the fret of it, in the ledger too. Throws Problem{state} where the slot has a fret already or the
// piece does not fit it.
Used use_piece(const Piece& piece, const Job& job, int slot, Tx& tx, const Setup& setup);

// What work at a stage can hurt with.
std::vector<Hazard> hazards_for(std::string_view stage);

// Throws Problem{state} where the fret is seated or pressed: pulling it would chip the slot.
void refuse_seated(const std::optional<Fret>& fret, const Job& job, int slot);

} // namespace nutward::shop::command_rows
