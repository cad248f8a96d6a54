// Who is at what: stages that were begun, stopped and finished, and the time that they took.
#pragma once

#include "agenda/learned.hpp"
#include "hours/calendar.hpp"
#include "shop/bench.hpp"

#include <chrono>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace nutward::shop {

// The stretch that is going on at a stage of a job; nullopt: nobody is at it.
std::optional<Stage> in_hand(const Job& job, std::string_view stage, const View& view);

struct AtWork {
  Job job;
  Stage stretch;
};
// All that is going on at open jobs, or what one person is at; by the time that it began.
std::vector<AtWork> at_work(const View& view, std::optional<std::int64_t> actor = {});

// Whether its end was reported.
bool is_finished(const Job& job, std::string_view stage, const View& view);

// What comes next on a job: the stage that was broken off last, else the first in order that is not finished;
// "" where all of them are.
std::string next_stage(const Job& job, const View& view);

// What work from one instant to another took: open time, or where it began or ended in closed time, which
// nobody keeps hours for, all of it. nullopt for over 16 h of that kind: a stop was forgotten.
std::optional<std::chrono::seconds> worked_between(Instant from, Instant to, const hours::Calendar& calendar,
                                                   const hours::Zone& zone);

// Open time that the stretches of a stage took since it was last finished, up to `until` for the one that is
// going on; nullopt where none is known.
std::optional<std::chrono::seconds> spent(const Job& job, std::string_view stage, const View& view,
                                          Instant until, const hours::Calendar& calendar,
                                          const hours::Zone& zone);

// Reports the end of a stage: of the stretch that is going on, or as a row of its own. `started`: where it
// was said, in place of what was reported. Throws Problem{value} at "started" where it lies after the end.
Stage finish_stage(Tx& tx, const Job& job, std::string_view stage, std::optional<Instant> started,
                   const Moment& moment);

std::string minutes_words(std::chrono::seconds time); // "45 min", "2 h 10 min", to the nearest minute

// How long a stage takes for 22 frets, and who says so.
struct Duration {
  enum class From { table, learnt, set };
  int minutes = 0;
  From from = From::table;
  int reports = 0; // that the median is of, or as many as there are so far
};
Duration duration_of(agenda::StageKind stage, const View& view);
agenda::Minutes minutes_of(const View& view); // of all of them

} // namespace nutward::shop
