// Several frets of one stick end, in one go.
#include "shop/commands/frets.hpp"

namespace nutward::shop::command_rows {

namespace {

struct Cut {
  int slot = 0;
  Length taken;  // of the piece
  Length finish; // of the fret; the rest of `taken` is ground off
};

struct Cuts {
  std::vector<Cut> frets;
  Length kerf;
  Length rest;     // what is left of the piece
  Length short_by; // over 0: the piece does not reach
};

// From the left end on, each fret takes `cut`; only the last may be shorter, if it still does. A nip is lost
// behind every fret that something is left of.
Cuts cut_up(const Piece& p, const Job& job, const std::vector<int>& slots, const Setup& set) {
  Cuts out;
  Length left = *p.length;
  for (int slot : slots) {
    const board::Need need = need_of(job, slot, set);
    const bool last = slot == slots.back();
    if (last && left < need.cut) {
      const int raw =
          (slots.size() > 1 || p.left != End::dressed ? 1 : 0) + (p.right != End::dressed ? 1 : 0);
      const auto v =
          pieces::judge({p.id, p.kind, left, raw, {}, 0, p.added, false}, {need, {}, {}, {}}, set.fit);
      if (v.outcome == pieces::Outcome::fits) {
        out.frets.push_back({slot, left, v.finish});
        left = {};
        continue;
      }
    }
    const Length nip = last ? std::clamp(left - need.cut, Length{}, set.fit.nip_loss) : set.fit.nip_loss;
    out.frets.push_back({slot, need.cut, need.target});
    out.kerf += nip;
    left -= need.cut + nip;
  }
  out.rest = std::max(left, Length{});
  out.short_by = std::max(-left, Length{});
  return out;
}

void take(Tx& tx, Piece p, const Job& job, const Cuts& cuts, bool keep) {
  auto from_tin = [&](MovementKind kind, Place to, Length length, std::int64_t pieces,
                      std::optional<int> slot) {
    if (length > Length{} || pieces > 0)
      tx.move({kind, p.wire, p.lot, p.id, job.id, slot, Place::tin, to, length, pieces, ""});
  };
  if (keep) {
    p.kind = pieces::Kind::stick_end;
    p.left = End::raw;      // where the last one was cut off
    if (!p.slot) unhold(p); // of one held for slots, put_fret takes them off one by one
    tx.put(p);
  }
  for (const Cut& c : cuts.frets) {
    from_tin(MovementKind::scrapped, Place::scrap, c.taken - c.finish, 0, c.slot);
    const bool gone = !keep && c.slot == cuts.frets.back().slot;
    if (gone) {
      from_tin(MovementKind::cut, Place::kerf, cuts.kerf, 0, {});
      from_tin(MovementKind::scrapped, Place::scrap, cuts.rest, 0, {});
    }
    from_tin(MovementKind::used_in_a_slot, Place::board, c.finish, gone ? 1 : 0, c.slot);
  }
  if (keep) from_tin(MovementKind::cut, Place::kerf, cuts.kerf, 0, {});
}

Value data_of_cuts(const Cuts& cuts, bool keep, const Piece& p, const Job& job) {
  std::vector<Value> frets;
  for (const Cut& c : cuts.frets)
    frets.push_back(record({{"slot", std::int64_t{c.slot}}, {"cut", c.taken}, {"finish", c.finish}}));
  return record({{"piece", ref(Thing::piece, p.id)},
                 {"job", ref(Thing::job, job.id)},
                 {"frets", list(std::move(frets))},
                 {"kerf", cuts.kerf},
                 {"rest", cuts.rest},
                 {"kept", keep}});
}

Effect cut_from(const Args& args, const Moment&, Tx& tx) {
  const Setup set = setup(tx);
  const Piece p = piece_of(args, tx);
  const Job job = job_of(args, tx);
  const std::vector<int> slots = args.slots("slots");
  for (int slot : slots) {
    if (std::find(job.slots.begin(), job.slots.end(), slot) == job.slots.end()) {
      throw Problem(Fault::value, fmt::format("{} has no slot {}.", named(job), slot), "slots",
                    fmt::format("It has slots {}.", ranges(job.slots)));
    }
    refuse_taken(job, slot, tx);
    refuse_other(p, job, slot, tx, set);
  }
  refuse_crown(p, job, tx, set);
  const Cuts cuts = cut_up(p, job, slots, set);
  if (cuts.short_by > Length{}) {
    throw Problem(Fault::state,
                  fmt::format("{} is too short for slots {} of {} by {}.", named(p, tx, set), ranges(slots),
                              named(job), say(cuts.short_by, set)),
                  "slots", "Cut fewer of them from it, or take a longer piece.");
  }
  const LeastUseful least = least_useful(p.wire, tx, set);
  const bool keep = cuts.rest >= least.length;
  const std::string words = named(p, tx, set);
  take(tx, p, job, cuts, keep);
  std::vector<std::string> said;
  for (const Cut& c : cuts.frets) {
    put_fret(tx, job, c.slot, FretState::made, c.finish, p.id);
    said.push_back(fmt::format("{} for {}", say(c.taken, set), c.slot));
  }
  Effect out;
  out.answer.text =
      fmt::format("Cut {} of {} from {}: {}.",
                  slots.size() == 1 ? fmt::format("slot {}", slots.front()) : "slots " + ranges(slots),
                  named(job), words, fmt::join(said, ", "));
  if (keep) {
    out.answer.text +=
        fmt::format(" The rest, {}, stays in the tin: a fret on record could need it from {} on.",
                    say(cuts.rest, set), say(least.length, set));
  } else if (cuts.rest > Length{}) {
    out.answer.text += " " + sentence(scrap_rule(cuts.rest, least, set)) + ".";
  } else {
    out.answer.text += " Nothing is left.";
  }
  out.answer.reason =
      fmt::format("Each gives what its slot is cut to, and each cut loses {}.", say(set.fit.nip_loss, set));
  out.answer.cautions = {Hazard::nipping};
  if (job.board.ends == board::EndStyle::rounded) out.answer.cautions.push_back(Hazard::sanding);
  out.answer.data = data_of_cuts(cuts, keep, p, job);
  out.answer.about.args = {{"job", ref(Thing::job, job.id)}};
  return out;
}

} // namespace

extern const Command cut_from_row;
const Command cut_from_row{
    {"cut-from",
     "Cuts the frets for several slots of a job from one piece of the tin.",
     {takes::piece,
      takes::job,
      {"slots", Kind::slot, true, true, "which slots, counted from the nut"},
      takes::at},
     {"cut [slots|slot|frets] {slots} of {job} (from|out of) {piece}",
      "cut {piece} [up] (for|into) [slots|frets] {slots} of {job}",
      "(slots|frets) {slots} of {job} (are|were) cut (from|out of) {piece}"},
     {"cut slots 3 and 4 of job 1 from piece 30", "cut piece 30 up for slots 3-4 of job 1"},
     Role::bench,
     {gives::piece,
      gives::job,
      gives::records("frets", "from the left end on",
                     {gives::slot,
                      {"cut", Kind::length, "taken of the piece"},
                      {"finish", Kind::length, "of the fret"}}),
      {"kerf", Kind::length, "lost in nips"},
      {"rest", Kind::length, "what is left of the piece"},
      {"kept", Kind::yes, "whether the rest stays in the tin"}}},
    &cut_from};

} // namespace nutward::shop::command_rows
