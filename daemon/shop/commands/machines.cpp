// Machines: what there is, what is out of service, and which stage needs which.
#include "shop/machines.hpp"
#include "shop/people.hpp"
#include "shop/rows.hpp"
#include "shop/stage_words.hpp"
#include "shop/work.hpp"

namespace nutward::shop::command_rows {

namespace {

std::string how_many(const Machine& m) {
  return m.count == 0 ? "as many " + plural_of(m.name) + " as are wanted"
                      : plural(m.count, m.name, plural_of(m.name));
}

std::string set_up(const Machine& m) {
  return m.setup_s == 0 ? ""
                        : fmt::format(", {} to set up, shared by jobs in a row",
                                      minutes_words(std::chrono::seconds{m.setup_s}));
}

Effect about(const Machine& m, std::string text) {
  Effect out;
  out.answer.text = std::move(text);
  out.answer.data = record({{"machine", ref(Thing::machine, m.id)},
                            {"name", m.name},
                            {"count", static_cast<std::int64_t>(m.count)},
                            {"setup_minutes", m.setup_s / 60}});
  out.answer.about.args = {{"machine", ref(Thing::machine, m.id)}};
  return out;
}

void take_counts(Machine& m, const Args& args) {
  if (args.has("count")) m.count = static_cast<int>(args.get<std::int64_t>("count"));
  if (args.has("setup_minutes")) m.setup_s = args.get<std::int64_t>("setup_minutes") * 60;
}

std::string fresh_name(const Args& args, const View& view, std::int64_t whose) {
  std::string name = check_name(args.text("name"), "name");
  const auto other = machine_called(name, view);
  if (!other || other->id == whose) return name;
  throw Problem(Fault::state, fmt::format("There is a machine called {} already.", other->name), "name",
                fmt::format("Take another name, or say how many: we have 2 {}.", plural_of(other->name)));
}

Effect define(const Args& args, const Moment&, Tx& tx) {
  Machine m;
  m.name = fresh_name(args, tx, 0);
  take_counts(m, args);
  m.id = tx.put(m);
  Effect out = about(m, fmt::format("The shop has {}{}.", how_many(m), set_up(m)));
  out.answer.reason =
      fmt::format("No stage needs it yet: say, for instance, polishing needs the {}.", m.name);
  return out;
}

// Fewer than are booked at a time, or a number that is out of service, would not go together.
Effect change(const Args& args, const Moment&, Tx& tx) {
  const Machine was = machine_of(args, tx);
  Machine m = was;
  if (args.has("name")) m.name = fresh_name(args, tx, m.id);
  take_counts(m, args);
  if (m.name == was.name && m.count == was.count && m.setup_s == was.setup_s) {
    throw Problem(Fault::state,
                  fmt::format("That changes nothing: the shop has {}{}.", how_many(m), set_up(m)), "machine",
                  "Say another count, name or set-up.");
  }
  tx.put(m);
  Effect out = about(m, fmt::format("The shop has {}{} now.", how_many(m), set_up(m)));
  out.answer.reason = fmt::format("Until now it was: {}{}.", how_many(was), set_up(was));
  return out;
}

std::vector<std::string> stages_that_need(const Machine& m, const View& view) {
  std::vector<std::string> out;
  for (const std::string_view word : worked_stages()) {
    const auto needs = machine_for(*agenda::stage_named(word), view);
    if (needs && needs->id == m.id) out.emplace_back(doing(word));
  }
  return out;
}

Effect drop(const Args& args, const Moment& moment, Tx& tx) {
  const Machine m = machine_of(args, tx);
  if (const auto stages = stages_that_need(m, tx); !stages.empty()) {
    throw Problem(Fault::state, fmt::format("The {} is needed for {}.", m.name, fmt::join(stages, ", ")),
                  "machine",
                  fmt::format("Say first what does it instead: {} needs the bench.", stages.front()));
  }
  for (const Booking& b : tx.machines().bookings(moment.now, Instant{253'402'300'799})) {
    if (b.machine != m.id) continue;
    throw Problem(
        Fault::state,
        fmt::format("{} has the {} on {}.", name_of(b.actor, tx), m.name, from_to(b.from, b.to, moment.zone)),
        "machine", fmt::format("Cancel that first: cancel booking {}.", b.id));
  }
  tx.drop({Thing::machine, m.id});
  return about(m, fmt::format("The shop has no {} any more.", m.name));
}

Effect stage_machine(const Args& args, const Moment&, Tx& tx) {
  const std::string word = args.text("stage");
  const agenda::StageKind kind = *agenda::stage_named(word);
  const auto was = machine_for(kind, tx);
  StageRule rule{0, word, {}, {}};
  for (const StageRule& r : tx.machines().rules()) {
    if (r.stage == word) rule = r;
  }
  rule.machine.reset();
  if (args.has("machine")) rule.machine = machine_of(args, tx).id;
  tx.put(rule);
  const auto now = machine_for(kind, tx);
  if (!now) {
    throw Problem(Fault::state,
                  fmt::format("The machine that {} usually needs is not in the shop any more.", doing(word)),
                  "machine", "Say another one.");
  }
  Effect out = about(*now, fmt::format("{} needs the {} now{}.", doing(word), now->name,
                                       was && was->id != now->id ? ", no longer the " + was->name : ""));
  if (now->count == 0)
    out.answer.reason =
        fmt::format("There are as many {} as are wanted, so nobody waits for one.", plural_of(now->name));
  return out;
}

Effect stage_minutes(const Args& args, const Moment&, Tx& tx) {
  const std::string word = args.text("stage");
  const agenda::StageKind kind = *agenda::stage_named(word);
  const Duration was = duration_of(kind, tx);
  StageRule rule{0, word, {}, {}};
  for (const StageRule& r : tx.machines().rules()) {
    if (r.stage == word) rule = r;
  }
  rule.minutes.reset();
  if (args.has("minutes")) rule.minutes = static_cast<int>(args.get<std::int64_t>("minutes"));
  tx.put(rule);
  const Duration now = duration_of(kind, tx);
  const bool per_fret = agenda::row(kind).per_fret;
  Effect out;
  out.answer.text = fmt::format(
      "{} takes {} min{} now, {}; it was {} min.", doing(word), now.minutes, per_fret ? " for 22 frets" : "",
      now.from == Duration::From::set      ? "as said"
      : now.from == Duration::From::learnt ? fmt::format("the median of {} reports", now.reports)
                                           : "the usual time",
      was.minutes);
  if (now.from == Duration::From::set && now.reports > 0)
    out.answer.reason = fmt::format(
        "What was reported counts no more until you say: {} takes what was reported.", doing(word));
  out.answer.data = record({{"stage", word},
                            {"minutes", static_cast<std::int64_t>(now.minutes)},
                            {"reports", static_cast<std::int64_t>(now.reports)}});
  return out;
}

const Param machine_param{"machine", Kind::machine, true, false, "its name"};
const Param count_param{"count", Kind::count, false, false, "how many alike ones; 0: as many as are wanted",
                        {0, 99}};
const Param setup_param{
    "setup_minutes", Kind::count, false, false, "to set it up for another kind of work; none where not said",
    {0, 600}};
const std::vector<Give> machine_gives{
    {"machine", Kind::machine, "its id"},
    {"name", Kind::name, "what it is called"},
    {"count", Kind::count, "how many; 0: as many as are wanted"},
    {"setup_minutes", Kind::count, "to set it up for another kind of work"}};

Param stage_param() {
  return {"stage", Kind::one_of, true, false, "which stage", {}, worked_stages()};
}

std::vector<std::string_view> needs_phrases() {
  static const std::vector<std::string> made{
      stage_pattern(SaidAs::doing) +
          " [the] [frets|board|ends] (needs|takes|is done (at|on|with|in)) {machine} [now]",
      std::string("{stage} (needs|is done (at|on|with|in)) {machine} [now]"),
      stage_pattern(SaidAs::doing) +
          " [the] [frets|board|ends] needs (what it usually needs|its usual machine)"};
  return {made.begin(), made.end()};
}

std::vector<std::string_view> minutes_phrases() {
  static const std::string time = "({minutes} (minutes|min)|an hour {minutes=60}|half an hour {minutes=30}|a "
                                  "quarter of an hour {minutes=15}|an hour and a half "
                                  "{minutes=90}|1 hour {minutes=60}|2 hours {minutes=120}) [for 22 frets]";
  static const std::vector<std::string> made{
      stage_pattern(SaidAs::doing) + " [the] [22] [frets|board|ends] takes [us] " + time,
      std::string("{stage} takes [us] ") + time,
      stage_pattern(SaidAs::doing) +
          " [the] [frets|board|ends] takes (what|as long as) [was|is|has been] reported",
      std::string("{stage} takes (what|as long as) [was|is|has been] reported")};
  return {made.begin(), made.end()};
}

} // namespace

extern const Command define_machine_row;
const Command define_machine_row{
    {"define-machine",
     "Adds a kind of machine, or of any place where only so many can work at once.",
     {{"name", Kind::name, true, false, "what to call one of them"}, count_param, setup_param},
     {"define [a] [new] machine [called] {name}", "new machine {name}",
      "(we|i) [now] have a [new] machine called {name}", "add [a] machine [called] {name}"},
     {"define machine buffer, count 2", "add a machine called buffer"},
     Role::lead,
     machine_gives},
    &define};

extern const Command change_machine_row;
const Command change_machine_row{
    {"change-machine",
     "Says how many of a machine there are, how long it takes to set up, or what it is called.",
     {machine_param, count_param, setup_param, {"name", Kind::name, false, false, "its new name"}},
     {"(we|i) [now] have [got] {count} {machine}", "there are {count} {machine} [now]",
      "there is {count} {machine}", "there are enough {count=0} {machine}",
      "setting up {machine} takes {setup_minutes} (minutes|min)",
      "[the] (set-up|setup|setting up) (of|for) {machine} (is|takes) {setup_minutes} (minutes|min)",
      "{machine} (takes|needs) {setup_minutes} (minutes|min) to set up",
      "{machine} needs no (set-up|setup|setting up) {setup_minutes=0}",
      "(rename|call) {machine} [to] {name}"},
     {"we have three sanders", "setting up the sander takes 10 minutes"},
     Role::lead,
     machine_gives},
    &change};

extern const Command drop_machine_row;
const Command drop_machine_row{{"drop-machine",
                                "Takes a kind of machine away.",
                                {machine_param},
                                {"drop [the] machine {machine}", "(we|i) [do] no longer have {machine}",
                                 "(we|i) have no {machine} any more", "remove [the] machine {machine}"},
                                {"drop machine buffer", "we no longer have the buffer"},
                                Role::lead,
                                machine_gives},
                               &drop};

extern const Command stage_machine_row;
const Command stage_machine_row{
    {"stage-machine",
     "Says which machine a stage needs.",
     {stage_param(),
      {"machine", Kind::machine, false, false, "its name; what the stage usually needs where not said"}},
     needs_phrases(),
     {"polishing needs the sander", "true is done at the bench"},
     Role::lead,
     machine_gives},
    &stage_machine};

extern const Command stage_minutes_row;
const Command stage_minutes_row{
    {"stage-minutes",
     "Says how long a stage takes for 22 frets, or that it takes what was reported.",
     {stage_param(),
      {"minutes",
       Kind::count,
       false,
       false,
       "of open time; what was reported, or is usual, where not said",
       {1, 1440}}},
     minutes_phrases(),
     {"seating takes 25 minutes", "seat takes what was reported"},
     Role::lead,
     {{"stage", Kind::words, "which"},
      {"minutes", Kind::count, "for 22 frets; of a stage of the board, as it is"},
      {"reports", Kind::count, "that there are of it, at most 9"}}},
    &stage_minutes};

} // namespace nutward::shop::command_rows
