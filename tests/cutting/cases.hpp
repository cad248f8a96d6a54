// What the tests of the cut plan share: problems in few words, an oracle that knows the rules of cutting by
// itself, and a search through everything.
#pragma once

#include "cutting/plan.hpp"
#include "support/catch.hpp"
#include "support/show.hpp"

#include <array>
#include <map>
#include <optional>
#include <random>

namespace cases {

using namespace nutward;
using namespace nutward::units::literals;
using cutting::Cost;
using cutting::Cutting;
using cutting::From;
using cutting::Problem;
using units::Length;

// A slot that is cut to `cut` and takes nothing else: a bin-packing item.
cutting::Slot plain_slot(Length cut, int due = 0);
// By the arc of the slot, with the shop's usual settings.
cutting::Slot slot(Length arc, int due = 0, board::EndStyle style = board::EndStyle::rounded);
cutting::Stock stick(Length length, int count = 1, int flat_ends = 0);
cutting::Piece piece(Length length, int raw_ends, int flat_ends = 0);

// Items in sticks of one length: no nip, no rest of use.
Problem bin_packing(const std::vector<int>& sizes, int capacity, int sticks);

// What one source costs, worked out anew from DESIGN.md §4.5: {sticks, taken, scrap, cuts}; nullopt where the
// slots do not go in. The slots are tried in every order that matters.
using Figures = std::array<std::int64_t, 4>;
std::optional<Figures> figures(const Problem& problem, const cutting::Source& source,
                               const std::vector<std::size_t>& slots);
// The same with the last slot given.
std::optional<Figures> figures_in_order(const Problem& problem, const cutting::Source& source,
                                        const std::vector<std::size_t>& slots);

// The least cost of all assignments of slots to sources, by trying them all.
Cost brute_force(const Problem& problem);

// Every unit of supply: a stock entry once for each of its count.
std::vector<cutting::Source> units_of_supply(const Problem& problem);

// CHECKs that a plan is one: every slot once, no source too often, everything goes in, and the costs are its.
void check_plan(const Problem& problem, const cutting::Plan& plan);

// A small problem with pieces, sticks, perhaps a coil or a blank, in tenths of a millimetre.
Problem random_problem(std::mt19937& random, std::size_t most_slots, std::size_t most_pieces);

} // namespace cases
