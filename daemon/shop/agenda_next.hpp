// What comes next for somebody and why, and what holds the shop up.
#pragma once

#include "shop/agenda_words.hpp"

namespace nutward::shop {

// The latest beginnings of a plan's tasks (agenda/slack.hpp), by job and task.
class Latests {
public:
  explicit Latests(const AgendaPlan& agenda);
  std::optional<agenda::Latest> of(const AgendaItem& item) const;

private:
  std::vector<std::vector<std::optional<agenda::Latest>>> all_;
};

// Why it stands where it does, in one or two sentences: what it is booked for, whose day it keeps and how
// much there is to spare, the recheck that is due.
std::string why_words(const AgendaItem& item, const AgendaPlan& agenda, const Latests& latests,
                      const View& view, const Moment& moment);

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
