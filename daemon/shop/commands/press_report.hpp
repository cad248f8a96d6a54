// What a report of a pass says, and what is kept of it.
#pragma once

#include "shop/pressing.hpp"
#include "shop/rows.hpp"

#include <optional>
#include <string>
#include <vector>

namespace nutward::shop::command_rows {

struct PassReport {
  std::vector<int> slots; // ascending
  std::optional<Bar> bar;
  std::optional<Force> load;
  std::optional<press::Limit> most;    // what it may have been at most, where that is known
  std::optional<press::Limit> above{}; // of the shop's own limits, which the load was above; within `most`
  std::optional<Force> step_from{};    // one fret: its last load, where this is more than one step above it
  bool beyond() const { return most && load && load->n > most->load.n; }
};

// Throws Problem: a slot that the job has not; a bar that the shop has not; "the next pass" where there is
// none; Fault::ambiguous for a load that one of the bars may have and another not.
PassReport pass_report(const Args& args, const Job& job, const View& view, const Setup& setup);

// Why a report must be confirmed: more than the rating, with both numbers; "" where it need not be.
std::string beyond_rating(const PassReport& report, const Job& job, const Setup& setup);

// That the load was above what the shop itself allows; "" where it was not.
std::string above_limit(const PassReport& report, const Setup& setup);
// That one fret had more than a step at once; "" where it had not.
std::string steep_step(const PassReport& report, const Setup& setup);
// press.beyond, of a report that is beyond().
Event beyond_event(const PassReport& report, const Job& job, const Moment& moment, const Setup& setup);

void keep(Tx& tx, const Job& job, const PassReport& report, Instant when);

// Ascending lists of slots.
std::vector<int> without(const std::vector<int>& from, const std::vector<int>& gone);
std::vector<int> with(const std::vector<int>& a, const std::vector<int>& b);

// The state of these frets; where none is on record one is put there.
void mark(Tx& tx, const Job& job, const std::vector<int>& slots, FretState state);

// The fret of a slot has left it, or was seated anew: what it was pressed with counts for the slot no more,
// and no recheck waits for it.
void forget_pressings(Tx& tx, const Job& job, int slot);

} // namespace nutward::shop::command_rows
