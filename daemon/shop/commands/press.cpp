// Pressed; the clock of the recheck begins.
#include "shop/commands/frets.hpp"
#include "shop/commands/press_report.hpp"
#include "shop/spring_back.hpp"
#include "shop/touch.hpp"
#include "shop/work.hpp"

namespace nutward::shop::command_rows {

namespace {

// Passes that follow one another within this time are one pressing, with one recheck, counted from the last
// pass.
constexpr std::chrono::seconds one_pressing{2 * 3600};

std::string words_for(const std::vector<int>& slots) {
  return (slots.size() == 1 ? "Slot " : "Slots ") + ranges(slots);
}

// Of the slots, those without a fret on record.
std::vector<int> never_made(const Job& job, const std::vector<int>& slots, const View& view,
                            const Setup& set) {
  std::vector<int> out;
  for (const SlotNeed& s : open_slots(job, view, set)) {
    if (std::find(slots.begin(), slots.end(), s.slot) != slots.end()) out.push_back(s.slot);
  }
  return out;
}

// What lies pressed was made of something: of the stock, as if its cutting and dressing had been reported. A
// piece that is held for such a slot is likelier, and which it was is not guessed.
std::string make(Tx& tx, const Job& job, const std::vector<int>& slots, const Setup& set) {
  if (slots.empty()) return "";
  for (const Piece& p : tx.tin().held_for(job.id)) {
    const auto slot = std::find_if(slots.begin(), slots.end(), [&](int s) { return held_for(p, s); });
    if (slot == slots.end()) continue;
    throw Problem(
        Fault::state,
        fmt::format("Slot {} of {} has no fret on record, and {} is held for it.", *slot, named(job),
                    named(p, tx, set)),
        "slots",
        fmt::format("Say first: use piece {} in slot {} of job {}; or let go of it.", p.id, *slot, job.id));
  }
  const CutSlots cut = cut_from_stock(tx, job, slots, set);
  dress(tx, job, slots, set);
  return fmt::format(" {} had no fret on record and took {} of {}.", words_for(slots),
                     units::print(cut.wire, units::LengthUnit::m), wire_of(tx, job.wire).name);
}

std::string unmade(const Job& job, const std::vector<int>& slots, const View& view, const Setup& set) {
  const auto missing = never_made(job, slots, view, set);
  if (missing.empty()) return "";
  return fmt::format(
      ("{} of {} {} no fret on record. With a yes {} recorded as made, of {} from the stock, and "
       "as pressed."),
      words_for(missing), named(job), missing.size() == 1 ? "has" : "have",
      missing.size() == 1 ? "one is" : "they are", wire_of(view, job.wire).name);
}

bool one_pressing_with(const Recheck& r, Instant happened) {
  return std::chrono::seconds(std::abs((r.pressed - happened).count())) <= one_pressing && !r.told;
}

// A fret pressed again starts its own clock: it leaves the rechecks that were waiting for it, unless that was
// the same pressing, whose recheck moves to the last pass.
Recheck start_clock(Tx& tx, const Job& job, const std::vector<int>& slots, const Moment& moment,
                    const Setup& set, std::optional<Force> load) {
  Recheck fresh;
  fresh.job = job.id;
  fresh.slots = slots;
  fresh.pressed = moment.happened;
  for (Recheck old : tx.jobs().rechecks(job.id)) {
    if (old.state != RecheckState::waiting) continue;
    if (one_pressing_with(old, moment.happened)) {
      fresh.slots = with(fresh.slots, old.slots);
      fresh.pressed = std::max(fresh.pressed, old.pressed);
      if (fresh.id == 0) {
        fresh.id = old.id;
        continue;
      }
      old.state = RecheckState::superseded; // a pass between two pressings makes them one
      tx.put(old);
      continue;
    }
    if (old.pressed > moment.happened) { // an earlier pressing, reported late: the later clock stands
      fresh.slots = without(fresh.slots, old.slots);
      if (fresh.slots.empty()) return old;
      continue;
    }
    const auto rest = without(old.slots, slots);
    if (rest == old.slots) continue;
    if (rest.empty())
      old.state = RecheckState::superseded;
    else
      old.slots = rest;
    tx.put(old);
  }
  const auto clock = agenda::recheck_clock(fresh.pressed, set.recheck, moment.calendar, moment.zone);
  fresh.from = clock.from;
  fresh.due = clock.due;
  fresh.load = load;
  fresh.id = tx.put(fresh);
  return fresh;
}

// Less than a division, or than a hand does, is no load of a press: a time, a fret or a count was meant.
std::string hardly_a_load(const PassReport& report, const View& view, const Setup& set) {
  constexpr double by_hand = 100; // N
  const Force division = equipment(view, set).division;
  if (!report.load || report.load->n >= std::max(division.n, by_hand)) return "";
  return fmt::format(
      "{} is hardly a load of a press, whose gauge has divisions of {}. A time is said as 15:00.",
      as_said(*report.load, set), as_said(division, set));
}

std::string why_press_yes(const Args& args, const Moment&, const View& view) {
  const Setup set = setup(view);
  const Job job = job_of(args, view);
  const PassReport report = pass_report(args, job, view, set);
  std::string out;
  for (const std::string& why : {hardly_a_load(report, view, set), beyond_rating(report, job, set),
                                 unmade(job, report.slots, view, set)})
    out += (out.empty() || why.empty() ? "" : " ") + why;
  return out;
}

// Of the frets just pressed, those that had been looked at since, or waited for another recheck than `now`.
std::vector<int> pressed_again(const std::vector<int>& slots, const std::vector<Fret>& before,
                               const std::vector<Recheck>& rechecks, const Recheck& now, Instant happened) {
  std::vector<int> out;
  for (const Fret& f : before) {
    if (f.state == FretState::sprang || f.state == FretState::level) out.push_back(f.slot);
  }
  std::sort(out.begin(), out.end());
  for (const Recheck& r : rechecks) {
    if (r.state != RecheckState::waiting || r.id == now.id || one_pressing_with(r, happened)) continue;
    if (r.pressed <= now.pressed) out = with(out, r.slots);
  }
  return without(out, without(out, slots));
}

std::string own_clock(const std::vector<int>& again) {
  if (again.empty()) return "";
  return again.size() == 1
             ? fmt::format(" Fret {} was pressed again and starts its own clock.", again.front())
             : fmt::format(" Frets {} were pressed again and start their own clock.", ranges(again));
}

bool all_pressed(const Job& job, const View& view) {
  const auto frets = view.jobs().frets(job.id);
  return std::all_of(job.slots.begin(), job.slots.end(), [&](int slot) {
    return std::any_of(frets.begin(), frets.end(), [&](const Fret& f) {
      return f.slot == slot &&
             (f.state == FretState::pressed || f.state == FretState::level || f.state == FretState::sprang);
    });
  });
}

Effect pressed(const Args& args, const Moment& moment, Tx& tx) {
  const Setup set = setup(tx);
  const Job job = job_of(args, tx);
  const PassReport report = pass_report(args, job, tx, set);
  const auto& slots = report.slots;
  const auto load = report.load;
  const std::string made = make(tx, job, never_made(job, slots, tx, set), set);
  const auto frets = tx.jobs().frets(job.id);
  const auto rechecks = tx.jobs().rechecks(job.id);
  mark(tx, job, slots, FretState::pressed);
  touch(tx, job, slots);
  keep(tx, job, report, moment.happened);
  const Recheck r = start_clock(tx, job, slots, moment, set, load);
  const auto again = pressed_again(slots, frets, rechecks, r, moment.happened);
  const bool whole = all_pressed(job, tx);
  if (whole) finish_stage(tx, job, "press", {}, moment);
  const auto clock = agenda::window_clock(r.from, r.due, moment.calendar, moment.zone);
  Effect out;
  out.answer.text =
      fmt::format("{}: {} {} pressed{}, {}. Look again from {}; it is due {}.", named(job),
                  slots.size() == 1 ? "fret" : "frets", ranges(slots),
                  (load ? " at " + as_said(*load, set) : "") +
                      (report.bar ? " under bar " + report.bar->is.name : ""),
                  moment.zone.human(moment.happened), moment.zone.human(r.from), moment.zone.human(r.due)) +
      steep_step(report, set) + made;
  out.answer.reason =
      fmt::format("{}{} {}.",
                  r.slots == slots ? ""
                                   : fmt::format("One pressing with frets {}, counted from the last pass. ",
                                                 ranges(r.slots)),
                  whole ? "All its frets are pressed." : "Not all its frets are pressed yet.",
                  clock.remind > moment.now ? "I remind you " + moment.zone.human(clock.remind) : "Look now");
  out.answer.reason += own_clock(again) + waiting_words(job, tx, moment.zone, r.slots);
  const PressState state = press_state(job, tx, set);
  out.answer.reason += words_of(state);
  if (report.above) out.answer.reason += " " + above_limit(report, set);
  if (report.beyond()) out.events.push_back(beyond_event(report, job, moment, set));
  if (load && !report.most)
    out.answer.reason += " What the press is rated for is not known, so the load was held against nothing.";
  out.answer.cautions = {Hazard::press};
  out.answer.data = record({{"job", ref(Thing::job, job.id)},
                            {"slots", list_of(slots)},
                            {"beyond", report.beyond()},
                            {"next", list_of(state.next)},
                            {"again", list_of(again)},
                            {"recheck", r.id},
                            {"recheck_from", r.from},
                            {"recheck_due", r.due},
                            {"remind", clock.remind},
                            {"all_pressed", whole}});
  out.answer.about.args = {{"job", ref(Thing::job, job.id)}};
  if (slots.size() == 1) // "still high on the bass"
    out.answer.about.args.emplace_back("slot", std::int64_t{slots.front()});
  return out;
}

} // namespace

extern const Command pressed_row;
const Command pressed_row{
    {"pressed",
     "Reports frets as pressed, and starts the clock of their recheck.",
     {takes::job_spoken_of,
      {"slots", Kind::slot, false, true, "which; all where not said"},
      {"load", Kind::load, false, false, "that was come to", {0, 200000}},
      {"bar", Kind::name, false, false, "under which"},
      {"next", Kind::yes, false, false, "the frets of the next pass, as 'press' gives it"},
      takes::at},
     {"pressed {job} [at {load}] [{at}]",
      ("pressed [fret|frets|slot|slots] {slots} [again] (of|on|for) {job} [again] [(at|with|to) {load}] "
       "[{at}]"),
      "pressed [frets|slots] {slots} (of|on|for) {job} [at {load}] [with|under] [the] bar {bar} [{at}]",
      ("pressed [fret|frets|slot|slots] {slots} [again] (at|with|to) {load} [(with|under) [the] bar {bar}] "
       "[{at}]"),
      // What was just told of: a pass, or one fret; never the whole job.
      ("pressed (it|them|that|this|these|those) [again] [(at|with|to) {load}] [(with|under) [the] bar {bar}] "
       "[{at}] {slots=it}"),
      "(it|that|they) (is|are|was|were|got) pressed [again] [(at|with|to) {load}] [{at}] {slots=it}",
      "pressed [the] next pass [of {job}] [(at|with|to) {load}] {next=yes} [{at}]",
      "[the] next pass [of {job}] is done [(at|with) {load}] {next=yes} [{at}]",
      "[we|i] only (got|came) [up] to {load} [(on|with|for) {job}] {next=yes} [{at}]",
      "[we|i] only (got|came) [up] to {load} (on|with) [frets|slots] {slots} [of {job}] [{at}]",
      "[pressed] (the lot|all of (it|them)) [of {job}] (at|with) {load} [{at}]",
      "{job} (is|was|got) pressed [at {load}] [{at}]",
      "(pressing|press) [of] {job} is (done|finished) [{at}]", "finished pressing {job} [{at}]"},
     {"pressed frets 9-14 of job 1 at 1800 lb", "pressed the next pass of job 5 at 1800 lb", "pressed job 1",
      "job 1 was pressed"},
     Role::bench,
     {gives::job,
      {"slots", Kind::slot, "that were pressed", Often::many},
      {"beyond", Kind::yes, "whether the load was above what press, gauge or bar are rated for"},
      {"next", Kind::slot, "the frets of the next pass, where passes are known", Often::many},
      {"again", Kind::slot, "pressed again: they start their own clock", Often::many},
      {"recheck", Kind::count, "its id"},
      {"recheck_from", Kind::at, "when it may be done"},
      {"recheck_due", Kind::at, "when it falls due"},
      {"remind", Kind::at, "when it is reminded of"},
      {"all_pressed", Kind::yes, "whether every fret of the job is"}}},
    &pressed,
    &why_press_yes};

} // namespace nutward::shop::command_rows
