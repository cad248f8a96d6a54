// A cut plan in words, as a table, and in figures.
#pragma once

#include "shop/row.hpp"
#include "shop/to_cut.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace nutward::shop {

struct CutSums {
  std::int64_t frets = 0, from_pieces = 0, from_new = 0, short_of = 0, waiting = 0; // slots
  std::int64_t pieces = 0, held = 0; // pieces that serve, and how many of them are held
  std::int64_t sticks = 0, coils = 0;
  Length new_wire;

  CutSums& operator+=(const CutSums& more);
};
CutSums sums_of(const ToCut& what, const cutting::Plan& plan);

// "Of the 22 open frets of job 8 (…) 9 come from 8 pieces and 13 from 2 new sticks, 0.75 m of new wire; 1
// gets none." `whose`: what the frets are of.
std::string lead_of(const CutSums& sums, bool tin_only, std::string_view whose, const Setup& setup);
// "proved best", "at most 12.00 mm of new wire from best".
std::string proof_of(const cutting::Plan& plan, const Setup& setup);

struct CutAnswer {
  const ToCut& what;
  const cutting::Plan& plan;
  const std::optional<Job>& job; // the only one that was asked for
  bool tin_only = false;
};
Answer answer_of(const CutAnswer& cut, const View& view, const Setup& setup);

// Why each slot of Plan::unserved goes without: bad_slot, too_long_slot, no_stock or wire_short.
std::vector<cutting::Why> why_short(const cutting::Plan& plan);

// The data of one wire: its sums; and all of it.
Value data_of(const ToCut& what, const cutting::Plan& plan);
Value full_data_of(const CutAnswer& cut);
std::vector<Give> cuts_in_sum();
std::vector<Give> cuts_in_full();

} // namespace nutward::shop
