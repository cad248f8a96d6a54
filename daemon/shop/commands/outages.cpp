// Machines go out of service and come back. What the press is told to be here is what its loads are held
// against (shop/pressing.cpp): there is no second word for it.
#include "shop/bookings.hpp"
#include "shop/days_asked.hpp"
#include "shop/people.hpp"
#include "shop/rows.hpp"

namespace nutward::shop::command_rows {

namespace {

int number_of(const Args& args, const Machine& m) {
  if (!args.has("number")) return 0;
  const int number = static_cast<int>(args.get<std::int64_t>("number"));
  check_number(m, number, "number");
  return m.count == 1 ? 0 : number;
}

Value data_of(const Machine& m, int number, const std::optional<Outage>& o) {
  return record({{"machine", ref(Thing::machine, m.id)},
                 {"name", m.name},
                 {"number", static_cast<std::int64_t>(number)},
                 {"from_at", o ? Value{o->from} : Value{}},
                 {"until_at", o ? opt(o->to) : Value{}}});
}

Outage wished(const Args& args, const Machine& m, const Moment& moment) {
  Outage o;
  o.machine = m.id;
  o.number = number_of(args, m);
  o.from = args.opt<Instant>("begins").value_or(moment.happened);
  o.to = args.opt<Instant>("until");
  if (args.has("hours")) {
    const Day day = args.opt<Day>("day").value_or(moment.zone.local(moment.now).day);
    const Stretch s = shop::stretch_of(day, args.text("hours"), moment.calendar, moment.zone);
    o.from = s.from, o.to = s.to;
  } else if (args.has("day") || args.has("part") || args.has("week")) {
    const Stretch s = shop::stretch_of(days_asked(args, moment, 1), moment);
    o.from = s.from, o.to = s.to;
    if (o.from < moment.now && moment.now < *o.to) o.from = moment.now;
  }
  o.note = args.text("note");
  if (o.to && *o.to <= o.from) {
    throw Problem(Fault::value,
                  fmt::format("It cannot be out of service until {} from {} on.", moment.zone.human(*o.to),
                              moment.zone.human(o.from)),
                  "until_at", "Give an end that comes after its beginning.");
  }
  if (o.to && *o.to <= moment.now) {
    throw Problem(Fault::value, fmt::format("{} is over already.", moment.zone.human(*o.to)), "until_at",
                  "Give an end still to come, or none.");
  }
  return o;
}

// Those that what was said now takes the place of: of the same one, at the same time.
std::vector<Outage> instead_of(const Outage& o, const View& view) {
  std::vector<Outage> out;
  for (const Outage& old : view.machines().outages(o.from)) {
    if (old.machine == o.machine && old.number == o.number && (!o.to || old.from < *o.to)) out.push_back(old);
  }
  return out;
}

Effect machine_down(const Args& args, const Moment& moment, Tx& tx) {
  const Machine m = machine_of(args, tx);
  Outage o = wished(args, m, moment);
  for (const Outage& old : instead_of(o, tx)) {
    if (o.id == 0)
      o.id = old.id, o.from = std::min(o.from, old.from);
    else
      tx.drop({Thing::outage, old.id});
  }
  o.id = tx.put(o);
  Effect out;
  const bool ahead = o.from > moment.now;
  out.answer.text =
      fmt::format("{} {} out of service{}{}{}.", sentence(named(m, o.number)),
                  ahead                           ? "will be"
                  : o.number == 0 && m.count != 1 ? "are"
                                                  : "is",
                  ahead ? " from " + moment.zone.human(o.from) : "",
                  o.to ? " until " + moment.zone.human(*o.to) : "", o.note.empty() ? "" : ": " + o.note);
  const auto hit =
      bookings_without_a_machine(m, o.from, o.to.value_or(o.from + std::chrono::hours(24 * 60)), tx);
  if (!hit.empty()) out.answer.reason = fmt::format("Booked for then: {}.", words_of(hit, tx, moment.zone));
  if (!o.to)
    out.answer.reason += fmt::format("{}Say '{} is back' when it is.", out.answer.reason.empty() ? "" : " ",
                                     o.number > 0 ? named(m, o.number) : "the " + m.name);
  out.answer.data = data_of(m, o.number, o);
  out.answer.about.args = {{"machine", ref(Thing::machine, m.id)}};
  return out;
}

// What of all of a kind is left of service without one of them.
void but_for(const Outage& all, const Machine& m, int number, Tx& tx) {
  for (int n = 1; n <= m.count; ++n) {
    Outage one = all;
    one.id = 0;
    one.number = n;
    if (n != number) tx.put(one);
  }
}

std::string back_words(const Machine& m, int number, bool called_off) {
  const std::string what = sentence(number > 0 ? named(m, number) : named(m));
  const bool several = number == 0 && m.count != 1;
  return fmt::format("{} {}.", what,
                     called_off ? (several ? "stay in service" : "stays in service")
                                : (several ? "are back in service" : "is back in service"));
}

Effect machine_up(const Args& args, const Moment& moment, Tx& tx) {
  const Machine m = machine_of(args, tx);
  const int number = number_of(args, m);
  std::vector<Outage> now, later;
  for (const Outage& o : tx.machines().outages(moment.happened)) {
    if (o.machine != m.id || (number > 0 && o.number > 0 && o.number != number)) continue;
    (o.from <= moment.happened ? now : later).push_back(o);
  }
  if (now.empty() && later.empty()) {
    throw Problem(Fault::state,
                  fmt::format("{} {} in service as it is.", sentence(named(m, number)),
                              number == 0 && m.count != 1 ? "are" : "is"),
                  "machine", "There is nothing to do.");
  }
  for (Outage o : now.empty() ? later : now) {
    if (number > 0 && o.number == 0 && m.count > 1) but_for(o, m, number, tx);
    if (o.from >= moment.happened) {
      tx.drop({Thing::outage, o.id});
      continue;
    }
    o.to = moment.happened;
    tx.put(o);
  }
  Effect out;
  out.answer.text = back_words(m, number, now.empty());
  if (now.empty()) {
    std::vector<std::string> called_off;
    called_off.reserve(later.size());
    for (const Outage& o : later)
      called_off.push_back(moment.zone.human(o.from));
    out.answer.reason =
        fmt::format("It was to be out of service from {}.", fmt::join(called_off, " and from "));
  }
  if (!now.empty() && !later.empty())
    out.answer.reason =
        fmt::format("It is still to be out of service from {}.", moment.zone.human(later.front().from));
  out.answer.data = data_of(m, number, {});
  out.answer.about.args = {{"machine", ref(Thing::machine, m.id)}};
  return out;
}

std::vector<std::string_view> down_phrases() {
  static const std::string what = "{machine} [number] [{number}] ";
  static const std::string dead = "(down|out of service|out of order|broken|dead|not working|away|in "
                                  "repair|being repaired|being serviced|serviced|away for "
                                  "service|away for repair|in for service|kaput|defective|out)";
  static const std::string why = " [because {note}]";
  static const std::string day =
      " [on|for|all] ({day} [all day]|{day} [in the] {part}|this {part}|next week {week=next}|(this|the rest "
      "of this) week {week=this}|{day} "
      "[from] {hours}|[from] {hours} [on] "
      "{day}|[from] {hours}|from {day} (through|up to and including|to and including) {last})";
  static const std::vector<std::string> made{
      what + "[is|are] " + dead + " [from {begins}] [(until|till|to) {until}]" + why,
      what + "(is|are) " + dead + " since {at} [(until|till) {until}]" + why,
      what + "(broke|broke down|has broken|has broken down|does not work|do not work) [{at}]" + why,
      what + "(will be|is going to be) " + dead + " from {begins} [(until|till|to) {until}]" + why,
      what + "(will be|is|are|is going to be) " + dead + day + why,
      what + "(does|do|will) not work" + day + why,
      "(no|there is no|we have no) {machine}" + day + why,
      what + "(will be|is) back {until}",
      "take " + what + "out of service [from {begins}] [(until|till|to) {until}]" + why,
      "take " + what + "out of service" + day + why,
      "(we|i) (cannot|can not) use " + what + "[(until|till) {until}]" + why,
      "(we|i) (cannot|can not) use " + what + day + why};
  return {made.begin(), made.end()};
}

const Param number_param{
    "number", Kind::count, false, false, "which of several alike ones, from 1; all where not said", {1, 99}};
const std::vector<Give> outage_gives{
    {"machine", Kind::machine, "its id"},
    {"name", Kind::name, "what it is called"},
    {"number", Kind::count, "which of several; 0: all"},
    {"from", Kind::at, "when it goes out of service; none: it is in service", Often::or_null},
    {"until", Kind::at, "when it is back; none: nobody knows", Often::or_null}};

} // namespace

extern const Command machine_down_row;
const Command machine_down_row{
    {"machine-down",
     "Takes a machine out of service, at once or for a time.",
     {{"machine", Kind::machine, true, false, "its name"},
      number_param,
      {"begins", Kind::at, false, false, "from when; now where not said"},
      {"until", Kind::at, false, false, "when it is back; until somebody says so where not said"},
      {"day", Kind::day, false, false, "for that day alone, or from it to the last"},
      takes::last_day,
      takes::part_of_day,
      takes::week,
      {"hours", Kind::spans, false, false, "for that time of the day, such as 14:00-16:00"},
      takes::note,
      takes::at},
     down_phrases(),
     {"the press is down until thursday noon", "sander 1 is out of service because the belt tore",
      "take the press out of service", "the press is down tomorrow from 14:00 to 16:00"},
     Role::bench,
     outage_gives},
    &machine_down};

extern const Command machine_up_row;
const Command machine_up_row{
    {"machine-up",
     "Says that a machine is back in service, or stays in it.",
     {{"machine", Kind::machine, true, false, "its name"}, number_param, takes::at},
     {("{machine} [number] [{number}] (is|are) (back|up|in service|working|running|repaired|fixed|all "
       "right|in order) "
       "[again] [{at}]"),
      "{machine} [number] [{number}] (works|work|runs|run) again [{at}]",
      "(put|take) {machine} [number] [{number}] back [in|into] service",
      "(we|i) can use {machine} [number] [{number}] again",
      "{machine} [number] [{number}] (will stay|stays|stay|will not be out of|is not out of) [in] service"},
     {"the press is back", "sander 1 is back", "the press is in service"},
     Role::bench,
     outage_gives},
    &machine_up};

} // namespace nutward::shop::command_rows
