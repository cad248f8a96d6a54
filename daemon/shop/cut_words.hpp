// A cut plan in words, as a table, and in figures.
#pragma once

#include "shop/row.hpp"
#include "shop/wire_plan.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace nutward::shop {

struct CutSums {
  std::int64_t frets = 0, from_pieces = 0, from_new = 0, short_of = 0, waiting = 0; // slots
  std::int64_t pieces = 0, held = 0; // pieces that serve, and how many of them are held
  std::int64_t sticks = 0, coils = 0;
  std::int64_t rests = 0; // of sticks that others open for what they have set aside
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
  std::optional<Instant> planned_at{}; // as in WirePlan, of the plan of a whole wire
  bool brought_up_to_date = false;
};
Answer answer_of(const CutAnswer& cut, const View& view, const Setup& setup);

// How old the plan of a wire is, where it is not of this moment, and whether a better one may come, each with
// a space before it: " Planned 3 minutes ago.", " It is the plan of 14:02, brought up to date; a better one
// is being worked on."
bool better_to_come(const WirePlan& wire);
std::string age_of(const WirePlan& wire, const Moment& moment);

// How the last fret of a piece is finished; nullopt where it is cut like one of new wire.
std::optional<pieces::Verdict> finish_of(const cutting::Use& use, const cutting::Problem& problem);
// "nothing on hand is long enough". `settled`: it is proved that no more can be served.
std::string why_words(cutting::Why why, bool tin_only, bool settled);
std::string_view word_of(cutting::Why why); // "too_long_slot"

// Why each slot of Plan::unserved goes without: bad_slot, too_long_slot, no_stock or wire_short.
std::vector<cutting::Why> why_short(const cutting::Plan& plan);

// The data of one wire: its sums; and all of it.
Value data_of(const WirePlan& wire);
Value full_data_of(const CutAnswer& cut);
std::vector<Give> cuts_in_sum();
std::vector<Give> cuts_in_full();

} // namespace nutward::shop
