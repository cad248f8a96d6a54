// The data of the question `agenda`.
#include "shop/agenda_next.hpp"

namespace nutward::shop {

namespace {

Value item_data(const AgendaItem& i, const AgendaPlan& agenda, const Latests& latests, const Moment& moment) {
  const auto latest = latests.of(i);
  const auto spare = spare_of(i, agenda, latests, moment);
  return record({{"job", i.job == 0 ? Value{} : ref(Thing::job, i.job)},
                 {"stage", i.task.stage},
                 {"booking", i.task.booking == 0 ? Value{} : Value{i.task.booking}},
                 {"machine", i.machine.machine == 0 ? Value{} : ref(Thing::machine, i.machine.machine)},
                 {"number", std::int64_t{i.machine.number}},
                 {"person", i.person.person == 0 ? Value{} : ref(Thing::actor, i.person.person)},
                 {"start", i.start},
                 {"end", i.end},
                 {"fixed", i.fixed},
                 {"begin_by_at", latest ? opt(latest->alone) : Value{}},
                 {"spare_minutes", spare ? Value{spare->count() / 60} : Value{}}});
}

Value jobs_data(const AgendaPlan& agenda, const Moment& moment) {
  std::vector<Value> out;
  for (std::size_t j = 0; j < agenda.plan.jobs.size(); ++j) {
    if (agenda.what.jobs[j].job == 0) continue;
    const Outlook o = outlook_of(agenda, j, moment);
    out.push_back(record({{"job", ref(Thing::job, agenda.what.jobs[j].job)},
                          {"ready_at", opt(o.ready)},
                          {"due_at", opt(agenda.what.problem.jobs[j].due)},
                          {"late_minutes", o.late.count() / 60},
                          {"state", std::string(word_for(o.state))}}));
  }
  return list(std::move(out));
}

Value loads_data(const Loads& loads, const View& view) {
  std::vector<Value> out;
  out.reserve(loads.units.size());
  for (const UnitLoad& u : loads.units) {
    std::vector<Value> weeks;
    weeks.reserve(u.weeks.size());
    for (std::size_t w = 0; w < u.weeks.size(); ++w)
      weeks.push_back(record({{"from", loads.bounds[w]},
                              {"until", loads.bounds[w + 1]},
                              {"open_minutes", u.weeks[w].open.count() / 60},
                              {"booked_minutes", u.weeks[w].fixed.count() / 60},
                              {"planned_minutes", u.weeks[w].planned.count() / 60}}));
    out.push_back(record({{"machine", u.unit.machine == 0 ? Value{} : ref(Thing::machine, u.unit.machine)},
                          {"number", std::int64_t{u.unit.number}},
                          {"person", u.unit.person == 0 ? Value{} : ref(Thing::actor, u.unit.person)},
                          {"name", name_of(u.unit, view)},
                          {"weeks", list(std::move(weeks))}}));
  }
  return list(std::move(out));
}

} // namespace

Value data_of(const AgendaPlan& agenda, const std::vector<AgendaItem>& items, const Latests& latests,
              const Loads& loads, const Value& troubles, const View& view, const Moment& moment) {
  std::vector<Value> rows;
  rows.reserve(items.size());
  for (const AgendaItem& i : items)
    rows.push_back(item_data(i, agenda, latests, moment));
  return record({{"items", list(std::move(rows))},
                 {"jobs", jobs_data(agenda, moment)},
                 {"load", loads_data(loads, view)},
                 {"troubles", troubles},
                 {"proved", agenda.plan.proved},
                 {"planned_at", opt(agenda.planned_at)},
                 {"brought_up_to_date", agenda.brought_up_to_date},
                 {"settled", agenda.settled}});
}

std::vector<Give> gives_of_agenda() {
  return {gives::records("items", "what is planned, begun or booked in that time, by when it begins",
                         {gives::or_null(gives::job),
                          {"stage", Kind::words, "which; empty of a booking for no stage"},
                          {"booking", Kind::count, "that fixes it", Often::or_null},
                          {"machine", Kind::machine, "on which", Often::or_null},
                          {"number", Kind::count, "which of several alike; 0: as many as are wanted"},
                          {"person", Kind::person, "who does it", Often::or_null},
                          {"start", Kind::at, "when it begins"},
                          {"end", Kind::at, "when it is over"},
                          {"fixed", Kind::yes, "whether it is begun or booked, so that it is not moved"},
                          {"begin_by", Kind::at, "the latest that keeps the promised day", Often::or_null},
                          {"spare_minutes", Kind::count, "of open time until then; none: nothing is promised",
                           Often::or_null}}),
          gives::records("jobs", "how each job does by the plan",
                         {gives::job,
                          {"ready", Kind::at, "when it is finished", Often::or_null},
                          {"due", Kind::at, "when it is promised for", Often::or_null},
                          {"late_minutes", Kind::count, "later than promised; 0: in time"},
                          gives::one_of("state", "how it stands",
                                        {"undated", "in_time", "at_risk", "late", "unplaced"})}),
          gives::records("load", "how busy machines and people are",
                         {{"machine", Kind::machine, "which; none of a person", Often::or_null},
                          {"number", Kind::count, "which of several alike"},
                          {"person", Kind::person, "who; none of a machine", Often::or_null},
                          {"name", Kind::words, "what it is called"},
                          gives::records("weeks", "what is left of this week, and the next ones",
                                         {{"from", Kind::at, "its beginning"},
                                          {"until", Kind::at, "its end"},
                                          {"open_minutes", Kind::count, "when it may be used"},
                                          {"booked_minutes", Kind::count, "begun or booked"},
                                          {"planned_minutes", Kind::count, "planned"}})}),
          gives_of_troubles(),
          {"proved", Kind::yes, "whether no plan is less late"},
          {"planned", Kind::at, "when the stored plan was made", Often::or_null},
          {"brought_up_to_date", Kind::yes, "whether the shop has changed since"},
          {"settled", Kind::yes, "whether no better one is being worked on"}};
}

} // namespace nutward::shop
