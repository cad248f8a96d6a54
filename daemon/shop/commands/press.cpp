// Pressed, and looked at again about a day later.
#include "shop/commands/frets.hpp"
#include "shop/commands/press_report.hpp"
#include "shop/touch.hpp"

#include <iterator>

namespace nutward::shop::command_rows {

namespace {

// Passes that follow one another within this time are one pressing, with one recheck, counted from the last
// pass.
constexpr std::chrono::seconds one_pressing{2 * 3600};

std::vector<int> without(const std::vector<int>& from, const std::vector<int>& gone) {
  std::vector<int> out;
  std::set_difference(from.begin(), from.end(), gone.begin(), gone.end(), std::back_inserter(out));
  return out;
}

std::vector<int> with(const std::vector<int>& a, const std::vector<int>& b) {
  std::vector<int> out;
  std::set_union(a.begin(), a.end(), b.begin(), b.end(), std::back_inserter(out));
  return out;
}

std::string words_for(const std::vector<int>& slots) {
  return (slots.size() == 1 ? "Slot " : "Slots ") + ranges(slots);
}

void mark(Tx& tx, const Job& job, const std::vector<int>& slots, FretState state) {
  const auto frets = tx.jobs().frets(job.id);
  for (int slot : slots) {
    Fret f;
    for (const Fret& old : frets) {
      if (old.slot == slot) f = old;
    }
    f.job = job.id;
    f.slot = slot;
    f.state = state;
    tx.put(f);
  }
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
      "{} of {} {} no fret on record. With a yes {} recorded as made, of {} from the stock, and "
      "as pressed.",
      words_for(missing), named(job), missing.size() == 1 ? "has" : "have",
      missing.size() == 1 ? "one is" : "they are", wire_of(view, job.wire).name);
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
    const auto apart = std::chrono::seconds(std::abs((old.pressed - moment.happened).count()));
    if (apart <= one_pressing && !old.told) {
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

std::string why_press_yes(const Args& args, const Moment&, const View& view) {
  const Setup set = setup(view);
  const Job job = job_of(args, view);
  const PassReport report = pass_report(args, job, view, set);
  const std::string beyond = beyond_rating(report, job, set), made = unmade(job, report.slots, view, set);
  return beyond + (beyond.empty() || made.empty() ? "" : " ") + made;
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

void stage_reported(Tx& tx, const Job& job, std::string_view kind, const Moment& moment) {
  int sequence = 1;
  for (const Stage& s : tx.jobs().stages(job.id))
    sequence = std::max(sequence, s.sequence + 1);
  tx.put(Stage{0, job.id, std::string(kind), sequence, {}, moment.happened, moment.now, moment.who.actor});
}

Effect pressed(const Args& args, const Moment& moment, Tx& tx) {
  const Setup set = setup(tx);
  const Job job = job_of(args, tx);
  const PassReport report = pass_report(args, job, tx, set);
  const auto& slots = report.slots;
  const auto load = report.load;
  const std::string made = make(tx, job, never_made(job, slots, tx, set), set);
  mark(tx, job, slots, FretState::pressed);
  touch(tx, job, slots);
  keep(tx, job, report, moment.happened);
  const Recheck r = start_clock(tx, job, slots, moment, set, load);
  const bool whole = all_pressed(job, tx);
  if (whole) stage_reported(tx, job, "press", moment);
  const auto clock = agenda::recheck_clock(r.pressed, set.recheck, moment.calendar, moment.zone);
  Effect out;
  out.answer.text =
      fmt::format("{}: {} {} pressed{}, {}. Look again from {}; it is due {}.", named(job),
                  slots.size() == 1 ? "fret" : "frets", ranges(slots),
                  (load ? " at " + as_said(*load, set) : "") +
                      (report.bar ? " under bar " + report.bar->is.name : ""),
                  moment.zone.human(moment.happened), moment.zone.human(r.from), moment.zone.human(r.due)) +
      made;
  out.answer.reason =
      fmt::format("{}{} {}.",
                  r.slots == slots ? ""
                                   : fmt::format("One pressing with frets {}, counted from the last pass. ",
                                                 ranges(r.slots)),
                  whole ? "All its frets are pressed." : "Not all its frets are pressed yet.",
                  clock.remind > moment.now ? "I remind you " + moment.zone.human(clock.remind) : "Look now");
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

std::vector<Recheck> waiting_of(const Job& job, const View& view) {
  auto all = view.jobs().rechecks(job.id);
  std::erase_if(all, [](const Recheck& r) { return r.state != RecheckState::waiting; });
  return all;
}

std::vector<int> looked_at_of(const Args& args) {
  return with(args.slots("slots"), args.slots("sprang"));
}

std::string why_yes(const Args& args, const Moment& moment, const View& view) {
  const Job job = job_of(args, view);
  for (const Recheck& r : waiting_of(job, view)) {
    const bool looked_at = !args.has("slots") || without(r.slots, looked_at_of(args)) != r.slots;
    if (looked_at && moment.happened < r.from) {
      return fmt::format("It is early: frets {} of {} have rested only {} h of {} since pressing, and may "
                         "still spring back; from {} on it counts.",
                         ranges(r.slots), named(job), (moment.happened - r.pressed).count() / 3600,
                         (r.from - r.pressed).count() / 3600, moment.zone.human(r.from));
    }
  }
  return "";
}

// The frets looked at leave their rechecks, level or sprung back.
void settle(Tx& tx, Recheck r, const std::vector<int>& looked, const std::vector<int>& sprang,
            const Moment& moment) {
  const auto rest = without(r.slots, looked);
  const auto seen = without(r.slots, rest);
  if (seen.empty()) return;
  Recheck done = r;
  done.slots = seen;
  done.done = moment.happened;
  done.state = without(seen, sprang).size() == seen.size() ? RecheckState::level : RecheckState::sprang;
  if (!rest.empty()) {
    done.id = 0;
    r.slots = rest;
    tx.put(r);
  }
  tx.put(done);
}

Effect rechecked(const Args& args, const Moment& moment, Tx& tx) {
  Job job = job_of(args, tx);
  const auto waiting = waiting_of(job, tx);
  std::vector<int> due;
  for (const Recheck& r : waiting)
    due = with(due, r.slots);
  if (due.empty()) {
    throw Problem(Fault::state, fmt::format("{} has no recheck waiting.", named(job)), "job",
                  fmt::format("Report the pressing first: pressed job {}.", job.id));
  }
  const auto sprang = args.slots("sprang");
  const auto looked = args.has("slots") ? looked_at_of(args) : due;
  if (const auto odd = without(with(looked, sprang), due); !odd.empty()) {
    throw Problem(Fault::value,
                  fmt::format("Fret {} of {} is not waiting for a recheck.", ranges(odd), named(job)),
                  "slots", fmt::format("Waiting are frets {}.", ranges(due)));
  }
  for (const Recheck& r : waiting) {
    if (moment.happened < r.pressed && without(r.slots, looked) != r.slots)
      throw Problem(Fault::value,
                    fmt::format("Frets {} of {} were pressed later than that, {}.", ranges(r.slots),
                                named(job), moment.zone.human(r.pressed)),
                    "at", "Check the two times.");
    settle(tx, r, looked, sprang, moment);
  }
  mark(tx, job, without(looked, sprang), FretState::level);
  mark(tx, job, sprang, FretState::sprang);
  const auto rest = without(due, looked);
  if (rest.empty() && sprang.empty()) stage_reported(tx, job, "recheck", moment);
  if (args.has("humidity")) {
    job.humidity_rechecked = args.opt<double>("humidity");
    tx.put(job);
  }
  Effect out;
  out.answer.text = sprang.empty() ? fmt::format("{}: frets {} are still level.", named(job), ranges(looked))
                                   : fmt::format("{}: fret {} sprang back.", named(job), ranges(sprang));
  if (!rest.empty()) out.answer.text += fmt::format(" Frets {} are still to be looked at.", ranges(rest));
  if (!sprang.empty()) {
    out.answer.reason =
        "Find the cause first: with a gap under the crown, glue and clamp it or press it once more, which "
        "starts its own clock; without one do not press, level it with abrasive.";
    out.answer.cautions = {Hazard::press, Hazard::glue, Hazard::metal_dust};
  }
  out.answer.data = record({{"job", ref(Thing::job, job.id)},
                            {"looked", list_of(looked)},
                            {"sprang", list_of(sprang)},
                            {"still_waiting", list_of(rest)}});
  out.answer.about.args = {{"job", ref(Thing::job, job.id)}};
  return out;
}

} // namespace

extern const Command pressed_row;
const Command pressed_row{
    {"pressed",
     "Reports frets as pressed, and starts the clock of their recheck.",
     {takes::job,
      {"slots", Kind::slot, false, true, "which; all where not said"},
      {"load", Kind::load, false, false, "that was come to", {0, 200000}},
      {"bar", Kind::name, false, false, "under which"},
      {"next", Kind::yes, false, false, "the frets of the next pass, as 'press' gives it"},
      takes::at},
     {"pressed {job} [at {load}] [{at}]",
      "pressed [frets|slots] {slots} (of|on|for) {job} [at {load}] [{at}]",
      "pressed [frets|slots] {slots} (of|on|for) {job} [at {load}] [with|under] [the] bar {bar} [{at}]",
      "pressed [frets|slots] {slots} (at|with) {load} [{at}]",
      "pressed [the] next pass [of {job}] [(at|with|to) {load}] {next=yes} [{at}]",
      "[the] next pass [of {job}] is done [(at|with) {load}] {next=yes} [{at}]",
      "[we|i] only (got|came) [up] to {load} [(on|with|for) {job}] {next=yes} [{at}]",
      "[we|i] only (got|came) [up] to {load} (on|with) [frets|slots] {slots} [of {job}] [{at}]",
      "[pressed] (the lot|all of (it|them)) [of {job}] (at|with) {load} [{at}]",
      "{job} (is|was|got) pressed [at {load}] [{at}]",
      "(pressing|press) [of] {job} is (done|finished) [{at}]", "finished pressing {job} [{at}]"},
     {"pressed job 1", "pressed frets 9-14 of job 1 at 1800 lb", "job 1 was pressed",
      "pressed the next pass of job 5 at 1800 lb"},
     Role::bench,
     {gives::job,
      {"slots", Kind::slot, "that were pressed", Often::many},
      {"beyond", Kind::yes, "whether the load was above what press, gauge or bar are rated for"},
      {"next", Kind::slot, "the frets of the next pass, where passes are known", Often::many},
      {"recheck", Kind::count, "its id"},
      {"recheck_from", Kind::at, "when it may be done"},
      {"recheck_due", Kind::at, "when it falls due"},
      {"remind", Kind::at, "when it is reminded of"},
      {"all_pressed", Kind::yes, "whether every fret of the job is"}}},
    &pressed,
    &why_press_yes};

extern const Command rechecked_row;
const Command rechecked_row{
    {"rechecked",
     "Reports the look a day after pressing: still level, or which frets sprang back.",
     {takes::job,
      {"sprang", Kind::slot, false, true, "frets that sprang back; none where not said"},
      {"slots", Kind::slot, false, true, "those looked at; all that wait where not said"},
      {"humidity", Kind::number, false, false, "in the shop, percent", {0, 100}},
      takes::at},
     {"rechecked {job} [all] [is|are] [still] [level|good|fine] [{at}]", "{job} is still level [{at}]",
      "rechecked [fret|frets|slot|slots] {slots} (of|on) {job} [all] [is|are] [still] [level|good|fine] "
      "[{at}]",
      "[fret|frets] {sprang} (of|on) {job} sprang [back] [{at}]",
      "rechecked {job} [fret|frets] {sprang} sprang [back] [{at}]",
      "[the] recheck of {job} is (done|good|fine) [{at}]"},
     {"rechecked job 1", "fret 7 of job 1 sprang back", "job 1 is still level"},
     Role::bench,
     {gives::job,
      {"looked", Kind::slot, "frets that were looked at", Often::many},
      {"sprang", Kind::slot, "those that sprang back", Often::many},
      {"still_waiting", Kind::slot, "those still to recheck", Often::many}}},
    &rechecked,
    &why_yes};

} // namespace nutward::shop::command_rows
