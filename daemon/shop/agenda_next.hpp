// What comes next for somebody and why, and what holds the shop up.
#pragma once

#include "shop/agenda_words.hpp"

namespace nutward::shop {

// The latest beginnings of a plan's tasks (agenda/slack.hpp), by job and task. Up to the press they are those
// that leave the recheck its full time (press_by), as far as the plan still has it so.
class Latests {
public:
  Latests(const AgendaPlan& agenda, const View& view, const Moment& moment);
  std::optional<agenda::Latest> of(const AgendaItem& item) const;

private:
  void keep_recheck(const AgendaPlan& agenda, const View& view, const Moment& moment);
  std::vector<std::vector<std::optional<agenda::Latest>>> all_;
};

// Why it stands where it does, in one or two sentences: what it is booked for, whose day it keeps and how
// much there is to spare, the recheck that is due.
std::string why_words(const AgendaItem& item, const AgendaPlan& agenda, const Latests& latests,
                      const View& view, const Moment& moment);

// Open time from where it stands to the latest beginning that keeps its job's day, if nothing else comes in
// its way; 0 where that is over, nullopt where no day is promised or it does not move.
std::optional<std::chrono::seconds> spare_of(const AgendaItem& item, const AgendaPlan& agenda,
                                             const Latests& latests, const Moment& moment);
std::string
spare_words(std::optional<std::chrono::seconds> spare); // "4 working days", "2 h 10 min", "nothing", "-"
std::string begin_by_words(const AgendaItem& item, const AgendaPlan& agenda, const Latests& latests,
                           const Moment& moment); // "Mon 30 Nov, 15:25", "too late", "-"

// What somebody is at, and what is planned for them after that, up to `most`. Nobody: of everybody.
struct Coming {
  std::vector<AgendaItem> at, next;
};
Coming coming(const std::vector<AgendaItem>& items, std::int64_t person, const Moment& moment,
              std::size_t most);

// How busy a unit is in the weeks that come; the first one is what is left of this week.
struct UnitLoad {
  AgendaUnit unit;
  std::vector<agenda::Load> weeks;
};
struct Loads {
  std::vector<Instant> bounds; // one more than there are weeks
  std::vector<UnitLoad> units; // those that only so many can use at a time, machines first
};
Loads loads_of(const AgendaPlan& agenda, const Moment& moment, int weeks);
std::string load_words(const agenda::Load& load); // "62 %", "-" where it is closed
int percent_of(const agenda::Load& load);         // taken of what is open; 0 where nothing is

// "The press decides how soon all is done: 14 h of work, until Thu 3 Dec."; "" where nothing does.
std::string bottleneck_words(const AgendaPlan& agenda, const View& view, const Moment& moment);

// By when what must begin, of what is planned: of each job what comes next, or of one job or machine all, the
// tightest first.
struct WhichDeadlines {
  std::optional<Job> job;
  std::optional<Machine> machine;
  std::optional<Actor> person;
};
void say_deadlines(Answer& out, const WhichDeadlines& which, const std::vector<AgendaItem>& all,
                   const AgendaPlan& agenda, const Latests& latests, const View& view, const Moment& moment);

// When each job is ready by the plan, and which will be late; of one job or all.
void say_outlooks(Answer& out, const std::optional<Job>& job, const AgendaPlan& agenda, const View& view,
                  const Moment& moment);
// " Late by this plan: job 4 by 2 days. Less than half a day to spare: job 5.", " Every promised day holds."
std::string outlooks_words(const AgendaPlan& agenda, const Moment& moment);

// When machines (or people) are there with nothing begun, booked or planned on them, stretches of a quarter
// of an hour and more; `at`: whether they are then.
struct WhichFree {
  std::optional<Machine> machine;
  std::optional<Actor> person;
  Instant from, to;
  std::string range; // "today"
  std::optional<Instant> at;
};
void say_free(Answer& out, const WhichFree& which, const std::vector<AgendaItem>& all,
              const AgendaPlan& agenda, const View& view, const Moment& moment);

// How busy machines and people are in the coming weeks, of all or of those; `week` 0: the text is about this
// one, 1: about the next.
void say_load(Answer& out, const std::optional<Machine>& machine, const std::optional<Actor>& person,
              std::size_t week, Loads loads, const AgendaPlan& agenda, const View& view,
              const Moment& moment);

// The data of the question `agenda`, of these items of the plan; and its fields.
Value data_of(const AgendaPlan& agenda, const std::vector<AgendaItem>& items, const Latests& latests,
              const Loads& loads, const Value& troubles, const View& view, const Moment& moment);
std::vector<Give> gives_of_agenda();

// The week by machine and person, from a day on; with the answer's text and cautions.
struct DaysShown {
  Day first;
  int days = 7;
};
Picture week_picture(const std::vector<AgendaItem>& items, const AgendaPlan& agenda, const DaysShown& shown,
                     const Answer& answer, const View& view, const Moment& moment);

} // namespace nutward::shop
