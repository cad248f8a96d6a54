// Frets cut from new wire as it goes: the slots that one stick of the cut list serves, say.
#include "shop/commands/frets.hpp"

namespace nutward::shop::command_rows {

namespace {

std::vector<int> slots_in(const Args& args, const Job& job) {
  std::vector<int> slots = args.slots("slots");
  std::sort(slots.begin(), slots.end());
  slots.erase(std::unique(slots.begin(), slots.end()), slots.end());
  for (const int slot : slots) {
    if (std::find(job.slots.begin(), job.slots.end(), slot) == job.slots.end())
      throw Problem(Fault::value, fmt::format("{} has no slot {}.", named(job), slot), "slots",
                    fmt::format("It has slots {}.", ranges(job.slots)));
  }
  return slots;
}

std::string slots_words(const std::vector<int>& slots) {
  return fmt::format("{} {}", slots.size() == 1 ? "slot" : "slots", ranges(slots));
}

// "stick 3 of lot 2", "a coil", "new wire"
std::string source_words(const Args& args) {
  if (args.has("stick")) {
    const std::string stick = fmt::format("stick {}", args.get<std::int64_t>("stick"));
    return args.has("lot") ? fmt::format("{} of lot {}", stick, args.get<std::int64_t>("lot")) : stick;
  }
  return "new wire";
}

void refuse_served(const Job& job, const std::vector<int>& slots, const View& view) {
  for (const int slot : slots) {
    refuse_taken(job, slot, view);
    for (const Piece& p : view.tin().held_for(job.id)) {
      if (held_for(p, slot))
        throw Problem(
            Fault::state, fmt::format("Piece {} is held for slot {} of {}.", p.id, slot, named(job)), "slots",
            fmt::format("If it was cut from that, say: cut slot {} of job {} from piece {}. If not, "
                        "let it go first: let go piece {}.",
                        slot, job.id, p.id, p.id));
    }
  }
}

Effect cut_new(const Args& args, const Moment&, Tx& tx) {
  const Setup set = setup(tx);
  const Job job = job_of(args, tx);
  const auto slots = slots_in(args, job);
  refuse_served(job, slots, tx);
  const CutSlots cut = cut_from_stock(tx, job, slots, set);
  Effect out;
  out.answer.text =
      fmt::format("Cut {} of {} from {}: {} of {} with the cuts.", slots_words(slots), named(job),
                  source_words(args), say(cut.wire, set), wire_of(tx, job.wire).name);
  std::vector<int> open;
  for (const SlotNeed& s : open_slots(job, tx, set))
    open.push_back(s.slot);
  out.answer.reason =
      open.empty()
          ? "Every slot has its fret now."
          : fmt::format("Without a fret still: {}. What is left of a stick goes in the tin with: add "
                        "LENGTH of {}.",
                        slots_words(open), wire_of(tx, job.wire).name);
  out.answer.cautions = {Hazard::nipping};
  out.answer.data = record({{"job", ref(Thing::job, job.id)}, {"slots", list_of(slots)}, {"wire", cut.wire}});
  out.answer.about.args = {{"job", ref(Thing::job, job.id)}};
  return out;
}

// Where nobody said what they were cut from, a piece of the tin may have been meant.
std::string why_yes(const Args& args, const Moment&, const View& view) {
  if (args.has("stick") || args.has("from")) return "";
  const Job job = job_of(args, view);
  const auto slots = slots_in(args, job);
  refuse_served(job, slots, view);
  return fmt::format("That takes new {} for {} of {}. If a piece of the tin was cut, say so: cut slots {} of "
                     "job {} from piece ….",
                     wire_of(view, job.wire).name, slots_words(slots), named(job), ranges(slots), job.id);
}

} // namespace

extern const Command cut_new_row;
const Command cut_new_row{
    {"cut-new",
     "Cuts the frets for some slots of a job from new wire, as from one stick of the cut list.",
     {takes::job,
      {"slots", Kind::slot, true, true, "which slots, counted from the nut"},
      {"from", Kind::one_of, false, false, "what they were cut from, if it is sure", {}, {"stick", "coil"}},
      {"stick", Kind::count, false, false, "which stick of the cut list; for the history", {1, 100000}},
      {"lot", Kind::count, false, false, "and of which delivery; for the history", {1, 1000000000}},
      takes::at},
     {("[i|we] [have] cut [the] [slots|slot|frets|fret] {slots} of {job} (from|out of|off) (new wire|[a|the] "
       "[new] "
       "(stick|sticks)) {from=stick} [{at}]"),
      ("[i|we] [have] cut [the] [slots|slot|frets|fret] {slots} of {job} (from|out of|off) [a|the] [new] "
       "coil "
       "{from=coil} [{at}]"),
      ("[i|we] [have] cut [the] [slots|slot|frets|fret] {slots} of {job} (from|out of|off) stick {stick} [of "
       "lot "
       "{lot}]"),
      ("[slots|slot|frets|fret] {slots} of {job} (are|is|were|was) cut (from|out of|off) stick {stick} [of "
       "lot {lot}]"),
      ("[slots|slot|frets|fret] {slots} of {job} (are|is|were|was) cut (from|out of|off) (new wire|[a|the] "
       "[new] "
       "(stick|sticks)) {from=stick}"),
      "(i|we) [have] cut [the] (slots|slot|frets|fret) {slots} of {job} [{at}]",
      "(slots|slot|frets|fret) {slots} of {job} (are|is|were|was) [all] cut [{at}]"},
     {"cut slots 6 and 7 of job 8 from stick 3 of lot 2", "cut slots 6-9 of job 8 from new wire",
      "slots 6-9 of job 8 are cut"},
     Role::bench,
     {gives::job,
      {"slots", Kind::slot, "that have their fret now", Often::many},
      {"wire", Kind::length, "new wire, with the cuts"}}},
    &cut_new,
    &why_yes};

} // namespace nutward::shop::command_rows
