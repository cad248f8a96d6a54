// Stages reported as done. Cutting takes its wire from the stock, dressing what it grinds off.
#include "shop/commands/frets.hpp"
#include "shop/cut_list.hpp"
#include "shop/people.hpp"
#include "shop/stage_words.hpp"
#include "shop/touch.hpp"
#include "shop/touched_frets.hpp"
#include "shop/work.hpp"

namespace nutward::shop::command_rows {

namespace {

std::vector<std::string_view> stage_words() {
  std::vector<std::string_view> out;
  for (const agenda::StageRow& row : agenda::stage_table()) {
    if (row.minutes > 0 && row.kind != agenda::StageKind::press && row.kind != agenda::StageKind::recheck)
      out.push_back(row.word);
  }
  out.emplace_back("done");
  return out;
}

std::vector<int> sorted(std::vector<int> slots) {
  std::sort(slots.begin(), slots.end());
  return slots;
}

bool among(const std::vector<int>& slots, int slot) {
  return std::find(slots.begin(), slots.end(), slot) != slots.end();
}

} // namespace

std::vector<Hazard> hazards_for(std::string_view stage) {
  if (stage == "press") return {Hazard::press};
  if (stage == "cut" || stage == "nip") return {Hazard::nipping};
  if (stage == "dress") return {Hazard::sanding, Hazard::hot_ends};
  if (stage == "true") return {Hazard::sanding, Hazard::metal_dust};
  if (stage == "seat") return {Hazard::hammering};
  if (stage == "pull") return {Hazard::iron};
  if (stage == "file" || stage == "level" || stage == "crown") return {Hazard::metal_dust};
  return {};
}

CutSlots cut_from_stock(Tx& tx, const Job& job, const std::vector<int>& wanted, const Setup& set) {
  const auto held = tx.tin().held_for(job.id);
  CutSlots out;
  auto open = open_slots(job, tx, set);
  std::erase_if(open, [&](const SlotNeed& s) {
    return !among(wanted, s.slot) ||
           std::any_of(held.begin(), held.end(), [&](const Piece& p) { return held_for(p, s.slot); });
  });
  for (const SlotNeed& s : open) {
    out.slots.push_back(s.slot);
    out.wire += s.need.cut + set.fit.nip_loss;
  }
  const Wire wire = wire_of(tx, job.wire);
  const Length on_hand = tx.wires().on_hand(wire.id);
  using units::LengthUnit;
  if (out.wire > on_hand) {
    throw Problem(Fault::state,
                  fmt::format("Cutting {} takes {} of {}, and {} is on hand.",
                              plural(static_cast<std::int64_t>(out.slots.size()), "fret"),
                              units::print(out.wire, LengthUnit::m), wire.name,
                              units::print(on_hand, LengthUnit::m)),
                  "job", "Receive the wire first.");
  }
  for (const SlotNeed& s : open) {
    auto from_stock = [&](Place to, Length length) {
      tx.move({MovementKind::cut, wire.id, {}, {}, job.id, s.slot, Place::stock, to, length, 0, ""});
    };
    from_stock(Place::board, s.need.cut);
    from_stock(Place::kerf, set.fit.nip_loss);
    put_fret(tx, job, s.slot, FretState::made, s.need.cut, {});
  }
  return out;
}

void dress(Tx& tx, const Job& job, const std::vector<int>& wanted, const Setup& set) {
  for (Fret f : tx.jobs().frets(job.id)) {
    if (!among(wanted, f.slot)) continue;
    const board::Need need = need_of(job, f.slot, set);
    if (f.state != FretState::made || f.piece || f.length != need.cut || need.cut == need.target) continue;
    tx.move({MovementKind::scrapped,
             job.wire,
             {},
             {},
             job.id,
             f.slot,
             Place::board,
             Place::scrap,
             need.cut - need.target,
             0,
             "dressing"});
    f.length = need.target;
    tx.put(f);
  }
}

namespace {

// Wire that others have set aside is not locked away: who took of it hears so.
std::string taken_from_others(const Job& job, const View& view, const Setup& set) {
  const Length left = view.wires().on_hand(job.wire), aside = set_aside(job.wire, view, set);
  if (aside <= left) return "";
  using units::LengthUnit;
  return fmt::format(" {} of it is left, less than the {} that is set aside for other jobs.",
                     units::print(left, LengthUnit::m), units::print(aside, LengthUnit::m));
}

// " Slots 1-3 are still open, for the pieces …: report each, as in: used piece 4 in slot 1 of job 8."
std::string still_open(const Tx& tx, const Job& job, const Setup& set) {
  std::vector<int> open;
  for (const SlotNeed& s : open_slots(job, tx, set))
    open.push_back(s.slot);
  if (open.empty()) return "";
  std::string out =
      open.size() == 1
          ? fmt::format(" Slot {} is still open, for the piece that is held for it: report that",
                        open.front())
          : fmt::format(" Slots {} are still open, for the pieces that are held for them: report each",
                        ranges(open));
  for (const Piece& p : tx.tin().held_for(job.id)) {
    if (!held_for(p, open.front())) continue;
    const auto slots = held_slots(p);
    out += slots.size() == 1
               ? fmt::format(", as in: used piece {} in slot {} of job {}", p.id, open.front(), job.id)
               : fmt::format(", as in: cut slots {} of job {} from piece {}", ranges(sorted(slots)), job.id,
                             p.id);
    break;
  }
  return out + ".";
}

// Slots that the cut plan serves from pieces of the tin that nobody holds for them: "slot 4 (piece 32)".
std::vector<std::pair<int, std::string>> planned_pieces(const View& view, const Job& job, const Setup& set) {
  std::vector<std::pair<int, std::string>> out;
  const auto held = view.tin().held_for(job.id);
  for (const ListedSource& s : cut_list(wire_of(view, job.wire), job, view, set).sources) {
    if (s.from != cutting::From::piece) continue;
    for (const ListedFret& f : s.frets) {
      const bool kept =
          std::any_of(held.begin(), held.end(), [&](const Piece& p) { return held_for(p, f.slot); });
      if (!f.other && !kept) out.emplace_back(f.slot, fmt::format("slot {} (piece {})", f.slot, s.id));
    }
  }
  return out;
}

// Said where new wire was charged for what the plan had a piece for: the tin may have been meant.
std::string tin_meant(const std::vector<std::pair<int, std::string>>& planned, const CutSlots& done,
                      const Job& job) {
  std::vector<std::string> said;
  for (const auto& [slot, words] : planned)
    if (among(done.slots, slot)) said.push_back(words);
  if (said.empty()) return "";
  return fmt::format(
      "The cut plan had pieces of the tin for {}. If those were cut: undo, say 'set aside everything "
      "for job {}' first, and report them apart.",
      fmt::join(said, ", "), job.id);
}

std::string cut(Tx& tx, const Job& job, const Setup& set, std::string& reason) {
  const auto planned = planned_pieces(tx, job, set);
  const CutSlots done = cut_from_stock(tx, job, job.slots, set);
  reason = tin_meant(planned, done, job);
  const std::string open = still_open(tx, job, set);
  if (done.slots.empty()) return open.empty() ? " No slot was open." : " No wire was cut." + open;
  return fmt::format(" {} {} took {} of {}.{}{}", done.slots.size() == 1 ? "Slot" : "Slots",
                     ranges(done.slots), units::print(done.wire, units::LengthUnit::m),
                     wire_of(tx, job.wire).name, taken_from_others(job, tx, set), open);
}

void seat(Tx& tx, const Job& job) {
  std::vector<int> seated;
  for (Fret f : tx.jobs().frets(job.id)) {
    if (f.state != FretState::made) continue;
    f.state = FretState::seated;
    tx.put(f);
    seated.push_back(f.slot);
  }
  touch(tx, job, seated);
}

// What a job that is called done has not been reported to have: "slots 1-4 have no fret", ….
std::vector<std::string> missing_of(const Job& job, const View& view, const Setup& set) {
  std::vector<std::string> out;
  std::vector<int> open, sprang;
  for (const SlotNeed& s : open_slots(job, view, set))
    open.push_back(s.slot);
  for (const Fret& f : view.jobs().frets(job.id)) {
    if (f.state == FretState::sprang) sprang.push_back(f.slot);
  }
  if (!open.empty())
    out.push_back(fmt::format("{} {} no fret", open.size() == 1 ? "slot" : "slots",
                              ranges(open) + (open.size() == 1 ? " has" : " have")));
  const auto stages = stages_of(job, view, set);
  const bool to_press = std::any_of(stages.begin(), stages.end(), [](const agenda::Stage& s) {
    return s.kind == agenda::StageKind::press;
  });
  const bool pressed = is_finished(job, "press", view);
  const auto rechecks = view.jobs().rechecks(job.id);
  const bool waiting = std::any_of(rechecks.begin(), rechecks.end(),
                                   [](const Recheck& r) { return r.state == RecheckState::waiting; });
  if (to_press && !pressed) out.emplace_back("it was not reported as pressed whole");
  if (waiting)
    out.emplace_back("it still has a recheck to do");
  else if (to_press && rechecks.empty())
    out.emplace_back("nobody has rechecked it");
  if (!sprang.empty())
    out.push_back(fmt::format("fret {} sprang back and was not pressed again", ranges(sprang)));
  return out;
}

// Where no job is said: the one that the speaker is at with this stage, else anybody, else the only one on
// which it comes next. Throws Problem{ambiguous} with those that may be meant.
Job job_finished(const Args& args, const Moment& moment, const View& view) {
  if (args.has("job")) return job_of(args, view);
  const std::string stage = args.text("stage");
  std::vector<Job> mine, others, next;
  for (const AtWork& w : at_work(view))
    if (w.stretch.kind == stage) (w.stretch.actor == moment.who.actor ? mine : others).push_back(w.job);
  for (const Job& job : view.jobs().open())
    if (next_stage(job, view) == stage) next.push_back(job);
  const auto& meant = !mine.empty() ? mine : !others.empty() ? others : next;
  if (meant.size() == 1) return meant.front();
  Problem problem(Fault::ambiguous, "Which job?", "job", "Say its number, its owner or its instrument.");
  for (const Job& job : meant.empty() ? view.jobs().open() : meant) {
    if (problem.choices.size() == 9) break;
    problem.choices.push_back({named(job),
                               {"finished", {{"job", ref(Thing::job, job.id)}, {"stage", stage}}},
                               {seen({Thing::job, job.id}, view)}});
  }
  throw Problem(std::move(problem));
}

std::string why_yes(const Args& args, const Moment& moment, const View& view) {
  if (args.text("stage") != "done") return "";
  const Job job = job_finished(args, moment, view);
  const auto missing = missing_of(job, view, setup(view));
  return missing.empty()
             ? ""
             : fmt::format("{} is not done by what was reported: {}.", named(job), fmt::join(missing, "; "));
}

Effect finished(const Args& args, const Moment& moment, Tx& tx) {
  const Setup set = setup(tx);
  Job job = job_finished(args, moment, tx);
  const std::string word = args.text("stage");
  Stage stage = finish_stage(tx, job, word, args.opt<Instant>("started"), moment);
  if (args.has("person")) {
    stage.actor = person_of(args, tx).id;
    tx.put(stage);
  }
  Effect out;
  std::string more;
  if (word == "cut") more = cut(tx, job, set, out.answer.reason);
  if (word == "dress") dress(tx, job, job.slots, set);
  if (word == "seat") seat(tx, job);
  if (word == "level") levelled_down(tx, job, job.slots);
  if (word == "level" || word == "crown") touch(tx, job, job.slots);
  if (word == "done") {
    job.state = JobState::done;
    job.set_aside.clear();
    tx.put(job);
    for (Piece p : tx.tin().held_for(job.id)) {
      unhold(p);
      tx.put(p);
    }
  }
  const auto kind = agenda::stage_named(word);
  const std::string took =
      stage.open_s ? fmt::format(", after {} of work", minutes_words(std::chrono::seconds{*stage.open_s}))
                   : "";
  out.answer.text = fmt::format("{}: {} is done, {}{}.{}", named(job),
                                word == "done" ? "the job"
                                : kind         ? std::string(agenda::row(*kind).what)
                                               : word,
                                moment.zone.human(moment.happened), took, more);
  out.answer.cautions = hazards_for(word);
  out.answer.data =
      record({{"job", ref(Thing::job, job.id)}, {"stage", word}, {"finished", moment.happened}});
  out.answer.about.args = {{"job", ref(Thing::job, job.id)}};
  return out;
}

std::vector<std::string_view> finished_phrases() {
  static const std::vector<std::string> made{
      "finished " + stage_pattern(SaidAs::doing, {"press", "recheck"}) +
          " [the] [frets|ends|board|tangs|wire|crowns] [of|on|for] {job} [{at}]",
      "[i|we] [am|are|have] (done|finished) [with] " + stage_pattern(SaidAs::doing, {"press", "recheck"}) +
          " [the] [frets|ends|board|tangs|wire|crowns] [of|on|for] {job} [{at}]",
      "[i|we] [am|are|have] (done|finished) [with] " + stage_pattern(SaidAs::doing, {"press", "recheck"}) +
          " [{at}]",
      stage_pattern(SaidAs::doing, {"press", "recheck"}) + " [is] (done|finished) [{at}]",
      "{person} [has|is] (done|finished) [with] " + stage_pattern(SaidAs::doing, {"press", "recheck"}) +
          " [the] [frets|ends|board|tangs|wire|crowns] [of|on|for] {job} [{at}]",
      ("{person} has (pulled {stage=pull}|trued {stage=true}|bent {stage=bend}|dressed {stage=dress}|nipped "
       "{stage=nip}|seated {stage=seat}|filed {stage=file}|crowned {stage=crown}|polished {stage=polish}) "
       "[the] "
       "[frets|ends|board|tangs|wire|crowns] [of|on|for] {job} [{at}]"),
      stage_pattern(SaidAs::doing, {"press", "recheck"}) +
          " [is] (done|finished) (for|of|on|with) {job} [{at}]",
      ("[i|we] [have] (crowned {stage=crown}|polished {stage=polish}|trued {stage=true}) [all] [the] [whole] "
       "[frets|board|crowns] (of|on|for) {job} [{at}]"),
      ("{job} is (pulled {stage=pull}|trued {stage=true}|bent {stage=bend}|dressed {stage=dress}|nipped "
       "{stage=nip}|seated {stage=seat}|filed {stage=file}|crowned {stage=crown}|polished {stage=polish}) "
       "[{at}]")};
  std::vector<std::string_view> out{
      "finished {stage} (for|of|on|with) {job} [{at}]",
      "[the] {stage} [is|are] (done|finished) (for|of|on|with) {job} [{at}]",
      "{job} [the] {stage} is (done|finished)",
      "{job} is {stage}",
      "done with {stage} (for|of|on) {job}",
      "cut {stage=cut} [all] [the] frets (for|of|on) {job} [{at}]",
      "(i|we) [have] cut {stage=cut} (all|all [of] the frets) (for|of|on) {job} [{at}]",
      "cut {stage=cut} all of {job} [{at}]",
      "all [of] [the] [frets of] {job} (is|are|has been|have been) cut {stage=cut} [{at}]",
      "[the] frets of {job} are [all] cut {stage=cut} [{at}]",
      "{job} is all cut {stage=cut}",
      "[the] cutting (of|on|for) {job} is (done|finished) {stage=cut} [{at}]",
      "seated {stage=seat} [all] [the] frets (for|of|on|in) {job} [{at}]"};
  out.insert(out.end(), made.begin(), made.end());
  return out;
}

} // namespace

extern const Command finished_row;
const Command finished_row{
    {"finished",
     "Reports a stage of a job as done; 'done' closes the job.",
     {takes::optional(takes::job),
      {"stage", Kind::one_of, true, false, "which stage", {}, stage_words()},
      {"started", Kind::at, false, false, "when it began"},
      {"person", Kind::person, false, false, "who did it; you where not said"},
      takes::at},
     finished_phrases(),
     {"finished cut for job 1", "seat is done on job 1", "cut the frets of job 1", "job 1 is done"},
     Role::bench,
     {gives::job, {"stage", Kind::words, "which"}, {"finished", Kind::at, "when it was"}}},
    &finished,
    &why_yes};

} // namespace nutward::shop::command_rows
