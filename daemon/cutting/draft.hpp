// A plan in the making: what there is, what is wanted, and the parts that make cuttings of them.
#pragma once

#include "cutting/meter.hpp"
#include "cutting/pack.hpp"
#include "cutting/serve.hpp"

#include <span>
#include <vector>

namespace nutward::cutting {

struct Supply {
  std::vector<std::size_t> pieces; // in Problem::pieces
  std::vector<int> stock;          // how many of each of Problem::stock
};

// Takes what a cutting uses.
void use_up(Supply& supply, const Cutting& cutting);

struct Draft {
  std::vector<Cutting> cuttings;
  std::vector<std::size_t> unserved;
};

// The sum of its prices, and of its service by rank (`ranks`: those that count, ascending).
Price price_of(const Problem& problem, const std::vector<Cutting>& cuttings);
Cost cost_of(const Problem& problem, const Draft& draft, const std::vector<int>& ranks);

// ---- the tin
// ----------------------------------------------------------------------------------------------

// Pieces by what they can be: a `single` makes one fret and leaves nothing of use.
struct Sorted {
  std::vector<std::size_t> singles, ends;
};
Sorted sort_pieces(const Problem& problem, std::span<const std::size_t> slots,
                   std::span<const std::size_t> pieces);

// Serves slots from single pieces: as much wire as can be, then with the least trim; exactly so where all
// slots are of one end style and crown (each slot then takes an interval of lengths, and neither interval
// holds another). Takes what it serves out of `slots`.
std::vector<Cutting> serve_singles(const Problem& problem, std::vector<std::size_t>& slots,
                                   std::span<const std::size_t> singles, Meter& meter);
// Serves these slots, which single pieces can serve together (Cover), each from as short a piece as will do.
// Where crowns, tangs or raw ends are in the way, some stay unserved.
std::vector<Cutting> serve_chosen(const Problem& problem, std::span<const std::size_t> slots,
                                  std::span<const std::size_t> singles);
// How long pieces are filled. Where sticks hold only so many frets whatever they are, it pays to give the
// tin the short ones, though others would fill it as well.
struct EndsManner {
  bool longest_first = true; // of the pieces
  double shortest = 1;       // this share of the slots, the shortest, is tried first,
  Length may_leave;          // and does if it leaves no more than this
};
std::vector<Cutting> serve_ends(const Problem& problem, std::vector<std::size_t>& slots,
                                std::span<const std::size_t> ends, const EndsManner& manner, Meter& meter);

// ---- new wire
// ---------------------------------------------------------------------------------------------

struct Packed {
  std::vector<Cutting> cuttings;
  std::vector<std::size_t> unserved;
  PackBound bound; // of serving all these slots from new wire alone
};
// `thorough`: with column generation where quicker bounds are not reached.
Packed pack_slots(const Problem& problem, std::span<const std::size_t> slots, const std::vector<int>& stock,
                  bool thorough, Chance& chance, Meter& meter);
Task task_of(const Problem& problem, std::span<const std::size_t> slots, const std::vector<int>& stock);

} // namespace nutward::cutting
