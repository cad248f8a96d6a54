// Looked at again about a day after pressing: what stayed down, and what sprang back.
#include "shop/commands/press_report.hpp"
#include "shop/levelling.hpp"
#include "shop/readings.hpp"
#include "shop/spring_back.hpp"
#include "shop/touch.hpp"
#include "shop/work.hpp"

namespace nutward::shop::command_rows {

namespace {

std::vector<Recheck> waiting_of(const Job& job, const View& view) {
  auto all = view.jobs().rechecks(job.id);
  std::erase_if(all, [](const Recheck& r) { return r.state != RecheckState::waiting; });
  return all;
}

// The fret that a straightedge over `from` to `to` says stands high, where it rocks: the one in the middle of
// three. It may also be a neighbour that sank, but at a recheck it is looked for what sprang back.
std::optional<int> rocked_over(const Args& args) {
  if (args.has("from") != args.has("to")) {
    throw Problem(Fault::value, "An edge lies from one fret to another.", args.has("from") ? "to" : "from",
                  "Say both, such as: 6 to 8 rocks.");
  }
  if (!args.has("from")) return std::nullopt;
  const auto from = static_cast<int>(args.get<std::int64_t>("from"));
  const auto to = static_cast<int>(args.get<std::int64_t>("to"));
  if (to == from + 2) return from + 1;
  throw Problem(
      Fault::value,
      fmt::format("That an edge rocks from {} to {} does not say which fret stands high.", from, to), "to",
      "Read over three frets at a time, or say which it rocks on, such as: 9 is high.");
}

// Those that stand high by a straightedge.
std::vector<int> high_in(const Args& args) {
  auto out = args.slots("high");
  if (const auto slot = rocked_over(args)) out = with(out, {*slot});
  return out;
}

std::vector<int> sprang_in(const Args& args) {
  return with(args.slots("sprang"), high_in(args));
}

std::vector<int> looked_at_of(const Args& args) {
  return with(args.slots("slots"), sprang_in(args));
}

// What the straightedge said is a reading like any other: it rocks over each of these frets.
std::size_t file_readings(const Args& args, Tx& tx, const Job& job, Instant when) {
  const auto high = high_in(args);
  if (high.empty()) return 0;
  const level::Lines lines = lines_of(job, tx);
  const Length hand = level_settings(tx).hand;
  const auto of_span = rocked_over(args);
  for (int slot : high) {
    level::Said said;
    said.line = line_of(args);
    said.about = slot;
    said.pivot = slot;
    if (slot == of_span) said.span = level::Span{slot - 1, slot + 1};
    said.felt = level::Felt::rocks;
    said.revision = touches(job, tx);
    level::Meant m = telling_of_reading(args, [&] { return level::meant(said, lines); });
    m.reading.epsilon = hand;
    tx.put(Reading{0, job.id, m.reading, m.line_assumed, m.span_assumed, when});
  }
  return high.size();
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

std::string what_next(const std::vector<int>& looked, const std::vector<int>& sprang,
                      const std::vector<int>& rest, const Setup& set) {
  if (sprang.empty()) return rest.empty() ? "No further recheck is needed." : "They need no further recheck.";
  const auto down = without(looked, sprang);
  return fmt::format(
      "Find the cause first: with a gap under the crown, glue and clamp it or press it once more, which "
      "starts its own clock, with a recheck {} h later; without one do not press, level it with abrasive.{}",
      set.recheck.due_h,
      down.empty() ? ""
                   : fmt::format(" {} {} taken to have stayed down.",
                                 (down.size() == 1 ? "Fret " : "Frets ") + ranges(down),
                                 down.size() == 1 ? "is" : "are"));
}

std::string ask_about(const Job& job, const std::vector<int>& sprang) {
  if (sprang.empty()) return "";
  return fmt::format(" Ask: what do I do about {} of job {}.", sprang.front(), job.id);
}

std::string so_far(const Job& job, const View& view) {
  Sprung all;
  for (const SprangCount& c : view.jobs().sprang(job.wire))
    all.add(c);
  if (all.looked == 0) return "";
  return fmt::format(" Of {}, {} sprang back so far.", wire_of(view, job.wire).name, words_of(all));
}

Effect rechecked(const Args& args, const Moment& moment, Tx& tx) {
  const Setup set = setup(tx);
  Job job = job_of(args, tx);
  const auto waiting = waiting_of(job, tx);
  std::vector<int> due;
  for (const Recheck& r : waiting)
    due = with(due, r.slots);
  if (due.empty()) {
    throw Problem(Fault::state, fmt::format("{} has no recheck waiting.", named(job)), "job",
                  fmt::format("Report the pressing first: pressed job {}.", job.id));
  }
  const auto sprang = sprang_in(args);
  const auto looked = args.has("slots") ? looked_at_of(args) : due;
  if (const auto odd = without(with(looked, sprang), due); !odd.empty()) {
    throw Problem(Fault::value,
                  fmt::format("Fret {} of {} is not waiting for a recheck.", ranges(odd), named(job)),
                  "slots", fmt::format("Waiting are frets {}.", ranges(due)));
  }
  Found found{looked, sprang, {}, moment.happened};
  for (const Recheck& r : waiting) {
    if (moment.happened < r.from) found.early = with(found.early, without(r.slots, without(r.slots, looked)));
    if (moment.happened < r.pressed && without(r.slots, looked) != r.slots)
      throw Problem(Fault::value,
                    fmt::format("Frets {} of {} were pressed later than that, {}.", ranges(r.slots),
                                named(job), moment.zone.human(r.pressed)),
                    "at", "Check the two times.");
    settle(tx, r, looked, sprang, moment);
  }
  keep(tx, job, found, set);
  const std::size_t readings = file_readings(args, tx, job, moment.happened);
  mark(tx, job, without(looked, sprang), FretState::level);
  mark(tx, job, sprang, FretState::sprang);
  const auto rest = without(due, looked);
  if (rest.empty() && sprang.empty()) finish_stage(tx, job, "recheck", {}, moment);
  if (args.has("humidity")) {
    job.humidity_rechecked = args.opt<double>("humidity");
    tx.put(job);
  }
  Effect out;
  out.answer.text = sprang.empty() ? fmt::format("{}: frets {} are still level.", named(job), ranges(looked))
                                   : fmt::format("{}: {} {} sprang back.", named(job),
                                                 sprang.size() == 1 ? "fret" : "frets", ranges(sprang));
  if (!rest.empty()) out.answer.text += fmt::format(" Frets {} are still to be looked at.", ranges(rest));
  out.answer.reason = what_next(looked, sprang, rest, set) + ask_about(job, sprang) +
                      waiting_words(job, tx, moment.zone) + so_far(job, tx);
  if (!sprang.empty()) {
    out.answer.cautions = {Hazard::press, Hazard::glue, Hazard::metal_dust};
  }
  out.answer.data = record({{"job", ref(Thing::job, job.id)},
                            {"looked", list_of(looked)},
                            {"sprang", list_of(sprang)},
                            {"readings", static_cast<std::int64_t>(readings)},
                            {"still_waiting", list_of(rest)}});
  out.answer.about.args = {{"job", ref(Thing::job, job.id)}};
  return out;
}

} // namespace

extern const Command rechecked_row;
const Command rechecked_row{
    {"rechecked",
     "Reports the look a day after pressing: still level, or which frets sprang back.",
     {takes::job_spoken_of,
      {"from", Kind::slot, false, false, "where an edge over three frets rocks: the first of them"},
      {"to", Kind::slot, false, false, "and the last"},
      {"line",
       Kind::one_of,
       false,
       false,
       "along which; the middle where not said",
       {},
       {"bass", "middle", "treble"}},
      {"sprang", Kind::slot, false, true, "frets that sprang back; none where not said"},
      {"high", Kind::slot, false, true,
       "frets that a straightedge rocks on: they sprang back, and each is a reading"},
      {"slots", Kind::slot, false, true, "those looked at; all that wait where not said"},
      {"humidity", Kind::number, false, false, "in the shop, percent", {0, 100}},
      takes::at},
     {"rechecked {job} [all] [is|are] [still] [level|good|fine] [{at}]", "{job} is still level [{at}]",
      ("rechecked [fret|frets|slot|slots] {slots} (of|on) {job} [all] [is|are] [still] [level|good|fine] "
       "[{at}]"),
      "[fret|frets] {sprang} (of|on) {job} sprang [back] [{at}]",
      "[fret|frets] {sprang} sprang [back|up] [again] [(of|on) {job}] [{at}]",
      "rechecked {job} [fret|frets] {sprang} sprang [back] [{at}]",
      "[the] recheck of {job} is (done|good|fine) [{at}]",
      ("rechecked {job} [and] [fret|frets] {high} (is|are|stands|stand) [still] (high|proud) [on [the] "
       "{line} "
       "[side|edge]] [{at}]"),
      ("[the] recheck of {job} [says|shows] [fret|frets] {high} (is|are|stands|stand) [still] (high|proud) "
       "[on [the] "
       "{line} [side|edge]] [{at}]"),
      "rechecked {job} [and] [it] rocks on [fret|frets] {high} [on [the] {line} [side|edge]] [{at}]",
      "rechecked {job} [and] {from} (to|-|through) {to} rocks [on [the] {line} [side|edge]] [{at}]",
      ("[the] recheck of {job} [says|shows] {from} (to|-|through) {to} rocks [on [the] {line} [side|edge]] "
       "[{at}]"),
      "[at] [the] recheck [of {job}] all [is|are] steady [{at}]", "{job} is all steady [{at}]",
      "all steady (on|of) {job} [{at}]", "rechecked {job} all [is|are] [still] (steady|down) [{at}]"},
     {"rechecked job 1", "fret 7 of job 1 sprang back", "job 1 is still level"},
     Role::bench,
     {gives::job,
      {"looked", Kind::slot, "frets that were looked at", Often::many},
      {"sprang", Kind::slot, "those that sprang back", Often::many},
      {"readings", Kind::count, "of a straightedge that were kept with it"},
      {"still_waiting", Kind::slot, "those still to recheck", Often::many}}},
    &rechecked,
    &why_yes};

} // namespace nutward::shop::command_rows
