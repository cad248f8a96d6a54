// The agenda as every answer shows it: the plan that was worked out in the background (shop/planner) where
// the shop is still as it was then, and otherwise what can be made of it at once.
//
// The agenda also ages by time: what should have been begun and was not must go on to later. For half an hour
// a planned beginning that nobody reported is let pass (at the bench a plan is no train); then it is planned
// again, in open hours only, so that a shop that is closed sleeps.
#pragma once

#include "shop/agenda_input.hpp"
#include "shop/planner.hpp"

#include <optional>
#include <string_view>

namespace nutward::shop {

inline constexpr std::string_view agenda_planning = "agenda"; // StoredPlan::kind; the one subject is 1

// Steps of one answer, which is given on the network's thread: 20 ms at most for 100 jobs.
inline constexpr std::int64_t agenda_steps_of_an_answer = 12'000;
inline constexpr std::chrono::seconds let_pass{1800};

struct AgendaPlan {
  AgendaInput what; // from the caller's own snapshot; `from` is now, or the first beginning that was let pass
  agenda::Plan plan; // of what.problem
  // When the stored plan was made that this is, or was made from; nullopt: there was none.
  std::optional<Instant> planned_at{};
  bool brought_up_to_date = false; // it was stored for a shop that has changed since, or has aged
  bool settled = true;             // false: nothing says that the background has no better one
};

// `patience`: so long a beginning is let pass; none: the plan begins now. Takes the time of one quick plan at
// most. Throws Problem{state} where the shop is beyond what can be
// planned (agenda::plan).
AgendaPlan agenda_of(const View& view, const hours::Calendar& calendar, const hours::Zone& zone, Instant now,
                     std::chrono::seconds patience = let_pass);

// The instant from which on the stored plan must be planned again although nothing changes: a beginning that
// was let pass, or the first opening of a new day; nullopt: never (nothing is to be done).
std::optional<Instant> agenda_ages(const View& view, const hours::Calendar& calendar, const hours::Zone& zone,
                                   Instant now);

// For the planner; clock and rooms outlive it.
PlanKind agenda_plans(const Clock& clock, Rooms& rooms);

} // namespace nutward::shop
