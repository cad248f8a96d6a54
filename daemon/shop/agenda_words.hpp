// The agenda in words: what is planned when by whom, days rather than minutes, and what is wrong with a plan.
#pragma once

#include "agenda/load.hpp"
#include "agenda/slack.hpp"
#include "shop/agenda_plan.hpp"
#include "shop/rows.hpp"

#include <optional>
#include <string>
#include <vector>

namespace nutward::shop {

// Something that takes time in the plan: a stage or recheck of a job, or a booking.
struct AgendaItem {
  std::size_t at_job = 0, at_task = 0; // in the plan
  std::int64_t job = 0;                // 0: a booking for no stage
  AgendaTask task;
  Instant start, end;
  AgendaUnit machine, person; // all 0: none
  bool fixed = false;         // begun or booked
  bool scarce = false;        // its machine is one of so many
};

// By start; what takes no time is left out.
std::vector<AgendaItem> items_of(const AgendaPlan& agenda);

// How a job does by the plan.
struct Outlook {
  std::optional<Instant> ready; // nullopt: it has no place
  enum class State { undated, in_time, at_risk, late, unplaced } state = State::undated;
  std::chrono::seconds late{0};
};
// At risk: in time, but with less open time to spare than `little_to_spare` (half a day at the bench).
inline constexpr std::chrono::hours little_to_spare{4};
Outlook outlook_of(const AgendaPlan& agenda, std::size_t at_job, const Moment& moment);
// nullopt: nothing of the job is planned (it is not open, or nothing is left to do).
std::optional<Outlook> outlook_of(const AgendaPlan& agenda, std::int64_t job, const Moment& moment);
std::string_view word_for(Outlook::State state); // "in_time"
// "in time", "will be late by 2 days".
std::string words_of(const Outlook& outlook);

// "today", "tomorrow", "Fri 27 Nov", "Mon 4 Jan 2027".
std::string day_words(Day day, const Moment& moment);
// "before lunch", "after lunch", where the shop has a break then; else "in the morning" …
std::string part_of_day(Instant t, const Moment& moment);
std::string clock_words(Instant t, const Moment& moment); // "10:05", down to five minutes
// "today before lunch", "Fri 27 Nov at 10:00" for what has a machine to itself.
std::string when_words(const AgendaItem& item, const Moment& moment);
std::string span_words(std::chrono::seconds elapsed); // "2 days", "5 hours", "20 minutes"

std::string name_of(const AgendaUnit& unit, const View& view); // "Ines", "sander 2", "the press"
// "press", "recheck", "booked"; of a stage the word that tables have.
std::string work_words(const AgendaItem& item);
// "press job 5 (octave mandolin of Bruna)", "the booking 7".
std::string to_do_words(const AgendaItem& item, const View& view);

// What is wrong with a plan.
struct AgendaTrouble {
  std::string code; // "no_machine", "late" …
  std::optional<std::int64_t> job;
  std::string text, would_do; // whole sentences
};
std::vector<AgendaTrouble> troubles_of(const AgendaPlan& agenda, const View& view, const Moment& moment);
Value data_of(const std::vector<AgendaTrouble>& troubles);
Give gives_of_troubles();
// Each as a sentence with a space before it, the first `most`; jobs that are late alone are left to others.
std::string words_of(const std::vector<AgendaTrouble>& troubles, std::size_t most);

// " Planned 3 minutes ago." and whether a better plan may come, as of the cut plan.
std::string age_of(const AgendaPlan& agenda, const Moment& moment);
// "proved best", "at most 3 hours from best".
std::string proof_of(const agenda::Plan& plan);

} // namespace nutward::shop
