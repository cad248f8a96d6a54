// The cut plan: which piece, stick or coil every open slot of one wire is served from.
//
// One problem is one wire (of one material); wires share nothing, so a shop with three has three problems.
// Lengths are along the wire. Everything is pure: the same problem and the same number of steps give the same
// plan, on every machine.
//
// From new wire (a stick, a blank, a coil) a slot takes need.cut. A piece of the tin that serves one slot
// goes in as pieces::judge says, untouched or finished; one that serves several gives need.cut to each but
// the last, which may get any rest that judge says fits. Between two frets, and between the last fret and
// what remains, one nip is lost. Borderline pieces are never planned.
#pragma once

#include "board/need.hpp"
#include "pieces/fit.hpp"
#include "units/length.hpp"

#include <compare>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <stop_token>
#include <vector>

namespace nutward::cutting {

using board::FitSettings;
using board::Need;
using units::Length;

// A fret that is wanted.
struct Slot {
  std::int64_t job = 0;
  int slot = 0;
  Need need;
  std::optional<Length> crown_height; // nullopt: any
  int due = 0;                        // smaller is served first where wire is short; equal ranks are equal
  std::optional<std::int64_t> lot;    // of the job's other frets; judge's own order only
};

// A piece of the tin that is free for this plan.
struct Piece {
  pieces::PieceFacts facts;
  int flat_ends = 0;           // 0 to 2: ends that the bender left flat, of the raw ones
  bool held_elsewhere = false; // somebody holds it for something else: named, and left alone
};

// stick: straight and counted when opened. coil: taken from without being opened. blank: cut beforehand to a
// length. What remains of any of them and is long enough goes on being of use.
enum class StockKind { stick = 0, blank = 1, coil = 2 };

// New wire, `count` alike.
struct Stock {
  StockKind kind = StockKind::stick;
  std::int64_t id = 0; // the caller's
  Length length;       // each, over 0
  int count = 1;
  int flat_ends = 0; // 0 to 2: a stick that goes through the bender has two
  std::optional<Length> crown_height;
};

enum class From { piece = 0, stock = 1 };
struct Source {
  From from = From::piece;
  std::size_t index = 0; // in Problem::pieces or Problem::stock
  friend auto operator<=>(const Source&, const Source&) = default;
};

// One piece, stick, blank or coil and the slots (indices in Problem::slots) that it serves, in the order of
// cutting: of a piece the last takes the rest.
struct Cutting {
  Source source;
  std::vector<std::size_t> slots;
  friend bool operator==(const Cutting&, const Cutting&) = default;
};

struct Problem {
  std::int64_t wire = 0; // the caller's
  std::vector<Slot> slots;
  std::vector<Piece> pieces;
  std::vector<Stock> stock;
  FitSettings settings;        // as board::check() accepts them
  Length flat_end{12'000'000}; // of one flat end; common practice, no source
  Length least_useful;         // what remains and is at least as long (flat end aside) is kept; less is scrap
  std::vector<Cutting> held;   // decided: they stay as they are, and serve their slots
  std::vector<Cutting>
      previous; // the last plan, with what is new served besides: it stays unless a new one serves
                // better, opens fewer sticks, or takes less new wire by more than `worth_moving`
  Length worth_moving{50'000'000}; // about one fret; 0: whatever is best, however it moves
};

// The objectives, strictly in this order; smaller is better. Everything held is counted too.
struct Cost {
  std::vector<int> unserved; // for each due rank that occurs, earliest first: slots that get no fret
  int sticks = 0;            // opened
  Length taken;              // new wire that does not go back: length less what is kept
  Length scrap;              // ends too short to keep, flat ends and what is nipped off pieces; no kerf
  std::int64_t cuts = 0;     // nips across the wire; nipping a tang is none
  friend auto operator<=>(const Cost&, const Cost&) = default;
};

enum class Level { none = 0, service = 1, sticks = 2, taken = 3, scrap = 4, cuts = 5 };

struct Fret {
  std::size_t slot = 0; // in Problem::slots
  Length length;        // of wire that comes off the source for it; finishing it is the bench's
  friend bool operator==(const Fret&, const Fret&) = default;
};

struct Use {
  Source source;
  std::vector<Fret> frets; // in the order of cutting
  Length remainder;        // what is kept, any flat end with it; 0 if nothing is
  Length scrap;
  std::int64_t cuts = 0;
  bool held = false;
};

enum class Why {
  bad_slot = 0,       // its need is not 0 < least <= target <= cut; not planned
  bad_source = 1,     // a piece or stock without a length or count, or more than two flat ends; not used
  kerf_too_long = 2,  // a nip (or the flat ends) is longer than the stick or coil; not used
  too_long_slot = 3,  // nothing on hand is long enough for it, even alone
  no_stock = 4,       // there is neither stick, blank nor coil
  wire_short = 5,     // everything that could serve it goes to slots that are due earlier, or before it
  held_elsewhere = 6, // a piece that somebody holds; not used
  held_no_more = 7,   // a cutting in `held` that does not work (any more); index is that in `held`; not kept
};

struct Fault {
  Why why = Why::bad_slot;
  std::size_t index = 0;      // of the slot, piece, stock or held cutting, by `why`; 0 for no_stock
  std::optional<From> from{}; // which list `index` is in, of bad_source and kerf_too_long
  friend bool operator==(const Fault&, const Fault&) = default;
};

// A piece that might do, within the caliper's error: to be tried at the bench.
struct Borderline {
  std::size_t slot = 0;
  std::size_t piece = 0;
};

struct Plan {
  std::vector<Use> uses;             // held ones first, then by the first slot served
  std::vector<std::size_t> unserved; // ascending
  std::vector<Fault> faults;         // the rest of the plan stands in spite of them
  std::vector<Borderline>
      borderline; // unused pieces that may save a slot that is unserved or cut from new wire
  Cost cost;
  Cost bound;                 // no plan is better than this: lexicographically, so that a level counts
                              // only where all before it are reached
  Level proved = Level::none; // up to here cost is as good as any plan's
  bool stopped = false;       // steps ran out, or a stop was asked for, before everything was proved or tried
};

// A step is at most about a microsecond's work (a third where these figures were taken), the same number for
// the same problem. The caller owns the clock and stops through the token; what is best so far is then given
// back within some ten milliseconds for a hundred jobs. There is always a plan.
struct Budget {
  std::int64_t max_steps = 500'000;
  std::stop_token stop{};
};

Plan plan(const Problem& problem, const Budget& budget);

} // namespace nutward::cutting
