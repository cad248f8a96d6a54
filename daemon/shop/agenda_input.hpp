// The shop as the agenda plans it (agenda/plan.hpp): what is still to be done of every open job, what is
// going on or booked, and when machines and people are there.
#pragma once

#include "agenda/plan.hpp"
#include "hours/calendar.hpp"
#include "shop/setup.hpp"
#include "shop/store.hpp"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace nutward::shop {

// What a unit of the problem is: one machine of a kind (`number` from 1; 0 where there are as many as are
// wanted), or a person.
struct AgendaUnit {
  std::int64_t machine = 0; // 0: a person
  int number = 0;
  std::int64_t person = 0; // 0: a machine
};

// What a task is: a stage of its job, a recheck of some of its frets, or a booking.
struct AgendaTask {
  std::string stage;        // agenda's word; "" of a booking that is for no stage
  std::int64_t recheck = 0; // the recheck that it is, where there is one already
  std::int64_t booking = 0; // that fixes it
};

struct AgendaJob {
  std::int64_t job = 0; // 0: a booking that is for no stage of a job
  std::vector<AgendaTask> tasks;
};

// What is named is parallel to what is in the problem.
struct AgendaInput {
  agenda::Problem problem;
  std::vector<AgendaUnit> units;
  std::vector<AgendaJob> jobs;
};

inline constexpr int agenda_days = 180; // so far ahead is planned

// Nothing that is over is in it, but for what a lag counts from. Stages that wait (cure, wait) are lags of
// the next task. Task::was is left empty. Everything but Problem::from is the same all day long while nothing
// is reported, except that what should be over by now is expected to be by the next quarter of an hour. Where
// hours were never said, nothing is open.
AgendaInput agenda_input(const View& view, const hours::Calendar& calendar, const hours::Zone& zone,
                         Instant now);

// A job that the shop does not have (Job::id 0), as it would be planned beside those of the input: in terms
// of its units. Calendar, zone and instant as of the input.
agenda::Job agenda_job(const AgendaInput& input, const Job& job, const View& view,
                       const hours::Calendar& calendar, const hours::Zone& zone, Instant now);

// 64 hex digits of all of it but Problem::from and Task::was: inputs of one digest are equal to the last
// index.
std::string agenda_digest(const AgendaInput& input);

std::optional<std::size_t> unit_of(const AgendaInput& input, std::int64_t machine, int number);
std::optional<std::size_t> unit_of_person(const AgendaInput& input, std::int64_t person);

} // namespace nutward::shop
