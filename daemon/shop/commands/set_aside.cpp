// All that the plan takes for a job, held in one go, and let go in one.
#include "shop/commands/frets.hpp"
#include "shop/cut_list.hpp"

namespace nutward::shop::command_rows {

namespace {

void let_go_of(Tx& tx, std::int64_t piece, int slot) {
  Piece p = tx.tin().find(piece).value();
  auto left = held_slots(p);
  std::erase(left, slot);
  if (left.empty()) {
    unhold(p);
  } else {
    p.slot = left.front();
    p.more_slots.assign(left.begin() + 1, left.end());
  }
  tx.put(p);
}

} // namespace

void release(Tx& tx, std::int64_t job, int slot) {
  for (const Piece& p : tx.tin().held_for(job))
    if (held_for(p, slot)) let_go_of(tx, p.id, slot);
}

namespace {

using cutting::From;

// The job's own slots of a source, in the order of cutting.
std::vector<int> own_slots(const ListedSource& s) {
  std::vector<int> out;
  for (const ListedFret& f : s.frets)
    if (!f.other) out.push_back(f.slot);
  return out;
}

std::string slots_words(std::vector<int> slots) {
  std::sort(slots.begin(), slots.end());
  return fmt::format("{} {}", slots.size() == 1 ? "slot" : "slots", ranges(slots));
}

// What is set aside, as it is found and as it is told.
struct Aside {
  std::vector<std::string> pieces, claimed, shared, dropped; // in words
  std::vector<Value> data;
  std::vector<int> wire; // slots that are cut from new wire
  bool changed = false;
};

// What was held for these slots besides does not fit there, or was not needed: else the plan would use it.
void drop_others(const std::vector<int>& slots, std::int64_t keep, const Job& job, Tx& tx, const Setup& set,
                 Aside& out) {
  for (const Piece& p : tx.tin().held_for(job.id)) {
    std::vector<int> dropped;
    std::copy_if(slots.begin(), slots.end(), std::back_inserter(dropped),
                 [&](int s) { return p.id != keep && held_for(p, s); });
    if (dropped.empty()) continue;
    for (const int slot : dropped)
      let_go_of(tx, p.id, slot);
    out.dropped.push_back(fmt::format("{} for {}", named(p, tx, set), slots_words(dropped)));
    out.changed = true;
  }
}

void hold_piece(const ListedSource& s, const Job& job, Tx& tx, const Setup& set, Aside& out) {
  Piece p = tx.tin().find(s.id).value();
  const auto slots = own_slots(s);
  if (!p.in_tin || (p.job && *p.job != job.id)) {
    out.claimed.push_back(named(p, tx, set) + (p.job ? ", held for " + held_words(p) : ", which is gone"));
    return;
  }
  if (p.job != job.id || held_slots(p) != slots) {
    p.job = job.id;
    p.slot = slots.front();
    p.more_slots.assign(slots.begin() + 1, slots.end());
    tx.put(p);
    out.changed = true;
  }
  drop_others(slots, p.id, job, tx, set, out);
  out.pieces.push_back(fmt::format("piece {} for {}", p.id, slots_words(slots)));
  out.data.push_back(record({{"piece", ref(Thing::piece, p.id)}, {"slots", list_of(slots)}}));
  for (const ListedFret& f : s.frets)
    if (f.other) out.shared.push_back(fmt::format("slot {} of job {} (piece {})", f.slot, f.job, p.id));
}

Aside take_aside(Job& job, const CutList& list, Tx& tx, const Setup& set) {
  Aside out;
  for (const ListedSource& s : list.sources) {
    if (s.from == From::piece) {
      hold_piece(s, job, tx, set, out);
    } else {
      const auto slots = own_slots(s);
      out.wire.insert(out.wire.end(), slots.begin(), slots.end());
    }
  }
  std::sort(out.wire.begin(), out.wire.end());
  drop_others(out.wire, 0, job, tx, set, out);
  if (job.set_aside != out.wire) {
    job.set_aside = out.wire;
    tx.put(job);
    out.changed = true;
  }
  return out;
}

std::string wire_words(const Job& job, Length length, const View& view) {
  return fmt::format("{} of new {} for {}", units::print(length, units::LengthUnit::m),
                     wire_of(view, job.wire).name, slots_words(job.set_aside));
}

Effect set_aside_all(const Args& args, const Moment&, Tx& tx) {
  const Setup set = setup(tx);
  Job job = job_of(args, tx);
  const CutList list = cut_list(wire_of(tx, job.wire), job, tx, set);
  const Aside aside = take_aside(job, list, tx, set);
  if (!aside.changed) {
    const bool any = !aside.pieces.empty() || !aside.wire.empty();
    throw Problem(Fault::state,
                  any ? fmt::format("All that the plan takes for {} is set aside already.", named(job))
                      : fmt::format("The plan has nothing to set aside for {}.", named(job)),
                  "job",
                  any ? fmt::format("Ask 'what is held for job {}' to see it.", job.id)
                      : fmt::format("Ask for the cut list of job {} to see why.", job.id));
  }
  const Length wire = set_aside(job, tx, set);
  std::vector<std::string> held = aside.pieces;
  if (wire > Length{}) held.push_back(wire_words(job, wire, tx));
  Effect out;
  out.answer.text = held.empty() ? fmt::format("Nothing more is set aside for {}.", named(job))
                                 : fmt::format("Set aside for {}: {}.", named(job), fmt::join(held, "; "));
  std::vector<int> without;
  for (const CutList::Without& w : list.without)
    without.push_back(w.slot);
  if (!without.empty()) out.answer.text += fmt::format(" Nothing is there for {}.", slots_words(without));
  if (!aside.claimed.empty())
    out.answer.text += fmt::format(" Somebody was quicker with {}.", fmt::join(aside.claimed, "; "));
  if (!aside.dropped.empty())
    out.answer.text +=
        fmt::format(" Let go, since the plan does without: {}.", fmt::join(aside.dropped, "; "));
  if (!aside.shared.empty())
    out.answer.reason = fmt::format("What the same pieces gave to other jobs is planned anew: {}. ",
                                    fmt::join(aside.shared, ", "));
  out.answer.reason +=
      "A slot that gets its fret lets go of its part. New wire that is set aside is served first "
      "where wire runs short; the ledger is as before.";
  out.answer.data = record({{"job", ref(Thing::job, job.id)},
                            {"pieces", shop::list(aside.data)},
                            {"wire_slots", list_of(job.set_aside)},
                            {"new_wire", wire},
                            {"goes_without", list_of(without)}});
  out.answer.about.args = {{"job", ref(Thing::job, job.id)}};
  return out;
}

Effect let_all_go(const Args& args, const Moment&, Tx& tx) {
  const Setup set = setup(tx);
  Job job = job_of(args, tx);
  const Length wire = set_aside(job, tx, set);
  std::vector<std::string> said;
  std::vector<Value> pieces;
  for (Piece p : tx.tin().held_for(job.id)) {
    said.push_back(named(p, tx, set));
    pieces.push_back(ref(Thing::piece, p.id));
    unhold(p);
    tx.put(p);
  }
  if (wire > Length{}) said.push_back(wire_words(job, wire, tx));
  if (said.empty() && job.set_aside.empty())
    throw Problem(Fault::state, fmt::format("Nothing is held or set aside for {}.", named(job)), "job",
                  "Nothing needs doing.");
  if (!job.set_aside.empty()) {
    job.set_aside.clear();
    tx.put(job);
  }
  Effect out;
  out.answer.text = fmt::format("Let go of all that was held for {}: {}.", named(job),
                                said.empty() ? "what was left of new wire set aside"
                                             : fmt::format("{}", fmt::join(said, "; ")));
  out.answer.data =
      record({{"job", ref(Thing::job, job.id)}, {"pieces", list(std::move(pieces))}, {"new_wire", wire}});
  out.answer.about.args = {{"job", ref(Thing::job, job.id)}};
  return out;
}

} // namespace

extern const Command set_aside_row;
const Command set_aside_row{
    {"set-aside",
     "Holds all that the plan takes for a job: each piece for its slots, and its new wire.",
     {takes::job, takes::at},
     {"set aside (everything|all|what is needed|what it takes|what the plan (uses|takes)) for {job}",
      "set (everything|all of it|it all) aside for {job}",
      "(hold|reserve|keep) (everything|all|all of it) [that] [the plan (uses|takes)] for {job}",
      "(hold|reserve|keep) what the plan (uses|takes) for {job}", "set (all of it|it all|everything) aside",
      "set aside (all of it|it all|everything)",
      "(hold|reserve|keep) (everything|all|all of it) that is (planned|in the plan) for {job}",
      "put (everything|all of it|it all) aside for {job}", "put (everything|all) for {job} aside",
      ("(hold|reserve|keep|set aside) (everything|all|all [the] wire|what|whatever) [that] {job} "
       "(needs|takes)"),
      ("(hold|reserve|keep|set aside) all [of] [the] (pieces|pieces and [the] wire|wire and [the] pieces) "
       "(for|of) "
       "{job}")},
     {"set aside everything for job 8", "hold everything for job 8",
      "set aside what the plan takes for job 8"},
     Role::bench,
     {gives::job,
      gives::records("pieces", "that are held for it now by the plan",
                     {gives::piece, {"slots", Kind::slot, "in the order of cutting", Often::many}}),
      {"wire_slots", Kind::slot, "those that are cut from new wire", Often::many},
      {"new_wire", Kind::length, "set aside for them"},
      {"goes_without", Kind::slot, "open slots that the plan has nothing for", Often::many}}},
    &set_aside_all};

extern const Command let_all_go_row;
const Command let_all_go_row{{"let-all-go",
                              "Gives free all that is held or set aside for a job.",
                              {takes::job, takes::at},
                              {"let go of (everything|all) [that is] [(held|set aside)] for {job}",
                               "let (everything|all) go [that is] [(held|set aside)] for {job}",
                               "(free|release) (everything|all) [that is] [(held|set aside)] for {job}",
                               "(do not|no longer) (hold|set aside) anything for {job} [any more]",
                               "let go of all of {job}", "let go of all [of] [the] pieces (for|of) {job}",
                               "(free|release|let go of) what is (held|set aside|reserved) for {job}"},
                              {"let go of everything for job 8", "let go of all that is set aside for job 8"},
                              Role::bench,
                              {gives::job,
                               {"pieces", Kind::piece, "that were held for it", Often::many},
                               {"new_wire", Kind::length, "that was set aside for it"}}},
                             &let_all_go};

} // namespace nutward::shop::command_rows
