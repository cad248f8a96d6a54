// Machines with what holds of them now, and who has booked what.
#include "shop/bookings.hpp"
#include "shop/days_asked.hpp"
#include "shop/people.hpp"
#include "shop/rows.hpp"
#include "shop/stage_words.hpp"
#include "shop/work.hpp"

namespace nutward::shop::question_rows {

namespace {

constexpr int days_ahead = 14;

std::string state_words(const Machine& m, const Moment& moment, const View& view) {
  const Down now = down(m, moment.now, view);
  std::string out;
  for (const Outage& o : view.machines().outages(moment.now)) {
    if (o.machine != m.id) continue;
    const bool begun = o.from <= moment.now;
    out += fmt::format("{}{}{}{}{}", out.empty() ? "" : "; ",
                       o.number > 0 ? fmt::format("number {} ", o.number) : "",
                       begun ? words_of(o, moment.zone)
                             : fmt::format("out of service from {}{}", moment.zone.human(o.from),
                                           o.to ? " until " + moment.zone.human(*o.to) : ""),
                       o.note.empty() ? "" : ": ", o.note);
  }
  return out.empty() ? "in service" : out;
}

std::string stages_for(const Machine& m, const View& view) {
  std::vector<std::string> out;
  for (const std::string_view word : worked_stages()) {
    const auto needs = machine_for(*agenda::stage_named(word), view);
    if (needs && needs->id == m.id) out.emplace_back(word);
  }
  return fmt::format("{}", fmt::join(out, ", "));
}

// Who is at it, by what was begun.
std::vector<AtWork> at_machine(const Machine& m, const View& view) {
  auto out = at_work(view);
  std::erase_if(out, [&](const AtWork& w) {
    const auto kind = agenda::stage_named(w.stretch.kind);
    const auto its = kind ? machine_for(*kind, view) : std::nullopt;
    return !its || its->id != m.id;
  });
  return out;
}

std::string who_at(const std::vector<AtWork>& all, const View& view) {
  std::vector<std::string> out;
  out.reserve(all.size());
  for (const AtWork& w : all)
    out.push_back(
        fmt::format("{}: {} job {}", name_of(w.stretch.actor, view), doing(w.stretch.kind), w.job.id));
  return out.empty() ? "-" : fmt::format("{}", fmt::join(out, "; "));
}

Answer ask_machines(const Args& args, const Moment& moment, const View& view) {
  Answer out;
  out.table = Table{{"machine", "how many", "state", "at it", "next booked", "for"}, {}};
  std::vector<Value> all;
  std::vector<std::string> down_now;
  const auto booked = view.machines().bookings(moment.now, moment.now + std::chrono::hours(24 * days_ahead));
  for (const Machine& m : view.machines().all()) {
    if (args.has("machine") && m.id != args.id("machine")) continue;
    const auto next =
        std::find_if(booked.begin(), booked.end(), [&](const Booking& b) { return b.machine == m.id; });
    const auto left = left_of(m, down(m, moment.now, view));
    const std::string state = state_words(m, moment, view);
    if (left && *left < m.count) down_now.push_back(fmt::format("{}: {}", m.name, state));
    const auto working = at_machine(m, view);
    out.table->rows.push_back(
        {m.name, m.count == 0 ? "enough" : std::to_string(m.count), state, who_at(working, view),
         next == booked.end()
             ? "-"
             : fmt::format("{}, {}", from_to(next->from, next->to, moment.zone), name_of(next->actor, view)),
         stages_for(m, view)});
    std::vector<Value> jobs;
    jobs.reserve(working.size());
    for (const AtWork& w : working)
      jobs.push_back(ref(Thing::job, w.job.id));
    all.push_back(record({{"machine", ref(Thing::machine, m.id)},
                          {"name", m.name},
                          {"count", static_cast<std::int64_t>(m.count)},
                          {"in_service", left ? Value{static_cast<std::int64_t>(*left)} : Value{}},
                          {"state", state},
                          {"setup_minutes", m.setup_s / 60},
                          {"next_at", next == booked.end() ? Value{} : Value{next->from}},
                          {"jobs", list(std::move(jobs))}}));
  }
  if (args.has("machine") && !all.empty()) {
    const auto& row = out.table->rows.front();
    out.text = fmt::format("{}: {}. At it: {}. Next booked: {}. It is for: {}.", row[0], row[2],
                           row[3] == "-" ? "nobody" : row[3], row[4] == "-" ? "not" : row[4],
                           row[5].empty() ? "nothing" : row[5]);
  } else {
    out.text =
        down_now.empty() ? "All machines are in service." : fmt::format("{}.", fmt::join(down_now, "; "));
  }
  out.text = sentence(out.text);
  out.data = record({{"machines", list(std::move(all))}});
  if (args.has("machine")) out.about.args = {{"machine", ref(Thing::machine, args.id("machine"))}};
  return out;
}

Answer ask_bookings(const Args& args, const Moment& moment, const View& view) {
  const DaysAsked days = days_asked(args, moment, days_ahead, 366);
  const Stretch asked = shop::stretch_of(days, moment);
  const Instant from = std::max(asked.from, moment.now), to = std::max(asked.to, from);
  auto booked = view.machines().bookings(from, to);
  std::erase_if(booked, [&](const Booking& b) {
    return (args.has("machine") && b.machine != args.id("machine")) ||
           (args.has("job") && b.job != args.opt_id("job")) ||
           (args.has("person") && b.actor != args.id("person")) ||
           (args.yes("mine") && b.actor != moment.who.actor);
  });
  Answer out;
  out.text = booked.empty()
                 ? fmt::format("Nothing is booked{}.", days.said ? " " + words_of(days, moment, true) : "")
                 : fmt::format("{}.", words_of(booked.front(), view, moment.zone));
  if (booked.size() > 1)
    out.text += fmt::format(" {} booked in all.", plural(std::ssize(booked), "time is", "times are"));
  if (!booked.empty()) out.table = Table{{"booking", "when", "machine", "who", "job", "note"}, {}};
  std::vector<Value> all;
  for (const Booking& b : booked) {
    const auto m = machine_at(b.machine, view);
    out.table->rows.push_back({std::to_string(b.id), from_to(b.from, b.to, moment.zone), m ? m->name : "-",
                               name_of(b.actor, view), b.job ? std::to_string(*b.job) : "-", b.note});
    all.push_back(record({{"booking", b.id},
                          {"machine", ref(Thing::machine, b.machine)},
                          {"name", m ? m->name : ""},
                          {"from", b.from},
                          {"until", b.to},
                          {"person", ref(Thing::actor, b.actor)},
                          {"job", b.job ? ref(Thing::job, *b.job) : Value{}},
                          {"note", b.note}}));
  }
  out.data = record({{"bookings", list(std::move(all))}});
  if (args.has("machine")) out.about.args = {{"machine", ref(Thing::machine, args.id("machine"))}};
  return out;
}

std::vector<std::string_view> bookings_phrases() {
  static const std::string when =
      " [[on|for|in] ({day}|{day} [in the] {part}|this {part}|tonight {part=evening}|(this|the) week "
      "{week=this}|next week {week=next}|[the] next {days} days)]";
  static const std::vector<std::string> made{
      "[show|list] [the] bookings" + when,
      "[show|list|what are] my bookings {mine=yes}" + when,
      "[show|list] [the] bookings (of|on|for|at) {machine}" + when,
      "who (has|has booked|booked|has reserved) {machine} [booked]" + when,
      "when (is|has) [booked] {machine} [booked|reserved]" + when,
      "[show|list] [the] bookings (of|for|by) {person}" + when,
      "(what|which machine|which machines) (is|are) (booked|reserved)" + when,
      "what (have i|did i) (booked|book|reserved) {mine=yes}" + when,
      "what (has|did) {person} (booked|book|reserved)" + when,
      "is {machine} (booked|reserved|taken)" + when,
      "when do i have {machine} {mine=yes}" + when,
      "is anything (booked|reserved)" + when};
  return {made.begin(), made.end()};
}

} // namespace

extern const Question machines;
const Question machines{
    {"machines",
     "The machines of the shop: how many, whether in service, who is at them, when they are booked next.",
     {{"machine", Kind::machine, false, false, "only this one"}},
     {"(what|which) machines (are there|do we have|have we)", "[show|list] [the] machines",
      "[is] {machine} (in service|down|free|working|in use|out of service)",
      "(who|anyone|is anyone) (is|at) [at|on] {machine} [now]", "how is {machine}",
      "who (has|is using|uses) {machine} now", "who is (using|working at|working on) {machine}",
      "is {machine} (ok|okay|all right|back|out|broken|working again|fixed)",
      "(when|until when) is {machine} (back|down|out of service|out)",
      "which {machine} is (down|free|working|broken|out of service)",
      "(what|which stages|which stage|which work) (needs|need|uses|use) {machine}",
      "what is {machine} (for|used for|needed for)", "what is done (on|at) {machine}",
      "what do we (need|use) {machine} for", "state of [the] {machine}",
      "(which|what) machines are (down|in service|out of service|free)",
      "how many {machine} (are there|do we have|have we)"},
     {"machines", "is the press in service", "which machines are down"},
     Role::look,
     {gives::records(
         "machines", "by when they were added",
         {{"machine", Kind::machine, "its id"},
          {"name", Kind::name, "what it is called"},
          {"count", Kind::count, "how many; 0: as many as are wanted"},
          {"in_service", Kind::count, "how many now; none: as many as are wanted", Often::or_null},
          {"state", Kind::words, "how it stands"},
          {"setup_minutes", Kind::count, "to set it up for another kind of work"},
          {"next", Kind::at, "when it is booked next, within 14 days", Often::or_null},
          {"jobs", Kind::job, "that somebody is at there", Often::many}})}},
    &ask_machines};

extern const Question bookings;
const Question bookings{
    {"bookings",
     "Who has booked which machine when, by time.",
     {{"machine", Kind::machine, false, false, "only of this one"},
      {"day", Kind::day, false, false, "only on that day"},
      takes::part_of_day,
      takes::week,
      {"person", Kind::person, false, false, "only theirs"},
      {"mine", Kind::yes, false, false, "only yours"},
      takes::optional(takes::job),
      {"days", Kind::count, false, false, "how far to look ahead; 14", {1, 366}}},
     bookings_phrases(),
     {"bookings", "my bookings", "who has the press tomorrow", "what is booked on friday"},
     Role::look,
     {gives::records("bookings", "by when they begin",
                     {{"booking", Kind::count, "its id"},
                      {"machine", Kind::machine, "its id"},
                      {"name", Kind::name, "what it is called"},
                      {"from", Kind::at, "from when"},
                      {"until", Kind::at, "until when"},
                      {"person", Kind::person, "who has it"},
                      gives::or_null(gives::job),
                      {"note", Kind::words, "may be empty"}})}},
    &ask_bookings};

} // namespace nutward::shop::question_rows
